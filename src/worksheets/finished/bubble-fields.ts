import { lines } from '../../islands/fields/lines.tsx';
import { choice, number } from '../../islands/fields.ts';
import { PERCENT } from '../shared/words/amounts.ts';

const line = { method: ['line'] } as const;
const points = { method: ['points'] } as const;
const count = (label: string, example: string, when: Record<string, readonly string[]>) =>
  number('count', { label, example, min: '0', max: '100000', whole: true, when });

/** Chords met along a line across the demo's face, mm. */
export const DEMO_CHORDS: readonly number[] = [
  0.6, 0.9, 0.4, 1.1, 0.7, 0.5, 0.8, 1.3, 0.6, 0.9, 0.3, 0.7, 1.0, 0.8, 0.5, 1.6, 0.7, 0.6, 0.9,
  0.4, 0.8, 1.2, 0.5, 0.7, 1.0, 0.6, 0.9, 0.8, 0.4, 1.1, 0.7, 0.5, 2.1, 0.8, 0.6, 0.9, 0.7, 1.0,
  0.5, 0.8,
];

/** What was counted on a cut face, along a line or at the points of a grid. */
export const bubbleFields = {
  method: choice({
    label: 'How you counted',
    options: {
      line: 'Along a line: each bubble’s chord',
      points: 'At points of a grid: what lies under each',
    },
    example: 'line',
  }),
  chords: lines({
    label: 'Chords across bubbles',
    help: 'Where the line crosses a bubble, from edge to edge. Off a photograph, a ruler in it.',
    of: {
      chord: number('length', {
        label: 'Chord',
        example: '0.6 mm',
        min: '0.001 mm',
        max: '100 mm',
      }),
    },
    example: DEMO_CHORDS.join('\n'),
    most: 600,
    when: line,
  }),
  traverse: number('length', {
    label: 'Whole length of the line',
    example: '48 mm',
    min: '0.1 mm',
    max: '50 m',
    when: line,
  }),
  stops: count('Points in all', '300', points),
  airStops: count('Of them over air', '196', points),
  voids: count('Bubbles met by the grid’s lines', '260', points),
  interval: number('length', {
    label: 'From point to point',
    help: 'Wider than the bubbles, or the points are not independent.',
    example: '2 mm',
    min: '0.01 mm',
    max: '1 m',
    when: points,
  }),
  inert: number('ratio', {
    label: 'Sand, of the whole',
    help: 'What is neither air nor paste. 0 for neat cement.',
    example: '0 %',
    min: '0 %',
    max: '80 %',
    units: PERCENT,
    folded: true,
  }),
  designed: number('ratio', {
    label: 'Air it was designed for',
    example: '66.4 %',
    min: '0 %',
    max: '99 %',
    units: PERCENT,
    takes: 'part.designedAir',
  }),
};
