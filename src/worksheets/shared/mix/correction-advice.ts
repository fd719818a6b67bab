import type { Correction } from '../../../core/mix/correct.ts';
import type { Say } from '../../../islands/engine/say.ts';
import type { Judgement } from '../../../islands/worksheet.ts';
import { ADDED_FOAM, ADDED_FOAM_MASS, PERCENT } from '../words/amounts.ts';
import { STILL_THAT_MIX } from './near-enough.ts';

/** Each correction stirs the mix again and breaks foam. Common practice, no source. */
export const MOST_CORRECTIONS = 2;

/** Behind “near enough”: nobody aimed at that. */
export const TO_EXAMPLE =
  'to the invented example’s density. Place it only if that is what you want.';

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

/** A mixer may hold this many times “the most it takes”: that leaves room for the paddle. A choice. */
const ROOM = 1.05;

/** Whether a mixer has room for so much, m³. */
export const hasRoom = (volume: number, load: number): boolean => volume <= ROOM * load;

/** The most of a mix that can be corrected in a mixer, as a share of it; `volume`: corrected whole. */
const shareThatFits = (volume: number, load: number): number =>
  hasRoom(volume, load) ? 1 : load / volume;

/** The same correction of a part of the mix. */
function partOf(fix: Correction, share: number): Correction {
  if (share === 1) return fix;
  const { foamVolume, foamMass, baseVolume, baseMass, baseParts: b } = fix;
  return {
    ...fix,
    foamVolume: share * foamVolume,
    foamMass: share * foamMass,
    baseVolume: share * baseVolume,
    baseMass: share * baseMass,
    ...(b && {
      baseParts: { cement: share * b.cement, water: share * b.water, sand: share * b.sand },
    }),
    volumeBefore: share * fix.volumeBefore,
    mass: share * fix.mass,
    volume: share * fix.volume,
  };
}

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
  /** No bucket can be filled from a mix smaller than itself, m³. */
  | { readonly is: 'too-small'; readonly volume: number }
  /** The ± of the readings is wider than what is near enough. */
  | { readonly is: 'too-doubtful' }
  | Addition;

interface Addition {
  readonly is: 'add';
  readonly fix: Correction;
  /** The mixer has no room for all of it, and `fix` is of the part it has: both whole, m³. */
  readonly over?: { readonly volume: number; readonly load: number };
}

/**
 * `fix` as core has it, for a mix of that density (kg/m³) after so many corrections. `vessel` it was weighed
 * in and `load` the mixer takes, m³; `doubt`: the ± of the density. Each is left out where it is not known.
 */
export function mixAdvice(
  fix: Correction,
  mix: Parameters<typeof spentAdvice>[0] & {
    readonly made: number;
    readonly most?: number;
    readonly vessel?: number;
    readonly doubt?: number;
    readonly load?: number | undefined;
  },
): MixAdvice {
  const { density, vessel = 0, doubt = 0, load = Number.POSITIVE_INFINITY } = mix;
  if (isRefused(fix)) return { is: 'refused' };
  const tooMuch = isTooMuch(fix, { mass: fix.volumeBefore * density, density });
  const spent = spentAdvice(mix);
  if (tooMuch && spent.is === 'another-mix') return { is: 'weigh-again', off: spent.off };
  if (vessel > fix.volumeBefore) return { is: 'too-small', volume: fix.volumeBefore };
  if (doubt > mix.tolerance) return { is: 'too-doubtful' };
  if (fix.action === 'leave') return { is: 'leave' };
  if (tooMuch || isSpent(mix.made, mix.most)) return spent;
  const share = shareThatFits(fix.volume, load);
  const over = share < 1 && { over: { volume: fix.volume, load } };
  return { is: 'add', fix: partOf(fix, share), ...over };
}

/** Whether no mix of that base mix and that foam weighs that. */
const isRefused = ({ notes }: Correction) => notes.some(({ code }) => code === 'check-reading');

const INSTEAD: Partial<Record<MixAdvice['is'], string>> = {
  refused: 'weigh again',
  'weigh-again': 'weigh again',
  'too-small': 'weigh a smaller vessel',
  'too-doubtful': 'cannot tell: the ± is too wide',
  place: 'place it as it is',
  'another-mix': 'set it aside: another mix',
};

/**
 * A line of a table: what it says in the place of an amount, or the amounts, and before them what comes out of
 * the mixer first.
 */
export function inTable(row: Correction, mix: Parameters<typeof mixAdvice>[1], say: Say) {
  const advice = mixAdvice(row, mix);
  const { fix, over } = advice.is === 'add' ? advice : { fix: row };
  const stays = () => say(fix.volumeBefore, 'volume', { significant: 2 });
  return {
    fix,
    instead: INSTEAD[advice.is],
    first: over ? `first take out all but ${stays()}, then ` : '',
  };
}

