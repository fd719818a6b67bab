import type { Entries } from '../../bench/entries.ts';
import { type BatchRecord, today } from '../../bench/records/record.ts';
import { formatPlain } from '../../core/quantity/format.ts';
import type { Say } from '../../islands/engine/say.ts';
import { readMoment } from '../../islands/fields/read-moment.ts';
import { DENSITY } from './amounts.ts';
import { momentInWords } from './moments.ts';
import { ontoBench } from './onto-bench.ts';
import { nameOf, weighedDensity } from './record-words.ts';

/**
 * What pages about the part ask of a batch: the density it was placed at, and when it was cast, by the
 * clock where the reader is. Its foam is made minutes after the water met the cement, so nothing counted
 * from there comes too early. A day changed by hand has no time of day.
 */
export function onwardEntries(record: BatchRecord): Entries {
  const wet = weighedDensity(record);
  if (wet === undefined) return {};
  const made = record.foamMade === undefined ? undefined : new Date(record.foamMade);
  const cast = made && today(made) === record.date && `${record.date}T${clock(made)}`;
  return {
    'part.wetDensity': { t: formatPlain(wet, 'density', 'kg/m3', 4), u: 'kg/m3', s: 'metric' },
    ...(cast && { 'curing.castAt': { t: cast } }),
  };
}

const clock = (at: Date) =>
  [at.getHours(), at.getMinutes()].map((n) => String(n).padStart(2, '0')).join(':');

/** The same in words: `1020 kg/m³, cast Fri 8 May, 14:05`. */
export function onwardWords(record: BatchRecord, say: Say): string {
  const cast = readMoment(onwardEntries(record)['curing.castAt']?.t ?? '');
  const density = say(weighedDensity(record)!, 'density', { units: DENSITY });
  return `${density}${cast === undefined ? '' : `, cast ${momentInWords(cast)},`}`;
}

/** Puts them on the bench, in place of what was planned. */
export const goOnWith = (record: BatchRecord, say: Say): void =>
  ontoBench(
    onwardEntries(record),
    `Curing, stripping and lifting now go by “${nameOf(record)}”: ${onwardWords(record, say).replace(/,$/, '')}.`,
    { label: 'Open “When to strip”', page: 'demoulding/when-to-strip/' },
  );
