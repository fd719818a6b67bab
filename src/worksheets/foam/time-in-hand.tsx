import { SOLUTION_DENSITY } from '../../core/foam/density.ts';
import { type Drainage, drainedAt, timeToDrain } from '../../core/foam/drainage-curve.ts';
import { plannedFoam } from '../../core/foam/planned-foam.ts';
import type { Dose } from '../../core/foam/standing-foam.ts';
import { gasLeftAfter } from '../../core/foam/survival.ts';
import { type AfterWaiting, afterWaiting, timeInHand } from '../../core/foam/time-in-hand.ts';
import { MINUTE } from '../../core/quantity/constants.ts';
import { worksheet } from '../../islands/worksheet.ts';
import { DRAINED, STANDS_MOST } from '../shared/foam/drained-foam.ts';
import { drainageOf } from '../shared/foam/drains.ts';
import { unfitFoam } from '../shared/foam/foam-doubt.ts';
import { targetRefusals } from '../shared/mix/target-refusals.ts';
import { FOAM, PERCENT, SMALL_MASS } from '../shared/words/amounts.ts';
import { saidApart } from '../shared/words/said-apart.ts';
import { WaitingPlot } from './drawn/WaitingPlot.tsx';
import { waitingFields } from './waiting-fields.ts';

const WAITS = [0, 2, 5, 10, 15, 20, 30] as const;

/** Nearer than anybody weighs a bucket, kg/m³. A choice. */
const AS_PLANNED = 0.5;

