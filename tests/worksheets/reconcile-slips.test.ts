import { describe, expect, test } from 'vitest';
import { READINGS } from '../../src/bench/records/readings.ts';
import { answer } from '../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import { benchKey } from '../../src/islands/worksheet.ts';
import reconcile from '../../src/worksheets/records/reconcile.tsx';
import { mustAnswer } from './must-answer.ts';

const say = speaker('metric');

/** The example's batch with one of its weighings another one. */
function weighed(name: 'cement' | 'water', kilograms: number) {
  const entries = { [`reconcile.${name}`]: { t: `${kilograms}`, u: 'kg' } };
  const found = answer(reconcile, readWorksheet(reconcile, entries, {}, say), say);
  mustAnswer(found);
  return found;
}

describe('a slip in weighing in is stopped', () => {
  test.each([
    ['cement', [20, 27, 28, 40, 50, 500]],
    ['water', [14, 16.9, 17, 20, 54.3]],
  ] as const)('of %s, and no less so when it grows', (name, slips) => {
    for (const slip of slips) expect(weighed(name, slip).judgement.verdict, `${slip}`).toBe('stop');
  });

  test('and where water and cement make no base mix, nothing is said of the foam', () => {
    // 5.43 kg of water: a w/c of 0.2 is 27.15 kg of cement.
    expect(weighed('cement', 27).numbers).toMatchObject({ survival: {}, air: {} });
    const { numbers, judgement } = weighed('cement', 28);
    expect(judgement.say).toContain('nothing can be said of the foam');
    expect(numbers).not.toHaveProperty('survival');
    expect(numbers).not.toHaveProperty('air');
  });
});

describe('what is named, typed in its place, leaves no contradiction', () => {
  type Typed = Readonly<Record<string, string>>;
  const judged = (over: Typed, voice = say) => {
    const entries = Object.fromEntries(
      Object.entries(over).map(([name, text]) => {
        const [t, u] = text.split(/\s/);
        return [benchKey(reconcile, name), { t: t!, u: u!, s: voice.system }];
      }),
    );
    const found = answer(reconcile, readWorksheet(reconcile, entries, {}, voice), voice);
    mustAnswer(found);
    return found.judgement;
  };
  const fieldOf = (label: string) =>
    Object.entries(READINGS).find(([, reading]) => reading.label.toLowerCase() === label)![0];
  const out = { placed: '32.4 L', leftOver: '0.59 kg' };
  const slips: readonly Typed[] = [
    { foamVolume: '2.53 L' },
    { foamVolume: '12.6 L' },
    { sand: '13 kg' },
    { cement: '23.57 kg' },
    { tare: '8.5 kg' },
    { full: '1.344 kg' },
    { full: '134.5 kg' },
    { full: '134.5 kg', ...out },
    { full: '13.44 lb' },
    { vessel: '10 L', ...out },
    { vessel: '200 L' },
    { vessel: '0.2 L' },
    { ...out, placed: '324 L' },
    { ...out, leftOver: '59 kg' },
  ];

  test.each(slips.flatMap((slip) => [say, speaker('us')].map((voice) => [slip, voice] as const)))(
    '%j',
    (slip, voice) => {
      const { verdict, say: words } = judged(slip, voice);
      expect(verdict).toBe('stop');
      const named = [...words.matchAll(/“([^”]+)” at (?:least|most) ([\d.,\u202f]+\s\S+?), not/g)];
      const [slipped] = Object.keys(slip).filter(
        (name) => !(name in out && slip[name] === out[name as 'placed']),
      );
      expect(named.map(([, label]) => fieldOf(label!))).toContain(slipped);
      for (const [, label, amount] of named)
        expect(judged({ ...slip, [fieldOf(label!)]: amount! }, voice).verdict, label).not.toBe(
          'stop',
        );
    },
  );

  test('near or far', () => {
    // 25.3 L and the 2.0 L more that are named first.
    expect(judged({ full: '12.3 kg' }).say).toContain('“foam put in”: 2.0\u00a0L more');
    expect(judged({ full: '12.3 kg', foamVolume: '27.3 L' }).verdict).toBe('good');
  });

  test('no foam explains a bucket too heavy for any, and where none explains it none is named', () => {
    expect(judged({ full: '134.5 kg' }).say).not.toContain('foam put in');
    const twice = judged({ placed: '324 L', leftOver: '59 kg' });
    expect(twice.say).toMatch(
      /so one reading is wrong\. Weigh everything once more.* none of them explains it alone\.$/,
    );
  });
});
