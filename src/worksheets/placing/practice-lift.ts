import { PRACTICE_LIFT } from '../../core/placing/lift.ts';
import type { Say } from '../../islands/engine/say.ts';

export const METRES = { metric: 'm', us: 'ft' } as const;

/** Practice is 2 to 4 ft where feet are read: 3.9 would look like a limit. */
export const practiceLift = (end: 'min' | 'max', say: Say) =>
  say(PRACTICE_LIFT[end], 'length', {
    units: METRES,
    plain: true,
    significant: say.system === 'us' ? 1 : 2,
  });
