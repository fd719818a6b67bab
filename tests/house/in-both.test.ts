import { expect, test } from 'vitest';
import { inBoth } from '../../src/components/prose/amount.ts';

const plain = (text: string) => text.replaceAll('\u00a0', ' ');

test('an amount is said in both systems', () => {
  expect(plain(inBoth({ value: 300, kind: 'temperature' }))).toBe('26.9 °C (80.3 °F)');
  expect(plain(inBoth({ value: 0.06, kind: 'length', metric: 'mm', us: 'in' }))).toBe(
    '60.0 mm (2.36 in)',
  );
});

test('a range is said once, in the unit of its larger end', () => {
  expect(plain(inBoth({ value: [0.9, 2.4], kind: 'mass', significant: 2 }))).toBe(
    '0.90 to 2.4 kg (2.0 to 5.3 lb)',
  );
  expect(plain(inBoth({ value: [0.4, 0.9], kind: 'mass', significant: 2 }))).toBe(
    '400 to 900 g (0.88 to 2.0 lb)',
  );
  expect(plain(inBoth({ value: [-9, 2], kind: 'temperatureDifference', decimals: 0 }))).toBe(
    '−9 to 2 °C (−16 to 4 °F)',
  );
});

test('a range whose ends are said alike is one number, in each system by itself', () => {
  const near = [293.15, 293.45] as const;
  expect(plain(inBoth({ value: near, kind: 'temperature', decimals: 0 }))).toBe(
    '20 °C (68 to 69 °F)',
  );
});

test('a range breaks between its two systems alone', () => {
  expect(inBoth({ value: [1, 3], kind: 'mass', significant: 2 }).split(' ')).toHaveLength(2);
});

test('what both systems say alike is said once', () => {
  expect(plain(inBoth({ value: 7200, kind: 'time', significant: 2 }))).toBe('120 min');
});
