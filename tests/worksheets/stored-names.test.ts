import { globSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import {
  BENCH_VERSION,
  type Laid,
  renaming,
  type Step,
  upToDate,
} from '../../src/bench/migrate-bench.ts';
import { readFile } from '../../src/bench/records/file.ts';
import { blankRecord } from '../../src/bench/records/record.ts';
import { FORMAT } from '../../src/bench/records/schema.ts';
import type { Field, Fields } from '../../src/islands/fields.ts';
import { benchKey, keptKeys } from '../../src/islands/worksheet.ts';
import { sheets } from './all.ts';

/**
 * What lies on the benches of readers is found again by these names: of fields, cells, options, results and
 * worksheets. Each version of the bench has a list of them, headed by the last version of the records that knew it.
 */
const FOLDER = 'tests/worksheets/stored-names';

const options = (key: string, field: Field) =>
  field.type === 'choice'
    ? Object.keys(field.options).map((option) => `option ${key} ${option}`)
    : [];
const namesOf = (key: string, field: Field): readonly string[] => [
  `field ${key}`,
  ...options(key, field),
  ...(field.type === 'rows'
    ? Object.entries(field.of).flatMap(([cell, of]) => [
        `cell ${key} ${cell}`,
        ...options(`${key} ${cell}`, of),
      ])
    : []),
];
const now = new Set(
  sheets
    .flatMap((sheet) => [
      `worksheet ${sheet.id}`,
      ...Object.entries(sheet.fields as Fields).flatMap(([name, field]) =>
        namesOf(benchKey(sheet, name), field),
      ),
      ...keptKeys(sheet).map((key) => `result ${key}`),
    ])
    .sort(),
);

/** A bench with nothing on it but what a line names. */
function laidOut(line: string): Laid {
  const [what, key = '', ...more] = line.split(' ');
  const typed = { t: '1' };
  const holding: Record<string, Partial<Laid>> = {
    worksheet: { kept: { any: { v: 1, from: 'x', by: key } }, used: { [key]: 'yes' } },
    result: { kept: { [key]: { v: 1, from: 'x' } } },
    field: { bench: { [key]: typed } },
    cell: { bench: { [key]: { rows: [{ [more[0]!]: typed }] } } },
    option: {
      bench: {
        [key]: more.length > 1 ? { rows: [{ [more[0]!]: { t: more[1]! } }] } : { t: more[0]! },
      },
    },
  };
  return { bench: {}, kept: {}, ...holding[what!] };
}

/** The names on a bench, as far as they are what the line was about. */
function linesOf(what: string, { bench, kept, used = {} }: Laid): readonly string[] {
  const entries = Object.entries(
    bench as Record<string, { t?: string; rows?: Record<string, { t: string }>[] }>,
  );
  const cells = entries.flatMap(([key, { rows = [] }]) =>
    rows.flatMap((row) =>
      Object.entries(row).map(([cell, { t }]) => [`${key} ${cell}`, t] as const),
    ),
  );
  const found: Record<string, readonly string[]> = {
    worksheet: [
      ...Object.keys(used),
      ...Object.values(kept as Record<string, { by?: string }>).flatMap(({ by = [] }) => by),
    ],
    result: Object.keys(kept),
    field: entries.map(([key]) => key),
    cell: cells.map(([key]) => key),
    option: [
      ...entries.flatMap(([key, { t }]) => (t ? `${key} ${t}` : [])),
      ...cells.map((cell) => cell.join(' ')),
    ],
  };
  return found[what]!.map((name) => `${what} ${name}`);
}

/** Lines of a version whose names lead nowhere today, by that bench and by a batch that was saved with it. */
function lost(lines: readonly string[], version: number, records: number, steps?: readonly Step[]) {
  return lines.filter((line) => {
    const what = line.split(' ')[0]!;
    const laid = laidOut(line);
    const { bench, kept } = laid;
    const batch = {
      ...blankRecord({ bench: bench as never, kept: kept as never }),
      version: records,
    };
    const read = readFile(
      JSON.stringify({
        format: FORMAT,
        version: records,
        batches: [batch],
        photos: [],
        bench,
        kept,
      }),
    );
    if (!read.ok) throw new Error(read.why);
    const { batches, ...backup } = read.file;
    return [
      upToDate(laid, version, steps),
      ...(steps ? [] : [batches[0]!, { ...laid, ...backup } as Laid]),
    ]
      .flatMap((laid) => linesOf(what, laid))
      .some((name) => !now.has(name));
  });
}

const lists = globSync(`${FOLDER}/*.txt`).map((file) => {
  const [head = '', ...lines] = readFileSync(file, 'utf8').trim().split('\n');
  return {
    version: Number.parseInt(file.replace(/^.*[\\/]/, ''), 10),
    records: Number(head.replace('records ', '')),
    lines,
  };
});

test('each version of the bench has its list', () => {
  expect(lists.map(({ version }) => version).sort((a, b) => a - b)).toEqual(
    Array.from({ length: BENCH_VERSION }, (_, i) => i + 1),
  );
});

test('the list of this version has all present names', () => {
  const known = new Set(lists.find(({ version }) => version === BENCH_VERSION)?.lines);
  expect(
    [...now].filter((name) => !known.has(name)),
    `add these lines to ${FOLDER}/${BENCH_VERSION}.txt`,
  ).toEqual([]);
});

test.each(lists)('no name of version $version is lost', ({ version, records, lines }) => {
  expect(
    lost(lines, version, records),
    'readers have entries under these names: a step in src/bench/migrate-bench.ts, and one in records/migrate.ts, must say what they are called now (DEVELOPERS, “Releasing”)',
  ).toEqual([]);
});

test('a removed name counts as lost, unless a migration renames it', () => {
  const gone = ['field old.use', 'option old.use pot', 'result old.mix', 'worksheet old'];
  const step = renaming({
    keys: { 'old.use': 'mix.use', 'old.mix': 'mix.planned' },
    options: { 'mix.use': { pot: 'planter' } },
    sheets: { old: 'correct' },
  });
  expect(lost(gone, 1, 4)).toEqual(gone);
  expect(lost(gone, 1, 4, [step])).toEqual([]);
});
