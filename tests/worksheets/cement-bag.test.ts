import { expect, test } from 'vitest';
import { binderDensity } from '../../src/core/mix/binder.ts';
import type { Field, Fields } from '../../src/islands/fields.ts';
import { benchKey } from '../../src/islands/worksheet.ts';
import { sheets } from './all.ts';

const asking = (key: string): readonly (Field | undefined)[] =>
  sheets.flatMap((sheet) =>
    Object.keys(sheet.fields)
      .filter((name) => benchKey(sheet, name) === key)
      .map((name) => (sheet.fields as Fields)[name]),
  );

test('CEM II 42.5 N is named as ordinary wherever a cement is asked for, and nowhere else', () => {
  const cements = asking('curing.cement');
  expect(cements.length).toBeGreaterThan(2);
  for (const field of cements) {
    expect(field!.help).toMatch(
      /number on the bag: CEM\sII 42\.5\sN is ordinary.*CEM\sIII counts as slow/,
    );
    const { slow, ordinary } = (field as { options: Record<string, string> }).options;
    expect(slow).toMatch(/32\.5\sN, CEM\sIII/);
    expect(slow).not.toMatch(/blend/);
    expect(ordinary).toMatch(/42\.5\sN/);
  }
});

test('whether a cement counts as blended is told by its type, not its number', () => {
  const [binder] = asking('curing-plan.binder');
  expect(binder!.help).toMatch(
    /^Whatever its number: CEM\sI is Portland cement; CEM\sII, III .* blend/,
  );
});

test('plan, batch and base check give the density of CEM II', () => {
  const helped = sheets.flatMap(({ id, fields }) =>
    /CEM\sII: near 3000.*Type\sIL 3100 \(194\), from memory/.test(
      (fields as Fields).cementDensity?.help ?? '',
    )
      ? [id]
      : [],
  );
  expect(helped).toEqual(expect.arrayContaining(['proportion', 'batch', 'base-check']));
  // In pounds too. With a tenth, and with a third, of limestone.
  expect(3100 / 16.01846).toBeCloseTo(193.5, 1);
  for (const [share, weighs] of [
    [0.1, 3098],
    [0.33, 2986],
  ] as const)
    expect(
      binderDensity([
        { kind: 'portland', share: 1 - share },
        { kind: 'limestone', share },
      ]),
    ).toBeCloseTo(weighs, 0);
});
