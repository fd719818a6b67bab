import { describe, expect, test } from 'vitest';
import { type BatchRecord, blankRecord } from '../../../src/bench/records/record.ts';
import { demoBatches } from '../../../src/worksheets/live/records/demo-batches.ts';
import { learnFrom, observe } from '../../../src/worksheets/live/records/lessons.ts';
import { recordDryDoubt } from '../../../src/worksheets/live/records/record-doubts.ts';
import { recordStrengthDoubts } from '../../../src/worksheets/live/records/record-strength-doubts.ts';
import { publishedFor } from '../../../src/worksheets/live/records/record-strengths.ts';
import { but, say, sound, verdicts } from './sound-record.ts';

describe('a dried piece', () => {
  test('a dry density above that of the fresh mix is never good', () => {
    // 20 L of 1200 kg/m³ from a mix of about 630.
    const heavy = but({ dryMass: '24', dryVolume: '20' });
    expect(verdicts(heavy)).toEqual([
      { verdict: 'look', say: expect.stringContaining('weighs 1200\u00a0kg/m³, more than the 6') },
    ]);
    expect(recordDryDoubt(sound!, say)).toBeUndefined();
  });

  test('is compared with the bucket alone, where nothing else is known', () => {
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
  // Too young by the clock, however old that warmth makes it.
  const early = (t: string) => {
    const hot = cured(t);
    return verdicts({ ...hot, readings: { ...hot.readings, stripAge: { t: '10', u: 'h' } } });
  };
  expect(early('63')[0]!.say).toMatch(
    /^While it cured, 63\s°C .* It came out clean 10\sh after casting, .*younger than 16\sh.* Look again at both/,
  );
  expect(early('40')[0]!.say).toMatch(
    /^It came out clean 10\sh after casting, .* Look again at it/,
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
        /over 5 times \S+\skPa, the most for its density, as worked out from the crushing strengths published at 28\sdays\. Look/,
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
    // But not a hundredth of it: 0.23 MPa under a heading in kPa.
    expect(said(tested('bend', '0.23', 'kPa', '3'))).toEqual([
      expect.stringMatching(/^Bending strength: read 0\.23\skPa, less than a fifth of /),
    ]);
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
