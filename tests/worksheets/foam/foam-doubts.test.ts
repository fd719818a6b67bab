import { beforeEach, describe, expect, test } from 'vitest';
import type { Entries, KeptResults } from '../../../src/bench/entries.ts';
import { $kept, keep } from '../../../src/bench/store.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import type { NumberReading } from '../../../src/islands/engine/reading.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import { keepResults } from '../../../src/islands/keep-results.ts';
import { type AnyWorksheet, benchKey } from '../../../src/islands/worksheet.ts';
import setTime from '../../../src/worksheets/curing/set-time.tsx';
import airSupply from '../../../src/worksheets/foam/air-supply.tsx';
import drainage from '../../../src/worksheets/foam/drainage.tsx';
import foamDensity from '../../../src/worksheets/foam/foam-density.tsx';
import receiver from '../../../src/worksheets/foam/receiver.tsx';
import survivalJar from '../../../src/worksheets/foam/survival-jar.tsx';
import timeInHand from '../../../src/worksheets/foam/time-in-hand.tsx';
import batch from '../../../src/worksheets/mix/batch.tsx';
import correct from '../../../src/worksheets/mix/correct.tsx';
import correctBuckets from '../../../src/worksheets/mix/correct-buckets.tsx';
import proportion from '../../../src/worksheets/mix/proportion.tsx';
import { mustAnswer } from '../must-answer.ts';

const metric = speaker('metric');
/** What the worksheet says once these of its fields are typed, in their metric units. */
const answered = (
  sheet: AnyWorksheet,
  typed: Readonly<Record<string, string>> = {},
  kept: KeptResults = {},
) => {
  const entries: Entries = Object.fromEntries(
    Object.entries(typed).map(([name, t]) => [benchKey(sheet, name), { t, s: 'metric' }]),
  );
  const found = answer(sheet, readWorksheet(sheet, entries, kept, metric), metric);
  mustAnswer(found);
  return found;
};
const judged = (...of: Parameters<typeof answered>) => answered(...of).judgement;

/** A vessel of which all is said that decides whether it may be filled. */
const said = { made: 'marked', marking: '10', relief: 'passes' };

test.each([
  ['receiver', receiver],
  ['air-supply', airSupply],
] as const)('%s looks at a vessel whose stored energy another worksheet warns of', (_, sheet) => {
  expect(judged(sheet).verdict).toBe('good');
  const great = judged(sheet, { vessel: '200' });
  expect(great.verdict).toBe('look');
  expect(great.say).toMatch(/210\skJ.*“What would come out of this vessel at once\?”/);
  // What it would have said stays.
  expect(great.say).toMatch(/regulator|keeps up/);
  expect(judged(sheet, { vessel: '500', full: '40' }).say).toMatch(/3300\skJ/);
});

test('a compressor with a high duty is looked at', () => {
  expect(judged(airSupply, { ...said, delivery: '50' }).verdict).toBe('good');
  for (const delivery of ['45', '33'])
    expect(judged(airSupply, { delivery })).toMatchObject({
      verdict: 'look',
      say: expect.stringMatching(/keeps up, running (72|99)\s%.*half of the time \(from memory\)/),
    });
});

test('foam that drains a quarter while the rest is made is looked at', () => {
  const slow = judged(airSupply, { airFlow: '1' });
  expect(slow).toMatchObject({ verdict: 'look', say: expect.stringContaining('in parts') });
  // About eight minutes to make: within the example's quarter, not within that of a foam that drains sooner.
  expect(judged(airSupply, { ...said, airFlow: '3' }).verdict).toBe('good');
  expect(judged(airSupply, { ...said, airFlow: '3', quarter: '5' }).verdict).toBe('look');
  const sooner = { v: 300, from: drainage.question, by: drainage.id };
  expect(judged(airSupply, { ...said, airFlow: '3' }, { 'foam.quarter': sooner }).verdict).toBe(
    'look',
  );
});

