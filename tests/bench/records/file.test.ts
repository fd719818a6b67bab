import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { toCsv } from '../../../src/bench/records/csv.ts';
import { differences } from '../../../src/bench/records/differences.ts';
import { partsOf, readFile } from '../../../src/bench/records/file.ts';
import { type Choice, planMerge, toStore } from '../../../src/bench/records/merge.ts';
import { openRecord } from '../../../src/bench/records/migrate.ts';
import { readingChoice, readingValue } from '../../../src/bench/records/reading-value.ts';
import {
  type BatchRecord,
  blankRecord,
  type Photo,
  RECORD_VERSION,
} from '../../../src/bench/records/record.ts';
import { FORMAT } from '../../../src/bench/records/schema.ts';
import { toFile } from '../../../src/bench/records/to-file.ts';
import type { NumberReading } from '../../../src/islands/engine/reading.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import { readFields } from '../../../src/worksheets/live/records/RecordFields.tsx';
import { anyRecord } from './arbitrary.ts';
import { file } from './whole-file.ts';

const records = fc.uniqueArray(anyRecord, { maxLength: 5, selector: ({ id }) => id });

describe('out and in again', () => {
  test('is the same, to the last key', () => {
    fc.assert(
      fc.property(records, (batches) => {
        const { batches: back, refused } = file(readFile(toFile({ batches, photos: [] })));
        expect(refused).toEqual([]);
        expect(JSON.stringify(back)).toBe(JSON.stringify(batches));
      }),
    );
  });

  test('is the same with what cannot be read as an amount', () => {
    const readings = {
      cement: { t: 'about 14', u: 'kg' },
      vessel: { t: '1,234', u: 'L' },
      full: { t: '13.4', u: 'kg', p: 'a bit', pu: 'kg' },
    };
    const typed = blankRecord({ id: 'typed', readings });
    const { batches } = file(readFile(toFile({ batches: [typed], photos: [] })));
    expect(planMerge([typed], batches).map(({ what }) => what)).toEqual(['same']);
  });

  test('a number without a unit is one amount in its field and in the figures, in either system', () => {
    const made = blankRecord({
      readings: {
        cement: { t: '30', p: '0.5' },
        full: { t: '25', u: 'lb', s: 'us', p: '0.1' },
        cureTemperature: { t: '60' },
        bend: { t: '230' },
        tare: { t: '2 lb', s: 'us' },
        water: { t: '30', s: 'us' },
        sand: { t: '' },
      },
    });
    const { batches, refused } = file(readFile(toFile({ batches: [made], photos: [] })));
    const [{ readings } = made] = batches;
    expect(readings).toEqual({
      cement: { t: '30', u: 'kg', s: 'metric', p: '0.5', pu: 'kg' },
      full: { t: '25', u: 'lb', s: 'us', p: '0.1', pu: 'lb' },
      cureTemperature: { t: '60', u: 'degC', s: 'metric' },
      bend: { t: '230', u: 'kPa', s: 'metric' },
      tare: { t: '2 lb', s: 'us' },
      sand: { t: '' },
    });
    expect(refused).toEqual([
      'Batch 1 of the file: “Mixing water” was left out: it was typed in US units, and in which is not said.',
    ]);
    for (const system of ['metric', 'us'] as const) {
      const fields = readFields(batches[0]!, speaker(system));
      for (const name of ['cement', 'full', 'tare', 'cureTemperature', 'bend'] as const)
        expect((fields[name] as NumberReading).value, `${name}, ${system}`).toBeCloseTo(
          readingValue(batches[0]!, name)!,
          9,
        );
      expect((fields.cement as NumberReading).pm).toBeCloseTo(0.5, 9);
    }
    const again = file(readFile(toFile({ batches, photos: [] })));
    expect(again.batches).toEqual(batches);
  });

  test('leaves behind photos that no batch names any more', () => {
    const batch = blankRecord({ id: 'b1', photos: [{ id: 'p1', caption: '' }] });
    const photo: Photo = { id: 'p1', batch: 'b1', width: 3, height: 2, data: '/9j/AA==' };
    const text = toFile({ batches: [batch], photos: [photo, { ...photo, id: 'p2' }] });
    expect(file(readFile(text))).toMatchObject({ photos: [photo], refused: [] });
  });

  test('is the same in parts, each no larger than what is opened', () => {
    const most = 60_000;
    const notes = 'Ein süßer Brei, 15 °C. '.repeat(100);
    const batches = Array.from({ length: 40 }, (_, i) =>
      blankRecord({
        id: `b${i}`,
        notes,
        photos: [0, 1].map((n) => ({ id: `p${i}-${n}`, caption: 'Edge' })),
        log: { seconds: [0, 60, 120], kelvin: [290, 291.5, 293] },
      }),
    );
    const photos = batches.flatMap(({ id: batch, photos }) =>
      photos.map(({ id }) => ({ id, batch, width: 3, height: 2, data: `/9j/${'A'.repeat(3000)}` })),
    );
    const bench = { 'bucket.tare': { t: '0,85', u: 'kg', s: 'metric' as const } };
    const files = partsOf({ batches, photos, bench, kept: {} }, most).map((part) => toFile(part));
    expect(files.length).toBeGreaterThan(3);
    for (const text of files) expect(Buffer.byteLength(text)).toBeLessThanOrEqual(most);
    // The parts are filled: none but the last has room for another batch.
    const largest = Math.max(...files.map((text) => Buffer.byteLength(text)));
    for (const text of files.slice(0, -1))
      expect(Buffer.byteLength(text)).toBeGreaterThan(most - largest / 4);
    const back = files.map((text) => file(readFile(text)));
    expect(back.flatMap((part) => part.batches)).toEqual(batches);
    expect(back.flatMap((part) => part.photos)).toEqual(photos);
    expect(back.flatMap((part) => part.refused)).toEqual([]);
    expect(back.map((part) => part.bench)).toEqual([bench, ...back.slice(1).map(() => undefined)]);
    expect(partsOf({ batches, photos }).length).toBe(1);
    expect(partsOf({ batches: [], photos: [] })).toEqual([{ batches: [], photos: [] }]);
    expect(partsOf({ batches: Array(5001).fill(batches[0]), photos: [] }).length).toBe(2);
  });

  test('carries photos and the bench, with what its worksheets kept', () => {
    const photo: Photo = { id: 'p1', batch: 'b1', width: 2, height: 1, data: '/9j/AAAA' };
    const batch = blankRecord({ id: 'b1', photos: [{ id: 'p1', caption: 'Slab 3, edge' }] });
    const bench = { 'bucket.tare': { t: '0,85', u: 'kg', s: 'metric' as const } };
    const kept = {
      'batch.volume': { v: 0.0438, from: 'How much must I make?', by: 'shapes' },
      'foam.density': { v: 80, from: 'How heavy is my foam?', example: true as const },
      'mix.planned': { waits: true as const, from: 'What goes into the batch?' },
    };
    const back = file(readFile(toFile({ batches: [batch], photos: [photo], bench, kept })));
    expect(back.photos).toEqual([photo]);
    expect(back.bench).toEqual(bench);
    expect(back.kept).toEqual(kept);
    expect(back.refused).toEqual([]);
  });

  test('brought in twice, changes nothing the second time', () => {
    fc.assert(
      fc.property(records, (batches) => {
        const first = toStore(
          planMerge([], batches),
          () => 'take',
          ({ id }) => `${id}-2`,
        ).records;
        const again = planMerge(first, batches);
        expect(again.every(({ what }) => what === 'same')).toBe(true);
        expect(
          toStore(
            again,
            () => 'take',
            ({ id }) => `${id}-2`,
          ),
        ).toEqual({ records: [], photos: [] });
      }),
    );
  });
});

