import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import { Table } from '../../src/islands/parts/Table.tsx';

/** The head of the second column, and its cells. */
const column = (...cells: string[]) => {
  const html = renderToString(
    h(Table, { caption: 'c', columns: ['Row', 'Value'], rows: cells.map((cell) => ['r', cell]) }),
  );
  const text = (part: string) => part.replace(/<[^>]*>|\u2007/g, '');
  return {
    head: text(/<th scope="col">Value.*?<\/th>/.exec(html)![0]),
    cells: [...html.matchAll(/<td\b[^>]*>(.*?)<\/td>/g)].map(([, cell]) => text(cell!)),
  };
};

test.each([
  [['1.2\u00a0kg', '−3\u00a0kg', '—'], ', kg', ['1.2', '−3', '—']],
  [['640 ± 6\u00a0kg/m³', '600 ± 5\u00a0kg/m³'], ', kg/m³', ['640 ± 6', '600 ± 5']],
  [
    ['64\u00a0±\u00a06\u00a0%', '3\u00a0±\u00a01\u00a0%'],
    ', %',
    ['64\u00a0±\u00a06', '3\u00a0±\u00a01'],
  ],
  [['311\u00a0mg/L CaCO₃', '12\u00a0mg/L CaCO₃'], ', mg/L CaCO₃', ['311', '12']],
  [['+7.7\u00a0%', '−4.1\u00a0%'], ', %', ['+7.7', '−4.1']],
  [['0.2\u00a0W/(m·K)', '0.4\u00a0W/(m·K)'], ', W/(m·K)', ['0.2', '0.4']],
  [['1.2\u00a0kg', 'leave it', '3\u00a0kg'], ', kg', ['1.2', 'leave it', '3']],
])('a unit that all numbers share is said in the head: %j', (cells, unit, shown) => {
  expect(column(...cells.map((cell) => cell.replace('−', '\u2212')))).toEqual({
    head: `Value${unit}`,
    cells: shown.map((cell) => cell.replace('−', '\u2212')),
  });
});

test.each([
  ['7.0\u00a0d, Fri 15\u00a0May, 15:00', '7.0\u00a0d, Fri 15\u00a0May, 15:00'],
  ['1.2\u00a0kg (0.6 + 0.6)', '1.2\u00a0kg (0.6\u00a0+\u00a00.6)'],
  ['2.08\u00a0L (166\u00a0g)', '2.08\u00a0L (166\u00a0g)'],
  ['−20.3\u00a0to\u00a0+8.4\u00a0%', '−20.3\u00a0to +8.4\u00a0%'],
  ['487\u00a0±\u00a040\u00a0kg/m³', '487\u00a0±\u00a040 kg/m³'],
  ['1230 ± 45\u00a0kg/m³', '1230 ± 45 kg/m³'],
  ['14.8\u00a0kg/m³', '14.8\u00a0kg/m³'],
  ['too hot', 'too hot'],
])(
  'a number keeps a short unit, its ± and a short sum; a long one may part from a long unit: %j',
  (cell, breaks) => {
    expect(column(cell, '2, few')).toEqual({ head: 'Value', cells: [breaks, '2, few'] });
  },
);

test('the points of a column stand below each other, and words where the column begins', () => {
  const column = (...cells: string[]) =>
    [
      ...renderToString(
        h(Table, { caption: 'c', columns: ['r', 'v'], rows: cells.map((c) => ['r', c]) }),
      ).matchAll(/<td\b[^>]*>(.*?)<\/td>/g),
    ].map(([, cell]) => cell!.replaceAll('\u2007', '_'));
  expect(column('0\u00a0%', '5.1\u00a0%', '280\u00a0%', '—')).toEqual(['__0', '__5.1', '280', '—']);
  expect(column('\u22120.3\u00a0°C', '4\u00a0°C', '\u221215.5\u00a0°C')).toEqual([
    '_\u22120.3',
    '__4',
    '\u221215.5',
  ]);
  expect(column('9.4 ± 0.3\u00a0L', '10.4 ± 0.4\u00a0L', 'leave it')).toEqual([
    '_9.4 ± 0.3',
    '10.4 ± 0.4',
    'leave it',
  ]);
  // Of amounts in several units, or with more behind them, the points mean nothing together.
  const mixed = ['13.6 kg', '5.43 kg', '144 g', '1 full and 5.30 L'];
  expect(column(...mixed.map((cell) => cell.replace(/ /g, '\u00a0')))[1]).toMatch(/^5/);
});

test('a small count is not taken for a quantity with a unit', () => {
  expect(column('2, few', '1, few')).toEqual({ head: 'Value', cells: ['2, few', '1, few'] });
});

test('the last cell of a short row spans the remaining columns', () => {
  const props = { caption: 'c', columns: ['Row', 'Foam', 'Base'] };
  const spans = (row: string[]) =>
    [...renderToString(h(Table, { ...props, rows: [row] })).matchAll(/colspan="(\d)"/g)].map(
      ([, span]) => span,
    );
  expect(spans(['r', 'weigh a smaller vessel'])).toEqual(['2']);
  expect(spans(['r', '1', '2'])).toEqual([]);
});
