import { expect, test } from 'vitest';
import { answer } from '../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import { sheets } from '../worksheets/all.ts';

test('no worksheet is worked out twice from the same numbers, however many results carry a ±', () => {
  const say = speaker('metric');
  const asked = sheets.map((sheet) => {
    const given: string[] = [];
    const work: typeof sheet.work = (...args) => {
      given.push(JSON.stringify(args));
      return sheet.work(...args);
    };
    expect(answer({ ...sheet, work }, readWorksheet(sheet, {}, {}, say), say).ok).toBe(true);
    expect(new Set(given).size, sheet.id).toBe(given.length);
    return given.length;
  });
  expect(Math.max(...asked)).toBeGreaterThan(2);
});
