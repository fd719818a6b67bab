import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { coreOutgrows } from '../../../src/core/placing/core-fits.ts';
import type { Shape } from '../../../src/core/placing/shapes.ts';

const block = (length: number, width: number, height: number) =>
  ({ shape: 'block', length, width, height }) as const;
const rod = (diameter: number, height: number) =>
  ({ shape: 'cylinder', diameter, height }) as const;
const form = block(0.6, 0.3, 0.25);
const outgrown = (core: Shape, of: Shape = form) => coreOutgrows({ core, form: of });

describe('whether a core fits into its form', () => {
  test.each([
    ['higher', rod(0.04, 0.26), 'height', 0.26, 0.25],
    ['longer than it, and too wide to lie askew', block(0.65, 0.2, 0.1), 'long', 0.65, 0.6],
    ['the other way', block(0.2, 0.65, 0.1), 'long', 0.65, 0.6],
    ['longer than any line in it', block(0.68, 0.05, 0.1), 'long', 0.68, 0.6],
    ['wider than the narrow side', block(0.4, 0.31, 0.1), 'narrow', 0.31, 0.3],
    ['thicker than the narrow side', rod(0.31, 0.1), 'narrow', 0.31, 0.3],
  ])('%s', (_, core, measure, value, most) => {
    expect(outgrown(core)).toEqual({ measure, value, most });
  });

  test('a box in a round form fits by its corners', () => {
    const drum = rod(0.5, 0.25);
    expect(outgrown(block(0.4, 0.3, 0.1), drum)).toBeUndefined();
    expect(outgrown(block(0.41, 0.3, 0.1), drum)).toEqual({
      measure: 'corners',
      value: Math.hypot(0.41, 0.3),
      most: 0.5,
    });
    expect(outgrown(rod(0.5, 0.1), drum)).toBeUndefined();
  });

  test('a core that just fits is accepted, whatever the rounding error', () => {
    expect(outgrown(block(0.1 + 0.2, 0.1, 0.1), block(0.3, 0.3, 0.2))).toBeUndefined();
    expect(outgrown(block(0.1, 0.1, 0.1 + 0.2), block(0.3, 0.3, 0.3))).toBeUndefined();
    // A box 1.05 × 0.1 m askew in a form 1 m long, which it touches all round.
    const [p, q, a] = [1.05, 0.1, 1];
    const square = p ** 2 + q ** 2;
    const b = (2 * p * q * a + (p ** 2 - q ** 2) * Math.sqrt(square - a ** 2)) / square;
    const askew = (share: number) => outgrown(block(p, q, 0.1), block(a, b * share, 0.2));
    expect(askew(1 - 1e-13)).toBeUndefined();
    expect(askew(1 - 1e-7)?.measure).toBe('long');
  });

  test('a core that just fits is accepted upright, lengthwise or diagonally', () => {
    expect(outgrown(form)).toBeUndefined();
    expect(outgrown(rod(0.3, 0.25))).toBeUndefined();
    expect(outgrown(block(0.65, 0.01, 0.1))).toBeUndefined();
    // 60 mm typed in inches.
    expect(outgrown(rod(0.04, (0.06 / 0.0254) * 0.0254), block(1, 1, 0.06))).toBeUndefined();
  });

  test('a box fits into another exactly where a search over all angles finds one', () => {
    const side = fc.double({ min: 0.05, max: 1, noNaN: true });
    fc.assert(
      fc.property(side, side, side, side, (p, q, a, b) => {
        // By how much the box round the core, turned, outdoes the form, at the kindest of the angles.
        const worst = (angle: number) => {
          const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
          return Math.max((p * cos + q * sin) / a, (p * sin + q * cos) / b);
        };
        const angles = Array.from({ length: 3001 }, (_, i) => (i / 3000) * (Math.PI / 2));
        const kindest = Math.min(...angles.map(worst));
        // What hangs on a hair between two of the angles is no matter for them.
        fc.pre(Math.abs(kindest - 1) > 1e-2);
        const fits = outgrown(block(p, q, 0.1), block(a, b, 0.1)) === undefined;
        expect(fits).toBe(kindest < 1);
      }),
    );
  });

  test.each<[string, Shape, number, number]>([
    ['slab', { shape: 'slab', length: 0.4, width: 0.3, thickness: 0.06 }, 0.3, 0.06],
    ['ring', { shape: 'ring', outerDiameter: 0.4, innerDiameter: 0.2, height: 0.1 }, 0.4, 0.1],
    [
      'cone',
      { shape: 'cone-frustum', bottomDiameter: 0.2, topDiameter: 0.3, height: 0.2 },
      0.3,
      0.2,
    ],
    [
      'box frustum',
      { shape: 'box-frustum', length: 0.5, width: 0.2, topLength: 0.4, topWidth: 0.3, height: 0.2 },
      0.3,
      0.2,
    ],
    [
      'wedge',
      { shape: 'wedge', length: 0.4, width: 0.3, thickness: 0.02, thinEnd: 0.08 },
      0.3,
      0.08,
    ],
    ['half a ball', { shape: 'cap', baseDiameter: 0.4, height: 0.2 }, 0.4, 0.2],
    // A ball of 0.5 cut 0.4 high, where it is 0.4 wide.
    ['most of a ball', { shape: 'cap', baseDiameter: 0.4, height: 0.4 }, 0.5, 0.4],
    ['ball', { shape: 'cap', baseDiameter: 0, height: 0.4 }, 0.4, 0.4],
    ['bowl', { shape: 'shell', baseDiameter: 0.4, height: 0.1, thickness: 0.02 }, 0.4, 0.1],
    [
      'outline',
      {
        shape: 'prism',
        corners: [
          [-0.1, 0],
          [0.3, 0.1],
          [0.1, 0.2],
        ],
        height: 0.15,
      },
      0.2,
      0.15,
    ],
  ])('each form by its widest and its height: %s', (_, of, narrow, height) => {
    expect(outgrown(rod(narrow * 0.999, height * 0.999), of)).toBeUndefined();
    expect(outgrown(rod(0.01, height * 1.001), of)?.measure).toBe('height');
    expect(outgrown(rod(narrow * 1.001, height * 0.5), of)?.measure).toBe('narrow');
  });

  test('a box that fits when turned is accepted', () => {
    const share = fc.double({ min: 0.01, max: 1, noNaN: true });
    const turn = fc.double({ min: 0, max: Math.PI / 2, noNaN: true });
    fc.assert(
      fc.property(share, share, share, turn, (a, b, c, angle) => {
        // The box round the turned core is the least form it lies in.
        const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
        const around = block(a * cos + b * sin, a * sin + b * cos, c);
        expect(outgrown(block(a, b, c), around)).toBeUndefined();
      }),
    );
  });
});
