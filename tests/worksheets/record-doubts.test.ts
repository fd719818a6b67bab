import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { openRecord } from '../../src/bench/records/migrate.ts';
import type { ReadingName } from '../../src/bench/records/readings.ts';
import { type BatchRecord, blankRecord } from '../../src/bench/records/record.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import { worded } from '../../src/islands/parts/Results.tsx';
import { PERCENT } from '../../src/worksheets/shared/amounts.ts';
import { BatchOutcome, judgementsOf } from '../../src/worksheets/shared/BatchOutcome.tsx';
import { demoBatches } from '../../src/worksheets/shared/demo-batches.ts';
import { learnFrom, observe, summaryOf } from '../../src/worksheets/shared/lessons.ts';
import { crossProblem, readFields } from '../../src/worksheets/shared/RecordFields.tsx';
import {
  isDoubted,
  recordBaseDoubt,
  recordDryDoubt,
  recordFoamDoubt,
  recordPlanDoubt,
} from '../../src/worksheets/shared/record-doubts.ts';
import { reckon } from '../../src/worksheets/shared/record-numbers.ts';
import { recordStrengthDoubts } from '../../src/worksheets/shared/record-strength-doubts.ts';
import { publishedFor } from '../../src/worksheets/shared/record-strengths.ts';
import { weighedDensity } from '../../src/worksheets/shared/record-words.ts';

afterEach(() => vi.unstubAllGlobals());

const say = speaker('metric');
const [sound] = demoBatches();
const UNITS: Partial<Record<ReadingName, string>> = { dryVolume: 'L', foamAdded: 'L' };
const but = (readings: Partial<Record<ReadingName, string>>): BatchRecord => ({
  ...sound!,
  readings: {
    ...sound!.readings,
    ...Object.fromEntries(
      Object.entries(readings).map(([name, t]) => [
        name,
        { t, u: UNITS[name as ReadingName] ?? 'kg', s: 'metric' as const },
      ]),
    ),
  },
});
const verdicts = (record: BatchRecord) =>
  judgementsOf(record, reckon(record), say, recordStrengthDoubts(record, say));
/** The same batch with water and cement written down the wrong way round. */
const swapped = but({
  water: sound!.readings.cement!.t!,
  cement: sound!.readings.water!.t!,
});

test('a ± in a unit of something else is refused beside its field, and counts as one that cannot be read', () => {
  const pm = (p: string, pu: string) => ({
    ...sound!,
    readings: { ...sound!.readings, foamDensity: { ...sound!.readings.foamDensity, p, pu } },
  });
  const [other, unread] = [pm('1', 'kg'), pm('none', 'g/L')];
  expect(openRecord(other)).toMatchObject({ ok: true });
  expect(reckon(other)).toEqual(reckon(unread));
  expect(reckon(other)).not.toEqual(reckon(pm('3', 'g/L')));
  const { foamDensity } = readFields(other, say);
  expect(foamDensity).toMatchObject({ pmProblem: expect.stringContaining('‘kg’') });
});

