import { firstAtOrBelow, timeAtOrBelow } from '../../core/curing/cold-spells.ts';
import { DIN_COLD, type GainClass } from '../../core/curing/curing-rules.ts';
import { extremesOf } from '../../core/curing/history.ts';
import { FREEZES_AT, tooHotToCure } from '../../core/curing/limits.ts';
import { curingPlan, type PlanEntry } from '../../core/curing/plan.ts';
import { choice, number, type Values } from '../../islands/fields.ts';
import { cement, GROWTH, ownGrowth } from '../shared/part/cement-growth.ts';
import { HOURS } from '../shared/words/amounts.ts';
import { BY_ITS_LETTERS } from '../shared/words/cement-bag.ts';
import { byHours } from '../shared/words/spelt.ts';
import { lawOf } from './age-laws.ts';
import { temperatureFields } from './curing-fields.ts';
import { historyOf } from './curing-history.ts';

/** What “How long must it stay covered and damp?” asks for. */
export const planFields = {
  ...temperatureFields,
  gain: choice({
    label: 'It gains strength',
    help: 'By the strength at 2 days over that at 28. Not known: take slow.',
    options: {
      rapid: 'Rapidly: half or more in 2 days',
      medium: 'Middling: 30\u00a0% or more',
      slow: 'Slowly: 15\u00a0% or more',
      'very-slow': 'Very slowly: less',
    } satisfies Record<GainClass, string>,
    example: 'slow',
  }),
  binder: choice({
    label: 'Binder and steel',
    help: BY_ITS_LETTERS,
    options: {
      plain: 'Portland cement, no steel',
      other: 'A blend, or steel in it',
    },
    example: 'plain',
  }),
  cement: { ...cement, folded: true },
  growth: ownGrowth,
  set: number('time', {
    label: 'Initial set',
    help: 'For European class 1 alone.',
    example: '2.49 h',
    min: '1 min',
    max: '14 d',
    units: HOURS,
    spelt: byHours,
    optional: true,
    takes: 'curing.initialSet',
    folded: true,
  }),
} as const;

/** Rules that set a time for curing, by what the part is; the European classes stand beside them. */
const asked = (rapid: boolean, plain: boolean): readonly PlanEntry['rule'][] => [
  'din-1045-3',
  plain ? 'nhbc-plain' : 'nhbc-reinforced',
  rapid ? 'aci-high-early' : 'aci-normal',
];

/** When curing ends by each rule, which of those that apply is the longest, and what prevents an end. */
export function planWorked(v: Values<typeof planFields>) {
  const known = historyOf(v);
  const entries = curingPlan({
    history: known.history,
    gain: v.gain,
    law: lawOf('fhp'),
    // Before 28 days the greater is the slower.
    coefficient: Math.max(GROWTH[v.cement][0], v.growth ?? 0),
    set: v.set,
  });
  const rules = asked(v.cement === 'rapid', v.binder === 'plain');
  const chosen = entries.filter(({ rule }) => rules.includes(rule));
  const ends = chosen.flatMap((entry) => (entry.ends === undefined ? [] : [entry.ends]));
  const { ends: din, mean } = entries.find(({ rule }) => rule === 'din-1045-3')!;
  const freezing = firstAtOrBelow(known.history, FREEZES_AT);
  // Whether every rule has ended by the first frost.
  const late = entries.every(
    // Class 1 has no end in the cold, or where the set is not known, and is never the last.
    ({ rule, ends: at = Infinity }) => rule === 'en-class-1' || at <= (freezing ?? 0),
  );
  const freezes = late ? undefined : freezing;
  const longest = Math.max(...ends);
  const { coldest, warmest } = extremesOf(known.history);
  const endless = chosen.some((entry) => entry.ends === undefined);
  // 5 °C itself counts as warm, whatever the last digit of a reading in °F.
  const cold = timeAtOrBelow(known.history, DIN_COLD - 1e-6, longest);
  return {
    known,
    entries,
    freezes,
    freezesLater: late ? freezing : undefined,
    /** American practice gives no end, for it counts no time below 10 °C; the others do. */
    endless,
    /** Frost, cold or heat: no end holds, and none is given. */
    stopped: freezes !== undefined || (endless && cold > 0) || tooHotToCure(warmest),
    coldest,
    warmest,
    longest,
    longestRule: chosen.find(({ ends: at }) => at === longest)!.rule,
    /** How much of the longest it is below 5 °C, s. */
    cold,
    din,
    mean,
  };
}