describe('a foam that drains by a line', () => {
  beforeEach(() => {
    for (const key of Object.keys($kept.get())) keep(key, undefined);
  });
  /** Five, ten, fifteen and twenty per cent, a minute apart: a quarter in five, by that line half in ten. */
  const read = (text: string) => {
    const entries: Entries = {
      'foam.drainageMeasure': { t: 'share' },
      'drainage.byShare': { t: text },
      // What it may take from the example is not in these.
      'foam.density': { t: '80' },
      'mix.foamDensity': { t: '80' },
    };
    const reading = readWorksheet(drainage, entries, $kept.get(), metric);
    const found = answer(drainage, reading, metric);
    keepResults(drainage, reading, found, true);
    return found;
  };
  const line = '1\t5\n2\t10\n3\t15\n4\t20';

  test('is judged by that line wherever its quarter or half time is used', () => {
    const found = read(line);
    expect(found.ok && found.numbers).not.toHaveProperty('half');
    expect(found.ok && found.notes.join(' ')).toMatch(/quarter .*5\.0\smin and half .*10\smin/);
    const kept = $kept.get();
    expect(judged(airSupply, { airFlow: '3' }, kept)).toMatchObject({
      verdict: 'look',
      say: expect.stringMatching(/after 5\.0\smin the first of it has lost a quarter/),
    });
    expect(answered(setTime, {}, kept).values.foamTime).toBeCloseTo(600, 6);
  });

  test('is not offered as a curve where one is asked for', () => {
    read(line);
    for (const [sheet, name] of [
      [timeInHand, 'how'],
      [correctBuckets, 'drains'],
    ] as const) {
      const { fields } = readWorksheet(sheet as AnyWorksheet, {}, $kept.get(), metric);
      expect(fields[name]).toMatchObject({ origin: 'kept', value: 'line' });
    }
    // One with a curve is.
    read(String(drainage.fields.byShare.example));
    const { fields } = readWorksheet(timeInHand, {}, $kept.get(), metric);
    expect(fields.how).toMatchObject({ origin: 'kept', value: 'curve' });
  });
});

test('the time span of readings is kept for readings of the reader, not of the example', () => {
  const left = (entries: Entries) => {
    const reading = readWorksheet(drainage, entries, {}, metric);
    const found = answer(drainage, reading, metric);
    mustAnswer(found);
    return drainage.leaves!['foam.drainageSeen']!(found.result as never, reading);
  };
  expect(left({ 'drainage.foamMass': { t: '1' } })).toBeUndefined();
  // Of a hundredth a minute, read for ten: the kilogram is the example's, the minutes are not.
  const own = '2\t0.02\n4\t0.04\n6\t0.06\n8\t0.08\n10\t0.1';
  expect(left({ 'drainage.byMass': { t: own, u: 'kg' } })).toBe(600);
});

test.each([
  ['mass', 'byMass', '2\t2'],
  ['volume', 'byVolume', '2\t2000'],
  ['height', 'byHeight', '2\t200'],
])(
  'more liquid than the foam held, by %s, is refused at the readings in use',
  (measure, list, t) => {
    const entries = { 'foam.drainageMeasure': { t: measure }, [`drainage.${list}`]: { t } };
    const found = answer(drainage, readWorksheet(drainage, entries, {}, metric), metric);
    expect(found).toMatchObject({
      ok: false,
      problems: [{ input: `drainage-${list}`, say: expect.stringContaining('the foam held only') }],
    });
  },
);

test('the limits include the ± of the foam’s density where liquid is read by volume or height', () => {
  const kept = (pm: number) => ({ 'foam.density': { v: 80, pm, from: 'x', by: 'foam-density' } });
  const limits = (measure: string, pm: number) => {
    const { result, notes } = answered(drainage, { measure }, kept(pm));
    const { fit } = result as { fit: { quarterTime: { low: number; high: number } } };
    return { ...fit.quarterTime, notes: notes.join(' ') };
  };
  for (const measure of ['volume', 'height']) {
    const [sure, assumed] = [limits(measure, 0), limits(measure, 15)];
    expect(sure.notes).not.toContain('density');
    expect(assumed.notes).toMatch(/hold the ± of the foam’s density, 15\sg\/L/);
    // The same readings at 65 and at 95 g/L, one ± off, lie well within.
    const at = (t: string) =>
      (answered(drainage, { measure, foamDensity: t }).result as { quarter: number }).quarter;
    expect(assumed.low).toBeLessThan(at('65'));
    expect(assumed.high).toBeGreaterThan(at('95'));
    expect(sure.low).toBeGreaterThan(at('65'));
    expect(sure.high).toBeLessThan(at('95'));
  }
  // Weighed, or worked out by the reader, no share follows it.
  for (const measure of ['mass', 'share']) expect(limits(measure, 15)).toEqual(limits(measure, 0));
});

