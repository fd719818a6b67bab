import { describe, expect, test } from 'vitest';
import { stripWindow } from '../../../src/core/demould/strip-window.ts';
import { expectLimits } from '../refuses.ts';

const DAY = 86400;
/** Strengths that can be worked out by hand. */
const grown = (low: number, high: number) => ({
  strength: (t: number) => ({
    low: (low * t) / (28 * DAY),
    high: high * Math.sqrt(t / (28 * DAY)),
  }),
  age: (t: number) => ({ low: t, high: t }),
});

describe('a strip window by hand', () => {
  const asked = {
    ...grown(420e3, 480e3),
    stress: { low: 30e3, high: 45e3 },
    within: 28 * DAY,
    floor: 0,
  };

  test('half the strength is reached at the ages worked out by hand', () => {
    const { earliest, latest, notes } = stripWindow(asked);
    // (1/8)² and 3/14 of 28 days, to a second.
    expect(Math.abs(earliest! - (28 / 64) * DAY)).toBeLessThanOrEqual(1);
    expect(Math.abs(latest! - 6 * DAY)).toBeLessThanOrEqual(1);
    expect(notes).toEqual([]);
  });

  test('where all the strength may be used, the window is earlier', () => {
    const { needed, latest } = stripWindow({ ...asked, share: 1 });
    expect(needed).toEqual({ low: 30e3, high: 45e3 });
    expect(Math.abs(latest! - 3 * DAY)).toBeLessThanOrEqual(1);
  });

  test('a smaller share allowed at the later end moves that end alone', () => {
    const { needed, earliest, latest } = stripWindow({ ...asked, share: 1, sure: 0.5 });
    expect(needed).toEqual({ low: 30e3, high: 90e3 });
    expect(Math.abs(earliest! - (28 / 256) * DAY)).toBeLessThanOrEqual(1);
    expect(Math.abs(latest! - 6 * DAY)).toBeLessThanOrEqual(1);
  });

  test('a strength reached exactly at the end of the search counts as reached', () => {
    expect(stripWindow({ ...asked, within: 6 * DAY }).latest).toBeDefined();
    const short = stripWindow({ ...asked, within: 5.9 * DAY });
    expect(short).not.toHaveProperty('latest');
    const none = stripWindow({ ...asked, within: 0.4 * DAY });
    expect(none).not.toHaveProperty('earliest');
  });

  test('refuses reversed bands, and strengths and times of 0 or less', () => {
    const flat = {
      stressLow: 30e3,
      stressHigh: 45e3,
      share: 0.5,
      sure: 0.1,
      floor: 3600,
      within: DAY,
    };
    expectLimits(
      ({ stressLow, stressHigh, ...more }: typeof flat) =>
        stripWindow({
          ...grown(420e3, 480e3),
          stress: { low: stressLow, high: stressHigh },
          ...more,
        }),
      flat,
      {
        stressLow: { takes: [45e3], refuses: [0, -1, 46e3], as: 'stress' },
        stressHigh: { takes: [30e3], refuses: [29e3], as: 'stress' },
        share: { takes: [1], refuses: [0, -0.1, 1.01] },
        sure: { takes: [0.5], refuses: [0, -0.1, 0.51] },
        floor: { takes: [0], refuses: [-1] },
        within: { refuses: [0, -1] },
      },
    );
  });
});
