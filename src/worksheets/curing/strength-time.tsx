import { EARLIEST_ADJUSTED_AGE, tooYoungToEstimate } from '../../core/curing/limits.ts';
import {
  fitStrength,
  LEAST_SPREAD,
  type StrengthFit,
  strengthAbout,
} from '../../core/curing/strength-fit.ts';
import { grownBand, REFERENCE_AGE, strengthShare } from '../../core/curing/strength-growth.ts';
import { demand } from '../../core/domain-error.ts';
import { strengthBand } from '../../core/finished/strength-band.ts';
import { HOUR } from '../../core/quantity/constants.ts';
import { formatNumber } from '../../core/quantity/format.ts';
import { lines } from '../../islands/fields/lines.tsx';
import { choice, number } from '../../islands/fields.ts';
import { worksheet } from '../../islands/worksheet.ts';
import { FACES, FEW, lieApart } from '../shared/part/bars-doubt.ts';
import { cement, GROWTH } from '../shared/part/cement-growth.ts';
import { densitiesDoubt } from '../shared/part/densities-doubt.ts';
import { dryDensity, wetDensity } from '../shared/part/part-densities.ts';
import { strongCubes } from '../shared/part/strong-cubes.ts';
import { youngWords } from '../shared/part/young-words.ts';
import { firstFrost, frostyTests, frozenWords, hasFrozen } from '../shared/time/first-frost.ts';
import { tooOld } from '../shared/time/paces.ts';
import { sinceCasting } from '../shared/time/since-by-clock.ts';
import { DAYS, PERCENT } from '../shared/words/amounts.ts';
import { LearnedNote } from '../shared/words/LearnedNote.tsx';
import { GrowthPlot } from './drawn/GrowthPlot.tsx';

interface Growing {
  /** Youngest and oldest of the reader's own results, s. */
  readonly tested: readonly [number, number] | undefined;
  readonly fit: StrengthFit | undefined;
  readonly curve: ((age: number) => number) | undefined;
  readonly at: (age: number) => { readonly low: number; readonly high: number };
  readonly onlyMinima: boolean;
}

interface Aged {
  readonly age: number;
  readonly since: number | undefined;
  readonly frost: number | undefined;
}

/**
 * The growth, with the strength now: undefined for a part younger than the growth curves and the
 * reader's own results cover, and for a frozen one unless it goes by results of its own.
 */
const answers = ({ age, since, frost }: Aged, growing: Growing) => {
  const frozen = hasFrozen({ frost, since });
  const tested = growing.tested?.[0] ?? Infinity;
  const young = age < tested && tooYoungToEstimate({ adjustedAge: age, sinceCasting: since });
  return {
    ...growing,
    from: Math.min(EARLIEST_ADJUSTED_AGE, tested),
    frozen,
    now: young || (frozen && !growing.fit) ? undefined : growing.at(age),
    at28: growing.at(REFERENCE_AGE),
  };
};

