import type { Correction } from '../../core/mix/correct.ts';
import type { Say } from '../../islands/engine/say.ts';
import type { Judgement } from '../../islands/worksheet.ts';
import { DENSITY, PERCENT } from './amounts.ts';

/** Each correction stirs the mix again and breaks foam. Common practice, no source. */
export const MOST_CORRECTIONS = 2;
/** How far off is near enough, as a share of the target. @source california-721-2-1 */
export const NEAR_ENOUGH = 0.05;
/** Farther off than so many times that, the mix is not the one that was planned. A line of our own, no source. */
const STILL_THAT_MIX = 2;

/**
 * More than this is no correction but a slip: base mix as a share of the mass in the mixer, foam of its
 * volume. A bucket read in kilograms and taken for pounds, or the other way round, asks for more at any
 * density. Lines of our own, no source.
 */
const MOST_ADDED = { base: 0.5, foam: 1 } as const;

/** Whether a correction asks for more than any correction should. Amounts and the mix in hand, SI. */
const isTooMuch = (
  { foamVolume, baseMass }: Pick<Correction, 'foamVolume' | 'baseMass'>,
  { mass, density }: { readonly mass: number; readonly density: number },
): boolean => baseMass > MOST_ADDED.base * mass || foamVolume > (MOST_ADDED.foam * mass) / density;

/** What is left to do with a mix that its corrections did not bring home. `off`: the share above the target. */
export interface Spent {
  readonly is: 'place' | 'another-mix';
  readonly off: number;
}

/** Whether a mix may not be corrected again. */
export const isSpent = (made: number, most = MOST_CORRECTIONS): boolean => made >= most;

/** Densities in kg/m³; `tolerance` is what is near enough, either way. */
export function spentAdvice(mix: {
  readonly density: number;
  readonly target: number;
  readonly tolerance: number;
}): Spent {
  const { density, target, tolerance } = mix;
  const thatMix = Math.abs(density - target) <= STILL_THAT_MIX * tolerance;
  return { is: thatMix ? 'place' : 'another-mix', off: density / target - 1 };
}

/** What to do with a mix that weighs so much, wherever it is asked. */
export type MixAdvice =
  /** No mix of that base mix and that foam weighs that. */
  | { readonly is: 'refused' | 'leave' }
  | Spent
  /** What it would take is no correction: the reading is to be doubted first. */
  | { readonly is: 'weigh-again'; readonly off: number }
  | { readonly is: 'add'; readonly fix: Correction };

/** `fix` as core has it, for a mix of that density (kg/m³) after so many corrections. */
export function mixAdvice(
  fix: Correction,
  mix: Parameters<typeof spentAdvice>[0] & { readonly made: number; readonly most?: number },
): MixAdvice {
  if (fix.notes.some(({ code }) => code === 'check-reading')) return { is: 'refused' };
  if (fix.action === 'leave') return { is: 'leave' };
  const { density } = mix;
  const tooMuch = isTooMuch(fix, { mass: fix.volumeBefore * density, density });
  if (!tooMuch && !isSpent(mix.made, mix.most)) return { is: 'add', fix };
  const spent = spentAdvice(mix);
  return tooMuch && spent.is === 'another-mix' ? { is: 'weigh-again', off: spent.off } : spent;
}

/** What a table says in the place of an amount that is no correction. */
export function insteadOfAmount(
  row: Pick<Correction, 'foamVolume' | 'baseMass'> & { readonly density: number },
  mix: { readonly mass: number; readonly target: number; readonly tolerance: number },
): string | undefined {
  const { density } = row;
  if (!isTooMuch(row, { mass: mix.mass, density })) return undefined;
  return spentAdvice({ ...mix, density }).is === 'place' ? 'place it as it is' : 'weigh again';
}

/** Why no amount is named, and what to look at. */
export const weighAgainWords = (off: number, say: Say): Judgement => ({
  verdict: 'stop',
  say: `Weigh again before anything is added. It reads ${offWords(off, say)}: that would take ${
    off > 0 ? 'more foam than there is mix' : 'more base mix than half of what is in the mixer'
  }. Look at the unit of the reading (kg or lb), at the bucket’s empty weight and its volume${
    off > 0 ? ', and whether all the foam was folded in' : ''
  }. If it stands, this is another mix than was planned: do not correct it.`,
});

/** How far a mix came out from what was planned, in words. */
export const offWords = (off: number, say: Say): string =>
  `${say(Math.abs(off), 'ratio', { units: PERCENT, significant: 2 })} ${off > 0 ? 'heavier' : 'lighter'} than planned`;

/** What it means, and what to do. */
export function spentWords({ is, off }: Spent, target: number, say: Say): Judgement {
  if (is === 'place')
    return {
      verdict: 'look',
      say: `No more corrections. It is ${offWords(off, say)}, no more than twice what is near enough: place it as it is, and start the next batch from that.`,
    };
  const planned = say(target, 'density', { units: DENSITY });
  return {
    verdict: 'stop',
    say: `It is ${offWords(off, say)}, so expect it ${off > 0 ? 'heavier, and insulating less' : 'weaker'}. Do not correct it again: that stirs out about as much as it brings. It is not for the part that needs ${planned}: place it where nothing is asked of it, or set it aside.`,
  };
}

/** The same on a worksheet, from which the density is copied to the bench sheet. */
export function spentJudgement(mix: Parameters<typeof spentAdvice>[0], say: Say): Judgement {
  const words = spentWords(spentAdvice(mix), mix.target, say);
  const density = say(mix.density, 'density', { units: DENSITY });
  return { ...words, say: `${words.say} Write ${density} on the sheet.` };
}
