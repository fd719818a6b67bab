import { expect, test } from 'vitest';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import shapes from '../../../src/worksheets/placing/shapes.tsx';

const metric = speaker('metric');
const mm = (t: string) => ({ t, u: 'mm', s: 'metric' }) as const;

/** A square planter, 300 × 300 × 300 mm outside, round one core 260 mm deep. */
function planter(core: string, cells: Readonly<Record<string, string>>) {
  const entries = {
    'shapes.shape': { t: 'block' },
    'shapes.count': { t: '1' },
    'shapes.length': mm('300'),
    'shapes.width': mm('300'),
    'shapes.height': mm('300'),
    'shapes.hollow': { t: 'some' },
    'shapes.cores': {
      rows: [
        {
          core: { t: core },
          count: { t: '1' },
          ...Object.fromEntries(Object.entries(cells).map(([name, t]) => [name, mm(t)])),
        },
      ],
    },
  };
  const found = answer(shapes, readWorksheet(shapes, entries, {}, metric), metric);
  if (!found.ok) throw new Error(found.problems.map(({ say }) => say).join(' '));
  return { net: found.numbers.net!.value!, notes: found.notes.join(' ') };
}

const STRAIGHT = { across: '220', wide: '220', deep: '260' };
const SLOPED = { ...STRAIGHT, end: '168', endWide: '168' };

test('a square planter holds what its tapered core leaves, a fifth more than round a straight one', () => {
  // 27 L less the frustum of a pyramid, 260/3 × (220² + 168² + 220 × 168) mm³; less a box, 220² × 260 mm³.
  expect(planter('box-taper', SLOPED).net).toBeCloseTo(0.027 - 0.00984394667, 10);
  expect(planter('box', STRAIGHT).net).toBeCloseTo(0.027 - 0.012584, 10);
});

test('unequal tapers are calculated as a prismoid, and a wedge as half its box', () => {
  // 260/6 × (220 × 200 + 4 × 194 × 190 + 168 × 180) mm³.
  const unlike = { ...SLOPED, wide: '200', endWide: '180' };
  expect(planter('box-taper', unlike).net).toBeCloseTo(0.027 - 0.0096061333, 10);
  const blade = { ...STRAIGHT, end: '0', endWide: '220' };
  expect(planter('box-taper', blade).net).toBeCloseTo(0.027 - 0.006292, 10);
});

test('a straight box core gets a note that it is hard to pull out, a tapered one does not', () => {
  const why = /box core with straight sides hardly comes out again/;
  expect(planter('box', STRAIGHT).notes).toMatch(why);
  expect(planter('box-taper', SLOPED).notes).not.toMatch(why);
  expect(planter('round', { across: '220', deep: '260' }).notes).not.toMatch(why);
});
