import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import { ACTION_RATE, EVAPORATION_ACCURACY } from '../../../src/core/curing/evaporation.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import { MeasureBars } from '../../../src/worksheets/curing/drawn/MeasureBars.tsx';

test('the ± of the longest bar ends inside the picture', () => {
  const rate = ACTION_RATE * 3;
  const html = renderToString(
    h(MeasureBars, {
      measures: [{ measure: 'nothing', rate, saved: 0, state: 'act' }],
      names: { nothing: 'As it is', shade: '', windbreak: '', 'cooler-mix': '', sheet: '' },
      limitShare: 0.5,
      say: speaker('metric'),
    }),
  );
  const [, from, to] = /class="whisker" d="M([\d.]+) [\d.]+H([\d.]+)"/.exec(html)!.map(Number);
  const [, left, right] = /class="axis" d="M([\d.]+) 0H([\d.]+)"/.exec(html)!.map(Number);
  expect(to!).toBeLessThan(right!);
  expect((to! - left!) / (from! - left!)).toBeCloseTo(
    (1 + EVAPORATION_ACCURACY) / (1 - EVAPORATION_ACCURACY),
    6,
  );
});
