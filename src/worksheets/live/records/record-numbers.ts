import { isRefused, readingChoice, readingValue } from '../../../bench/records/reading-value.ts';
import { READINGS, type ReadingName } from '../../../bench/records/readings.ts';
import { type BatchRecord, filled } from '../../../bench/records/record.ts';
import { equivalentAge } from '../../../core/curing/equivalent-age.ts';
import {
  steadyHistory,
  type TemperatureHistory,
  temperatureAt,
  temperatureHistory,
} from '../../../core/curing/history.ts';
import { FREEZES_AT, tooYoungToEstimate } from '../../../core/curing/limits.ts';
import { DomainError, ifAllowed } from '../../../core/domain-error.ts';
import { foamDrift } from '../../../core/records/foam-drift.ts';
import { judgeCorrected, type VerdictCorrected } from '../../../core/records/taken-out.ts';
import type { Doubts } from '../../../core/records/verdict.ts';
import { doubtAbout } from '../../../islands/engine/doubt.ts';
import { readNumber } from '../../../islands/engine/read-number.ts';
import { speaker } from '../../../islands/engine/say.ts';
import { readingLimits } from '../../records/reading-limits.ts';
import { DRAINED, STANDS_MOST } from '../../shared/foam/drained-foam.ts';
import { foamShare } from '../../shared/foam/foam-share.ts';
import { isFoam } from '../../shared/foam/is-foam.ts';
import { furtherIn, holdsFurther } from '../../shared/mix/further.ts';
import { NEAR_ENOUGH, STILL_THAT_MIX } from '../../shared/mix/near-enough.ts';
import { HOT } from '../../shared/time/heat-doubt.ts';
import { cementDensityOf } from './cement-density.ts';
import { RECORD_FIELDS, scaleOf } from './record-fields.ts';
import { NEEDED, weighedBatch } from './weighed-batch.ts';

const WEIGHED = [...NEEDED, 'sand', 'foamAdded', 'baseAdded', 'placed', 'leftOver'] as const;

/** A reading as its field reads it, with its ±. */
export function weighed(
  record: BatchRecord,
  name: (typeof WEIGHED)[number] | 'dryMass' | 'dryVolume',
) {
  const entry = record.readings[name];
  const full = { ...scaleOf(name, entry, 'metric'), ...entry };
  return readNumber(RECORD_FIELDS[name], full, {}, METRIC);
}
const METRIC = speaker('metric');
const LIMITS = readingLimits(RECORD_FIELDS);

export type RecordBalance =
  | { readonly ok: true; readonly verdict: VerdictCorrected }
  /**
   * Readings that are missing, or are 0 where a correction has an amount; and readings that are
   * refused.
   */
  | {
      readonly ok: false;
      readonly missing: readonly ReadingName[];
      readonly refused: readonly string[];
      /** The reason for a refusal of a reading within its own bounds. */
      readonly why?: DomainError;
      /** The plan has ingredients without a reading, so that the mass put in is not known. */
      readonly more?: true;
    };

const ADDED = [
  ['foamAdded', 'foam'],
  ['baseAdded', 'base'],
] as const;

/**
 * Amounts that a correction added and the readings lack: without them the survival would be wrong.
 */
function addedUnsaid(record: BatchRecord): readonly ReadingName[] {
  const { readings, corrections } = record;
  const none = ADDED.every(([name]) => !filled(readings[name]));
  // A correction of an earlier version has no amount.
  const open =
    none && corrections.some(({ foam, base }) => foam === undefined && base === undefined);
  return ADDED.flatMap(([name, of]) =>
    open ||
    (!readingValue(record, name) &&
      !isRefused(record, name) &&
      corrections.some((made) => made[of]))
      ? [name]
      : [],
  );
}

/** Sand, if the plan had some and its reading is empty: the run counted it as planned. */
const sandUnsaid = ({ bench, readings }: BatchRecord): readonly ReadingName[] =>
  /[1-9]/.test(bench['mix.sandCement']?.t ?? '') && !filled(readings.sand) ? ['sand'] : [];

/**
 * The drainage by two weighings of the foam, a share in ten minutes. `tells`: the density fell by
 * more than the ± of both, and both are densities of foam. `undrained`: it rose by more than that
 * ±, or fell by so much less than the slowest foam, which drains a quarter in the longest time that
 * any foam stands.
 */
