import {
  costliestMultiplier,
  rankChangesAtEnds,
} from '../../core/demould/lifting-equation/advice.ts';
import {
  LOAD_CONSTANT_METRIC,
  LOAD_CONSTANT_US,
} from '../../core/demould/lifting-equation/lift.ts';
import { twoPeopleLimit } from '../../core/demould/lifting-equation/scope.ts';
import {
  INDEX_AIM,
  INDEX_HIGH,
  judgeLift,
  type LiftVerdict,
} from '../../core/demould/lifting-equation/single.ts';
import { choice, number } from '../../islands/fields.ts';
import { type Judgement, worksheet } from '../../islands/worksheet.ts';
import { saidApart } from '../shared/words/said-apart.ts';
import { MultiplierBars } from './drawn/MultiplierBars.tsx';
import {
  bestChange,
  CM,
  COVERED,
  changeWords,
  covered,
  duration,
  liftCells,
  MULTIPLIERS,
  methodForm,
  SCOPE_WORDS,
  shortReach,
  special,
} from './lift-fields.ts';
import { handsOrGear, tooHeavy } from './too-heavy.ts';

const careful = { careful: ['yes'] } as const;

export default worksheet({
  id: 'can-i-lift',
  question: 'Can I lift it?',
  fields: {
    ...liftCells,
    mass: { ...liftCells.mass, takes: 'part.mass' },
    duration,
    special,
    careful: choice({
      label: 'It must be set down with care',
      help: 'Then the far end of the lift is judged as well.',
      options: { no: 'No', yes: 'Yes' },
      example: 'no',
      folded: true,
    }),
    farReach: number('length', {
      label: 'Reach where it is set down',
      example: '45 cm',
      min: '1 cm',
      max: '2 m',
      units: CM,
      when: careful,
      folded: true,
    }),
    farHeight: number('length', {
      label: 'Hands above the floor there',
      example: '85 cm',
      min: '0 cm',
      max: '3 m',
      units: CM,
      when: careful,
      folded: true,
    }),
    form: methodForm,
  },
  work: (v) => {
    const start = judgeLift(v, v.mass, v.form);
    const far =
      v.careful === 'yes' ? { ...v, horizontal: v.farReach, vertical: v.farHeight } : undefined;
    const end = far && judgeLift(far, v.mass, v.form);
    const atEnd = end !== undefined && isHarder(end, start);
    const ruling = atEnd ? end : start;
    return {
      start,
      end,
      atEnd,
      ruling,
      costliest: costliestMultiplier(ruling.multipliers),
      changes: rankChangesAtEnds(far ? [v, far] : [v], v.mass, v.form),
      constant: v.form === 'us' ? LOAD_CONSTANT_US : LOAD_CONSTANT_METRIC,
    };
  },
  results: {
    limit: {
      label: 'Weight limit for this lift',
      kind: 'mass',
      of: (r) => r.ruling.weightLimit,
      toward: 'down',
    },
    index: {
      label: 'Lifting index',
      kind: 'count',
      of: (r) => finite(r.ruling.liftingIndex),
      significant: 2,
      answer: true,
      note: 'load over limit: aim for 1 or less; above 3 is high',
    },
    without: {
      label: 'Limit if it were lifted only now and then',
      kind: 'mass',
      of: (r) => r.ruling.weightLimitWithoutRate,
      toward: 'down',
    },
    two: {
      label: 'Two people together, by practice',
      kind: 'mass',
      of: (r) => twoPeopleLimit(r.ruling.weightLimit),
      significant: 2,
      toward: 'down',
      note: 'two thirds of twice the limit; common practice, no source',
    },
  },
  doubts: (_, { horizontal, careful, farReach }, say) =>
    shortReach([horizontal, ...(careful === 'yes' ? [farReach] : [])], say),
  judge: (r, { mass, special }, say) => {
    const judged = (): Judgement => {
      const { ruling, changes } = r;
      // A load above its limit does not read as that.
      const load = saidApart(mass, 'mass', [ruling.weightLimit, r.constant], say);
      const most = (significant: number) =>
        saidApart(ruling.weightLimit, 'mass', [mass], say, { significant, toward: 'down' });
      const limit = most(most(3) === load ? 4 : 3);
      const best = bestChange(changes);
      const help = best ? ` What helps most: ${changeWords(best.change, say)}.` : '';
      if (ruling.weightLimit === 0) {
        const why = MULTIPLIERS[r.costliest];
        return {
          verdict: 'stop',
          say: `The method allows no such lift at all: ${why} is beyond its range. Change that.`,
        };
      }
      // Where all leave the whole, as the picture rounds it, none costs anything.
      const costs =
        ruling.multipliers[r.costliest] < 0.995
          ? ` The costliest is ${MULTIPLIERS[r.costliest]}.`
          : '';
      const where = r.atEnd ? ' where it is set down' : '';
      if (mass > r.constant)
        return { verdict: 'stop', say: tooHeavy(load, mass, r.constant, say, ruling.weightLimit) };
      if (ruling.liftingIndex > INDEX_HIGH)
        return {
          verdict: 'stop',
          say: `${load} is ${ruling.liftingIndex.toFixed(1)} times the limit${where}: many are at raised risk from such work. Do not lift it so.${help}`,
        };
      if (ruling.liftingIndex > INDEX_AIM && !(best && best.liftingIndex <= INDEX_AIM))
        return {
          verdict: 'stop',
          say: `${load} is above the ${limit} of this lift${where}, and no one better way of lifting it is enough.${help} Do that and more. ${handsOrGear(mass, ruling.weightLimit, say)}`,
        };
      if (ruling.liftingIndex > INDEX_AIM)
        return {
          verdict: 'look',
          say: `${load} is above the ${limit} of this lift${where}.${costs}${help}`,
        };
      return {
        verdict: 'good',
        say: `${load} is within the ${limit} that nearly all healthy workers could lift like this${where}.${costs}${help}`,
      };
    };
    return covered(judged, special, 'the limit as too high');
  },
  notes: () => [COVERED],
  folded: 'Setting down with care',
  working: [
    {
      tex: String.raw`\begin{gathered}RWL = LC \cdot HM \cdot VM\\ {}\cdot DM \cdot AM \cdot FM \cdot CM\end{gathered}`,
      put: ({ ruling, constant }, _, say) => {
        const m = ruling.multipliers;
        const factors = [
          m.horizontal,
          m.vertical,
          m.distance,
          m.asymmetry,
          m.frequency,
          m.coupling,
        ].map((x) => x.toFixed(3));
        return `RWL = ${say(constant, 'mass')} × ${factors.join(' × ')} = ${say(ruling.weightLimit, 'mass', { toward: 'down' })}`;
      },
    },
    {
      tex: String.raw`LI = \frac{m}{RWL}`,
      put: ({ ruling }, { mass }, say) =>
        Number.isFinite(ruling.liftingIndex)
          ? `LI = ${say(mass, 'mass')} ÷ ${say(ruling.weightLimit, 'mass', { toward: 'down' })} = ${ruling.liftingIndex.toFixed(2)}`
          : 'The limit is 0, so there is no index.',
    },
  ],
  figure: ({ result }) => (
    <MultiplierBars multipliers={result.ruling.multipliers} costliest={result.costliest} />
  ),
  tables: [
    {
      caption: 'What one change does',
      columns: ['Change, alone', 'Limit then', 'Index then'],
      rows: ({ changes }, _, say) =>
        changes.length === 0
          ? [['nothing left to change', '—', '—']]
          : changes.map(({ change, weightLimit, liftingIndex }) => [
              changeWords(change, say),
              say(weightLimit, 'mass', { toward: 'down' }),
              Number.isFinite(liftingIndex) ? liftingIndex.toFixed(2) : 'none',
            ]),
    },
    {
      caption: 'What the method does not cover',
      columns: ['Not for'],
      rows: () => Object.values(SCOPE_WORDS).map((words) => [words]),
    },
  ],
  cautions: ['heavy-lift', 'falling-and-tipping'],
  defers: [
    'The person who lifts decides, and may refuse. Local manual-handling rules outrank this method.',
  ],
  sources: ['niosh-lifting-1994', 'manual-handling-general', 'common-practice'],
});

/** Whether one lift has the lower limit; if both are 0 because of their rate, the limit without it decides. */
const isHarder = (one: LiftVerdict, other: LiftVerdict) =>
  one.weightLimit === other.weightLimit
    ? one.weightLimitWithoutRate < other.weightLimitWithoutRate
    : one.weightLimit < other.weightLimit;

/** An index over a limit of nought is no number to show. */
function finite(index: number): number | undefined {
  return Number.isFinite(index) ? index : undefined;
}
