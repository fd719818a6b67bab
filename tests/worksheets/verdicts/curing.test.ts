import curingPlan from '../../../src/worksheets/curing/curing-plan.tsx';
import dryingToUse from '../../../src/worksheets/curing/drying-to-use.tsx';
import evaporation from '../../../src/worksheets/curing/evaporation.tsx';
import frostGuard from '../../../src/worksheets/curing/frost-guard.tsx';
import heatInside from '../../../src/worksheets/curing/heat-inside.tsx';
import mixTemperature from '../../../src/worksheets/curing/mix-temperature.tsx';
import setTime from '../../../src/worksheets/curing/set-time.tsx';
import strengthTime from '../../../src/worksheets/curing/strength-time.tsx';
import temperatureAge from '../../../src/worksheets/curing/temperature-age.tsx';
import { verdicts } from './verdicts.ts';

/** Uno: (68^2.5 − 0.45 × 71.6^2.5) × (1 + 0.4 V), V in mph: 0.09086 kg/(m²·h) in still air. */
const dry = { concrete: '20 °C', air: '22 °C', humidity: '45 %' };
/** The same of a cold face: (42.8^2.5 − 0.2 × 39.2^2.5): 0.0502. */
const cold = { concrete: '6 °C', humidity: '20 %' };

verdicts(evaporation, { ...dry, wind: '0 km/h' }, [
  // Half of 0.5 kg/(m²·h) to take care, half of 1.0 to act; ± 40 %.
  [{ wind: '3.8 km/h' }, 'good', /is below the limits, its upper end too/],
  [{ wind: '4 km/h' }, 'look', /perhaps take care/],
  [{ wind: '7 km/h' }, 'look', /perhaps take care/],
  [{ wind: '7.1 km/h' }, 'look', /break the wind.* limit to take care at/],
  [{ wind: '18.1 km/h' }, 'look', /limit to take care at/],
  [{ wind: '18.2 km/h' }, 'stop', /the limit at which to act/],
  // Air no cure is meant in is another unit’s, and hides no loss.
  [{ air: '40 °C', humidity: '20 %' }, 'good', /is below the limits, its upper end/],
  [{ air: '72 °C', wind: '20 km/h' }, 'stop', /^The air gets as warm as 72.*its unit/],
  [{ air: '60 °C', wind: '20 km/h' }, 'look', /^The air gets as warm as 60.*its unit/],
  [{ concrete: '45 °C', air: '41 °C', wind: '20 km/h' }, 'stop', /to act.*as warm as 41/],
  // Frost is for another page, and below 5 °C nothing cures; neither makes the wind harmless.
  [{ concrete: '0 °C', air: '3 °C', humidity: '100 %' }, 'stop', /frost, not wind/],
  [{ concrete: '0.1 °C', air: '3 °C', humidity: '100 %' }, 'look', /too cold to cure/],
  [{ ...cold, air: '5 °C' }, 'good', /is below the limits, its upper end/],
  [
    { ...cold, air: '4.9 °C' },
    'look',
    /is below the limits, its upper end.*4\.9\s°C is too cold to cure/,
  ],
  [{ ...cold, air: '5 °C', wind: '60 km/h' }, 'stop', /the limit at which to act/],
  [{ ...cold, air: '4.9 °C', wind: '60 km/h' }, 'stop', /to act.*too cold to cure/],
  [{ ...cold, concrete: '4.9 °C', air: '8 °C', wind: '60 km/h' }, 'stop', /to act.*too cold/],
]);