describe('water and cement in a record', () => {
  test('swapped, nothing is good, and it teaches nothing of the foam', () => {
    expect(verdicts(sound!).map(({ verdict }) => verdict)).toEqual(['good']);
    expect(verdicts(swapped)).toEqual([
      { verdict: 'stop', say: expect.stringContaining('water and cement swapped') },
    ]);
    expect(observe(sound!).survival).toBeDefined();
    expect(observe(swapped).survival).toBeUndefined();
  });

  test('are held against the plan that was saved with them', () => {
    const plan = (water: number) => ({
      'mix.water': { v: water, from: '', at: '' },
      'mix.cement': { v: 30, from: '', at: '' },
    });
    const with_ = (water: number) => ({ ...sound!, kept: plan(water) }) as unknown as BatchRecord;
    expect(recordBaseDoubt(with_(12), say)).toBeUndefined();
    // 0.40 where 0.50 is planned.
    expect(recordBaseDoubt(with_(15), say)?.say).toContain('0.40, where 0.50 is planned');
    expect(verdicts(with_(15)).map(({ verdict }) => verdict)).toEqual(['look']);
    // A fifth of the cement is fly ash, which is weighed by itself: 5.43 kg to 13.57/0.8 kg of both is 0.32.
    const blend = { ...plan(12), 'mix.portland': { v: 24, from: '', at: '' } };
    const blended = { ...sound!, kept: blend } as unknown as BatchRecord;
    expect(recordBaseDoubt(blended, say)?.say).toContain(
      '0.32, what stands in for cement counted, where 0.40 is planned',
    );
  });

  test.each([
    // With 9 kg of cement and 21 kg of slag to 13.2 kg of water, 1.47 of the cement alone.
    ['as planned', '13.2', undefined],
    ['a fifth more', '15.8', 'look'],
    // 1.33 of both, where base mixes for foam have 1.25 at most.
    ['three times as much', '39.9', 'stop'],
  ])('of 70 %% slag, %s', (_, water, verdict) => {
    const kept = {
      'mix.water': { v: 13.2, from: '' },
      'mix.cement': { v: 30, from: '' },
      'mix.portland': { v: 9, from: '' },
    };
    const record = { ...but({ cement: '9', water }), kept };
    expect(recordBaseDoubt(record, say)?.verdict).toBe(verdict);
  });

  test('are doubted before the rest is written down', () => {
    const { water, cement } = swapped.readings;
    const early = blankRecord({ readings: { water: water!, cement: cement! } });
    expect(verdicts(early)).toHaveLength(1);
    expect(recordBaseDoubt(blankRecord({ readings: { water: water! } }), say)).toBeUndefined();
    const none = blankRecord({ readings: { water: water!, cement: { ...cement!, t: '0' } } });
    expect(recordBaseDoubt(none, say)?.verdict).toBe('stop');
  });
});

describe('sand that was planned', () => {
  const sandy = (t: string) => ({ ...sound!, bench: { 'mix.sandCement': { t } } });

  test('and not written down is asked for: 0 is none, and empty is none only where none was planned', () => {
    expect(reckon(sandy('0.5'))).toEqual({ ok: false, missing: ['sand'], refused: [] });
    for (const record of [
      sandy('0'),
      sandy(''),
      { ...sandy('0.5'), readings: { ...sound!.readings, sand: { t: '0', u: 'kg' } } },
    ])
      expect(reckon(record)).toMatchObject({ ok: true, verdict: { finding: 'consistent' } });
  });
});

describe('what was added while correcting', () => {
  const corrected = (foamAdded: string) => ({
    ...but({ foamAdded }),
    corrections: [{ weighed: 680, foam: 0.002 }],
  });

  test('and is none by its reading contradicts the correction, and is not asked for as if it were empty', () => {
    expect(verdicts(corrected('0'))).toEqual([
      {
        verdict: 'stop',
        say: expect.stringMatching(/^“Foam added while correcting” says none, and a correction/),
      },
    ]);
    expect(verdicts(corrected(''))).toEqual([]);
  });

  test('and cannot be is refused, and not asked for too', () => {
    expect(reckon(corrected('some'))).toEqual({ ok: false, missing: [], refused: ['foamAdded'] });
  });
});

test('less left over than was taken out before a correction is asked about', () => {
  const taken = (leftOver: string) => ({
    ...but({ foamAdded: '3', leftOver }),
    corrections: [{ weighed: 700, out: 3, foam: 0.003 }],
  });
  const said = (leftOver: string) => verdicts(taken(leftOver)).map(({ say }) => say);
  expect(said('1')).toContainEqual(
    expect.stringContaining('says 1.0\u00a0kg, and 3.0\u00a0kg was taken out'),
  );
  expect(said('2.98')).not.toContainEqual(expect.stringContaining('taken out'));
  expect(said('')).not.toContainEqual(expect.stringContaining('taken out'));
});

describe('a mix that missed its plan', () => {
  const planned = (t: string) => ({
    ...sound!,
    readings: { ...sound!.readings, planned: { t, u: 'kg/m3', s: 'metric' as const } },
  });

  test('is not good, however well its readings agree', () => {
    // 646 kg/m³ is 20 % over 538 and 15 % under 760.
    expect(verdicts(planned('538'))).toEqual([
      {
        verdict: 'look',
        say: expect.stringMatching(/where 538\u00a0kg\/m³ was planned, 20\u00a0% heavier/),
      },
    ]);
    expect(verdicts(planned('760'))).toEqual([
      { verdict: 'look', say: expect.stringContaining('15\u00a0% lighter') },
    ]);
    expect(verdicts(planned('590')).map(({ verdict }) => verdict)).toEqual(['good']);
    const { planned: _, ...readings } = sound!.readings;
    expect(recordPlanDoubt({ ...sound!, readings }, say)).toBeUndefined();
  });

  test('is not said of a density that the other readings contradict', () => {
    const wrong = but({ full: '11' });
    expect(recordPlanDoubt(wrong, say)).toBeDefined();
    expect(verdicts(wrong).map(({ verdict }) => verdict)).toEqual(['stop']);
  });
});

