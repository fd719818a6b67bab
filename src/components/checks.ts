import type { Answer, Sort } from '../../tests/published/answer.ts';
import type { Compared, Given, Row } from '../../tests/published/rows.ts';
import { toUnit } from '../core/quantity/convert.ts';
import { formatNumber } from '../core/quantity/format.ts';
import type { Kind } from '../core/quantity/kinds.ts';
import { parseQuantity } from '../core/quantity/parse.ts';

const PLAIN: readonly Sort[] = ['number', 'numbers', 'text'];

/** A row's three figures in the unit its source prints, to the digits that show the difference. */
export function inSourceUnit(row: Row, answer: Answer, { ours, expected, difference }: Compared) {
  const given = Object.entries(row.input)
    .map(([name, value]) => `${name} ${listed(value)}`)
    .join('; ');
  if (answer.gives === 'text')
    return {
      given,
      published: listed(row.expected),
      ours: String(ours),
      difference: ours === expected ? 'none' : 'differs',
    };
  const unit = unitOfRow(row.expected, answer.gives);
  const inUnit = (si: number) => (unit ? toUnit(si, unit.kind, unit.id) : si);
  const zero = inUnit(0);
  const digits = (si: number) => formatNumber(inUnit(si), { significant: 6 });
  return {
    given,
    published: listed(row.expected),
    ours:
      [ours]
        .flat()
        .map((x) => digits(Number(x)))
        .join('; ') + (unit ? `\u00a0${unit.symbol}` : ''),
    difference: formatNumber(inUnit(difference) - zero, { significant: 2 }),
  };
}

const listed = (given: Given): string => (Array.isArray(given) ? given.join('; ') : String(given));

function unitOfRow(expected: Given, sort: Sort) {
  if (PLAIN.includes(sort) || typeof expected !== 'string') return undefined;
  const read = parseQuantity(expected, sort as Kind);
  return read.ok ? { kind: sort as Kind, id: read.unit.id, symbol: read.unit.symbol } : undefined;
}
