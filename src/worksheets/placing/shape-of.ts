import type { Outgrown } from '../../core/placing/core-fits.ts';
import type { Shape } from '../../core/placing/shapes.ts';
import type { Values } from '../../islands/fields.ts';
import type { shapeFields } from './shape-fields.ts';

export type ShapeValues = Values<typeof shapeFields>;

/** Whole, a ball has no flat, and stands as high as it is wide. */
const wholeBall = (diameter: number): Shape => ({
  shape: 'cap',
  baseDiameter: 0,
  height: diameter,
});

/** The shape the fields describe. */
export function shapeOf(v: ShapeValues): Shape {
  const { shape, length, width, thickness, height, diameter } = v;
  switch (shape) {
    case 'slab':
      return { shape, length, width, thickness };
    case 'block':
      return { shape, length, width, height };
    case 'cylinder':
      return { shape, diameter, height };
    case 'ring':
      return { shape, outerDiameter: diameter, innerDiameter: v.inner, height };
    case 'cone-frustum':
      return { shape, bottomDiameter: v.bottomDiameter, topDiameter: v.topDiameter, height };
    case 'box-frustum':
      return { shape, length, width, topLength: v.topLength, topWidth: v.topWidth, height };
    case 'wedge':
      return { shape, length, width, thickness: v.thickEnd, thinEnd: v.thinEnd };
    case 'ball':
      return wholeBall(diameter);
    case 'cap':
      return { shape, baseDiameter: v.baseDiameter, height };
    case 'shell':
      return { shape, baseDiameter: v.baseDiameter, height, thickness };
    case 'prism':
      return { shape, corners: v.corners.map(({ x, y }) => [x, y] as const), height };
  }
}

/** A test bar cast with it. */
export const barOf = ({ barLength: length, barWidth: width, barHeight: height }: ShapeValues) =>
  ({ shape: 'block', length, width, height }) as const;

type Core = ShapeValues['cores'][number];

/** The cell of a core that holds its height, its narrower side, or the longer one. */
export function cellOf(
  { core, across, wide, end, endWide }: Core,
  measure: Outgrown['measure'],
): 'deep' | 'across' | 'wide' | 'end' | 'endWide' {
  if (measure === 'height') return core === 'ball' ? 'across' : 'deep';
  const tapers = core === 'taper' || core === 'box-taper';
  const [long, along] =
    tapers && end > across ? ([end, 'end'] as const) : ([across, 'across'] as const);
  if (core !== 'box' && core !== 'box-taper') return along;
  const [broad, athwart] =
    tapers && endWide > wide ? ([endWide, 'endWide'] as const) : ([wide, 'wide'] as const);
  return long >= broad === (measure !== 'narrow') ? along : athwart;
}

/** The cores of one form. */
export function coresOf(
  v: ShapeValues,
): readonly { readonly shape: Shape; readonly count: number }[] {
  if (v.hollow === 'none') return [];
  return v.cores.map((core) => ({ count: core.count, shape: coreOf(core) }));
}

function coreOf({ core, across, wide, end, endWide, deep: height }: Core): Shape {
  switch (core) {
    case 'round':
      return { shape: 'cylinder', diameter: across, height };
    case 'box':
      return { shape: 'block', length: across, width: wide, height };
    case 'ball':
      return wholeBall(across);
    case 'taper':
      return { shape: 'cone-frustum', bottomDiameter: across, topDiameter: end, height };
    case 'box-taper':
      return {
        shape: 'box-frustum',
        length: across,
        width: wide,
        topLength: end,
        topWidth: endWide,
        height,
      };
  }
}
