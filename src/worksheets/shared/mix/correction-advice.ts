import type { Correction } from '../../../core/mix/correct.ts';
import type { Say } from '../../../islands/engine/say.ts';
import type { Judgement } from '../../../islands/worksheet.ts';
import { ADDED_FOAM, ADDED_FOAM_MASS, PERCENT } from '../words/amounts.ts';
import { STILL_THAT_MIX } from './near-enough.ts';

/**
 * The largest number of corrections: each stirs the mix again and breaks foam. Common practice, no
 * source.
 */
export const MOST_CORRECTIONS = 2;

/** Follows “near enough” while the target is still the example’s, which nobody aimed at. */
export const TO_EXAMPLE =
  'to the invented example’s density. Place it only if that is what you want.';

/**
 * A larger addition is not a correction but the result of a slip: base mix as a share of the mass
 * in the mixer, foam as a share of the volume. A bucket read in kilograms and taken for pounds, or
 * the reverse, asks for more at any density. A choice, no source.
 */
const MOST_ADDED = { base: 0.5, foam: 1 } as const;

/** Whether a correction adds more than `MOST_ADDED`. All in SI. */
const isTooMuch = (
  { foamVolume, baseMass }: Pick<Correction, 'foamVolume' | 'baseMass'>,
  { mass, density }: { readonly mass: number; readonly density: number },
): boolean => baseMass > MOST_ADDED.base * mass || foamVolume > (MOST_ADDED.foam * mass) / density;

/**
 * A mixer may be filled to this many times “the largest load it takes”, which leaves room for the
 * paddle. A choice.
 */
const ROOM = 1.05;

/** Whether a mixer of a largest `load` has room for a volume, both m³. */
export const hasRoom = (volume: number, load: number): boolean => volume <= ROOM * load;

/** The share of a mix that can be corrected in the mixer. `volume`: of all of it once corrected. */
const shareThatFits = (volume: number, load: number): number =>
  hasRoom(volume, load) ? 1 : load / volume;

/** The same correction for a share of the mix. */
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

/**
 * What to do with a mix that may not be corrected again. `off`: how far it is above the target, as
 * a share.
 */
export interface Spent {
  readonly is: 'place' | 'another-mix';
  readonly off: number;
}

/** Whether a mix may not be corrected again. */
export const isSpent = (made: number, most = MOST_CORRECTIONS): boolean => made >= most;

/**
 * What to do with a mix that may not be corrected again. All in kg/m³; `tolerance` is “near
 * enough”.
 */
export function spentAdvice(mix: {
  readonly density: number;
  readonly target: number;
  readonly tolerance: number;
}): Spent {
  const { density, target, tolerance } = mix;
  const thatMix = Math.abs(density - target) <= STILL_THAT_MIX * tolerance;
  return { is: thatMix ? 'place' : 'another-mix', off: density / target - 1 };
}

/** What to do with a mix of a measured density. */
export type MixAdvice =
  /** `refused`: no mix of this base mix and this foam has such a density. */
  | { readonly is: 'refused' | 'leave' }
  | Spent
  /** The addition would be so large that the reading is probably wrong. */
  | { readonly is: 'weigh-again'; readonly off: number }
  /** The bucket holds more than the whole mix, whose volume is given in m³. */
  | { readonly is: 'too-small'; readonly volume: number }
  /** The ± of the readings is wider than the tolerance. */
  | { readonly is: 'too-doubtful' }
  | Addition;

interface Addition {
  readonly is: 'add';
  readonly fix: Correction;
  /**
   * Set if the mixer has no room for the whole corrected mix: its volume and the largest load, m³.
   * `fix` is then for the part that fits.
   */
  readonly over?: { readonly volume: number; readonly load: number };
}

/**
 * The advice on a mix, from the correction that core gives for it. `made`: corrections so far;
 * `most`: the reader’s own limit on them; `vessel` it was weighed in and largest `load`, m³;
 * `doubt`: the ± of the density, kg/m³. The last three are omitted if not known.
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

/** Whether no mix of this base mix and this foam has the measured density. */
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
 * A row of a table of corrections: the amounts in `fix`, or words `instead` of them. `first` says
 * what to take out of the mixer before they are added.
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

/**
 * Whether the bucket holds more than a whole load of the planned density, which then cannot fill
 * it.
 */
export const overflows = (load: {
  readonly vessel: number;
  readonly massInHand: number;
  readonly targetDensity: number;
}): boolean => load.vessel * load.targetDensity > load.massInHand;

/** The smallest vessel that is named, m³: rounded to fluid ounces, the fields still accept it. */
const LEAST_VESSEL = 0.12e-3;

/** A vessel that a mix of this volume, m³, can fill: a fifth of it. A choice. */
export const vesselFor = (mix: number, say: Say): string =>
  `a vessel of about ${say(Math.max(mix / 5, LEAST_VESSEL), 'volume', { significant: 1 })}, weighed and measured`;

/** What to take out of the mixer first, and what to add, in words. */
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
 * Why a doubtful weighing gets no amount, and what to do; undefined for other advice. `slip`: the
 * likely reason for a bucket that holds more than the mix.
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

/** What to do with a mix that does not suit its part. */
const ASIDE = 'place it where nothing is asked of it, or set it aside';

/** Why no amount is given, and which readings to check. */
const weighAgainWords = (off: number, say: Say): Judgement => ({
  verdict: 'stop',
  say: `Weigh again before anything is added. Look at the unit of the reading (kg or lb), the bucket’s empty weight and its volume${
    off > 0 ? ', and whether all the foam was folded in' : ''
  }. It reads ${offWords(off, say)}: that would take ${
    off > 0 ? 'more foam than there is mix' : 'more base mix than half of what is in the mixer'
  }. If it is right, it is another mix, not for that part: do not correct it, ${ASIDE}.`,
});

/** How far a mix is from its planned density, in words. */
export const offWords = (off: number, say: Say): string =>
  `${say(Math.abs(off), 'ratio', { units: PERCENT, significant: 2 })} ${off > 0 ? 'heavier' : 'lighter'} than planned`;

/** The judgement of a mix that may not be corrected again. */
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

/** The same for a worksheet, whose reader copies the density to the bench sheet. */
export function spentJudgement(mix: Parameters<typeof spentAdvice>[0], say: Say): Judgement {
  const words = spentWords(spentAdvice(mix), mix.target, say);
  const density = say(mix.density, 'density');
  return { ...words, say: `${words.say} Write ${density} on the sheet.` };
}
