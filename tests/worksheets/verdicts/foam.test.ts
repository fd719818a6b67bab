import airOrifice from '../../../src/worksheets/foam/air-orifice.tsx';
import airSupply from '../../../src/worksheets/foam/air-supply.tsx';
import drainage from '../../../src/worksheets/foam/drainage.tsx';
import foamDensity from '../../../src/worksheets/foam/foam-density.tsx';
import foamingSolution from '../../../src/worksheets/foam/foaming-solution.tsx';
import glycerol from '../../../src/worksheets/foam/glycerol.tsx';
import receiver from '../../../src/worksheets/foam/receiver.tsx';
import survivalJar from '../../../src/worksheets/foam/survival-jar.tsx';
import timeInHand from '../../../src/worksheets/foam/time-in-hand.tsx';
import { verdicts } from './verdicts.ts';

/** 722 L of foam of 80 g/L in a cubic metre, a fortieth of whose liquid runs out each minute. */
const waiting = {
  how: 'line',
  perMinute: '2.5 %',
  target: '600 kg/m3',
  foamDensity: '80 g/L',
  dose: 'volume',
  survives: 'no',
  tolerance: '500 kg/m3',
};

verdicts(timeInHand, waiting, [
  // A quarter is out at 10 minutes, half at 20; three quarters of the time are good.
  [{ wait: '7.5 min' }, 'good', /^Blend it before 10\.0\smin/],
  [{ wait: '7.6 min' }, 'look', /^Blend it before 10\.0\smin/],
  [{ wait: '10 min' }, 'look', /^Blend it before 10\.0\smin/],
  [{ wait: '10.1 min' }, 'look', /Make it afresh/],
  [{ wait: '20 min' }, 'look', /Make it afresh/],
  [{ wait: '20.1 min' }, 'stop', /breaks under the paddle/],
  [{ perMinute: '0 %' }, 'look', /Nothing ever drains/],
  // A quarter in four hours is 0.1042 % a minute.
  [{ perMinute: '0.105 %' }, 'good', /^Blend it before/],
  [{ perMinute: '0.104 %' }, 'look', /^Look at the share drained a minute, and at the unit/],
  // That it is not sure makes no rate likelier.
  [{ perMinute: '0.104 % ± 0' }, 'look', /after 240\smin/],
  [{ perMinute: '0.104 % ± 0.1' }, 'look', /^Look at the share.* after 240\smin/],
  [{ perMinute: '0.05 % ± 0.1' }, 'look', /^Look at the share.* after 500\smin/],
  [{ perMinute: '0.05 % ± 1' }, 'look', /^Look at the share/],
  [{ perMinute: '0 % ± 0.1' }, 'look', /Nothing ever drains/],
  [{ perMinute: '0.105 % ± 0.1' }, 'good', /^Blend it before/],
  // Nor does it take away what the ± asks for: a quarter of 0.1 ± 0.3 % may be out after 35.7 minutes.
  [
    { perMinute: '0.1 % ± 0.3', wait: '35.8 min' },
    'look',
    /^Look at the share.* after 250\smin.*(?<!If it is right: )Make it afresh: 35\.7\smin/,
  ],
  [
    { perMinute: '0.1 % ± 0.3', wait: '26 min' },
    'look',
    /^Look at the share.*Blend it before 35\.7\smin(?!.*afresh)/,
  ],
  [{ perMinute: '0 % ± 0.1', wait: '125 min' }, 'look', /^Nothing ever(?!.*afresh)/],
  [{ perMinute: '0 % ± 0.1', wait: '126 min' }, 'look', /^Nothing ever.*Make it afresh: 125\smin/],
  // One doubt of a reading is enough.
  [
    { perMinute: '0.05 % ± 0', seen: '10 min', wait: '15 min' },
    'look',
    /^Look at the share(?!.*how long)/,
  ],
  [
    { perMinute: '0 % ± 0.1', seen: '30 min', wait: '60 min' },
    'look',
    /^Nothing ever(?!.*how long)/,
  ],
  // 0.722 × (80 − 66.15) is 10 kg/m³ too light, once 18.54 % are out: at 7.416 minutes.
  [{ tolerance: '10 kg/m3', wait: '5.5 min' }, 'good', /you have until 7\.42\smin/],
  [{ tolerance: '10 kg/m3', wait: '5.6 min' }, 'look', /out of tolerance/],
  [{ tolerance: '10 kg/m3', wait: '7.4 min' }, 'look', /out of tolerance/],
  [{ tolerance: '10 kg/m3', wait: '7.5 min' }, 'stop', /more than you allow/],
  [{ tolerance: '20 kg/m3', wait: '7.5 min' }, 'good', /^Blend it before 10\.0\smin/],
  [{ tolerance: '20 kg/m3', wait: '7.6 min' }, 'look', /^Blend it before 10\.0\smin/],
  // As planned is within half a kilogram: 0.93 % out.
  [{ wait: '0.37 min' }, 'good', /comes out as planned/],
  [{ wait: '0.39 min' }, 'good', /too light/],
]);

