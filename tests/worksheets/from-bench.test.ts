import { beforeEach, expect, test } from 'vitest';
import { recordFromBench } from '../../src/bench/records/from-bench.ts';
import { isOwnResult, RESTS } from '../../src/bench/records/own-result.ts';
import { clearBench, enter, keep } from '../../src/bench/store.ts';
import { benchKey } from '../../src/islands/worksheet.ts';
import foamDensity from '../../src/worksheets/foam/foam-density.tsx';
import batch from '../../src/worksheets/mix/batch.tsx';
import proportion from '../../src/worksheets/mix/proportion.tsx';
import targetDensity from '../../src/worksheets/mix/target-density.tsx';
import { sheets } from './all.ts';

beforeEach(clearBench);
const planned = (from: string) => keep('mix.planned', { v: 600, from });

test('one unrelated field typed brings no planned density of the example', () => {
  enter('proportion.volume', { t: '80', u: 'L', s: 'metric' });
  planned(proportion.question);
  expect(recordFromBench('a').readings.planned).toBeUndefined();
  enter('proportion.wetDensity', { t: '600', u: 'kg/m3', s: 'metric' });
  expect(recordFromBench('a').readings.planned?.t).toBe('600');
});

test('the target that counts is the one aimed at', () => {
  enter('batch.aim', { t: 'dry' });
  enter('batch.wetDensity', { t: '550' });
  planned(batch.question);
  expect(recordFromBench('a').readings.planned).toBeUndefined();
  enter('batch.dryDensity', { t: '480' });
  expect(recordFromBench('a').readings.planned?.t).toBe('600');
});

test('a target found by the worksheet before is the reader’s when that was answered', () => {
  enter('mix.targetDensity', { t: '600' });
  keep('mix.wetDensity', { v: 600, from: targetDensity.question });
  planned(proportion.question);
  expect(recordFromBench('a').readings.planned?.t).toBe('600');
});

test('a foam density is the reader’s when vessel, tare and full vessel are', () => {
  keep('foam.density', { v: 80, from: foamDensity.question });
  enter('bucket.tare', { t: '0.9', u: 'kg' });
  enter('foam-density.full', { t: '2.5', u: 'kg' });
  expect(recordFromBench('a').readings.foamDensity).toBeUndefined();
  enter('bucket.volume', { t: '20', u: 'L' });
  expect(recordFromBench('a').readings.foamDensity?.t).toBe('80');
});

test('every worksheet that keeps such a result is known, and its fields by their keys', () => {
  for (const [key, byQuestion] of Object.entries(RESTS)) {
    const keepers = sheets.filter((sheet) => Object.values(sheet.keeps ?? {}).includes(key));
    expect(Object.keys(byQuestion).sort()).toEqual(keepers.map((s) => s.question).sort());
    for (const keeper of keepers) {
      const all = Object.keys(keeper.fields).map((name) => [benchKey(keeper, name), { t: '1' }]);
      expect(isOwnResult(key, keeper.question, Object.fromEntries(all))).toBe(true);
      expect(isOwnResult(key, keeper.question, {})).toBe(false);
    }
  }
  expect(targetDensity.id).toBe('target-density');
  const choose = (key: string, t: string, also: readonly string[]) => [
    [key, { t }],
    ...also.map((name) => [name, { t: '1' }]),
  ];
  const keys = new Set(sheets.flatMap((s) => Object.keys(s.fields).map((n) => benchKey(s, n))));
  for (const [question, key, chosen, also] of [
    [foamDensity.question, 'foam.method', 'assumed', ['foam-density.assumed']],
    [
      foamDensity.question,
      'foam.weighings',
      'several',
      ['foam-density.fulls', 'bucket.tare', 'bucket.volume'],
    ],
    [
      foamDensity.question,
      'foam.vesselKnown',
      'weighed',
      ['foam-density.full', 'bucket.tare', 'foam-density.filled'],
    ],
    [batch.question, 'batch.aim', 'content', ['batch.content']],
    [batch.question, 'batch.aim', 'bags', ['batch.bags']],
    [proportion.question, 'proportion.aim', 'dry', ['proportion.dryDensity']],
  ] as const) {
    for (const name of [key, ...also]) expect(keys, name).toContain(name);
    const bench = Object.fromEntries(choose(key, chosen, also));
    const kept = question === foamDensity.question ? 'foam.density' : 'mix.planned';
    expect(isOwnResult(kept, question, bench), chosen).toBe(true);
  }
});
