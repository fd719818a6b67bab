import { type Entries, type KeptResults, keptValue } from '../../../bench/entries.ts';
import { loadsOfWholePieces } from '../../../core/mix/loads.ts';
import { justOver, SLIVER } from '../../../core/quantity/dust.ts';
import { TYPED_VOLUME } from './batch-volume.ts';

/** A batch divided into loads, and the pieces it fills. Volumes of mix, m³. */
interface InLoads {
  readonly pieces: number;
  /** All pieces are of one size. */
  readonly alike: boolean;
  /** For several sizes: any divisor of this number of loads shares the pieces out evenly. */
  readonly evenLoads?: number | undefined;
  /** What the largest of several sizes holds. */
  readonly largest?: number | undefined;
  readonly loads: number;
  readonly volume: number;
  readonly largestLoad: number;
}

/** The bench keys under which a worksheet keeps the pieces it sized. */
export const PIECES_KEPT = [
  'batch.volume',
  'batch.count',
  'part.volume',
  'batch.evenLoads',
  'batch.largest',
] as const;

/**
 * The volume of one piece, m³; undefined unless the same worksheet sized the piece and the batch
 * and all pieces are of one size. (Then the number of even loads equals the number of pieces.)
 */
export function alikePiece(kept: KeptResults): number | undefined {
  const [all, count, one, even] = PIECES_KEPT.map((key) => kept[key]);
  if (one?.from !== all?.from) return undefined;
  const shared = even?.from === all?.from ? keptValue(even) : undefined;
  return shared === undefined || shared === keptValue(count) ? keptValue(one) : undefined;
}

/** The pieces that a batch of this volume, m³, fills; undefined unless one worksheet sized both. */
export function piecesFilled(
  kept: KeptResults,
  volume: number,
): Pick<InLoads, 'pieces' | 'alike' | 'evenLoads' | 'largest'> | undefined {
  const [all, count, one, even, largest] = PIECES_KEPT.map((key) => kept[key]);
  const pieces = keptValue(count);
  const sized = pieces !== undefined && count?.from === all?.from && !(one && 'waits' in one);
  if (!sized || Math.abs((keptValue(all) ?? 0) / volume - 1) >= 1e-6) return undefined;
  const alike = alikePiece(kept) !== undefined;
  return {
    ...{ pieces, alike },
    ...(!alike && { evenLoads: keptValue(even), largest: keptValue(largest) }),
  };
}

export interface Joints {
  readonly say: string;
  /** The same, shorter. */
  readonly short: string;
  /** The joint cannot be avoided by how the pieces are shared out. */
  readonly sure?: true;
  /** A number of loads that avoids joints. */
  readonly better?: number;
}

const JOINT =
  'a joint where the first waits, a plane of weakness that lets water through (common practice, no source)';

const LARGER = 'Only a larger mixer, or a smaller piece, avoids it.';
/** That a number of loads avoids the joint; `words` follow more than one. */
const avoids = (loads: number, words: string) =>
  loads === 1 ? 'One load avoids it.' : `${loads} loads${words}`;

/**
 * The joints of a batch, by the pieces on the bench. For a typed volume the pieces are not known.
 */
export function jointsKnown(
  entries: Entries,
  kept: KeptResults,
  batch: Omit<InLoads, 'pieces' | 'alike' | 'evenLoads' | 'largest'>,
): Joints | undefined {
  const filled = piecesFilled(kept, batch.volume);
  if (filled) return jointsOf({ ...filled, ...batch });
  return entries[TYPED_VOLUME]?.t === undefined ? undefined : jointsOfTyped(batch.loads);
}

/** Warns of joints if the loads do not fill whole pieces, and says how to avoid them. */
export function jointsOf(batch: InLoads): Joints | undefined {
  const { pieces, alike, loads } = batch;
  if (loads === 1) return undefined;
  if (!alike) {
    const { evenLoads = 0 } = batch;
    const better = loadsOfWholePieces({ ...batch, pieces: evenLoads });
    return jointsOfUnlike(batch, `${pieces} pieces`, better);
  }
  if (pieces % loads === 0) return undefined;
  const better = loadsOfWholePieces(batch);
  const fill = `${loads} loads for ${pieces === 1 ? 'one piece' : `${pieces} pieces`}`;
  const made = better !== undefined && { better };
  const each = pieces / (better ?? 1);
  const avoid = made
    ? avoids(made.better, ` of ${each} ${each === 1 ? 'piece' : 'pieces'} avoid it.`)
    : LARGER;
  // Each takes more than a load, in more loads than the mixer needs too.
  if (loads > pieces)
    return {
      ...made,
      short: `Each piece is filled from several loads, with joints in it.${made ? ` ${avoid}` : ''}`,
      say: `${fill}: each is filled from more than one, with ${JOINT}. ${avoid}`,
    };
  return {
    ...made,
    short: `Some pieces are filled from two loads, with a joint. ${avoid}`,
    say: `${fill}: some are filled from two, with ${JOINT}. ${avoid}`,
  };
}

/**
 * Warns of joints in pieces of several sizes, unless the loads share them out evenly. `better`: a
 * number of loads that would. If the largest piece takes more than a load, sharing out cannot help.
 */
export function jointsOfUnlike(
  batch: Pick<InLoads, 'evenLoads' | 'largest' | 'loads' | 'volume' | 'largestLoad'>,
  pieces = 'pieces',
  better?: number,
): Joints | undefined {
  const { evenLoads = 0, largest = 0, loads, volume, largestLoad } = batch;
  if (evenLoads > 0 && evenLoads % loads === 0) return undefined;
  const fill = `${loads} loads for ${pieces} of more than one size:`;
  const made = better !== undefined && { better };
  if (largest > justOver(volume / loads, SLIVER)) {
    const avoid = made
      ? avoids(made.better, ' share them evenly, and avoid it.')
      : largest > largestLoad
        ? LARGER
        : 'Make it as a batch of its own.';
    return {
      ...made,
      sure: true,
      short: `The largest piece takes more than a load, and gets a joint. ${avoid}`,
      say: `${fill} the largest takes more than a load, and gets ${JOINT}. ${avoid}`,
    };
  }
  return {
    ...made,
    short: 'Share the pieces out to the loads: one that is filled from two gets a joint.',
    say: `${fill} share them out to the loads before you mix${made ? `, or make ${better === 1 ? 'one load' : `${better} loads, which share them evenly`}` : ''}. One that is filled from two gets ${JOINT}.`,
  };
}

/** Warns of joints if the pieces are not known. */
export const jointsOfTyped = (loads: number): Joints | undefined =>
  loads === 1
    ? undefined
    : {
        short: 'See that no piece is filled from two loads: it gets a joint.',
        say: `${loads} loads of a volume typed in: see that no piece is filled from two of them. One that is gets ${JOINT}.`,
      };
