import { foamDensity, SOLUTION_DENSITY } from '../../core/foam/density.ts';
import { fitDrainage } from '../../core/foam/drainage.ts';
import { type Drainage, timeToDrain } from '../../core/foam/drainage-curve.ts';
import { drainedByHeight, drainedByMass, drainedByVolume } from '../../core/foam/drained.ts';
import { MINUTE } from '../../core/quantity/constants.ts';
import { exampleFields } from '../../islands/engine/reading.ts';
import type { Say } from '../../islands/engine/say.ts';
import { choice } from '../../islands/fields.ts';
import { worksheet } from '../../islands/worksheet.ts';
import { unfitFoam } from '../shared/foam/foam-doubt.ts';
import { FOAM, PERCENT } from '../shared/words/amounts.ts';
import { drainageFields } from './drainage-fields.ts';
import { DrainagePlot } from './drawn/DrainagePlot.tsx';

/** A foam that drains a quarter sooner than this, s, cannot be folded in in time. Common practice, no source. */
const BRIEF = 3 * MINUTE;

/** Shares that are all below this were probably typed as fractions of one, not as per cents. A choice. */
const FRACTION = 0.01;
const per = (share: number, say: Say) => say(share, 'ratio', { units: PERCENT, plain: true });

const WHY = {
  'too-few-readings':
    'Four readings after the start, at three times or more, are the least a curve can be found from. Read on, and add them.',
  'liquid-returns':
    'The liquid goes down between two readings by more than they can err. Liquid does not climb back into foam: look for a slip of the pen, or a leak.',
  'no-rise':
    'The readings differ by no more than they can err: nothing has drained yet, or everything had by the first. Read over a longer time, or begin sooner.',
  'no-single-curve':
    'No curve of this form comes nearest to these readings. Look for a slip in them.',
  'curve-not-fixed':
    'A curve can be laid through these readings, but so can very different ones. Read on until at least a quarter has drained.',
} as const;

