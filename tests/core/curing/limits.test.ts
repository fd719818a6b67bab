import { expect, test } from 'vitest';
import { frostGuard } from '../../../src/core/curing/frost.ts';
import { steadyHistory } from '../../../src/core/curing/history.ts';
import {
  FREEZES_AT,
  tooColdToCure,
  tooHotToCure,
  tooYoungToEstimate,
} from '../../../src/core/curing/limits.ts';
import { parseQuantity } from '../../../src/core/quantity/parse.ts';

const kelvin = (text: string) => {
  const read = parseQuantity(text, 'temperature');
  if (!read.ok) throw new Error(text);
  return read.value;
};

test('each limit holds exactly at its value in °C and in °F', () => {
  for (const five of ['5 °C', '41 °F']) expect(tooColdToCure(kelvin(five))).toBe(false);
  for (const less of ['4.99 °C', '40.9 °F']) expect(tooColdToCure(kelvin(less))).toBe(true);
  for (const seventy of ['70 °C', '158 °F']) expect(tooHotToCure(kelvin(seventy))).toBe(true);
  for (const less of ['69.9 °C', '157.9 °F']) expect(tooHotToCure(kelvin(less))).toBe(false);
  for (const ice of ['0 °C', '32 °F']) expect(kelvin(ice)).toBeLessThanOrEqual(FREEZES_AT);
  expect(kelvin('32.1 °F')).toBeGreaterThan(FREEZES_AT);
});

test('a part is too young below 16 hours of adjusted age or of clock time', () => {
  const young = (age: number, clock?: number) =>
    tooYoungToEstimate({
      adjustedAge: age * 3600,
      sinceCasting: clock === undefined ? undefined : clock * 3600,
    });
  expect([young(15.9), young(16), young(16, 15.9), young(15.9, 16), young(16, 16)]).toEqual([
    true,
    false,
    true,
    true,
    false,
  ]);
});

test('a part at 32 °F freezes just as at 0 °C', () => {
  const at = (text: string) =>
    frostGuard({
      history: steadyHistory({ temperature: kelvin(text), duration: 86_400 }),
      law: { law: 'fhp' },
      strength28: 1e6,
      coefficients: [0.25],
    });
  expect(at('32 °F').firstFreeze).toBe(0);
  expect(at('32 °F').frozenFor).toBe(at('0 °C').frozenFor);
  expect(at('33 °F').firstFreeze).toBeUndefined();
});
