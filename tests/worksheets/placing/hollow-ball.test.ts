import { expect, test } from 'vitest';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import shapes from '../../../src/worksheets/placing/shapes.tsx';

const metric = speaker('metric');
const mm = (t: string) => ({ t, u: 'mm', s: 'metric' }) as const;

/** One form, and the ball that is left out of it. */
function around(form: Readonly<Record<string, object>>, across: string) {
  const entries = {
    ...Object.fromEntries(Object.entries(form).map(([name, entry]) => [`shapes.${name}`, entry])),
    'shapes.hollow': { t: 'some' },
    'shapes.cores': { rows: [{ core: { t: 'ball' }, count: { t: '1' }, across: mm(across) }] },
  };
  return answer(shapes, readWorksheet(shapes, entries, {}, metric), metric);
}

function held(...asked: Parameters<typeof around>) {
  const found = around(...asked);
  if (!found.ok) throw new Error(found.problems.map(({ say }) => say).join(' '));
  return found;
}

const BALL = { shape: { t: 'ball' }, count: { t: '1' }, diameter: mm('300') };
const HALVES = {
  shape: { t: 'shell' },
  count: { t: '2' },
  baseDiameter: mm('300'),
  height: mm('150'),
  thickness: mm('25'),
};

test('a hollow ball is a ball less the ball in it, and takes as much as its two halves', () => {
  const hollow = held(BALL, '250').numbers;
  // π/6 × (300³ − 250³) mm³, and the ball in it π/6 × 250³ mm³.
  expect(hollow.net!.value).toBeCloseTo(0.0059559, 7);
  expect(hollow.cores!.value).toBeCloseTo(0.0081812, 7);
  const entries = Object.fromEntries(
    Object.entries(HALVES).map(([name, entry]) => [`shapes.${name}`, entry]),
  );
  const halves = answer(shapes, readWorksheet(shapes, entries, {}, metric), metric);
  expect(halves.ok && halves.numbers.net!.value).toBeCloseTo(hollow.net!.value!, 12);
});

test('a ball that is left out is told not to come out again, another core is not', () => {
  const stays = /ball shut in by the mix stays in it/;
  expect(held(BALL, '250').notes.join(' ')).toMatch(stays);
  const entries = { 'shapes.hollow': { t: 'some' } };
  const holes = answer(shapes, readWorksheet(shapes, entries, {}, metric), metric);
  expect(holes.ok && holes.notes.join(' ')).not.toMatch(stays);
});

test('a ball wider than its form is refused beside its diameter', () => {
  const block = { shape: { t: 'block' }, length: mm('600'), width: mm('600'), height: mm('240') };
  const found = around(block, '250');
  expect(found.ok ? [] : found.problems).toMatchObject([
    {
      input: 'shapes-cores-0-across',
      say: expect.stringMatching(/is 250\smm deep, and its form only 240\smm/),
    },
  ]);
});