// In ten minutes of 0.2496 % each the mix loses 2.47 % of 66.4 % of gas, and is 10 kg/m³ heavier.
verdicts(
  timeInHand,
  { ...waiting, survives: 'jar', inMix: '10 min', wait: '0 min', tolerance: '10 kg/m3' },
  [
    [{ loss: '0.248 %' }, 'good', /too heavy/],
    [{ loss: '0.251 %' }, 'stop', /even fresh foam comes out at 610\skg\/m³.*hurry it\.$/],
    // Drained foam by weight is lighter by far, and mends nothing.
    [
      { loss: '0.27 %', wait: '10 min', dose: 'mass' },
      'stop',
      /even fresh foam comes out at 611\skg\/m³.*A wait does not cure it.*\slighter\.$/,
    ],
    [
      { loss: '0.27 %', wait: '20 min' },
      'stop',
      /even fresh foam comes out at 611\skg\/m³.*A wait does not cure it/,
    ],
  ],
);

// A rate of 0.6 ± 0.7 % may be 2 %: a quarter is out at 12.5 minutes then, at 41.7 by the rate itself.
verdicts(timeInHand, { ...waiting, perMinute: '0.6 % ± 0.7', seen: '10 min' }, [
  [
    { wait: '9.3 min' },
    'good',
    /^Blend it before 12\.5\smin: by then a quarter of the liquid may be/,
  ],
  [{ wait: '9.5 min' }, 'look', /^Blend it before 12\.5\smin/],
  [{ wait: '12.6 min' }, 'look', /^Make it afresh: 12\.5\smin/],
  [{ wait: '30 min' }, 'look', /^Make it afresh: 12\.5\smin/],
  [{ perMinute: '0.6 % ± 0', wait: '10 min' }, 'good', /^Blend it before 41\.7\smin/],
  // A line is good to its last reading.
  [
    { perMinute: '0.6 % ± 0', wait: '10.1 min' },
    'look',
    /^Look at how long it was read.*10\smin, and no.*If it is right: Blend/,
  ],
  [{ perMinute: '0.6 % ± 0', wait: '10.7 min', seen: '10.6 min' }, 'look', /here 10\.6\smin/],
  [{ perMinute: '0.6 % ± 0', wait: '20 min', seen: '20 min' }, 'good', /^Blend it before 41\.7/],
  // A reading nobody made is not doubted.
  [{ perMinute: '0.6 % ± 0', wait: '20 min', seen: '' }, 'good', /^Blend it before 41\.7/],
]);

/** A bucket of 20 L with 1.6 kg of foam in it. */
const bucket = { method: 'weighed', tare: '0.85 kg', full: '2.45 kg', vessel: '20 L' };

