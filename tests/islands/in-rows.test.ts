import { describe, expect, test } from 'vitest';
import { inRows } from '../../src/islands/figures/in-rows.ts';
import { WIDTH } from '../../src/islands/plots/scale.ts';

const placed = (marks: readonly (readonly [x: number, text: string])[]) =>
  inRows(marks.map(([x, text]) => ({ x, text })));
type Placed = ReturnType<typeof placed>;

/** Labels that another’s line runs through on its way down to a lower row. */
const crossed = (labels: Placed) =>
  labels.filter((label) =>
    labels.some(({ x, row }) => x > label.from && x < label.to && row > label.row && x !== label.x),
  );
const touching = (labels: Placed) =>
  labels.flatMap((a, i) =>
    labels.slice(i + 1).filter((b) => a.row === b.row && a.from < b.to && b.from < a.to),
  );

const FIVE = ['target 600 kg/m³', '3: 605 kg/m³', '2: 615 kg/m³', 'together 621 kg/m³'];
const BUCKETS = [188, 196, 214, 222].map((x, i) => [x, FIVE[i]!] as const);

describe('labels below a scale', () => {
  test.each([
    ['in the middle', [...BUCKETS, [264, '1: 640 kg/m³']]],
    ['at the left end', BUCKETS.map(([x, text]) => [x - 170, text] as const)],
    ['at the right end', BUCKETS.map(([x, text]) => [x + 180, text] as const)],
    [
      'at both ends',
      [
        [16, '3: 500 kg/m³'],
        [30, '2: 510 kg/m³'],
        [385, '1: 900 kg/m³'],
        [400, 'target 910 kg/m³'],
      ],
    ],
    [
      'two of one density',
      [
        [200, '1: 600 kg/m³'],
        [200, '2: 600 kg/m³'],
      ],
    ],
  ] as const)('%s: no line runs through another label', (_, marks) => {
    const labels = placed(marks);
    expect(labels).toHaveLength(marks.length);
    expect(crossed(labels)).toEqual([]);
    expect(touching(labels)).toEqual([]);
    for (const { from, to } of labels) {
      expect(from).toBeGreaterThanOrEqual(0);
      expect(to).toBeLessThanOrEqual(WIDTH);
    }
  });

  test('a label with room enough is below its mark', () => {
    expect(placed([[210, 'target 600 kg/m³']])[0]).toMatchObject({ side: 0, row: 0, textX: 210 });
    const apart = placed([
      [80, 'target'],
      [300, 'measured'],
    ]);
    expect(apart.map(({ side, row }) => [side, row])).toEqual([
      [0, 0],
      [0, 0],
    ]);
  });

  test('where leader lines must cross, labels still do not touch, and none is lost', () => {
    const long = 'a name as wide as two thirds of the scale';
    const labels = placed([
      [150, long],
      [210, long],
      [270, long],
    ]);
    expect(labels).toHaveLength(3);
    expect(touching(labels)).toEqual([]);
  });
});
