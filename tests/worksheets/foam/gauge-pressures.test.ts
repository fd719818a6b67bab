import { expect, test } from 'vitest';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import type { AnyWorksheet } from '../../../src/islands/worksheet.ts';
import orifice from '../../../src/worksheets/foam/air-orifice.tsx';
import airSupply from '../../../src/worksheets/foam/air-supply.tsx';
import receiver from '../../../src/worksheets/foam/receiver.tsx';

const refusals = (sheet: AnyWorksheet, typed: Readonly<Record<string, string>>) => {
  const say = speaker('metric');
  const entries = Object.fromEntries(Object.entries(typed).map(([key, t]) => [key, { t }]));
  const found = answer(sheet, readWorksheet(sheet, entries, {}, say), say);
  return found.ok ? [] : found.problems;
};

test.each(['size', 'measured'])('a refused pressure is given as gauge pressure, by %s', (known) => {
  const after = (t: string) =>
    refusals(orifice, { 'air.orificeKnown': known, 'air.before': '2.5', 'air.after': t });
  const bound = known === 'size' ? 'at most' : 'less than';
  expect(after('3')).toEqual([
    {
      input: 'air-orifice-after',
      say: `Gauge pressure after it: read 3\u00a0bar; it must be ${bound} 2.5\u00a0bar.`,
    },
  ]);
  expect(after('2.5')).toHaveLength(known === 'size' ? 0 : 1);
});

test.each([receiver, airSupply])(
  '$id: a refused full pressure is given as gauge pressure',
  (sheet) => {
    expect(refusals(sheet, { 'air.tankPressure': '3', 'air.low': '4' })).toEqual([
      {
        input: `${sheet.id}-full`,
        say: 'Full, by its gauge: read 3\u00a0bar; it must be more than 4\u00a0bar.',
      },
    ]);
  },
);
