import type { DomainError } from '../../core/domain-error.ts';
import type { Say } from '../../islands/engine/say.ts';

/** A measure as it is read off a form. */
export const short = (metres: number, say: Say) => say(metres, 'length', { plain: true });

/** The hole of a ring, told beside the ring. */
export const holeNotInside = (e: DomainError, say: Say) =>
  `The hole of the ring is ${short(e.value, say)} across; it must be narrower than the ring, ${short(e.allowed.max!, say)}.`;