describe('merging', () => {
  const mine = blankRecord({ id: 'a', revision: 4, name: 'Slabs', notes: 'mine' });
  const theirs = { ...mine, revision: 9, notes: 'theirs' };
  const id = () => 'fresh';
  const differ = (a: BatchRecord, b: BatchRecord) =>
    differences(a, b, ({ corrections }) => corrections.map(({ weighed }) => weighed).join());

  test('shows what differs before anything changes', () => {
    expect(planMerge([mine], [theirs])).toEqual([
      { what: 'changed', record: theirs, photos: [], here: mine },
    ]);
    expect(differ(mine, theirs)).toEqual([{ of: 'Notes', here: 'mine', there: 'theirs' }]);
  });

  test('a difference far into a long text is what is shown of it', () => {
    const alike = 'the foam was thin and the shed was cold, '.repeat(4);
    const [a, b] = ['so it sank', 'so it stood'].map((end) => ({ ...mine, notes: alike + end }));
    const [{ here, there } = { here: '', there: '' }] = differ(a!, b!);
    expect(here).toMatch(/^….*so it sank$/);
    expect(there).toMatch(/^….*so it stood$/);
    expect(here.length).toBeLessThan(50);
    const longer = { ...mine, notes: `${alike} and more` };
    expect(differ({ ...mine, notes: alike }, longer)[0]!.there).toMatch(/^….* and more$/);
  });

  test('the unit a field is shown in makes no other batch; the unit it was typed in does', () => {
    const cement = { t: '13', u: 'kg', s: 'metric' } as const;
    const of = (entry: object) => ({ ...mine, readings: { cement: { ...cement, ...entry } } });
    const plan = (a: BatchRecord, b: BatchRecord) => planMerge([a], [b])[0]!.what;
    expect(plan(of({}), of({ s: 'us', d: { metric: 'lb' } }))).toBe('same');
    expect(plan(mine, { ...mine, readings: { cement: { d: { metric: 'lb' } } } })).toBe('same');
    expect(plan(of({}), of({ u: 'lb' }))).toBe('changed');
    expect(differ(of({}), of({ u: 'lb' }))).toHaveLength(1);
  });

  test('another correction makes another batch', () => {
    const corrected = { ...mine, corrections: [{ weighed: 640, foam: 0.0025 }] };
    expect(planMerge([mine], [corrected])[0]!.what).toBe('changed');
    expect(differ(mine, corrected)).toEqual([{ of: 'Corrections', here: '', there: '640' }]);
  });

  test('an invented batch stays marked when the file has lost the mark', () => {
    const made = { ...mine, invented: true as const };
    const plan = planMerge([made], [theirs]);
    for (const choice of ['take', 'both'] as const)
      expect(toStore(plan, () => choice, id).records[0]!.invented).toBe(true);
    expect(planMerge([made], [mine])[0]!.what).toBe('same');
    expect(planMerge([mine], [made])[0]!.what).toBe('changed');
    expect(differ(mine, made)).toEqual([{ of: 'Mark', here: '', there: 'invented' }]);
  });

  test('takes, leaves or keeps both', () => {
    const plan = planMerge([mine], [theirs]);
    const stored = (choice: Choice) => toStore(plan, () => choice, id).records;
    expect(stored('leave')).toEqual([]);
    expect(stored('take')).toMatchObject([{ id: 'a', revision: 5, notes: 'theirs' }]);
    expect(stored('both')).toMatchObject([
      { id: 'fresh', name: 'Slabs (brought in)', notes: 'theirs' },
    ]);
  });

  test('a batch kept beside the one here keeps its photos, as photos of its own', () => {
    const photo: Photo = { id: 'p1', batch: 'a', width: 3, height: 2, data: '/9j/AA==' };
    const notes = [
      { id: 'p1', caption: 'Edge' },
      { id: 'gone', caption: 'Not in the file' },
    ];
    const plan = planMerge([{ ...mine, photos: notes }], [{ ...theirs, photos: notes }], [photo]);
    const both = toStore(plan, () => 'both', id);
    expect(both.records[0]!.photos).toEqual([
      { id: 'fresh-1', caption: 'Edge' },
      { id: 'fresh-2', caption: 'Not in the file' },
    ]);
    expect(both.photos).toEqual([{ ...photo, id: 'fresh-1', batch: 'fresh' }]);
    expect(toStore(plan, () => 'take', id).photos).toEqual([photo]);
    expect(toStore(plan, () => 'leave', id).photos).toEqual([]);
  });

  test('photos that are missing here come with a batch that is the same', () => {
    const photo: Photo = { id: 'p1', batch: 'a', width: 3, height: 2, data: '/9j/AA==' };
    const same = { ...mine, photos: [{ id: 'p1', caption: '' }] };
    const stored = toStore(planMerge([same], [same], [photo]), () => 'leave', id);
    expect(stored).toEqual({ records: [], photos: [photo] });
  });

  describe('photos whose ids are another batch’s', () => {
    const note = (id: string) => [{ id, caption: 'Edge' }];
    const photo = (id: string, batch: string): Photo => ({
      ...{ id, batch, width: 3, height: 2, data: '/9j/AA==' },
    });
    const [b, c] = ['b', 'c'].map((id) => blankRecord({ id, name: id, photos: note('p1') }));
    const here = new Map([['p1', 'a']]);
    const bring = (records: BatchRecord[], photosHere = here, there: BatchRecord[] = []) =>
      toStore(
        planMerge(there, records, [photo('p1', 'b'), photo('p1', 'c')], photosHere),
        () => 'take',
        id,
      );

    test('are named anew, in the batch and for the photo', () => {
      const { records, photos } = bring([b!, c!]);
      expect(records.map((record) => record.photos)).toEqual([note('b-p1-1'), note('c-p1-1')]);
      expect(photos).toEqual([photo('b-p1-1', 'b'), photo('c-p1-1', 'c')]);
    });

    test('also within one file, and where the photo itself is not in the file', () => {
      expect(bring([b!, c!], new Map()).photos).toEqual([photo('p1', 'b'), photo('c-p1-1', 'c')]);
      const plan = planMerge([], [b!], [], here);
      expect(plan).toMatchObject([{ record: { photos: note('b-p1-1') }, photos: [] }]);
    });

    test('brought in again, they are the same', () => {
      const { records, photos } = bring([b!, c!]);
      const now = new Map([...here, ...photos.map(({ id, batch }) => [id, batch] as const)]);
      const again = planMerge(records, [b!, c!], [], now);
      expect(again.map(({ what }) => what)).toEqual(['same', 'same']);
    });

    test('a name that is taken too is passed over, however long the ids are', () => {
      const long = 'p'.repeat(60);
      const one = blankRecord({ id: 'x'.repeat(60), photos: note(long) });
      const taken = new Map([
        [long, 'a'],
        [`${long.slice(-58)}-1`, 'a'],
      ]);
      const [change] = planMerge([], [one], [], taken);
      expect(change!.record.photos).toEqual(note(`${long.slice(-58)}-2`));
      expect(openRecord(change!.record).ok).toBe(true);
    });

    test('a file may hold them, each with its batch', () => {
      const both = [photo('p1', 'b'), photo('p1', 'c')];
      const back = file(readFile(toFile({ batches: [b!, c!], photos: both })));
      expect(back).toMatchObject({ photos: both, refused: [] });
    });
  });

  test('finds the same batch under another id', () => {
    expect(planMerge([mine], [{ ...mine, id: 'b', revision: 1 }])[0]!.what).toBe('twin');
  });
});

