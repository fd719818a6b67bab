import { judgeComposite, type Task } from './composite.ts';
import type { Coupling, Form, Lift, Multipliers } from './lift.ts';
import { judgeLift } from './single.ts';

export type MultiplierName = keyof Multipliers;

export interface Change {
  /** The change, as a short code. */
  readonly change:
    | 'hold-closer'
    | 'start-nearer-waist'
    | 'shorter-travel'
    | 'turn-feet'
    | 'halve-rate'
    | 'better-grip'
    | 'halve-mass';
  readonly lift: Lift;
  readonly mass: number;
  /** The limit, kg, and the index after the change. */
  readonly weightLimit: number;
  readonly liftingIndex: number;
}

/** The size of one practicable change, m. Common practice, no source. @source common-practice */
const NEARER_BY = 0.1;
const RAISED_BY = 0.25;
/**
 * One practicable change of twist, rad (45°). Common practice, no source. @source common-practice
 */
const TURNED_BY = Math.PI / 4;

/**
 * Which multiplier costs most? The smallest, since they multiply. Ties go to the first in the order
 * of the equation. No range: a comparison.
 * @source niosh-lifting-1994 p. 7 (the product)
 */
export function costliestMultiplier(m: Multipliers): MultiplierName {
  const names = Object.keys(m) as MultiplierName[];
  return names.reduce((worst, name) => (m[name] < m[worst] ? name : worst));
}

/**
 * What one change helps most? Tries one practicable step of each kind alone and ranks them by the
 * lifting index they leave, best first: 10 cm closer, 25 cm nearer waist height (75 cm), travel
 * halved, feet turned 45° nearer, half the rate, the next better grip, half the mass. The sizes of
 * the steps are common practice, no source; a step that changes nothing is left out. Range as
 * `judgeLift`.
 * @param lift as for `judgeLift`
 * @param mass kg
 * @throws {DomainError} as `judgeLift`
 * @source common-practice
 */
export function rankChanges(lift: Lift, mass: number, form: Form = 'metric'): readonly Change[] {
  const now = judgeLift(lift, mass, form);
  const tried: readonly [Change['change'], Partial<Lift>, number?][] = [
    // Closer than 25 cm gains nothing.
    ['hold-closer', { horizontal: Math.max(lift.horizontal - NEARER_BY, 0.25) }],
    ['start-nearer-waist', { vertical: toward(lift.vertical, 0.75, RAISED_BY) }],
    ['shorter-travel', { travel: lift.travel / 2 }],
    ['turn-feet', { asymmetry: toward(lift.asymmetry, 0, TURNED_BY) }],
    ['halve-rate', { perMinute: lift.perMinute / 2 }],
    ['better-grip', { coupling: BETTER[lift.coupling] }],
    ['halve-mass', {}, mass / 2],
  ];
  return tried
    .map(([change, part, lighter = mass]) => {
      const changed = { ...lift, ...part };
      const { weightLimit, liftingIndex } = judgeLift(changed, lighter, form);
      return { change, lift: changed, mass: lighter, weightLimit, liftingIndex };
    })
    .filter((c) => c.liftingIndex < now.liftingIndex)
    .sort((a, b) => a.liftingIndex - b.liftingIndex);
}

/**
 * Which single change helps most for a lift judged at several ends? Each kind of change of
 * `rankChanges`, made at every end that it helps, judged by the end that then allows least; best
 * first. Range as `judgeLift`.
 * @param ends the lift as it is at each, at least one
 * @param mass kg
 * @throws {DomainError} as `judgeLift`
 * @source common-practice
 */
export function rankChangesAtEnds(
  ends: readonly Lift[],
  mass: number,
  form: Form = 'metric',
): readonly Change[] {
  const worst = (ways: readonly Change[]) =>
    ways.reduce((a, b) => (b.liftingIndex > a.liftingIndex ? b : a));
  const steps = ends.map((lift) => rankChanges(lift, mass, form));
  const kinds = [...new Set(steps.flat().map(({ change }) => change))];
  const asItIs = (change: Change['change']) =>
    ends.map((lift) => ({ change, lift, mass, ...judgeLift(lift, mass, form) }));
  return kinds
    .flatMap((change) => {
      const now = asItIs(change);
      const then = worst(now.map((end, i) => steps[i]!.find((s) => s.change === change) ?? end));
      return then.liftingIndex < worst(now).liftingIndex ? [then] : [];
    })
    .sort((a, b) => a.liftingIndex - b.liftingIndex);
}

/**
 * Which single change helps most for a job of several lifts? Each kind of change of `rankChanges`,
 * made to every lift that it helps, ranked by the composite index it leaves, best first; one that
 * does not lower it is left out. Range as `judgeComposite`.
 * @param tasks at least one; masses kg
 * @returns the index has no unit
 * @throws {DomainError} as `judgeComposite`
 * @source common-practice
 */
export function rankJobChanges(
  tasks: readonly Task[],
  form: Form = 'metric',
): readonly { readonly change: Change['change']; readonly compositeIndex: number }[] {
  const steps = tasks.map(({ lift, mass }) => rankChanges(lift, mass, form));
  const kinds = new Set(steps.flat().map(({ change }) => change));
  const now = judgeComposite(tasks, form).compositeIndex;
  return [...kinds]
    .map((change) => {
      const changed = tasks.map((task, i) => steps[i]!.find((s) => s.change === change) ?? task);
      return { change, compositeIndex: judgeComposite(changed, form).compositeIndex };
    })
    .filter(({ compositeIndex }) => compositeIndex < now)
    .sort((a, b) => a.compositeIndex - b.compositeIndex);
}

const BETTER: Readonly<Record<Coupling, Coupling>> = { poor: 'fair', fair: 'good', good: 'good' };

function toward(value: number, target: number, step: number): number {
  const gap = target - value;
  return Math.abs(gap) <= step ? target : value + Math.sign(gap) * step;
}
