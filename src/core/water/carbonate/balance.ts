import { waterActivity } from './activity.ts';
import { atRest } from './at-rest.ts';
import { descentOf } from './descend.ts';
import { lnGammaOf } from './gamma.ts';
import { dot, room } from './linear.ts';
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

/**
 * Solves the mass balances of a restricted system, activities included.
 *
 * At fixed activity coefficients the balances are the gradient of F(v) = Σ mᵢ(v) − Σ Tₖ vₖ, which
 * is convex, so a damped Newton descent has one place to end and finds it from any start. That is of
 * the descent alone; the coefficients are renewed around it as `atRest` says.
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
  return balancer(system, restriction, inert)(restriction.offset, near);
}

/**
 * `balance` for many offsets of one restriction: what does not hang on them is laid out once. Range as
 * `balance`.
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
  /** The species that can be there. */
  readonly present: readonly number[];
  /** ln mᵢ of each at u = 0, filled anew in every round. */
  readonly constant: number[];
  /** That without its activity coefficient, in pure water. */
  readonly base: readonly number[];
  readonly perLnWater: readonly number[];
  readonly descent: ReturnType<typeof descentOf>;
}

/** The water at rest: balances at the coefficients of its own ionic strength. */
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

/** The species that can be there, and how ln mᵢ of each hangs on water and on the vₖ. */
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
