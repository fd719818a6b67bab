import { expect, test } from 'vitest';
import { keptTogether } from '../../src/components/markdown/kept-together.ts';

test.each([
  ['<p>8 L of water, 5 °C and 28 % of it', '<p>8\u00a0L of water, 5\u00a0°C and 28\u00a0% of it'],
  ['<b>3.11 mmol/L</b> or 0.5 m³', '<b>3.11\u00a0mmol/L</b> or 0.5\u00a0m³'],
  ['within 5 minutes, 3 loads, 2 hands', 'within 5 minutes, 3 loads, 2 hands'],
  ['<i title="5 mm">1 mm</i>', '<i title="5 mm">1\u00a0mm</i>'],
  ['<textarea>5 min</textarea><code>22 lb</code>', '<textarea>5 min</textarea><code>22 lb</code>'],
])('%s', (html, kept) => {
  expect(keptTogether(html)).toBe(kept);
});
