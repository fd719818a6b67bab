import { beforeEach, expect, test } from 'vitest';
import type { Entries, Entry } from '../../../src/bench/entries.ts';
import { $kept, keep } from '../../../src/bench/store.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import type { NumberReading } from '../../../src/islands/engine/reading.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import { keepResults } from '../../../src/islands/keep-results.ts';
import { type AnyWorksheet, benchKey } from '../../../src/islands/worksheet.ts';
import dryingToUse from '../../../src/worksheets/curing/drying-to-use.tsx';
import evaporation from '../../../src/worksheets/curing/evaporation.tsx';
import heatInside from '../../../src/worksheets/curing/heat-inside.tsx';
import setTime from '../../../src/worksheets/curing/set-time.tsx';
import handling from '../../../src/worksheets/demould/handling.tsx';
import partWeight from '../../../src/worksheets/demould/part-weight.tsx';
import heatThrough from '../../../src/worksheets/finished/heat-through.tsx';
import formPressure from '../../../src/worksheets/placing/form-pressure.tsx';
import pieces from '../../../src/worksheets/placing/pieces.tsx';
import shapes from '../../../src/worksheets/placing/shapes.tsx';

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

test('the sides of a slab sized are used for handling, heat, evaporation and the form', () => {
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

test('pieces of two kinds, and round ones, give no sides to other worksheets', () => {
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

test('a ball is one shape, and stands in its form as deep as it is wide', () => {
  const ball = { 'shapes.shape': { t: 'ball' }, 'shapes.diameter': mm('400') };
  const found = answer(shapes, read(shapes, ball), metric);
  // π/6 × 0.4³ m³
  expect(found.ok && found.numbers.one!.value).toBeCloseTo(0.0335103, 7);
  workIn(shapes, { ...ball, 'shapes.count': { t: '1' } });
  expect(lengths(formPressure, 'depth')).toEqual([400]);
});

test('sides resting on the example are marked so where used, and without an answer waited for', () => {
  workIn(pieces, row({ count: { t: '3' } }));
  expect(field(handling, 'length')).toMatchObject({ origin: 'kept', onExample: true });
  workIn(pieces, row({ length: { t: '' } }));
  expect(field(handling, 'width').problem).toContain(`waits for an answer to “${pieces.question}”`);
});

/** A planter: a block of 600 × 300 × 300 mm round a core. */
const PLANTER = {
  'shapes.shape': { t: 'block' },
  'shapes.count': { t: '8' },
  'shapes.length': mm('600'),
  'shapes.width': mm('300'),
  'shapes.height': mm('290'),
  'shapes.hollow': { t: 'some' },
  'shapes.cores': {
    rows: [
      {
        core: { t: 'box' },
        count: { t: '1' },
        across: mm('500'),
        wide: mm('200'),
        deep: mm('240'),
      },
    ],
  },
};
const SOLID: readonly AnyWorksheet[] = [handling, heatInside, heatThrough, dryingToUse];

test('a form with a core is not taken for a solid part: its wall is asked for, its depth kept', () => {
  workIn(shapes, PLANTER);
  for (const sheet of SOLID) {
    expect(field(sheet, 'thickness')).toMatchObject({ value: undefined, text: '', waits: '' });
    expect(field(sheet, 'thickness').problem).toContain('Type its wall');
    expect(answer(sheet, read(sheet), metric).ok, sheet.id).toBe(false);
  }
  expect(field(handling, 'length').problem).toContain('Type the length of one wall');
  expect(lengths(formPressure, 'depth', 'width')).toEqual([290, 600]);
  expect(lengths(setTime, 'depth')).toEqual([290]);
  expect(lengths(evaporation, 'length', 'width')).toEqual([600, 300]);
  // Its weight is of its volume; the sides, if they are chosen, say why they are not enough.
  expect(answer(partWeight, read(partWeight), metric).ok).toBe(true);
  const bySides = read(partWeight, { 'part-weight.shape': { t: 'sides' } });
  expect(bySides.problems.map(({ say }) => say).join()).toContain('Choose “volume”');
});

test('the wall, typed once, is the thickness in every worksheet on the part', () => {
  workIn(shapes, PLANTER);
  for (const sheet of SOLID) {
    const typed = { [benchKey(sheet, 'thickness')]: mm('50') };
    for (const other of SOLID)
      expect((read(other, typed).fields.thickness as NumberReading).value).toBeCloseTo(0.05, 9);
  }
});

test('the wall of a hollow ball is not calculated as a solid ball', () => {
  const wall = { [benchKey(heatInside, 'thickness')]: mm('150') };
  const ball = { ...wall, 'heat-inside.shape': { t: 'ball' } };
  const refused = (entries: Entries) => {
    const found = answer(heatInside, read(heatInside, entries), metric);
    return found.ok ? '' : found.problems.map(({ say }) => say).join(' ');
  };
  expect(refused(ball)).toBe('');
  expect(refused({ ...ball, 'heat-inside.inside': { t: 'hollow' } })).toContain('choose the slab');
  workIn(shapes, PLANTER);
  expect(refused(ball)).toContain('choose the slab');
  expect(refused(wall)).toBe('');
  // A hole for a cord makes no wall of it.
  expect(refused({ ...ball, 'heat-inside.inside': { t: 'solid' } })).toBe('');
  workIn(shapes, { ...PLANTER, 'shapes.hollow': { t: 'none' } });
  expect(refused(ball)).toBe('');
});

test('results that rest on a missing wall wait, until a solid form is entered', () => {
  workIn(shapes, PLANTER);
  workIn(handling, {});
  expect($kept.get()['part.strippingStress']).toMatchObject({ waits: true });
  workIn(shapes, { ...PLANTER, 'shapes.hollow': { t: 'none' } });
  expect(lengths(handling, 'length', 'width', 'thickness')).toEqual([600, 300, 290]);
  workIn(shapes, PLANTER);
  workIn(
    pieces,
    row({
      shape: { t: 'block' },
      count: { t: '3' },
      length: mm('200'),
      width: mm('100'),
      height: mm('50'),
    }),
  );
  expect(lengths(handling, 'length', 'width', 'thickness')).toEqual([200, 100, 50]);
});

test('another worksheet that answers again does not make the hollow part solid', () => {
  const block = row({
    shape: { t: 'block' },
    length: mm('600'),
    width: mm('300'),
    height: mm('290'),
  });
  workIn(pieces, block);
  workIn(shapes, PLANTER);
  const reading = read(pieces, block);
  keepResults(pieces, reading, answer(pieces, reading, metric), false);
  expect(field(handling, 'thickness').problem).toContain('Type its wall');
});

test('an incomplete form is waited for, whether it had a core before or not', () => {
  workIn(shapes, PLANTER);
  workIn(shapes, { ...PLANTER, 'shapes.length': mm('') });
  expect(field(handling, 'thickness').problem).toContain(
    `waits for an answer to “${shapes.question}”`,
  );
});

test('a depth as it lies is not used as the least thickness, nor an open face as the long sides', () => {
  const typed = {
    [benchKey(setTime, 'depth')]: mm('290'),
    [benchKey(evaporation, 'length')]: mm('600'),
    [benchKey(evaporation, 'width')]: mm('300'),
  };
  for (const sheet of [...SOLID, partWeight])
    for (const [name, { origin }] of Object.entries(read(sheet, typed).fields))
      expect(origin, `${sheet.id}.${name}`).toBe('example');
});
