import { localStore } from '../../bench/local-store.ts';
import { type Correcting, isCorrecting } from './run-correction.ts';
import type { RunPlan } from './run-plan.ts';

const KEY = 'suds.run.1';

/** The batch that is run at the bench, and how far it has come. */
export interface Going {
  readonly id: string;
  readonly step: number;
  /** When it was begun, ms: a foam clock started before that is another batch's. */
  readonly begun?: number;
  /** Left, and may be gone on with. */
  readonly stopped?: true;
  /** The last correction, until it is taken back. */
  readonly undo?: Correcting;
  /** The amounts it is weighed by: what changes on the bench from then on is another batch’s. */
  readonly plan?: RunPlan;
}

/** On to another step, or back. Once one is done, a plan of the reader’s own is this batch’s. */
export const turned = (going: Going, by: number, plan: RunPlan | undefined): Going => ({
  ...going,
  step: going.step + by,
  ...(by > 0 && plan && !plan.example && { plan }),
});

const AMOUNTS = [
  'cement',
  'water',
  'sand',
  'foamVolume',
  'wetDensity',
  'baseDensity',
  'foamDensity',
  'loads',
  'largestLoad',
] as const satisfies readonly (keyof RunPlan)[];

const isPlan = (x: unknown): x is RunPlan =>
  typeof x === 'object' &&
  x !== null &&
  AMOUNTS.every((name) => Number.isFinite((x as Partial<RunPlan>)[name]));

/** The run that was going when the page was last open. */
export function readGoing(steps: number): Going | undefined {
  try {
    const { id, step, begun, stopped, undo, plan } = JSON.parse(
      localStore()?.getItem(KEY) ?? '',
    ) as Going;
    if (typeof id !== 'string' || !Number.isInteger(step) || step < 0 || step >= steps)
      return undefined;
    return {
      id,
      step,
      ...(typeof begun === 'number' && { begun }),
      ...(stopped === true && { stopped }),
      ...(isCorrecting(undo) && { undo }),
      ...(isPlan(plan) && { plan }),
    };
  } catch {
    return undefined;
  }
}

export function writeGoing(going: Going | undefined): void {
  try {
    if (going) localStore()?.setItem(KEY, JSON.stringify(going));
    else localStore()?.removeItem(KEY);
  } catch {
    // Not remembered: the step begins anew after a reload, the record is stored all the same.
  }
}
