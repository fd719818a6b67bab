import { expect, test } from 'vitest';
import { answer } from '../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import formPressure from '../../src/worksheets/placing/form-pressure.tsx';

const metric = speaker('metric');
const tie = (width: string, spacing: string) => {
  const mm = (t: string) => ({ t, u: 'mm', s: 'metric' }) as const;
  const entries = { 'form-pressure.width': mm(width), 'form-pressure.spacing': mm(spacing) };
  const found = answer(formPressure, readWorksheet(formPressure, entries, {}, metric), metric);
  if (!found.ok) throw new Error(found.problems.map(({ say }) => say).join(' '));
  const { lowerTie, upperTie, resultant } = found.numbers;
  return { rows: lowerTie!.value + upperTie!.value, push: resultant!.value };
};

test('clamps further apart than the side is long carry the whole push on it, and no more', () => {
  const far = tie('600', '1500');
  expect(far.rows).toBeCloseTo(far.push, 9);
  const near = tie('600', '300');
  expect(near.rows).toBeCloseTo(near.push / 2, 9);
});
