import { expect, test } from 'vitest';
import type { Entries } from '../../src/bench/entries.ts';
import { answer } from '../../src/islands/engine/answer.ts';
import { doubtAbout, plusMinus } from '../../src/islands/engine/doubt.ts';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import { choices, isShown } from '../../src/islands/engine/reading.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import type { AnyWorksheet } from '../../src/islands/worksheet.ts';
import pieceDensity from '../../src/worksheets/finished/piece-density.tsx';
import foamDensity from '../../src/worksheets/foam/foam-density.tsx';
import { normal } from '../core/foam/seeded.ts';
import { mustAnswer } from './must-answer.ts';

const metric = speaker('metric');
const TRIALS = 4000;

type Values = Parameters<AnyWorksheet['work']>[0];
/** Draws the list anew: what its readings have wrong, each and together. */
type Draw = (values: Values, by: () => number) => Values;

const kg = (t: string, p?: string) => ({ t, s: 'metric' as const, ...(p && { p }) });

/** The ± a worksheet gives a result, and how far the result scatters when all readings are drawn by theirs. */
function trials(sheet: AnyWorksheet, name: string, entries: Entries, draw: Draw) {
  const reading = readWorksheet(sheet, entries, {}, metric);
  const found = answer(sheet, reading, metric);
  mustAnswer(found);
  const pms = plusMinus(reading);
  const chosen = choices(reading.fields);
  const shown = Object.entries(reading.fields).filter(
    ([, field]) => doubtAbout(field) > 0 && isShown(field.field.when, chosen),
  );
  const by = normal(7919);
  const results = Array.from({ length: TRIALS }, () => {
    const off = shown.map(([field]) => [field, found.values[field] + pms[field]! * by()]);
    const values = draw({ ...found.values, ...Object.fromEntries(off) }, by);
    return sheet.results[name]!.of(sheet.work(values, pms, reading.typed))!;
  });
  const mean = results.reduce((sum, x) => sum + x, 0) / TRIALS;
  const squares = results.reduce((sum, x) => sum + (x - mean) ** 2, 0);
  const { sure } = found.numbers[name]!;
  return { scatter: Math.sqrt(squares / (TRIALS - 1)), told: sure!.pm, mostFrom: sure!.mostFrom };
}

/** 4000 trials tell a spread to 1 in 90; twice that, and what first order leaves. */
const agree = ({ told, scatter }: { readonly told: number; readonly scatter: number }) => {
  expect(told / scatter).toBeGreaterThan(0.96);
  expect(told / scatter).toBeLessThan(1.04);
};

test.each(['0.001', '0.005', '0.01'])('a dried piece is doubted by a scale of ± %s kg', (p) => {
  // The scale stays as far off while a piece dries: the loss is none of its errors.
  const draw: Draw = (values, by) => {
    const off = Number(p) * by();
    const weighings = values.weighings as readonly { time: number; mass: number }[];
    return { ...values, weighings: weighings.map((w) => ({ ...w, mass: w.mass + off })) };
  };
  const piece = trials(pieceDensity, 'dry', { 'piece-density.mass': kg('0.705', p) }, draw);
  agree(piece);
  expect(piece.mostFrom).toBe(p === '0.01' ? 'Weighings while it dried' : 'Height or thickness');
});

test.each([
  ['20', ['2.45', '2.43', '2.47']],
  ['1', ['0.93', '0.93', '0.93']],
])('foam weighed several times in %s L keeps the ± of its scale', (vessel, weighed) => {
  const entries = {
    'foam.method': { t: 'weighed' },
    'foam.weighings': { t: 'several' },
    'bucket.volume': { t: vessel, u: 'L', s: 'metric' as const },
    'foam-density.fulls': { rows: weighed.map((t) => ({ full: kg(t) })) },
  };
  const mean = weighed.reduce((sum, t) => sum + Number(t) / weighed.length, 0);
  const spread = Math.sqrt(weighed.reduce((sum, t) => sum + (Number(t) - mean) ** 2, 0) / 2);
  const draw: Draw = (values, by) => {
    const off = 0.01 * by();
    return { ...values, fulls: weighed.map(() => ({ full: mean + off + spread * by() })) };
  };
  const foam = trials(foamDensity, 'density', entries, draw);
  agree(foam);
  // As one weighing is.
  if (spread === 0) expect(foam.told).toBeCloseTo(Math.hypot(10, 10, 0.8), 1);
});
