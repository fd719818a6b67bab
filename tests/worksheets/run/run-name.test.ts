import { expect, test } from 'vitest';
import { blankRecord } from '../../../src/bench/records/record.ts';
import { named, nameMoved } from '../../../src/worksheets/live/run/run-name.ts';

test('an unnamed batch is named by its day, and numbered among several', () => {
  const of = (name: string, date = '2026-11-29') => blankRecord({ name, date });
  const [first, unnamed] = [named(of(''), []), of('')];
  expect(first.name).toBe('Batch of 29\u00a0Nov\u00a02026');
  // Whether the other has that name or is only called by it.
  for (const other of [first, unnamed])
    expect(named(of(''), [other]).name).toBe(`${first.name}, 2`);
  expect(named(of(''), [first, of(`${first.name}, 2`)]).name).toMatch(/, 3$/);
  expect(named(of('', '2026-11-28'), [first]).name).toBe(first.name.replace('29', '28'));
  // A name that somebody gave is theirs.
  expect(named(of('North wall'), [of('North wall')]).name).toBe('North wall');
});

test('an automatic name follows the day, and is numbered there too; a given name stays', () => {
  const [was, date] = ['2026-05-08', '2026-05-09'];
  const [before, now] = ['Batch of 8\u00a0May\u00a02026', 'Batch of 9\u00a0May\u00a02026'];
  const moved = (name: string, ...others: string[]) =>
    nameMoved(
      blankRecord({ name, date }),
      was,
      others.map((other) => blankRecord({ name: other, date })),
    );
  expect(moved(before)).toBe(now);
  expect(moved(`${before}, 2`)).toBe(now);
  expect(moved(before, now)).toBe(`${now}, 2`);
  for (const given of ['North wall', '', `${before}, wet`, `${before}6`])
    expect(moved(given)).toBe(given);
  // It is no other batch of its day.
  const itself = blankRecord({ name: before, date });
  expect(nameMoved(itself, was, [{ ...itself, name: '' }])).toBe(now);
});
