import { expect, test } from 'vitest';
import { pointsAligned } from '../../src/components/markdown/points-aligned.ts';

const table = (...rows: string[][]) =>
  `<div class="scroll" tabindex="0"><table><thead><tr><th scope="col">1\u00a0N</th><th scope="col">2000</th></tr></thead><tbody>${rows
    .map((row) => `<tr>${row.map((cell) => `<td>${cell}</td>`).join('')}</tr>`)
    .join('')}</tbody></table></div>`;
const shown = (...rows: string[][]) => {
  const text = pointsAligned(table(...rows));
  return [...text.matchAll(/<td>(.*?)<\/td>/g)].map(([, cell]) => cell!.replaceAll('\u2007', '_'));
};

test('the numbers of a column that share a unit stand with their points below each other', () => {
  expect(shown(['5\u00a0%', '8.5'], ['100\u00a0%', '\u221212'], ['never', '0.15'])).toEqual([
    '__5\u00a0%',
    '__8.5',
    '100\u00a0%',
    '\u221212',
    'never',
    '__0.15',
  ]);
  expect(shown(['<b>7\u00a0d</b>'], ['28\u00a0d'])).toEqual(['_<b>7\u00a0d</b>', '28\u00a0d']);
});

test('amounts in several units, or with more behind them, stay as they are', () => {
  const mixed = [['7.5\u00a0days'], ['47\u00a0h'], ['15\u00a0°C (59\u00a0°F)']];
  expect(shown(...mixed)).toEqual(mixed.flat());
  const elsewhere = '<section class="scroll"><table><tbody><tr><td>5</td></tr><tr><td>10</td></tr>';
  expect(pointsAligned(elsewhere)).toBe(elsewhere);
});