/** Whether a bucket holds more than a load that weighs what was planned: none of it can fill it. */
export const overflows = (load: {
  readonly vessel: number;
  readonly massInHand: number;
  readonly targetDensity: number;
}): boolean => load.vessel * load.targetDensity > load.massInHand;

/** The least vessel named, m³: rounded to fluid ounces too it is no less than the fields take. */
const LEAST_VESSEL = 0.12e-3;

/** A vessel that a mix of so much, m³, does fill: about a fifth of it. A choice. */
export const vesselFor = (mix: number, say: Say): string =>
  `a vessel of about ${say(Math.max(mix / 5, LEAST_VESSEL), 'volume', { significant: 1 })}, weighed and measured`;

/** What to add, and what comes out of the mixer before it. */
export function addWords({ fix, over }: Addition, say: Say): string {
  const litres = (volume: number) => say(volume, 'volume');
  const what =
    fix.action === 'add-foam'
      ? `${say(fix.foamVolume, 'volume', { units: ADDED_FOAM, significant: 2 })} of foam (${say(fix.foamMass, 'mass', { units: ADDED_FOAM_MASS, significant: 2 })} by weight)`
      : `${say(fix.baseMass, 'mass', { significant: 2 })} of base mix`;
  if (!over) return `Add ${what}`;
  return `All of it corrected would be ${litres(over.volume)}, and the mixer takes ${litres(over.load)}: first take out all but ${litres(fix.volumeBefore)}. Then add ${what}`;
}

/**
 * Why a weighing gets no amount, and what to weigh instead; undefined for other advice. `slip`: where a bucket that
 * holds more than the mix comes from.
 */
export function doubtWords(
  advice: MixAdvice,
  say: Say,
  slip = 'one of the readings is of another mix or still the example’s',
): Judgement | undefined {
  if (advice.is === 'weigh-again') return weighAgainWords(advice.off, say);
  if (advice.is === 'too-small')
    return {
      verdict: 'stop',
      say: `The bucket holds more than the whole mix, ${say(advice.volume, 'volume')} at this density: ${slip}. If they are right, bring ${vesselFor(advice.volume, say)}.`,
    };
  if (advice.is === 'too-doubtful')
    return {
      verdict: 'look',
      say: 'The ± of these readings is wider than “near enough”: they cannot tell a good mix from a bad one. Use a finer scale, or a vessel whose volume you know better, and type its ±.',
    };
  return undefined;
}

/** What is done with a mix that is none for its part. */
const ASIDE = 'place it where nothing is asked of it, or set it aside';

/** Why no amount is named, and what to look at. */
const weighAgainWords = (off: number, say: Say): Judgement => ({
  verdict: 'stop',
  say: `Weigh again before anything is added. Look at the unit of the reading (kg or lb), the bucket’s empty weight and its volume${
    off > 0 ? ', and whether all the foam was folded in' : ''
  }. It reads ${offWords(off, say)}: that would take ${
    off > 0 ? 'more foam than there is mix' : 'more base mix than half of what is in the mixer'
  }. If it is right, it is another mix, not for that part: do not correct it, ${ASIDE}.`,
});

/** How far a mix came out from what was planned, in words. */
export const offWords = (off: number, say: Say): string =>
  `${say(Math.abs(off), 'ratio', { units: PERCENT, significant: 2 })} ${off > 0 ? 'heavier' : 'lighter'} than planned`;

/** What it means, and what to do. */
export function spentWords({ is, off }: Spent, target: number, say: Say): Judgement {
  if (is === 'place')
    return {
      verdict: 'look',
      say: `No more corrections. It is ${offWords(off, say)}, no more than twice what is near enough: place it as it is. Leave the plan of the next as it is: only several batches, as first weighed, can correct it.`,
    };
  const planned = say(target, 'density');
  return {
    verdict: 'stop',
    say: `It is ${offWords(off, say)}, so expect it ${off > 0 ? 'to insulate less' : 'weaker'}. Do not correct it again: that breaks as much as it brings. It is not for the part that needs ${planned}: ${ASIDE}.`,
  };
}

/** The same on a worksheet, from which the density is copied to the bench sheet. */
export function spentJudgement(mix: Parameters<typeof spentAdvice>[0], say: Say): Judgement {
  const words = spentWords(spentAdvice(mix), mix.target, say);
  const density = say(mix.density, 'density');
  return { ...words, say: `${words.say} Write ${density} on the sheet.` };
}