test('a foam that does not drain gives no time, and is looked at', () => {
  const found = answered(timeInHand, { how: 'line', perMinute: '0' });
  expect(found.numbers).not.toHaveProperty('latest');
  expect(found.judgement).toMatchObject({
    verdict: 'look',
    say: expect.stringMatching(/every foam drains.*as planned/),
  });
  expect(answered(timeInHand, { how: 'line', perMinute: '0.01' }).numbers).toHaveProperty('latest');
});

test('shares typed as fractions are questioned, as per cent are expected', () => {
  const fractions = String(drainage.fields.byShare.example)
    .split('\n')
    .map((line) => line.split('\t'))
    .map(([time, share]) => `${time}\t${Number(share) / 100}`)
    .join('\n');
  const asked = answered(drainage, { measure: 'share', byShare: fractions, error: '0.05' });
  expect(asked.judgement).toMatchObject({
    verdict: 'look',
    say: 'The largest share reads 0.61\u00a0%. Shares are in per cent: for 61\u00a0% type 61. If it is so little, type % behind it.',
  });
  // Little may have drained as yet: what the readings come to stays to be seen, and a sign says that it is so.
  expect(asked.numbers).toHaveProperty('perMinute');
  const meant = fractions.replaceAll('\n', ' %\n');
  const { say } = judged(drainage, { measure: 'share', byShare: meant, error: '0.05' });
  expect(say).not.toContain('type 61');
  // Where they come to nothing there is only that to say.
  expect(judged(drainage, { measure: 'share', byShare: fractions })).toMatchObject({
    verdict: 'stop',
    say: expect.stringContaining('type 61'),
  });
});

test('a foam that loses a quarter within three minutes is not good to blend', () => {
  const readings = (scale: number) =>
    String(drainage.fields.byShare.example)
      .split('\n')
      .map((line) => line.split('\t'))
      .map(([time, share]) => `${Number(time) * scale}\t${share}`)
      .join('\n');
  const at = (scale: number) => judged(drainage, { measure: 'share', byShare: readings(scale) });
  expect(at(1).verdict).toBe('good');
  expect(at(0.35).verdict).toBe('good');
  expect(at(0.1)).toMatchObject({
    verdict: 'look',
    say: expect.stringContaining('too soon to blend'),
  });
});

test.each(['whole', 'volume'])(
  'foam that has lost half of its liquid is stopped, dosed by %s',
  (dose) => {
    const after = (wait: string) => judged(timeInHand, { wait, dose, tolerance: '500' });
    expect(after('21').verdict).toBe('look');
    for (const wait of ['23', '1440'])
      expect(after(wait)).toMatchObject({
        verdict: 'stop',
        say: expect.stringMatching(/liquid has run out.*fresh foam/),
      });
  },
);

test('foam that does not wait comes out as planned, whatever the rounding error', () => {
  for (const dose of ['whole', 'volume', 'mass'])
    expect(judged(timeInHand, { wait: '0', dose }).say).toMatch(/comes out as planned[.;]/);
});

test('foam is called in the standards’ band only where it is', () => {
  const at = (assumed: string) =>
    judged(foamDensity, {
      method: 'weighed',
      vesselKnown: 'typed',
      tare: '0',
      full: assumed,
      vessel: '1',
    }).say;
  for (const kg of ['0.065', '0.069'])
    expect(at(kg)).toContain('lies just above the standards’ band');
  for (const kg of ['0.05', '0.063']) expect(at(kg)).toContain('lies in the standards’ band');
});

