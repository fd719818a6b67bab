import { demand, ifAllowed } from '../domain-error.ts';
import { BASE_WATER_CEMENT, isBaseMix } from '../mix/water-cement-limits.ts';
import { justOver, SLIVER } from '../quantity/dust.ts';
import { firstOrder } from '../uncertainty/first-order.ts';
import { type Limits, nearestPossible } from './nearest-possible.ts';
import { type BatchWeighed, type Particles, type Reconciled, reconcile } from './reconcile.ts';

/** The standard uncertainty of each reading, SI, by name; absent: treated as exact. */
export type Doubts = Readonly<Partial<Record<keyof BatchWeighed, number>>>;

/** The possible values of each reading, SI, by name; absent: anything. */
export type Possible = Readonly<Partial<Record<keyof BatchWeighed, Limits>>>;

/** A reading that would explain a contradiction, and its error. */
interface Suspect {
  readonly reading: keyof BatchWeighed;
  /** The value it would have to have, SI: the nearest to the reading. */
  readonly to: number;
  /** The change that would take, SI. */
  readonly by: number;
  /** The same in its own standard uncertainties. */
  readonly doubts: number;
}

type Finding =
  /** Water and cement as weighed in are no possible base mix: swapped, or in another unit. */
  | 'no-such-base-mix'
  /** The mix is heavier than its parts could be without any gas. */
  | 'heavier-than-airless'
  /** The mix holds more gas than the foam brought. */
  | 'more-air-than-foam'
  /** More mass came out than went in. */
  | 'gained-mass'
  /** Mass is missing: spilled, left in the mixer, or mis-tared. */
  | 'lost-mass'
  /** The readings are too uncertain to say how much foam survived. */
  | 'cannot-tell'
  /** What came out is too uncertain to say whether mass is missing. */
  | 'cannot-tell-mass'
  | 'consistent';

export interface Verdict extends Reconciled {
  readonly finding: Finding;
  /** Standard uncertainties of the results, in their units. */
  readonly u: Readonly<Record<'wetDensity' | 'yield' | 'survival' | 'air' | 'waterCement', number>>;
  /** Of mass in minus mass out, kg; undefined if that is. */
  readonly uMissing: number | undefined;
  /** The readings that would explain the finding, most likely first; empty if consistent. */
  readonly suspects: readonly Suspect[];
}

/**
 * The number of standard uncertainties that makes a contradiction: a level of about 95 %.
 * @source jcgm-100 6.2, 6.3 (k = 2)
 */
const CONTRADICTION = 2;
/**
 * Beyond this many of its own standard uncertainties no slip of the scale explains a reading. A
 * choice.
 * @source common-practice
 */
export const HARDLY = 10;
/** Mass that may be lost in films on tools, as a share. @source common-practice */
const FILM = 0.01;
/**
 * The standard uncertainty above which nothing is concluded: of the survival; and of mass in minus
 * mass out, as a share of mass in.
 * @source common-practice
 */
const TOO_DOUBTFUL = 0.25;
/**
 * How far above 1 a survival is meaningless, however wide its uncertainty.
 * @source common-practice
 */
const TOO_MUCH = 0.1;

/**
 * Do the readings of a batch agree with each other, and if not, which one is most likely wrong?
 *
 * A base mix with a w/c outside 0.2–1.25 is not one that is foamed, so the rest says nothing about
 * the foam. Each result's uncertainty is propagated to first order. A survival more than two of
 * these above 1 or below 0 contradicts the readings. So does mass that appears, or that is missing
 * beyond two of them and a film of 1 %. If that uncertainty is more than a quarter of what went in,
 * nothing is said about missing mass. A survival a tenth above 1 that is no contradiction means
 * that the readings are too uncertain to tell.
 *
 * A single reading explains the finding if, with the others unchanged, some value of it leaves no
 * contradiction: the nearest to the reading at which the survival is 0 or 1, nothing is missing, or
 * all water is twice the cement; or else a limit of it. The most likely is off by the fewest of its
 * own uncertainties.
 *
 * Errors are assumed independent. If foam and mix share one bucket, its error moves `vessel`,
 * `foamVolume` and `foamDensity` together, and a survival above 0 by less. The survival's
 * uncertainty then comes out too large, so more gas than the foam brought may go unnoticed. No
 * range is published.
 *
 * @param batch as `reconcile` takes it; `u` standard uncertainties of its readings, same units;
 *   `possible` what they can be; `balance` what it comes to
 * @throws {DomainError} as `balance`; a negative uncertainty
 * @source jcgm-100 5.1.2 (first order), 6.2 (k = 2); astm-c138; astm-c869 Table 1 note (w/c 0.2);
 *   thakrele-2014 (w/c 1.25); common-practice (w/c 2)
 */
