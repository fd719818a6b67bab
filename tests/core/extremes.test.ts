import { expect, test } from 'vitest';
import { demandAmount, EXTREMES } from '../../src/core/extremes.ts';
import { expectLimits } from './refuses.ts';

test.each(Object.entries(EXTREMES))('%s: the extremes themselves pass', (kind, { min, max }) => {
  expectLimits(
    ({ value }) => demandAmount('value', value, kind as keyof typeof EXTREMES),
    { value: 1 },
    { value: { takes: [min, max], refuses: [min / 2, max * 2, -1, 0, Number.NaN] } },
  );
});

test('a value of 0 is refused by the bound that it breaks: more than 0', () => {
  const more = { quantity: 'tare', kind: 'mass', allowed: { min: 0, aboveMin: true } };
  expect(() => demandAmount('tare', 0, 'mass')).toThrow(expect.objectContaining(more));
  expect(() => demandAmount('tare', 1e-10, 'mass')).toThrow(
    expect.objectContaining({ allowed: EXTREMES.mass }),
  );
});