export function weighedTwice(
  record: BatchRecord,
): { readonly drift: number; readonly tells: boolean; readonly undrained: boolean } | undefined {
  const at = (name: ReadingName) => readingValue(record, name);
  const [first, later, time] = [at('foamDensity'), at('foamLater'), at('foamLaterAfter')];
  if (!first || !later || !time) return undefined;
  // The second weighing has the ± of the first.
  const both = Math.SQRT2 * doubtAbout(weighed(record, 'foamDensity'));
  const lost = first - later;
  const slowest = first * (1 - (1 - DRAINED.thin) ** (time / STANDS_MOST));
  return {
    drift: foamDrift({ first, later, time }),
    tells: lost > both && isFoam(first) && isFoam(later),
    undrained: lost < -both || slowest - Math.max(lost, 0) > both,
  };
}

/** The balance of a saved batch, mass in against mass out, if enough readings are entered. */
export function balanceOf(record: BatchRecord): RecordBalance {
  const given = WEIGHED.filter((name) => filled(record.readings[name]));
  const read = given.map((name) => [name, weighed(record, name)] as const);
  const refused = [
    // A refused reading does not count as 0, even if it may be left empty.
    ...given.filter((name) => isRefused(record, name)),
    ...read.flatMap(([name, { pmProblem }]) => (pmProblem ? [`± of ${READINGS[name].label}`] : [])),
  ];
  const missing = [
    ...NEEDED.filter((name) => !filled(record.readings[name])),
    ...sandUnsaid(record),
    ...addedUnsaid(record),
  ];
  const filledIn = missing.filter((name) => filled(record.readings[name]));
  const value = (name: ReadingName) => readingValue(record, name);
  if (holdsFurther(record.kept) && !furtherIn(value('cement') ?? 0, record.kept))
    return { ok: false, missing: filledIn, refused, more: true };
  if (missing.length + refused.length > 0) return { ok: false, missing, refused };
  const batch = {
    ...weighedBatch(value, record.kept),
    placed: value('placed'),
    leftOver: value('leftOver'),
  };
  const cementDensity = cementDensityOf(record);
  const u: Doubts = Object.fromEntries(read.map(([name, it]) => [name, doubtAbout(it)]));
  try {
    return {
      ok: true,
      verdict: judgeCorrected(
        { ...batch, ...(cementDensity && { cementDensity }) },
        u,
        record.corrections,
        LIMITS,
      ),
    };
  } catch (error) {
    if (error instanceof DomainError)
      return { ok: false, missing: [], refused: [error.quantity], why: error };
    throw error;
  }
}

/**
 * Whether the readings of a batch contradict each other: one is wrong, and it is not known which.
 */
export const contradicts = (balance: RecordBalance): boolean =>
  balance.ok &&
  ['heavier-than-airless', 'more-air-than-foam', 'gained-mass'].includes(balance.verdict.finding);

/**
 * Whether a balance tells of the foam: not if water and cement make no base mix, or the mix is
 * heavier than without gas.
 */
export const tellsOfFoam = ({ finding }: VerdictCorrected): boolean =>
  finding !== 'no-such-base-mix' && finding !== 'heavier-than-airless';

/**
 * Difference in planned survival below which plans count as the same: its effect on density is
 * within the scatter of batches. A choice.
 */
export const ONE_PLAN = 0.015;

/** The planned survival of the foam's gas, from the bench that the batch was saved with, or 1. */
export const sharePlanned = ({ bench }: BatchRecord): number =>
  readNumber(foamShare, bench[foamShare.bench], {}, METRIC).value ?? 1;

/** The batches planned with the survival of the last one: others tell nothing about that plan. */
export function plannedAlike<T extends { readonly record: BatchRecord }>(all: readonly T[]): T[] {
  const shares = all.map(({ record }) => sharePlanned(record));
  return all.filter((_, i) => Math.abs(shares[i]! - shares.at(-1)!) < ONE_PLAN);
}

/**
 * Share of the time to stripping, at either end of a log, that its nearest reading may stand for. A
 * choice.
 */
const NEAR = 0.1;

/**
 * The part of the time to stripping that a log covers, s from casting; `part`: too little for its
 * ends to stand for the rest.
 */
