import type { Say } from '../../../islands/engine/say.ts';
import { dryWords } from '../records/record-words.ts';

interface Dried {
  /** kg/m³ */
  readonly density: number;
  readonly dried: string | undefined;
}

/**
 * A column of dry densities, empty where no piece was weighed. If all were dried the same way, that
 * is told once in the head, to leave room for the names of the batches.
 */
export function dryColumn(pieces: readonly (Dried | undefined)[], say: Say) {
  const ways = new Set(pieces.flatMap((piece) => (piece ? [dryWords(piece.dried)] : [])));
  const [way] = ways.size === 1 ? ways : [];
  return {
    head: way ? `Dry density, ${way}` : 'Dry density',
    cells: pieces.map((piece) => {
      if (!piece) return '—';
      const density = say(piece.density, 'density');
      return way ? density : `${density}, ${dryWords(piece.dried)}`;
    }),
  };
}
