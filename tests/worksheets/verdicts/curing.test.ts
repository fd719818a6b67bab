import evaporation from '../../../src/worksheets/curing/evaporation.tsx';
import setTime from '../../../src/worksheets/curing/set-time.tsx';
import { verdicts } from './verdicts.ts';

/** Uno: (68^2.5 − 0.45 × 71.6^2.5) × (1 + 0.4 V), V in mph: 0.09086 kg/(m²·h) in still air. */
const dry = { concrete: '20 °C', air: '22 °C', humidity: '45 %' };
/** The same of a cold face: (42.8^2.5 − 0.2 × 39.2^2.5): 0.0502. */
const cold = { concrete: '6 °C', humidity: '20 %' };

verdicts(evaporation, { ...dry, wind: '0 km/h' }, [
  // Half of 0.5 kg/(m²·h) to take care, half of 1.0 to act; ± 40 %.
  [{ wind: '3.8 km/h' }, 'good', /is calm, its upper end too/],
  [{ wind: '4 km/h' }, 'look', /perhaps take care/],
  [{ wind: '7 km/h' }, 'look', /perhaps take care/],
  [{ wind: '7.1 km/h' }, 'look', /limit to take care at .*break the wind/],
  [{ wind: '18.1 km/h' }, 'look', /limit to take care at/],
  [{ wind: '18.2 km/h' }, 'stop', /the limit at which to act/],
  // Frost is for another page, and below 5 °C nothing cures; neither makes the wind harmless.
  [{ concrete: '0 °C', air: '3 °C', humidity: '100 %' }, 'stop', /frost, not wind/],
  [{ concrete: '0.1 °C', air: '3 °C', humidity: '100 %' }, 'look', /too cold to cure/],
  [{ ...cold, air: '5 °C' }, 'good', /is calm/],
  [{ ...cold, air: '4.9 °C' }, 'look', /is calm.*4\.9\s°C is too cold to cure/],
  [{ ...cold, air: '5 °C', wind: '60 km/h' }, 'stop', /the limit at which to act/],
  [{ ...cold, air: '4.9 °C', wind: '60 km/h' }, 'stop', /to act.*too cold to cure/],
  [{ ...cold, concrete: '4.9 °C', air: '8 °C', wind: '60 km/h' }, 'stop', /to act.*too cold/],
]);

/** As warm as the bag’s times are for. */
const bag = {
  initial: '2.5 h',
  final: '20 h',
  mixAt: '20 °C',
  referenceAt: '20 °C',
  accelerator: 'none',
  foamTime: '22 min',
  depth: '60 mm',
  sunkAfter: '30 min',
  sunk: '',
};

verdicts(setTime, bag, [
  // Nobody watches beyond a working day, 8 hours; before one hour the pour may not be over.
  [{ initial: '8 h' }, 'look', /only its level tells/],
  [{ initial: '8.1 h' }, 'stop', /does not begin to set before/],
  [{ initial: '8.1 h', foamTime: '8.2 h' }, 'good', /Watch the level/],
  [{ initial: '61 min' }, 'look', /only its level tells/],
  [{ initial: '59 min' }, 'look', /before you have placed it/],
  [{ initial: '59 min', foamTime: '2 h' }, 'look', /before you have placed it/],
  // The foam lasts until half of it is drained.
  [{ foamTime: '2.4 h' }, 'look', /only its level tells/],
  [{ foamTime: '2.6 h' }, 'good', /Watch the level/],
  // Five half hours: 2 % of 60 mm is 0.24 mm in each, half of it 6 mm.
  [{ sunk: '0.23 mm' }, 'good', /the paste holds its foam/],
  [{ sunk: '0.25 mm' }, 'look', /If that is too much/],
  [{ sunk: '5.9 mm' }, 'look', /If that is too much/],
  [{ sunk: '6.1 mm' }, 'stop', /that is no part any more/],
  // A mix is of 10 to 30 °C; below 5 it hardly sets.
  [{ mixAt: '4.9 °C', sunk: '0.01 mm' }, 'stop', /too cold to cast/],
  [{ mixAt: '5 °C', initial: '2 h', sunk: '0.01 mm' }, 'look', /is cold: it sets late/],
  [{ mixAt: '9.9 °C', sunk: '0.01 mm' }, 'look', /is cold: it sets late/],
  [{ mixAt: '10 °C', sunk: '0.01 mm' }, 'good', /the paste holds its foam/],
  [{ mixAt: '30 °C', sunk: '0.01 mm' }, 'good', /the paste holds its foam/],
  [{ mixAt: '30.1 °C', sunk: '0.01 mm' }, 'look', /is hot: it stiffens early/],
  [{ mixAt: '9.9 °C', sunk: '20 mm' }, 'stop', /is cold.*no part any more/],
]);