export function loggedOf(record: BatchRecord) {
  const age = readingValue(record, 'stripAge');
  const { log } = record;
  if (!log || !age) return undefined;
  const [from, to] = [Math.max(0, log.seconds[0]!), Math.min(age, log.seconds.at(-1)!)];
  return { age, from, to, part: from > NEAR * age || age - to > NEAR * age };
}

/**
 * The lowest temperature recorded until stripping, K, if pore water may freeze at it; else
 * undefined.
 */
export function coldestFrost(record: BatchRecord): number | undefined {
  const until = readingValue(record, 'stripAge') ?? Infinity;
  const { seconds, kelvin } = record.log ?? { seconds: [], kelvin: [] };
  const logged = kelvin.filter((_, i) => seconds[i]! >= 0 && seconds[i]! <= until);
  const coldest = Math.min(readingValue(record, 'cureTemperature') ?? Infinity, ...logged);
  return coldest <= FREEZES_AT ? coldest : undefined;
}

/**
 * Adjusted age of a batch when stripped, s at 20 °C, by its log or mean temperature; undefined if
 * they do not cover the time, or it may have frozen.
 */
export function ageWhenStripped(record: BatchRecord): number | undefined {
  const age = readingValue(record, 'stripAge');
  if (age === undefined || age <= 0 || coldestFrost(record) !== undefined) return undefined;
  const temperature = readingValue(record, 'cureTemperature');
  const { log } = record;
  const logged = loggedOf(record);
  const [from, to] = !logged ? [0, 0] : logged.part ? [logged.from, logged.to] : [0, age];
  const rest = age - Math.max(0, to - from);
  if (rest > 0 && temperature === undefined) return undefined;
  const ageOver = (history: TemperatureHistory) =>
    equivalentAge({ history, law: { law: 'fhp' } }).age;
  return ifAllowed(() => {
    let sum = rest > 0 ? ageOver(steadyHistory({ temperature: temperature!, duration: rest })) : 0;
    if (log && from < to) {
      const whole = temperatureHistory({ times: log.seconds, temperatures: log.kelvin });
      const times = [from, ...log.seconds.filter((s) => s > from && s < to), to];
      const temperatures = times.map((time) => temperatureAt(whole, time));
      sum += ageOver(temperatureHistory({ times, temperatures }));
    }
    return sum;
  });
}

/**
 * Adjusted age, s, at which a part was stripped clean; `young`: younger than any estimate
 * covers, so that it teaches nothing.
 */
export function cleanAge(record: BatchRecord) {
  const age = ageWhenStripped(record);
  if (age === undefined || readingChoice(record, 'stripped') !== 'clean') return undefined;
  const sinceCasting = readingValue(record, 'stripAge');
  return { age, young: tooYoungToEstimate({ adjustedAge: age, sinceCasting }) };
}

/** The mean temperature of a cure, K, if it is too hot to be meant; else undefined. */
export function curedHot(record: BatchRecord): number | undefined {
  const mean = readingValue(record, 'cureTemperature');
  return mean !== undefined && mean > HOT ? mean : undefined;
}

/**
 * The settlement of the top as a share of the depth filled; undefined if not entered, or as large
 * as the depth. `collapsed`: so large that the density weighed no longer holds.
 */
export function sunkShare(record: BatchRecord) {
  const [depth, sunk] = [readingValue(record, 'depth'), readingValue(record, 'sunk')];
  if (!depth || sunk === undefined || sunk >= depth) return undefined;
  const share = sunk / depth;
  return { share, collapsed: share > STILL_THAT_MIX * NEAR_ENOUGH };
}

/** Density of the dried piece and its ±, kg/m³, and how it was dried; undefined if not entered. */
export function driedDensity(record: BatchRecord) {
  const [mass, volume] = [readingValue(record, 'dryMass'), readingValue(record, 'dryVolume')];
  if (!mass || !volume) return undefined;
  const pm = (name: 'dryMass' | 'dryVolume') => doubtAbout(weighed(record, name));
  const density = mass / volume;
  return {
    density,
    u: density * Math.hypot(pm('dryMass') / mass, pm('dryVolume') / volume),
    dried: readingChoice(record, 'dried'),
  };
}
