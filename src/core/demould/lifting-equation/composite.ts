import { demand } from '../../domain-error.ts';
import { frequencyMultiplier } from './frequency.ts';
import type { Duration, Form, Lift, Rounding } from './lift.ts';
import { judgeLift, type LiftVerdict } from './single.ts';

export interface Task {
  readonly lift: Lift;
  /** The load of this task, kg. */
  readonly mass: number;
}

/** What the composite index needs from one task. */
export interface TaskIndices {
  /** STLI. */
  readonly liftingIndex: number;
  /** FILI. */
  readonly liftingIndexWithoutRate: number;
  /** Lifts a minute. */
  readonly perMinute: number;
  readonly duration: Duration;
  /** V of the hands, m. */
  readonly vertical: number;
}

export interface CompositeIndex {
  /** CLI. Infinity when some task or the summed rate is beyond the method. */
  readonly compositeIndex: number;
  /** Each task by falling single-task index, with what it adds; the first adds its own index. */
  readonly order: readonly {
    /** Its index in the given list, from 0. */
    readonly given: number;
    /** Its rate added to those before it, lifts a minute. */
    readonly summedRate: number;
    /** What it adds to the composite index. */
    readonly adds: number;
  }[];
}

/**
 * How hard are several tasks together, given the indices of each? Numbered by falling single-task
 * index, CLI = STLI₁ + Σ FILIⱼ · (1/FM(F₁+…+Fⱼ) − 1/FM(F₁+…+Fⱼ₋₁)), each FM for task j's own
 * duration and height of hands. Range: that of the method, in `scope.ts`.
 * @param tasks at least one
 * @throws {DomainError} for no task and what `frequencyMultiplier` refuses
 * @source niosh-lifting-1994 (the composite method; its pages from memory)
 */
export function combineTasks(tasks: readonly TaskIndices[], form: Form): CompositeIndex {
  demand('tasks', tasks.length, 'count', { min: 1 });
  const ranked = tasks
    .map((task, given) => ({ task, given }))
    .sort((a, b) => descending(a.task.liftingIndex, b.task.liftingIndex));
  let rate = 0;
  const order = ranked.map(({ task, given }, j) => {
    const before = rate;
    rate += task.perMinute;
    const adds = j === 0 ? task.liftingIndex : added(task, [before, rate], form);
    return { given, summedRate: rate, adds };
  });
  return { compositeIndex: order.reduce((sum, { adds }) => sum + adds, 0), order };
}

/**
 * How hard is a job of several lifts? Each is judged alone, then together by `combineTasks`. Range:
 * that of the method, in `scope.ts`.
 * @param tasks at least one; masses kg
 * @returns indices without unit, and the verdict on each task in the order given
 * @throws {DomainError} for no task and for what `judgeLift` refuses
 * @source niosh-lifting-1994 (the composite method; its pages from memory)
 */
export function judgeComposite(
  tasks: readonly Task[],
  form: Form = 'metric',
  rounding: Rounding = 'none',
): CompositeIndex & { readonly verdicts: readonly LiftVerdict[] } {
  const verdicts = tasks.map(({ lift, mass }) => judgeLift(lift, mass, form, rounding));
  const indices = tasks.map(({ lift }, i) => ({ ...lift, ...verdicts[i]! }));
  return { ...combineTasks(indices, form), verdicts };
}

function added(task: TaskIndices, rates: readonly [number, number], form: Form): number {
  const [before, after] = rates.map((perMinute) =>
    frequencyMultiplier({ ...task, perMinute }, form),
  );
  // Both multipliers read the same column, so the faster rate is the first to have none.
  if (!after || !Number.isFinite(task.liftingIndexWithoutRate)) return Number.POSITIVE_INFINITY;
  return task.liftingIndexWithoutRate * (1 / after - 1 / before!);
}

function descending(a: number, b: number): number {
  return a === b ? 0 : b > a ? 1 : -1;
}