test('a full bucket lighter than the empty one is told at its field', () => {
  const light = but({ tare: '0.85', full: '0.5' });
  expect(crossProblem(light, 'full', say)).toBe(
    'Bucket, full of blended mix: read 0.5\u00a0kg; it must be more than the bucket weighs empty, 0.85\u00a0kg.',
  );
  expect(crossProblem(sound!, 'full', say)).toBeUndefined();
});

test('more taken out before a correction than was in the mixer is refused by its name', () => {
  vi.stubGlobal('document', { body: { dataset: {} } });
  const record = {
    ...but({ foamAdded: '3' }),
    corrections: [{ weighed: 700, out: 30, foam: 0.003 }],
  };
  expect(renderToString(h(BatchOutcome, { record, say }))).toContain(
    'Mix taken out: read 30\u00a0kg; it must be less than 20.973\u00a0kg',
  );
});

test.each([
  ['foamVolume', '0', 'L', 'Foam put in: read 0\u00a0L; it must be more than 0\u00a0L.'],
  [
    'foamDensity',
    '1000',
    'g/L',
    'Foam density: read 1000\u00a0g/L; it must be less than 1000\u00a0g/L.',
  ],
  ['cement', '0', 'kg', 'Cement: read 0\u00a0kg; it must be more than 0\u00a0kg.'],
] as const)(
  '%s of %s %s is refused with what it must be, at its field and below',
  (name, t, u, words) => {
    const record = { ...sound!, readings: { ...sound!.readings, [name]: { t, u } } };
    expect(crossProblem(record, name, say)).toBe(words);
    expect(crossProblem(sound!, name, say)).toBeUndefined();
    const page = renderToString(h(BatchOutcome, { record, say }));
    expect(page).toContain(words);
  },
);

test('of a bucket too heavy for any gas no gas is told', () => {
  vi.stubGlobal('document', { body: { dataset: {} } });
  const page = (record: BatchRecord) => renderToString(h(BatchOutcome, { record, say }));
  expect(page(sound!)).toContain('Gas in the mix');
  // A bucket of 20 mL.
  const tiny = but({});
  const vessel = { t: '20', u: 'mL', s: 'metric' as const };
  const told = page({ ...tiny, readings: { ...tiny.readings, vessel } });
  expect(told).not.toContain('Gas in the mix');
  expect(told).not.toContain('Foam that survived');
  expect(told).not.toContain('Yield');
  expect(told).toMatch(
    /At 6\d\d\s000\skg\/m³ the bucket is heavier.*“bucket’s volume” at least \d/s,
  );
});

describe('a dried piece', () => {
  test('heavier than the fresh mix is never good', () => {
    // 20 L of 1200 kg/m³ from a mix of about 630.
    const heavy = but({ dryMass: '24', dryVolume: '20' });
    expect(verdicts(heavy)).toEqual([
      { verdict: 'look', say: expect.stringContaining('weighs 1200\u00a0kg/m³, more than the 6') },
    ]);
    expect(recordDryDoubt(sound!, say)).toBeUndefined();
  });

  test('is held against the bucket alone, when that is all there is', () => {
    const { tare, full, vessel } = sound!.readings;
    const { dryMass, dryVolume } = but({ dryMass: '24', dryVolume: '20' }).readings;
    const few = blankRecord({
      readings: {
        tare: tare!,
        full: full!,
        vessel: vessel!,
        dryMass: dryMass!,
        dryVolume: dryVolume!,
      },
    });
    expect(verdicts(few)).toHaveLength(1);
    expect(
      recordDryDoubt(blankRecord({ readings: { dryMass: dryMass!, dryVolume: dryVolume! } }), say),
    ).toBeUndefined();
  });

  test('is so by a twentieth as by twice, and then held against no published strength', () => {
    // 600 kg/m³, and a piece of 20 L of 630.
    const weighed = { tare: '0.85', full: '12.85', dryMass: '12.6' };
    const [vessel, dryVolume] = [sound!.readings.vessel!, { t: '20', u: 'L' }];
    const mix = but(weighed);
    const record = {
      ...mix,
      readings: { ...mix.readings, vessel: { ...vessel, t: '20' }, dryVolume },
    };
    expect(recordDryDoubt(record, say)).toMatchObject({
      verdict: 'look',
      say: expect.stringMatching(/^Dried, the piece weighs 630\skg\/m³, more than the 600\skg\/m³/),
    });
    expect(publishedFor(record)).toBeUndefined();
    const lighter = { ...record.readings, dryMass: { t: '11.9', u: 'kg' } };
    expect(publishedFor({ ...record, readings: lighter })).toBeDefined();
  });

  test('of contradictory readings is told beside them', () => {
    const both = but({ dryMass: '24', dryVolume: '20', full: '11' });
    expect(verdicts(both).map(({ verdict }) => verdict)).toEqual(['look', 'stop']);
  });
});

