import bubbles from '../../../src/worksheets/finished/bubbles.tsx';
import heatThrough from '../../../src/worksheets/finished/heat-through.tsx';
import pieceDensity from '../../../src/worksheets/finished/piece-density.tsx';
import powersVolumes from '../../../src/worksheets/finished/powers-volumes.tsx';
import strengthDensity from '../../../src/worksheets/finished/strength-density.tsx';
import { verdicts } from './verdicts.ts';

// The example’s line has 66.46 ± 3.83 % of air: twice that either side is 58.79 and 74.12.
verdicts(bubbles, {}, [
  [{ designed: '58.7 %' }, 'look', /more air than designed/],
  [{ designed: '58.9 %' }, 'good', /agrees with/],
  [{ designed: '74.1 %' }, 'good', /agrees with/],
  [{ designed: '74.2 %' }, 'look', /less air than designed/],
  // Of 0.4 the ± is √(0.24/S), and a quarter of it 0.1: 24 points.
  ...(
    [
      ['20', '8', '40 %', 'look', /^Count more: too few bubbles to tell.*sure only to ±11/],
      ['30', '12', '40 %', 'good', /agrees with/],
      // Of 0.6 what is not air is the less.
      ['20', '12', '60 %', 'look', /^Count more/],
      ['30', '18', '60 %', 'good', /agrees with/],
      // So few tell that it is not what it was designed for, all the same.
      ['20', '8', '70 %', 'look', /less air than designed/],
    ] as const
  ).map(
    ([stops, airStops, designed, ...rest]) =>
      [{ method: 'points', stops, airStops, designed, voids: '20' }, ...rest] as const,
  ),
]);

// One chord of 0.6 mm on 2 mm is 30 ± 22 %.
verdicts(bubbles, { designed: '66.4 %' }, [
  [{ chords: '0.6', traverse: '2 mm' }, 'look', /^Count more.*30\s% is sure only to ±22/],
  [{ chords: '0.5', traverse: '10 mm', designed: '5 %' }, 'look', /^Count more/],
]);

/** By the tables 0.1236 to 0.1849 W/(m·K): 60 mm resist 0.3245 to 0.4854 m²·K/W. */
const slab = { dry: '465 kg/m3', wetness: 'dampRoom', thickness: '60 mm', ask: 'resistance' };

verdicts(heatThrough, slab, [
  [{ hoped: '' }, 'good', /Plan with/],
  [{ hoped: '0.324 m2.K/W' }, 'good', /as much as you want/],
  [{ hoped: '0.326 m2.K/W' }, 'look', /may or may not reach/],
  [{ hoped: '0.484 m2.K/W' }, 'look', /may or may not reach/],
  [{ hoped: '0.487 m2.K/W' }, 'look', /Even by the lowest/],
  // The relation and the tables begin at 20 lb/ft³ and end at 120.
  [{ hoped: '', dry: '319 kg/m3' }, 'look', /^Take this as a guess.*the layer gives/],
  [{ hoped: '', dry: '321 kg/m3' }, 'good', /Plan with/],
  [{ ask: 'thickness', wanted: '0.4 m2.K/W', dry: '319 kg/m3' }, 'look', /0\.40\s.* takes \d/],
  // Nothing read of in service is wetter than 6 %.
  [{ hoped: '', wetness: 'other', moisture: '6 %' }, 'good', /Plan with/],
  [{ hoped: '', wetness: 'other', moisture: '6.1 %' }, 'look', /a soaked piece/],
  // From 150 mm on it heats inside: 0.811 m²·K/W.
  [{ ask: 'thickness', wanted: '0.808 m2.K/W' }, 'good', /make it 150\smm thick/],
  [{ ask: 'thickness', wanted: '0.814 m2.K/W' }, 'look', /heats inside/],
]);

/** 1.35 L of it, and two weighings, kg, so many hours apart. */
const block = { method: 'block', mass: '0.705 kg', dried: 'yes', oven: '105 °C' };
const weighed = (before: number, hours = 24) => ({ weighings: `0 ${before}\n${hours} 0.63` });

