import type { Entries, Entry, KeptResults } from '../../bench/entries.ts';
import type { Field, NumberField } from '../fields.ts';
import { offered, readNumber, waitsFor } from './read-number.ts';
import type { NumberReading } from './reading.ts';
import type { Say } from './say.ts';

/**
 * The entry elsewhere that stands in for a field. None if a choice hides the lending field and the
 * result that this field takes is kept.
 */
export function lentTo(field: Field, entries: Entries, kept: KeptResults): Entry | undefined {
  if (field.type !== 'number' || !field.borrows) return undefined;
  const { bench, unless } = field.borrows;
  const answered = field.takes !== undefined && kept[field.takes] !== undefined;
  if (answered && unless && entries[unless[0]]?.t === unless[1]) return undefined;
  return entries[bench]?.t === undefined ? undefined : entries[bench];
}

/**
 * What remains of an entry once another field's number is used instead. A ± typed here belonged to
 * the replaced number, so it goes too.
 */
export const givenUp = ({ d }: Entry = {}): Entry => (d ? { d } : {});

/**
 * Reads a field that borrows an entry: that entry, with its ±, until the reader types one here.
 * From then on the borrowed one is offered.
 */
export function readLent(
  field: NumberField,
  entry: Entry | undefined,
  lent: Entry,
  say: Say,
): NumberReading {
  const { from, by } = field.borrows!;
  if (entry?.t === undefined) {
    const reading = { ...readNumber(field, { ...lent, ...entry }, {}, say), from } as const;
    return reading.value === undefined
      ? { ...reading, origin: 'kept', text: '', waits: by, problem: waitsFor(field, from) }
      : { ...reading, origin: 'kept' };
  }
  const own = readNumber(field, entry, {}, say);
  const { value } = readNumber(field, lent, {}, say);
  return {
    ...own,
    onOffer: value === undefined ? undefined : offered(field, own.value, value, from, say),
  };
}
