import { expect, test } from 'vitest';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import pieces from '../../../src/worksheets/placing/pieces.tsx';
import shapes from '../../../src/worksheets/placing/shapes.tsx';

const us = speaker('us');
const inch = (t: string) => ({ t, u: 'in', s: 'us' }) as const;
type Cells = Readonly<Record<string, string>>;
const inches = (cells: Cells) =>
  Object.fromEntries(Object.entries(cells).map(([name, t]) => [name, inch(t)]));
const BLOCK = { shape: { t: 'block' }, ...inches({ length: '24', width: '12', height: '10' }) };
const DRUM = { shape: { t: 'cylinder' }, ...inches({ diameter: '12', height: '10' }) };

/** A form with one core in it; a block of 24 × 12 × 10 in unless another is given. */
function held(core: string, cells: Cells, form: object = BLOCK) {
  const entries = {
    ...Object.fromEntries(Object.entries(form).map(([name, entry]) => [`shapes.${name}`, entry])),
    'shapes.hollow': { t: 'some' },
    'shapes.cores': { rows: [{ core: { t: core }, count: { t: '1' }, ...inches(cells) }] },
  };
  return answer(shapes, readWorksheet(shapes, entries, {}, us), us);
}

const problem = (...asked: Parameters<typeof held>) => {
  const found = held(...asked);
  return found.ok ? undefined : found.problems[0];
};

test.each([
  [
    'deeper than the form',
    'box',
    { across: '20', wide: '4', deep: '11' },
    'deep',
    'is 11 in deep, and its form only 10 in.',
  ],
  [
    'longer than it',
    'box',
    { across: '30', wide: '4', deep: '9' },
    'across',
    'is 30 in long, and its form only 24 in',
  ],
  [
    'longer, the other way',
    'box',
    { across: '8', wide: '26', deep: '9' },
    'wide',
    'is 26 in long, and its form only 24 in; it is too wide to lie askew in it.',
  ],
  [
    'wider than it',
    'box',
    { across: '13', wide: '14', deep: '9' },
    'across',
    'is 13 in wide, and its form only 12 in.',
  ],
  [
    'thicker',
    'round',
    { across: '13', deep: '9' },
    'across',
    'is 13 in wide, and its form only 12 in.',
  ],
  [
    'thicker at the other end',
    'taper',
    { across: '4', end: '13', deep: '9' },
    'end',
    'is 13 in wide, and its form only 12 in.',
  ],
  [
    'that tapers and is longer at the other end',
    'box-taper',
    { across: '20', wide: '4', end: '26', endWide: '5', deep: '9' },
    'end',
    'is 26 in long, and its form only 24 in; it is too wide to lie askew in it.',
  ],
  [
    'that tapers and is wider at the other end',
    'box-taper',
    { across: '16', wide: '12', end: '15', endWide: '13', deep: '9' },
    'endWide',
    'is 13 in wide, and its form only 12 in.',
  ],
  [
    'that tapers and is deeper',
    'box-taper',
    { across: '16', wide: '8', end: '14', endWide: '6', deep: '11' },
    'deep',
    'is 11 in deep, and its form only 10 in.',
  ],
])('a core %s is refused at its own field, with the reason', (_, core, cells, cell, why) => {
  const found = problem(core, cells);
  expect(found?.input).toBe(`shapes-cores-0-${cell}`);
  expect(found?.say.replaceAll('\u00a0', ' ')).toContain(why);
});

test('a core longer than its form is accepted only where it is narrow enough to lie diagonally', () => {
  const short = { ...BLOCK, length: inch('1 1/2 ft') };
  expect(problem('box', { across: '20', wide: '8', deep: '10' }, short)?.input).toBe(
    'shapes-cores-0-across',
  );
  expect(problem('box', { across: '20', wide: '1/2', deep: '10' }, short)).toBeUndefined();
});

test('a box in a round form is refused by the distance of its corners', () => {
  const found = problem('box', { across: '10', wide: '9', deep: '9' }, DRUM);
  expect(found?.say.replaceAll('\u00a0', ' ')).toContain(
    'are 13.454 in apart, and its round form is only 12 in across.',
  );
  expect(problem('box', { across: '9', wide: '7', deep: '9' }, DRUM)).toBeUndefined();
});

test('a hole wider than its ring is refused in both worksheets', () => {
  const ring = { shape: { t: 'ring' }, ...inches({ diameter: '8', inner: '9', height: '4' }) };
  const said = (found: ReturnType<typeof answer>) =>
    found.ok ? '' : found.problems[0]!.say.replaceAll('\u00a0', ' ');
  const why = 'is 9 in across; it must be narrower than the ring, 8 in.';
  expect(said(held('round', { across: '1', deep: '2' }, ring))).toContain(why);
  const rows = { 'pieces.pieces': { rows: [ring] } };
  expect(said(answer(pieces, readWorksheet(pieces, rows, {}, us), us))).toContain(why);
});

test('the cells of a core and the sides of its form have no label in common', () => {
  const { cores, ...form } = shapes.fields;
  const labels = Object.values(cores.of).map(({ label }) => label as string);
  const others = Object.values(form).map(({ label }) => label as string);
  expect(labels.filter((label) => label !== 'Shape' && others.includes(label))).toEqual([]);
});

test('the volume of a core that fits is subtracted', () => {
  const found = held('box', { across: '20', wide: '8', deep: '10' });
  expect(found.ok && found.numbers.cores!.value).toBeCloseTo(1600 * 0.0254 ** 3, 12);
});