export function judgeBatch(
  batch: BatchWeighed & Particles,
  u: Doubts,
  possible: Possible = {},
  balance: (batch: BatchWeighed & Particles) => Reconciled = reconcile,
): Verdict {
  const weighing = weighingOf(batch, u, balance);
  const { found, uSurvival, uMost, finding } = look(batch, weighing);
  const doubt = (result: Result) => doubtOf(result, batch, weighing);
  return {
    ...found,
    finding,
    u: {
      wetDensity: doubt((r) => r.wetDensity),
      yield: doubt((r) => r.yield),
      survival: uSurvival,
      air: doubt((r) => r.air),
      waterCement: doubt((r) => r.waterCement),
    },
    uMissing: found.missing === undefined ? undefined : uMost,
    suspects: suspectsOf(batch, finding, weighing, possible),
  };
}

/**
 * Is a mix heavier than its parts could be without any gas? The same finding as `judgeBatch`, for
 * callers that need only that, and often. No range is published.
 * @param batch as `reconcile` takes it, of water and cement that make a base mix; `u` standard
 *   uncertainties of its readings, same units
 * @throws {DomainError} as `judgeBatch`
 * @source jcgm-100 5.1.2 (first order), 6.2 (k = 2); astm-c138
 */
export function heavierThanAirless(batch: Batch, u: Doubts): boolean {
  const weighing = weighingOf(batch, u, reconcile);
  const lives = survival(reconcile(batch));
  return lives < 0 && isBelowNothing(lives, doubtOf(survival, batch, weighing));
}

type Reading = keyof BatchWeighed;
type Result = (r: Reconciled) => number;
type Batch = BatchWeighed & Particles;

/** The uncertain readings, their standard uncertainties, and the results of a batch. */
interface Weighing {
  readonly names: readonly Reading[];
  readonly u: Doubts;
  readonly balance: (batch: Batch) => Reconciled;
}

function weighingOf(batch: Batch, u: Doubts, balance: Weighing['balance']): Weighing {
  for (const doubt of Object.values(u)) demand('uncertainty', doubt, 'count', { min: 0 });
  // A reading that was not taken has no uncertainty.
  const names = (Object.keys(u) as Reading[]).filter((name) => batch[name] !== undefined);
  return { names, u, balance };
}

/** Standard uncertainty of a result, in its unit. */
function doubtOf(result: Result, batch: Batch, { names, u, balance }: Weighing): number {
  const f = (x: readonly number[]) =>
    result(balance({ ...batch, ...Object.fromEntries(names.map((name, i) => [name, x[i]])) }));
  const x = names.map((name) => batch[name]!);
  const doubts = names.map((name) => u[name]!);
  // A reading at the edge of its domain has no slope to propagate its uncertainty along.
  return ifAllowed(() => firstOrder(f, x, doubts).u) ?? Infinity;
}

/** The results of a batch, and the finding within their uncertainties. */
function look(batch: Batch, weighing: Weighing) {
  const found = weighing.balance(batch);
  const uSurvival = doubtOf(survival, batch, weighing);
  const uMost = found.mostMissing === undefined ? 0 : doubtOf(mostMissing, batch, weighing);
  return { found, uSurvival, uMost, finding: contradiction(found, uSurvival, uMost) };
}

