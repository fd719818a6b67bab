import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { LARGEST_FILE, readFile } from '../../../src/bench/records/file.ts';
import { type BatchRecord, blankRecord } from '../../../src/bench/records/record.ts';
import { FORMAT } from '../../../src/bench/records/schema.ts';
import { file, whole } from './whole-file.ts';

describe('what is refused', () => {
  const refusal = (text: string) => {
    const read = readFile(text);
    return read.ok ? read.file.refused.join(' ') : read.why;
  };
  const good = blankRecord({ id: 'good' });

  test.each([
    ['', 'not JSON'],
    ['{"format"', 'not JSON'],
    ['[]', 'holds no batches'],
    ['null', 'holds no batches'],
    ['{"batches":[]}', 'not a file of batches'],
    [JSON.stringify({ format: FORMAT, version: 2, batches: [] }), 'later version (2)'],
    [JSON.stringify({ format: FORMAT, version: 1, batches: {} }), 'no list of batches'],
    ['['.repeat(100_000), 'not JSON'],
  ])('%.40s', (text, words) => {
    expect(refusal(text)).toContain(words);
  });

  test('a file too large is not even parsed', () => {
    expect(refusal(' '.repeat(LARGEST_FILE + 1))).toContain('larger than 64 MB');
  });

  test('more batches than anyone casts', () => {
    expect(refusal(whole(Array(5001).fill(0)))).toContain('more than 5000');
  });

  test.each<[string, (r: BatchRecord) => unknown, string]>([
    ['a number for a name', (r) => ({ ...r, name: 5 }), 'name is no string'],
    [
      'a unit of another kind',
      (r) => ({ ...r, readings: { cement: { t: '1', u: 'L' } } }),
      'readings.cement.u',
    ],
    [
      'a reading nobody knows',
      (r) => ({ ...r, readings: { gold: { t: '1' } } }),
      'readings.gold is not part',
    ],
    [
      'a choice nobody has',
      (r) => ({ ...r, readings: { stripped: { t: 'eaten' } } }),
      'readings.stripped.t',
    ],
    ['a date that is no day', (r) => ({ ...r, date: '2025-02-30' }), 'no day'],
    ['an id that climbs', (r) => ({ ...r, id: '../../x' }), "id is '../../x'"],
    ['markup in an id', (r) => ({ ...r, id: '<b>' }), 'id is'],
    ['notes without end', (r) => ({ ...r, notes: 'x'.repeat(20_001) }), 'longer than 20000'],
    [
      'a log that runs backwards',
      (r) => ({ ...r, log: { seconds: [2, 1], kelvin: [290, 290] } }),
      'do not rise',
    ],
    [
      'a log with a hole',
      (r) => ({ ...r, log: { seconds: [1, 2], kelvin: [290] } }),
      'as many times',
    ],
    ['a later version', (r) => ({ ...r, version: 2 }), 'later version'],
    ['half a version', (r) => ({ ...r, version: 0.5 }), 'version cannot be read'],
    ['a list for a batch', () => [], 'no record'],
    ['no readings', ({ readings: _, ...r }) => r, "no 'readings'"],
  ])('a batch with %s is left out and named, the rest comes in', (_, spoil, words) => {
    const read = file(readFile(whole([spoil(good), { ...good, id: 'other' }])));
    expect(read.batches.map(({ id }) => id)).toEqual(['other']);
    expect(read.refused.join(' ')).toContain(words);
  });

  test('a prototype smuggled in', () => {
    const text = whole([good]).replace('"readings":{}', '"readings":{"__proto__":{"t":"1"}}');
    expect(text).toContain('__proto__');
    expect(refusal(text)).toContain('__proto__ is not part of the format');
    const bench = whole([good]).replace('"bench":{}', '"bench":{"__proto__":{"t":"1"}}');
    expect(refusal(bench)).toContain('__proto__ is not part of the format');
    expect(({} as Record<string, unknown>).t).toBeUndefined();
  });

  test('a photo that is no JPEG, or nobody’s', () => {
    const photo = { id: 'p', batch: 'good', width: 1, height: 1, data: 'PHN2Zz4=' };
    expect(refusal(whole([good], { photos: [photo] }))).toContain('Photo 1');
    expect(refusal(whole([good], { photos: [{ ...photo, data: '/9j/AA==' }] }))).toContain(
      'none of its',
    );
  });

  test('the same id twice', () => {
    expect(refusal(whole([good, good]))).toContain('same id');
  });

  test('any JSON at all gets a sentence, never a crash', () => {
    fc.assert(
      fc.property(fc.jsonValue(), fc.jsonValue(), (a, b) => {
        expect(readFile(whole([a, b])).ok).toBe(true);
        expect(file(readFile(whole([a]))).batches).toEqual([]);
      }),
    );
  });
});