describe('the version before corrections', () => {
  const text = readFileSync(new URL('fixtures/version-1.json', import.meta.url), 'utf8');
  const { batches, photos, refused } = file(readFile(text));

  test('opens whole, its corrections from the lines of the notes, which stay', () => {
    expect(refused).toEqual([]);
    expect(batches).toEqual(
      JSON.parse(text).batches.map((old: object, i: number) => ({
        ...old,
        version: RECORD_VERSION,
        corrections: i === 0 ? [{ weighed: 640 }, { weighed: 561 }] : [],
      })),
    );
    expect(photos.map(({ id }) => id)).toEqual(['p1']);
  });

  test('goes out as the present one and comes back the same', () => {
    expect(file(readFile(toFile({ batches, photos })))).toMatchObject({ batches, refused: [] });
  });

  test('more lines than a record holds corrections do not cost the batch', () => {
    const notes = Array(30).fill('Weighed 640 kg/m³ before a correction.').join('\n');
    const { corrections: _, ...old } = { ...blankRecord({ notes }), version: 1 };
    const opened = openRecord(old);
    expect(opened).toMatchObject({ ok: true, record: { notes } });
    expect(opened.ok && opened.record.corrections.length).toBe(20);
  });
});

test.each([
  ['results that wait', 'version-2'],
  ['mix taken out before a correction', 'version-3'],
  ['the casting a log is counted from', 'version-4'],
])('the version before %s opens whole, and its bench with it', (_what, version) => {
  const text = readFileSync(new URL(`fixtures/${version}.json`, import.meta.url), 'utf8');
  const { taken: _, format: __, version: ___, batches, ...rest } = JSON.parse(text);
  expect(file(readFile(text))).toEqual({
    ...rest,
    batches: batches.map((old: object) => ({ ...old, version: RECORD_VERSION })),
    refused: [],
  });
});

