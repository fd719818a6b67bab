import { describe, expect, test } from 'vitest';
import { adviceOn, anotherMixNote } from '../../../src/worksheets/live/run/run-advice.ts';
import { runReadings } from '../../../src/worksheets/live/run/run-readings.ts';
import { doubtWords, spentWords } from '../../../src/worksheets/shared/mix/correction-advice.ts';
import { batch, plan, say } from './run-batch.ts';

describe('what to do with the blend', () => {
  const weighedIn = { cement: '13.57', water: '5.43', foamDensity: '80', foamVolume: '25.3' };
  const on = (density: number, made: number, readings = weighedIn) =>
    adviceOn({ density, target: 600, made }, runReadings(batch(readings), say), plan, say);

  test.each([
    [630, 0, 'leave'],
    [570, 2, 'leave'],
    [640, 0, 'add'],
    [640, 1, 'add'],
    [640, 2, 'place'],
    [660, 2, 'place'],
    [661, 2, 'another-mix'],
    [541, 2, 'place'],
    [483, 2, 'another-mix'],
    [483, 3, 'another-mix'],
    [2000, 0, 'refused'],
    [70, 0, 'refused'],
    // 600 read in pounds and taken for kilograms, and the other way round.
    [600 * 2.2046, 0, 'weigh-again'],
    [600 / 2.2046, 0, 'weigh-again'],
    [600 / 2.2046, 2, 'weigh-again'],
  ])('%d kg/m³ of 600 after %d corrections: %s', (density, made, is) => {
    expect(on(density, made)?.is).toBe(is);
  });

  test('the foam to add is for the amounts weighed in', () => {
    // By hand: M = 15.43 + 0.080 × 19.745 = 17.0096 kg; F = M (1 − 600/660) / 520.
    const advice = on(660, 0, { ...weighedIn, cement: '10', foamVolume: '19.745' });
    expect(advice?.is === 'add' && advice.fix.foamVolume * 1000).toBeCloseTo(2.974, 3);
  });

  test('a mix that no correction can bring to its target is told what to do with', () => {
    const advice = on(600 * 2.2046, 0)!;
    expect(doubtWords(advice, say)?.say).toMatch(
      /If it is right, .*do not correct it, place it where nothing is asked of it, or set it aside\.$/,
    );
  });

  test('a mix off by a fifth is not to be placed as it is, with the reason', () => {
    const light = spentWords({ is: 'another-mix', off: 480 / 600 - 1 }, 600, say);
    expect(light.verdict).toBe('stop');
    expect(light.say).toMatch(/^It is 20\s% lighter than planned, so expect it weaker\./);
    expect(light.say).toContain('not for the part that needs 600\u00a0kg/m³');
    const heavy = spentWords({ is: 'another-mix', off: 0.2 }, 600, say).say;
    expect(heavy).toContain('so expect it to insulate less');
    expect(heavy.match(/heavier/g)).toHaveLength(1);
    expect(spentWords({ is: 'place', off: 0.08 }, 600, say).say).toContain('place it as it is');
    expect(anotherMixNote(483, -0.2, say)).toMatch(/^483\skg\/m³ after two corrections, 20\s%/);
  });
});
