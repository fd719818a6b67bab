import type { System } from '../../bench/entries.ts';
import { formatQuantity, type Precision } from '../../core/quantity/format.ts';
import { KINDS, type Kind } from '../../core/quantity/kinds.ts';
import type { Units } from '../fields.ts';

export interface HowToSay {
  readonly significant?: number;
  readonly decimals?: number;
  readonly units?: Units;
}

/** Puts quantities into words in the reader's units, so that no sentence knows which they are. */
export interface Say {
  /** `81.0 g/L` */
  (si: number, kind: Kind, how?: HowToSay): string;
  readonly system: System;
}

/** The voice of one system of units. */
export function speaker(system: System): Say {
  const say = (si: number, kind: Kind, how: HowToSay = {}) =>
    formatQuantity(si, kind, (how.units ?? KINDS[kind].shown)[system], precision(how)).text;
  return Object.assign(say, { system });
}

const precision = ({ significant = 3, decimals }: HowToSay): Precision =>
  decimals === undefined ? { significant } : { decimals };
