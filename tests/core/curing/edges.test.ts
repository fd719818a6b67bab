import { describe, expect, test } from 'vitest';
import { firstAtOrBelow } from '../../../src/core/curing/frost.ts';
import { readTimeCell } from '../../../src/core/curing/log-cells.ts';
import { fitStrength } from '../../../src/core/curing/strength-fit.ts';
import { strengthShare } from '../../../src/core/curing/strength-growth.ts';

const DAY = 86_400;

test('a history that begins cold was cold from its first moment', () => {
  const history = { times: [600, 4200], temperatures: [272, 280], gaps: [] };
  expect(firstAtOrBelow(history, 273.15)).toBe(600);
  expect(firstAtOrBelow({ ...history, temperatures: [280, 272] }, 276)).toBe(2400);
  expect(firstAtOrBelow(history, 270)).toBeUndefined();
});

describe('times in a logger’s file', () => {
  const seconds = (cell: string, how: Parameters<typeof readTimeCell>[1] = {}) => {
    const read = readTimeCell(cell, how);
    return read.ok ? read.seconds : undefined;
  };
  test('a zone east of Greenwich is earlier there, one west of it later', () => {
    const noon = Date.UTC(2026, 3, 3, 12) / 1000;
    expect(seconds('2026-04-03T12:00:00Z')).toBe(noon);
    expect(seconds('2026-04-03T12:00:00+02:00')).toBe(noon - 2 * 3600);
    expect(seconds('2026-04-03T12:00:00-03:30')).toBe(noon + 3.5 * 3600);
  });
  test('day and month that are the same figure need no order', () => {
    expect(seconds('04/04/2026 06:00')).toBe(Date.UTC(2026, 3, 4, 6) / 1000);
  });
  test('an hour that is none makes no time', () => {
    expect(seconds('2026-04-03 25:00')).toBeUndefined();
    expect(seconds('13:00 pm')).toBeUndefined();
  });
});

describe('strength from broken pieces', () => {
  const at = (days: number, strength: number) => ({ age: days * DAY, strength });
  test('a growth steeper than any cement’s is not believed', () => {
    const fit = fitStrength({ results: [at(3, 0.1e6), at(28, 9e6)], coefficient: 0.25 });
    expect(fit.notes).toContainEqual({ code: 'too-steep', of: 'results' });
    expect(fit.coefficient).toBe(0.25);
  });
  test('two results say nothing of their spread when both constants are taken from them', () => {
    const grown = (days: number) =>
      at(days, 2e6 * strengthShare({ age: days * DAY, coefficient: 0.3 }));
    const fit = fitStrength({ results: [grown(7), grown(28)], coefficient: 0.2 });
    expect(fit.coefficient).toBeCloseTo(0.3, 9);
    expect(fit.strength28).toBeCloseTo(2e6, 3);
    expect(fit.spread).toBeUndefined();
  });
});
