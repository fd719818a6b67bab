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

/** A reading as its own box reads it, its ± with it. */
function weighed(record: BatchRecord, name: (typeof WEIGHED)[number] | 'dryMass' | 'dryVolume') {
  const entry = record.readings[name];
  const full = { ...scaleOf(name, entry, 'metric'), ...entry };
  return readNumber(RECORD_FIELDS[name], full, {}, METRIC);
}
const METRIC = speaker('metric');
const LIMITS = readingLimits(RECORD_FIELDS);

export type Reckoned =
  | { readonly ok: true; readonly verdict: VerdictCorrected }
  /** What is still to be written down, or says none where there was some; and the readings that cannot be. */
  | {
      readonly ok: false;
      readonly missing: readonly ReadingName[];
      readonly refused: readonly string[];
      /** Why the one refused is, where its own bounds let it pass. */
      readonly why?: DomainError;
      /** It holds more than its readings name, as planned: what went in is not known by them. */
      readonly more?: true;
    };

const ADDED = [
  ['foamAdded', 'foam'],
  ['baseAdded', 'base'],
] as const;

/** What a correction added and the readings have none of: reckoned without it, what lived of the foam would be another share. */
function addedUnsaid(record: BatchRecord): readonly ReadingName[] {
  const { readings, corrections } = record;
  const none = ADDED.every(([name]) => !filled(readings[name]));
  // One of an earlier version says no amount.
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

/** Sand, where the plan had some and nothing is said of it: the run counted it as planned. */
const sandUnsaid = ({ bench, readings }: BatchRecord): readonly ReadingName[] =>
  /[1-9]/.test(bench['mix.sandCement']?.t ?? '') && !filled(readings.sand) ? ['sand'] : [];

/**
 * What two weighings of the foam say of its draining, a share in ten minutes. `tells`: it fell by more than the ± of
 * both, and was foam and is still. `undrained`: it grew heavier by more, or fell by less, beyond that ±, than one that loses a quarter in the
 * longest that any stands.
 */
export function weighedTwice(
  record: BatchRecord,
): { readonly drift: number; readonly tells: boolean; readonly undrained: boolean } | undefined {
  const at = (name: ReadingName) => readingValue(record, name);
  const [first, later, time] = [at('foamDensity'), at('foamLater'), at('foamLaterAfter')];
  if (!first || !later || !time) return undefined;
  // The second is weighed as the first was.
  const both = Math.SQRT2 * doubtAbout(weighed(record, 'foamDensity'));
  const lost = first - later;
  const slowest = first * (1 - (1 - DRAINED.thin) ** (time / STANDS_MOST));
  return {
    drift: foamDrift({ first, later, time }),
    tells: lost > both && isFoam(first) && isFoam(later),
    undrained: lost < -both || slowest - Math.max(lost, 0) > both,
  };
}

/** What went into a saved batch against what came out, when enough of it is written down. */
export function reckon(record: BatchRecord): Reckoned {
  const given = WEIGHED.filter((name) => filled(record.readings[name]));
  const read = given.map((name) => [name, weighed(record, name)] as const);
  const refused = [
    // One that may be left empty is no nought because it was refused.
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

/** Whether the readings of a batch cannot all be true: one of them is wrong, and which is not known. */
export const contradicts = (reckoned: Reckoned): boolean =>
  reckoned.ok &&
  ['heavier-than-airless', 'more-air-than-foam', 'gained-mass'].includes(reckoned.verdict.finding);

/** Whether anything follows for the foam: of water and cement that make no base mix, or a mix too heavy for any gas, nothing does. */
export const tellsOfFoam = ({ finding }: VerdictCorrected): boolean =>
  finding !== 'no-such-base-mix' && finding !== 'heavier-than-airless';

/** Shares of foam that lives, no farther apart, are one plan: that moves a density by no more than batches scatter. A choice. */
export const ONE_PLAN = 0.015;

/** What share of its foam’s gas a batch was planned to keep: by the bench it was saved with, else all of it. */
export const sharePlanned = ({ bench }: BatchRecord): number =>
  readNumber(foamShare, bench[foamShare.bench], {}, METRIC).value ?? 1;

/** Those planned as the last of them was: how others landed says nothing of that plan. */
export function plannedAlike<T extends { readonly record: BatchRecord }>(all: readonly T[]): T[] {
  const shares = all.map(({ record }) => sharePlanned(record));
  return all.filter((_, i) => Math.abs(shares[i]! - shares.at(-1)!) < ONE_PLAN);
}

/** Share of the time to stripping that the nearest reading of a log may stand for, at either of its ends. A choice. */
const NEAR = 0.1;

/** What of the time to stripping a log covers, s from casting; `part`: so little that its ends cannot stand for the rest. */
export function loggedOf(record: BatchRecord) {
  const age = readingValue(record, 'stripAge');
  const { log } = record;
  if (!log || !age) return undefined;
  const [from, to] = [Math.max(0, log.seconds[0]!), Math.min(age, log.seconds.at(-1)!)];
  return { age, from, to, part: from > NEAR * age || age - to > NEAR * age };
}

/** The coldest written down of a cure in which water in the pores may freeze, K; undefined: it stayed warmer. */
export function coldestFrost(record: BatchRecord): number | undefined {
  const until = readingValue(record, 'stripAge') ?? Infinity;
  const { seconds, kelvin } = record.log ?? { seconds: [], kelvin: [] };
  const logged = kelvin.filter((_, i) => seconds[i]! >= 0 && seconds[i]! <= until);
  const coldest = Math.min(readingValue(record, 'cureTemperature') ?? Infinity, ...logged);
  return coldest <= FREEZES_AT ? coldest : undefined;
}

/** Age of a batch when stripped, s at 20 °C by its log or mean temperature; undefined where they leave a part of it open, or it may have frozen. */
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

/** Age at which a part came out clean, s at 20 °C; `young`: at less than any estimate speaks of, so that it teaches nothing. */
export function cleanAge(record: BatchRecord) {
  const age = ageWhenStripped(record);
  if (age === undefined || readingChoice(record, 'stripped') !== 'clean') return undefined;
  const sinceCasting = readingValue(record, 'stripAge');
  return { age, young: tooYoungToEstimate({ adjustedAge: age, sinceCasting }) };
}

/** The mean temperature of a cure, K, that nobody means one to have; undefined: none such is written down. */
export function curedHot(record: BatchRecord): number | undefined {
  const mean = readingValue(record, 'cureTemperature');
  return mean !== undefined && mean > HOT ? mean : undefined;
}

/** What the top sank by, a share of the depth filled; undefined: not written down, or by all of it. `collapsed`: by more than leaves it the mix that was weighed. */
export function sunkShare(record: BatchRecord) {
  const [depth, sunk] = [readingValue(record, 'depth'), readingValue(record, 'sunk')];
  if (!depth || sunk === undefined || sunk >= depth) return undefined;
  const share = sunk / depth;
  return { share, collapsed: share > STILL_THAT_MIX * NEAR_ENOUGH };
}

/** Density of the dried piece and its ±, kg/m³, and how it was dried; undefined: not written down. */
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