verdicts(foamDensity, bucket, [
  // Makers work from 70 g/L; the standards’ band ends at 64.
  [{ full: '2.252 kg' }, 'good', /where small-batch makers work/],
  [{ full: '2.248 kg' }, 'look', /just above the standards/],
  [{ full: '2.128 kg' }, 'look', /lies in the standards/],
  // Lighter than any of the standards’ foams, a slip is likelier than the air.
  [{ full: '1.25 kg' }, 'stop', /First look for a slip: in the vessel.*If it is right/],
  // Above 120 g/L it is wet.
  [{ full: '3.248 kg' }, 'good', /makers work/],
  [{ full: '3.252 kg' }, 'look', /wet foam/],
  // A quarter of 1.6 kg, at 1 kg/L, is 400 mL, half of it 800.
  [{ drained: '398 mL' }, 'look', /in the standards/],
  [{ drained: '402 mL' }, 'look', /its walls are thin/],
  [{ drained: '798 mL' }, 'look', /its walls are thin/],
  [{ drained: '802 mL' }, 'stop', /breaks under the paddle/],
  // 3 % of the foam, 1.6 kg, is 48 g.
  [
    { weighings: 'several', fulls: [{ full: '2.427 kg' }, { full: '2.473 kg' }] },
    'good',
    /makers work/,
  ],
  [
    { weighings: 'several', fulls: [{ full: '2.425 kg' }, { full: '2.475 kg' }] },
    'look',
    /weighings differ/,
  ],
  // √2 of 10 g in a litre are ± 14.1 g/L, of 11 g 15.6: an assumed figure has ± 15.
  [{ vessel: '1 L ± 0', tare: '0.15 kg ± 0.01', full: '0.23 kg ± 0.01' }, 'good', /makers work/],
  [
    { vessel: '1 L ± 0', tare: '0.15 kg ± 0.011', full: '0.23 kg ± 0.011' },
    'look',
    /^Weigh the foam in a larger vessel.*±\s16\sg\/L/,
  ],
  [{ vessel: '20 L ± 3.7' }, 'good', /makers work/],
  [{ vessel: '20 L ± 3.8' }, 'look', /^Weigh the foam in a larger vessel/],
  // Found by water, 80 g/L of 0.15 and 0.23 kg: 1.15 ± 0.187 kg are a volume within 18.7 %, 15 g/L.
  [
    {
      vesselKnown: 'weighed',
      tare: '0.15 kg ± 0',
      full: '0.23 kg ± 0',
      filled: '1.149 kg ± 0.186',
    },
    'good',
    /makers work/,
  ],
  [
    {
      vesselKnown: 'weighed',
      tare: '0.15 kg ± 0',
      full: '0.23 kg ± 0',
      filled: '1.149 kg ± 0.189',
    },
    'look',
    /^Weigh the foam in a larger vessel/,
  ],
  [
    {
      weighings: 'several',
      vessel: '1 L ± 0',
      tare: '0.15 kg ± 0',
      fulls: [{ full: '0.23 kg' }, { full: '0.23 kg' }],
      scale: '0.016 kg',
    },
    'look',
    /^Weigh the foam in a larger vessel/,
  ],
  [{ method: 'assumed', assumed: '80 g/L' }, 'look', /not weighed/],
]);

/** Shares by t^1.5 ÷ (t^1.5 + half^1.5): a quarter is out at 0.4807 of the half time. */
const curve = (half: number, times: readonly number[]) =>
  times.map((t) => `${t}\t${((100 * t ** 1.5) / (t ** 1.5 + half ** 1.5)).toFixed(2)}`).join('\n');

verdicts(drainage, { measure: 'share' }, [
  // Gone by a quarter before 3 minutes is too soon.
  [{ byShare: curve(6.2, [1, 2, 3, 4, 6, 8, 10]) }, 'look', /too soon/],
  [{ byShare: curve(6.3, [1, 2, 3, 4, 6, 8, 10]) }, 'good', /well before that/],
  // The last reading before 10.58 minutes, and after.
  [{ byShare: curve(22, [2, 4, 6, 7, 8, 9, 10]), error: '0.1 %' }, 'look', /later than your last/],
  [{ byShare: curve(22, [2, 4, 6, 7, 8, 9, 11]), error: '0.1 %' }, 'good', /well before that/],
  [{ byShare: '2\t5\n4\t12\n6\t20' }, 'stop', /Four readings/],
  [{ byShare: '2\t5\n4\t12\n6\t20\n8\t10' }, 'stop', /does not climb back/],
  // Shares that all lie below 1 % are fractions.
  [{ byShare: '2\t0.1\n4\t0.4\n6\t0.7\n8\t0.99' }, 'stop', /Shares are in per cent/],
  [{ byShare: '2\t0.1\n4\t0.4\n6\t0.7\n8\t0.99', error: '0.05 %' }, 'look', /in per cent/],
  [{ byShare: '2\t0.1\n4\t0.4\n6\t0.7\n8\t1.01', error: '0.05 %' }, 'look', /straight line/],
]);

