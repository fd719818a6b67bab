import { demand, demandWhole } from '../domain-error.ts';
import { justOver, SLIVER } from '../quantity/dust.ts';

/** When the foam is made: for each load as it is needed, or all of it before the first. */
type FoamMade = 'each' | 'once';

export interface DayPlan {
  readonly loads: number;
  /** Time each step of a load takes, s. */
  readonly base: number;
  readonly foam: number;
  readonly blend: number;
  /** Weighing, and one correction. */
  readonly weigh: number;
  readonly place: number;
  readonly foamMade: FoamMade;
  /**
   * 1: every step after the other. 2: the next base mix is made while a load is weighed and placed.
   */
  readonly hands: 1 | 2;
  /** The maximum age of the foam when it has been blended in, s. */
  readonly foamLasts: number;
  /** How long a blended load may wait before it is placed, s. */
  readonly mixLasts: number;
  /** How long a load in a form may wait for the next before the joint shows, s. */
  readonly joint: number;
}

export interface LoadTimes {
  readonly load: number;
  /** From the start of the day, s. */
  readonly start: number;
  readonly foamReady: number;
  readonly blended: number;
  readonly placed: number;
  /** Age of the oldest foam in it when blended, s. */
  readonly foamAge: number;
}

/** What makes the plan fail, most serious first. */
type Obstacle =
  | { readonly code: 'foam-too-old'; readonly load: number; readonly age: number }
  | { readonly code: 'mix-waits'; readonly load: number; readonly wait: number }
  | { readonly code: 'cold-joint'; readonly load: number; readonly wait: number };

export interface Clock {
  readonly loads: readonly LoadTimes[];
  readonly total: number;
  readonly obstacles: readonly Obstacle[];
  /** Codes of changes that would make it work, each tried alone. Empty if the plan works. */
  readonly remedies: readonly Remedy[];
  /** The number of larger loads that was tried: half as many. */
  readonly fewer: number;
}

export type Remedy =
  | 'foam-for-each-load'
  | 'a-second-pair-of-hands'
  | 'fewer-pieces'
  | 'a-larger-mixer'
  | 'quicker-steps';

/** More loads than fit in a day. */
const MOST_LOADS = 200;

/**
 * Whether a day's loads fit the time the foam allows: every load's start, foam, blending and
 * placing in order, compared with three limits.
 *
 * Foam ages from when the first of it leaves the lance. With foam made for each load its age when
 * blended is foam + blend; made once, it also waits for every earlier load. With two pairs of hands
 * the base mix of the next load is ready when the mixer is free after blending, as far as `base`
 * allows. In a larger mixer, making base mix and foam and placing take longer in proportion;
 * blending and weighing do not. No range: bookkeeping.
 *
 * @throws {DomainError} for a number of loads that is not whole and from 1 to 200 ('too-many-loads'
 *   above), a negative time, a limit not above 0
 * @source common-practice (the steps and who waits for whom; the limits are the caller's)
 */
export function dayClock(plan: DayPlan): Clock {
  const clock = timesOf(plan);
  const obstacles = obstaclesOf(plan, clock);
  const works = (change: Partial<DayPlan>) => {
    const changed = { ...plan, ...change };
    return obstaclesOf(changed, timesOf(changed)).length === 0;
  };
  const fewer = Math.ceil(plan.loads / 2);
  const larger = plan.loads / fewer;
  const tried: readonly (readonly [Remedy, Partial<DayPlan>])[] = [
    ['foam-for-each-load', { foamMade: 'each' }],
    ['a-second-pair-of-hands', { hands: 2 }],
    // The minimum: a single load, with the same times.
    ['fewer-pieces', { loads: 1 }],
    [
      'a-larger-mixer',
      {
        loads: fewer,
        base: plan.base * larger,
        foam: plan.foam * larger,
        place: plan.place * larger,
      },
    ],
    [
      'quicker-steps',
      {
        base: plan.base / 2,
        foam: plan.foam / 2,
        blend: plan.blend / 2,
        weigh: plan.weigh / 2,
        place: plan.place / 2,
      },
    ],
  ];
  const remedies =
    obstacles.length === 0
      ? []
      : tried.filter(([, change]) => works(change)).map(([remedy]) => remedy);
  return { loads: clock, total: clock.at(-1)!.placed, obstacles, remedies, fewer };
}

function timesOf(plan: DayPlan): readonly LoadTimes[] {
  const { loads, base, foam, blend, weigh, place, foamMade, hands } = plan;
  demand('loads', loads, 'count', { max: MOST_LOADS }, 'too-many-loads');
  demandWhole('loads', loads, { min: 1 });
  for (const [name, value] of Object.entries({ base, foam, blend, weigh, place }))
    demand(name, value, 'time', { min: 0 });
  for (const name of ['foamLasts', 'mixLasts', 'joint'] as const)
    demand(name, plan[name], 'time', { min: 0, aboveMin: true });

  const made: LoadTimes[] = [];
  let free = 0;
  for (let load = 1; load <= loads; load++) {
    const before = made.at(-1);
    // A helper starts the next base mix once the mixer is free, after blending.
    const start = before ? (hands === 2 ? before.blended : free) : 0;
    const baseReady = Math.max(start + base, free);
    // Foam made all at once is made while the first base mix waits, or before it.
    const foamTime = foamMade === 'each' ? foam : before ? 0 : foam * loads;
    const foamReady = baseReady + foamTime;
    const foamBegan =
      foamMade === 'each' || !before ? baseReady : made[0]!.foamReady - foam * loads;
    const blended = foamReady + blend;
    const placed = blended + weigh + place;
    made.push({ load, start, foamReady, blended, placed, foamAge: blended - foamBegan });
    free = placed;
  }
  return made;
}

function obstaclesOf(plan: DayPlan, loads: readonly LoadTimes[]): readonly Obstacle[] {
  const found: Obstacle[] = [];
  const old = loads.find(({ foamAge }) => passes(foamAge, plan.foamLasts));
  if (old) found.push({ code: 'foam-too-old', load: old.load, age: old.foamAge });
  const wait = plan.weigh + plan.place;
  if (passes(wait, plan.mixLasts)) found.push({ code: 'mix-waits', load: 1, wait });
  for (const [i, next] of loads.slice(1).entries()) {
    const between = next.placed - loads[i]!.placed;
    if (passes(between, plan.joint)) {
      found.push({ code: 'cold-joint', load: next.load, wait: between });
      break;
    }
  }
  return found;
}

/** Times late in the day are sums of many steps, so allow for rounding error. */
const passes = (time: number, limit: number) => time > justOver(limit, SLIVER);