export default worksheet({
  id: 'strength-time',
  question: 'How strong is it getting?',
  fields: {
    from: choice({
      label: 'What do you go by?',
      options: {
        density: 'Its density: a wide band',
        own: 'My own cubes or cores',
      },
      example: 'density',
      bench: 'curing.strengthFrom',
    }),
    wet: { ...wetDensity, when: { from: ['density'] } },
    dry: { ...dryDensity, when: { from: ['density'] } },
    results: lines({
      label: 'Results',
      help: 'The age adjusted for temperature, from the worksheet on age. The example is invented.',
      example: '3\t0.42\n7\t0.61\n7\t0.55\n14\t0.72\n28\t0.80',
      most: 60,
      bench: 'curing.results',
      when: { from: ['own'] },
      of: {
        age: number('time', {
          label: 'Adjusted age',
          example: '7 d',
          min: '1 h',
          max: '3650 d',
          units: DAYS,
        }),
        strength: number('stress', {
          label: 'Compressive strength',
          example: '0.6 MPa',
          min: '0.001 MPa',
          max: '200 MPa',
        }),
      },
    }),
    cement,
    age: number('time', {
      label: 'Adjusted age now, as at 20\u00a0°C (68\u00a0°F)',
      example: '0.8 d',
      min: '0.01 d',
      max: '3650 d',
      units: DAYS,
      takes: 'curing.age',
    }),
    since: sinceCasting,
    frost: { ...firstFrost, folded: true },
  },
  folded: 'Frost',
  work: (v) => {
    const coefficients = GROWTH[v.cement];
    if (v.from === 'own') {
      const fit = fitStrength({ results: v.results, coefficient: coefficients[0] });
      const curve = (age: number) =>
        fit.strength28 * strengthShare({ age, coefficient: fit.coefficient });
      const at = (age: number) => strengthAbout({ fit, coefficients, age });
      const ages = v.results.map(({ age }) => age);
      const tested = [Math.min(...ages), Math.max(...ages)] as const;
      return answers(v, { fit, curve, at, onlyMinima: false, tested });
    }
    const band = strengthBand({ wetDensity: v.wet, ovenDryDensity: v.dry });
    demand('wet', band.known ? 0 : v.wet, 'density', { max: 0 }, 'no-published-strength');
    const low = band.known ? band.low : 0;
    const high = band.known ? (band.high ?? Math.max(...band.relations.map((r) => r.low))) : 0;
    const at = (age: number) =>
      grownBand({ known: { low, high }, least: { age }, most: { age }, coefficients });
    const onlyMinima = band.known && band.high === null;
    return answers(v, { fit: undefined, curve: undefined, at, onlyMinima, tested: undefined });
  },
  results: {
    low: {
      label: 'Now, low end',
      kind: 'stress',
      of: (r) => r.now?.low,
      significant: 2,
    },
    high: {
      label: 'Now, high end',
      kind: 'stress',
      of: (r) => r.now?.high,
      significant: 2,
      answer: true,
    },
    low28: {
      label: 'At 28 days, low end',
      note: 'if it never freezes',
      kind: 'stress',
      of: (r) => r.at28.low,
      significant: 2,
    },
    high28: {
      label: 'At 28 days, high end',
      note: 'if it never freezes',
      kind: 'stress',
      of: (r) => r.at28.high,
      significant: 2,
    },
    spread: {
      label: 'Your results lie about the curve by',
      kind: 'ratio',
      of: (r) => (r.fit?.spread === undefined ? undefined : Math.expm1(r.fit.spread)),
      units: PERCENT,
      significant: 2,
    },
  },
  doubts: ({ fit, tested }, v, say) =>
    [
      fit && tested
        ? strongCubes(Math.max(...v.results.map(({ strength }) => strength)), say)
        : densitiesDoubt(v.wet, v.dry, say),
      tooOld(v, say),
    ]
      .filter(Boolean)
      .join(' ') || undefined,
  judge: ({ now, fit, tested, frozen }, { age, since, frost }, say) => {
    if (frozen && !fit)
      return { verdict: 'stop', say: `${frozenWords(frost!, since, say)} Test a piece of it.` };
    if (!now)
      return {
        verdict: 'stop',
        say: `Too young for any figure: before ${EARLIEST_ADJUSTED_AGE / HOUR}\u00a0hours, at 20\u00a0°C (68\u00a0°F) or warmer, no estimate is worth anything.${youngWords({ age, since }, say)} Leave it where it lies.`,
      };
    const [low, high] = [now.low, now.high].map((pa) => say(pa, 'stress', { significant: 2 }));
    if (!fit || !tested)
      return {
        verdict: 'look',
        say: `Somewhere between ${low} and ${high} now: a forecast of the kind, not of this part. Test a cube or a bar of the batch before you rely on any of it.`,
      };
    if (frozen)
      return {
        verdict: 'look',
        say: `${low} to ${high} now, by your own results. ${frostyTests(frost!, 'they', say)}`,
      };
    const { count } = fit;
    if (fit.spread === undefined)
      return {
        verdict: 'look',
        say: `${low} to ${high} now, a guess: ${count === 1 ? 'one result cannot tell how far the next may lie from it, and its growth is the cement’s' : 'two results always lie on a curve, so they cannot tell how far off it the next may be'}. Test more${count === 1 ? ', at another age too,' : ''} before you rely on any of it.`,
      };
    if (fit.notes.length > 0)
      return {
        verdict: 'look',
        say: `Between ${low} and ${high} now, but the results do not show by themselves how it grows: the cement’s usual growth is used. Test ${fit.notes[0]?.code === 'one-age' ? 'at another age' : 'more'}.`,
      };
    if (age < tested[0] || age > tested[1])
      return {
        verdict: 'look',
        say: `${low} to ${high} now, by the curve through your results, carried ${age < tested[0] ? 'back before the first' : 'on past the last'} of them. Test one at this age before you rely on it.`,
      };
    if (count < FEW)
      return {
        verdict: 'look',
        say: `${low} to ${high} now, by your own results. Three of them leave much to chance: another or two would narrow it if they agree.`,
      };
    if (lieApart(now))
      return {
        verdict: 'look',
        say: `${low} to ${high} now, by your own results: more than a factor of two apart. Before you rely on them, ${FACES} test more.`,
      };
    return {
      verdict: 'good',
      say: `Your own results say ${low} to ${high} now. They outrank the model: go by them between the ages you tested.`,
    };
  },
  notes: (r, { from }, say) => [
    ...((r.fit?.spread ?? LEAST_SPREAD) < LEAST_SPREAD
      ? [
          `Your results agree more closely than is to be relied on: the band takes them to lie about the curve by ${say(LEAST_SPREAD, 'ratio', { units: PERCENT, significant: 1 })}, a guess (common practice, no source).`,
        ]
      : []),
    'The growth curve was made for ordinary concrete. No source seen validates it for foamed concrete.',
    ...(from === 'density'
      ? ['Mixes of one density lie more than a factor of two apart; the band is no promise.']
      : []),
    ...(r.onlyMinima
      ? ['At this density only minima are published; the largest of them stands for the high end.']
      : []),
  ],
  refusals: {
    'no-published-strength': () =>
      'No published strength covers this density. Test cubes or cores of the batch, and choose them above.',
  },
  blames: {
    wetDensity: 'wet',
    ovenDryDensity: 'dry',
    strength: 'results',
    coefficient: 'cement',
  },
  keeps: { low28: 'curing.strength28' },
  // Where the results show none of their own, the cement's counts everywhere.
  leaves: {
    'curing.growth': ({ fit }) => (fit && fit.notes.length === 0 ? fit.coefficient : undefined),
  },
  working: [
    {
      tex: String.raw`f(t_e) = f_{28}\; e^{\,s\left(1-\sqrt{28\,\mathrm d/t_e}\right)}`,
      put: (r, v, say) =>
        r.fit
          ? `Through your ${r.fit.count === 1 ? 'one result' : `${r.fit.count} results by least squares`}: f28 = ${say(r.fit.strength28, 'stress')}, s = ${say(r.fit.coefficient, 'count', { decimals: 2 })}`
          : `f28 from ${say(r.at28.low, 'stress')} to ${say(r.at28.high, 'stress')}, s from ${GROWTH[v.cement][1].toFixed(2)} to ${GROWTH[v.cement][0].toFixed(2)}${r.now ? `: at ${say(v.age, 'time', { units: DAYS })}, ${say(r.now.low, 'stress', { significant: 2 })} to ${say(r.now.high, 'stress', { significant: 2 })}` : ''}`,
    },
  ],
  figure: ({ values: v, result: r, say }) => (
    <>
      <GrowthPlot
        at={r.at}
        curve={r.curve}
        guessed={r.fit?.spread === undefined}
        results={v.from === 'own' ? v.results : []}
        now={r.now && v.age}
        from={r.from}
        say={say}
      />
      {v.from === 'density' && !r.onlyMinima && (
        <LearnedNote
          name="strength.ratio"
          words={({ v: ratio, pm }) =>
            `crushed at ${formatNumber(ratio, { significant: 2 })}\u00a0±\u00a0${formatNumber(pm, { significant: 2 })} times the middle of the published band; of this one that is ${say(ratio * Math.sqrt(r.at28.low * r.at28.high), 'stress', { significant: 2 })} at 28\u00a0d.`
          }
        />
      )}
    </>
  ),
  cautions: ['flying-pieces', 'not-load-bearing'],
  defers: [
    'Tests of the batch decide. Where anything must carry, a licensed engineer and another material do.',
  ],
  sources: [
    'en-1992-1-1',
    'fib-mc2010',
    'caltrans-19-10',
    'astm-c869',
    'kado-2018',
    'student-t',
    'common-practice',
  ],
});
