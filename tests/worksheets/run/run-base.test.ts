import { describe, expect, test } from 'vitest';
import { foamWanted, massIn } from '../../../src/worksheets/live/run/run-base.ts';
import { runReadings } from '../../../src/worksheets/live/run/run-readings.ts';
import { batch, plan, say, wanted } from './run-batch.ts';

describe('the foam for what was weighed in', () => {
  test('with nothing weighed in is the plan’s, and called so', () => {
    const foam = wanted({});
    expect(foam).toMatchObject({ is: 'amount' });
    expect(foam.is === 'amount' && foam.volume).toBeCloseTo(plan.foamVolume, 12);
    expect(foam.is === 'amount' && foam.say).toContain('base mix as planned and planned foam');
  });

  // By hand: F = (B − ρt Vb) / (ρt − ρf), B = C + W, Vb = C/3150 + W/1000.
  test.each([
    // B 15.43 kg, Vb 8.6046 L: (15.43 − 5.16276) / 520
    [{ cement: '10', water: '5.43', foamDensity: '80', planned: '600' }, 19.745],
    // B 19.00 kg, Vb 9.7379 L: (19.00 − 5.84276) / 480
    [{ cement: '13.57', water: '5.43', foamDensity: '120', planned: '600' }, 27.411],
    // The same, foam of 77.5: 13.15724 / 522.5
    [{ cement: '13.57', water: '5.43', foamDensity: '77.5', planned: '600' }, 25.181],
  ] as const)('%o wants %d L', (readings, litres) => {
    const foam = wanted(readings);
    expect(foam.is === 'amount' && foam.volume * 1000).toBeCloseTo(litres, 2);
    expect(foam.is === 'amount' && foam.say).toBe(
      `For the base mix you weighed in and foam of ${say(Number(readings.foamDensity), 'density', { units: { metric: 'g/L', us: 'lb/ft3' } })}, to come out at 600\u00a0kg/m³.`,
    );
  });

  test('gives the planned density', () => {
    const foam = wanted({ cement: '10', water: '5.43', foamDensity: '95', planned: '450' });
    const volume = foam.is === 'amount' ? foam.volume : 0;
    expect((15.43 + 95 * volume) / (10 / 3150 + 5.43 / 1000 + volume)).toBeCloseTo(450, 9);
  });

  test('is found without a plan when every amount is entered, and not with fewer', () => {
    const all = { cement: '10', water: '5.43', sand: '0', foamDensity: '80', planned: '600' };
    expect(foamWanted(runReadings(batch(all), say), undefined, say).is).toBe('amount');
    const { water: _, ...less } = all;
    expect(foamWanted(runReadings(batch(less), say), undefined, say).is).toBe('unknown');
    // Nor while it is not said that no sand goes in: it may be half of the base mix.
    const { sand: __, ...unsanded } = all;
    expect(foamWanted(runReadings(batch(unsanded), say), undefined, say).is).toBe('unknown');
  });

  test('has no amount for a base mix that is too light, a foam too heavy or a refused reading, but a reason', () => {
    expect(wanted({ cement: '1', water: '50', planned: '1600' })).toMatchObject({
      is: 'refused',
      say: expect.stringContaining('foam only makes it lighter'),
    });
    expect(wanted({ foamDensity: '700', planned: '600' })).toMatchObject({
      is: 'refused',
      say: expect.stringContaining('no amount of it gets there'),
    });
    expect(wanted({ cement: '9000' })).toMatchObject({
      is: 'refused',
      say: expect.stringContaining('Cement: read 9000\u00a0kg; it must be at most 5000\u00a0kg.'),
    });
  });
});

test('all that went into the mixer: base mix, its foam, and what corrected it', () => {
  const weighed = { cement: '10', water: '5', foamDensity: '80', planned: '600' };
  const went = (more: object) =>
    massIn(runReadings(batch({ ...weighed, ...more }), say), plan, say);
  // Of foam that nobody wrote down as much as is wanted: (15 − 600 × 8.1746 L) ÷ 520, 19.414 L.
  expect(went({})).toBeCloseTo(16.553, 3);
  expect(went({ foamVolume: '20' })).toBeCloseTo(16.6, 9);
  expect(went({ foamVolume: '20', foamAdded: '5', baseAdded: '1' })).toBeCloseTo(18, 9);
  // None makes a base mix of 1835 kg/m³ heavier.
  expect(went({ planned: '2500' })).toBeCloseTo(15, 9);
});
