import { waterActivity } from './activity.ts';
import { atRest } from './at-rest.ts';
import { descentOf } from './descend.ts';
import { lnGammaOf } from './gamma.ts';
import { dot, room } from './linear.ts';
import { COMPONENTS, SPECIES } from './species.ts';
import type { System } from './system.ts';

/**
 * The problem to solve, in the logarithms u of the component activities.
 *
 * Everything at a fixed activity (a mineral, a gas, a given pH) constrains the u: u = offset +
 * dry·ln a(H₂O) + Σ vₖ·columnₖ. The vₖ are free. For each of them, the same combination of the
 * components has a known total, which the fixed activities do not affect.
 */
export interface Restriction {
  readonly offset: readonly number[];
  readonly dry: readonly number[];
  readonly columns: readonly (readonly number[])[];
  readonly totals: readonly number[];
  /** A first guess of each vₖ. */
  readonly guess: readonly number[];
  /** Components that are absent. */
  readonly absent: readonly boolean[];
}

/** Ions that contribute only to the ionic strength, mol/kg, all singly charged. */
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
  /** The vₖ found, from which a similar problem can start. */
  readonly free: readonly number[];
}

/**
 * Solves the mass balances of a restricted system, activities included.
 *
 * At fixed activity coefficients the balances are the gradient of F(v) = Σ mᵢ(v) − Σ Tₖ vₖ, which
 * is convex: a damped Newton descent finds its only minimum from any start. The coefficients are
 * updated around the descent by `atRest`. `near` is the solution of a similar problem with the same
 * unknowns, to start from.
 *
 * @throws {DomainError} if the water is too strong for the activity models.
 * @throws {NotConverged} if a balance is missed by more than one part in 10¹⁰.
 * @source none: mass balances and convexity, worked out here; the chemistry is in `System`
 */
export function balance(
  system: System,
  restriction: Restriction,
  inert: Inert,
  near?: Balanced,
): Balanced {
  return balancer(system, restriction, inert)(restriction.offset, near);
}

/**
 * `balance` for many offsets of one restriction: everything that does not depend on the offset is
 * prepared once. Range as `balance`.
 * @throws {DomainError} and {NotConverged} as `balance`.
 * @source none: bookkeeping
 */
export function balancer(
  system: System,
  restriction: Restriction,
  inert: Inert,
): (offset: readonly number[], near?: Balanced) => Balanced {
  const { present, rows, perLnWater } = laidOut(restriction);
  const constant = room(present.length);
  const descent = descentOf({ constant, rows, totals: restriction.totals });
  const base = room(present.length);
  return (offset, near) => {
    for (let at = 0; at < present.length; at++)
      base[at] = system.lnK[present[at]!]! + dot(SPECIES[present[at]!]!.of, offset);
    const work = { present, constant, base, perLnWater, descent };
    return settle(system, { ...restriction, offset }, inert, work, near);
  };
}

interface Work {
  /** The species that can be present. */
  readonly present: readonly number[];
  /** ln mᵢ of each at u = 0, updated in every round. */
  readonly constant: number[];
  /** The same without activity coefficient, in pure water. */
  readonly base: readonly number[];
  readonly perLnWater: readonly number[];
  readonly descent: ReturnType<typeof descentOf>;
}

/** Solves the balances with the activity coefficients of the solution itself. */
function settle(
  system: System,
  { columns, offset, dry, guess }: Restriction,
  inert: Inert,
  { present, constant, base, perLnWater, descent }: Work,
  near: Balanced | undefined,
): Balanced {
  const free = [...(near?.free ?? guess)];
  let molality: readonly number[] = [];
  let [lnWater, charge] = [0, 0];
  const { strength, water } = atRest(
    (strength, water, rough) => {
      lnWater = Math.log(water);
      const lnGamma = lnGammaOf(system, strength);
      for (let i = 0; i < present.length; i++)
        constant[i] = base[i]! + perLnWater[i]! * lnWater - lnGamma[present[i]!]!;
      molality = descent(free, rough);
      const there = strengthOf(present, molality, inert);
      charge = there.charge;
      return { strength: there.strength, water: waterActivity(there.dissolved) };
    },
    { strength: near?.ionicStrength ?? 0.001, water: near?.waterActivity ?? 1 },
  );
  const all = new Array<number>(SPECIES.length).fill(0);
  present.forEach((i, at) => {
    all[i] = molality[at]!;
  });
  const lnActivity = COMPONENTS.map((_, c) =>
    columns.reduce((sum, column, k) => sum + column[c]! * free[k]!, offset[c]! + dry[c]! * lnWater),
  );
  return {
    molality: all,
    lnActivity,
    ionicStrength: strength,
    waterActivity: water,
    charge,
    free,
  };
}

/** The species that can be present, and how ln mᵢ of each depends on water and on the vₖ. */
function laidOut({ columns, dry, absent }: Restriction) {
  const present: number[] = [];
  for (let i = 0; i < SPECIES.length; i++)
    if (!SPECIES[i]!.of.some((n, c) => n !== 0 && absent[c])) present.push(i);
  const size = columns.length;
  const rows = room(present.length * size);
  const perLnWater = room(present.length);
  for (let at = 0; at < present.length; at++) {
    const { of, water } = SPECIES[present[at]!]!;
    for (let k = 0; k < size; k++) rows[at * size + k] = dot(of, columns[k]!);
    perLnWater[at] = water + dot(of, dry);
  }
  return { present, rows, perLnWater };
}

function strengthOf(present: readonly number[], molality: readonly number[], inert: Inert) {
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
  return { strength: (twice + added) / 2, dissolved: dissolved + added, charge };
}
