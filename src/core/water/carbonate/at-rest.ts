import { demand } from '../../domain-error.ts';
import { NotConverged } from './not-converged.ts';
import { root } from './root.ts';

interface Dissolved {
  /** Ionic strength, mol/kg. */
  readonly strength: number;
  readonly water: number;
}

/** What dissolves by the coefficients of a strength and a water activity; `rough` where about is enough. */
type Ask = (strength: number, water: number, rough: boolean) => Dissolved;

/** Rounds in which a usual water comes to rest; what takes more is bracketed. */
const ROUNDS = 20;
/** Ionic strength beyond which no activity model here means anything, mol/kg. */
const STRONGEST = 5;
/** Rounds above it before the water is asked whether it belongs there. */
const TOO_STRONG_ROUNDS = 4;
/** Activity below which no water is reckoned: such a one is far too strong. */
const LEAST_WATER = 0.5;

/**
 * The ionic strength (mol/kg) and water activity by whose coefficients just so much dissolves, to one part in 10¹¹.
 *
 * Each round takes what the one before asked for, by the straight line through two; usual water rests after some
 * five. Strong coefficients may throw the rounds to and fro: g(I) − I, g the strength that dissolves, is then
 * bracketed between nothing, where g is above, and the strongest water. Where g is above there too, the water is
 * refused. A g that crosses I more than once has one of its crossings given. Range: I to 5 mol/kg.
 *
 * `ask` is asked last at what is returned.
 * @throws {DomainError} 'too-concentrated'; {NotConverged} where the answer is missed; and as `ask`.
 * @source none: a fixed point, sought by secants and a bracket
 */
export function atRest(ask: Ask, first: Dissolved): Dissolved {
  return inRounds(ask, first) ?? bracketed(ask);
}

/** Undefined where the rounds do not come to rest, or stay beyond every model. */
function inRounds(ask: Ask, first: Dissolved): Dissolved | undefined {
  let { strength, water } = first;
  let tooStrong = 0;
  let before: { readonly tried: number; readonly next: number } | undefined;
  // Until the ionic strength settles there is no use in exact balances.
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

/** At each strength the water is settled first, by a bracket of its own: the drier it is, the less dissolves. */
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

/** How far apart two strengths may be, mol/kg, to be called the same. */
const standstill = (strength: number): number => 1e-13 + 1e-11 * strength;

/**
 * Where the ionic strength will stand still, by the straight line through two rounds; the last round's own
 * while they tell no slope, or one by which the line runs away.
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
