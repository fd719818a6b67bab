import { describe, expect, test } from 'vitest';
import { inBuckets } from '../../../src/core/mix/loads.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import { vesselWords } from '../../../src/worksheets/live/sheet/sheet-buckets.ts';
import { buckets, foamMeasures } from '../../../src/worksheets/shared/mix/buckets.ts';
import { weighedOut } from '../../../src/worksheets/shared/words/as-said.ts';
import { say, wanted } from '../run/run-batch.ts';

describe('the foam by other measures', () => {
  const measures = (of: Parameters<typeof foamMeasures>[2], litres = 11.48, system = 'metric') =>
    foamMeasures(litres / 1000, 70, of, speaker(system as 'metric')).replaceAll('\u00a0', ' ');

  test('less than a bucket: its weight, and the reading of the filled bucket', () => {
    // 11.48 × 0.070 kg, and the bucket’s own 0.62.
    expect(measures({ tare: 0.62, vessel: 0.012 })).toBe(
      'By weight 804 g: the bucket then reads 1.42 kg.',
    );
    expect(measures({ tare: 0.62, vessel: 0.012 }, 11.48, 'us')).toBe(
      'By weight 1.77 lb = 1 lb 12.3 oz: the bucket then reads 3.14 lb = 3 lb 2.2 oz.',
    );
  });

  test('more than one: the number of full buckets, and the reading of the last', () => {
    // 28.8 − 24 L; 4.8 × 0.070 + 0.62 kg.
    expect(measures({ tare: 0.62, vessel: 0.012 }, 28.8)).toBe(
      'By weight 2.02 kg, by the bucket 2 full and 4.80 L: the last then reads 0.96 kg.',
    );
    expect(measures({ tare: 0.62, vessel: 0.012 }, 24)).toBe(
      'By weight 1.68 kg, by the bucket 2 full.',
    );
  });

  test('a little foam in a small vessel is given in grams, not rounded to 10 g', () => {
    // 1.08 × 0.070 kg on 0.095.
    expect(measures({ tare: 0.095, vessel: 0.00205 }, 1.08)).toBe(
      'By weight 75.6 g: the bucket then reads 171 g.',
    );
    expect(measures({ tare: 0.095, vessel: 0.00205 }, 1.08, 'us')).toBe(
      'By weight 2.67 oz: the bucket then reads 6.02 oz.',
    );
    const [vessel, foam] = [
      { tare: 0.095, vessel: 0.00205 },
      { foam: 70, mix: 600 },
    ];
    const words = vesselWords(vessel, vessel, foam, { foam: 0.00108, mix: 0.002 }, say);
    expect(words.replaceAll('\u00a0', ' ')).toMatch(
      /^Bucket: 0\.095 kg empty, 2\.05 L to the brim\. Full of foam it weighs 0\.239 kg/,
    );
  });

  test('the amount to weigh out is the one that the plan shows', () => {
    const said = (kg: number, us = false) => {
      const voice = us ? speaker('us') : say;
      return voice(kg, 'mass', weighedOut(kg, voice)).replaceAll('\u00a0', ' ');
    };
    expect(said(0.7083)).toBe('708 g');
    expect(said(13.5714)).toBe('13.57 kg');
    expect(said(0.7083, true)).toBe('1.56 lb');
  });

  test('a bucket without weight or volume is not mentioned', () => {
    expect(measures({ tare: undefined, vessel: 0.012 }, 28.8)).toBe(
      'By weight 2.02 kg, by the bucket 2 full and 4.80 L.',
    );
    expect(measures({ tare: 0.62, vessel: undefined })).toBe('By weight 804 g.');
  });

  test('stand beside the litres that this base mix wants', () => {
    const foam = wanted({
      cement: '10',
      water: '5.43',
      foamDensity: '80',
      tare: '0.85',
      vessel: '20',
    });
    // 19.745 L, 1.5796 kg.
    expect(foam.is === 'amount' && foam.measures.replaceAll('\u00a0', ' ')).toBe(
      'By weight 1.58 kg: the bucket then reads 2.43 kg.',
    );
  });

  test('the buckets of a sheet add up to the amount above', () => {
    const of = (litres: number) => buckets(inBuckets(litres / 1000, 0.012), 0.012, say);
    expect(of(11.48)).toBe(say(0.01148, 'volume', { units: { metric: 'L', us: 'gal' } }));
    expect(of(28.62)).toBe('2\u00a0full and 4.62\u00a0L');
    expect(of(24)).toBe('2\u00a0full');
    expect(of(0)).toBe('none');
  });
});