verdicts(evaporation, { concrete: '', air: '25 °C', humidity: '70 %', wind: '3 km/h' }, [
  // In the sun a face is warmer than its air: without a thermometer on it a calm is none.
  [{ sun: 'yes' }, 'look', /^Hold a thermometer to the face/],
  [{ sun: 'yes', concrete: '25 °C' }, 'good', /is below the limits, its upper end/],
  [{ sun: 'yes', concrete: '40 °C' }, 'stop', /the limit at which to act/],
  [{ sun: 'no' }, 'good', /is below the limits, its upper end/],
  [{ sun: 'yes', air: '4 °C' }, 'look', /^Hold a thermometer.*too cold to cure/],
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
  waterCement: '0.3',
  testWater: '0.3',
};

verdicts(setTime, bag, [
  // Nobody watches beyond a working day, 8 hours; before one hour the pour may not be over.
  [{ initial: '8 h' }, 'look', /Only its level tells/],
  [{ initial: '8.1 h' }, 'stop', /does not begin to set before/],
  [{ initial: '8.1 h', foamTime: '8.2 h' }, 'good', /Watch the level/],
  [{ initial: '61 min' }, 'look', /Only its level tells/],
  [{ initial: '59 min' }, 'look', /before you have placed it/],
  [{ initial: '59 min', foamTime: '2 h' }, 'look', /before you have placed it/],
  // The foam lasts until half of it is drained.
  [{ foamTime: '2.4 h' }, 'look', /Only its level tells/],
  [{ foamTime: '2.6 h' }, 'good', /Watch the level/],
  // Wetter than the bag's test it sets later, and the foam need not last so long.
  [{ foamTime: '2.6 h', waterCement: '0.31' }, 'look', /yours is wetter and sets later/],
  [{ foamTime: '2.6 h', waterCement: '0.31', sunk: '0 mm' }, 'good', /not seen to sink/],
  // Five half hours: 2 % of 60 mm is 0.24 mm in each, half of it 6 mm.
  [{ sunk: '0 mm' }, 'good', /not seen to sink: the paste holds its foam\. Watch/],
  [{ sunk: '0.23 mm' }, 'good', /the paste holds its foam/],
  // Wetter, it sets later, by nobody knows how much, and sinks on until then.
  [
    { sunk: '0.01 mm', waterCement: '0.31' },
    'look',
    /not begin to set before 2\.5\sh.* sinks 0\.05\d*\smm.*by then, and may sink on.*: read the level again/,
  ],
  [{ sunk: '0.25 mm' }, 'look', /If that is too much/],
  [{ sunk: '5.9 mm' }, 'look', /If that is too much/],
  [{ sunk: '6.1 mm' }, 'stop', /the part would be lost/],
  // A mix is of 10 to 30 °C; below 5 it hardly sets.
  [{ mixAt: '4.9 °C', sunk: '0.01 mm' }, 'stop', /too cold to cast.*do not cast today/],
  [{ mixAt: '5 °C', initial: '2 h', sunk: '0.01 mm' }, 'look', /is cold: it sets late/],
  [{ mixAt: '9.9 °C', sunk: '0.01 mm' }, 'look', /is cold: it sets late/],
  [{ mixAt: '10 °C', sunk: '0.01 mm' }, 'good', /the paste holds its foam/],
  [{ mixAt: '30 °C', sunk: '0.01 mm' }, 'good', /the paste holds its foam/],
  [{ mixAt: '30.1 °C', sunk: '0.01 mm' }, 'look', /is hot: it stiffens early/],
  // Warmer than 40 °C nobody means a mix to be.
  [{ mixAt: '40 °C', sunk: '0.01 mm' }, 'look', /is hot: it stiffens early/],
  [{ mixAt: '40.1 °C', sunk: '0.01 mm' }, 'stop', /too hot to cast.*Cool the mix/],
  [{ mixAt: '9.9 °C', sunk: '20 mm' }, 'stop', /is cold.*the part would be lost/],
  // A quick cement does not set late for that, and a slow one asks for no warmth that there is.
  [{ mixAt: '8 °C', initial: '20 min' }, 'look', /^It begins to set at.*mix less at once\.$/],
  [{ mixAt: '10 °C', initial: '20 min' }, 'look', /mix less at once, or cooler/],
  [{ mixAt: '30 °C', initial: '40 h', final: '50 h' }, 'stop', /warm the mix/],
  [{ mixAt: '38 °C', initial: '40 h', final: '50 h' }, 'stop', /is hot.*quicken the set/],
]);

/** A wall in other air than its mix: 1/e of the difference is left after 40 min; summed apart, in steps of a second. */
const wall = { ...bag, mixAt: '20.6 °C', around: 'other', thickness: '40 mm', wet: '600 kg/m3' };
verdicts(setTime, wall, [
  [{ air: '9 °C', sunk: '3 mm' }, 'look', /^It begins to set at 4\.7\sh/],
  // Warm it sets as the bag says, and in hot air sooner.
  [{ air: '20.6 °C' }, 'look', /begins to set at 2\.4\sh/],
  [{ air: '40 °C' }, 'look', /begins to set at 1\.4\sh/],
  // Below 5 °C it hardly sets, at 0 °C it freezes.
  [{ air: '5 °C', sunk: '0.01 mm' }, 'good', /the paste holds its foam/],
  [{ air: '4.9 °C', sunk: '0.01 mm' }, 'look', /^In this air it hardly sets: it falls to/],
  [
    { air: '0.1 °C', sunk: '0.01 mm', thickness: '5 mm' },
    'stop',
    /^In this air it hardly sets.*keep it warmer, or do not/,
  ],
  [{ air: '-15 °C', sunk: '0.01 mm' }, 'stop', /^In this air it freezes before it sets/],
  // A quick cement in a thick part has set before the air has cooled it.
  [
    { air: '-15 °C', initial: '61 min', thickness: '500 mm', sunk: '0 mm' },
    'good',
    /not seen to sink/,
  ],
]);

/** All at one temperature, but for what is said. */
const mixed = {
  cement: '10 kg',
  cementAt: '20 °C',
  water: '5 kg',
  waterAt: '20 °C',
  foam: '1 kg',
  foamAt: '20 °C',
  sand: '1 kg',
  sandAt: '20 °C',
  ice: '0 kg',
  wanted: '20 °C',
};
const all = (t: string) => ({ cementAt: t, waterAt: t, foamAt: t, sandAt: t });

verdicts(mixTemperature, mixed, [
  [{}, 'good', /is what you want/],
  // A base mix for foam has a w/c of 0.2 to 1.25; of foam there are more litres than kilograms of cement.
  [{ cement: '4 kg', foam: '0 kg', sand: '0 kg' }, 'good', /will do|is what you want/],
  [{ cement: '3.99 kg', foam: '0 kg', sand: '0 kg' }, 'look', /swapped, or one of them/],
  [{ water: '1.9 kg', sand: '0 kg' }, 'look', /^Check the masses/],
  // So little cement that the quotient is no number any more.
  [{ cement: '1e-19 kg' }, 'look', /^Check the masses\. The w\/c weighed in is over 100,/],
  [{ foam: '10.1 kg' }, 'look', /^Check the foam.*Litres in place/],
  // Cement at 70 °C and water at 60 make a mix that water itself may not be.
  [
    {
      cement: '40 kg',
      cementAt: '70 °C',
      water: '16 kg',
      waterAt: '60 °C',
      foam: '6 kg',
      foamAt: '60 °C',
      sand: '0 kg',
    },
    'stop',
    /too hot to cast.*Check the temperatures above and their units\. Use cooler water/,
  ],
  // The heat of hot sand above 15 °C, 1.9 MJ, is more than 4 kg of ice take up.
  [
    { cementAt: '50 °C', water: '4 kg', sand: '40 kg', sandAt: '60 °C', wanted: '15 °C' },
    'stop',
    /Not even ice for all the water/,
  ],
  // Water above 60 °C can set cement in a flash.
  [{ waterAt: '60 °C', water: '3 kg', sand: '4 kg' }, 'look', /is hot/],
  [{ waterAt: '60 °C' }, 'stop', /too hot to cast/],
  [{ waterAt: '60.1 °C' }, 'stop', /must not meet cement/],
  // 10 × 0.75 + 5 × 4.187 kJ/K, 20 K above 0 °C, melt 1.705 kg of ice at 333.55 kJ/kg.
  [{ foam: '0 kg', sand: '0 kg', ice: '1.7 kg', iceAt: '0 °C' }, 'stop', /too cold to cast/],
  [{ foam: '0 kg', sand: '0 kg', ice: '1.71 kg', iceAt: '0 °C' }, 'stop', /more ice than the rest/],
  // Ice at 0 °C is in the balance of the water as well: (32.622 × 20 − 7.5 × 20 + 333.55) ÷ 20.935, and so on.
  [{ foam: '0 kg', sand: '0 kg', ice: '1 kg', iceAt: '0 °C' }, 'look', /have the water at 39\.9\s/],
  [
    { foam: '0 kg', sand: '0 kg', ice: '1.5 kg', iceAt: '0 °C', wanted: '30 °C' },
    'stop',
    /less ice/,
  ],
  [
    {
      foam: '0 kg',
      sand: '0 kg',
      ice: '0.1 kg',
      iceAt: '0 °C',
      cementAt: '45 °C',
      wanted: '10 °C',
    },
    'look',
    /more of the water must be ice/,
  ],
  // A mix of 5 °C hardly sets, and is best from 10 to 30.
  [{ ...all('4.9 °C'), wanted: '5 °C' }, 'stop', /too cold to cast/],
  [{ ...all('4.9 °C'), sandAt: '0 °C', wanted: '5 °C' }, 'stop', /too cold to cast/],
  [{ ...all('5 °C'), wanted: '5 °C' }, 'look', /is cold/],
  [{ ...all('9.9 °C'), wanted: '10 °C' }, 'look', /is cold/],
  [{ ...all('10 °C'), wanted: '10 °C' }, 'good', /is what you want/],
  [{ ...all('30 °C'), wanted: '30 °C' }, 'good', /is what you want/],
  [{ ...all('30.1 °C'), wanted: '30 °C' }, 'look', /is hot/],
  [{ ...all('28 °C'), wanted: '30.1 °C' }, 'look', /will do/],
  // Within a degree is what is wanted, within three it will do.
  [{ wanted: '20.9 °C' }, 'good', /is what you want/],
  [{ wanted: '21.1 °C' }, 'good', /will do/],
  [{ wanted: '22.9 °C' }, 'good', /will do/],
  [{ wanted: '23.1 °C' }, 'look', /cooler than you want/],
  [{ wanted: '17.1 °C' }, 'good', /will do/],
  [{ wanted: '16.9 °C' }, 'look', /warmer than you want/],
  // At 0 °C sand and solution may be frozen.
  [{ sandAt: '0 °C' }, 'look', /^The sand may be frozen/],
  [{ sandAt: '0.1 °C' }, 'good', /is what you want/],
  [{ foamAt: '0 °C' }, 'look', /^The foaming solution may be frozen/],
  [{ foamAt: '0.1 °C' }, 'good', /will do/],
]);

const room = {
  near: 'bare',
  far: 'wood',
  coldest: '12 °C',
  warmest: '20 °C',
  mixAt: '20.1 °C',
  wet: '600 kg/m3',
};

verdicts(heatInside, room, [
  // 20 degrees across it, at 98.9 mm of as little as fresh mix may conduct; half a degree of the sums either side.
  [{ thickness: '97 mm' }, 'good', /across it: within the usual limits/],
  // Side by side paste and gas conduct 0.734 W/(m·K) at the most; half as much again is 1.10.
  [{ thickness: '97 mm', conducts: 'own', conductivity: '1.09 W/(m.K)' }, 'good', /within/],
  [
    { thickness: '300 mm', conducts: 'own', conductivity: '5 W/(m.K)' },
    'look',
    /^Check the conductivity and its unit: 5\.0\s.* far above 0\.73/,
  ],
  // An ordinary cement is assumed, unless its oxides and fineness are told.
  [{ thickness: '50 mm', cement: 'ordinary' }, 'good', /^\d+\s°C to/],
  [{ thickness: '50 mm', cement: 'rapid' }, 'look', /^This is worked out for an ordinary cement/],
  [
    { thickness: '50 mm', cement: 'rapid', heat: 'total' },
    'look',
    /^This is worked out for an ordinary/,
  ],
  [{ thickness: '50 mm', cement: 'rapid', heat: 'oxides' }, 'good', /^\d+\s°C to/],
  [{ thickness: '450 mm', cement: 'rapid' }, 'stop', /above 70.* for an ordinary cement/],
  [{ thickness: '99 mm' }, 'look', /to 20\.0\d\s°C: that is above the usual 20\s°C/],
  [{ thickness: '101 mm' }, 'look', /may lag the inside/],
  // 2 degrees below the usual 70, in a box: 68.0 °C at 44.0 mm of as little as fresh mix may conduct.
  [{ near: 'insulated', far: 'insulated', thickness: '43.9 mm' }, 'good', /68\s°C at most/],
  [{ near: 'insulated', far: 'insulated', thickness: '44.1 mm' }, 'look', /comes too near to 70/],
  // Too hot inside stays a Stop where the face is too cold besides, and too cold is never good; the gravest is said first.
  [{ thickness: '450 mm', coldest: '2 °C', warmest: '6 °C' }, 'stop', /above 70.*below 5/],
  [{ thickness: '50 mm', coldest: '3 °C', warmest: '9 °C' }, 'look', /below 5.*hardly warmer/],
  [{ thickness: '50 mm', coldest: '-7 °C', warmest: '2 °C' }, 'stop', /freezes/],
  [{ thickness: '50 mm', mixAt: '9.9 °C' }, 'look', /is cold.*within the usual/],
  [{ thickness: '50 mm', mixAt: '4.9 °C' }, 'stop', /too cold to cast/],
  [{ thickness: '50 mm', mixAt: '40.1 °C' }, 'stop', /too hot to cast/],
  [{ thickness: '50 mm', warmest: '40.1 °C' }, 'look', /^The air gets as warm as 40/],
  [{ thickness: '50 mm', far: 'room', roomAt: '40.1 °C' }, 'look', /^The room gets as warm as 40/],
  [{ thickness: '50 mm', far: 'swing', roomWarmest: '41 °C' }, 'look', /^The room gets as warm/],
  [
    { thickness: '450 mm', mixAt: '9 °C', warmest: '41 °C' },
    'stop',
    /^\S+\s°C at the least in a slab is above 70.*is cold.*The air gets as warm as 41/,
  ],
]);

// Diffusion at its slowest goes by the square of the depth, 180 d at 60 mm; the rule has a day to each millimetre
// of half the depth: a fifth more than that at 11.8 mm.
verdicts(dryingToUse, {}, [
  [{ thickness: '11.8 mm' }, 'look', /^Plan for 5\.9\sd, the longer of the two\./],
  [{ thickness: '11.9 mm' }, 'look', /^Plan for 6\.0\sd, .*, and be ready for 7\.2\sd\./],
]);

/** One temperature, held. */
const held = (t: string) => ({ source: 'steady', steady: t });

verdicts(temperatureAge, { elapsed: '168 h', wanted: '7 d' }, [
  [held('20 °C'), 'good', /past 7\.0\sd already/],
  [{ ...held('20 °C'), elapsed: '167 h' }, 'look', /It counts as/],
  // It freezes at 0 °C; nobody means a cure above 40, and 70 is the usual limit inside.
  [{ ...held('0 °C'), elapsed: '24 h' }, 'stop', /has been at or below freezing/],
  [{ ...held('0.1 °C'), elapsed: '24 h' }, 'look', /It counts as/],
  // Days come with a frost in the third night; none of them counts to a week.
  [{ source: 'days', days: '2 10\n2 10\n-1 8', elapsed: '24 h' }, 'stop', /before it counts as/],
  [
    { source: 'days', days: '20 25\n20 25\n-1 8', elapsed: '12 h', wanted: '1 d' },
    'look',
    /It counts/,
  ],
  [{ ...held('0.1 °C'), elapsed: '24 h', wanted: '60 d' }, 'stop', /Warm it/],
  [held('40 °C'), 'good', /past 7\.0\sd already/],
  [held('40.1 °C'), 'look', /gets as warm as 40/],
  [held('69.9 °C'), 'look', /gets as warm as 69/],
  [held('70 °C'), 'stop', /at or past 70/],
]);

// A night lies in more than 22 hours without a reading.
const readAt = (...hours: number[]) => ({
  source: 'readings',
  after: 'mean',
  afterMean: '20 °C',
  readings: hours.map((hour) => `${hour} 20`).join('\n'),
});
verdicts(temperatureAge, { elapsed: '300 h', wanted: '1 d' }, [
  [readAt(0, 22, 36), 'good', /past 1\.0\sd already/],
  [
    readAt(0, 22.1, 36),
    'look',
    /^Find out how cold it got in the 22\sh before reading 2:.*It is past/,
  ],
  [{ ...readAt(0, 300), wanted: '7 d' }, 'look', /in the 13\sd before reading 2/],
]);
verdicts(curingPlan, {}, [
  [readAt(0, 22, 36), 'good', /^Keep it covered and damp until/],
  [readAt(0, 22.1, 36), 'look', /^Find out.* before reading 2:.* Keep it covered/],
  [readAt(0, 300), 'look', /in the 13\sd before reading 2/],
  [{ ...readAt(0, 300), afterMean: '0 °C' }, 'look', /in the 13\sd before reading 2/],
  // Morning and afternoon, cast at two; once a day.
  [readAt(0, 19, 24, 43, 48, 67, 72), 'good', /^Keep it covered/],
  [readAt(0, 24, 48, 72), 'look', /^Find out/],
  // It froze: what was read of it later mends nothing.
  [
    { ...readAt(), readings: '0 10\n6 6\n12 -2\n18 4\n60 8' },
    'stop',
    /^By your readings it froze.*page on frost\.$/,
  ],
]);

verdicts(curingPlan, {}, [
  // ACI counts no time below 10 °C, DIN none below 5.
  [held('10 °C'), 'good', /until/],
  [held('9.9 °C'), 'look', /American practice counts no time/],
  [held('5 °C'), 'look', /American practice counts no time/],
  [held('4.9 °C'), 'stop', /It is too cold/],
  [held('0.1 °C'), 'stop', /It is too cold/],
  [held('0 °C'), 'stop', /Keep it from freezing first of all/],
  [held('40 °C'), 'good', /until/],
  [held('40.1 °C'), 'look', /gets as warm as 40/],
  [held('70 °C'), 'stop', /^It gets as warm as 70.*cool the part\.$/],
]);

verdicts(frostGuard, { strength28: '10 MPa' }, [
  [held('5 °C'), 'good', /No frost catches it/],
  [held('4.9 °C'), 'look', /hardly ages/],
  [held('0.1 °C'), 'look', /hardly ages/],
  [held('0 °C'), 'stop', /too young to have any strength/],
  // 3.5 MPa stand one freeze, of a strength that grows by e^0.2 at the least.
  [{ ...held('10 °C'), strength28: '2.86 MPa' }, 'good', /never reaches/],
  [{ ...held('10 °C'), strength28: '2.87 MPa' }, 'good', /No frost catches it/],
  [{ ...held('4.9 °C'), strength28: '2.86 MPa' }, 'look', /never reaches/],
  [{ ...held('10 °C'), strength28: '39 MPa' }, 'good', /No frost catches it/],
  [
    { ...held('10 °C'), strength28: '80 MPa' },
    'look',
    /^Check the force.*80\sMPa is above 39\sMPa/,
  ],
  [held('40.1 °C'), 'look', /gets as warm as 40/],
  [held('70 °C'), 'stop', /^It gets as warm as 70.*cool the part\.$/],
]);

// What nobody read hides no graver word.
const unreadCold = {
  source: 'readings',
  after: 'mean',
  afterMean: '6 °C',
  readings: '0 5\n23 3\n46 6',
};
verdicts(frostGuard, unreadCold, [
  [
    { strength28: '10 MPa' },
    'look',
    /^Find out.*until it has 7\.0\sMPa, where its cure ends\. And below 5.*warmer\.$/,
  ],
  [
    { strength28: '0.552 MPa' },
    'look',
    /^Find out.*dry before any winter\. And below 5.*warmer\.$/,
  ],
]);

const twiceADay = (until: number) =>
  Array.from({ length: Math.ceil(until / 12) }, (_, i) => `${i * 12} 20\n`).join('');

/** 20 °C for so many hours, read twice a day, a frost within the next two, and what is read then. */
const frostAfter = (hours: number, then = '') => ({
  readings: `${twiceADay(hours)}${hours} 20\n${hours + 1} -1\n${hours + 2} 5${then}`,
});

// With s of 0.38 a share f of the strength at 28 days takes 28 d ÷ (1 − ln f ÷ 0.38)².
verdicts(frostGuard, { source: 'readings', after: 'mean', afterMean: '5 °C', cement: 'slow' }, [
  // 3.5 of 4.5 MPa, for one freeze: 243.5 h.
  [{ ...frostAfter(242), strength28: '4.5 MPa' }, 'stop', /less than the 3\.5\sMPa that stands/],
  [{ ...frostAfter(244), strength28: '4.5 MPa' }, 'look', /Keep it from freezing again/],
  // 70 %, where the longest European class ends: 178.8 h.
  [
    { ...frostAfter(177), strength28: '10 MPa' },
    'stop',
    /with 6\.98\sMPa: .*its cure lasts until it has 7\sMPa/,
  ],
  [{ ...frostAfter(179), strength28: '10 MPa' }, 'look', /Keep it from freezing again\./],
  // A second freeze takes 24 MPa.
  [
    { ...frostAfter(179, '\n190 0.1'), strength28: '10 MPa' },
    'look',
    /Keep it from freezing again/,
  ],
  [
    { ...frostAfter(179, '\n190 0'), strength28: '10 MPa' },
    'stop',
    /more than one, which takes 24/,
  ],
  // 24 of 30 MPa: 266.8 h.
  [{ ...frostAfter(265), strength28: '30 MPa' }, 'look', /freezing again before it has 24\sMPa/],
  [{ ...frostAfter(267, '\n290 0'), strength28: '30 MPa' }, 'good', /24\sMPa stands it again/],
]);

/** Two results of an age, so far apart by their share. */
const pairs = (apart: number) =>
  [
    [7, 0.6],
    [28, 0.8],
  ]
    .map(([d, f]) => `${d} ${f}\n${d} ${(f! * (1 + apart)).toFixed(3)}`)
    .join('\n');
const four = '3 0.42\n7 0.61\n14 0.72\n28 0.80';

verdicts(strengthTime, { from: 'own', results: four, age: '10 d', since: '10 d' }, [
  [{}, 'good', /Your own results/],
  // Nothing published is stronger than 39 MPa: psi typed as MPa.
  [{ results: '3 20\n7 30\n14 36\n28 39' }, 'good', /Your own results/],
  [{ results: '3 60.9\n7 88.5\n7 79.8\n14 104\n28 116' }, 'look', /^Check the force.*120\sMPa/],
  // Four results are few no more; the curve is held to the ages that were tested.
  [{ results: '3 0.42\n7 0.61\n14 0.72' }, 'look', /leave much to chance/],
  [{ age: '28 d' }, 'good', /Your own results/],
  [{ age: '28.1 d' }, 'look', /on past the last/],
  [{ age: '3 d' }, 'good', /Your own results/],
  [{ age: '2.9 d' }, 'look', /back before the first/],
  [{ results: '7 0.6\n28 0.8' }, 'look', /two results always lie on a curve/],
  [{ results: '7 0.6' }, 'look', /one result cannot tell/],
  [{ results: '7 0.6\n7 0.6\n7 0.6\n7 0.6', age: '7 d' }, 'look', /how it grows.*at another age/],
  [{ results: '7 0.9\n14 1.7\n28 1.6' }, 'look', /how it grows.* Test more\.$/],
  [{ frost: '9 d' }, 'look', /But it freezes/],
  // Their ends are not to lie further apart than a factor of two.
  [{ results: pairs(0.15) }, 'good', /Your own results/],
  [{ results: pairs(0.17) }, 'look', /more than a factor of two apart\. Before/],
  // No estimate before 16 hours.
  [{ from: 'density', age: '15.9 h', since: '24 h' }, 'stop', /Too young/],
  [{ from: 'density', age: '16 h', since: '24 h' }, 'look', /Somewhere between/],
  [{ from: 'density', age: '24 h', since: '15.9 h' }, 'stop', /Too young/],
  [{ from: 'density', frost: '9 d' }, 'stop', /Test a piece of it/],
]);
