import { DAY } from '../../../core/quantity/constants.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { number } from '../../../islands/fields.ts';
import { DAYS, HOURS } from '../words/amounts.ts';
import { KEPT_FROST } from './kept-extremes.ts';

/**
 * When the part first froze or will freeze, by its readings or a forecast. After that no strength
 * follows from its age.
 */
export const firstFrost = number('time', {
  label: 'First frost, after casting',
  help: 'If it froze, or a night ahead freezes. Empty: none is known.',
  example: '',
  min: '0 h',
  max: '60 d',
  units: HOURS,
  optional: true,
  takes: KEPT_FROST,
});

interface Frosty {
  readonly frost: number | undefined;
  /** Time since casting, s; if unknown, the frost may already have happened. */
  readonly since: number | undefined;
}

/** Whether the part may have frozen by now. */
export const hasFrozen = ({ frost, since = Infinity }: Frosty) =>
  frost !== undefined && frost <= since;

const after = (frost: number, say: Say) =>
  `${say(frost, 'time', { units: frost < 2 * DAY ? HOURS : DAYS, significant: 2 })} after casting`;

/** Says that the part froze, and that its strength does not follow from its age. */
export const frozenWords = (frost: number, since: number | undefined, say: Say) =>
  `${since === undefined ? `It freezes ${after(frost, say)}, and how long ago it was cast is not said` : `It froze ${after(frost, say)}`}. After a frost no strength can be worked out from age: see “If it has frozen”, on the page on frost.`;

/** Says what tests of `pieces` are worth after a frost. */
export const frostyTests = (frost: number, pieces: string, say: Say) =>
  `But it freezes ${after(frost, say)}: once it has, ${pieces} tell of it only if they froze with it and were broken since.`;
