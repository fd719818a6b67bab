import { describe, expect, test } from 'vitest';
import type { Entries } from '../../../src/bench/entries.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import { type AnyWorksheet, benchKey } from '../../../src/islands/worksheet.ts';
import foamDensity from '../../../src/worksheets/foam/foam-density.tsx';
import foamingSolution from '../../../src/worksheets/foam/foaming-solution.tsx';
import glycerol from '../../../src/worksheets/foam/glycerol.tsx';
import proportion from '../../../src/worksheets/mix/proportion.tsx';
import soapLost from '../../../src/worksheets/water/soap-lost.tsx';
import { mustAnswer } from '../must-answer.ts';

const say = speaker('metric');
const answered = (sheet: AnyWorksheet, typed: Readonly<Record<string, string>>) => {
  const entries: Entries = Object.fromEntries(
    Object.entries(typed).map(([name, t]) => [benchKey(sheet, name), { t, s: 'metric' }]),
  );
  const found = answer(sheet, readWorksheet(sheet, entries, {}, say), say);
  mustAnswer(found);
  return found;
};
const judged = (...of: Parameters<typeof answered>) => answered(...of).judgement;

describe('the foaming solution', () => {
  test('names only its ingredients, in order of mixing', () => {
    expect(judged(foamingSolution, {}).say).toContain('water, glycerol, concentrate.');
    const plain = judged(foamingSolution, { glycerol: '0' });
    expect(plain.verdict).toBe('good');
    expect(plain.say).toContain('water, concentrate.');
    expect(plain.say).not.toContain('glycerol');
  });

  test.each([
    [foamingSolution, { foamVolume: '0.69', glycerol: '0', priming: '0' }],
    [proportion, { volume: '0.85', glycerol: '0', priming: '0' }],
  ] as const)(
    'so little concentrate that a kitchen scale misses the dose is told',
    (sheet, typed) => {
      const told = (more: Readonly<Record<string, string>>) => {
        const { result, values } = answered(sheet, { ...typed, ...more });
        return (sheet as AnyWorksheet).notes!(result, values, say)
          .filter((note) => /kitchen scale/.test(note))
          .join();
      };
      expect(told({})).toMatch(
        /^A kitchen scale hardly shows 1\.\d\sg of concentrate: measure 1\.\d\smL with a syringe/,
      );
      // 5 g of it are weighed to a tenth.
      expect(told({ priming: '0.11' })).toContain('g of concentrate');
      expect(told({ priming: '0.14' })).toBe('');
    },
  );

  test('the share shown is that of the amounts shown, including make-up concentrate', () => {
    for (const kind of ['other', 'soap']) {
      const { numbers, values, result } = answered(foamingSolution, { kind });
      const { concentrate, water, share } = numbers;
      expect(share!.value).toBeCloseTo(
        concentrate!.value / (concentrate!.value + water!.value),
        12,
      );
      if (kind === 'soap') expect(share!.value).toBeGreaterThan(0.029);
      else expect(share!.value).toBeCloseTo(1 / 41, 9);
      const worked = foamingSolution.working[1]!.put(result as never, values as never, say);
      expect(worked).toContain(kind === 'soap' ? 'With 3.28' : 'With 2.68');
    }
  });

  test('gets the same verdict from the batch and from its own worksheet', () => {
    const doubtful = { glycerol: '20', partsWater: '2.5' };
    expect(judged(proportion, doubtful)).toEqual(judged(foamingSolution, doubtful));
    // Beside what is strange about the mix.
    expect(judged(proportion, { ...doubtful, waterCement: '0.3' }).say).toMatch(
      /w\/c of 0\.30.*of concentrate/,
    );
  });

  test('much glycerol and much concentrate are both told, usual amounts neither', () => {
    const both = judged(foamingSolution, { glycerol: '20', partsWater: '2.5' });
    expect(both.verdict).toBe('look');
    expect(both.say).toMatch(/20\s% of glycerol.*29\s% of concentrate/);
    expect(judged(foamingSolution, { glycerol: '10', partsWater: '9' }).verdict).toBe('good');
    expect(judged(foamingSolution, { partsWater: '8' }).verdict).toBe('look');
  });
});

describe('a water that takes soap', () => {
  // 1 : 40 of 1.1 kg/L with 30 % of soap is 8.25 g of soap to a litre of water.
  test.each([
    ['130', 'good'],
    ['150', 'look'],
    ['670', 'look'],
    ['690', 'stop'],
    ['1500', 'stop'],
  ])('of %s mg/L is as good to the solution as to the page on soap: %s', (hardness, verdict) => {
    const water = { kind: 'soap', hardness };
    const lost = judged(soapLost, { ...water, dose: '8.25' });
    const solution = judged(foamingSolution, water);
    expect([lost.verdict, solution.verdict]).toEqual([verdict, verdict]);
  });

  test('has the same share of the dose lost in both worksheets', () => {
    const water = { kind: 'soap', hardness: '300' };
    const share = /2[12]\s%/;
    expect(judged(soapLost, { ...water, dose: '8.25' }).say).toMatch(share);
    expect(judged(foamingSolution, water).say).toMatch(share);
  });
});

test('glycerol beyond the published density range is noted', () => {
  const told = /density is published for 15 to 30/;
  for (const [temperature, outside] of [
    ['2', true],
    ['14.9', true],
    ['15', false],
    ['30', false],
    ['30.1', true],
  ] as const)
    expect(answered(glycerol, { temperature }).notes.some((note) => told.test(note))).toBe(outside);
});

describe('what is hardly foam', () => {
  test.each([
    ['a volume ten times too large', { vessel: '200', full: '2.45' }],
    ['one ten times too small', { vessel: '2', full: '2.3' }],
  ])('%s is looked for in the readings, not mended at the lance', (_, typed) => {
    const { verdict, say: words } = judged(foamDensity, typed);
    expect(verdict).toBe('stop');
    expect(words).toMatch(/vessel’s volume, (200|2\.00)\sL/);
    expect(words).not.toMatch(/the air|solution stronger/);
  });

  test('thin and wet foam get their usual advice', () => {
    expect(judged(foamDensity, { vessel: '20', full: '1.35' }).say).toContain('close the air');
    expect(judged(foamDensity, { vessel: '20', full: '4.85' }).say).toContain('Open the air');
  });
});
