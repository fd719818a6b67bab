import type { Kind } from '../../../src/core/quantity/kinds.ts';
import { parseQuantity } from '../../../src/core/quantity/parse.ts';

/** The number a text is read as, or the code of what is wrong with it. */
export function number(text: string, kind: Kind = 'mass') {
  const parsed = parseQuantity(text, kind);
  return parsed.ok ? parsed.number : parsed.problem.code;
}

/** What is wrong with a text. */
export function problem(text: string, kind: Kind = 'mass') {
  const parsed = parseQuantity(text, kind);
  if (parsed.ok) throw new Error(`'${text}' was read as ${parsed.number} ${parsed.unit.symbol}`);
  return parsed.problem;
}
