import { rankJobChanges } from '../../core/demould/lifting-equation/advice.ts';
import { judgeComposite } from '../../core/demould/lifting-equation/composite.ts';
import {
  LOAD_CONSTANT_METRIC,
  LOAD_CONSTANT_US,
} from '../../core/demould/lifting-equation/lift.ts';
import { INDEX_AIM, INDEX_HIGH } from '../../core/demould/lifting-equation/single.ts';
import { rows } from '../../islands/fields/rows.tsx';
import { type Judgement, worksheet } from '../../islands/worksheet.ts';
import { saidApart } from '../shared/words/said-apart.ts';
import {
  bestChange,
  COVERED,
  changeWords,
  covered,
  duration,
  liftCells,
  methodForm,
  shortReach,
  special,
} from './lift-fields.ts';
import { tooHeavy } from './too-heavy.ts';

const finite = (x: number) => (Number.isFinite(x) ? x : undefined);

export default worksheet({
  id: 'lifting-job',
  question: 'Several different lifts in one spell of work: is it too much?',
  fields: {
    tasks: rows({
      label: 'Lifts',
      help: 'One for each kind of lift that recurs through the spell.',
      row: 'lift',
      most: 8,
      example: [
        {
          mass: '13.35 kg',
          horizontal: '30 cm',
          vertical: '40 cm',
          travel: '50 cm',
          asymmetry: '0 °',
          perMinute: '0.3',
          coupling: 'good',
        },
        {
          mass: '4.86 kg',
          horizontal: '40 cm',
          vertical: '10 cm',
          travel: '75 cm',
          asymmetry: '30 °',
          perMinute: '0.5',
          coupling: 'poor',
        },
      ],
      of: liftCells,
    }),
    duration,
    special: { ...special, label: 'Does one of these apply to any?' },
    form: methodForm,
  },
  folded: 'Metric or US form',
  work: ({ tasks, duration, form }) => {
    const lifts = tasks.map((task) => ({ mass: task.mass, lift: { ...task, duration } }));
    return { ...judgeComposite(lifts, form), best: bestChange(rankJobChanges(lifts, form)) };
  },
  results: {
    index: {
      label: 'Composite lifting index',
      kind: 'count',
      of: (r) => finite(r.compositeIndex),
      significant: 2,
      note: 'aim for 1 or less; above 3 is high',
    },
    worst: {
      label: 'Hardest lift alone',
      kind: 'count',
      of: (r) => finite(r.order[0]?.adds ?? 0),
      significant: 2,
    },
    limit: {
      label: 'Limit for that lift alone',
      kind: 'mass',
      of: (r) => r.verdicts[r.order[0]?.given ?? 0]?.weightLimit,
      toward: 'down',
    },
  },
  doubts: (_, { tasks }, say) =>
    shortReach(
      tasks.map(({ horizontal }) => horizontal),
      say,
    ),
  judge: ({ compositeIndex, order, best }, { tasks, form, special }, say) => {
    const judged = (): Judgement => {
      const most = form === 'us' ? LOAD_CONSTANT_US : LOAD_CONSTANT_METRIC;
      const heaviest = Math.max(...tasks.map(({ mass }) => mass));
      if (heaviest > most) {
        const load = `Lift ${tasks.findIndex(({ mass }) => mass === heaviest) + 1}, ${saidApart(heaviest, 'mass', [most], say)},`;
        return { verdict: 'stop', say: tooHeavy(load, heaviest, most, say) };
      }
      const worst = `lift ${(order[0]?.given ?? 0) + 1}`;
      if (!Number.isFinite(compositeIndex))
        return {
          verdict: 'stop',
          say: `The method allows no such work: ${worst}, or the lifts of a minute together, are beyond its range.`,
        };
      // Above 1 it does not read as 1.
      const index = saidApart(compositeIndex, 'count', [INDEX_AIM, INDEX_HIGH], say, {
        decimals: 1,
      });
      if (compositeIndex > INDEX_HIGH)
        return {
          verdict: 'stop',
          say: `Together ${index}: many are at raised risk from such work. Begin with ${worst}; it counts for most.`,
        };
      const enough = best && best.compositeIndex <= INDEX_AIM;
      if (compositeIndex > INDEX_AIM) {
        const help = best
          ? ` What helps most: ${changeWords(best.change, say)}. Begin with ${worst}.`
          : '';
        return {
          verdict: enough ? 'look' : 'stop',
          say: enough
            ? `Together ${index}, above 1.${help}`
            : `Together ${index}, above 1, and no one better way of lifting is enough.${help} Do that and more, lift less at a time, or share the work.`,
        };
      }
      return {
        verdict: 'good',
        say: `Together ${index}: within what nearly all healthy workers could do.`,
      };
    };
    return covered(judged, special, 'the index as too low');
  },
  notes: () => [
    COVERED,
    'The hardest lift counts whole; each other adds what its own rate costs on top of the rates before it. So a second light lift matters through how often it comes.',
  ],
  blames: {
    horizontal: 'tasks',
    vertical: 'tasks',
    travel: 'tasks',
    asymmetry: 'tasks',
    perMinute: 'tasks',
    mass: 'tasks',
  },
  working: [
    {
      tex: String.raw`\begin{gathered}CLI = STLI_1 \\ {}+ \sum_{j>1} FILI_j\left(\frac{1}{FM_{1\ldots j}} - \frac{1}{FM_{1\ldots j-1}}\right)\end{gathered}`,
      put: ({ order, compositeIndex }) =>
        Number.isFinite(compositeIndex)
          ? `CLI = ${order.map(({ adds }) => adds.toFixed(3)).join(' + ')} = ${compositeIndex.toFixed(3)}`
          : 'One of the lifts, or the summed rate, is beyond the method.',
    },
  ],
  tables: [
    {
      caption: 'Lift by lift, the hardest first',
      columns: ['Lift', 'Mass', 'Limit alone', 'Index alone', 'Adds'],
      rows: ({ order, verdicts }, { tasks }, say) =>
        order.map(({ given, adds }) => {
          const { weightLimit, liftingIndex } = verdicts[given]!;
          const number = (x: number) => (Number.isFinite(x) ? x.toFixed(2) : 'beyond');
          return [
            `${given + 1}`,
            say(tasks[given]!.mass, 'mass', { plain: true, significant: 4 }),
            say(weightLimit, 'mass', { toward: 'down' }),
            number(liftingIndex),
            number(adds),
          ];
        }),
    },
  ],
  cautions: ['heavy-lift'],
  defers: [
    'The person who lifts decides, and may refuse. Local manual-handling rules outrank this method.',
  ],
  sources: ['niosh-lifting-1994', 'niosh-lifting-examples', 'manual-handling-general'],
});