describe('the jar of mix', () => {
  /** Readings of so many minutes and kg/m³, in the example's jar of a litre. */
  const read = (...readings: readonly (readonly [number, number])[]) =>
    answered(survivalJar, {
      readings: readings.map(([at, heavy]) => `${at}\t${0.412 + heavy / 1000}`).join('\n'),
    });

  test('is judged by its highest reading, not by its last', () => {
    const { judgement, numbers } = read([0, 600], [5, 643], [15, 618]);
    expect(numbers.gain!.value).toBeCloseTo(43 / 600, 9);
    expect(judgement.verdict).toBe('stop');
    expect(judgement.say).toMatch(/In 5\.0\smin .*7\.2\s% heavier.*killed.*grew lighter between/);
  });

  test('refuses a single reading, asking for a second', () => {
    expect(() => read([0, 600])).toThrow(/^One reading tells no loss\. .*add that\.$/);
  });

  test('that grew lighter between any two readings is looked at', () => {
    for (const readings of [
      [
        [0, 600],
        [5, 618],
        [15, 612],
      ],
      [
        [0, 600],
        [5, 595],
        [15, 610],
      ],
    ] as const)
      expect(read(...readings).judgement).toMatchObject({
        verdict: 'look',
        say: expect.stringContaining('grew lighter between two readings'),
      });
    expect(read([0, 600], [5, 618], [15, 618]).judgement.verdict).toBe('good');
  });

  test('lighter than planned is looked at, as the jar’s weight or volume may be wrong', () => {
    const look = (said: RegExp) => ({ verdict: 'look', say: expect.stringMatching(said) });
    expect(read([0, 486], [5, 490], [15, 498]).judgement).toMatchObject(
      look(
        /^Just blended, the mix weighs 486\skg\/m³, 19\s% below the 600.*came out light.*jar empty/,
      ),
    );
    expect(read([5, 560], [15, 566]).judgement).toMatchObject(look(/566\skg\/m³, 5\.7\s% below/));
    expect(read([0, 572], [5, 575], [15, 580]).judgement.verdict).toBe('good');
  });

  test('first read late is compared with the plan as well', () => {
    expect(read([5, 650], [15, 660]).judgement).toMatchObject({
      verdict: 'look',
      say: expect.stringMatching(/5\.0\smin after blending.*660\skg\/m³, 10\s% above.*600/),
    });
    const little = read([5, 605], [15, 612]).judgement;
    expect(little.verdict).toBe('good');
    expect(little.say).toMatch(/first 5\.0\smin/);
  });

  test('that is heavy when just blended is looked at, as foam may have been lost in blending', () => {
    expect(read([0, 975], [5, 979], [15, 983]).judgement).toMatchObject({
      verdict: 'look',
      say: expect.stringMatching(/Just blended.*975\skg\/m³, 63\s% above.*600.*in the blending/),
    });
    // What it gained since it was blended is the loss that is judged.
    expect(read([0, 620], [15, 645]).judgement.verdict).toBe('good');
  });
});

describe('where the plan lets a share of the foam die', () => {
  const typed = { plannedSurvival: '70' };
  const { numbers } = answered(proportion, typed);
  const by = { from: proportion.question, by: proportion.id };
  const kept: KeptResults = {
    'mix.planned': { v: numbers.wet!.value, ...by },
    'mix.baseDensity': { v: numbers.base!.value, ...by },
    'mix.loadMass': { v: numbers.loadMass!.value, ...by },
  };

  test('foam that waits is calculated with the planned share of gas lost', () => {
    const waited = (wait: string, dose: string) =>
      answered(timeInHand, { ...typed, wait, dose }, kept);
    for (const dose of ['whole', 'volume', 'mass'])
      expect(waited('0', dose).judgement.say).toContain('comes out as planned');
    // 35.5 L a load, of which 36 % of 80 g/L has drained in 15 min, as much again taken by volume.
    const { numbers } = waited('15', 'volume');
    expect(numbers.left!.value).toBeCloseTo(1.05, 2);
    expect(numbers.stays!.value).toBeCloseTo(577, 0);
    const byDensity = (dose: string) =>
      (waited('15', dose).result as { byDensity: number }).byDensity / 60;
    expect(byDensity('volume')).toBeCloseTo(20, 0);
    expect(byDensity('whole')).toBeCloseTo(74, 0);
  });

  test('the loss measured in the jar is added to it', () => {
    const jar = { survives: 'jar', loss: '1', inMix: '3', wait: '0' };
    const [all, some] = [{}, typed].map(
      (more) => answered(timeInHand, { ...jar, ...more }, kept).numbers.stays!.value,
    );
    expect(some).toBeGreaterThan(600);
    // Of less foam more is liquid, so the same share of the gas is as much of the mix.
    expect(some! / all!).toBeCloseTo(1, 1);
    expect(answered(timeInHand, { ...jar, ...typed }, kept).notes[0]).toMatch(/30\s% of the gas/);
  });

  test('the density without gas includes the liquid of lost foam', () => {
    const gasless = (more: Readonly<Record<string, string>>) =>
      (answered(survivalJar, more, kept).result as { gasless: number }).gasless;
    expect(gasless({})).toBeCloseTo(1787.5, 0);
    expect(gasless(typed)).toBeCloseTo(1729, 0);
  });
});

