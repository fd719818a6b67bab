import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, resolve, sep } from 'node:path';
import { expect, test } from 'vitest';
import { KINDS, type Kind } from '../../src/core/quantity/kinds.ts';
import { parseQuantity } from '../../src/core/quantity/parse.ts';

const root = resolve(import.meta.dirname, '../..');

/** `20 to 25 °C (68 to 77 °F)`: numbers and unit, and the same in the other system. */
const NUMBERS = String.raw`\d[\d,.]*(?:\s?(?:/|–|to|and|or|×)\s?\d[\d,.]*)*`;
const PAIR = new RegExp(
  String.raw`(${NUMBERS})[\s\u00a0]([^\d\s(){}<>,;:"'\x60][^\s(){}<>,;:"'\x60]{0,14})\s\((${NUMBERS})[\s\u00a0]([^()\d]{1,14}\d?)\)`,
  'gu',
);

/** Text rounds to what a bench can use: 1 MPa is 150 psi, 20 km/h is 12 mph. A wrong factor is farther off. */
const ROUNDING = 0.045;
const DEGREE = 1.01;

const numbersIn = (text: string) =>
  [...text.matchAll(/\d[\d,.]*(?:\/\d+)?/g)].map(([number]) =>
    number.replace(/[.,]$/, '').replace(/,(?=\d{3})/g, ''),
  );

interface Found {
  readonly text: string;
  /** The kinds by which both halves can be read, with whether they agree. */
  readonly read: readonly { readonly kind: Kind; readonly agree: boolean }[];
}

function pairsIn(text: string): Found[] {
  return [...text.replaceAll('\\u00a0', ' ').matchAll(PAIR)].flatMap(
    ([whole, a = '', unitA = '', b = '', unitB = '']) => {
      const [from, to] = [numbersIn(a), numbersIn(b)];
      const read = (Object.keys(KINDS) as Kind[]).flatMap((kind) => {
        const left = from.map((number) => parseQuantity(`${number} ${unitA}`, kind));
        const right = to.map((number) => parseQuantity(`${number} ${unitB}`, kind));
        if (left.length !== right.length) return [];
        const agree = left.map((l, i) => {
          const r = right[i]!;
          if (!l.ok || !r.ok) return undefined;
          const { factor, mark = 0, offset = 0 } = r.unit;
          const converted = (l.value - offset) / factor + mark;
          return kind === 'temperature'
            ? Math.abs(converted - r.number) <= DEGREE
            : Math.abs(converted / r.number - 1) <= ROUNDING;
        });
        if (agree.includes(undefined)) return [];
        return [{ kind, agree: agree.every(Boolean) }];
      });
      return read.length === 0 ? [] : [{ text: whole, read }];
    },
  );
}

const wrong = (found: readonly Found[]) =>
  found.filter(({ read }) => !read.some(({ agree }) => agree)).map(({ text }) => text);

function filesUnder(folder: string): string[] {
  return readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(mdx|json|tsx?)$/.test(entry.name))
    .map((entry) => relative(root, join(entry.parentPath, entry.name)).split(sep).join('/'));
}

test('the reading of pairs sees a slip', () => {
  expect(
    wrong(pairsIn('at 20 °C (68 °F), 300 × 50 mm (12 × 2 in) and 6 °C (11 °F) of warmth')),
  ).toEqual([]);
  expect(wrong(pairsIn('at 20 °C (66 °F)'))).toEqual(['20 °C (66 °F)']);
  expect(wrong(pairsIn('800 to 1,000 kg/m³ (50 to 66 lb/ft³)'))).toHaveLength(1);
  expect(wrong(pairsIn('5 L (1.1 gal)'))).toHaveLength(1);
});

test('a figure told in two units is the same in both', () => {
  const found = [...filesUnder('content'), ...filesUnder('src/worksheets')].map((file) => ({
    file,
    pairs: pairsIn(readFileSync(join(root, file), 'utf8')),
  }));
  expect(found.flatMap(({ pairs }) => pairs).length).toBeGreaterThan(100);
  expect(
    found.flatMap(({ file, pairs }) => wrong(pairs).map((text) => `${file}: ${text}`)),
  ).toEqual([]);
});
