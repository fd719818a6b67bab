import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import { Table } from '../../src/islands/parts/Table.tsx';

/** The head of the second column, and its cells. */
const column = (...cells: string[]) => {
  const html = renderToString(
    h(Table, { caption: 'c', columns: ['Row', 'Value'], rows: cells.map((cell) => ['r', cell]) }),
  );
  const text = (part: string) => part.replace(/<[^>]*>/g, '');
  return {
    head: text(/<th scope="col">Value.*?<\/th>/.exec(html)![0]),
    cells: [...html.matchAll(/<td\b[^>]*>(.*?)<\/td>/g)].map(([, cell]) => text(cell!)),
  };
};

test.each([
  [['1.2\u00a0kg', '−3\u00a0kg', '—'], ', kg', ['1.2', '−3', '—']],
  [['640 ± 6\u00a0kg/m³', '600 ± 5\u00a0kg/m³'], ', kg/m³', ['640 ± 6', '600 ± 5']],
  [['311\u00a0mg/L CaCO₃', '12\u00a0mg/L CaCO₃'], ', mg/L CaCO₃', ['311', '12']],
  [['0.2\u00a0W/(m·K)', '0.4\u00a0W/(m·K)'], ', W/(m·K)', ['0.2', '0.4']],
  [['1.2\u00a0kg', 'leave it', '3\u00a0kg'], ', kg', ['1.2', 'leave it', '3']],
])('a unit that all numbers share is said in the head: %j', (cells, unit, shown) => {
  expect(column(...cells.map((cell) => cell.replace('−', '\u2212')))).toEqual({
    head: `Value${unit}`,
    cells: shown.map((cell) => cell.replace('−', '\u2212')),
  });
});

test.each([
  [['7.0\u00a0d, Fri 15\u00a0May, 15:00', '7.1\u00a0d, Fri 15\u00a0May, 15:00']],
  [['1.2\u00a0kg (0.6 + 0.6)', '1.2\u00a0kg (0.6 + 0.6)']],
  [['1.2\u00a0kg', '300\u00a0g']],
  [['1.2\u00a0kg']],
  [['too hot', '1.2\u00a0kg']],
  [['1.2\u00a0kg', '1.4\u00a0kg', '2 loads']],
])('anything else stays in its cell, and a short amount beside its unit: %j', (cells) => {
  const long = (cell: string) => cell.length > 9;
  expect(column(...cells)).toEqual({
    head: 'Value',
    cells: cells.map((cell) => (long(cell) ? cell.replaceAll('\u00a0', ' ') : cell)),
  });
});

test('a long amount may part from its unit', () => {
  expect(column('1230 ± 45\u00a0kg/m³', '12\u00a0L')).toEqual({
    head: 'Value',
    cells: ['1230 ± 45 kg/m³', '12\u00a0L'],
  });
});

test('in brackets a number keeps its unit: the cell breaks before them', () => {
  const html = renderToString(
    h(Table, { caption: 'c', columns: ['A', 'B'], rows: [['r', '2.08\u00a0L (166\u00a0g)']] }),
  );
  expect(html).toContain('2.08 L (166\u00a0g)');
});
