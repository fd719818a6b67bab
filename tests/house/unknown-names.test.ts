import { expect, test } from 'vitest';
import { byKey, cautionOf, checked, SOURCE, sourceOf } from '../../src/components/library.ts';
import { byId, livePartOf, worksheetOf } from '../../src/components/live/catalogue.ts';

/** A page that names what is not there fails the build, which says which page and which name. */
test.each([
  ['source', sourceOf, 'common-practice', ' in content/sources'],
  ['caution', cautionOf, 'drill-mixer', ' in content/cautions'],
  ['worksheet', worksheetOf, 'correct', ''],
  ['live part', livePartOf, 'bench-sheet', ''],
] as const)(
  'a %s that is not there fails, and one that is there is found',
  (what, of, known, where) => {
    expect(of(known, 'a.mdx')).toBeTruthy();
    expect(() => of('zzqq', 'a.mdx')).toThrow(
      new Error(`a.mdx: there is no ${what} 'zzqq'${where}`),
    );
  },
);

test('a key that two files claim fails', () => {
  expect([...byKey({ 'a.json': { one: 1 }, 'b.json': { two: 2 } })]).toEqual([
    ['one', 1],
    ['two', 2],
  ]);
  expect(() => byKey({ 'a.json': { one: 1 }, 'b.json': { one: 2 } })).toThrow(
    new Error("b.json: source 'one' is already defined elsewhere"),
  );
});

test('a worksheet that is not called like its file fails', () => {
  const correct = worksheetOf('correct', 'a.mdx');
  expect([...byId({ 'mix/correct.tsx': correct }).keys()]).toEqual(['correct']);
  expect(() => byId({ 'mix/other.tsx': correct })).toThrow(
    new Error("mix/other.tsx: its id is 'correct'"),
  );
});

test.each([
  [{ standing: 'from memroy' }, 'standing: .*"from memory"'],
  [{ title: ' ' }, 'title: '],
  [{ yaer: 1999 }, '.*"yaer"'],
  [{ year: '1999' }, 'year: '],
])('a source with %j fails, by its place', (wrong, said) => {
  const sound = { title: 'Recommended table', year: 2001, standing: 'read' };
  expect(checked(SOURCE, sound, 'a.json')).toEqual(sound);
  expect(() => checked(SOURCE, { ...sound, ...wrong }, 'a.json')).toThrow(
    new RegExp(`^a\\.json: ${said}`),
  );
});
