import { formatPlain } from '../../core/quantity/format.ts';
import type { Entry, KeptNumber } from '../entries.ts';
import { $entries, $kept } from '../store.ts';
import { isOwnResult } from './own-result.ts';
import { type ReadingName, readingOf } from './readings.ts';
import { type BatchRecord, blankRecord } from './record.ts';

/** Where on the bench a reading of a batch is found: typed into a field, or kept as a result. */
const TYPED: Readonly<Partial<Record<ReadingName, readonly string[]>>> = {
  tare: ['bucket.tare'],
  vessel: ['bucket.volume'],
  full: ['correct.full', 'reconcile.full'],
  cement: ['reconcile.cement'],
  water: ['reconcile.water'],
  sand: ['reconcile.sand'],
  foamVolume: ['reconcile.foamVolume'],
  foamAdded: ['reconcile.foamAdded'],
  baseAdded: ['reconcile.baseAdded'],
  placed: ['reconcile.placed'],
  leftOver: ['reconcile.leftOver'],
};
const KEPT: Readonly<Partial<Record<ReadingName, string>>> = {
  planned: 'mix.planned',
  foamDensity: 'foam.density',
};

/** The bench as it is now, as a new batch: all of it, and the readings a record has a place for. */
export function recordFromBench(name: string): BatchRecord {
  const bench = { ...$entries.get() };
  const kept = Object.fromEntries(
    Object.entries($kept.get()).flatMap(([key, value]): [string, KeptNumber][] =>
      'v' in value ? [[key, value]] : [],
    ),
  );
  const readings: Partial<Record<ReadingName, Entry>> = {};
  for (const [reading, keys] of Object.entries(TYPED) as [ReadingName, readonly string[]][]) {
    const typed = keys.map((key) => bench[key]).find((entry) => entry?.t !== undefined);
    if (typed && !typed.rows) readings[reading] = typed;
  }
  for (const [reading, key] of Object.entries(KEPT) as [ReadingName, string][]) {
    const spec = readingOf(reading);
    const found = kept[key];
    if (!found || 'options' in spec || !isOwnResult(key, found.from, bench)) continue;
    readings[reading] = {
      t: formatPlain(found.v, spec.kind, spec.unit, 5),
      u: spec.unit,
      s: 'metric',
      ...(found.pm !== undefined && {
        p: formatPlain(found.pm, spec.kind, spec.unit, 2),
        pu: spec.unit,
      }),
    };
  }
  return blankRecord({ name, bench, kept, readings });
}

/** What is known of a batch before it is weighed. Everything else on the bench is an earlier one's. */
const KNOWN_BEFORE = ['tare', 'vessel', 'planned'] as const;

/** A new batch about to be weighed: the bench, and of its readings only what the batch cannot change. */
export function recordToWeigh(name: string): BatchRecord {
  const record = recordFromBench(name);
  const readings: Partial<Record<ReadingName, Entry>> = {};
  for (const known of KNOWN_BEFORE) {
    const entry = record.readings[known];
    if (entry) readings[known] = entry;
  }
  return { ...record, readings };
}

/** Whether anything of the reader's own lies on the bench. */
export const benchIsEmpty = (): boolean => Object.keys($entries.get()).length === 0;
