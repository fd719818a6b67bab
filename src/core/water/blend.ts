import { DomainError, demand } from '../domain-error.ts';
import { speciateWater } from './carbonate/speciate.ts';
import type { Speciation } from './carbonate/speciation.ts';
import type { CarbonateWater } from './carbonate/water.ts';

/** One water of a blend: how much of it, and what it carries. */
export interface Part {
  /** Any measure of amount, the same for every part: m³, kg, a fraction. */
  readonly amount: number;
  /** A conserved quantity per unit of that amount: hardness, alkalinity, chloride, temperature. */
  readonly value: number;
}

/**
 * The value of any conserved quantity in a blend: Σ amount·value / Σ amount.
 *
 * Hardness, alkalinity, total carbon and every ion are conserved; temperature nearly; pH is not
 * (see `blendWaters`). No range is published: it is a balance.
 *
 * @throws {DomainError} for no parts, a negative amount, or amounts that add up to nothing.
 * @source definition
 */
export function blendOf(parts: readonly Part[]): number {
  let [amount, carried] = [0, 0];
  for (const part of parts) {
    demand('amount', part.amount, 'ratio', { min: 0 });
    amount += part.amount;
    carried += part.amount * part.value;
  }
  demand('amount', amount, 'ratio', { min: 0, aboveMin: true });
  return carried / amount;
}

export type BlendToTarget =
  | {
      readonly reached: true;
      readonly fractions: readonly number[];
      readonly volumes: readonly number[];
    }
  | { readonly reached: false; readonly least: number; readonly most: number };

/**
 * How much of each water makes a batch of a target hardness (or anything conserved).
 *
 * `values` is that quantity in each water, in the order in which they should be used up: the blend
 * takes as much of the first as possible, and dilutes it with the one other that does so in the
 * smallest amount. `volume` of the batch in m³; volumes are assumed to add. Out of reach: the
 * lowest and highest value any blend of them can have.
 *
 * @throws {DomainError} for no waters, or a volume that is not positive.
 * @source definition
 */
export function blendToTarget(aim: {
  readonly values: readonly number[];
  readonly target: number;
  readonly volume: number;
}): BlendToTarget {
  const { values, target, volume } = aim;
  demand('values', values.length, 'count', { min: 1 });
  values.forEach((value) => {
    demand('values', value, 'count', {});
  });
  demand('target', target, 'count', {});
  demand('volume', volume, 'volume', { min: 0, aboveMin: true });
  const [least, most] = [Math.min(...values), Math.max(...values)];
  if (target < least || target > most) return { reached: false, least, most };
  const first = values[0]!;
  const other = values.indexOf(target < first ? least : most);
  const share = target === first ? 0 : (target - first) / (values[other]! - first);
  const fractions = values.map((_, i) => (i === 0 ? 1 - share : i === other ? share : 0));
  return { reached: true, fractions, volumes: fractions.map((f) => f * volume) };
}

const CONSERVED = [
  'calcium',
  'magnesium',
  'sodium',
  'sulfate',
  'chloride',
  'otherCations',
  'otherAnions',
  'alkalinity',
  'carbon',
] as const;

/**
 * The water that results from mixing waters, with its pH from the carbonate system.
 *
 * Every total is averaged by the mass of water. The pH is then solved for, since pH is not
 * conserved: the average of the pH values is wrong whenever the waters differ. `mass` in any unit.
 * Waters that use chloride to balance the charges should be speciated first. `temperature` of the
 * mix in K; if omitted, the average by mass, without losses to the bucket.
 *
 * @throws {DomainError} for masses that are not positive, or an unsaid chloride in only some.
 * @throws {NotConverged} as `speciate`.
 * @source definition; plummer-busenberg-1982, wateq4f
 */
export function blendWaters(
  parts: readonly { readonly mass: number; readonly water: CarbonateWater }[],
  temperature?: number,
): Speciation {
  const mean = (of: (water: CarbonateWater) => number) =>
    blendOf(parts.map(({ mass, water }) => ({ amount: mass, value: of(water) })));
  const unsaid = parts.filter(({ water }) => water.chloride === undefined).length;
  if (unsaid !== 0 && unsaid !== parts.length)
    throw new DomainError({
      quantity: 'chloride',
      value: Number.NaN,
      kind: 'count',
      allowed: { min: 0 },
      because: 'chloride-said-for-only-some',
    });
  const totals = Object.fromEntries(
    CONSERVED.map((name) => [name, mean((water) => water[name] ?? 0)]),
  ) as Record<(typeof CONSERVED)[number], number>;
  return speciateWater({
    ...totals,
    chloride: unsaid ? undefined : totals.chloride,
    temperature: temperature ?? mean((water) => water.temperature),
    activity: parts[0]!.water.activity,
  });
}
