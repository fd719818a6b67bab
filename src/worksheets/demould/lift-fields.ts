import type { MultiplierName } from '../../core/demould/lifting-equation/advice.ts';
import type { Coupling, Duration, Form } from '../../core/demould/lifting-equation/lift.ts';
import { NEAREST_REACH } from '../../core/demould/lifting-equation/multipliers.ts';
import { type JobFacts, outsideScope } from '../../core/demould/lifting-equation/scope.ts';
import { justUnder, SLIVER } from '../../core/quantity/dust.ts';
import type { Say } from '../../islands/engine/say.ts';
import { choice, number } from '../../islands/fields.ts';
import type { Judgement } from '../../islands/worksheet.ts';

export const CM = { metric: 'cm', us: 'in' } as const;

/** What the lifting equation asks of one lift; the same in the single sheet and in each row of the job. */
export const liftCells = {
  mass: number('mass', { label: 'Mass', example: '4.86 kg', min: '0.01 kg', max: '500 kg' }),
  horizontal: number('length', {
    label: 'Reach from ankles to hands',
    help: 'Along the floor, from between the ankles to between the hands.',
    example: '40 cm',
    min: '1 cm',
    max: '2 m',
    units: CM,
  }),
  vertical: number('length', {
    label: 'Hands above the floor',
    example: '10 cm',
    min: '0 cm',
    max: '3 m',
    units: CM,
  }),
  travel: number('length', {
    label: 'Hands go up or down by',
    example: '75 cm',
    min: '0 cm',
    max: '3 m',
    units: CM,
  }),
  asymmetry: number('angle', {
    label: 'Twist to the side',
    help: 'Of the load, away from straight ahead.',
    example: '30 °',
    min: '0 °',
    max: '180 °',
  }),
  perMinute: number('count', {
    label: 'Lifts a minute',
    help: 'Averaged over a quarter of an hour.',
    example: '0.5',
    min: '0',
    max: '30',
  }),
  coupling: choice<Coupling>({
    label: 'Grip',
    options: {
      good: 'Good: handles, cut-outs',
      fair: 'Fair: fingers bend square under it',
      poor: 'Poor: bare edges, bulky, slippery',
    },
    example: 'poor',
  }),
};

export const duration = choice<Duration>({
  label: 'How long the lifting lasts',
  help: 'With rest or light work after it: as long as the work after an hour, a third of it after two.',
  options: {
    short: 'Up to an hour',
    moderate: 'One to two hours',
    long: 'Two to eight hours',
  },
  example: 'short',
});

export const methodForm = choice<Form>({
  label: 'Form of the method',
  help: 'It is printed twice, with rounded constants that differ a little.',
  options: {
    metric: 'Metric: 23\u00a0kg (50.7\u00a0lb), centimetres',
    us: 'US: 51\u00a0lb (23.1\u00a0kg), inches',
  },
  example: 'metric',
  folded: true,
});

/** What puts a lift, or any one of several, outside the method. */
export const special = choice({
  label: 'Does one of these apply?',
  options: {
    none: 'None of them',
    oneHand: 'I use one hand',
    kneeling: 'I kneel or sit',
    cramped: 'I cannot stand freely',
    slippery: 'The floor is wet or slippery',
    unstable: 'The load shifts: a bucket of mix',
    cold: 'It is colder than 19\u00a0°C (66\u00a0°F) there',
    warm: 'It is warmer than 26\u00a0°C (79\u00a0°F) there',
    unsaid: 'Not said yet',
  },
  example: 'none',
  unsaid: 'unsaid',
});

const FACTS: Readonly<Record<string, JobFacts>> = {
  none: {},
  oneHand: { bothHands: false },
  kneeling: { seatedOrKneeling: true },
  cramped: { crampedSpace: true },
  slippery: { friction: 0.2 },
  unstable: { unstableLoad: true },
  cold: { temperature: 280 },
  warm: { temperature: 305 },
};

/**
 * The judgement of the method where it covers the lift. `special`: what is special about the lift;
 * `taken`: how to take the figure where the method does not cover it.
 */