export default worksheet({
  id: 'drainage',
  question: 'How fast does my foam drain?',
  fields: {
    measure: choice({
      label: 'What do you read?',
      options: {
        mass: 'Liquid run out, weighed',
        volume: 'Liquid below the foam, by volume',
        height: 'Liquid height in a straight jar',
        share: 'Share drained, worked out',
      },
      example: 'mass',
      bench: 'foam.drainageMeasure',
    }),
    ...drainageFields,
  },
  work: (v, pm, typed) => {
    const { expansion } = foamDensity({ tare: 0, full: v.foamDensity, vessel: 1 });
    const readings = {
      mass: () =>
        v.byMass.map(({ time, drained }) => ({
          time,
          drained: drainedByMass({ drained, foam: v.foamMass }),
        })),
      volume: () =>
        v.byVolume.map(({ time, drained }) => ({
          time,
          drained: drainedByVolume({ drained, foam: v.foamVolume, expansion }),
        })),
      height: () =>
        v.byHeight.map(({ time, drained }) => ({
          time,
          drained: drainedByHeight({ drained, foam: v.foamHeight, expansion }),
        })),
      share: () => v.byShare,
    }[v.measure]();
    const asked = v.measure === 'volume' || v.measure === 'height';
    // Shares go as one over what the scale says: to first order both are off by as much of themselves.
    const together = asked ? pm.foamDensity / v.foamDensity : 0;
    const found = fitDrainage({ readings, readingError: v.error, together });
    const line = !found.supported && found.because === 'no-curvature' ? found : undefined;
    const curve: Drainage | undefined = found.supported ? found.curve : line?.straight;
    // By the line too: what follows uses it so far, and one that does not rise has neither.
    const after = (drained: number) => {
      const time = curve && timeToDrain({ drainage: curve, share: drained });
      return time === Infinity ? undefined : time;
    };
    const most = v.measure === 'share' ? Math.max(...readings.map(({ drained }) => drained)) : 0;
    // Shares with their sign behind them are meant so.
    const fractions = most < FRACTION && !typed?.('byShare').includes('%') ? most : 0;
    const [quarter, half] = [after(0.25), after(0.5)];
    return { readings, fit: found, line, curve, quarter, half, fractions, together };
  },
  results: {
    quarter: {
      label: 'A quarter has drained after',
      kind: 'time',
      of: ({ fit }) => (fit.supported ? fit.quarterTime.value : undefined),
    },
    half: {
      label: 'Half has drained after',
      kind: 'time',
      of: ({ fit }) => (fit.supported ? fit.halfTime.value : undefined),
      answer: true,
    },
    perMinute: {
      label: 'Drained a minute, at first',
      kind: 'ratio',
      of: ({ fit, line }) =>
        fit.supported
          ? (0.25 * MINUTE) / fit.quarterTime.value
          : line && line.straight.rate * MINUTE,
      units: PERCENT,
      significant: 2,
      note: 'the mean until a quarter has drained, or the line where there is no curve',
    },
    exponent: {
      label: 'Exponent n',
      kind: 'count',
      of: ({ fit }) => (fit.supported ? fit.exponent.value : undefined),
    },
    scatter: {
      label: 'Readings scatter about the curve by',
      kind: 'ratio',
      of: ({ fit }) => (fit.supported ? fit.scatter : undefined),
      units: PERCENT,
      significant: 2,
    },
  },
  judge: ({ fit, line, curve, fractions }, { foamDensity }, say) => {
    const unfit = unfitFoam(foamDensity, say);
    if (unfit) return unfit;
    if (fractions > 0)
      return {
        verdict: curve ? 'look' : 'stop',
        say: `The largest share reads ${per(fractions, say)}. Shares are in per cent: for ${per(100 * fractions, say)} type ${+(1e4 * fractions).toPrecision(3)}. If it is so little, type % behind it.`,
      };
    if (line)
      return {
        verdict: 'look',
        say: `So far ${say(line.straight.rate * MINUTE, 'ratio', { units: PERCENT, significant: 2 })} of the liquid runs out each minute (95\u00a0% sure between ${say(line.straight.low * MINUTE, 'ratio', { units: PERCENT, significant: 2 })} and ${say(line.straight.high * MINUTE, 'ratio', { units: PERCENT, significant: 2 })}), in a straight line: good to ${say(line.upTo, 'time', { significant: 2 })} and no further. Read on to see the bend.`,
      };
    if (!fit.supported) return { verdict: 'stop', say: WHY[fit.because as keyof typeof WHY] };
    if (fit.notes.some(({ code }) => code === 'poor-fit'))
      return {
        verdict: 'look',
        say: `The readings lie ${say(fit.scatter, 'ratio', { units: PERCENT, significant: 2 })} off the curve on average, more than three times what a reading can err: this foam does not drain along a curve of this form. Go by the readings themselves.`,
      };
    const { value, low, high } = fit.quarterTime;
    const about = `A quarter of the liquid is gone between ${say(low, 'time', { significant: 2 })} and ${say(high, 'time', { significant: 2 })} after making.`;
    if (value < BRIEF)
      return {
        verdict: 'look',
        say: `${about} That is too soon to blend it whole. Find what kills it, the water, the dose or the lance, before you make a batch.`,
      };
    return fit.notes.some(({ code, of }) => code === 'beyond-readings' && of === 'quarterTime')
      ? {
          verdict: 'look',
          say: `${about} That is later than your last reading: it rests on the shape of the curve.`,
        }
      : { verdict: 'good', say: `${about} Have the foam in the mix well before that.` };
  },
  notes: ({ fit, line, quarter, half, together }, v, say) => [
    ...(together > v.error
      ? [
          `The limits hold the ± of the foam’s density, ${say(together * v.foamDensity, 'density', { units: FOAM, significant: 2 })}: all shares follow it. Weigh the foam for closer ones, or weigh the liquid: by mass the density does not count.`,
        ]
      : []),
    ...(line && quarter !== undefined && half !== undefined
      ? [
          `If it went on so, a quarter would be out after ${say(quarter, 'time', { significant: 2 })} and half after ${say(half, 'time', { significant: 2 })}: other worksheets go by these until your readings show the bend.`,
        ]
      : []),
    ...(fit.supported
      ? [
          `Half of the liquid is gone between ${say(fit.halfTime.low, 'time')} and ${say(fit.halfTime.high, 'time')} (95\u00a0% sure)${fit.notes.some(({ code, of }) => code === 'beyond-readings' && of === 'halfTime') ? ': that lies beyond the last reading and rests on the shape of the curve' : ''}.`,
        ]
      : []),
    'Deep foam drains more slowly than shallow: read it in the vessel it will stand in, filled as high.',
  ],
  refusals: {
    'more-than-the-foam-held': (e, say) =>
      `${say(e.value, e.kind)} has drained, but the foam held only ${say(e.allowed.max ?? 0, e.kind)} of liquid. Check the foam’s amount and density, and the empty weight of the jar.`,
  },
  blames: { drained: ['byMass', 'byVolume', 'byHeight'] },
  folded: 'How well a reading is made',
  keeps: { perMinute: 'foam.drainageRate', exponent: 'foam.drainageExponent' },
  leaves: {
    'foam.quarter': (r) => r.quarter,
    'foam.halfTime': (r) => r.half,
    // What is drained a minute holds so long: the line, or the mean until a quarter is out.
    // Nobody read the example’s.
    'foam.drainageSeen': (r, reading) =>
      exampleFields(reading).some(([, { type }]) => type === 'lines')
        ? undefined
        : (r.line?.upTo ?? r.quarter),
  },
  working: [
    {
      tex: String.raw`v(t) = \frac{t^n}{c + t^n}`,
      put: ({ fit }, _, say) => {
        const n = (power: number) => say(power, 'count', { decimals: 2 });
        return fit.supported
          ? `v = tⁿ ÷ (c + tⁿ) with n = ${n(fit.exponent.value)} (95\u00a0% sure between ${n(fit.exponent.low)} and ${n(fit.exponent.high)}) and c = ${say((fit.halfTime.value / MINUTE) ** fit.exponent.value, 'count')} for t in minutes, by least squares on ${fit.readings} readings`
          : 'No curve of this form is fitted.';
      },
    },
    {
      tex: String.raw`t_{50} = c^{1/n} \qquad t_{25} = (c/3)^{1/n}`,
      put: ({ fit }, _, say) =>
        fit.supported
          ? `t₅₀ = ${say(fit.halfTime.value, 'time')}, t₂₅ = ${say(fit.quarterTime.value, 'time')}`
          : 'No half time without a curve.',
    },
  ],
  figure: ({ values, result, say }) => (
    <DrainagePlot
      readings={result.readings}
      fit={result.fit}
      curve={result.curve}
      foamDensity={values.foamDensity}
      solutionDensity={SOLUTION_DENSITY}
      say={say}
    />
  ),
  cautions: ['glycerol-and-concentrate'],
  defers: [
    'The curve is a fit, not a law: your own readings outrank it, and it ends where they end.',
  ],
  sources: [
    'food-foam-drainage',
    'gavin-lm',
    'jcgm-100',
    'benson-1973',
    'mukunda-2016',
    'usda-stp-8-3',
    'common-practice',
  ],
});
