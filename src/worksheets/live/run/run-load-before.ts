import { same } from '../../../bench/entries.ts';
import { MIX_TARE, MIX_VESSEL } from '../../../bench/mix-bucket.ts';
import { carriedReadings, foamInOf, sameVessel, vesselOf } from '../../../bench/records/carried.ts';
import { type BatchRecord, filled } from '../../../bench/records/record.ts';
import type { FoamIn, Going, LoadBefore, RunPlan } from '../../../bench/run.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { FOAM } from '../../shared/words/amounts.ts';
import { weighedOut } from '../../shared/words/as-said.ts';
import { nameOf } from '../records/record-words.ts';
import { planMass } from './run-base.ts';
import { runPlan } from './run-plan.ts';
import { isOfNow, isUnmixed } from './run-unfinished.ts';

/** Relative difference up to which amounts of two plans count as the same. A choice. */
export const SAME = 0.005;

const alike = (a: number, b: number) => Math.abs(a - b) <= SAME * a;

/** The batch mixed before this one on the same day: the latest saved. */
export const loadBefore = (
  { id }: BatchRecord,
  records: readonly BatchRecord[],
  now = Date.now(),
): BatchRecord | undefined =>
  records
    .filter((one) => one.id !== id && !one.invented && !isUnmixed(one) && isOfNow(one, now))
    .sort((a, b) => b.changed.localeCompare(a.changed))[0];

const whole = ({ tare, vessel }: FoamIn) => filled(tare) && filled(vessel);

/**
 * A batch about to begin, with the empty weight and volume of the bucket of the one before; unless
 * the bench has a newer one for the mix, or one was typed into the batch. `foamIn`: the foam's
 * vessel, if the bench has a different one.
 */
export function withBucketOf(
  before: BatchRecord,
  record: BatchRecord,
): { readonly record: BatchRecord; readonly foamIn?: FoamIn } {
  const [used, has] = [before, record].map(({ readings }) => vesselOf(readings));
  const [then, now] = [before, record].map((of) => vesselOf(carriedReadings(of)));
  const mixBuckets = [MIX_TARE, MIX_VESSEL].some((key) => filled(record.bench[key]));
  if (!whole(used!) || !sameVessel(has!, now!) || (mixBuckets && !sameVessel(then!, now!)))
    return { record };
  const foam = foamInOf(record);
  return {
    record: { ...record, readings: { ...record.readings, ...used } },
    ...(whole(foam) && !sameVessel(foam, used!) && { foamIn: foam }),
  };
}

/**
 * What the next batch needs of the one before: its name, its bucket, and its plan, if that is the
 * reader's own.
 */
function toldOf(before: BatchRecord, say: Say): LoadBefore {
  const plan = runPlan(before.bench, before.kept, say);
  return {
    name: nameOf(before),
    vessel: vesselOf(before.readings),
    ...(plan && !plan.example && { plan }),
  };
}

/**
 * The plan of the load before, if this is the next load of the same batch with different amounts.
 */
export function replannedLoad(
  before: LoadBefore | undefined,
  now: RunPlan | undefined,
): RunPlan | undefined {
  const was = before?.plan;
  if (!was || !now || now.example || now.loads < 2 || now.loads !== was.loads) return undefined;
  const [much, little] = [was, now].map((plan) => planMass(plan) / plan.wetDensity);
  if (!alike(much!, little!) || !alike(was.wetDensity, now.wetDensity)) return undefined;
  const amounts = ['cement', 'water', 'sand', 'foamVolume'] as const;
  return amounts.every((name) => alike(was[name], now[name])) ? undefined : was;
}

/**
 * Why a load has different amounts from the one before, and whether the solution mixed for all
 * loads is enough.
 */
export function replannedWords(
  { name }: LoadBefore,
  was: RunPlan,
  now: RunPlan,
  say: Say,
): readonly string[] {
  const foam = ({ foamDensity }: RunPlan) => say(foamDensity, 'density', { units: FOAM });
  const why = alike(was.foamDensity, now.foamDensity)
    ? `The plan on the bench is another than for “${name}”`
    : `The foam is planned at ${foam(now)} now, as last weighed or typed; for “${name}” it was ${foam(was)}`;
  const words = [`${why}. As much mix, as dense, takes other amounts: each is told beside.`];
  if (was.solution && now.solution && !alike(was.solution, now.solution)) {
    const [mixed, asked] = [was, now].map(({ solution }) => say(solution!, 'volume'));
    words.push(
      `Foaming solution: ${mixed} was planned for all loads, and by this plan they take ${asked}. ${now.solution < was.solution ? 'What was mixed does; some is left over.' : 'Look whether what is left does, and mix what is missing first.'}`,
    );
  }
  return words;
}

/** In words: the amount of the load before, if it differs. */
export const tookBefore = (
  was: RunPlan | undefined,
  now: RunPlan | undefined,
  name: 'cement' | 'water' | 'sand',
  say: Say,
): readonly string[] =>
  was && now && !alike(was[name], now[name])
    ? [`The load before took ${say(was[name], 'mass', weighedOut(was[name], say))}.`]
    : [];

/** Whether a bucket is the one taken over from the batch before. */
export const isCarried = (before: LoadBefore | undefined, vessel: FoamIn): boolean =>
  before !== undefined && whole(vessel) && same(before.vessel, vesselOf(vessel));

/** The run of a batch that follows another, as it begins. */
export const following = (
  going: Going,
  before: BatchRecord,
  foamIn: FoamIn | undefined,
  say: Say,
): Going => ({ ...going, before: toldOf(before, say), ...(foamIn && { foamIn }) });
