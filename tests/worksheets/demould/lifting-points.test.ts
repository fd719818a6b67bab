import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import LiftingPoints from '../../../src/worksheets/live/lifting-points.tsx';

test('the hold sliders keep a twenty-fifth of the length between the holds', () => {
  expect(renderToString(h(LiftingPoints, {}))).toMatch(/<input [^>]*max="0\.48"/);
});

/**
 * 1.2 × 600 kg/m³ × 9.807 m/s² × 0.06 m = 424 Pa bends it. Held a tenth of 0.45 m in from each end, its
 * middle has (0.8² − 4 × 0.1²) = 0.6 of the moment q L²/8 it would have by its ends, and the tension is
 * 6 × 0.6 × 424 × 0.45²/(8 × 0.06²) = 10.7 kPa.
 */
test('the slab beside the slider has the same dynamic factor as in the worksheet on handling', () => {
  expect(renderToString(h(LiftingPoints, {})).replaceAll('\u00a0', ' ')).toContain(
    'Tension as it is carried 10.7 kPa',
  );
});