test('the share that survived is said with its result’s own digits: never 100 % of what is 103 ± 2', () => {
  const light = but({ full: '12.6' });
  const reckoned = reckon(light);
  if (!reckoned.ok) throw new Error(reckoned.missing.join(', '));
  const { survival, u } = reckoned.verdict;
  const sure = { pm: u.survival, mostFrom: undefined };
  const shown = worded(survival, { label: '', kind: 'ratio', units: PERCENT }, sure, 'metric');
  expect(verdicts(light).at(-1)!.say).toContain(
    `${shown.number}\u00a0±\u00a0${shown.pm}\u00a0% of the foam’s gas`,
  );
});

describe('a strength far outside what is published for its density', () => {
  const tested = (name: 'crush' | 'bend', t: string, u: string, age = '28'): BatchRecord => ({
    ...sound!,
    readings: { ...sound!.readings, [name]: { t, u }, [`${name}Age`]: { t: age, u: 'd' } },
  });
  const said = (record: BatchRecord) => recordStrengthDoubts(record, say).map(({ say }) => say);
  const { crush } = sound!.readings;

  test('is a slip, most likely of its unit: it is doubted, and teaches nothing', () => {
    const slip = tested('crush', '90', 'MPa');
    expect(verdicts(slip)).toEqual([
      {
        verdict: 'look',
        say: expect.stringMatching(/^Crushing strength: read 90\u00a0MPa, over 5/),
      },
    ]);
    expect(observe(sound!).strength).toBeDefined();
    expect(observe(slip).strength).toBeUndefined();
    expect(learnFrom([slip]).lessons.find(({ lesson }) => lesson === 'strength')!.from).toEqual([]);
    expect(said(tested('crush', crush!.t!, 'kPa'))).toEqual([
      expect.stringMatching(
        /^Crushing strength: read \S+\sMPa, less than a fifth of \S+\sMPa, the least published at 28\sdays for its density\. Look again/,
      ),
    ]);
    expect(said(tested('bend', '23', 'MPa'))).toEqual([
      expect.stringMatching(
        /over 5 times \S+\skPa, the most for its density, as reckoned from the crushing strengths published at 28\sdays\. Look/,
      ),
    ]);
    expect(said(tested('bend', '2.3', 'kPa'))).toEqual([
      expect.stringContaining('less than a fifth of'),
    ]);
  });

  test('five times out it is, four times it is not', () => {
    const { low, high } = publishedFor(sound!)!;
    const at = (pascal: number) => said(tested('crush', String(pascal), 'Pa'));
    expect(at(4 * high)).toEqual([]);
    expect(at(5.1 * high)).toHaveLength(1);
    expect(at(low / 4)).toEqual([]);
    expect(at(low / 5.1)).toHaveLength(1);
  });

  test('a young piece may be weak, and one not dried is held against the most alone', () => {
    expect(said(tested('bend', '2.3', 'kPa', '3'))).toEqual([]);
    // From three weeks on it counts as one of 28 days.
    expect(said(tested('bend', '2.3', 'kPa', '20.9'))).toEqual([]);
    expect(said(tested('bend', '2.3', 'kPa', '21.1'))).toHaveLength(1);
    const { dryMass: _, ...readings } = sound!.readings;
    const undried = (t: string, u: string) => ({
      ...sound!,
      readings: { ...readings, crush: { t, u } },
    });
    expect(said(undried('2', 'kPa'))).toEqual([]);
    expect(said(undried('90', 'MPa'))).toHaveLength(1);
  });

  test('is said beside readings that contradict each other, of which the plan’s density is not', () => {
    const both = tested('crush', '90', 'MPa');
    const wrong = { ...both, readings: { ...both.readings, full: { t: '11', u: 'kg' } } };
    const words = verdicts(wrong).map(({ say }) => say);
    expect(words.filter((say) => say.startsWith('Crushing strength: read 90'))).toHaveLength(1);
    expect(words.filter((say) => say.includes('was planned'))).toEqual([]);
  });

  test('no invented batch is doubted', () => {
    expect(demoBatches().flatMap(said)).toEqual([]);
  });
});

