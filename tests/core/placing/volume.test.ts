import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { batchVolume, type Piece, pieceVolume } from '../../../src/core/placing/volume.ts';

const slab: Piece = { shape: 'slab', length: 0.45, width: 0.3, thickness: 0.06 };
const size = fc.double({ min: 0.01, max: 10, noNaN: true });
const piece: fc.Arbitrary<Piece> = fc.oneof(
  fc.record({ shape: fc.constant('slab' as const), length: size, width: size, thickness: size }),
  fc.record({ shape: fc.constant('block' as const), length: size, width: size, height: size }),
  fc.record({ shape: fc.constant('cylinder' as const), diameter: size, height: size }),
  fc
    .tuple(size, fc.double({ min: 0.01, max: 0.99, noNaN: true }), size)
    .map(([outerDiameter, bore, height]) => ({
      shape: 'ring' as const,
      outerDiameter,
      innerDiameter: outerDiameter * bore,
      height,
    })),
);

/** The same piece, every measure `k` times as long. */
const scaled = (p: Piece, k: number) =>
  Object.fromEntries(
    Object.entries(p).map(([name, v]) => [name, typeof v === 'number' ? v * k : v]),
  ) as unknown as Piece;

describe('the volume of a piece', () => {
  test('twelve of the demo slabs are 97.2 L', () => {
    const { net } = batchVolume({ pieces: [{ piece: slab, count: 12 }], settling: 0, waste: 0 });
    expect(net).toBeCloseTo(0.0972, 12);
  });

  test('a cylinder of 150 by 300 mm is 5.301 L, and a ring is one cylinder less another', () => {
    const cylinder = (diameter: number) =>
      pieceVolume({ shape: 'cylinder', diameter, height: 0.3 });
    expect(cylinder(0.15)).toBeCloseTo(0.00530144, 8);
    const ring = pieceVolume({
      shape: 'ring',
      outerDiameter: 0.5,
      innerDiameter: 0.2,
      height: 0.3,
    });
    expect(ring).toBeCloseTo(cylinder(0.5) - cylinder(0.2), 12);
  });

  test('twice the size is eight times the volume', () => {
    fc.assert(
      fc.property(piece, (p) => {
        expect(pieceVolume(scaled(p, 2)) / pieceVolume(p)).toBeCloseTo(8, 9);
      }),
    );
  });

  test('refuses a flat piece and a hole outside its ring', () => {
    expect(() => pieceVolume({ ...slab, thickness: 0 })).toThrow('thickness');
    const ring = { shape: 'ring', outerDiameter: 0.2, innerDiameter: 0.2, height: 1 } as const;
    expect(() => pieceVolume(ring)).toThrow('innerDiameter');
  });
});

describe('the volume of a batch', () => {
  test('settling is a share of the form volume, waste a share of the volume mixed', () => {
    const batch = batchVolume({
      pieces: [
        { piece: slab, count: 12 },
        { piece: { shape: 'block', length: 0.1, width: 0.1, height: 0.1 }, count: 3 },
      ],
      settling: 0.05,
      waste: 0.1,
    });
    expect(batch.net).toBeCloseTo(0.1002, 12);
    expect(batch.settling).toBeCloseTo(0.00501, 12);
    expect(batch.waste).toBeCloseTo(0.010521, 12);
    expect(batch.total).toBeCloseTo(0.1002 * 1.05 * 1.1, 12);
  });

  test('refuses no pieces, half a piece and a negative share', () => {
    const one = { pieces: [{ piece: slab, count: 1 }], settling: 0, waste: 0 };
    expect(() => batchVolume({ ...one, pieces: [] })).toThrow('pieces');
    expect(() => batchVolume({ ...one, pieces: [{ piece: slab, count: 1.5 }] })).toThrow('count');
    expect(() => batchVolume({ ...one, waste: -0.1 })).toThrow('waste');
  });
});
