import { expect, test } from 'vitest';
import { sheets } from './all.ts';

/** Results stand in columns: a label that leans on the one before it may have another neighbour. */
test.each(sheets.map((sheet) => ({ id: sheet.id, sheet })))(
  'no result of $id begins in the middle of a sentence',
  ({ sheet }) => {
    for (const { label } of Object.values(sheet.results as Record<string, { label: string }>))
      if (!/^(w\/c|pH)\b/.test(label)) expect(label).not.toMatch(/^\p{Ll}/u);
  },
);
