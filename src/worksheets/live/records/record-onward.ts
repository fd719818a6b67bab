import type { Entries, Entry } from '../../../bench/entries.ts';
import { type BatchRecord, today } from '../../../bench/records/record.ts';
import { $entries } from '../../../bench/store.ts';
import { DAY, HOUR } from '../../../core/quantity/constants.ts';
import { formatPlain } from '../../../core/quantity/format.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { readMoment } from '../../../islands/fields/read-moment.ts';
import { momentInWords } from '../../shared/time/moments.ts';
import { DAYS, HOURS } from '../../shared/words/amounts.ts';
import { RECENT } from '../run/run-recent.ts';
import { ontoBench } from './onto-bench.ts';
import { nameOf, weighedDensity } from './record-words.ts';

/**
 * When a batch was cast, in local time, and how long ago, s: the time its foam was made, minutes
 * after water met cement, so that no age is overestimated. That may be past midnight of the batch's
 * date. Undefined if the date was changed by hand.
 */
function castOf({ foamMade, date }: BatchRecord, now: number) {
  const made = foamMade === undefined ? undefined : new Date(foamMade);
  if (!made || ![made, new Date(made.getTime() - RECENT)].some((at) => today(at) === date))
    return undefined;
  return { at: `${today(made)}T${clock(made)}`, ago: (now - made.getTime()) / 1000 };
}

const clock = (at: Date) =>
  [at.getHours(), at.getMinutes()].map((n) => String(n).padStart(2, '0')).join(':');

/**
 * An empty entry, so that a worksheet asks for it instead of using the example's or another
 * batch's.
 */
const ASKED: Entry = { t: '' };

/** The least time since casting that the worksheets take, h. */
const LEAST_HOURS = 0.1;

/**
 * The entries of a batch for the worksheets about the part: its density as placed, when it was cast
 * and how long ago. `castAt`: the casting time on the bench, which is kept if it may be this
 * batch's.
 */
export function onwardEntries(record: BatchRecord, castAt?: Entry, now = Date.now()): Entries {
  const wet = weighedDensity(record);
  if (wet === undefined) return {};
  const cast = castOf(record, now);
  const another = castAt?.t !== undefined && !castAt.t.startsWith(record.date);
  // Rounded down: a part may be younger than it seems, never older.
  const hours = cast && Math.floor((10 * cast.ago) / HOUR) / 10;
  return {
    'part.wetDensity': { t: formatPlain(wet, 'density', 'kg/m3', 4), u: 'kg/m3', s: 'metric' },
    ...(cast ? { 'curing.castAt': { t: cast.at } } : another && { 'curing.castAt': ASKED }),
    'part.sinceCasting':
      hours === undefined || hours < LEAST_HOURS ? ASKED : { t: `${hours}`, u: 'h', s: 'metric' },
  };
}

/** The same in words: `1020 kg/m³, cast Fri 8 May, 14:05,`. */
export function onwardWords(record: BatchRecord, say: Say): string {
  const cast = readMoment(castOf(record, 0)?.at ?? '');
  const density = say(weighedDensity(record)!, 'density');
  return `${density}${cast === undefined ? '' : `, cast ${momentInWords(cast)},`}`;
}

/** The notice once they are entered, with what is still asked for. */
export function wentOn(record: BatchRecord, say: Say, castAt?: Entry, now = Date.now()): string {
  const goBy = `Curing, stripping and lifting now go by “${nameOf(record)}”: ${onwardWords(record, say)}`;
  const ago = castOf(record, now)?.ago;
  if (ago !== undefined)
    return ago < LEAST_HOURS * HOUR
      ? `${goBy} which is ${ago < 0 ? 'still to come by this clock' : 'only minutes ago'}: type the time since casting where it is asked for.`
      : `${goBy} ${say(ago, 'time', { units: ago < 2 * DAY ? HOURS : DAYS, significant: 2 })} ago.`;
  const { 'curing.castAt': asked } = onwardEntries(record, castAt, now);
  const left = asked ? undefined : readMoment(castAt?.t ?? '');
  const there =
    left === undefined
      ? ''
      : ` The one on the bench, ${momentInWords(left)}, stays: look whether it is this batch’s.`;
  const why = record.foamMade
    ? 'When its foam was made does not fit its day here'
    : 'Its time of casting is not written down';
  return `${goBy}. ${why}: type ${asked ? 'it, and ' : ''}the time since casting${asked ? ',' : ''} where asked.${there}`;
}

/** Puts them on the bench, in place of the planned values. */
export function goOnWith(record: BatchRecord, say: Say): void {
  const castAt = $entries.get()['curing.castAt'];
  ontoBench('onward', onwardEntries(record, castAt), wentOn(record, say, castAt), {
    label: 'Open “When to strip”',
    page: 'demoulding/when-to-strip/',
  });
}
