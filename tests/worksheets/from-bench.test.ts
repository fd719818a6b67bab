import { beforeEach, expect, test } from 'vitest';
import type { KeptNumber } from '../../src/bench/entries.ts';
import { recordFromBench } from '../../src/bench/records/from-bench.ts';
import { isOwnResult, RESTS } from '../../src/bench/records/own-result.ts';
import { enter, keep } from '../../src/bench/store.ts';
import { benchKey } from '../../src/islands/worksheet.ts';
import foamDensity from '../../src/worksheets/foam/foam-density.tsx';
import batch from '../../src/worksheets/mix/batch.tsx';
import proportion from '../../src/worksheets/mix/proportion.tsx';
import targetDensity from '../../src/worksheets/mix/target-density.tsx';
import { clearBench } from '../bench/clear-bench.ts';
import { sheets } from './all.ts';

beforeEach(clearBench);
type Sheet = Readonly<Record<'id' | 'question', string>>;
const keptBy = (key: string, { id, question }: Sheet) => ({
  [key]: { v: 1, from: question, by: id },
});
const planned = ({ id, question }: Sheet) =>
  keep('mix.planned', { v: 600, from: question, by: id });

test('typing an unrelated field takes over no planned density of the example', () => {
  enter('proportion.volume', { t: '80', u: 'L', s: 'metric' });
  planned(proportion);
  expect(recordFromBench('a').readings.planned).toBeUndefined();
  enter('proportion.wetDensity', { t: '600', u: 'kg/m3', s: 'metric' });
  expect(recordFromBench('a').readings.planned?.t).toBe('600');
});

test('the target taken over is the one aimed at', () => {
  enter('batch.aim', { t: 'dry' });
  enter('batch.wetDensity', { t: '550' });
  planned(batch);
  expect(recordFromBench('a').readings.planned).toBeUndefined();
  enter('batch.dryDensity', { t: '480' });
  expect(recordFromBench('a').readings.planned?.t).toBe('600');
});

test('a target found by an earlier worksheet is the reader’s once that was answered', () => {
  enter('mix.targetDensity', { t: '600' });
  keep('mix.wetDensity', { v: 600, from: targetDensity.question });
  planned(proportion);
  expect(recordFromBench('a').readings.planned?.t).toBe('600');
});

test('a foam density is the reader’s if vessel, tare and full weight are', () => {
  keep('foam.density', { v: 80, from: foamDensity.question, by: foamDensity.id });
  enter('bucket.tare', { t: '0.9', u: 'kg' });
  enter('foam-density.full', { t: '2.5', u: 'kg' });
  expect(recordFromBench('a').readings.foamDensity).toBeUndefined();
  enter('bucket.volume', { t: '20', u: 'L' });
  expect(recordFromBench('a').readings.foamDensity?.t).toBe('80');
});

test('a bucket weighed full of water is taken over, unless its volume was typed', () => {
  keep('bucket.brim', { v: 0.01897, from: foamDensity.question, by: foamDensity.id });
  enter('bucket.tare', { t: '0.86', u: 'kg' });
  enter('foam.vesselKnown', { t: 'weighed' });
  expect(recordFromBench('a').readings.vessel).toBeUndefined();
  enter('foam-density.filled', { t: '19.8', u: 'kg' });
  expect(recordFromBench('a').readings.vessel).toMatchObject({ t: '18.97', u: 'L' });
  // Hidden since: the vessel was weighed, and another bucket is typed where the mix is.
  enter('bucket.volume', { t: '21', u: 'L' });
  expect(recordFromBench('a').readings.vessel).toMatchObject({ t: '18.97', u: 'L' });
  enter('mix.bucketVolume', { t: '20', u: 'L' });
  expect(recordFromBench('a').readings.vessel).toMatchObject({ t: '20' });
});

test('the list of worksheets that keep such results is complete, with their fields', () => {
  for (const [key, byId] of Object.entries(RESTS)) {
    const keepers = sheets.filter((sheet) => Object.values(sheet.keeps ?? {}).includes(key));
    expect(Object.keys(byId).sort()).toEqual(keepers.map(({ id }) => id).sort());
    for (const keeper of keepers) {
      const all = Object.keys(keeper.fields).map((name) => [benchKey(keeper, name), { t: '1' }]);
      const kept = keptBy(key, keeper);
      expect(isOwnResult(key, Object.fromEntries(all), kept)).toBe(true);
      expect(isOwnResult(key, {}, kept)).toBe(false);
      expect(isOwnResult(key, Object.fromEntries(all), {})).toBe(false);
    }
  }
  expect(targetDensity.id).toBe('target-density');
  const choose = (key: string, t: string, also: readonly string[]) => [
    [key, { t }],
    ...also.map((name) => [name, { t: '1' }]),
  ];
  const keys = new Set(sheets.flatMap((s) => Object.keys(s.fields).map((n) => benchKey(s, n))));
  for (const [sheet, key, chosen, also] of [
    [foamDensity, 'foam.method', 'assumed', ['foam-density.assumed']],
    [
      foamDensity,
      'foam.weighings',
      'several',
      ['foam-density.fulls', 'bucket.tare', 'bucket.volume'],
    ],
    [
      foamDensity,
      'foam.vesselKnown',
      'weighed',
      ['foam-density.full', 'bucket.tare', 'foam-density.filled'],
    ],
    [batch, 'batch.aim', 'content', ['batch.content']],
    [batch, 'batch.aim', 'bags', ['batch.bags']],
    [proportion, 'proportion.aim', 'dry', ['proportion.dryDensity']],
  ] as const) {
    for (const name of [key, ...also]) expect(keys, name).toContain(name);
    const bench = Object.fromEntries(choose(key, chosen, also));
    const kept = sheet === foamDensity ? 'foam.density' : 'mix.planned';
    expect(isOwnResult(kept, bench, keptBy(kept, sheet)), chosen).toBe(true);
  }
});

test('the origin of a result does not depend on the wording of a question', () => {
  const bench = { 'proportion.wetDensity': { t: '600' } };
  const own = (kept: Omit<KeptNumber, 'v'>) =>
    isOwnResult('mix.planned', bench, { 'mix.planned': { v: 600, ...kept } });
  expect(own({ from: 'Reworded since', by: 'proportion' })).toBe(true);
  expect(own({ from: 'What goes into the batch?', by: 'batch' })).toBe(false);
  expect(own({ from: 'Nobody asks', by: 'constructor' })).toBe(false);
});

test.each([
  ['mix.planned', 'What goes into the batch?', ['proportion.wetDensity']],
  ['mix.planned', 'What goes into the whole batch, with everything in it?', ['batch.wetDensity']],
  ['foam.density', 'How heavy is my foam?', ['foam-density.full', 'bucket.tare', 'bucket.volume']],
])('%s kept before ids were is known by its question: %s', (key, asked, fields) => {
  const bench = Object.fromEntries(fields.map((name) => [name, { t: '1' }]));
  const own = (from: string) => isOwnResult(key, bench, { [key]: { v: 1, from } });
  expect(own(asked)).toBe(true);
  expect(own('Nobody asked')).toBe(false);
});
