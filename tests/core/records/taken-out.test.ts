import { describe, expect, test } from 'vitest';
import { reconcile } from '../../../src/core/records/reconcile.ts';
import { inMixer, judgeCorrected } from '../../../src/core/records/taken-out.ts';
import { judgeBatch } from '../../../src/core/records/verdict.ts';

/** 10.5 kg of base mix, 5.5 L of it without air, and 7.75 L of foam of 80: 11.12 kg. Weighed in the end at 600. */
const batch = {
  ...{ cement: 7.5, water: 3, sand: 0, foamVolume: 0.00775, foamDensity: 80 },
  ...{ foamAdded: 0.0078, baseAdded: 0, tare: 1, full: 7, vessel: 0.01 },
  ...{ cementDensity: 3000, waterDensity: 1000 },
};
const u = { cement: 0.01, water: 0.01, foamVolume: 0.0005, foamDensity: 1, full: 0.01 };
const out = [{ weighed: 1000, out: 0.92, foam: 0.0078 }];

describe('mix taken out before a correction', () => {
  test('is subtracted with its shares of every ingredient', () => {
    // 10.2 of 11.12 kg stay, and 7.8 L of foam of 80 make them 10.824 kg: 18.04 L at 600.
    const { survival, yield: made, massIn } = judgeCorrected(batch, u, out);
    expect(made).toBeCloseTo(0.01804 + 0.00092, 9);
    expect(massIn).toBeCloseTo(11.12 + 0.624, 9);
    // Without gas 6.12 L × 10.2/11.12 + 0.624 L; gas brought 7.13 L × 10.2/11.12 + 7.176 L.
    const [airless, gas] = [6.12 * (10.2 / 11.12) + 0.624, 7.13 * (10.2 / 11.12) + 7.176];
    expect(survival).toBeCloseTo((18.04 - airless) / gas, 6);
    expect(survival).toBeCloseTo(0.8605, 4);
    expect(survival).toBeLessThan(reconcile(batch).survival - 0.02);
  });

  test('of 0 changes nothing', () => {
    expect(judgeCorrected(batch, u, [{ weighed: 1000, foam: 0.0078 }])).toEqual(
      judgeBatch(batch, u),
    );
  });

  test('a second time includes its share of what was added in between', () => {
    // Half of 11.12 kg goes and 4.44 kg of base mix come: 10 kg, of which a tenth goes.
    const twice = [
      { weighed: 500, out: 5.56, base: 4.44 },
      { weighed: 800, out: 1, foam: 0.002 },
    ];
    const found = inMixer({ ...batch, foamAdded: 0.002, baseAdded: 4.44 }, twice);
    expect(found.share).toBeCloseTo(0.45, 9);
    expect(found.batch.cement).toBeCloseTo(0.45 * 7.5, 9);
    expect(found.batch.foamVolume).toBeCloseTo(0.45 * 0.00775, 9);
    expect(found.batch.baseAdded).toBeCloseTo(0.9 * 4.44, 9);
    expect(found.batch.foamAdded).toBeCloseTo(0.002, 9);
    expect(found.volume).toBeCloseTo(5.56 / 500 + 1 / 800, 9);
    expect(found.mass).toBeCloseTo(6.56, 9);
  });

  test('takes its share of fibre and pigment along', () => {
    // 0.5 kg of them, 0.2 L: 11.62 kg, of which 10.7 stay.
    const all = { ...batch, further: 0.5, furtherVolume: 0.0002 };
    const stays = 10.7 / 11.62;
    const { share, batch: there } = inMixer(all, out);
    expect(share).toBeCloseTo(stays, 9);
    expect(there.further).toBeCloseTo(stays * 0.5, 9);
    expect(there.furtherVolume).toBeCloseTo(stays * 0.0002, 12);
    const { survival, massIn } = judgeCorrected(all, u, out);
    expect(massIn).toBeCloseTo(11.62 + 0.624, 9);
    const [mass, airless] = [10.7 + 0.624, 6.32 * stays + 0.624];
    expect(survival).toBeCloseTo((mass / 0.6 - airless) / (7.13 * stays + 7.176), 6);
  });

  test('is subtracted from what was left over, at most all of it', () => {
    const left = (leftOver: number) => inMixer({ ...batch, leftOver }, out).batch.leftOver;
    expect(left(1.5)).toBeCloseTo(0.58, 9);
    expect(left(0.5)).toBe(0);
  });

  test('keeps a total of additions that was corrected by hand', () => {
    const added = (of: object) => {
      const { foamAdded, baseAdded } = inMixer({ ...batch, ...of }, out).batch;
      return [foamAdded, baseAdded];
    };
    expect(added({ foamAdded: 0.009 })[0]).toBeCloseTo(0.009, 9);
    expect(added({ baseAdded: 0.5 })).toEqual([expect.closeTo(0.0078, 9), 0.5]);
  });

  test('the error of a first reading refers to the whole batch', () => {
    const heavy = { ...batch, full: 19 };
    const { suspects, finding } = judgeCorrected(heavy, u, out);
    expect(finding).toBe('heavier-than-airless');
    const { by, doubts } = suspects.find(({ reading }) => reading === 'cement')!;
    expect(Math.abs(by) / u.cement).toBeCloseTo(doubts, 9);
  });

  test('of unknown density leaves only the yield undefined', () => {
    const lost = [{ ...out[0]!, weighed: 0 }];
    const { yield: made, ...rest } = judgeCorrected(batch, u, lost);
    const { yield: _, ...known } = judgeCorrected(batch, u, out);
    expect(made).toBeUndefined();
    expect(rest).toEqual(known);
    // One known beside it does not make up for it.
    const more = { weighed: 900, out: 0.5 };
    expect(inMixer(batch, [...lost, more]).volume).toBeUndefined();
    expect(inMixer(batch, [more, ...lost]).volume).toBeUndefined();
  });

  test('of more than there was, or a negative amount, is refused', () => {
    const refused = (of: object) => () => inMixer(batch, [{ weighed: 1000, out: 1, ...of }]);
    const by = (quantity: string) => expect.objectContaining({ quantity });
    expect(refused({ out: 11.13 })).toThrow(by('takenOut'));
    expect(refused({ out: -1 })).toThrow(by('takenOut'));
    expect(refused({ weighed: -1 })).toThrow(by('weighedBefore'));
    expect(refused({ out: 11.11 })).not.toThrow();
    expect(() => inMixer(batch, [{ weighed: 0 }, ...out])).not.toThrow();
  });
});
