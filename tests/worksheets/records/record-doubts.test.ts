import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { openRecord } from '../../../src/bench/records/migrate.ts';
import { type BatchRecord, blankRecord } from '../../../src/bench/records/record.ts';
import { BatchOutcome } from '../../../src/worksheets/live/records/BatchOutcome.tsx';
import { demoBatches } from '../../../src/worksheets/live/records/demo-batches.ts';
import { observe } from '../../../src/worksheets/live/records/lessons.ts';
import { crossProblem, readFields } from '../../../src/worksheets/live/records/RecordFields.tsx';
import {
  isDoubted,
  recordBaseDoubt,
  recordPlanDoubt,
} from '../../../src/worksheets/live/records/record-doubts.ts';
import { balanceOf } from '../../../src/worksheets/live/records/record-numbers.ts';
import { recordStrengthDoubts } from '../../../src/worksheets/live/records/record-strength-doubts.ts';
import { but, say, sound, verdicts } from './sound-record.ts';

afterEach(() => vi.unstubAllGlobals());

/** The same batch with water and cement written down the wrong way round. */
const swapped = but({
  water: sound!.readings.cement!.t!,
  cement: sound!.readings.water!.t!,
});

test('a ± in a unit of another kind is refused beside its field, and counts as unreadable', () => {
  const pm = (p: string, pu: string) => ({
    ...sound!,
    readings: { ...sound!.readings, foamDensity: { ...sound!.readings.foamDensity, p, pu } },
  });
  const [other, unread] = [pm('1', 'kg'), pm('none', 'g/L')];
  expect(openRecord(other)).toMatchObject({ ok: true });
  expect(balanceOf(other)).toEqual(balanceOf(unread));
  expect(balanceOf(other)).not.toEqual(balanceOf(pm('3', 'g/L')));
  const { foamDensity } = readFields(other, say);
  expect(foamDensity).toMatchObject({ pmProblem: expect.stringContaining('‘kg’') });
});

describe('water and cement in a record', () => {
  test('swapped are stopped, and teach nothing of the foam', () => {
    expect(verdicts(sound!).map(({ verdict }) => verdict)).toEqual(['good']);
    expect(verdicts(swapped)).toEqual([
      { verdict: 'stop', say: expect.stringContaining('water and cement swapped') },
    ]);
    expect(observe(sound!).survival).toBeDefined();
    expect(observe(swapped).survival).toBeUndefined();
  });

  test('are compared with the plan saved with them', () => {
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

  test('are questioned before the rest is entered', () => {
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

  test('and is missing is asked for; 0 counts as none, empty only where none was planned', () => {
    expect(balanceOf(sandy('0.5'))).toEqual({ ok: false, missing: ['sand'], refused: [] });
    for (const record of [
      sandy('0'),
      sandy(''),
      { ...sandy('0.5'), readings: { ...sound!.readings, sand: { t: '0', u: 'kg' } } },
    ])
      expect(balanceOf(record)).toMatchObject({ ok: true, verdict: { finding: 'consistent' } });
  });
});

describe('what was added while correcting', () => {
  const corrected = (foamAdded: string) => ({
    ...but({ foamAdded }),
    corrections: [{ weighed: 680, foam: 0.002 }],
  });

  test('and is 0 by its reading contradicts the correction, and is stopped', () => {
    expect(verdicts(corrected('0'))).toEqual([
      {
        verdict: 'stop',
        say: expect.stringMatching(/^“Foam added while correcting” says none, and a correction/),
      },
    ]);
    expect(verdicts(corrected(''))).toEqual([]);
  });

  test('and is unreadable is refused, and not also asked for', () => {
    expect(balanceOf(corrected('some'))).toEqual({
      ok: false,
      missing: [],
      refused: ['foamAdded'],
    });
  });
});

test('a remainder below what was taken out before a correction is questioned', () => {
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

  test('is looked at, however well its readings agree', () => {
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

  // Of a litre, with a vessel of 200 mL, on the scale that is assumed until its own ± is typed.
  const small = (full: string, p?: string) => ({
    ...sound!,
    corrections: [],
    readings: Object.fromEntries(
      (
        [
          ['planned', '400', 'kg/m3'],
          ['cement', '198', 'g', p],
          ['water', '99', 'g', p],
          ['foamDensity', '65', 'g/L'],
          ['foamVolume', '690', 'mL'],
          ['tare', '85', 'g', p],
          ['full', full, 'g', p],
          ['vessel', '200', 'mL'],
        ] as const
      ).map(([name, t, u, p]) => [name, { t, u, s: 'metric', ...(p && { p, pu: u }) }]),
    ),
  });

  test.each(['173', '169'])('says instead that the ± is too wide to tell, of %s g', (full) => {
    const [first, ...more] = verdicts(small(full)).map(({ say }) => say);
    expect(first).toMatch(
      /^Type the ± of your own scale .* within ±\s71\skg\/m³ they cannot tell whether this is the 400\skg\/m³ that was planned\./,
    );
    expect(more).toEqual([]);
  });

  test('says so too where the balance cannot be worked out', () => {
    const record = small('173');
    const { cement: _, ...readings } = record.readings;
    expect(balanceOf({ ...record, readings }).ok).toBe(false);
    expect(recordPlanDoubt({ ...record, readings }, say)).toEqual(recordPlanDoubt(record, say));
  });

  test('says how far off it is once the scale’s own ± is typed', () => {
    expect(verdicts(small('173', '1')).map(({ say }) => say)).toEqual([
      expect.stringContaining('440\u00a0kg/m³ where 400\u00a0kg/m³ was planned, 10\u00a0% heavier'),
    ]);
    expect(verdicts(small('169', '1')).map(({ verdict }) => verdict)).toEqual(['good']);
  });

  test('a cupful of foam added to a litre leaves the survival known', () => {
    const record = small('167', '1');
    const foamAdded = { t: '60', u: 'mL', s: 'metric' } as const;
    expect(
      verdicts({ ...record, readings: { ...record.readings, foamAdded } }).map(({ say }) => say),
    ).toEqual([expect.stringMatching(/^The readings agree: 90\s±\s3\s%/)]);
  });

  test('is not told for a density that other readings contradict', () => {
    const wrong = but({ full: '11' });
    expect(recordPlanDoubt(wrong, say)).toBeDefined();
    expect(verdicts(wrong).map(({ verdict }) => verdict)).toEqual(['stop']);
  });
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
  '%s of %s %s is refused with its limit, at its field and below',
  (name, t, u, words) => {
    const record = { ...sound!, readings: { ...sound!.readings, [name]: { t, u } } };
    expect(crossProblem(record, name, say)).toBe(words);
    expect(crossProblem(sound!, name, say)).toBeUndefined();
    const page = renderToString(h(BatchOutcome, { record, say }));
    expect(page).toContain(words);
  },
);

test('a batch is marked in lists exactly where its page tells to check a reading', () => {
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
