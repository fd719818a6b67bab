import { expect, test } from 'vitest';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import type { Fields } from '../../src/islands/fields.ts';
import { benchKey } from '../../src/islands/worksheet.ts';
import { sheets } from './all.ts';

test('both worksheets that size a form offer the settling of the reader’s batches', () => {
  const offers = sheets.flatMap((sheet) =>
    Object.entries(sheet.fields as Fields)
      .filter(([name]) => benchKey(sheet, name) === 'pieces.settling')
      .map(([, field]) => field.type === 'number' && field.learned?.key),
  );
  expect(offers).toEqual(['form.settling', 'form.settling']);
});

test('a dilution is read the same wherever it is asked for, percentages converted to parts', () => {
  const say = speaker('metric');
  const asking = sheets.flatMap((sheet) =>
    Object.keys(sheet.fields)
      .filter((name) => benchKey(sheet, name) === 'foam.partsWater')
      .map((name) => (t: string) => {
        const entries = { 'foam.partsWater': { t, s: 'metric' as const } };
        const field = readWorksheet(sheet, entries, {}, say).fields[name]!;
        if (field.type !== 'number') throw new Error(name);
        return field;
      }),
  );
  expect(asking.length).toBeGreaterThan(2);
  for (const read of asking) {
    expect(read('1:40').value).toBe(40);
    expect(read('2.5 %')).toMatchObject({ value: 39, echo: '39' });
    expect(read('0.025').problem).toContain('2.5\u00a0% is 1 part to 39.');
    expect(read('0').problem).toMatch(/at least 1\.$/);
  }
});