describe('foam on the scale', () => {
  const drained = (full: string, mL: string) =>
    judged(foamDensity, { method: 'weighed', tare: '0.85', full, vessel: '20', drained: mL });

  test('that has drained a quarter is looked at, and past half stopped', () => {
    for (const [full, mL, share] of [
      ['3.05', '600', '27'],
      ['2.45', '500', '31'],
    ] as const)
      expect(drained(full, mL)).toMatchObject({
        verdict: 'look',
        say: expect.stringMatching(new RegExp(`^${share}\\s% of its liquid.*Make fresh foam`)),
      });
    for (const mL of ['900', '1100', '1500'])
      expect(drained('2.45', mL)).toMatchObject({
        verdict: 'stop',
        say: expect.stringContaining('Make fresh foam'),
      });
    expect(drained('2.45', '160').say).not.toContain('fresh foam');
    // Of what was no foam when it was filled, the readings are doubted first.
    expect(drained('0.95', '30').say).toMatch(/hardly foam/);
  });

  test.each(['0.245', '0.84', '0.85'])(
    'refuses a weighing of %s in a list as no full vessel',
    (t) => {
      const entries = {
        [benchKey(foamDensity as AnyWorksheet, 'weighings')]: { t: 'several' },
        [benchKey(foamDensity as AnyWorksheet, 'fulls')]: {
          rows: ['2.45', t, '2.47'].map((kg) => ({ full: { t: kg, u: 'kg' } })),
        },
      };
      expect(answer(foamDensity, readWorksheet(foamDensity, entries, {}, metric), metric)).toEqual({
        ok: false,
        problems: [
          {
            input: 'foam-density-fulls-1-full',
            say: `Weighing 2: read ${t}\u00a0kg; it must be more than the empty vessel, 0.85\u00a0kg. If the scale was set to zero with the empty vessel on it, type 0 for its empty weight. Still the example’s: “Vessel, empty and dry”.`,
          },
        ],
      });
    },
  );
});

test('a receiver emptied below the pressure at which the lance chokes is looked at', () => {
  for (const low of ['0', '0.2', '0.9'])
    expect(judged(receiver, { low })).toMatchObject({
      verdict: 'look',
      say: expect.stringMatching(/not steady for so long: below 0\.90\sbar/),
    });
  expect(judged(receiver, { ...said, low: '0.91' }).verdict).toBe('good');
  // Thinner air outside is choked from lower on.
  expect(judged(receiver, { ...said, low: '0.9', atmosphere: '900' }).verdict).toBe('good');
});

describe('what is kept of a weighed vessel', () => {
  beforeEach(() => {
    for (const key of Object.keys($kept.get())) keep(key, undefined);
  });
  /** A litre by water, every reading of it with this ±. */
  const litre = (p: string) => {
    const typed = { tare: '0.15', filled: '1.149', full: '0.23', temperature: '15' };
    const entries: Entries = {
      'foam.method': { t: 'weighed' },
      'foam.vesselKnown': { t: 'weighed' },
      ...Object.fromEntries(
        Object.entries(typed).map(([name, t]) => [
          benchKey(foamDensity as AnyWorksheet, name),
          { t, s: 'metric', ...(name !== 'full' && { p }) },
        ]),
      ),
    };
    const reading = readWorksheet(foamDensity, entries, {}, metric);
    keepResults(foamDensity, reading, answer(foamDensity, reading, metric), true);
    const { fields } = readWorksheet(correct as AnyWorksheet, {}, $kept.get(), metric);
    return fields.vessel as NumberReading;
  };

  test('includes its ±, also one of 0', () => {
    expect(litre('0')).toMatchObject({ origin: 'kept', pm: 0, pmText: '0' });
    expect(litre('0.001').pm).toBeCloseTo(1.4e-6, 7);
  });
});

test('the ± of a temperature is converted as a difference', () => {
  const weighed = { vesselKnown: 'weighed', temperature: '15' };
  const { numbers, values } = answered(foamDensity, weighed);
  expect(values.temperature).toBeCloseTo(288.15, 6);
  // 19.98 ± 0.2002 kg of water, the fill’s, which weighs 0.15 ‰ less with a degree: 20.0 ± 0.2005 L.
  expect(numbers.volume!.sure!.pm * 1000).toBeCloseTo(0.2005, 3);
});

