import { Unsettled } from '../../domain-error.ts';

/** Thrown when a solver did not converge. An unconverged number is never returned. */
export class NotConverged extends Unsettled {
  override readonly name = 'NotConverged';
  /** What did not converge: 'mass-balance', 'activity', 'root'. */
  readonly what: string;
  /** Steps taken before giving up. */
  readonly steps: number;

  constructor(what: string, steps: number) {
    super(`${what} did not converge in ${steps} steps`);
    this.what = what;
    this.steps = steps;
  }
}
