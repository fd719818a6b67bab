import {
  linearTraverse,
  pointCount,
  SPACING_BRANCH,
} from '../../../src/core/finished/air-voids.ts';
import { studentT } from '../../../src/core/uncertainty/student-t.ts';
import { type Answers, answer } from '../answer.ts';

type NumberOf<T> = { [K in keyof T]: T[K] extends number ? K : never }[keyof T];

type Void = NumberOf<ReturnType<typeof linearTraverse>>;

export const bubbleAnswers: Answers = {
  'finished-part/traverse': answer({
    asks: 'An air-void figure from a linear traverse (lengths in m)',
    input: { traverse: 'length', air: 'length', paste: 'length', voids: 'number', part: 'text' },
    gives: 'number',
    work: ({ part, ...line }) => linearTraverse(line)[part as Void],
  }),
  'finished-part/points': answer({
    asks: 'An air-void figure from a point count (lengths in m)',
    input: {
      stops: 'number',
      airStops: 'number',
      pasteStops: 'number',
      interval: 'length',
      voids: 'number',
      part: 'text',
    },
    gives: 'number',
    work: ({ part, ...grid }) => pointCount(grid)[part as Void],
  }),
  'finished-part/branch-gap': answer({
    asks: 'How far apart the two spacing expressions are where they meet, over mean chord',
    input: {},
    gives: 'number',
    work: () => {
      const spacing = (ratio: number) => {
        const air = 1 / (1 + ratio);
        const line = { traverse: 1, air, paste: Math.min(ratio * air, 1 - air), voids: 1000 };
        const { spacingFactor, meanChord } = linearTraverse(line);
        return spacingFactor / meanChord;
      };
      return spacing(SPACING_BRANCH + 1e-9) - spacing(SPACING_BRANCH - 1e-9);
    },
  }),
  'finished-part/student-t': answer({
    asks: 'Student’s t, two-sided',
    input: { freedom: 'number', confidence: 'number' },
    gives: 'number',
    work: studentT,
  }),
};
