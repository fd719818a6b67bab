import { type KeptResults, keptValue } from '../../bench/entries.ts';
import { loadsOfWholePieces } from '../../core/mix/loads.ts';

/** A batch in its loads. Volumes of mix, m³. */
interface InLoads {
  readonly pieces: number;
  readonly loads: number;
  readonly volume: number;
  readonly largestLoad: number;
}

/** How many pieces, all alike, a batch of that volume (m³) fills, where one worksheet sized them and it. */
export function alikePieces(kept: KeptResults, volume: number): number | undefined {
  const [all, count, one] = [kept['batch.volume'], kept['batch.count'], kept['part.volume']];
  if (keptValue(one) === undefined || one?.from !== all?.from || count?.from !== all?.from)
    return undefined;
  return Math.abs((keptValue(all) ?? 0) / volume - 1) < 1e-6 ? keptValue(count) : undefined;
}

/** Where a load is no whole number of pieces: that some get a joint, and the number of loads that avoids it. */
export function jointsOf(batch: InLoads):
  | {
      readonly say: string;
      /** The same in a line. */
      readonly short: string;
      readonly better: number | undefined;
    }
  | undefined {
  const { pieces, loads } = batch;
  if (loads === 1 || pieces % loads === 0) return undefined;
  const better = loadsOfWholePieces(batch);
  const fill = `${loads} loads for ${pieces === 1 ? 'one piece' : `${pieces} pieces`}`;
  const joint =
    'a joint where the first waits: a plane of weakness that lets water through (common practice, no source)';
  if (better === undefined)
    return {
      better,
      short: 'Each piece is filled from several loads, with joints in it.',
      say: `${fill}: each is filled from more than one, with ${joint}. Only a larger mixer, or a smaller piece, avoids it.`,
    };
  const each = pieces / better;
  const avoid = `${better} loads of ${each} ${each === 1 ? 'piece' : 'pieces'} avoid it.`;
  return {
    better,
    short: `Some pieces are filled from two loads, with a joint. ${avoid}`,
    say: `${fill}: some are filled from two, with ${joint}. ${avoid}`,
  };
}