// A solution a quarter thicker than water at 15 °C has 8.7 % of glycerol.
verdicts(glycerol, { temperature: '15 °C' }, [
  [{ glycerol: '0 %' }, 'good', /No glycerol/],
  [{ glycerol: '8.6 %' }, 'good', /takes about/],
  [{ glycerol: '8.8 %' }, 'look', /costly/],
]);

// A tenth of glycerol by mass, or of concentrate by volume, is a great deal; one part of 200 hardly foams.
verdicts(foamingSolution, { dose: 'parts-water', partsWater: '40' }, [
  [{ glycerol: '10 %' }, 'good', /In this order/],
  [{ glycerol: '10.1 %' }, 'look', /a great deal/],
  [{ partsWater: '9', glycerol: '0 %' }, 'good', /In this order/],
  [{ partsWater: '8.9', glycerol: '0 %' }, 'look', /far more than.*Check which way/],
  [{ partsWater: '199', glycerol: '0 %' }, 'good', /In this order/],
  [{ partsWater: '201', glycerol: '0 %' }, 'look', /far less than.*Check which way/],
]);

// Foam as in the plan. Of 100 L of it at 80 g/L, 8 kg, three times as much fills a hose at most; of little foam, 5 L.
verdicts(foamingSolution, { foamVolume: '100 L', foamDensity: '80 g/L', glycerol: '0 %' }, [
  [{ foamDensity: '15.9 g/L' }, 'stop', /hardly foam/],
  [{ foamDensity: '31.9 g/L' }, 'stop', /lighter than the standards/],
  [{ foamDensity: '32.1 g/L' }, 'good', /In this order/],
  [{ foamDensity: '119 g/L' }, 'good', /In this order/],
  [{ foamDensity: '121 g/L' }, 'look', /is wet/],
  [{ foamDensity: '251 g/L' }, 'stop', /hardly foam/],
  [{ priming: '23.9 L' }, 'good', /In this order/],
  [{ priming: '24.1 L' }, 'look', /^Check the 24\.1\sL.*only 7\.99\sL becomes foam/],
  [{ priming: '500 L' }, 'look', /and their unit/],
  [{ foamVolume: '1 L', priming: '5 L' }, 'good', /In this order/],
  [{ foamVolume: '1 L', priming: '5.1 L' }, 'look', /only 79\.\d\smL becomes foam/],
]);

/** Full at 8 bar, it lasts 76.54 s for 24 L: 3.19 s a litre. */
const air = {
  made: 'marked',
  marking: '10 bar',
  relief: 'passes',
  vessel: '24 L',
  full: '8 bar',
  low: '4 bar',
  atmosphere: '1013 mbar',
};

verdicts(receiver, { ...air, area: '0.69 mm2' }, [
  [{ vessel: '18.8 L' }, 'look', /too short for a steady foam/],
  [{ vessel: '18.9 L' }, 'good', /regulator after it/],
  [{ marking: '116 bar' }, 'look', /plate again.*regulator after it/],
  // A hole into the open is choked from 1.013 ÷ 0.5283 bar: 0.904 on the gauge.
  [{ low: '0.91 bar' }, 'good', /regulator/],
  [{ low: '0.9 bar' }, 'look', /no longer choked/],
  // 1.0475 kJ a litre: 100 kJ at 95.5 L.
  [{ vessel: '95 L' }, 'good', /regulator/],
  [{ vessel: '96 L' }, 'look', /highly hazardous/],
]);

const hole = { way: 'size', diameter: '1.2 mm', before: '3 bar', atmosphere: '1013 mbar' };

verdicts(airOrifice, { ...hole, edge: 'rounded', temperature: '60 °C' }, [
  // Choked until 0.5283 × 4.013 bar: 1.107 on the gauge.
  [{ after: '1.1 bar' }, 'good', /choked: .*changes nothing/],
  [{ after: '1.11 bar' }, 'look', /not choked/],
  [{ after: '3 bar' }, 'look', /No air flows/],
  [{ way: 'measured', measured: '0 L/min', after: '1 bar' }, 'look', /^Open the valve/],
  [{ edge: 'sharp', after: '1.1 bar' }, 'look', /nearly steady/],
  [{ edge: 'own', coefficient: '0.8', after: '1.1 bar' }, 'good', /changes little/],
  // The narrowest place has the temperature before it ÷ 1.2: 0 °C from 327.8 K, 54.6 °C.
  [{ after: '1 bar', temperature: '54.7 °C' }, 'good', /needs that\.$/],
  [{ after: '1 bar', temperature: '54.5 °C' }, 'good', /moisture may freeze/],
]);

