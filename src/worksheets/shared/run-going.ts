import { localStore } from '../../bench/local-store.ts';
import { type Correcting, isCorrecting } from './run-correction.ts';

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
}

/** The run that was going when the page was last open. */
export function readGoing(steps: number): Going | undefined {
  try {
    const { id, step, begun, stopped, undo } = JSON.parse(
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
