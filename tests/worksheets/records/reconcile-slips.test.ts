import { describe, expect, test } from 'vitest';
import { READINGS } from '../../../src/bench/records/readings.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import { benchKey } from '../../../src/islands/worksheet.ts';
import reconcile from '../../../src/worksheets/records/reconcile.tsx';
import { mustAnswer } from '../must-answer.ts';

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

  test('an impossible base mix is told before anything about the foam', () => {
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
  const answered = (over: Typed, voice = say) => {
    const entries = Object.fromEntries(
      Object.entries(over).map(([name, text]) => {
        const [t, u] = text.split(/\s/);
        return [benchKey(reconcile, name), { t: t!, u: u!, s: voice.system }];
      }),
    );
    return answer(reconcile, readWorksheet(reconcile, entries, {}, voice), voice);
  };
  const judged = (over: Typed, voice = say) => {
    const found = answered(over, voice);
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
    // Foam weighed with its vessel.
    { foamDensity: '450 g/L', full: '15.5 kg' },
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

  test('a foam too heavy to be any is named, to what foam is at most', () => {
    const heavy = {
      ...{ cement: '4.737 kg', water: '3.973 kg', sand: '6.168 kg', foamVolume: '14.42 L' },
      ...{ foamDensity: '420.2 g/L', full: '4.419 kg', tare: '0.2 kg', vessel: '5 L' },
    };
    expect(judged(heavy).say).toMatch(
      /Only this would explain it alone, [^:]*: “foam density” at most 250\sg\/L, not 420\.2\sg\/L\.$/,
    );
    expect(judged({ ...heavy, foamDensity: '250 g/L' }).verdict).toBe('good');
    // Too light to be any, it agrees with the rest, and is doubted all the same.
    expect(judged({ foamDensity: '8 g/L' })).toMatchObject({
      verdict: 'look',
      say: expect.stringMatching(/^Foam of 8\.00\sg\/L is hardly foam\./),
    });
    expect(judged({ foamDensity: '16 g/L' }).say).not.toContain('hardly foam');
  });

  test('a value that its own field would refuse is no explanation', () => {
    // 200 kg is the most a bucket weighs empty, and holds 1000 L at most.
    const { say: words } = judged({ full: '3000 kg', cement: '1357 kg', water: '543 kg' });
    expect(words).toMatch(/Only this would explain it alone, [^:]*: “bucket, full of blended mix”/);
  });

  test.each([say, speaker('us')])('a limit of nothing is said as none', (voice) => {
    const { say: words } = judged({ full: '14 kg', placed: '32 L', leftOver: '5 kg' }, voice);
    expect(words).toMatch(/“left over or spilled” none, not (5\skg|11\.02\slb)/);
    expect(judged({ full: '14 kg', placed: '32 L', leftOver: '0 kg' }, voice).verdict).not.toBe(
      'stop',
    );
  });

  test('missing sand is suggested only where none was entered and it could explain the mass', () => {
    const ask = 'or sand is not written down';
    expect(judged({ full: '45 kg' }).say).toContain(ask);
    expect(judged({ full: '50 kg', sand: '13 kg' }).say).toMatch(/so one reading is wrong\. Look/);
    expect(judged({ full: '134.5 kg' }).say).not.toContain(ask);
  });

  test('of many explanations only the first are named', () => {
    const { say: words } = judged({ ...out, vessel: '10 L' });
    expect(words.match(/, not /g)).toHaveLength(4);
    expect(words).toMatch(/; and others\.$/);
    expect(judged({ foamVolume: '2.53 L' }).say).not.toContain('and others');
  });

  test('a mix too heavy for any gas has neither foam, yield nor missing mass told of it', () => {
    const numbers = (over: Typed) => {
      const found = answered(over);
      mustAnswer(found);
      return Object.keys(found.numbers);
    };
    const told = ['survival', 'air', 'yield', 'missing'];
    expect(numbers(out)).toEqual(expect.arrayContaining(told));
    for (const name of told) expect(numbers({ ...out, full: '134.5 kg' })).not.toContain(name);
  });

  test('no foam explains a bucket too heavy for any, and where none explains it none is named', () => {
    expect(judged({ full: '134.5 kg' }).say).not.toContain('foam put in');
    const twice = judged({ placed: '324 L', leftOver: '59 kg' });
    expect(twice.say).toMatch(
      /so one reading is wrong\. Weigh everything once more.* none of them explains it alone\.$/,
    );
  });
});