test('the volume of a vessel found by water has a ± of 1 % of the fill', () => {
  for (const filled of ['20.83', '5.85']) {
    const { value, sure } = answered(foamDensity, { vesselKnown: 'weighed', full: '1.2', filled })
      .numbers.volume!;
    expect(sure!.pm / value).toBeGreaterThan(0.01);
    expect(sure!.pm / value).toBeLessThan(0.012);
  }
});

test('an error in the vessel’s volume is refused at the field that caused it', () => {
  const refused = (typed: Readonly<Record<string, string>>) => {
    const entries: Entries = Object.fromEntries(
      Object.entries({ tare: '0.85', full: '2.45', ...typed }).map(([name, t]) => [
        benchKey(foamDensity as AnyWorksheet, name),
        { t, s: 'metric' },
      ]),
    );
    const found = answer(foamDensity, readWorksheet(foamDensity, entries, {}, metric), metric);
    return found.ok ? [] : found.problems;
  };
  // Full of water lighter than full of foam.
  expect(refused({ vesselKnown: 'weighed', filled: '2.083' })).toEqual([
    {
      input: 'foam-density-filled',
      say: expect.stringMatching(/^Full of water, 2\.083\skg, .* full of foam, 2\.45\skg\./),
    },
  ]);
  expect(refused({ vesselKnown: 'weighed', filled: '20.83' })).toEqual([]);
  // Of several, heavier than only some of them.
  const several: Entries = {
    [benchKey(foamDensity as AnyWorksheet, 'weighings')]: { t: 'several' },
    [benchKey(foamDensity as AnyWorksheet, 'vesselKnown')]: { t: 'weighed' },
    [benchKey(foamDensity as AnyWorksheet, 'filled')]: { t: '2.45', u: 'kg' },
    [benchKey(foamDensity as AnyWorksheet, 'fulls')]: {
      rows: ['2.4', '2.5'].map((t) => ({ full: { t, u: 'kg' } })),
    },
  };
  const found = answer(foamDensity, readWorksheet(foamDensity, several, {}, metric), metric);
  expect(found).toMatchObject({ ok: false, problems: [{ input: 'foam-density-filled' }] });
  expect(refused({ vessel: '1' })).toEqual([
    {
      input: 'foam-density-full',
      say: expect.stringMatching(/, 2\.45\skg, .*by its volume that makes 1\.85\skg/),
    },
  ]);
});

test('refuses a foam whose drained liquid weighs as much as everything in the vessel', () => {
  const weighed = { tare: '0.85', full: '2.45' };
  for (const drained of ['1600', '1600.001', '1700'])
    expect(() => judged(foamDensity, { ...weighed, drained })).toThrow(
      'as much liquid as everything in the vessel weighs, or more',
    );
  expect(judged(foamDensity, { ...weighed, drained: '1500' }).verdict).not.toBe('good');
});

test.each([
  ['plan', proportion],
  ['batch', batch],
])('a %s asks to weigh a foam whose density is only assumed', (_, sheet) => {
  for (const key of Object.keys($kept.get())) keep(key, undefined);
  const planned = (foam: Readonly<Record<string, string>>, typed = {}) => {
    const entries: Entries = Object.fromEntries(
      Object.entries(foam).map(([name, t]) => [benchKey(foamDensity, name), { t, s: 'metric' }]),
    );
    const reading = readWorksheet(foamDensity, entries, {}, metric);
    keepResults(foamDensity, reading, answer(foamDensity, reading, metric), true);
    const own: Entries = Object.fromEntries(
      Object.entries({ waterCement: '0.4', ...typed }).map(([name, t]) => [
        benchKey(sheet, name),
        { t, s: 'metric' },
      ]),
    );
    const kept = $kept.get();
    const found = answer(
      sheet as AnyWorksheet,
      readWorksheet(sheet, own, kept, metric),
      metric,
      kept,
    );
    mustAnswer(found);
    return found.judgement;
  };
  const assumed = { method: 'assumed', assumed: '85' };
  expect(planned(assumed)).toMatchObject({
    verdict: 'look',
    say: expect.stringMatching(/^Weigh the foam before .*: its 85(\.0)?\sg\/L is only assumed\./),
  });
  expect(planned(assumed, { foamDensity: '90' }).say).not.toContain('assumed');
  expect(planned({ method: 'weighed', full: '2.45' }).say).not.toContain('assumed');
});
