import type { Shape } from '../../core/placing/shapes.ts';

/** Sides in m; a shape that has none of a kind leaves it out. */
interface Sides {
  /** Of the piece, however it lies: its thickness is the least. */
  readonly length?: number;
  readonly width?: number;
  readonly thickness?: number;
  /** Of the form as it is filled: its open top, and how deep the mix stands. */
  readonly long?: number;
  readonly wide?: number;
  readonly deep?: number;
}

function sidesOf(shape: Shape): Sides {
  if (shape.shape !== 'slab' && shape.shape !== 'block')
    return 'height' in shape ? { deep: shape.height } : {};
  const deep = shape.shape === 'slab' ? shape.thickness : shape.height;
  const [long, wide] = descending(shape.length, shape.width);
  const [length, width, thickness] = descending(long!, wide!, deep);
  return { length: length!, width: width!, thickness: thickness!, long: long!, wide: wide!, deep };
}

const descending = (...sides: readonly number[]) => sides.toSorted((a, b) => b - a);

const OF_A_SOLID: ReadonlySet<keyof Sides> = new Set(['length', 'width', 'thickness']);

type SideOf = (result: {
  readonly sole: Shape | undefined;
  /** What is left out of it. */
  readonly cores?: readonly unknown[];
}) => number | 'asked' | undefined;

/**
 * The sides that a worksheet for one kind of piece leaves on the bench for later worksheets. Around a
 * core they are those of the form, and do not tell how thick the walls of the part are.
 */
export const leavesSides: Readonly<Record<string, SideOf>> = Object.fromEntries(
  (['length', 'width', 'thickness', 'long', 'wide', 'deep'] as const).map((side) => [
    `piece.${side}`,
    ({ sole, cores = [] }) =>
      cores.length > 0 && OF_A_SOLID.has(side) ? 'asked' : sole && sidesOf(sole)[side],
  ]),
);
