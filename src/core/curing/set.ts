import { demand } from '../domain-error.ts';
import { type Note, outsideRange } from '../note.ts';
import { type AgeLaw, ageFactor } from './age-factor.ts';
import { demandNotNegative, demandPositive } from './bounds.ts';
import { type AirAround, timeInAir } from './in-air.ts';
import { THIRD_RULE_RANGE, thirdRuleFactor } from './third-rule.ts';

/** Initial and final set, s from the first water. */
export interface SetTimes {
  readonly initial: number;
  readonly final: number;
}

/**
 * Penetration resistance of a mortar at initial and final set, Pa. @source astm-c403 from memory
 */
export const SET_RESISTANCE = { initial: 3.5e6, final: 27.6e6 } as const;

/**
 * Earliest initial set a cement may show, by strength class, s.
 * @source en-197-1 Table 3, from memory
 */
export const EARLIEST_SET: Readonly<Record<'32.5' | '42.5' | '52.5', number>> = {
  '32.5': 75 * 60,
  '42.5': 60 * 60,
  '52.5': 45 * 60,
};

export interface SetByTemperature {
  readonly arrhenius: SetTimes;
  readonly third: SetTimes;
  readonly notes: readonly Note[];
}

/**
 * Set times at another temperature, by both rules side by side.
 *
 * `reference` s at `referenceTemperature` K; `temperature` K of the mix; `law` of ageing. Arrhenius
 * multiplies by the age factor at the reference temperature and divides by the one at
 * `temperature`. The rule of a third multiplies by 4/3 for every 10 °F colder and divides by it for
 * every 10 °F warmer; it is stated for falls down to 40 °F, and a note says when `temperature` is
 * outside its range (THIRD_RULE_RANGE). With `air` around it, the part takes on the temperature of
 * the air from the start, and both rules are integrated along that change (timeInAir); the note
 * then covers both temperatures.
 * @throws {DomainError} for times not above zero or a final set before the initial, or as ageFactor
 *   and timeInAir.
 * @source fhp-1977 from memory
 * @source concrete-construction-accelerators for the rule of a third
 */
export function setByTemperature(of: {
  readonly reference: SetTimes;
  readonly referenceTemperature: number;
  readonly temperature: number;
  readonly law: AgeLaw;
  readonly air?: AirAround | undefined;
}): SetByTemperature {
  const { reference, referenceTemperature, temperature, law, air } = of;
  demandSet(reference);
  const found = (pace: (temperature: number) => number) => {
    if (!air) return scaleSet(reference, 1 / pace(temperature));
    const when = (needed: number) => timeInAir({ needed, from: temperature, air, pace });
    return { initial: when(reference.initial), final: when(reference.final) };
  };
  return {
    arrhenius: found((at) => ageFactor(law, at) / ageFactor(law, referenceTemperature)),
    third: found((at) => 1 / thirdRuleFactor(at - referenceTemperature)),
    notes: [temperature, air?.temperature ?? temperature]
      .flatMap((at) => outsideRange('temperature', at, THIRD_RULE_RANGE))
      .slice(0, 1),
  };
}

/**
 * Both set times, s, multiplied by a `factor`, a ratio. No range: arithmetic.
 * @source common-practice
 */
export function scaleSet({ initial, final }: SetTimes, factor: number): SetTimes {
  return { initial: initial * factor, final: final * factor };
}

/**
 * Refuses invalid set times. @throws {DomainError} for times not above zero or final before
 * initial.
 * @source definition
 */
export function demandSet({ initial, final }: SetTimes): void {
  demandPositive('initial', initial, 'time');
  demandPositive('final', final, 'time');
  demand('final', final, 'time', { min: initial }, 'final-before-initial');
}

export interface SetRace {
  /** Set over the foam's time; above 1 the foam drains first. */
  readonly againstFoam: number;
  readonly first: 'set' | 'foam';
  /**
   * The settling seen so far, extrapolated at its pace until initial set, m; undefined without a
   * reading.
   */
  readonly settlingBySet: number | undefined;
}

/**
 * Set against the foam: which comes first. `initialSet` and `foamTime` (the half-life of the
 * drained foam, or the time the mix was seen to hold) s; `settling` seen, m after s. Extrapolating
 * the settling at its pace is the worst case: it slows as the mix stiffens. No range is published.
 * @throws {DomainError} for times not above zero or a negative settling.
 * @source common-practice
 */
export function setRace(of: {
  readonly initialSet: number;
  readonly foamTime: number;
  readonly settling?: { readonly depth: number; readonly after: number };
}): SetRace {
  const { initialSet, foamTime, settling } = of;
  demandPositive('initialSet', initialSet, 'time');
  demandPositive('foamTime', foamTime, 'time');
  if (settling) {
    demandNotNegative('depth', settling.depth, 'length');
    demandPositive('after', settling.after, 'time');
  }
  const againstFoam = initialSet / foamTime;
  return {
    againstFoam,
    first: againstFoam <= 1 ? 'set' : 'foam',
    settlingBySet:
      settling && (settling.depth * Math.max(initialSet, settling.after)) / settling.after,
  };
}
