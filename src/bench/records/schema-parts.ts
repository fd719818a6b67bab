import { KINDS } from '../../core/quantity/kinds.ts';
import { type Entry, NAME } from '../entries.ts';
import type { Schema } from './json-schema.ts';
import { LIMITS } from './limits.ts';
import { READING_NAMES, readingOf } from './readings.ts';

export const text = (maxLength: number, description?: string): Schema => ({
  type: 'string',
  maxLength,
  ...(description && { description }),
});
export const allUnits = [
  ...new Set(Object.values(KINDS).flatMap(({ units }) => units.map(({ id }) => id))),
].sort();
const unit = (ids: readonly string[], description: string): Schema => ({
  type: 'string',
  enum: ids,
  description,
});

/** Properties of an entry that exist only on the bench, not in a reading or a row. */
type OfBench = 'from' | 'rows';

/** A reading as typed; on the bench, with every property an entry may have there. */
export function entry(
  units: readonly string[],
  ofBench?: Readonly<Record<OfBench, Schema>>,
): Schema {
  const shown = unit(units, 'Unit picked for this field.');
  const typed: Record<Exclude<keyof Entry, OfBench>, Schema> = {
    t: text(LIMITS.typed, 'The text as typed: 13.6, 13,6, 22 1/2 lb.'),
    u: unit(
      units,
      'The unit shown when it was typed; one typed behind the number wins. Absent: that of the CSV.',
    ),
    s: { type: 'string', enum: ['metric', 'us'], description: 'The system of units then.' },
    p: text(LIMITS.text, 'The ± as typed.'),
    pu: unit(allUnits, 'The unit shown for the ±.'),
    d: {
      type: 'object',
      properties: { metric: shown, us: shown },
      additionalProperties: false,
    },
  };
  return {
    type: 'object',
    properties: { ...typed, ...ofBench },
    additionalProperties: false,
  };
}

const kinds = new Set(
  READING_NAMES.flatMap((name) => {
    const spec = readingOf(name);
    return 'options' in spec ? [] : [spec.kind];
  }),
);
/** A reading of each kind, and an entry of any kind. */
export const ENTRIES: Readonly<Record<string, Schema>> = {
  ...Object.fromEntries(
    [...kinds].map((kind) => [kind, entry(KINDS[kind].units.map(({ id }) => id))]),
  ),
  entry: entry(allUnits),
};
export const reading = (name: (typeof READING_NAMES)[number]): Schema => {
  const spec = readingOf(name);
  if ('options' in spec)
    return {
      type: 'object',
      description: spec.label,
      properties: { t: { type: 'string', enum: spec.options } },
      additionalProperties: false,
    };
  return { $ref: `#/$defs/${spec.kind}`, description: spec.label };
};

export const id: Schema = { type: 'string', pattern: '^[A-Za-z0-9_-]{1,60}$' };
export const instant: Schema = {
  type: 'string',
  maxLength: 40,
  pattern: '^\\d{4}-\\d{2}-\\d{2}T\\d{2}:\\d{2}:\\d{2}(\\.\\d+)?Z$',
};
export const benchKey = NAME.source;
