import { expect, test } from 'vitest';
import { answer } from '../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import shapes from '../../src/worksheets/placing/shapes.tsx';

const us = speaker('us');
const inch = (t: string) => ({ t, u: 'in', s: 'us' }) as const;
type Cells = Readonly<Record<string, string>>;
/** A block of 24 × 12 × 10 in with one core in it. */
function held(core: string, cells: Cells) {
  const entries = {
    'shapes.shape': { t: 'block' },
    'shapes.length': inch('24'),
    'shapes.width': inch('12'),
    'shapes.height': inch('10'),
    'shapes.hollow': { t: 'some' },
    'shapes.cores': { rows: [{ core: { t: core }, count: { t: '1' }, ...inches(cells) }] },
  };
  return answer(shapes, readWorksheet(shapes, entries, {}, us), us);
}
const inches = (cells: Cells) =>
  Object.fromEntries(Object.entries(cells).map(([name, t]) => [name, inch(t)]));

test.each([
  ['deeper than the form', 'box', { across: '20', wide: '4', deep: '11' }, 'deep', '10'],
  ['longer than it', 'box', { across: '30', wide: '4', deep: '9' }, 'across', '26.8'],
  ['longer, the other way', 'box', { across: '4', wide: '30', deep: '9' }, 'wide', '26.8'],
  ['wider than it', 'box', { across: '13', wide: '14', deep: '9' }, 'across', '12'],
  ['thicker', 'round', { across: '13', deep: '9' }, 'across', '12'],
  ['thicker at the other end', 'taper', { across: '4', end: '13', deep: '9' }, 'end', '12'],
])('a core %s is refused at its own field', (_, core, cells, cell, most) => {
  const found = held(core, cells);
  expect(found.ok).toBe(false);
  if (found.ok) return;
  expect(found.problems[0]!.input).toBe(`shapes-cores-0-${cell}`);
  expect(found.problems[0]!.say).toContain(`must be at most ${most}`);
});

test('a core that stands in the form is left out of it', () => {
  const found = held('box', { across: '20', wide: '8', deep: '10' });
  expect(found.ok && found.numbers.cores!.value).toBeCloseTo(1600 * 0.0254 ** 3, 12);
});