export function covered(judged: () => Judgement, special: string, taken: string): Judgement {
  const [outside] = outsideScope(FACTS[special] ?? {});
  if (outside && outside !== 'temperature')
    return {
      verdict: 'stop',
      say: `The method does not cover ${SCOPE_WORDS[outside]}. Take ${taken}, and change that first.`,
    };
  const all = judged();
  if (!outside && (special !== 'unsaid' || all.verdict === 'stop')) return all;
  // In such air it makes no claim, and forbids nothing.
  const [first, else_] = outside
    ? [`Take ${taken}: the method is not for ${SCOPE_WORDS[outside]}.`, 'In between: ']
    : [
        'Say first whether the floor is wet, the load shifts, it is colder than 19\u00a0°C (66\u00a0°F) or warmer than 26\u00a0°C (79\u00a0°F), or you kneel, lack room or use one hand: the method covers none of these.',
        'If none applies: ',
      ];
  return {
    verdict: all.verdict === 'stop' ? 'stop' : 'look',
    say: `${first} ${all.verdict === 'good' ? else_ : ''}${all.say}`,
  };
}

/**
 * The doubt about a reach, m, shorter than the body allows; undefined for others. The method counts a
 * shorter one as its least.
 */
export function shortReach(reaches: readonly number[], say: Say): string | undefined {
  const shortest = Math.min(...reaches);
  if (shortest >= justUnder(NEAREST_REACH, SLIVER)) return undefined;
  const cm = (metres: number) => say(metres, 'length', { units: CM, plain: true });
  return `Measure the reach again, from between the ankles to between the hands: ${cm(shortest)} is less than the body leaves. It counts as the least in the method, 25\u00a0cm (10\u00a0in).`;
}

/** What the method is for, under one lift and under several. */
export const COVERED =
  'The method is for lifting and lowering with both hands, standing, on firm ground. Carrying, pushing, and lifting by two are not covered; nor are backs that hurt already.';

/** What each multiplier is about. */
export const MULTIPLIERS: Readonly<Record<MultiplierName, string>> = {
  horizontal: 'reach',
  vertical: 'height of the hands',
  distance: 'travel up or down',
  asymmetry: 'twist',
  frequency: 'how often',
  coupling: 'grip',
};

const CHANGES = {
  'hold-closer': (by: By) => `hold it ${by(0.1)} closer`,
  'start-nearer-waist': (by: By) => `start ${by(0.25)} nearer waist height`,
  'shorter-travel': 'halve the way up or down',
  'turn-feet': 'turn the feet, 45° less twist',
  'halve-rate': 'lift half as often',
  'better-grip': 'get a better grip',
  'halve-mass': 'halve the mass',
} as const;

type By = (metres: number) => string;

/** One change of a lift, in words and in the reader's units. */
export function changeWords(change: keyof typeof CHANGES, say: Say): string {
  const words = CHANGES[change];
  return typeof words === 'string'
    ? words
    : words((by) => say(by, 'length', { units: CM, decimals: 0 }));
}

/** Halving the load always helps; what else does is the better news. */
export const bestChange = <C extends { readonly change: keyof typeof CHANGES }>(
  changes: readonly C[],
) => changes.find(({ change }) => change !== 'halve-mass') ?? changes[0];

/** The limits of the method, by the codes of core. */
export const SCOPE_WORDS: Readonly<Record<string, string>> = {
  'one-hand': 'lifting with one hand',
  'seated-or-kneeling': 'sitting or kneeling',
  'cramped-space': 'a cramped place',
  'shovel-or-barrow': 'shovels and barrows',
  'unstable-load': 'loads that shift, such as an open bucket of slurry',
  'slippery-floor': 'a slippery floor',
  temperature: 'air below 19\u00a0°C (66\u00a0°F) or above 26\u00a0°C (79\u00a0°F)',
  humidity: 'air drier than 35\u00a0% or damper than 50\u00a0%',
  'long-day': 'more than eight hours',
  fast: 'fast, jerking lifts',
};
