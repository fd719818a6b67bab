import { describe, expect, test } from 'vitest';
import { stripAfterBars } from '../../../src/core/demould/strip-after-bars.ts';
import { stripWindow } from '../../../src/core/demould/strip-window.ts';
import { expectLimits } from '../refuses.ts';

const DAY = 86400;
/** A part of the strength at 28 days that can be worked out by hand. */
const gain = {
  slow: (age: number) => age / (28 * DAY),
  fast: (age: number) => Math.sqrt(age / (28 * DAY)),
};
const clock = (elapsed: number) => elapsed;
const growth = { gain, adjustedAge: { slow: clock, fast: clock } };

describe('a strip window by hand', () => {
  const asked = {
    ...growth,
    stress: { low: 30e3, high: 45e3 },
    strength28: { low: 420e3, high: 480e3 },
    within: 28 * DAY,
    floor: 0,
  };

  test('half the strength: 60 of 480 kPa by the fast curve, 90 of 420 by the slow', () => {
    const { earliest, latest, notes } = stripWindow(asked);
    // (1/8)² and 3/14 of 28 days, to a second.
    expect(Math.abs(earliest! - (28 / 64) * DAY)).toBeLessThanOrEqual(1);
    expect(Math.abs(latest! - 6 * DAY)).toBeLessThanOrEqual(1);
    expect(notes).toEqual([{ code: 'growth-not-validated', of: 'gain' }]);
  });

  test('all the strength, when that share may be used, is reached sooner', () => {
    const { needed, latest } = stripWindow({ ...asked, share: 1 });
    expect(needed).toEqual({ low: 30e3, high: 45e3 });
    expect(Math.abs(latest! - 3 * DAY)).toBeLessThanOrEqual(1);
  });

  test('what is reached just where the search ends is reached', () => {
    expect(stripWindow({ ...asked, within: 6 * DAY }).latest).toBeDefined();
    const short = stripWindow({ ...asked, within: 5.9 * DAY });
    expect(short).not.toHaveProperty('latest');
    expect(short.notes.slice(1)).toEqual([{ code: 'not-reached', of: 'latest' }]);
    const none = stripWindow({ ...asked, within: 0.4 * DAY });
    expect(none).not.toHaveProperty('earliest');
    expect(none.notes[1]).toEqual({ code: 'not-reached', of: 'earliest' });
  });

  test('each band stands upright above nought, and each time is above it', () => {
    const flat = {
      stressLow: 30e3,
      stressHigh: 45e3,
      strengthLow: 420e3,
      strengthHigh: 480e3,
      share: 0.5,
      floor: 3600,
      within: DAY,
    };
    expectLimits(
      ({ stressLow, stressHigh, strengthLow, strengthHigh, ...more }: typeof flat) =>
        stripWindow({
          ...growth,
          stress: { low: stressLow, high: stressHigh },
          strength28: { low: strengthLow, high: strengthHigh },
          ...more,
        }),
      flat,
      {
        stressLow: { takes: [45e3], refuses: [0, -1, 46e3], as: 'stress' },
        stressHigh: { takes: [30e3], refuses: [29e3], as: 'stress' },
        strengthLow: { takes: [480e3], refuses: [0, -1, 481e3], as: 'strength28' },
        strengthHigh: { takes: [420e3], refuses: [419e3], as: 'strength28' },
        share: { takes: [1], refuses: [0, -0.1, 1.01] },
        floor: { takes: [0], refuses: [-1] },
        within: { refuses: [0, -1] },
      },
    );
  });
});

describe('after bars of two days', () => {
  const asked = {
    ...growth,
    tested: { low: 200e3, high: 200e3 },
    testedAt: 2 * DAY,
    within: 28 * DAY,
    floor: 0,
  };
  const window = (stress: number, more: object = {}) =>
    stripAfterBars({ ...asked, stress: { low: stress, high: stress }, ...more });

  test('half as much again is wanted: 3 days by the one curve, 4.5 by the other', () => {
    const { earliest, latest, needed, notes } = window(150e3);
    expect(Math.abs(earliest! - 3 * DAY)).toBeLessThanOrEqual(1);
    expect(Math.abs(latest! - 4.5 * DAY)).toBeLessThanOrEqual(1);
    expect(needed).toEqual({ low: 300e3, high: 300e3 });
    expect(notes).toEqual([{ code: 'growth-not-validated', of: 'gain' }]);
  });

  test('half is wanted: half a day by the one, a day by the other', () => {
    const { earliest, latest } = window(50e3);
    expect(Math.abs(earliest! - 0.5 * DAY)).toBeLessThanOrEqual(1);
    expect(Math.abs(latest! - DAY)).toBeLessThanOrEqual(1);
  });

  test('the part’s own age counts, not the clock’s', () => {
    // Twice as old as the clock says, by both: the ratio of the ages is the same.
    const twice = (elapsed: number) => 2 * elapsed;
    const { earliest } = window(150e3, { adjustedAge: { slow: twice, fast: twice } });
    expect(Math.abs(earliest! - 3 * DAY)).toBeLessThanOrEqual(1);
  });

  test('one curve that gets there gives an earliest and no latest, neither gives none', () => {
    const one = window(150e3, { within: 4 * DAY });
    expect(one.earliest).toBeDefined();
    expect(one).not.toHaveProperty('latest');
    const none = window(150e3, { within: 2.5 * DAY });
    expect(none).not.toHaveProperty('earliest');
    expect(none).not.toHaveProperty('latest');
  });

  test('a curve that says nothing at the test is refused', () => {
    const nought = () => 0;
    for (const still of [
      { slow: nought, fast: gain.fast },
      { slow: gain.slow, fast: nought },
    ])
      expect(() => window(150e3, { gain: still })).toThrow(
        expect.objectContaining({ quantity: 'gain', value: 0 }),
      );
    expect(() => window(150e3, { testedAt: -1 })).toThrow('testedAt');
  });
});
