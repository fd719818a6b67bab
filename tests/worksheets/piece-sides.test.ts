import { beforeEach, expect, test } from 'vitest';
import type { Entries, Entry } from '../../src/bench/entries.ts';
import { $kept, keep } from '../../src/bench/store.ts';
import { answer } from '../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import type { NumberReading } from '../../src/islands/engine/reading.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import { keepResults } from '../../src/islands/keep-results.ts';
import type { AnyWorksheet } from '../../src/islands/worksheet.ts';
import evaporation from '../../src/worksheets/curing/evaporation.tsx';
import heatInside from '../../src/worksheets/curing/heat-inside.tsx';
import handling from '../../src/worksheets/demould/handling.tsx';
import formPressure from '../../src/worksheets/placing/form-pressure.tsx';
import pieces from '../../src/worksheets/placing/pieces.tsx';
import shapes from '../../src/worksheets/placing/shapes.tsx';

const metric = speaker('metric');
const mm = (t: string): Entry => ({ t, u: 'mm', s: 'metric' });
const read = (sheet: AnyWorksheet, entries: Entries = {}) =>
  readWorksheet(sheet, entries, $kept.get(), metric);
function workIn(sheet: AnyWorksheet, entries: Entries) {
  const reading = read(sheet, entries);
  keepResults(sheet, reading, answer(sheet, reading, metric), true);
}
const field = (sheet: AnyWorksheet, name: string) => read(sheet).fields[name] as NumberReading;
const lengths = (sheet: AnyWorksheet, ...names: readonly string[]) =>
  names.map((name) => Math.round((field(sheet, name).value ?? Number.NaN) * 1000));
const row = (cells: Record<string, Entry>) => ({ 'pieces.pieces': { rows: [cells] } });

beforeEach(() => {
  for (const key of Object.keys($kept.get())) keep(key, undefined);
});

test('a slab sized at the start is the part that is lifted, warmed and held by its form', () => {
  const slab = { length: mm('600'), width: mm('400'), thickness: mm('50'), count: { t: '4' } };
  workIn(pieces, row(slab));
  expect(lengths(handling, 'length', 'width', 'thickness')).toEqual([600, 400, 50]);
  expect(field(handling, 'length')).toMatchObject({ origin: 'kept', from: pieces.question });
  expect(lengths(heatInside, 'thickness')).toEqual([50]);
  expect(lengths(evaporation, 'length', 'width')).toEqual([600, 400]);
  expect(lengths(formPressure, 'depth', 'width')).toEqual([50, 600]);
});

test('a tall block is as thick as its least side, and as deep as it is filled', () => {
  const block = { shape: { t: 'block' }, length: mm('200'), width: mm('300'), height: mm('900') };
  workIn(pieces, row(block));
  expect(lengths(handling, 'length', 'width', 'thickness')).toEqual([900, 300, 200]);
  expect(lengths(evaporation, 'length', 'width')).toEqual([300, 200]);
  expect(lengths(formPressure, 'depth', 'width')).toEqual([900, 300]);
});

test('pieces of two kinds, and round ones, have no sides to hand on', () => {
  const slab = { length: mm('600'), width: mm('400'), thickness: mm('50') };
  workIn(pieces, row(slab));
  workIn(pieces, { 'pieces.pieces': { rows: [slab, { ...slab, length: mm('700') }] } });
  expect(field(handling, 'length').origin).toBe('example');
  workIn(pieces, row(slab));
  expect(field(handling, 'length').origin).toBe('kept');
  workIn(shapes, {
    'shapes.shape': { t: 'cylinder' },
    'shapes.diameter': mm('250'),
    'shapes.height': mm('500'),
  });
  expect(field(handling, 'thickness').origin).toBe('example');
  expect(lengths(formPressure, 'depth')).toEqual([500]);
});

test('what rests on the example says so where it is taken, and what has no answer is waited for', () => {
  workIn(pieces, row({ count: { t: '3' } }));
  expect(field(handling, 'length')).toMatchObject({ origin: 'kept', onExample: true });
  workIn(pieces, row({ length: { t: '' } }));
  expect(field(handling, 'width').problem).toContain(`waits for an answer to “${pieces.question}”`);
});
