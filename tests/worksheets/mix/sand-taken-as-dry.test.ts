import { expect, test } from 'vitest';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import powersVolumes from '../../../src/worksheets/finished/powers-volumes.tsx';
import landing from '../../../src/worksheets/mix/landing.tsx';
import proportion from '../../../src/worksheets/mix/proportion.tsx';
import targetDensity from '../../../src/worksheets/mix/target-density.tsx';
import { mustAnswer } from '../must-answer.ts';

const say = speaker('metric');

test.each([
  ['proportion', proportion],
  ['target-density', targetDensity],
  ['landing', landing],
  ['powers-volumes', powersVolumes],
] as const)(
  '%s says that its dry density counts the sand as dry, where there is sand',
  (_, sheet) => {
    const notes = (sand: string) => {
      const found = answer(
        sheet,
        readWorksheet(sheet, { 'mix.sandCement': { t: sand } }, {}, say),
        say,
      );
      mustAnswer(found);
      return found.notes.filter((note) => note.includes('sand is counted as dry'));
    };
    expect(notes('0.5')).toHaveLength(1);
    expect(notes('0')).toEqual([]);
  },
);
