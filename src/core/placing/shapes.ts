import { DomainError, demand, demandWhole } from '../domain-error.ts';
import { demandAmount, EXTREMES } from '../extremes.ts';
import { type Corner, polygonArea } from './polygon.ts';
import { type Piece, pieceVolume } from './volume.ts';

/** A shape to cast or to leave out of a casting, by its measures in m. */
export type Shape =
  | Piece
  /** A truncated cone: a round planter with sloping sides. A pointed cone has `topDiameter` 0. */
  | {
      readonly shape: 'cone-frustum';
      readonly bottomDiameter: number;
      readonly topDiameter: number;
      readonly height: number;
    }
  /**
   * A box with sloping sides: two rectangles, one above the other, joined by flat or ruled faces.
   */
  | {
      readonly shape: 'box-frustum';
      readonly length: number;
      readonly width: number;
      readonly topLength: number;
      readonly topWidth: number;
      readonly height: number;
    }
  /** A slab whose thickness varies linearly from one end to the other. */
  | {
      readonly shape: 'wedge';
      readonly length: number;
      readonly width: number;
      readonly thickness: number;
      readonly thinEnd: number;
    }
  /** A spherical cap; a hemisphere when the height is half its width, a sphere with a base of 0. */
  | { readonly shape: 'cap'; readonly baseDiameter: number; readonly height: number }
  /** A bowl or dome of constant thickness: a spherical cap less the smaller sphere inside it. */
  | {
      readonly shape: 'shell';
      readonly baseDiameter: number;
      readonly height: number;
      readonly thickness: number;
    }
  /** Any flat outline, extruded vertically. */
  | { readonly shape: 'prism'; readonly corners: readonly Corner[]; readonly height: number };

/**
 * The exact volume of one shape, m³.
 *
 * Cone frustum π h (D² + D d + d²)/12; box frustum h/6 (A + 4 M + B), exact for the prismoid, with
 * the middle section M, and h/3 (A + B + √(A B)) where both sides taper alike; wedge l w
 * (t₁ + t₂)/2; cap π h (3 a² + h²)/6, a half the base; shell: the cap less the same ball's cap with
 * the radius smaller by the thickness, cut at the same base; prism: area of the outline times the
 * height.
 *
 * @throws {DomainError} for a measure that is not positive or beyond EXTREMES.length, a shell as
 *   thick as its height ('too-thick') or more than half a ball ('more-than-half-a-ball'), an
 *   outline that crosses itself or holds nothing.
 * @source none: it is geometry
 */
export function shapeVolume(shape: Shape): number {
  switch (shape.shape) {
    case 'cone-frustum': {
      const [d, h] = [above('bottomDiameter', shape.bottomDiameter), above('height', shape.height)];
      const top = fromNothing('topDiameter', shape.topDiameter);
      return (Math.PI / 12) * h * (d ** 2 + d * top + top ** 2);
    }
    case 'box-frustum': {
      const [l, w] = [above('length', shape.length), above('width', shape.width)];
      const tl = fromNothing('topLength', shape.topLength);
      const tw = fromNothing('topWidth', shape.topWidth);
      return (above('height', shape.height) / 6) * (l * w + (l + tl) * (w + tw) + tl * tw);
    }
    case 'wedge': {
      const thin = fromNothing('thinEnd', shape.thinEnd);
      const mean = (above('thickness', shape.thickness) + thin) / 2;
      return above('length', shape.length) * above('width', shape.width) * mean;
    }
    case 'cap':
      return capVolume(
        fromNothing('baseDiameter', shape.baseDiameter),
        above('height', shape.height),
      );
    case 'shell':
      return shellVolume(shape);
    case 'prism':
      return polygonArea(shape.corners) * above('height', shape.height);
    default:
      return pieceVolume(shape);
  }
}

const above = (name: string, value: number) => {
  demandAmount(name, value, 'length');
  return value;
};

/**
 * A dimension that may be zero, such as the end of a wedge, a point or the base of a whole sphere.
 */
const fromNothing = (name: string, value: number) => {
  demand(name, value, 'length', { min: 0 });
  demand(name, value, 'length', { max: EXTREMES.length.max });
  return value;
};

const capVolume = (base: number, height: number) =>
  (Math.PI / 6) * height * ((3 / 4) * base ** 2 + height ** 2);

/** The radius of the sphere of a cap with this base and height, m. */
const ballRadius = (base: number, height: number) => base ** 2 / (8 * height) + height / 2;

function shellVolume(shell: Extract<Shape, { shape: 'shell' }>): number {
  const base = above('baseDiameter', shell.baseDiameter);
  const height = above('height', shell.height);
  const thickness = above('thickness', shell.thickness);
  demand('height', height, 'length', { min: 0, max: base / 2 }, 'more-than-half-a-ball');
  if (thickness >= height) throw tooThick(thickness, height);
  // The inner sphere has the same centre, so its top is lower by the thickness at the crown.
  const inner = ballRadius(base, height) - thickness;
  const rise = height - thickness;
  // The inner sphere meets the base plane in a circle, or not at all if it is too small.
  const depth = inner - rise;
  const innerBase = 2 * Math.sqrt(Math.max(0, inner ** 2 - depth ** 2));
  return capVolume(base, height) - capVolume(innerBase, rise);
}

const tooThick = (value: number, max: number) =>
  new DomainError({
    quantity: 'thickness',
    value,
    kind: 'length',
    allowed: { min: 0, max, aboveMin: true, belowMax: true },
    because: 'too-thick',
  });

/**
 * What one form holds, m³: the shape less the cores and blockouts that stand in it.
 *
 * Each core counts with the volume of its part inside the form. Volumes cannot show whether it is
 * inside: `coreOutgrows` checks what can be checked, and the rest is the reader's care.
 *
 * @throws {DomainError} as `shapeVolume`; 'cores-fill-it' when the cores leave nothing; a count of
 *   cores that is not a whole number from 1 to a million
 * @source none: it is geometry
 */
export function netVolume(form: {
  readonly shape: Shape;
  readonly cores: readonly { readonly shape: Shape; readonly count: number }[];
}): { readonly gross: number; readonly cores: number; readonly net: number } {
  const gross = shapeVolume(form.shape);
  let cores = 0;
  for (const { shape, count } of form.cores) {
    demandWhole('count', count, { min: 1, max: 1e6 });
    cores += count * shapeVolume(shape);
  }
  demand('cores', cores, 'volume', { min: 0, max: gross, belowMax: true }, 'cores-fill-it');
  return { gross, cores, net: gross - cores };
}
