import type { DomainError } from '../../../core/domain-error.ts';
import type { Say } from '../../../islands/engine/say.ts';

// In a file of its own because pages that only weigh and correct need no other refusals.

/** Why an existing mix cannot be corrected to a density. `what` is what that density is called. */
export const targetRefusals = (what: string) => ({
  'heavier-than-base-mix': (e: DomainError, say: Say) =>
    `${what}, ${say(e.value, 'density')}, is not below the base mix (${say(e.allowed.max!, 'density', { significant: 4 })}): no foam would be needed.`,
  'lighter-than-foam': (e: DomainError, say: Say) =>
    `${what}, ${say(e.value, 'density')}, is not above the foam (${say(e.allowed.min!, 'density')}): no amount of foam reaches it.`,
});