verdicts(pieceDensity, { ...block, ...weighed(0.63) }, [
  [{ dried: 'no' }, 'look', /whatever water it holds/],
  // An oven of 100 to 110 °C.
  [{ oven: '99 °C' }, 'look', /leaves water in/],
  [{ oven: '100 °C' }, 'good', /constant mass/],
  [{ oven: '110 °C' }, 'good', /constant mass/],
  [{ oven: '111 °C' }, 'stop', /Turn the oven down/],
  // 0.2 % a day, of 0.63 kg 1.26 g, lost or gained; weighed a day apart.
  [weighed(0.6312), 'good', /constant mass/],
  [weighed(0.6314), 'look', /still losing/],
  [weighed(0.6288), 'good', /constant mass/],
  [weighed(0.6286), 'look', /heavier than at the weighing/],
  [weighed(0.63, 24), 'good', /constant mass/],
  [weighed(0.63, 23), 'look', /no two weighings/],
]);

// A piece of 0.64 kg may lose 1.28 g a day: eight days of that are 10 g.
const coarse = { ...block, weighings: '0 0.70\n24 0.66\n48 0.64\n72 0.64' };
verdicts(pieceDensity, coarse, [
  [
    { mass: '0.71 kg ± 0.01' },
    'look',
    /^Weigh it on a finer scale, or 8 days apart: ±10\.?0?\sg is/,
  ],
  [{ mass: '0.71 kg ± 0.0013' }, 'look', /^Weigh it on a finer scale, or 2 days/],
  [{ mass: '0.71 kg ± 0.0012' }, 'good', /constant mass/],
  [{ mass: '0.71 kg ± 0.01', weighings: '0 0.70\n48 0.64\n240 0.64' }, 'good', /constant mass/],
]);

const inWater = { method: 'gain', mass: '0.705 kg', gain: '1.45 kg', dried: 'no' };
verdicts(pieceDensity, inWater, [
  // Film up to a tenth of the piece, 70.5 g.
  [{ wrapped: '0.775 kg' }, 'look', /whatever water it holds/],
  [{ wrapped: '0.776 kg' }, 'look', /^Weigh it in its film again/],
]);

/** Between 80 and 225 psi, 0.5516 and 1.5513 MPa. */
const crushed = { wet: '600 kg/m3', dry: '465 kg/m3', own: 'crushed', crushedAge: '28 d' };
const two = (one: number, other: number) => ({ crushed: `465 ${one}\n465 ${other}` });

verdicts(strengthDensity, crushed, [
  [{ own: 'none' }, 'look', /Density alone says no more/],
  [
    { crushed: '465 0.553\n465 1\n465 1\n465 1.549' },
    'good',
    /^Your tests agree with what is published/,
  ],
  [{ crushed: '465 0.553\n465 1\n465 1.549' }, 'look', /^Crush another or two: your 3 tests agree/],
  [{ crushed: '465 1' }, 'look', /^Crush three more.* your one test agrees.* for its density/],
  [
    { crushed: '465 0.549' },
    'stop',
    /^Your one test lies below .* for its density.* until others say/,
  ],
  [{ crushed: '465 1.554' }, 'look', /^Your one test lies above what is published for its density/],
  [two(0.549, 0.549), 'stop', /below the least/],
  [two(0.549, 0.553), 'look', /1 is below/],
  [two(1.549, 1.554), 'look', /1 is above/],
  [two(1.554, 1.554), 'look', /All of your tests lie above/],
  [{ ...two(0.549, 0.549), crushedAge: '27.9 d' }, 'look', /younger than 28 days/],
  [{ crushed: '190 0.5' }, 'look', /Nothing is published/],
]);

// Sealed, the 0.2906 of water in all lets 70.43 % of the cement react.
verdicts(powersVolumes, { density: '1200 kg/m3', waterCement: '0.25', foam: '80 g/L' }, [
  [{ degree: '70.4 %' }, 'good', /foam’s air/],
  [{ degree: '70.5 %' }, 'look', /runs out at 70/],
]);