/** The readings any of which would explain the finding, most likely first. */
function suspectsOf(
  batch: Batch,
  finding: Finding,
  weighing: Weighing,
  possible: Possible,
): readonly Suspect[] {
  const { names, u, balance } = weighing;
  const cannotBe = finding === 'lost-mass' ? [...CONTRADICTORY, finding] : CONTRADICTORY;
  if (!cannotBe.includes(finding) || finding === 'no-such-base-mix') return [];
  const closes = batch.placed !== undefined || batch.leftOver !== undefined;
  const ends = closes ? [...ENDS, mostMissing] : ENDS;
  const can = (at: Batch): boolean => {
    const there = balance(at);
    const isNot = (uSurvival: number, uMost: number) =>
      cannotBe.includes(contradiction(there, uSurvival, uMost));
    if (isSoup(there)) return false;
    // Most are possible as they stand, or within no plausible ±: only the rest need the costly
    // search.
    if (!isNot(SLIVER, SLIVER * there.massIn)) return true;
    if (isNot(TOO_DOUBTFUL, TOO_DOUBTFUL * there.massIn)) return false;
    return !cannotBe.includes(look(at, weighing).finding);
  };
  const nearest = (reading: Reading): Suspect[] => {
    const [read, doubt] = [batch[reading]!, u[reading]!];
    const at = (value: number) => ({ ...batch, [reading]: value });
    const to = nearestPossible({
      read,
      doubt,
      limits: possible[reading],
      // Multiplied by the bucket’s volume, each of these is linear in any single reading.
      ends: ends.map((end) => (value) => end(balance(at(value))) * at(value).vessel),
      can: (value) => can(at(value)),
    });
    return to === undefined
      ? []
      : [{ reading, to, by: to - read, doubts: Math.abs(to - read) / doubt }];
  };
  return names
    .filter((name) => u[name]! > 0)
    .flatMap(nearest)
    .toSorted((a, b) => a.doubts - b.doubts);
}

const survival: Result = (r) => r.survival;
/** Only called if something that came out was measured. */
const mostMissing: Result = (r) => r.mostMissing!;

/** Findings that no batch can really have; spilling some of it is possible. */
const CONTRADICTORY: readonly Finding[] = [
  'no-such-base-mix',
  'heavier-than-airless',
  'more-air-than-foam',
  'gained-mass',
];

/** More water, including the foam’s, than stays in suspension: no reading is explained by that. */
const isSoup = ({ waterCement }: Reconciled) =>
  waterCement > justOver(BASE_WATER_CEMENT.max, SLIVER);

/**
 * Mass in, kg, minus what would have gone in if this share of the gas had survived, at the density
 * weighed.
 */
const beyond =
  (share: number): Result =>
  (r) =>
    r.massIn - r.wetDensity * (r.airless + share * r.gasIn);

/**
 * Zero at the limits of a possible batch: no gas, all that the foam brought, or the most water that
 * stays in suspension.
 */
const ENDS: readonly Result[] = [
  beyond(0),
  beyond(1),
  (r) => r.waterCement - BASE_WATER_CEMENT.max,
];

const isBelowNothing = (survives: number, u: number) => survives < -CONTRADICTION * u;

function contradiction(found: Reconciled, u: number, uMost: number): Finding {
  if (!isBaseMix(found.waterCementBase)) return 'no-such-base-mix';
  if (isBelowNothing(found.survival, u)) return 'heavier-than-airless';
  if (found.survival > 1 + CONTRADICTION * u) return 'more-air-than-foam';
  const { missing: lost = 0, mostMissing: most = 0, massIn } = found;
  // What was not measured can only increase what came out.
  if (most < -CONTRADICTION * uMost) return 'gained-mass';
  if (lost > Math.max(CONTRADICTION * uMost, FILM * massIn)) return 'lost-mass';
  if (u > TOO_DOUBTFUL || found.survival > 1 + TOO_MUCH) return 'cannot-tell';
  return uMost > TOO_DOUBTFUL * massIn ? 'cannot-tell-mass' : 'consistent';
}