/** A litre of a mix of 600 kg/m³: 5 %, by one code, are 30 g. */
const jar = { tare: '0.412 kg', jar: '1 L', target: '600 kg/m3' };

verdicts(survivalJar, jar, [
  [{ readings: '0\t1.012\n15\t1.0415' }, 'good', /stays inside the 5/],
  [{ readings: '0\t1.012\n15\t1.0425' }, 'stop', /is being killed/],
  [{ readings: '0\t1.0415\n15\t1.0415' }, 'good', /stays inside/],
  [{ readings: '0\t1.0425\n15\t1.0425' }, 'look', /lost foam in the blending/],
  [{ readings: '5\t1.0425\n15\t1.0425' }, 'look', /before you looked/],
  // 600 and 616 kg/m³, ten minutes apart.
  [{ readings: '5\t1.012\n15\t1.028' }, 'good', /^In 10\smin the mix grew 2\.7\s% heavier/],
  [{ readings: '0\t0.9825\n15\t0.9825' }, 'good', /stays inside/],
  [{ readings: '0\t0.9815\n15\t0.9815' }, 'look', /came out light/],
  [{ readings: '0\t1.012\n5\t1.03\n15\t1.02' }, 'look', /grew lighter/],
]);

/** 33 L a minute make 75.9 L of foam in 2.143 minutes. */
const supply = { ...air, foamVolume: '75.9 L', airFlow: '33 L/min', delivery: '100 L/min' };

verdicts(airSupply, supply, [
  [{ quarter: '2.15 min' }, 'good', /the compressor keeps up/],
  [{ quarter: '2.14 min' }, 'look', /lost a quarter of its liquid/],
  // At 1.013 bar it delivers so much more of what it takes in: 32.58 L/min are 33.
  [{ delivery: '32.6 L/min' }, 'look', /Little is to spare/],
  [{ delivery: '32.5 L/min' }, 'look', /The receiver covers it/],
  // It runs seven tenths of the time.
  [{ delivery: '46.6 L/min' }, 'good', /the compressor keeps up/],
  [{ delivery: '46.5 L/min' }, 'look', /Little is to spare/],
  // At 650 mbar 50.77 L/min are 33, and 72.5 L/min 47.1; at 40 °C 34.8 L/min are.
  [{ atmosphere: '650 mbar', delivery: '50.8 L/min' }, 'look', /Little is to spare/],
  [{ atmosphere: '650 mbar', delivery: '50.7 L/min' }, 'look', /The receiver covers it/],
  [{ atmosphere: '650 mbar', delivery: '72.6 L/min' }, 'good', /the compressor keeps up/],
  [{ temperature: '40 °C', delivery: '34.7 L/min' }, 'look', /The receiver covers it/],
  [{ temperature: '40 °C', delivery: '34.9 L/min' }, 'look', /Little is to spare/],
  // A receiver alone has 3.085 L a litre for the 70.73 L that are wanted.
  [{ delivery: '0 L/min', vessel: '22.8 L' }, 'stop', /make it in parts/],
  [{ delivery: '0 L/min', vessel: '23 L' }, 'look', /The receiver covers it/],
  [{ vessel: '96 L', delivery: '0 L/min', foamVolume: '400 L' }, 'stop', /make it in parts/],
  [{ vessel: '95 L' }, 'good', /the compressor keeps up/],
  // A plate in psi, typed as bar, is doubted here as on the page on safety.
  [{ marking: '116 bar' }, 'look', /plate again/],
  [{ marking: '30 bar' }, 'look', /plate again/],
  [{ marking: '21 bar' }, 'good', /the compressor keeps up/],
  [{ made: 'unsaid' }, 'look', /^Say first what the vessel is/],
  [{ relief: 'unsaid' }, 'look', /^Say first.*the compressor keeps up/],
  [{ vessel: '96 L' }, 'look', /highly hazardous/],
]);
