import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { toCsv } from '../../../src/bench/records/csv.ts';
import { LARGEST_FILE, readFile } from '../../../src/bench/records/file.ts';
import {
  type BatchRecord,
  blankRecord,
  RECORD_VERSION,
} from '../../../src/bench/records/record.ts';
import { FORMAT } from '../../../src/bench/records/schema.ts';
import { asideToFile } from '../../../src/bench/records/to-file.ts';
import { parseQuantity } from '../../../src/core/quantity/parse.ts';
import { file, whole } from './whole-file.ts';

const LATER = RECORD_VERSION + 1;
const pictures = (count: number) =>
  Array.from({ length: count }, (_, i) => ({ id: `p${i}`, caption: '' }));

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
    [JSON.stringify({ format: FORMAT, version: LATER, batches: [] }), `later version (${LATER})`],
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
    [
      'a date that is no day',
      (r) => ({ ...r, name: 'Slabs', date: '2025-02-30' }),
      'Batch 1 of the file, “Slabs” was left out whole: its date is “2025-02-30”, no day such as 2025-05-31',
    ],
    ['no date', ({ date: _, ...r }) => r, 'it has no date.'],
    [
      'an id that climbs',
      (r) => ({ ...r, id: '../../x' }),
      'its id is “../../x”, not 1 to 60 letters',
    ],
    [
      'a number for an id',
      (r) => ({ ...r, id: 12 }),
      'its id must be text between quotation marks',
    ],
    ['markup in an id', (r) => ({ ...r, id: '<b>' }), 'its id is “<b>”'],
    ['a later version', (r) => ({ ...r, version: LATER }), 'later version'],
    ['half a version', (r) => ({ ...r, version: 0.5 }), 'version cannot be read'],
    ['a list for a batch', () => [], 'no record'],
  ])('a batch with %s is left out and named, the rest comes in', (_, spoil, words) => {
    const read = file(readFile(whole([spoil(good), { ...good, id: 'other' }])));
    expect(read.batches.map(({ id }) => id)).toEqual(['other']);
    expect(read.refused.join(' ')).toContain(words);
  });

  test.each<[string, Record<string, unknown>, Partial<BatchRecord>, string]>([
    ['a number for a name', { name: 5 }, {}, 'without its name'],
    ['text for a count', { revision: '3' }, {}, 'without its count of savings'],
    ['no moment of saving', { changed: 'May' }, { changed: '2025-05-31T00:00:00Z' }, 'last saving'],
    ['notes that are none', { notes: null }, {}, 'without its notes'],
    [
      'corrections of less than nothing, or of nothing weighed',
      { corrections: [{ weighed: -5 }, { weighed: 640 }, { foam: 0.002 }] },
      {
        corrections: [{ weighed: 0 }, { weighed: 640 }, { weighed: 0, foam: 0.002 }],
        notes:
          'Brought in without part of 2 of its corrections: what that tells of where it landed and what survived of its foam is not known.',
      },
      'without part of 2 of its corrections',
    ],
    [
      'a photo without a caption',
      { photos: [{ id: 'p' }, ...pictures(1)] },
      { photos: pictures(1) },
      'without one of its photos',
    ],
    ['no readings but a list', { readings: [] }, {}, 'without its readings'],
    [
      'a log that runs backwards',
      { log: { seconds: [2, 1], kelvin: [290, 290] } },
      {},
      'do not rise',
    ],
    ['a log with a hole', { log: { seconds: [1, 2], kelvin: [290] } }, {}, 'as many times'],
    ['a log of words', { log: 'warm' }, {}, 'without its temperature log'],
    ['a part nobody knows', { colour: 'grey' }, {}, '“colour” was left out'],
  ])('a batch with %s comes in without, and that is said', (_, odd, rest, words) => {
    const sound = { ...good, name: 'Slabs', date: '2025-05-31' };
    const { batches, refused } = file(readFile(whole([{ ...sound, ...odd }])));
    expect(batches).toEqual([{ ...sound, ...('name' in odd && { name: '' }), ...rest }]);
    expect(refused).toEqual([expect.stringContaining(words)]);
    if (!('name' in odd)) expect(refused[0]).toContain('“Slabs”');
    expect(refused[0]).not.toMatch(/integer|string|\[\d|'|is below/);
  });

  test('a batch without parts that may be empty is one with them empty; a wrong mark of the invented stays', () => {
    const { id, version, date } = good;
    const [bare, marked, not] = file(
      readFile(
        whole([
          { id, version, date },
          { ...good, id: 'b', invented: 'yes' },
          { ...good, id: 'c', invented: false },
        ]),
      ),
    ).batches;
    expect(bare).toEqual({ ...good, changed: `${date}T00:00:00Z` });
    expect(marked).toMatchObject({ id: 'b', invented: true });
    expect(not).not.toHaveProperty('invented');
  });

  test.each<[string, Partial<BatchRecord>, Partial<BatchRecord>, string]>([
    ['a name', { name: 'x'.repeat(121) }, { name: 'x'.repeat(120) }, 'name was cut off'],
    ['notes', { notes: 'x'.repeat(20_001) }, { notes: 'x'.repeat(20_000) }, 'notes were cut off'],
    [
      'corrections',
      { corrections: Array(21).fill({ weighed: 640 }) },
      { corrections: Array(20).fill({ weighed: 640 }) },
      'corrections the first 20',
    ],
    ['photos', { photos: pictures(13) }, { photos: pictures(12) }, 'photos the first 12'],
  ])(
    'a batch with %s without end comes in as far as it can, and that is said',
    (_, more, rest, words) => {
      const { batches, refused } = file(readFile(whole([{ ...good, ...more }])));
      expect(batches).toEqual([{ ...good, ...rest }]);
      expect(refused).toEqual([expect.stringContaining(words)]);
    },
  );

  test.each<[string, Record<string, unknown>, readonly string[]]>([
    ['a unit of another kind', { cement: { t: '1', u: 'L' } }, ['Cement', '“L”', 'kg']],
    ['a unit nobody knows', { full: { t: '3', u: 'gallons' } }, ['Bucket, full', 'gallons', 'lb']],
    ['a number for a text', { cement: { t: 13 } }, ['Cement', 'quotation marks']],
    ['a name nobody knows', { gold: { t: '1' } }, ['gold']],
    ['a choice nobody has', { stripped: { t: 'eaten' } }, ['eaten', 'clean, marked or broke']],
    ['a choice that is a list', { dried: [] }, ['How it was dried']],
  ])('a reading of %s is left out alone and named in plain words', (_, odd, words) => {
    const sound = { water: { t: '5,4', u: 'kg' }, vessel: { t: '20 L' } };
    const batch = { ...good, name: 'Slabs', readings: { ...sound, ...odd } };
    const { batches, refused } = file(readFile(whole([batch])));
    expect(batches[0]!.readings).toEqual(sound);
    expect(refused.length).toBe(1);
    for (const word of ['Slabs', ...words]) expect(refused[0]).toContain(word);
    expect(refused[0]).not.toMatch(/readings\.|schema|its values/);
  });

  test.each<[string, BatchRecord['readings'], readonly string[]]>([
    ['text that is no amount', { cement: { t: 'about 14' } }, ['Cement', 'about 14', 'kg']],
    ['a unit behind the number that is none', { full: { t: '3 gallons', u: 'kg' } }, ['3 gallons']],
    ['a text with two meanings', { cement: { t: '1,234', u: 'kg' } }, ['1,234', '1.234', '1234']],
    ['a ± that is no amount', { cement: { t: '1', u: 'kg', p: 'a bit' } }, ['± of “Cement”']],
  ])('a reading of %s is kept as it was typed and named', (_, readings, words) => {
    const { batches, refused } = file(readFile(whole([{ ...good, name: 'Slabs', readings }])));
    expect(batches).toEqual([{ ...good, name: 'Slabs', readings }]);
    expect(refused.length).toBe(1);
    for (const word of ['Slabs', ...words, 'kept']) expect(refused[0]).toContain(word);
  });

  test.each([
    ['cement', { t: '13.6', u: 'kg' }, 'note', 'Cement'],
    ['stripped', { t: 'clean' }, 'u', 'How it came out'],
  ])(
    'a part nobody knows goes alone, the rest of the reading stays: %s',
    (name, sound, odd, label) => {
      const batch = { ...good, readings: { [name]: { ...sound, [odd]: 'kg' } } };
      const { batches, refused } = file(readFile(whole([batch])));
      expect(batches[0]!.readings).toEqual({ [name]: sound });
      expect(refused).toEqual([expect.stringContaining(`“${odd}” of “${label}” was left out`)]);
    },
  );

  test('a comma that what can be tells apart is read as the record reads it, with or without a unit', () => {
    const readings = { planned: { t: '1,951' }, foamDensity: { t: '1,951', s: 'us' } };
    const { batches, refused } = file(readFile(whole([{ ...good, readings }])));
    expect(batches[0]!.readings).toEqual({ planned: { t: '1,951', u: 'kg/m3', s: 'metric' } });
    expect(refused).toEqual([expect.stringContaining('typed in US units')]);
  });

  test('a moment that there never was is left out', () => {
    const odd = { foamMade: '2026-13-45T99:99:99Z', changed: '2026-02-30T10:00:00Z' };
    const { batches, refused } = file(readFile(whole([{ ...good, ...odd }])));
    expect(batches[0]).toEqual({ ...good, changed: `${good.date}T00:00:00Z` });
    expect(refused.join(' ')).toMatch(/saving: there is no such.*foam was made: there is no such/);
  });

  test('everything that is left out is named', () => {
    const spoilt = Array.from({ length: 50 }, (_, i) => ({ ...good, id: `b${i}`, colour: 'grey' }));
    expect(file(readFile(whole(spoilt))).refused).toHaveLength(50);
  });

  test('a ± in a unit nobody knows goes, the reading stays', () => {
    const batch = { ...good, readings: { cement: { t: '1', u: 'kg', p: '1', pu: 'parsec' } } };
    const { batches, refused } = file(readFile(whole([batch])));
    expect(batches[0]!.readings).toEqual({ cement: { t: '1', u: 'kg' } });
    expect(refused.join()).toContain('± of “Cement”');
  });

  test('whatever is typed comes in as it was, and is named when it cannot be read', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 30, unit: 'binary' }), (t) => {
        const batch = { ...good, readings: { cement: { t, u: 'kg' } } };
        const { batches, refused } = file(readFile(whole([batch])));
        expect(batches).toEqual([batch]);
        const read = parseQuantity(t, 'mass', 'kg');
        expect(refused.length).toBe(read.ok || read.problem.code === 'empty' ? 0 : 1);
      }),
    );
  });

  test.each([
    { from: 'x' },
    { waits: 1, from: 'x' },
    { waits: true, v: 5, from: 'x' },
    { v: 5 },
    5,
  ])('a result that is none goes alone: %j', (odd) => {
    const kept = { good: { v: 1, from: 'x' }, odd };
    const { batches, refused } = file(readFile(whole([{ ...good, kept }])));
    expect(batches[0]!.kept).toEqual({ good: kept.good });
    expect(refused).toEqual([expect.stringContaining('One field of the bench')]);
    expect(refusal(whole([], { kept }))).toContain('The bench of the file comes without “odd”');
  });

  test('a field that is none does not cost the bench of the file', () => {
    const sound = { 'mix.targetDensity': { t: '600', u: 'kg/m3' } };
    const { bench, refused } = file(
      readFile(whole([], { bench: { ...sound, 'mix.bad': { t: 5 } } })),
    );
    expect(bench).toEqual(sound);
    expect(refused).toEqual([expect.stringContaining('comes without “mix.bad”')]);
  });

  test('a damaged batch that was taken out as found comes in without what spoils it', () => {
    const raw = {
      ...good,
      readings: { cement: { t: '1'.repeat(4001) }, water: { t: '5', u: 'kg' } },
      log: { seconds: [0, 60, 30], kelvin: [290, 291, 292] },
    };
    const photos = ['good', 'other'].map((batch) => ({
      ...{ id: 'p', batch, width: 1, height: 1, data: '/9j/AA==' },
    }));
    const named = { ...raw, photos: [{ id: 'p', caption: '' }] };
    const text = asideToFile([{ id: 'good', why: '', raw: named }], photos);
    const found = file(readFile(text));
    const { log: _, ...rest } = named;
    expect(found.batches).toEqual([{ ...rest, readings: { water: { t: '5', u: 'kg' } } }]);
    expect(found.photos).toEqual([photos[0]]);
    expect(found.refused).toEqual([
      expect.stringContaining('“Cement” was left out'),
      expect.stringContaining('without its temperature log: the times of its log do not rise'),
    ]);
  });

  test('a table, by what it holds', () => {
    const csv = toCsv([good]);
    for (const text of [csv, csv.replaceAll(',', ';'), 'a\tb\tc\n1\t2\t3'])
      expect(refusal(text)).toContain('Tables cannot be brought in');
  });

  test('a prototype smuggled in', () => {
    const text = whole([good]).replace('"readings":{}', '"readings":{"__proto__":{"t":"1"}}');
    expect(text).toContain('__proto__');
    expect(refusal(text)).toContain('“__proto__” was left out');
    const bench = whole([good]).replace('"bench":{}', '"bench":{"__proto__":{"t":"1"}}');
    expect(refusal(bench)).toContain('One field of the bench');
    expect(JSON.stringify(file(readFile(bench)).batches)).not.toContain('__proto__');
    expect(({} as Record<string, unknown>).t).toBeUndefined();
  });

  test('a photo that is no JPEG, or nobody’s', () => {
    const photo = { id: 'p', batch: 'good', width: 1, height: 1, data: 'PHN2Zz4=' };
    expect(refusal(whole([good], { photos: [photo] }))).toContain(
      'Photo 1 of the file was left out: it is no JPEG',
    );
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
