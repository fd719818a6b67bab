import { expect, test } from 'vitest';
import { scaleLinear } from '../../src/islands/plots/scale.ts';

test('a scale takes its span to where the picture is drawn', () => {
  const scale = scaleLinear([0, 2000], [50, 250]);
  expect(scale(0)).toBe(50);
  expect(scale(500)).toBe(100);
  expect(scale.range()).toEqual([50, 250]);
});

test('its numbers carry no thousands mark and the true minus', () => {
  const scale = scaleLinear([-2000, 4000], [0, 1]);
  const format = scale.tickFormat(4);
  expect(scale.ticks(4).map(format)).toEqual(['\u22122000', '0', '2000', '4000']);
});

test('its ends move out to round numbers', () => {
  expect(scaleLinear([0.3, 97], [0, 1]).nice(4).ticks(4)).toEqual([0, 20, 40, 60, 80, 100]);
});

test('a span of nothing falls in the middle', () => {
  expect(scaleLinear([7, 7], [0, 10])(7)).toBe(5);
});
