import { expect, test } from 'vitest';
import { outOfBounds, refused } from '../../src/islands/engine/problems.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import { number } from '../../src/islands/fields.ts';

const [metric, us] = [speaker('metric'), speaker('us')];
const foam = number('density', { label: 'Foam', example: '80 kg/m3', max: '500 kg/m3' });
const pounds = 0.45359237 / 0.3048 ** 3;

test('a limit is rounded to the allowed side, and accepted as shown', () => {
  // 500 kg/m³ are 31.21398 lb/ft³.
  const said = 'Foam: read 50\u00a0lb/ft³; it must be at most 31.213\u00a0lb/ft³.';
  expect(outOfBounds(foam, 50 * pounds, us)).toBe(said);
  expect(outOfBounds(foam, 31.213 * pounds, us)).toBeUndefined();
  // 130 kg/m³ are 8.11563 lb/ft³.
  const heavy = { ...foam, min: '130 kg/m3' };
  expect(outOfBounds(heavy, 5 * pounds, us)).toContain('at least 8.1157\u00a0lb/ft³.');
  expect(outOfBounds(heavy, 8.1157 * pounds, us)).toBeUndefined();
  expect(outOfBounds(heavy, 99, metric)).toContain('at least 130\u00a0kg/m³.');
});

test('a limit typed in another unit is within it, whatever the last digits of the two', () => {
  // 3 in are a hair less than 7.62 cm, and 70 cm a hair more than 0.7 m.
  const side = number('length', { label: 'Side', example: '0.5 m', min: '7.62 cm', max: '0.7 m' });
  expect([3 * 0.0254 < 7.62 * 0.01, 70 * 0.01 > 0.7]).toEqual([true, true]);
  expect(outOfBounds(side, 3 * 0.0254, metric)).toBeUndefined();
  expect(outOfBounds(side, 70 * 0.01, metric)).toBeUndefined();
});

test('a value just beyond a limit is not shown rounded to it', () => {
  const said = 'Foam: read 500.001\u00a0kg/m³; it must be at most 500\u00a0kg/m³.';
  expect(outOfBounds(foam, 500.001, metric)).toBe(said);
  // Next to 15 stands 5, which is another number.
  const over = { quantity: 'size', value: 5, kind: 'count', allowed: { min: 15 } } as const;
  expect(refused(over, undefined, metric)).toBe('size: read 5; it must be at least 15.');
});

test('a result that is not a number is reported', () => {
  const none = { quantity: 'foam', value: Number.NaN, kind: 'density', allowed: {} } as const;
  expect(refused(none, foam, metric)).toBe(
    'Foam: came out as no number; it must be a finite number.',
  );
});