describe('a batch without a version of its own', () => {
  const { version: _, ...batch } = blankRecord({
    name: 'Slabs',
    readings: { cement: { t: '13.6', u: 'kg' } },
    corrections: [{ weighed: 640, foam: 0.002 }],
  });
  const brought = (version: object) => {
    const held = { format: FORMAT, ...version, batches: [batch], photos: [] };
    return file(readFile(JSON.stringify(held)));
  };

  test.each([{ version: RECORD_VERSION }, { version: 3 }, {}])(
    'is of that of its file, %j',
    (version) => {
      const { batches, refused } = brought(version);
      expect(batches).toEqual([{ ...batch, version: RECORD_VERSION }]);
      expect(refused).toEqual([]);
    },
  );
});

describe('an earlier version', () => {
  const old = readFileSync(new URL('fixtures/version-0.json', import.meta.url), 'utf8');
  const { batches, refused } = file(readFile(old));
  const first = batches[0]!;

  test('opens whole, with its numbers as they were', () => {
    expect(refused).toEqual([
      'Batch 1 of the file, “Slabs, first trial”: “mood” was left out: no reading has this name.',
    ]);
    expect(first).toMatchObject({
      version: RECORD_VERSION,
      name: 'Slabs, first trial',
      date: '2025-09-14',
      revision: 1,
    });
    expect(readingValue(first, 'cement')).toBeCloseTo(13.56, 12);
    expect(readingValue(first, 'foamVolume')).toBeCloseTo(0.0253, 12);
    expect(readingValue(first, 'cureTemperature')).toBeCloseTo(290.65, 9);
    expect(readingChoice(first, 'stripped')).toBe('clean');
    expect(first.readings).not.toHaveProperty('mood');
  });

  test('goes out as the present one and comes back the same', () => {
    const back = file(readFile(toFile({ batches, photos: [] })));
    expect(back.batches).toEqual(batches);
  });

  test('keeps a value that was written as text, and names what it cannot use', () => {
    const values = { cement: '12.5', water: 'about 6', sand: null, foo: 3 };
    const old = { version: 0, id: 'q', title: 'T', date: '2025-01-01', values };
    const text = JSON.stringify({ format: FORMAT, version: 0, batches: [old] });
    const { batches, refused } = file(readFile(text));
    expect(batches[0]!.readings).toEqual({
      cement: { t: '12.5', u: 'kg', s: 'metric' },
      water: { t: 'about 6', u: 'kg', s: 'metric' },
    });
    expect(refused.map((words) => /“[^“]*?” (?:was|counts)/.exec(words)?.[0])).toEqual([
      '“foo” was',
      '“Mixing water” counts',
    ]);
  });

  test('keeps a value that is neither, as it is written', () => {
    const values = { cement: { toString: 1, valueOf: 1 }, sand: [2] };
    const old = { version: 0, id: 'q', title: 'T', date: '2025-01-01', values };
    const { batches } = file(readFile(JSON.stringify({ format: FORMAT, batches: [old] })));
    expect(batches[0]!.readings).toMatchObject({
      cement: { t: '{"toString":1,"valueOf":1}' },
      sand: { t: '[2]' },
    });
  });

  test('is no reason to stop where a step fails on it', () => {
    const circular: Record<string, unknown> = {};
    circular.self = circular;
    const old = { id: 'q', title: 'T', date: '2025-01-01', values: { cement: circular } };
    expect(openRecord(old)).toEqual({
      ok: false,
      why: 'it cannot be brought up to this version',
      newer: false,
    });
  });

  test('a record of the present version is not touched', () => {
    const record = blankRecord();
    const opened = openRecord(record);
    expect(opened).toEqual({ ok: true, record, from: RECORD_VERSION });
  });
});