export default worksheet({
  id: 'time-in-hand',
  question: 'How long may the foam wait?',
  fields: waitingFields,
  work: (v, pm, typed) => {
    const drainage = drainageOf(v.how, v);
    // When it is too late is told on the safe side of what a line leaves open.
    const doubtful = v.how === 'line' && pm.perMinute > 0;
    const soonest: Drainage = doubtful
      ? { rate: (v.perMinute + 2 * pm.perMinute) / MINUTE }
      : drainage;
    // A share a minute as a rate; all of it in a minute is as good as a rate without end.
    const rate = -Math.log1p(-Math.min(v.loss, 1 - 1e-9)) / MINUTE;
    const batch = plannedFoam({
      mass: v.mass,
      wetDensity: v.target,
      baseDensity: v.baseDensity,
      foamDensity: v.foamDensity,
      solutionDensity: SOLUTION_DENSITY,
      survival: v.plannedSurvival,
    });
    const hand = {
      ...batch,
      foamDensity: v.foamDensity,
      baseDensity: v.baseDensity,
      solutionDensity: SOLUTION_DENSITY,
      // The jar begins when it is blended: what the plan lets die by then is gone before.
      gasLeft:
        v.plannedSurvival * (v.survives === 'jar' ? gasLeftAfter({ rate, time: v.inMix }) : 1),
      drainage,
      tolerance: v.tolerance,
    };
    const now = afterWaiting({ ...hand, wait: v.wait, dose: v.dose });
    const fresh = timeInHand({
      ...hand,
      drainage: soonest,
      wait: 0,
      dose: v.dose,
      survival: v.plannedSurvival,
    });
    const after = (wait: number, dose: Dose = v.dose) =>
      dose === 'mass' && drainedAt({ drainage, time: wait }) === 1
        ? undefined
        : still(afterWaiting({ ...hand, wait, dose }));
    const byDensity = reached(fresh.latest);
    // Density may allow more than the foam does: thin walls break under the paddle.
    const thinBy = (by: Drainage) => reached(timeToDrain({ drainage: by, share: DRAINED.thin }));
    const quarter = thinBy(soonest);
    const ends = [quarter, byDensity].filter((time) => time !== undefined);
    const latest = fresh.latest === undefined || ends.length === 0 ? undefined : Math.min(...ends);
    return {
      now,
      fresh,
      latest,
      doubtful,
      quarter,
      /** As it was read, without its ±: that makes no reading likelier. */
      asRead: thinBy(drainage),
      /** How long that was: another worksheet’s reading says nothing of a rate that is typed. */
      seen: typed?.('perMinute') && !typed('seen') ? undefined : v.seen,
      byDensity,
      after,
      lost: (time: number) => drainedAt({ drainage, time }),
    };
  },
  results: {
    latest: { label: 'Blend it before', kind: 'time', of: (r) => r.latest },
    lost: {
      label: 'Liquid lost by the time it is blended',
      kind: 'ratio',
      of: ({ now }) => now.lost,
      units: PERCENT,
      significant: 2,
    },
    foam: {
      label: 'Foam density when it is blended',
      kind: 'density',
      of: ({ now }) => still(now)?.foam.density,
      units: FOAM,
    },
    stays: {
      label: 'Wet density, liquid left behind',
      kind: 'density',
      of: ({ now }) => still(now)?.liquidStays,
    },
    goesIn: {
      label: 'Wet density, liquid put in too',
      kind: 'density',
      of: ({ now }) => now.liquidGoesIn,
    },
    left: {
      label: 'Liquid that stays behind',
      kind: 'mass',
      of: ({ now }) => still(now)?.liquidLeft,
      units: SMALL_MASS,
      significant: 2,
    },
  },
  judge: ({ now, fresh, latest, quarter, byDensity, doubtful }, v, say) => {
    const unfit = unfitFoam(v.foamDensity, say);
    if (unfit) return unfit;
    const planned = say(v.target, 'density');
    const minutes = (time: number) => say(time, 'time', { significant: 2 });
    // What a wait leaves out may hide what the mix breaks.
    if (fresh.latest === undefined)
      return {
        verdict: 'stop',
        say: `The mix breaks so much of the foam that even fresh foam comes out at ${say(fresh.liquidStays, 'density')} for ${planned} planned. See what kills the foam before you hurry it.${
          fresh.liquidStays - now.liquidStays < AS_PLANNED
            ? ''
            : ` A wait does not cure it: the liquid lost in ${minutes(v.wait)} makes the mix ${say(fresh.liquidStays - now.liquidStays, 'density', { significant: 2 })} lighter.`
        }`,
      };
    // As it stands above: rounded more, a limit would be later than it is.
    const until = (time: number) => say(time, 'time');
    if (now.lost > DRAINED.gone)
      return {
        verdict: 'stop',
        say: `After ${minutes(v.wait)} ${say(now.lost, 'ratio', { units: PERCENT, significant: 2 })} of the liquid has run out: what is left breaks under the paddle. Make fresh foam.`,
      };
    const off = now.liquidStays - v.target;
    const comes =
      Math.abs(off) < AS_PLANNED
        ? 'as planned'
        : `${say(Math.abs(off), 'density', { significant: 2 })} too ${off > 0 ? 'heavy' : 'light'}`;
    const then = `After ${minutes(v.wait)} the mix comes out ${comes}`;
    if (Math.abs(off) > v.tolerance)
      return {
        verdict: 'stop',
        say: `${then}: more than you allow. Make fresh foam, or put the drained liquid in as well.`,
      };
    if (quarter === undefined) return { verdict: 'look', say: `${then}.` };
    const out = `a quarter of the liquid ${doubtful ? 'may be' : 'is'} out`;
    if (latest === undefined || v.wait > quarter)
      return {
        verdict: 'look',
        say: `Make it afresh: ${until(quarter)} after making, ${out}, the walls are thin (common practice, no source), and the paddle breaks much of it. ${then}.`,
      };
    if (byDensity === undefined || quarter < byDensity)
      return {
        verdict: v.wait > 0.75 * quarter ? 'look' : 'good',
        say: `Blend it before ${until(quarter)}: by then ${out} and the foam is thin-walled (common practice, no source). ${then}.`,
      };
    return v.wait > 0.75 * latest
      ? {
          verdict: 'look',
          say: `${then}, and by ${until(latest)} it ${doubtful ? 'may be' : 'is'} out of tolerance. Have the base mix ready before the foam is made.`,
        }
      : {
          verdict: 'good',
          say: `${then}; you have until ${until(latest)} from making.`,
        };
  },
  doubts: ({ quarter, asRead, seen }, { how, wait }, say) => {
    if (asRead === undefined)
      return 'Nothing ever drains at the rate given, and yet every foam drains: read yours for longer, and give what you find.';
    if (asRead > STANDS_MOST)
      return `Look at ${how === 'curve' ? 'the half time and the exponent' : 'the share drained a minute'}, and at the unit: a quarter would be out after ${say(asRead, 'time', { significant: 2 })}, and hardly any foam stands so long (from memory).`;
    return how === 'line' &&
      seen !== undefined &&
      quarter !== undefined &&
      wait > seen &&
      wait <= quarter
      ? `Look at how long it was read: a line is good to its last reading, here ${saidApart(seen, 'time', [wait], say, { significant: 2 })}, and no further.`
      : undefined;
  },
  notes: ({ doubtful, seen }, v, say) => [
    ...(doubtful ? ['“Blend it before” counts twice the ± of what drains a minute.'] : []),
    ...(v.how === 'line' && seen === undefined
      ? ['A line is good to its last reading: give “Read over the first” for this rate.']
      : []),
    ...(v.plannedSurvival < 1
      ? [
          `The plan lets ${say(1 - v.plannedSurvival, 'ratio', { units: PERCENT, significant: 2 })} of the gas die until the foam is in the mix: the foam made for that is counted, and a loss after blending comes on top.`,
        ]
      : []),
    v.survives === 'jar'
      ? 'The loss in the mix is counted with the jar’s rate, and the jar stands still; the mixer does not.'
      : `${v.plannedSurvival < 1 ? 'The rest' : 'All of the foam'} is taken to survive the mix. The jar test below finds out, and this worksheet then uses it.`,
    'Only drainage is counted. Foam whose top sinks in the bucket has lost gas as well: make it afresh.',
  ],
  refusals: {
    ...targetRefusals('The planned density'),
    'all-drained': () =>
      'By the time it is blended all its liquid has drained out of it: no mass of what is left makes up the foam. Shorten the wait, or dose it by volume.',
  },
  folded: 'The batch it is for',
  blames: { wetDensity: 'target', share: 'wait', halfTime: 'half', rate: 'loss', time: 'wait' },
  keeps: { latest: 'foam.timeInHand' },
  working: [
    {
      tex: String.raw`v = \frac{1}{1 + (t_{50}/t)^n} \qquad \rho_f' = \frac{(1 - v)\,\rho_f}{1 - v\,\rho_f/\rho_s}`,
      put: ({ now }, v, say) =>
        `v = ${say(now.lost, 'ratio', { units: PERCENT, significant: 2 })}; foam ${say(v.foamDensity, 'density', { units: FOAM })} when made, ${still(now) ? say(now.foam.density, 'density', { units: FOAM }) : 'none'} then`,
    },
    {
      tex: String.raw`\rho = \frac{m_b + \rho_f' F}{m_b/\rho_b + F}`,
      put: ({ now }, v, say) =>
        `ρ = ${still(now) ? say(now.liquidStays, 'density') : '—'} ${{ whole: 'with all the foam that is left', volume: 'with the planned volume of it', mass: 'with the planned weight of it' }[v.dose]}; planned ${say(v.target, 'density')}`,
    },
  ],
  figure: ({ values, result, say }) => (
    <WaitingPlot
      after={result.after}
      lost={result.lost}
      dose={values.dose}
      target={values.target}
      tolerance={values.tolerance}
      wait={values.wait}
      latest={result.latest}
      foamDensity={values.foamDensity}
      solutionDensity={SOLUTION_DENSITY}
      say={say}
    />
  ),
  tables: [
    {
      caption: 'If it waits …',
      columns: [
        'Wait',
        'Liquid lost',
        'Foam then',
        'Mix, liquid left behind',
        'Mix, liquid put in',
      ],
      rows: ({ after }, _, say) =>
        WAITS.map((minutes) => {
          const then = after(minutes * MINUTE);
          const wait = say(minutes * MINUTE, 'time', { plain: true });
          if (!then) return [wait, 'all of it', '—', '—', '—'];
          return [
            wait,
            say(then.lost, 'ratio', { units: PERCENT, significant: 2 }),
            say(then.foam.density, 'density', { units: FOAM }),
            say(then.liquidStays, 'density'),
            say(then.liquidGoesIn, 'density'),
          ];
        }),
    },
  ],
  cautions: ['caustic-slurry', 'drill-mixer'],
  defers: ['The tolerance is yours, or that of the code or specification the part is made to.'],
  sources: ['food-foam-drainage', 'navedtra-14071', 'common-practice'],
});

/** What there is still foam to blend of; undefined where next to all its liquid is out. */
const still = (after: AfterWaiting) => (after.lost < DRAINED.all ? after : undefined);

/** A moment that comes; undefined where it never does. */
const reached = (time: number | undefined) => (time === Infinity ? undefined : time);
