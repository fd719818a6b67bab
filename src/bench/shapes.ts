import { isRecord } from './entries.ts';

/** A clock that is running or stopped, in milliseconds since 1970. It survives leaving the page. */
export interface Clock {
  readonly start: number;
  /** When it was stopped. Absent: it is running. */
  readonly stop?: number;
  /** The device clock was set back while it ran, so its running time is unknown. */
  readonly setBack?: true;
}

/** Whether something read from storage is a clock. */
export const isClock = (x: unknown): x is Clock =>
  isRecord(x) && Number.isFinite(x.start) && (x.stop === undefined || Number.isFinite(x.stop));

/** Which batch is being run, and how far it has come. */
export interface Begun {
  readonly id: string;
  readonly step: number;
}

/** Whether something read from storage has that shape. */
export const isBegun = (x: unknown): x is Begun =>
  isRecord(x) && typeof x.id === 'string' && Number.isInteger(x.step) && Number(x.step) >= 0;
