import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import { cautionOf } from '../../src/components/library.ts';
import { given, inDay } from '../../src/components/live/given.ts';
import BeforeYouMix, { type Checklist } from '../../src/worksheets/live/before-you-mix.tsx';
import { sheets } from './all.ts';

const list = given['before-you-mix']?.() as Checklist;

describe('what the check list before mixing is given', () => {
  test('every worksheet, by its id and its question', () => {
    expect(list.sheets.map(({ question }) => question)).toEqual(sheets.map((s) => s.question));
    expect(list.sheets.map(({ id }) => id)).toEqual(sheets.map((s) => s.id));
  });

  test('every caution that a worksheet names, once', () => {
    const known = list.cautions.map(({ id }) => id);
    expect(new Set(known).size).toBe(known.length);
    for (const sheet of sheets)
      for (const id of sheet.cautions as readonly string[]) expect(known).toContain(id);
  });

  test('in the order of the day, refusing one without a place', () => {
    expect(inDay(['flying-pieces', 'cement-dust'])).toEqual(['cement-dust', 'flying-pieces']);
    expect(() => inDay(['cement-dust', 'zzqq'])).toThrow(/'zzqq' has no place in DAY/);
  });

  test('each precaution split into sentences without loss', () => {
    for (const { id, steps } of list.cautions) {
      expect(steps.join(' '), id).toBe(cautionOf(id, 'a test').precaution);
      for (const step of steps) expect(step, id).toMatch(/^[A-Z].{10,}[.!]$/);
    }
  });
});

test('on an empty bench it lists the cautions of every batch', () => {
  const html = renderToString(h(BeforeYouMix, { given: list }));
  for (const title of [
    'Wet cement burns skin and eyes',
    'A vessel under air can burst',
    'A jet of air can enter the body',
    'Concentrates differ',
    'Foamed concrete here never carries a load that matters',
    'A wet part is at its heaviest and its weakest',
  ])
    expect(html).toContain(title);
  expect(html).toMatch(/\d+ of \d+ still to tick/);
  expect(html).not.toContain('Because of');
});
