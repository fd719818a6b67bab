import { demand } from '../domain-error.ts';
import { justOver, SLIVER } from '../quantity/dust.ts';

/**
 * What share of a foam's liquid has drained, from the mass of liquid collected?
 *
 * v = drained/foam: the gas in a foam weighs nothing on a scale in air, so all the foam's mass is
 * liquid. No range is published.
 *
 * @param drained liquid collected below the foam, kg
 * @param foam mass of the foam when the clock started, kg, as the scale reads it
 * @returns share of the liquid drained, 0–1
 * @throws {DomainError} drained outside 0 to `foam`, foam not positive.
 * @source common-practice mass balance
 */
export function drainedByMass({
  drained,
  foam,
}: {
  readonly drained: number;
  readonly foam: number;
}): number {
  demand('foam', foam, 'mass', { min: 0, aboveMin: true });
  demand('drained', drained, 'mass', { min: 0, max: foam }, 'more-than-the-foam-held');
  return drained / foam;
}

/**
 * The same from the volume of liquid collected: v = drained/(foam/expansion). No range is
 * published.
 *
 * @param drained volume of liquid collected, m³
 * @param foam volume of the foam when the clock started, m³
 * @param expansion volume of foam over volume of the solution in it, above 1
 * @returns share of the liquid drained, 0–1. A quarter drained is the usual mark: for 10 mL of
 *   solution shaken to foam, 2.5 mL below it.
 * @throws {DomainError} drained outside 0 to foam/expansion, foam not positive, expansion ≤ 1
 * @source usda-stp-8-3 25 % drain time
 * @source imo-foam-test 3.7.2, expansion
 */
export function drainedByVolume(jar: Jar): number {
  return drainedOf(jar, 'volume');
}

/**
 * The same from heights in a straight-sided jar, where heights stand for volumes. No range is
 * published.
 *
 * @param drained height of clear liquid at the bottom, m
 * @param foam height of the foam when the clock started, m
 * @param expansion volume of foam over volume of the solution in it, above 1
 * @returns share of the liquid drained, 0–1. The time to a given share grows with the height of the
 *   foam, so a shallow jar is not a deep bucket.
 * @throws {DomainError} drained outside 0 to foam/expansion, foam not positive, expansion ≤ 1
 * @source benson-1973 25 % time independent of diameter, dependent on depth
 * @source mukunda-2016 quarter drainage time linear in foam height
 */
export function drainedByHeight(jar: Jar): number {
  return drainedOf(jar, 'length');
}

interface Jar {
  readonly drained: number;
  readonly foam: number;
  readonly expansion: number;
}

function drainedOf({ drained, foam, expansion }: Jar, kind: 'volume' | 'length'): number {
  demand('foam', foam, kind, { min: 0, aboveMin: true });
  demand('expansion', expansion, 'ratio', { min: 1, aboveMin: true });
  const held = foam / expansion;
  demand(
    'drained',
    drained,
    kind,
    { min: 0, max: justOver(held, SLIVER) },
    'more-than-the-foam-held',
  );
  return Math.min(1, drained / held);
}
