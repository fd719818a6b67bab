import { keptValue } from '../../../bench/entries.ts';
import { readingValue } from '../../../bench/records/reading-value.ts';
import { READINGS } from '../../../bench/records/readings.ts';
import { type BatchRecord, filled } from '../../../bench/records/record.ts';
import { EARLIEST_ADJUSTED_AGE } from '../../../core/curing/limits.ts';
import { ICE_POINT } from '../../../core/quantity/constants.ts';
import { doubtAbout } from '../../../islands/engine/doubt.ts';
import type { Say } from '../../../islands/engine/say.ts';
import type { Judgement } from '../../../islands/worksheet.ts';
import { foamFaultDoubt } from '../../shared/foam/foam-doubt.ts';
import { LEAST_SURVIVAL } from '../../shared/foam/foam-share.ts';
import { isFoam } from '../../shared/foam/is-foam.ts';
import { densityDoubt } from '../../shared/mix/density-doubt.ts';
import { NEAR_ENOUGH, STILL_THAT_MIX } from '../../shared/mix/near-enough.ts';
import { HOURS, PERCENT } from '../../shared/words/amounts.ts';
import { saidApart } from '../../shared/words/said-apart.ts';
import { baseMixDoubt } from './base-mix-doubt.ts';
import {
  balanceOf,
  cleanAge,
  coldestFrost,
  contradicts,
  curedHot,
  driedDensity,
  type RecordBalance,
  sunkShare,
  weighed,
  weighedTwice,
} from './record-numbers.ts';
import { noSuchMix, weighedDensity } from './record-words.ts';

/** The doubt about water and cement of a saved batch, compared with the plan saved with it. */
export function recordBaseDoubt(record: BatchRecord, say: Say): Judgement | undefined {
  const [water, cement] = [readingValue(record, 'water'), readingValue(record, 'cement')];
  if (water === undefined || cement === undefined) return undefined;
  const kept = (name: string) => keptValue(record.kept[`mix.${name}`]);
  const [poured, binder] = [kept('water'), kept('cement')];
  // Cement replacements are weighed separately.
  const portland = kept('portland') ?? binder;
  const planned = poured && portland ? { water: poured, cement: portland, binder } : undefined;
  return baseMixDoubt({ water, cement }, planned, say);
}

/**
 * The doubt about a mix placed so far off its planned density that it is a different mix, however
 * well its readings agree; or weighed so coarsely that it may be one.
 */
export function recordPlanDoubt(record: BatchRecord, say: Say): Judgement | undefined {
  const [planned, wet] = [readingValue(record, 'planned'), weighedDensity(record)];
  if (!planned || wet === undefined) return undefined;
  const far = STILL_THAT_MIX * NEAR_ENOUGH * planned;
  const off = wet - planned;
  // Of the bucket alone: what else was written down does not make its weighing finer.
  const of = (read: (name: 'tare' | 'full' | 'vessel') => number) => ({
    tare: read('tare'),
    full: read('full'),
    vessel: read('vessel'),
  });
  const pm = densityDoubt(
    of((name) => readingValue(record, name)!),
    of((name) => doubtAbout(weighed(record, name))),
  );
  if (Math.abs(off) <= far && pm <= far) return undefined;
  const density = (x: number) => say(x, 'density');
  if (2 * pm >= Math.abs(off))
    return {
      verdict: 'look',
      say: `Type the ± of your own scale beside the bucket’s weights, and of its volume: within ±\u00a0${say(pm, 'density', { significant: 2 })} they cannot tell whether this is the ${density(planned)} that was planned. If that ± is right, weigh a larger vessel, or on a finer scale.`,
    };
  const by = say(Math.abs(off) / planned, 'ratio', { units: PERCENT, significant: 2 });
  return {
    verdict: 'look',
    say: `Check the bucket’s weights and volume: it weighs ${density(wet)} where ${density(planned)} was planned, ${by} ${off > 0 ? 'heavier' : 'lighter'}. If they are right, it is another mix: go on with the weighed density for weight, strength and curing, and look for the cause before the next batch.`,
  };
}

/**
 * The doubt about a dried piece heavier than the mix it was cast from, or lighter than the cement
 * and sand in it.
 */
export function recordDryDoubt(
  record: BatchRecord,
  say: Say,
  balance = balanceOf(record),
): Judgement | undefined {
  const [dry, wet] = [driedDensity(record)?.density, weighedDensity(record)];
  if (dry === undefined || wet === undefined) return undefined;
  const known = balance.ok && !contradicts(balance);
  const solids = known ? wet * balance.verdict.solidShare : 0;
  const light = dry < (1 - STILL_THAT_MIX * NEAR_ENOUGH) * solids;
  if (dry <= wet && !light) return undefined;
  const density = (x: number) => say(x, 'density');
  return {
    verdict: 'look',
    say: light
      ? `Dried, the piece weighs ${density(dry)}, less than the ${density(solids)} of the cement and sand in it, and drying only takes water away. Look at the weight of the piece, its volume and their units.`
      : `Dried, the piece weighs ${density(dry)}, more than the ${density(wet)} of the fresh mix, and drying only takes water away. Look at the weight of the piece, its volume and their units. If they are right, the mix collapsed in the form after it was weighed.`,
  };
}

