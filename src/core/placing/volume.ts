import { demand, demandWhole } from '../domain-error.ts';
import { demandAmount } from '../extremes.ts';

/** A piece to cast, by its shape and inside measures of its form, in m. */
export type Piece =
  | {
      readonly shape: 'slab';
      readonly length: number;
      readonly width: number;
      readonly thickness: number;
    }
  | {
      readonly shape: 'block';
      readonly length: number;
      readonly width: number;
      readonly height: number;
    }
  | { readonly shape: 'cylinder'; readonly diameter: number; readonly height: number }
  | {
      readonly shape: 'ring';
      readonly outerDiameter: number;
      readonly innerDiameter: number;
      readonly height: number;
    };

/**
 * The exact volume of one piece, m³: length × width × thickness; π/4 d² h; π/4 (D² − d²) h.
 *
 * @throws {DomainError} for a measure that is not positive, or a ring whose hole is not inside it
 *   ('hole-not-inside').
 * @source none: it is geometry
 */
export function pieceVolume(piece: Piece): number {
  switch (piece.shape) {
    case 'slab':
      return length('length', piece) * length('width', piece) * length('thickness', piece);
    case 'block':
      return length('length', piece) * length('width', piece) * length('height', piece);
    case 'cylinder':
      return (Math.PI / 4) * length('diameter', piece) ** 2 * length('height', piece);
    case 'ring': {
      const outer = length('outerDiameter', piece);
      const inner = piece.innerDiameter;
      demand('innerDiameter', inner, 'length', { min: 0, aboveMin: true });
      demand('innerDiameter', inner, 'length', { max: outer, belowMax: true }, 'hole-not-inside');
      return (Math.PI / 4) * (outer - inner) * (outer + inner) * length('height', piece);
    }
  }
}

function length<K extends string>(name: K, piece: Readonly<Record<K, number>>): number {
  demandAmount(name, piece[name], 'length');
  return piece[name];
}

/** What one batch holds: some pieces of each kind. */
export interface Order {
  readonly piece: Piece;
  readonly count: number;
}

/**
 * How much to make, m³.
 *
 * `net` fills the forms. `settling` is the share of that left standing proud, because the mix sinks
 * before it sets. `waste` is the share of both that stays in mixer, bucket and hose: total = net (1
 * + settling) (1 + waste). Both shares are common practice, no source. No range: arithmetic.
 *
 * @throws {DomainError} for no pieces, a count that is not a positive whole number, or a share
 *   outside 0–1.
 * @source common-practice
 */
export function batchVolume(batch: {
  readonly pieces: readonly Order[];
  readonly settling: number;
  readonly waste: number;
}): {
  readonly net: number;
  readonly settling: number;
  readonly waste: number;
  readonly total: number;
} {
  demand('pieces', batch.pieces.length, 'count', { min: 1 });
  demand('settling', batch.settling, 'ratio', { min: 0, max: 1 });
  demand('waste', batch.waste, 'ratio', { min: 0, max: 1 });
  let net = 0;
  for (const { piece, count } of batch.pieces) {
    demandWhole('count', count, { min: 1, max: 1e6 });
    net += count * pieceVolume(piece);
  }
  const settling = net * batch.settling;
  const waste = (net + settling) * batch.waste;
  return { net, settling, waste, total: net + settling + waste };
}
