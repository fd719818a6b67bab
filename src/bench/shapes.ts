import { isRecord } from './entries.ts';

/** A clock that is running or was stopped, in milliseconds since 1970: it outlives the page it ran on. */
export interface Clock {
  readonly start: number;
  /** When it was stopped. Absent: it runs. */
  readonly stop?: number;
  /** The device's own clock was set back while it ran: how long it has run is not known. */
  readonly setBack?: true;
}

/** Whether something read from storage has the shape of a clock. */
export const isClock = (x: unknown): x is Clock =>
  isRecord(x) && Number.isFinite(x.start) && (x.stop === undefined || Number.isFinite(x.stop));

/** Which batch is run, and how far it has come. */
export interface Begun {
  readonly id: string;
  readonly step: number;
}

/** Whether something read from storage says so. */
export const isBegun = (x: unknown): x is Begun =>
  isRecord(x) && typeof x.id === 'string' && Number.isInteger(x.step) && Number(x.step) >= 0;
