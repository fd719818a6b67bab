import { expect, test } from 'vitest';
import { answer } from './answer.ts';
import { compare, type Given, type Row } from './rows.ts';

const giving = (x: number) =>
  answer({ asks: 'What it gives', input: {}, gives: 'density', work: () => x });
const plain: Row = {
  id: 'a-row',
  asks: 'nothing',
  input: {},
  expected: '600 kg/m3',
  tolerance: '1 kg/m3',
  source: 'none',
  where: 'nowhere',
  standing: 'published',
};
const misprinted: Row = { ...plain, differs: 'misprint', obtained: '583.3 kg/m3' };
const holds = (row: Row, ours: number) => compare(row, giving(ours)).holds;

test('a figure is ours within its tolerance, and no answer is no agreement', () => {
  expect([600, 600.9, 599.1].map((x) => holds(plain, x))).toEqual([true, true, true]);
  expect([601.1, 598.9, NaN, Infinity].map((x) => holds(plain, x))).toEqual(Array(4).fill(false));
});

test('a figure that differs holds only where ours is the one it names', () => {
  expect([583.3, 583.34, 583.26].map((x) => holds(misprinted, x))).toEqual([true, true, true]);
  expect(
    [583.36, 583.24, 600, 1e6, -583.3, NaN, Infinity].map((x) => holds(misprinted, x)),
  ).toEqual(Array(7).fill(false));
  // As near as the tolerance is no difference, whatever ours is said to be.
  expect(holds({ ...misprinted, obtained: '600.5 kg/m3' }, 600.5)).toBe(false);
});

test('ours may be bare numbers, a whole number or a word', () => {
  const list = (ours: readonly number[]) =>
    compare(
      { ...plain, expected: [1, 2], tolerance: 0.05, differs: 'slip', obtained: [1, 2.5] },
      {
        ...answer({ asks: '', input: {}, gives: 'numbers', work: () => ours }),
      },
    ).holds;
  expect(list([1.4, 2.54])).toBe(true);
  expect(list([1.6, 2.5])).toBe(false);
  expect(list([1, 2.56])).toBe(false);
  const word = (ours: string) =>
    compare(
      { ...plain, expected: 'short', tolerance: 0, differs: 'slip', obtained: 'moderate' },
      answer({ asks: '', input: {}, gives: 'text', work: () => ours }),
    ).holds;
  expect(['moderate', 'short', 'long'].map(word)).toEqual([true, false, false]);
});

test('one tolerance holds for all of a list only where it is narrow for each, and a share is of each', () => {
  const list = (
    tolerance: Row['tolerance'],
    ours: readonly number[],
    expected = [273.15, 101325],
  ) =>
    compare(
      { ...plain, expected, tolerance },
      answer({ asks: '', input: {}, gives: 'numbers', work: () => ours }),
    ).holds;
  expect(() => list(50, [273.15, 101325])).toThrow('a-row: one tolerance for all is wide');
  expect(() => list([50], [273.15, 101325])).toThrow('a-row: 1 tolerances, not 2');
  expect(list([0.01, 50], [273.155, 101300])).toBe(true);
  expect(list([0.01, 50], [293.15, 101325])).toBe(false);
  expect(list('1 %', [273.15, 102000])).toBe(true);
  expect(list('1 %', [293.15, 101325])).toBe(false);
  // Nothing is a share of nothing.
  expect(list(0.1, [0.05, 10], [0, 10])).toBe(true);
});

test.each<Partial<Row>>([{ differs: 'measured' }, { obtained: '583.3 kg/m3' as Given }])(
  'what ours is belongs to what differs: %o',
  (part) => {
    expect(() => holds({ ...plain, ...part }, 583.3)).toThrow('a-row: what differs');
  },
);
