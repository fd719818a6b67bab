import { demand } from '../../domain-error.ts';
import { NotConverged } from './not-converged.ts';
import { root } from './root.ts';

interface Dissolved {
  /** Ionic strength, mol/kg. */
  readonly strength: number;
  readonly water: number;
}

/**
 * Solves the balances with the activity coefficients of an ionic strength and a water activity, and
 * gives those of the solution found; `rough` if an approximation is enough.
 */
type Ask = (strength: number, water: number, rough: boolean) => Dissolved;

/**
 * Rounds within which the iteration converges for usual waters; after that, bisection takes over.
 */
const ROUNDS = 20;
/** Ionic strength above which no activity model here is valid, mol/kg. */
const STRONGEST = 5;
/** Rounds above that strength before the iteration is given up. */
const TOO_STRONG_ROUNDS = 4;
/** The lowest water activity used: below it the solution is far too strong. */
const LEAST_WATER = 0.5;

/**
 * The self-consistent ionic strength (mol/kg) and water activity: the coefficients they imply lead
 * to a solution with the same strength and activity, to one part in 10¹¹.
 *
 * A fixed-point iteration accelerated by secants, which converges in about five rounds for usual
 * waters. In strong solutions it may oscillate. Then g(I) − I, with g the strength of the solution
 * found, is bracketed between 0, where it is positive, and the strongest water; if it is positive
 * there too, the water is refused. If there are several solutions, one of them is returned. Range:
 * I to 5 mol/kg.
 *
 * The last call of `ask` is at the result.
 * @throws {DomainError} 'too-concentrated'; {NotConverged} if no solution is found; and as `ask`.
 * @source none: a fixed point, found by secants and a bracket
 */
export function atRest(ask: Ask, first: Dissolved): Dissolved {
  return inRounds(ask, first) ?? bracketed(ask);
}

/** Undefined if the iteration does not converge, or stays above the valid strength. */
function inRounds(ask: Ask, first: Dissolved): Dissolved | undefined {
  let { strength, water } = first;
  let tooStrong = 0;
  let before: { readonly tried: number; readonly next: number } | undefined;
  // Exact balances are not worth their cost until the ionic strength has nearly converged.
  let rough = true;
  for (let round = 1; round <= ROUNDS && tooStrong <= TOO_STRONG_ROUNDS; round++) {
    const found = ask(strength, water, rough);
    const next = found.strength;
    const change = Math.abs(next - strength);
    const still = !rough && change <= standstill(next);
    rough = change > 1e-6 * next;
    const tried = strength;
    strength = Math.min(ahead(before, { tried, next }), 2 * STRONGEST);
    water = Math.max(found.water, LEAST_WATER);
    before = { tried, next };
    if (next > STRONGEST) tooStrong++;
    if (!still) continue;
    demandModel(strength);
    return { strength, water };
  }
  return undefined;
}

/** Brackets the strength; at each, the water activity is first found by a bracket of its own. */
function bracketed(ask: Ask): Dissolved {
  let [dissolved, water] = [0, 1];
  const over = (strength: number) => {
    const wetter = (tried: number) => {
      const found = ask(strength, tried, false);
      dissolved = found.strength;
      return Math.max(found.water, LEAST_WATER) - tried;
    };
    water = root(wetter, { low: LEAST_WATER, high: 1 }, { x: 1e-14, f: 1e-13 });
    wetter(water);
    return dissolved - strength;
  };
  const atHigh = over(STRONGEST);
  demandModel(STRONGEST + Math.max(atHigh, 0));
  const between = { low: 0, high: STRONGEST, atLow: over(0), atHigh };
  const strength = root(over, between, { x: standstill(0), f: standstill(0) });
  if (Math.abs(over(strength)) > standstill(strength)) throw new NotConverged('activity', ROUNDS);
  return { strength, water };
}

/** Two strengths that differ by no more than this, mol/kg, count as equal. */
const standstill = (strength: number): number => 1e-13 + 1e-11 * strength;

/**
 * The next ionic strength to try, by the secant through the last two rounds; without a usable
 * slope, the result of the last round.
 */
function ahead(
  before: { readonly tried: number; readonly next: number } | undefined,
  { tried, next }: { readonly tried: number; readonly next: number },
): number {
  if (!before || before.tried === tried) return next;
  const slope = (next - before.next) / (tried - before.tried);
  return slope < 0.5 ? next + (slope * (next - tried)) / (1 - slope) : next;
}

function demandModel(strength: number): void {
  demand('ionicStrength', strength, 'count', { max: STRONGEST }, 'too-concentrated');
}