describe('a bucket by which the mix is none', () => {
  // Before cement is written down nothing contradicts it.
  const { cement: _, ...rest } = sound!.readings;
  const of = (name: 'full' | 'vessel', t: string, u: string): BatchRecord => ({
    ...sound!,
    readings: { ...rest, [name]: { t, u, s: 'metric' } },
  });

  test.each([
    [
      'full',
      '134.4',
      'kg',
      /^Wet density: read \S+\skg\/m³; it must be at most 4000\skg\/m³\. Look at/,
    ],
    ['full', '1', 'kg', /it must be at least 100\skg\/m³/],
    ['vessel', '20', 'mL', /it must be at most 4000/],
  ] as const)(
    '%s of %s %s is asked about, and neither planned on nor learned from',
    (name, t, u, words) => {
      const wrong = of(name, t, u);
      expect(crossProblem(wrong, 'full', say)).toMatch(words);
      expect(weighedDensity(wrong)).toBeUndefined();
      expect(observe(wrong).landing).toBeUndefined();
      expect(verdicts(wrong)).toEqual([]);
      expect(isDoubted(wrong, say)).toBe(true);
      expect(crossProblem(sound!, 'full', say)).toBeUndefined();
    },
  );
});

test('a piece lighter than the cement in it is doubted', () => {
  // Of 646 kg/m³ by the bucket 13.57 kg in 20.97 are cement: 418 kg/m³, a tenth of which is left open.
  const dried = (dryMass: string) => recordDryDoubt(but({ dryMass, dryVolume: '5' }), say);
  expect(dried('0.25')?.say).toMatch(
    /weighs 50\.0\skg\/m³, less than the 418\skg\/m³ of the cement/,
  );
  expect(dried('1.86')?.verdict).toBe('look');
  expect(dried('1.89')).toBeUndefined();
  // Of 13 kg of sand with a tenth of water 11.7 are solid: 25.27 of 33.97 kg, at 17 kg in 20 L.
  const damp = but({ sand: '13', full: '17.85', dryMass: '0.25', dryVolume: '5' });
  const lies = { ...damp, kept: { ...damp.kept, 'mix.sandFree': { v: 0.1, from: '' } } };
  expect(recordDryDoubt(lies, say)?.say).toMatch(/less than the 632\skg/);
});

test('a top that sank by more than a tenth is looked at, for the mix in the form is denser', () => {
  const sank = (sunk: string) => ({
    ...sound!,
    readings: { ...sound!.readings, depth: { t: '60', u: 'mm' }, sunk: { t: sunk, u: 'mm' } },
  });
  expect(verdicts(sank('6')).map(({ verdict }) => verdict)).toEqual(['good']);
  expect(verdicts(sank('6.1'))).toEqual([
    { verdict: 'look', say: expect.stringContaining('sank by 10\u00a0% of the depth') },
  ]);
  expect(observe(sank('6')).settling).toBeCloseTo(0.1, 12);
  expect(observe(sank('6.1')).settling).toBeUndefined();
});

test('a cure so warm as nobody means one is looked at, and teaches no age', () => {
  const record = demoBatches().find((batch) => observe(batch).stripAge !== undefined)!;
  const cured = (t: string) => ({
    ...record,
    readings: { ...record.readings, cureTemperature: { t, u: 'degC' } },
  });
  expect(verdicts(cured('40')).map(({ verdict }) => verdict)).toEqual(['good']);
  expect(observe(cured('40')).stripAge).toBeDefined();
  // 63 °F typed as °C.
  expect(verdicts(cured('63'))).toEqual([
    { verdict: 'look', say: expect.stringMatching(/63\s°C .*teaches no age for stripping/) },
  ]);
  expect(observe(cured('63')).stripAge).toBeUndefined();
});

