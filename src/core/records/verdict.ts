import { DomainError, demand } from '../domain-error.ts';
import { isBaseMix } from '../mix/water-cement-limits.ts';
import { firstOrder } from '../uncertainty/first-order.ts';
import { type BatchWeighed, type Particles, type Reconciled, reconcile } from './reconcile.ts';

/** A reading's standard uncertainty, SI, by its name; absent: taken as exact. */
export type Doubts = Readonly<Partial<Record<keyof BatchWeighed, number>>>;

/** A reading that would explain a contradiction, and how it would have to be off. */
interface Suspect {
  readonly reading: keyof BatchWeighed;
  /** What it would have to be changed by, SI. */
  readonly by: number;
  /** The same in its own standard uncertainties. */
  readonly doubts: number;
}

type Finding =
  /** Water and cement as weighed in make no base mix: swapped, or in another unit. */
  | 'no-such-base-mix'
  /** The mix is heavier than its parts could be without any gas. */
  | 'heavier-than-airless'
  /** The mix holds more gas than the foam brought. */
  | 'more-air-than-foam'
  /** More mass came out than went in. */
  | 'gained-mass'
  /** Mass is missing: spilled, left in the mixer, or mis-tared. */
  | 'lost-mass'
  /** The readings are too doubtful to say how much foam lived. */
  | 'cannot-tell'
  | 'consistent';

export interface Verdict extends Reconciled {
  readonly finding: Finding;
  /** Standard uncertainties of the results, in their units. */
  readonly u: Readonly<Record<'wetDensity' | 'yield' | 'survival' | 'air' | 'waterCement', number>>;
  /** Of mass in less mass out, kg; undefined when that is. */
  readonly uMissing: number | undefined;
  /** The readings that would explain the finding, the likeliest first; empty when consistent. */
  readonly suspects: readonly Suspect[];
}

/** How many standard uncertainties make a contradiction: a level of about 95 %. @source jcgm-100 6.2, 6.3 (k = 2) */
const CONTRADICTION = 2;
/** Mass that may go missing in films on tools, as a share. @source common-practice */
const FILM = 0.01;
/** The survival's standard uncertainty above which nothing is said of it. @source common-practice */
const TOO_DOUBTFUL = 0.25;
/** How far above 1 a survival says nothing, however wide its uncertainty. @source common-practice */
const TOO_MUCH = 0.1;

/**
 * Do the readings of a batch agree with each other, and if not, which one is most likely wrong?
 *
 * A base mix of a w/c outside 0.2–1.25 is none that is foamed: the rest then says nothing of the foam.
 * Each result's uncertainty is carried to first order. A survival more than two of them above 1 or
 * below 0 contradicts the readings, as does mass that appears, or goes missing beyond two of them and
 * a film of 1 %. One a tenth above 1 that is no contradiction owes that to readings too doubtful to tell. A single reading x explains a gap Δ of the result when it is off by Δ/|∂/∂x|; the
 * likeliest is the one that has to be off by the fewest of its own uncertainties. Errors are taken as independent: of
 * one bucket for foam and mix, whose error moves `vessel`, `foamVolume` and `foamDensity` together and a survival
 * above 0 by less, the survival's uncertainty comes out too large, so that more gas than the foam brought may pass. No
 * range is published.
 *
 * @param batch as `reconcile` takes it; `u` standard uncertainties of its readings, same units
 * @throws {DomainError} as `reconcile`; a negative uncertainty
 * @source jcgm-100 5.1.2 (first order), 6.2 (k = 2); astm-c138; astm-c869 Table 1 note (w/c 0.2);
 *   thakrele-2014 (w/c 1.25)
 */
export function judgeBatch(batch: BatchWeighed & Particles, u: Doubts): Verdict {
  for (const doubt of Object.values(u)) demand('uncertainty', doubt, 'count', { min: 0 });
  const found = reconcile(batch);
  // What was not read is not in doubt.
  const names = (Object.keys(u) as (keyof BatchWeighed)[]).filter(
    (name) => batch[name] !== undefined,
  );
  const doubtOf = (result: Result): number => {
    const f = (x: readonly number[]) =>
      result(reconcile({ ...batch, ...Object.fromEntries(names.map((name, i) => [name, x[i]])) }));
    try {
      return firstOrder(
        f,
        names.map((name) => batch[name] as number),
        names.map((name) => u[name]!),
      ).u;
    } catch (error) {
      if (!(error instanceof DomainError)) throw error;
      // A reading at the edge of what can be has no slope to carry its doubt along.
      return Infinity;
    }
  };
  const uSurvival = doubtOf(survival);
  const uMost = found.mostMissing === undefined ? 0 : doubtOf(mostMissing);
  const { finding, off } = contradiction(found, uSurvival, uMost);
  return {
    ...found,
    finding,
    u: {
      wetDensity: doubtOf((r) => r.wetDensity),
      yield: doubtOf((r) => r.yield),
      survival: uSurvival,
      air: doubtOf((r) => r.air),
      waterCement: doubtOf((r) => r.waterCement),
    },
    uMissing: found.missing === undefined ? undefined : uMost,
    suspects: off ? suspects(batch, names, u, off) : [],
  };
}

type Result = (r: Reconciled) => number;

const survival: Result = (r) => r.survival;
/** Asked only where something that came out was measured. */
const mostMissing: Result = (r) => r.mostMissing!;

/** A result that cannot be, and what would have to be added to it. */
interface Off {
  readonly result: Result;
  readonly gap: number;
}

function contradiction(
  found: Reconciled,
  u: number,
  uMost: number,
): { readonly finding: Finding; readonly off?: Off } {
  if (!isBaseMix(found.waterCementBase)) return { finding: 'no-such-base-mix' };
  if (found.survival < -CONTRADICTION * u)
    return { finding: 'heavier-than-airless', off: { result: survival, gap: -found.survival } };
  if (found.survival > 1 + CONTRADICTION * u)
    return { finding: 'more-air-than-foam', off: { result: survival, gap: 1 - found.survival } };
  const { missing: lost = 0, mostMissing: most = 0, massIn } = found;
  const off = { result: mostMissing, gap: -most };
  // What was not measured can only add to what came out.
  if (most < -CONTRADICTION * uMost) return { finding: 'gained-mass', off };
  if (lost > Math.max(CONTRADICTION * uMost, FILM * massIn)) return { finding: 'lost-mass', off };
  const doubtful = u > TOO_DOUBTFUL || found.survival > 1 + TOO_MUCH;
  return { finding: doubtful ? 'cannot-tell' : 'consistent' };
}

function suspects(
  batch: BatchWeighed & Particles,
  names: readonly (keyof BatchWeighed)[],
  u: Doubts,
  { result, gap }: Off,
): Suspect[] {
  const all = names.flatMap((reading) => {
    const x = batch[reading] as number;
    const step = u[reading]! / 10;
    try {
      const slope =
        (result(reconcile({ ...batch, [reading]: x + step })) - result(reconcile(batch))) / step;
      const by = gap / slope;
      return Number.isFinite(by) ? [{ reading, by, doubts: Math.abs(by) / u[reading]! }] : [];
    } catch (error) {
      if (!(error instanceof DomainError)) throw error;
      return [];
    }
  });
  return all.sort((a, b) => a.doubts - b.doubts);
}
