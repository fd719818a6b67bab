import { expect, test } from 'vitest';
import { markOf } from '../../src/components/check-standings.ts';
import { type Subject, subjects } from '../../src/components/checks.ts';

type Shown = Subject['tables'][number]['rows'][number];

const rows: ReadonlyMap<string, Shown> = new Map(
  subjects.flatMap(({ tables }) => tables.flatMap((t) => t.rows.map((row) => [row.id, row]))),
);
const shown = (id: string) => {
  const { given, published, ours, difference } = rows.get(id)!;
  return [given, published, ours, difference].join(' | ').replaceAll('\u00a0', ' ');
};

test('a source’s figures keep their digits, and take the unit as it is typeset', () => {
  expect(shown('moist-air-20')).toBe(
    'pressure 1013.25 mbar; temperature 20 °C; humidity 50 % | 1.199 kg/m³ | 1.19927 kg/m³ | 0.00027 kg/m³',
  );
  expect(shown('aci-211-sum')).toMatch(/ \| 19\.00 ft³ \| 19\.0032 ft³ \| 0\.0032 ft³$/);
});

test('ours ends where theirs does, and no difference is 0', () => {
  expect(shown('wc-clark-4-6')).toBe('soap 4.6 mL | 5.60 °dH | 5.60 °dH | 0');
});

test('powers of ten are written out', () => {
  expect(shown('sp811-lb-yd3')).toBe(
    'density 1 lb/yd³ | 0.5932764 kg/m³ | 0.5932764 kg/m³ | 2.1×10⁻⁸ kg/m³',
  );
});

test('what a program wrote is cut down', () => {
  expect(shown('wc-speciate-06-m-bisulfate')).toMatch(/ \| 5\.29577×10⁻⁶ \| 5\.29577×10⁻⁶ \| /);
});

test('the words of the code are split, and a formula is left', () => {
  expect(shown('wc-pb-first-dissociation-50')).toMatch(/^of first dissociation; celsius 50 \| /);
  expect(shown('wc-speciate-05-m-calciumHydroxide')).toMatch(/; of m calcium hydroxide \| /);
  expect(shown('wc-blend-02-log-pCO2')).toMatch(/; fraction A 0\.76; .*; of log pCO2 \| /);
});

test('no row shows a hyphen for a minus, an endless decimal, an ASCII unit or a word of the code', () => {
  const odd = [...rows.keys()].filter((id) =>
    /(?:^|[\s,;|])-\d|\.\d{12}|\d ?(?:kg|g|mg|W|lb)\S*[a-z]\d|[a-z]{2}[A-Z]|e[-+]\d/.test(
      shown(id),
    ),
  );
  expect(odd).toEqual([]);
});

test('a row says when no worksheet works with what it asks', () => {
  expect(rows.get('wc-clark-8-8')!.beside).toBe(true);
  expect(rows.get('wc-calcite-2025-25')!.beside).toBe(false);
});

test('only what is wrong in print is called wrong', () => {
  const marks = (id: string) => markOf(rows.get(id)!);
  expect(marks('wc-clark-8-8')).toBe(', known wrong');
  // A measurement, another valid constant, and what is only remembered.
  for (const id of ['wong-measured-700-sds-1', 'wc-calcite-2025-25', 'curing-pca-wind-0'])
    expect(marks(id)).toBe(', not reproduced, see note');
  expect(marks('wc-clark-4-6')).toBe('');
});
