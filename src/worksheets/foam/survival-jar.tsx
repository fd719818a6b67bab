import { SOLUTION_DENSITY } from '../../core/foam/density.ts';
import { gaslessDensity } from '../../core/foam/planned-foam.ts';
import { foamSurvival, gasLeftAfter } from '../../core/foam/survival.ts';
import { wetDensity } from '../../core/mix/weigh.ts';
import { MINUTE } from '../../core/quantity/constants.ts';
import { fromUnit } from '../../core/quantity/convert.ts';
import { lines } from '../../islands/fields/lines.tsx';
import { number } from '../../islands/fields.ts';
import { type Judgement, worksheet } from '../../islands/worksheet.ts';
import { unfitFoam } from '../shared/foam/foam-doubt.ts';
import { targetRefusals } from '../shared/mix/target-refusals.ts';
import { PERCENT } from '../shared/words/amounts.ts';
import { JarPlot } from './drawn/JarPlot.tsx';
import { plannedFields } from './planned-fields.ts';

/** The most one code lets the density grow from the mixer to the form. @source california-721-2-1 */
const MOST_GAIN = 0.05;
const { mass: _, ...batch } = plannedFields;

export default worksheet({
  id: 'survival-jar',
  question: 'Does my foam survive the mix?',
  fields: {
    tare: number('mass', {
      label: 'Jar, empty',
      example: '0.412 kg',
      min: '0 kg',
      max: '200 kg',
      bench: 'jar.tare',
    }),
    jar: number('volume', {
      label: 'Jar’s volume to the brim',
      example: '1 L',
      min: '10 mL',
      max: '100 L',
      bench: 'jar.volume',
    }),
    readings: lines({
      label: 'Jar, struck full of the mix again each time',
      help: 'At 0, 5 and 15 minutes after blending, or as you like; a scale that shows grams.',
      most: 30,
      example: '0\t1.012\n5\t1.018\n15\t1.028',
      of: {
        time: number('time', {
          label: 'Time since blending',
          example: '5 min',
          min: '0 min',
          max: '2 d',
        }),
        full: number('mass', {
          label: 'Full jar',
          example: '1.018 kg',
          min: '0 kg',
          max: '500 kg',
        }),
      },
    }),
    ...batch,
  },
  work: (v) => {
    const readings = v.readings.map(({ time, full }) => ({
      time,
      density: wetDensity({ tare: v.tare, full, vessel: v.jar }),
    }));
    const gasless = gaslessDensity({
      wetDensity: v.target,
      baseDensity: v.baseDensity,
      foamDensity: v.foamDensity,
      solutionDensity: SOLUTION_DENSITY,
      survival: v.plannedSurvival,
    });
    const survival = foamSurvival({ readings, gaslessDensity: gasless });
    const inOrder = readings.toSorted((a, b) => a.time - b.time);
    const [first, last] = [inOrder[0]!, inOrder.at(-1)!];
    const heaviest = inOrder.reduce((most, each) => (each.density > most.density ? each : most));
    return {
      readings: inOrder,
      gasless,
      survival,
      perMinute: 1 - gasLeftAfter({ rate: survival.rate, time: MINUTE }),
      gain: heaviest.density / first.density - 1,
      first,
      last,
      heaviest,
    };
  },
  results: {
    perMinute: {
      label: 'Gas lost a minute in the mix',
      kind: 'ratio',
      of: (r) => r.perMinute,
      units: PERCENT,
      significant: 2,
    },
    left: {
      label: 'Gas left at the last reading',
      kind: 'ratio',
      of: ({ survival }) => survival.gasLeft.at(-1)!.share,
      units: PERCENT,
    },
    gain: {
      label: 'Density grew by',
      kind: 'ratio',
      // Where none is heavier than the first, what it is lighter by.
      of: (r) => r.gain || r.last.density / r.first.density - 1,
      units: PERCENT,
      significant: 2,
    },
    first: {
      label: 'Density at the first reading',
      kind: 'density',
      of: (r) => r.first.density,
    },
    last: {
      label: 'Density at the last reading',
      kind: 'density',
      of: (r) => r.last.density,
    },
  },
  judge: ({ survival, gain, first, last, heaviest }, { target, foamDensity }, say) => {
    const unfit = unfitFoam(foamDensity, say);
    if (unfit) return unfit;
    const share = (of: number) => say(of, 'ratio', { units: PERCENT, significant: 2 });
    const minutes = (time: number) => say(time, 'time', { significant: 2 });
    const over = minutes((gain > MOST_GAIN ? heaviest : last).time - first.time);
    const lighter = survival.notes.some(({ code }) => code === 'gas-gain');
    const doubts: Judgement[] = [];
    if (gain > MOST_GAIN)
      doubts.push({
        verdict: 'stop',
        say: `In ${over} the mix grew ${share(gain)} heavier: its foam is being killed. Find out by what before you cast.`,
      });
    // What was lost before the first reading, in the blending too, shows in the plan alone.
    const late = first.time > 0;
    const { density } = late ? heaviest : first;
    const above = density / target - 1;
    const lost = `it came out heavy, or lost foam ${late ? 'before you looked. Strike the first jar as soon as it is blended.' : 'in the blending, which the loss a minute does not show.'}`;
    const light =
      'it came out light, or the jar’s empty weight or volume is not as given, and the loss is misread with it. Weigh the jar empty, and full of water.';
    if (Math.abs(above) > MOST_GAIN)
      doubts.push({
        verdict: 'look',
        say: `${late ? `The first reading is of ${minutes(first.time)} after blending, and` : 'Just blended,'} the mix weighs ${say(density, 'density')}, ${share(Math.abs(above))} ${above > 0 ? 'above' : 'below'} the ${say(target, 'density')} planned: ${above > 0 ? lost : light}`,
      });
    if (lighter)
      doubts.push({
        verdict: 'look',
        say: 'The mix grew lighter between two readings. Either a weighing is off, or the mix itself makes gas: weigh again before you believe any of it.',
      });
    if (doubts[0])
      return { verdict: doubts[0].verdict, say: doubts.map((doubt) => doubt.say).join(' ') };
    const unseen = late ? ` What it lost in the first ${minutes(first.time)} is not in that.` : '';
    return {
      verdict: 'good',
      say: `In ${over} the mix grew ${share(gain)} heavier. Placed within that time it stays inside the 5\u00a0% one code allows from mixer to form.${unseen}`,
    };
  },
  notes: ({ survival: { between } }, _, say) => {
    const early = between[0]!.rate;
    const late = between.at(-1)!.rate;
    const words = (rate: number) =>
      say(1 - Math.exp(-Math.max(0, rate) * MINUTE), 'ratio', { units: PERCENT, significant: 2 });
    return [
      ...(between.length > 1
        ? [
            `From reading to reading: ${words(early)} a minute at first, ${words(late)} a minute at last. A loss that quickens is the one to fear.`,
          ]
        : []),
      'The jar stands still, the mixer does not: a paddle breaks foam that a jar keeps.',
    ];
  },
  refusals: {
    'no-gas': (e, say) =>
      `A jar of ${say(e.value, 'density')} is as heavy as this mix with no gas in it (${say(e.allowed.max ?? 0, 'density')}). Check the jar’s volume and empty weight, and the batch it is for.`,
    'too-few-readings': () =>
      'One reading tells no loss. Strike the jar full again some minutes later, and add that.',
    'same-time': () => 'Two readings are at the same time. Give each its own.',
    ...targetRefusals('The planned density'),
  },
  folded: 'The batch it is from',
  blames: {
    density: 'readings',
    time: 'readings',
    full: 'readings',
    vessel: 'jar',
    wetDensity: 'target',
  },
  keeps: { perMinute: 'foam.survivalRate' },
  working: [
    {
      tex: String.raw`g(t) = \frac{1}{\rho(t)} - \frac{1}{\rho_\infty}`,
      put: ({ gasless, first, last }, _, say) => {
        const [one, unit] = { metric: ['kilogram', 'kg'], us: ['pound', 'lb'] }[say.system];
        const gas = ({ density }: typeof first) =>
          say(fromUnit(1, 'mass', unit!) * (1 / density - 1 / gasless), 'volume', {
            units: { metric: 'mL', us: 'in3' },
          });
        return `Gas in a ${one} of mix: ${gas(first)} at first, ${gas(last)} at last; without gas the mix would be ${say(gasless, 'density')}`;
      },
    },
    {
      tex: String.raw`\frac{g(t)}{g(0)} = e^{-k t}`,
      put: ({ survival, perMinute }, _, say) =>
        `k = ${say(survival.rate * MINUTE, 'count', { significant: 2 })} a minute by least squares on the logarithms, so ${say(perMinute, 'ratio', { units: PERCENT, significant: 2 })} of the gas is lost each minute`,
    },
  ],
  figure: ({ result, say }) => (
    <JarPlot
      readings={result.readings}
      gasless={result.gasless}
      rate={result.survival.rate}
      say={say}
    />
  ),
  cautions: ['caustic-slurry'],
  defers: [
    'One code allows 5\u00a0% more density at the form than at the mixer; the code of the place decides.',
  ],
  sources: ['california-721-2-1', 'navedtra-14071', 'common-practice'],
});
