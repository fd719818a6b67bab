import type { Parsed } from '../../core/quantity/parse.ts';
import { parseWithin } from '../../core/quantity/parse-within.ts';
import { plainText } from '../../core/quantity/plain-text.ts';
import type { NumberField } from '../fields.ts';
import { outOfBounds } from './problems.ts';
import type { Say } from './say.ts';

/**
 * Parses the text of a field: first rewrites the field's own notation as a plain quantity, then
 * resolves an ambiguous mark by the field's bounds. What cannot be read is quoted as plain text.
 */
export function readText(field: NumberField, typed: string, unit: string, say: Say): Parsed {
  const text = plainText(typed);
  const plain = field.spelt?.(text) ?? text;
  const allows = (si: number) => outOfBounds(field, si, say) === undefined;
  const parsed = settled(parseWithin(plain, field.kind, unit, allows));
  return parsed.ok || plain === text || parsed.problem.code === 'empty'
    ? parsed
    : { ok: false, problem: { ...parsed.problem, read: text.trim() } };
}

/** Below this, in SI, a number is 0: no reading is so small, and to divide by it is beyond any. */
const NOTHING = 1e-20;

const settled = (parsed: Parsed): Parsed =>
  parsed.ok && Math.abs(parsed.value) < NOTHING ? { ...parsed, value: 0 } : parsed;
