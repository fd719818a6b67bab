import { expect, test } from 'vitest';
import type { Field, Fields } from '../../src/islands/fields.ts';
import { sheets } from './all.ts';

/** Results stand in columns: a label that leans on the one before it may have another neighbour. */
test.each(sheets.map((sheet) => ({ id: sheet.id, sheet })))(
  'no result of $id begins in the middle of a sentence',
  ({ sheet }) => {
    for (const { label } of Object.values(sheet.results as Record<string, { label: string }>))
      if (!/^(w\/c|pH)\b/.test(label)) expect(label).not.toMatch(/^\p{Ll}/u);
  },
);

/** The labels of fields, and of the cells of their rows. */
const labels = (fields: Fields): readonly string[] =>
  Object.values(fields).flatMap((field: Field) => [
    field.label,
    ...('of' in field ? labels(field.of as Fields) : []),
  ]);

test.each(sheets.map((sheet) => ({ id: sheet.id, sheet })))(
  'no field of $id has a colon in its label',
  ({ sheet }) => {
    for (const label of labels(sheet.fields)) expect(label).not.toContain(':');
  },
);

test('no label refers to the field before it', () => {
  for (const sheet of sheets)
    for (const label of labels(sheet.fields))
      expect(label, sheet.id).not.toMatch(/^(Of )?[Tt]hat\b/);
});

test('the adjusted age has the same label where it is found and where it is used', () => {
  const asked = sheets.flatMap((sheet) =>
    Object.values(sheet.fields as Fields).flatMap((field) =>
      'takes' in field && field.takes === 'curing.age' ? [field.label] : [],
    ),
  );
  expect(asked.length).toBeGreaterThan(2);
  const { age } = sheets.find(({ id }) => id === 'temperature-age')!.results;
  expect(new Set([...asked, age!.label]).size).toBe(1);
});

test.each(sheets.map((sheet) => ({ id: sheet.id, sheet })))(
  'folded fields of $id have a heading',
  ({ sheet }) => {
    // One that goes by another worksheet's entry alone is never shown.
    const shown = ({ when = {} }: Field) => Object.values(when).every(({ length }) => length > 0);
    if (Object.values(sheet.fields as Fields).some((field) => field.folded && shown(field)))
      expect(sheet.folded).toBeDefined();
  },
);
