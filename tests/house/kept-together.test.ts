import { expect, test } from 'vitest';
import { keptTogether } from '../../src/components/markdown/kept-together.ts';

test.each([
  ['<p>8 L of water, 5 °C and 28 % of it', '<p>8\u00a0L of water, 5\u00a0°C and 28\u00a0% of it'],
  ['<b>3.11 mmol/L</b> or 0.5 m³', '<b>3.11\u00a0mmol/L</b> or 0.5\u00a0m³'],
  ['within 5 minutes, 3 loads, 2 hands', 'within 5 minutes, 3 loads, 2 hands'],
  ['(1.26 in), 2 in³, 7 d at 12 mph', '(1.26\u00a0in), 2\u00a0in³, 7\u00a0d at 12\u00a0mph'],
  ['3 in one, 2 days, 100 kB', '3 in one, 2 days, 100\u00a0kB'],
  ['50 × 50 × 300 mm', '50\u00a0×\u00a050\u00a0×\u00a0300\u00a0mm'],
  ['of a damp room, × 1.20', 'of a damp room, ×\u00a01.20'],
  ['at pH 8.2 and w/c 0.55, a pH and', 'at pH\u00a08.2 and w/c\u00a00.55, a pH and'],
  ['asks for 487 ± 40 kg/m³', 'asks for 487\u00a0±\u00a040\u00a0kg/m³'],
  ['of 80 % ± 3 %', 'of 80\u00a0%\u00a0±\u00a03\u00a0%'],
  ['known to ± <b>5 g</b>', 'known to ±\u00a0<b>5\u00a0g</b>'],
  ['has a ± of its own', 'has a ± of its own'],
  ['<b>311 mg/L CaCO₃</b>', '<b>311\u00a0mg/L\u00a0CaCO₃</b>'],
  ['to ± <b>7 mL (0.2 fl oz)</b>', 'to ±\u00a0<b>7\u00a0mL (0.2\u00a0fl\u00a0oz)</b>'],
  ['<i title="5 mm">1 mm</i>', '<i title="5 mm">1\u00a0mm</i>'],
  ['<textarea>5 min</textarea><code>22 lb</code>', '<textarea>5 min</textarea><code>22 lb</code>'],
])('%s', (html, kept) => {
  expect(keptTogether(html)).toBe(kept);
});
