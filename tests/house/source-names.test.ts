import { expect, test } from 'vitest';
import { namesApart, shortName, sourceOf } from '../../src/components/library.ts';
import { linkNames } from '../../src/components/source-pages.ts';
import { ended } from '../../src/islands/ended.ts';

test('sources of one short name are told apart by their titles, and the others keep theirs', () => {
  expect(namesApart(['osha-1910-242', 'astm-c869', 'osha-1917-154'], 'here')).toEqual([
    'OSHA: Hand and portable powered tools: compressed air used for cleaning',
    'ASTM C869',
    'OSHA: Compressed air in marine terminals',
  ]);
});

test('what is common practice says so once', () => {
  expect(namesApart(['common-practice', 'washout-practice'], 'here')).toEqual([
    'Common practice of the trade, no source',
    'Settling and reusing wash water on a small bench (common practice, no source)',
  ]);
});

test('what is from memory says so last', () => {
  expect(linkNames.get('aci-523-1r')).toMatch(/^ACI 523\.1R: Guide .*, from memory$/);
});

test('a report of ACI has a point before its part and a hyphen before its year', () => {
  const name = (key: string) => shortName(sourceOf(key, 'here'), key);
  expect(name('aci-211-1')).toMatch(/^ACI 211\.1/);
  expect(name('aci-229r-99')).toMatch(/^ACI 229R-99/);
});

test('no link in the list of sources holds a formula: it would break over lines as a link', () => {
  const names = [...linkNames.values()];
  expect(names.filter((name) => /[=[\]^ⁿ]|ln\(/.test(name))).toEqual([]);
});

test('no two links in the list of sources are called alike, and none says its name twice', () => {
  const names = [...linkNames.values()];
  expect(names.filter((name, i) => names.indexOf(name) !== i)).toEqual([]);
  expect(names.filter((name) => /^(.{4,}?)[:,] (?:.*, )?\1/.test(name))).toEqual([]);
});

test('what ends with a mark of its own gets no second one', () => {
  const texts = ['Physics of Plant Environment, ed. van Wijk, W. R.', 'How close?', 'esat.pro'];
  expect(texts.map(ended)).toEqual([texts[0], texts[1], 'esat.pro.']);
});
