import { beforeEach, describe, expect, test } from 'vitest';
import { enter } from '../../../src/bench/store.ts';
import {
  benchToTake,
  type Coming,
  holds,
  takesBench,
  wordsFor,
} from '../../../src/worksheets/live/records/record-coming.ts';
import { clearBench } from '../clear-bench.ts';

beforeEach(clearBench);
const bench = { a: { t: '1', u: 'kg' }, b: { t: '2' } };
const file = { batches: [], photos: [], refused: [], bench };

describe('the bench of a file', () => {
  test('is there to be taken when it holds anything else than the one here', () => {
    expect(benchToTake(file, {})).toBe(bench);
    expect(benchToTake(file, { a: { t: '1', u: 'kg' } })).toBe(bench);
    expect(benchToTake(file, { b: { t: '2' }, a: { t: '1', u: 'kg' } })).toBeUndefined();
    expect(benchToTake({ ...file, bench: {} }, bench)).toBeUndefined();
    expect(benchToTake({ batches: [], photos: [], refused: [] }, {})).toBeUndefined();
  });

  test('comes along onto an empty bench, and is asked about on another', () => {
    const coming: Coming = {
      name: '',
      file,
      plan: [],
      unmarked: [],
      photosHere: new Set(),
      bench,
    };
    const none = { records: [], photos: [] };
    expect(takesBench(coming)).toBe(true);
    expect(wordsFor(coming, none)).toBe('the bench');
    enter('a', { t: '3' });
    expect(takesBench(coming)).toBe(false);
    expect(wordsFor(coming, none)).toBe('');
  });
});

test('what a file holds is a sentence, also where no batch of it can be brought in', () => {
  expect(holds([])).toBe('no batch that can be brought in');
  expect(holds([{ what: 'new' }])).toBe('one batch: 1 new here');
  expect(holds([{ what: 'same' }, { what: 'new' }, { what: 'same' }])).toBe(
    '3 batches: 1 new here, 2 here already, the same',
  );
});
