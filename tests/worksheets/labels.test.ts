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
  'no field of $id has a colon in its label, for a refusal puts one behind it',
  ({ sheet }) => {
    for (const label of labels(sheet.fields)) expect(label).not.toContain(':');
  },
);
