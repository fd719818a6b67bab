import { expect, test } from 'vitest';
import { speaker } from '../../src/islands/engine/say.ts';
import { saidApart } from '../../src/worksheets/shared/words/said-apart.ts';

const say = speaker('metric');
const degrees = (celsius: number) =>
  saidApart(celsius + 273.15, 'temperature', [333.15, 343.15], say, { decimals: 0 });

test('a value just off a limit is never shown rounded to it, and otherwise as usual', () => {
  expect(degrees(60)).toBe('60\u00a0°C');
  expect(degrees(60.04)).toBe('60.04\u00a0°C');
  expect(degrees(59.6)).toBe('59.6\u00a0°C');
  expect(degrees(69.9996)).toBe('69.9996\u00a0°C');
  expect(degrees(64.96)).toBe('65\u00a0°C');
  // The last digit of a reading in °F is not off the mark.
  expect(degrees(60 + 1e-10)).toBe('60\u00a0°C');
});
