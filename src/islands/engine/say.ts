import type { System } from '../../bench/entries.ts';
import {
  formatPlain,
  formatQuantity,
  type Precision,
  usualPrecision,
} from '../../core/quantity/format.ts';
import { KINDS, type Kind, unitOf } from '../../core/quantity/kinds.ts';
import type { Units } from '../fields.ts';
import { handy } from './handy.ts';

interface HowToSay {
  readonly significant?: number;
  readonly decimals?: number;
  /**
   * For a minimum or a maximum: rounds so that the number as shown is still enough, or not too
   * much.
   */
  readonly toward?: 'up' | 'down';
  readonly units?: Units;
  /** As it would be typed, without added zeros: for what was read, not worked out. */
  readonly plain?: boolean;
  /** Stays in the given unit even below one of it: in workings, units must cancel. */
  readonly steady?: boolean;
}

/** Formats quantities in the reader's units, so that no sentence has to know which they are. */
export interface Say {
  /** `81.0 g/L` */
  (si: number, kind: Kind, how?: HowToSay): string;
  readonly system: System;
}

/** The formatter for one system of units. */
export function speaker(system: System): Say {
  const say = (si: number, kind: Kind, how: HowToSay = {}) => {
    const given = (how.units ?? KINDS[kind].shown)[system];
    const fixed = how.steady || how.plain || how.decimals !== undefined;
    const unit = fixed ? given : handy(si, kind, given);
    if (!how.plain) return formatQuantity(si, kind, unit, precision(kind, how)).text;
    const number = formatPlain(si, kind, unit, how.significant ?? 5).replace('-', '\u2212');
    const { symbol } = unitOf(kind, unit);
    return symbol ? `${number}\u00a0${symbol}` : number;
  };
  return Object.assign(say, { system });
}

/** The precision of a quantity: what its place asks for, else the usual one for its kind. */
export const precision = (
  kind: Kind,
  { significant, decimals, toward }: Pick<HowToSay, 'significant' | 'decimals' | 'toward'>,
): Precision => {
  if (decimals !== undefined) return { decimals };
  const how = significant === undefined ? usualPrecision(kind) : { significant };
  return toward ? { ...how, toward } : how;
};
