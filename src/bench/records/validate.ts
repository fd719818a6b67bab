import { isRecord } from '../entries.ts';
import type { Schema } from './json-schema.ts';

export interface Fault {
  /** The path: `batches[3].readings.cement.u`. */
  readonly at: string;
  /** What is wrong, to follow the path in a sentence. */
  readonly is: string;
}

const kindOf = (x: unknown): string =>
  x === null ? 'null' : Array.isArray(x) ? 'array' : typeof x;
const patterns = new Map<string, RegExp>();
const pattern = (source: string) => {
  let made = patterns.get(source);
  if (!made) {
    made = new RegExp(source, 'u');
    patterns.set(source, made);
  }
  return made;
};
const MOST_FAULTS = 5;
const short = (text: string) => (text.length > 40 ? `${text.slice(0, 40)}…` : text);

/**
 * Validates a value against a schema; an empty list means valid. `root` is what `#/$defs/…` refers
 * to.
 */
export function faultsOf(x: unknown, schema: Schema, root: Schema = schema): readonly Fault[] {
  const faults: Fault[] = [];
  check(x, schema, root, '', faults);
  return faults;
}

function check(x: unknown, given: Schema, root: Schema, at: string, faults: Fault[]): void {
  if (faults.length >= MOST_FAULTS) return;
  let schema = given;
  if (given.$ref) {
    const found = root.$defs?.[given.$ref.replace('#/$defs/', '')];
    if (!found) throw new Error(`the schema has no ${given.$ref}`);
    schema = found;
  }
  if (schema.anyOf) {
    const tried = schema.anyOf.map((option) => {
      const found: Fault[] = [];
      check(x, option, root, at, found);
      return found;
    });
    // The first alternative is the usual one, so report its faults.
    if (!tried.some(({ length }) => length === 0)) faults.push(tried[0]![0]!);
    return;
  }
  const wrong = (is: string) => faults.push({ at: at || 'it', is });
  if (schema.const !== undefined && x !== schema.const) {
    wrong(`is not ${JSON.stringify(schema.const)}`);
    return;
  }
  if (schema.type) {
    const kind = kindOf(x);
    const fits = schema.type === 'integer' ? Number.isInteger(x) : kind === schema.type;
    if (!fits || (kind === 'number' && !Number.isFinite(x))) {
      wrong(`is ${kind === 'undefined' ? 'missing' : `no ${schema.type}`}`);
      return;
    }
  }
  if (typeof x === 'string') checkText(x, schema, wrong);
  else if (typeof x === 'number') checkNumber(x, schema, wrong);
  else if (Array.isArray(x)) {
    if (x.length > (schema.maxItems ?? Infinity)) wrong(`has more than ${schema.maxItems} items`);
    else if (x.length < (schema.minItems ?? 0)) wrong('is empty');
    else if (schema.items)
      for (const [i, item] of x.entries()) check(item, schema.items, root, `${at}[${i}]`, faults);
  } else if (isRecord(x)) checkObject(x, schema, root, at, faults, wrong);
}

function checkText(x: string, schema: Schema, wrong: (is: string) => void): void {
  if (x.length > (schema.maxLength ?? Infinity))
    wrong(`is longer than ${schema.maxLength} characters`);
  else if (schema.enum && !schema.enum.includes(x))
    wrong(`is '${short(x)}', which is not one of its values`);
  else if (schema.pattern && !pattern(schema.pattern).test(x))
    wrong(`is '${short(x)}', which has not its form`);
}

function checkNumber(x: number, schema: Schema, wrong: (is: string) => void): void {
  if (x < (schema.minimum ?? -Infinity)) wrong(`is below ${schema.minimum}`);
  if (x > (schema.maximum ?? Infinity)) wrong(`is above ${schema.maximum}`);
}

function checkObject(
  x: object,
  schema: Schema,
  root: Schema,
  at: string,
  faults: Fault[],
  wrong: (is: string) => void,
): void {
  const entries = Object.entries(x);
  if (entries.length > (schema.maxProperties ?? Infinity)) {
    wrong(`has more than ${schema.maxProperties} parts`);
    return;
  }
  for (const name of schema.required ?? []) if (!Object.hasOwn(x, name)) wrong(`has no '${name}'`);
  const byPattern = Object.entries(schema.patternProperties ?? {});
  for (const [name, value] of entries) {
    const known = schema.properties && Object.hasOwn(schema.properties, name);
    const rule = known
      ? schema.properties![name]
      : byPattern.find(([source]) => pattern(source).test(name))?.[1];
    const place = at ? `${at}.${short(name)}` : short(name);
    if (rule) check(value, rule, root, place, faults);
    else if (schema.additionalProperties === false) {
      if (faults.length < MOST_FAULTS) faults.push({ at: place, is: 'is not part of the format' });
    }
  }
}
