import { expect, test } from 'vitest';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import fibres from '../../../src/worksheets/mix/fibres.tsx';

test.each([
  ['metric', /^20\.0\skg of it would take more than a tenth of the volume.*: that is 268\sg\./],
  ['us', /^44\.1\slb of it .*: that is 9\.45\soz\./],
] as const)('too much fibre is refused in the unit it is asked in, %s', (system, words) => {
  const say = speaker(system);
  const entries = {
    'fibres.by': { t: 'mass' },
    'fibres.mass': { t: '20', u: 'kg' },
    'fibres.volume': { t: '1', u: 'L' },
  };
  const found = answer(fibres, readWorksheet(fibres, entries, {}, say), say);
  if (found.ok) throw new Error(found.judgement.say);
  expect(found.problems).toEqual([{ input: 'fibres-mass', say: expect.stringMatching(words) }]);
});