/** The doubt about a mix that sank so far in its form that it no longer has the density weighed. */
function recordSunkDoubt(record: BatchRecord, say: Say): Judgement | undefined {
  const sunk = sunkShare(record);
  if (!sunk?.collapsed) return undefined;
  return {
    verdict: 'look',
    say: `Check both depths: the top sank by ${say(sunk.share, 'ratio', { units: PERCENT, significant: 2 })} of the depth filled. If they are right, the mix collapsed in the form and is denser there than the bucket says: go by a piece weighed dry. It teaches nothing of settling.`,
  };
}

/**
 * The doubt about a cure that froze or was too hot, or a part stripped clean too young: probably a
 * wrong number or unit.
 */
export function recordCureDoubt(record: BatchRecord, say: Say): Judgement | undefined {
  const look = (what: string, both = false): Judgement => ({
    verdict: 'look',
    say: `${what} Look again at ${both ? 'both and at their units' : 'it and at its unit'}; as it stands it teaches no age for stripping.`,
  });
  const frost = coldestFrost(record);
  const temperature = (si: number) => say(si, 'temperature', { plain: true });
  if (frost !== undefined)
    return look(
      `While it cured, ${temperature(frost)} is written down: at ${temperature(ICE_POINT)} or colder young concrete may freeze, and strength cannot be worked out from age.`,
    );
  const hot = curedHot(record);
  const clean = cleanAge(record);
  const how = { units: HOURS, significant: 2 };
  const least = say(EARLIEST_ADJUSTED_AGE, 'time', how);
  const said = [
    ...(hot === undefined
      ? []
      : [
          `While it cured, ${temperature(hot)} is written down: warmer than any part is meant to be.`,
        ]),
    ...(clean?.young
      ? [
          clean.age < EARLIEST_ADJUSTED_AGE
            ? `It came out clean at an age of ${saidApart(clean.age, 'time', [EARLIEST_ADJUSTED_AGE], say, how)} at 20\u00a0°C (68\u00a0°F), where nothing younger than ${least}, by that age or by the clock, counts.`
            : `It came out clean ${saidApart(readingValue(record, 'stripAge')!, 'time', [EARLIEST_ADJUSTED_AGE], say, how)} after casting, where nothing younger than ${least} counts.`,
        ]
      : []),
  ];
  return said.length > 0 ? look(said.join(' '), said.length > 1) : undefined;
}

/**
 * The doubt about a foam density that is none of foam, or about a second weighing that lost less
 * than any foam drains.
 */
export function recordFoamDoubt(record: BatchRecord, say: Say): Judgement | undefined {
  const none = (['foamDensity', 'foamLater'] as const).find((name) => {
    const foam = readingValue(record, name);
    return foam !== undefined && !isFoam(foam);
  });
  if (none)
    return foamFaultDoubt(
      readingValue(record, none)!,
      say,
      undefined,
      none === 'foamLater' ? 'Foam weighed again' : undefined,
    );
  return weighedTwice(record)?.undrained
    ? {
        verdict: 'look',
        say: 'Pour the liquid off before the foam is weighed again: by its scale it lost less than any foam does. As it stands this foam teaches nothing of draining.',
      }
    : undefined;
}

/** Share of the mass taken out that a rounded remainder may read at least. A choice. */
const ROUNDED = 0.99;

/**
 * The doubt about a remainder smaller than the mix taken out before a correction, which counts as
 * left over.
 */
function recordOutDoubt(record: BatchRecord, say: Say): Judgement | undefined {
  const left = readingValue(record, 'leftOver');
  const out = record.corrections.reduce((sum, made) => sum + (made.out ?? 0), 0);
  if (left === undefined || left >= ROUNDED * out) return undefined;
  const mass = (kg: number) => say(kg, 'mass', { significant: 2 });
  return {
    verdict: 'look',
    say: `Add what was taken out to “${READINGS.leftOver.label}”: it says ${mass(left)}, and ${mass(out)} was taken out before a correction.`,
  };
}

/** The doubts about readings of 0 where the corrections have an amount. */
const saidNone = ({ readings }: BatchRecord, balance: RecordBalance): readonly Judgement[] =>
  (balance.ok ? [] : balance.missing)
    .filter((name) => filled(readings[name]))
    .map((name) => ({
      verdict: 'stop',
      say: `“${READINGS[name].label}” says none, and a correction names some. One of the two is wrong.`,
    }));

/** All doubts about the readings of a batch; `strengths`: those about its strengths. */
export const readingDoubts = (
  record: BatchRecord,
  balance: RecordBalance,
  say: Say,
  strengths: readonly Judgement[],
): readonly Judgement[] =>
  [
    recordBaseDoubt(record, say),
    recordFoamDoubt(record, say),
    recordSunkDoubt(record, say),
    recordCureDoubt(record, say),
    recordDryDoubt(record, say, balance),
    recordOutDoubt(record, say),
    ...saidNone(record, balance),
    ...strengths,
  ].filter((doubt) => doubt !== undefined);

/**
 * Whether a reading of a batch is to be checked, as its page says: it is doubtful, refused or
 * contradicts the others. Spilled mass, or a mix other than planned, does not count: the readings
 * may all be right.
 */
export function isDoubted(
  record: BatchRecord,
  say: Say,
  strengths: readonly Judgement[] = [],
): boolean {
  const balance = balanceOf(record);
  const wrong = balance.ok
    ? contradicts(balance) ||
      balance.verdict.finding === 'no-such-base-mix' ||
      balance.verdict.survival < LEAST_SURVIVAL
    : balance.refused.length > 0;
  return (
    wrong ||
    noSuchMix(record, say) !== undefined ||
    readingDoubts(record, balance, say, strengths).length > 0
  );
}
