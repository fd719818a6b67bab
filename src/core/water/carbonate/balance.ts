import { demand } from '../../domain-error.ts';
import { waterActivity } from './activity.ts';
import { descend } from './descend.ts';
import { lnGammaOf } from './gamma.ts';
import { dot } from './linear.ts';
import { NotConverged } from './not-converged.ts';
import { COMPONENTS, SPECIES } from './species.ts';
import type { System } from './system.ts';

/**
 * What is to be solved, in the logarithms of the component activities u.
 *
 * Anything at a fixed activity (a mineral, a gas, a given pH) ties the u together: u = offset +
 * dry·ln a(H₂O) + Σ vₖ·columnₖ. The vₖ are free, and for each of them the same combination of the
 * components has a total that the fixed things cannot change.
 */
export interface Restriction {
  readonly offset: readonly number[];
  readonly dry: readonly number[];
  readonly columns: readonly (readonly number[])[];
  readonly totals: readonly number[];
  /** A first guess of each vₖ. */
  readonly guess: readonly number[];
  /** Components that are not there at all. */
  readonly absent: readonly boolean[];
}

/** Ions that take part in nothing but the ionic strength, mol/kg, all singly charged. */
export interface Inert {
  readonly cations: number;
  readonly anions: number;
  /** True when an inert ion is to be added until the charges balance. */
  readonly balance: boolean;
}

export interface Balanced {
  /** mol/kg of each species, in the order of SPECIES. */
  readonly molality: readonly number[];
  /** ln activity of each component, in the order of COMPONENTS. */
  readonly lnActivity: readonly number[];
  /** mol/kg. */
  readonly ionicStrength: number;
  readonly waterActivity: number;
  /** Charge of everything dissolved before any balancing ion, eq/kg. */
  readonly charge: number;
  /** The vₖ reached, to start a neighbouring problem from. */
  readonly free: readonly number[];
}

const ACTIVITY_STEPS = 200;
/** Ionic strength beyond which no activity model here means anything, mol/kg. */
const STRONGEST = 5;
/** Rounds above it before the water is taken to belong there. */
const TOO_STRONG_STEPS = 20;

/**
 * Solves the mass balances of a restricted system, activities included.
 *
 * At fixed activity coefficients the balances are the gradient of F(v) = Σ mᵢ(v) − Σ Tₖ vₖ, which
 * is convex, so a damped Newton descent has one place to end and finds it from any start. The
 * coefficients are renewed around it until the ionic strength stands still to one part in 10¹¹.
 * `near` is the answer to a neighbouring problem with the same unknowns, to start from.
 *
 * @throws {DomainError} when the water is too strong for any of the activity models.
 * @throws {NotConverged} rather than return anything that misses a balance by one part in 10¹⁰.
 * @source none: mass balances and convexity, worked out here; the chemistry is in `System`
 */
export function balance(
  system: System,
  restriction: Restriction,
  inert: Inert,
  near?: Balanced,
): Balanced {
  const { columns, offset, dry, absent } = restriction;
  const present = SPECIES.flatMap((s, i) =>
    s.of.every((n, c) => n === 0 || !absent[c]) ? [i] : [],
  );
  const rows = Float64Array.from(
    present.flatMap((i) => columns.map((column) => dot(SPECIES[i]!.of, column))),
  );
  const totals = Float64Array.from(restriction.totals);
  const base = present.map((i) => system.lnK[i]! + dot(SPECIES[i]!.of, offset));
  const perLnWater = present.map((i) => SPECIES[i]!.water + dot(SPECIES[i]!.of, dry));
  const free = Float64Array.from(near?.free ?? restriction.guess);
  const constant = new Float64Array(present.length);
  let strength = near?.ionicStrength ?? 0.001;
  let water = near?.waterActivity ?? 1;
  let tooStrong = 0;
  // Until the ionic strength settles there is no use in exact balances.
  let rough = true;
  for (let step = 1; step <= ACTIVITY_STEPS; step++) {
    const lnWater = Math.log(water);
    const lnGamma = lnGammaOf(system, strength);
    for (let i = 0; i < present.length; i++)
      constant[i] = base[i]! + perLnWater[i]! * lnWater - lnGamma[present[i]!]!;
    const molality = descend({ constant, rows, totals }, free, rough);
    const { next, dissolved, charge } = strengthOf(present, molality, inert);
    const change = Math.abs(next - strength);
    const still = !rough && change <= 1e-13 + 1e-11 * next;
    rough = change > 1e-6 * next;
    strength = Math.min(next, 2 * STRONGEST);
    water = Math.max(waterActivity(dissolved), 0.5);
    if (next > STRONGEST) tooStrong++;
    if (tooStrong > TOO_STRONG_STEPS) demandModel(next);
    if (!still) continue;
    demandModel(strength);
    const all = new Array<number>(SPECIES.length).fill(0);
    present.forEach((i, at) => {
      all[i] = molality[at]!;
    });
    const lnActivity = COMPONENTS.map((_, c) =>
      columns.reduce(
        (sum, column, k) => sum + column[c]! * free[k]!,
        offset[c]! + dry[c]! * lnWater,
      ),
    );
    return {
      molality: all,
      lnActivity,
      ionicStrength: strength,
      waterActivity: water,
      charge,
      free: [...free],
    };
  }
  throw new NotConverged('activity', ACTIVITY_STEPS);
}

function demandModel(strength: number): void {
  demand('ionicStrength', strength, 'count', { max: STRONGEST }, 'too-concentrated');
}

function strengthOf(present: readonly number[], molality: Float64Array, inert: Inert) {
  let twice = inert.cations + inert.anions;
  let dissolved = twice;
  let charge = inert.cations - inert.anions;
  for (let at = 0; at < present.length; at++) {
    const z = SPECIES[present[at]!]!.charge;
    twice += z * z * molality[at]!;
    charge += z * molality[at]!;
    dissolved += molality[at]!;
  }
  const added = inert.balance ? Math.abs(charge) : 0;
  return { next: (twice + added) / 2, dissolved: dissolved + added, charge };
}
