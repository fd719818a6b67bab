import { demand } from '../../domain-error.ts';
import { frequencyMultiplier } from './frequency.ts';
import type { Form, Lift, Rounding } from './lift.ts';
import { judgeLift, type LiftVerdict } from './single.ts';

export interface Task {
  readonly lift: Lift;
  /** The load of this task, kg. */
  readonly mass: number;
}

export interface CompositeVerdict {
  /** CLI. Infinity when some task or the summed rate is beyond the method. */
  readonly compositeIndex: number;
  /** Each task by falling single-task index, with what it adds; the first adds its own index. */
  readonly tasks: readonly {
    /** Its place in the list given, from 0. */
    readonly given: number;
    readonly verdict: LiftVerdict;
    /** Its rate added to those before it, lifts a minute. */
    readonly summedRate: number;
    /** What it adds to the composite index. */
    readonly adds: number;
  }[];
}

/**
 * How hard is a job of several lifts? Tasks are numbered by falling single-task index;
 * CLI = STLI₁ + Σ FILIⱼ · (1/FM(F₁+…+Fⱼ) − 1/FM(F₁+…+Fⱼ₋₁)), each FM read for task j's own duration and
 * height of hands.
 * @param tasks at least one; masses kg
 * @returns indices without unit
 * @throws {DomainError} for no task and for what `judgeLift` refuses
 * @source niosh-lifting-1994 pp. 43–46 and 56–57 (the method; page numbers of the method from memory)
 */
export function judgeComposite(
  tasks: readonly Task[],
  form: Form = 'metric',
  rounding: Rounding = 'none',
): CompositeVerdict {
  demand('tasks', tasks.length, 'count', { min: 1 });
  const ranked = tasks
    .map((task, given) => ({
      given,
      task,
      verdict: judgeLift(task.lift, task.mass, form, rounding),
    }))
    .sort((a, b) => descending(a.verdict.liftingIndex, b.verdict.liftingIndex));
  let rate = 0;
  let compositeIndex = 0;
  const judged = ranked.map(({ given, task, verdict }, j) => {
    const before = rate;
    rate += task.lift.perMinute;
    const adds = j === 0 ? verdict.liftingIndex : added(task.lift, verdict, [before, rate], form);
    compositeIndex += adds;
    return { given, verdict, summedRate: rate, adds };
  });
  return { compositeIndex, tasks: judged };
}

function added(
  lift: Lift,
  verdict: LiftVerdict,
  rates: readonly [number, number],
  form: Form,
): number {
  const [before, after] = rates.map((perMinute) =>
    frequencyMultiplier({ ...lift, perMinute }, form),
  );
  if (!after || !before || !Number.isFinite(verdict.liftingIndexWithoutRate))
    return Number.POSITIVE_INFINITY;
  return verdict.liftingIndexWithoutRate * (1 / after - 1 / before);
}

function descending(a: number, b: number): number {
  return a === b ? 0 : b > a ? 1 : -1;
}