test('what is no foam is doubted, first weighed or again', () => {
  const foam = (name: 'foamDensity' | 'foamLater', t: string) => ({
    ...sound!,
    readings: {
      ...sound!.readings,
      foamLaterAfter: { t: '10', u: 'min' },
      [name]: { t, u: 'g/L' },
    },
  });
  const said = (record: BatchRecord) => recordFoamDoubt(record, say)?.say ?? '';
  expect(said(foam('foamDensity', '8'))).toMatch(/^Foam of 8\S*\sg\/L is hardly foam/);
  expect(said(foam('foamLater', '7'))).toMatch(/^Foam weighed again of 7\S*\sg\/L is hardly foam/);
  expect(observe(foam('foamLater', '7')).drift).toBeUndefined();
  expect(observe(foam('foamLater', '70')).drift).toBeDefined();
  expect(observe(foam('foamDensity', '249')).drift).toBeDefined();
  expect(observe(foam('foamDensity', '251')).drift).toBeUndefined();
});

test('what is to be looked at again beside others is what the page of the batch says to', () => {
  const doubted = (record: BatchRecord) =>
    isDoubted(record, say, recordStrengthDoubts(record, say));
  const none = { ...but({ foamAdded: '0' }), corrections: [{ weighed: 680, foam: 0.002 }] };
  const strong = but({});
  const wrong = [
    swapped,
    none,
    // No full bucket weighs less than the empty one.
    but({ tare: '14', full: '13.4' }),
    but({ full: 'abc' }),
    but({ full: '11' }),
    but({ dryMass: '24', dryVolume: '20' }),
    { ...strong, readings: { ...strong.readings, crush: { t: '92', u: 'MPa' } } },
  ];
  expect(wrong.map(doubted)).toEqual(wrong.map(() => true));
  expect(demoBatches().map(doubted)).toEqual(demoBatches().map(() => false));
  // It missed its plan, or nothing more is written down: no reading of it need be wrong.
  const planned = { t: '538', u: 'kg/m3', s: 'metric' as const };
  const missed = { ...strong, readings: { ...strong.readings, planned } };
  expect([missed, blankRecord()].map(doubted)).toEqual([false, false]);
});

describe('a foam weighed again', () => {
  const twice = (later: string, after: string) =>
    blankRecord({
      readings: {
        foamDensity: { t: '80', u: 'g/L', s: 'metric' },
        foamLater: { t: later, u: 'g/L', s: 'metric' },
        foamLaterAfter: { t: after, u: 'min', s: 'metric' },
      },
    });

  // Two weighings to 1 g/L tell 1.41; a quarter in four hours is as much of 80 g/L in 14.9 min.
  test.each([
    ['80', '3', false],
    ['79.2', '10', false],
    ['80', '14.8', false],
    ['80', '15', true],
    ['79', '30', true],
    ['78.6', '30', true],
    ['78.5', '30', false],
    ['78', '25', false],
    ['60', '10', false],
    // In hours every foam loses more than that.
    ['78', '120', true],
    ['78.5', '180', true],
    ['60', '120', false],
    // Heavier, however soon.
    ['81.4', '3', false],
    ['81.5', '3', true],
  ])('80, then %s after %s min: weighed with its liquid %s', (later, after, with_) => {
    const record = twice(later, after);
    expect(recordFoamDoubt(record, say)?.verdict).toBe(with_ ? 'look' : undefined);
    expect(isDoubted(record, say)).toBe(with_);
    // What two such weighings cannot tell apart teaches nothing either.
    expect('drift' in observe(record)).toBe(!with_ && 80 - Number(later) > 1.42);
  });

  test('teaches nothing where it kept its liquid, however many batches say so', () => {
    const same = [twice('80', '20'), twice('80', '20'), twice('80', '20')];
    expect(summaryOf(learnFrom(same)).values).not.toHaveProperty('foam.drained');
    expect(summaryOf(learnFrom([twice('72', '10')])).values['foam.drained']!.n).toBe(1);
    for (const record of demoBatches()) expect(recordFoamDoubt(record, say)).toBeUndefined();
  });
});
