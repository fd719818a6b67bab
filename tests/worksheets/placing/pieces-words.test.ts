import { expect, test } from 'vitest';
import { speaker } from '../../../src/islands/engine/say.ts';
import {
  countInWords,
  makeWords,
  type PieceRow,
  piecesInWords,
} from '../../../src/worksheets/placing/pieces-words.ts';

const row: PieceRow = {
  shape: 'slab',
  count: 12,
  length: 0.45,
  width: 0.3,
  thickness: 0.06,
  height: 0.3,
  diameter: 0.5,
  inner: 0.2,
};

test('names what is cast, by the dimensions of its shape', () => {
  const say = speaker('metric');
  expect(piecesInWords([row], say)).toBe('12 slabs, 450 × 300 × 60\u00a0mm');
  expect(
    piecesInWords(
      [
        { ...row, shape: 'block', count: 1 },
        { ...row, shape: 'ring', count: 2 },
      ],
      say,
    ),
  ).toBe('1 block, 450 × 300 × 300\u00a0mm; 2 rings, 500 (200 inside) across, 300\u00a0mm high');
});

test('in inches for US readers', () => {
  const inch = { ...row, length: 0.4572, width: 0.3048, thickness: 0.0508 };
  expect(piecesInWords([inch], speaker('us'))).toBe('12 slabs, 18 × 12 × 2\u00a0in');
});

test('names the number of forms, if another worksheet counted them', () => {
  const by = (from: string, v: number) => ({ v, from });
  const shapes = 'What does this form hold?';
  expect(countInWords(by(shapes, 0.06), by(shapes, 6))).toBe('6 pieces');
  expect(countInWords(by(shapes, 0.06), by(shapes, 1))).toBe('1 piece');
  expect(countInWords(by(shapes, 0.06), by('How much must I make?', 12))).toBe('');
  expect(countInWords(by(shapes, 0.06), { waits: true, from: shapes })).toBe('');
  expect(countInWords(by(shapes, 0.06), undefined)).toBe('');
});

test('the volume to make and that of the forms have one unit', () => {
  const gallon = 0.003785411784;
  expect(makeWords(1.06 * gallon, 0.98 * gallon, speaker('us'))).toBe(
    'Make 1.06\u00a0gal to fill 0.980\u00a0gal of form.',
  );
  expect(makeWords(0.00105, 0.00097, speaker('metric'))).toBe(
    'Make 1.05\u00a0L to fill 0.970\u00a0L of form.',
  );
});
