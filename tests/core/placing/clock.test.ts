import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type DayPlan, dayClock } from '../../../src/core/placing/clock.ts';

const minutes = (m: number) => m * 60;
const plan: DayPlan = {
  loads: 3,
  base: minutes(6),
  foam: minutes(2),
  blend: minutes(2),
  weigh: minutes(3),
  place: minutes(4),
  foamMade: 'each',
  hands: 1,
  foamLasts: minutes(8),
  mixLasts: minutes(15),
  joint: minutes(30),
};
const time = fc.integer({ min: 0, max: 30 }).map(minutes);
const plans = fc.record({
  loads: fc.integer({ min: 1, max: 8 }),
  base: time,
  foam: time,
  blend: time,
  weigh: time,
  place: time,
  foamMade: fc.constantFrom('each' as const, 'once' as const),
  hands: fc.constantFrom(1 as const, 2 as const),
  foamLasts: fc.constant(minutes(8)),
  mixLasts: fc.constant(minutes(15)),
  joint: fc.constant(minutes(30)),
});

describe('the clock of a day', () => {
  test('one worker does one step after the other', () => {
    const { total, loads, obstacles } = dayClock(plan);
    expect(total).toBe(3 * minutes(6 + 2 + 2 + 3 + 4));
    expect(loads.map(({ foamAge }) => foamAge)).toEqual([minutes(4), minutes(4), minutes(4)]);
    expect(obstacles).toEqual([]);
  });

  test('a wait exactly at its limit is not too long, whatever the rounding error', () => {
    // 4.1 min are 245.99999999999997 s.
    const tight = {
      ...plan,
      base: minutes(10),
      foam: minutes(0.1),
      blend: minutes(4),
      weigh: minutes(0.1),
      place: minutes(0.2),
      foamLasts: minutes(4.1),
      mixLasts: minutes(0.3),
      joint: minutes(14.4),
    };
    expect(dayClock(tight).obstacles).toEqual([]);
    const codes = (change: Partial<DayPlan>) =>
      dayClock({ ...tight, ...change }).obstacles.map(({ code }) => code);
    expect(codes({ foamLasts: minutes(4.09) })).toEqual(['foam-too-old']);
    expect(codes({ mixLasts: minutes(0.29) })).toEqual(['mix-waits']);
    expect(codes({ joint: minutes(14.39) })).toEqual(['cold-joint']);
  });

  test('a second worker makes the next base mix while the first weighs and places', () => {
    const { loads } = dayClock({ ...plan, hands: 2 });
    // The base (6) takes less than weighing and placing (7): the mixer is free at 17, foam then.
    expect(loads[1]!.foamReady).toBe(minutes(17 + 2));
  });

  test('foam made all at once is made before the first load, and waits until the last', () => {
    // Base till 6, foam for three till 12, blended 14, placed 21; then base, blend, weigh and place, 15 each.
    const { loads, total } = dayClock({ ...plan, foamMade: 'once' });
    expect(loads).toEqual(
      [
        { load: 1, start: 0, foamReady: 12, blended: 14, placed: 21, foamAge: 8 },
        { load: 2, start: 21, foamReady: 27, blended: 29, placed: 36, foamAge: 23 },
        { load: 3, start: 36, foamReady: 42, blended: 44, placed: 51, foamAge: 38 },
      ].map(({ load, ...at }) => ({
        load,
        ...Object.fromEntries(Object.entries(at).map(([name, m]) => [name, minutes(m)])),
      })),
    );
    expect(total).toBe(minutes(51));
  });

  test('foam made all at once waits too long in later loads, and fresh foam is advised', () => {
    const { obstacles, remedies } = dayClock({ ...plan, foamMade: 'once' });
    expect(obstacles.map(({ code }) => code)).toContain('foam-too-old');
    expect(remedies).toContain('foam-for-each-load');
  });

  test('a plan that cannot work gives no remedy that does not help', () => {
    const { obstacles, remedies } = dayClock({ ...plan, foam: minutes(60) });
    expect(obstacles.length).toBeGreaterThan(0);
    expect(remedies).toEqual([]);
  });

  test('fewer pieces are advised where one load alone would work, and not where one takes too long', () => {
    expect(dayClock({ ...plan, foamMade: 'once' }).remedies).toContain('fewer-pieces');
    expect(dayClock({ ...plan, joint: minutes(10) }).remedies).toContain('fewer-pieces');
    for (const loads of [1, 3])
      expect(dayClock({ ...plan, loads, foam: minutes(8) }).remedies).not.toContain('fewer-pieces');
  });

  test('the time of larger loads grows in proportion, and they are advised only if that works', () => {
    // 160 L in two loads of 80: in one, its foam takes 10 minutes and is 12 old when it is in.
    const two = { ...plan, loads: 2, foam: minutes(5), joint: minutes(15) };
    expect(dayClock(two).obstacles.map(({ code }) => code)).toEqual(['cold-joint']);
    expect(dayClock(two).remedies).not.toContain('a-larger-mixer');
    expect(dayClock({ ...two, foamLasts: minutes(12) }).remedies).toContain('a-larger-mixer');
    // In one load there is no joint; placing it takes 8 minutes, and 11 pass until it is placed.
    const mixLasts = (m: number) =>
      dayClock({ ...two, foamLasts: minutes(12), mixLasts: minutes(m) }).remedies;
    expect(mixLasts(11)).toContain('a-larger-mixer');
    expect(mixLasts(10)).not.toContain('a-larger-mixer');
  });

  test('loads larger by half, of three made two: all the foam once, made ready as the base mix is', () => {
    // Age of the foam in the second load: 6 foam, 2 blending, 3 weighing, 6 placing, 9 base mix, 2 blending.
    const once = { ...plan, foamMade: 'once' as const, foamLasts: minutes(28) };
    expect(dayClock(once).remedies).toContain('a-larger-mixer');
    expect(dayClock({ ...once, foamLasts: minutes(28) - 1 }).remedies).not.toContain(
      'a-larger-mixer',
    );
  });

  test('a second worker never makes the day longer, and loads come in order', () => {
    fc.assert(
      fc.property(plans, (p) => {
        const alone = dayClock({ ...p, hands: 1 });
        expect(dayClock({ ...p, hands: 2 }).total).toBeLessThanOrEqual(alone.total);
        for (const [i, next] of alone.loads.slice(1).entries())
          expect(next.placed).toBeGreaterThanOrEqual(alone.loads[i]!.placed);
        for (const { foamAge } of alone.loads) expect(foamAge).toBeGreaterThanOrEqual(0);
      }),
    );
  });
});