describe('the table for spreadsheets', () => {
  test('has a heading for every column, in one unit', () => {
    const record = blankRecord({
      id: 'x',
      name: 'Slabs, "north" wall',
      date: '2025-09-14',
      readings: { cement: { t: '30 lb', u: 'kg', s: 'metric' }, full: { t: '12,5', u: 'kg' } },
      corrections: [{ weighed: 640, out: 1.5, foam: 0.0025 }, { weighed: 615.5 }],
    });
    const [head, row] = toCsv([record]).slice(1).split('\r\n');
    const split = (line: string) =>
      line.match(/("([^"]|"")*"|[^,]*)(,|$)/g)!.map((c) => c.replace(/,$/, ''));
    const at = (name: string) => split(row!)[split(head!).findIndex((h) => h.startsWith(name))];
    expect(at('Cement')).toBe('13.6077711');
    expect(at('Name')).toBe('"Slabs, ""north"" wall"');
    expect(at('Corrections')).toBe('2');
    expect(at('Weighed before each (kg/m³)')).toBe('"640; 615.5"');
    expect(at('Taken out before each (kg)')).toBe('"1.5; 0"');
    expect(head).toContain('Cement (kg)');
    expect(row).toContain('12.5');
  });

  test('has a question mark for the density of a correction that is not known', () => {
    const corrections = [{ weighed: 0, foam: 0.003 }, { weighed: 640 }];
    expect(toCsv([blankRecord({ corrections })])).toContain(',2,"?; 640",');
  });

  test('shows what cannot be read as an amount as it was typed', () => {
    const csv = toCsv([
      blankRecord({
        readings: { cement: { t: 'about 14', u: 'lb' }, water: { t: '1,234', u: 'kg' } },
      }),
    ]);
    expect(csv).toContain(`,'about 14 lb,"'1,234",`);
  });

  test.each([
    ['crush', '1,951', 'MPa'],
    ['dryMass', '9000', 'kg'],
    ['crushAge', '1.2.2025', 'd'],
    ['depth', '3-4', 'mm'],
  ])('what the record refuses of %s is no number there', (name, t, u) => {
    const [, row] = toCsv([blankRecord({ readings: { [name]: { t, u } } })]).split('\r\n');
    expect(row).toMatch(new RegExp(`,"?'${t}"?,`));
  });

  test('a reading that cannot be counts nowhere, and is written out as it was typed', () => {
    const of = (t: string, u: string) => blankRecord({ readings: { planned: { t, u } } });
    const columns = toCsv([of('60000', 'kg/m3')]).split('\r\n');
    expect(columns[1]).toContain(",'60000,");
    expect(readingValue(of('60000', 'kg/m3'), 'planned')).toBeUndefined();
    expect(readingValue(of('-3', 'kg/m3'), 'planned')).toBeUndefined();
    expect(readingValue(of('6', 'kg/m3'), 'planned')).toBeUndefined();
    // The bound itself is allowed, in any unit: 4000 kg/m³ is 4 kg/L.
    expect(readingValue(of('4', 'kg/L'), 'planned')).toBeCloseTo(4000, 9);
    expect(readingValue(of('4.01', 'kg/L'), 'planned')).toBeUndefined();
  });

  test('a comma that could be either mark is read as its field reads it', () => {
    const record = blankRecord({ readings: { planned: { t: '1,951', u: 'kg/m3' } } });
    expect(readingValue(record, 'planned')).toBe(1951);
    expect(toCsv([record])).toContain(',1951,');
  });

  test('holds no cell a spreadsheet would run', () => {
    const csv = toCsv([blankRecord({ name: '=HYPERLINK("http://x")', notes: '@sum', id: '-2+3' })]);
    expect(csv).toContain(`"'=HYPERLINK(""http://x"")"`);
    expect(csv).toContain("'@sum");
    expect(csv).toContain("'-2+3");
  });
});
