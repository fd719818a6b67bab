import { DAY } from '../../core/quantity/constants.ts';
import { toUnit } from '../../core/quantity/convert.ts';
import { KINDS } from '../../core/quantity/kinds.ts';
import { RUN_OFF, rainCaught, rainFor } from '../../core/water/rain-catch.ts';
import { choice, number } from '../../islands/fields.ts';
import { worksheet } from '../../islands/worksheet.ts';
import { DAYS, PERCENT } from '../shared/words/amounts.ts';
import { onSquareMetre } from '../shared/words/spelt.ts';
import { IonBars } from './drawn/IonBars.tsx';
import { softWater } from './soft-water.ts';

/** Legionella grows from here up, K. @source who-legionella (read second-hand) */
const WARM = 298.15;
/** Stored water is best kept below this, K. @source who-legionella (read second-hand) */
const COOL = 293.15;
/** Water that has stood longer is looked at hard. Common practice, no source. */
const LONG = 14 * DAY;

export default worksheet({
  id: 'rain-store',
  question: 'Is there rain enough for the foam, and may it be used?',
  fields: {
    perBatch: number('volume', {
      label: 'Soft water for one batch',
      help: 'For the foaming solution, its waste counted. Add what you rinse with.',
      ...softWater,
      bench: 'rain.perBatch',
    }),
    batches: number('count', {
      label: 'Batches before it rains again',
      example: '4',
      min: '1',
      max: '1000',
      whole: true,
      bench: 'rain.batches',
    }),
    roof: number('area', {
      label: 'Roof that feeds the butt, seen from above',
      example: '6 m2',
      min: '0 m2',
      aboveMin: true,
      max: '10000 m2',
      bench: 'rain.roof',
    }),
    rain: number('length', {
      label: 'Rain that fell',
      example: '9 mm',
      plusMinus: '1 mm',
      min: '0 mm',
      max: '1000 mm',
      spelt: onSquareMetre,
      bench: 'rain.depth',
    }),
    senses: choice({
      label: 'The water now',
      options: {
        clear: 'Clear, no smell',
        green: 'Green, slimy or smelling',
        oil: 'An oily film',
      },
      example: 'clear',
      bench: 'rain.senses',
    }),
    warmest: number('temperature', {
      label: 'The warmest it has stood',
      example: '17 °C',
      min: '0 °C',
      max: '60 °C',
      bench: 'rain.warmest',
    }),
    stood: number('time', {
      label: 'It has stood for',
      example: '5 d',
      min: '0 d',
      max: '3650 d',
      units: DAYS,
      bench: 'rain.stood',
    }),
    firstFlush: number('length', {
      label: 'First rain let run away',
      example: '1 mm',
      min: '0 mm',
      max: '100 mm',
      spelt: onSquareMetre,
      folded: true,
      bench: 'rain.firstFlush',
    }),
    runOff: number('ratio', {
      label: 'Share of the rain that arrives',
      help: 'About 80\u00a0% from a hard roof (common practice, no source).',
      example: '80 %',
      min: '1 %',
      max: '100 %',
      units: PERCENT,
      folded: true,
      bench: 'rain.runOff',
    }),
  },
  folded: 'The roof',
  work: ({ perBatch, batches, roof, rain, firstFlush, runOff = RUN_OFF }) => {
    const need = perBatch * batches;
    const caught = rainCaught({ roof, rain, firstFlush, runOff });
    return { need, caught, rain: rainFor({ volume: need, roof, firstFlush, runOff }) };
  },
  results: {
    caught: {
      label: 'Rain in the butt',
      kind: 'volume',
      of: (r) => r.caught,
      sure: true,
    },
    need: { label: 'Soft water wanted', kind: 'volume', of: (r) => r.need },
    rain: {
      label: 'Rain that would bring the soft water wanted',
      kind: 'length',
      of: (r) => r.rain,
      significant: 2,
      toward: 'up',
    },
  },
  judge: (r, v, say) => {
    if (v.senses === 'oil')
      return {
        verdict: 'stop',
        say: 'Oil kills foam and spoils the set. Empty the butt, find where it comes from, and use distilled water meanwhile.',
      };
    const warm = say(v.warmest, 'temperature');
    if (v.warmest >= WARM)
      return {
        verdict: 'stop',
        say: `Legionella grows in water that stands at ${warm}, in how short a time is not known here: do not make a spray of it. Pour it on the ground, scrub the butt, and use distilled or softened water for this batch.`,
      };
    if (v.senses === 'green')
      return {
        verdict: 'stop',
        say: 'Algae and slime spoil foam and hold back cement. Pour it on the ground, scrub the butt, and keep the light out.',
      };
    const short = say(r.need - r.caught, 'volume', {
      significant: 2,
      toward: 'up',
    });
    if (r.caught === 0)
      return {
        verdict: 'look',
        say: `No rain came into the butt: buy ${short} of distilled water, or soften the tap’s.`,
      };
    const looks = [
      r.caught < r.need &&
        `${short} short. Blend it with the tap as far as the hardness allows, or buy that much distilled water.`,
      v.warmest >= COOL &&
        `At ${warm} it has stood warmer than stored rain should. Shade the butt, use the water before it warms further, and do not breathe its spray.`,
      v.stood > LONG &&
        'It has stood long. Smell it, look at a jar of it against white, strain it, and make a small foam with it before the batch.',
    ].filter(Boolean);
    if (looks.length > 0) return { verdict: 'look', say: looks.join(' ') };
    return {
      verdict: 'good',
      say: `Enough. Draw it from above the mud, strain it, test its hardness, and make the foam with it.`,
    };
  },
  notes: () => ['The butt is taken as large enough, and as emptied before that rain.'],
  working: [
    {
      tex: String.raw`V = A\,(h - h_{\text{first}})\,k`,
      put: (r, v, say) =>
        `${say(v.roof, 'area')} × (${say(v.rain, 'length')} − ${say(v.firstFlush, 'length')}) × ${say(v.runOff, 'ratio', { units: PERCENT })} = ${say(r.caught, 'volume')}`,
    },
  ],
  figure: ({ result: { caught, need }, say }) => {
    const us = say.system === 'us';
    const part = (si: number, tone: 'water' | 'foam') => [
      {
        label: say(si, 'volume'),
        amount: toUnit(si, 'volume', KINDS.volume.shown[say.system]),
        tone,
      },
    ];
    return (
      <IonBars
        title={`Rain caught and soft water wanted, ${us ? 'US gallons' : 'litres'}`}
        caption={us ? 'US gallons.' : 'Litres.'}
        rows={[
          { name: 'Caught', parts: part(caught, 'water') },
          { name: 'Wanted', parts: part(need, 'foam') },
        ]}
        atLeast={1}
      />
    );
  },
  cautions: ['stored-rainwater'],
  defers: ['The public-health guidance of the place, and its rules on collecting rain.'],
  sources: ['who-legionella', 'hull-legionella', 'definition', 'common-practice'],
});
