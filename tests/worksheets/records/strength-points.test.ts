import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import { blankRecord } from '../../../src/bench/records/record.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import {
  StrengthPoints,
  strengthPoints,
} from '../../../src/worksheets/live/compare/StrengthPoints.tsx';
import { StrengthPointsChart } from '../../../src/worksheets/live/compare/StrengthPointsChart.tsx';
import { demoBatches } from '../../../src/worksheets/live/records/demo-batches.ts';
import { learnFrom } from '../../../src/worksheets/live/records/lessons.ts';

const say = speaker('metric');
const demo = demoBatches();
const charted = (records: typeof demo, invented: boolean) =>
  renderToString(h(StrengthPointsChart, { points: strengthPoints(records), invented, say }));

test('points are of the batches that teach: invented ones only while there are no others, marked as such', () => {
  const alone = learnFrom(demo);
  expect(alone.used).toHaveLength(6);
  const table = renderToString(h(StrengthPoints, { records: alone.used, invented: true, say }));
  expect(table).toContain('Invented points of density and strength');
  const chart = charted(alone.used, true);
  expect(chart).toContain('Invented crushing strength');
  expect(chart).not.toContain('Your');
  expect(strengthPoints(learnFrom([...demo, blankRecord()]).used)).toEqual([]);
});

test('a strength that is probably a slip is in the table with its doubt, and in no chart', () => {
  const [first, ...rest] = demo;
  const slip = {
    ...first!,
    readings: { ...first!.readings, crush: { t: '90', u: 'MPa' } },
  };
  const table = renderToString(
    h(StrengthPoints, { records: [slip, ...rest], invented: true, say }),
  );
  expect(table).toContain('90\u00a0MPa, look again');
  expect(charted([slip, ...rest], true)).toContain('5 invented batches');
  expect(charted(demo, true)).toContain('6 invented batches');
});
