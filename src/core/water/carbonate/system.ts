import { demand } from '../../domain-error.ts';
import { ICE_POINT } from '../../quantity/constants.ts';
import { type ActivityModel, type DebyeHueckel, debyeHueckel } from './activity.ts';
import { CALCITE, FIRST_DISSOCIATION, HENRY, SECOND_DISSOCIATION } from './constants.ts';
import { logK } from './log-k.ts';
import { SPECIES } from './species.ts';

/** The chemistry at one temperature: every constant as a natural logarithm. */
export interface System {
  readonly temperature: number;
  readonly activity: ActivityModel;
  readonly debyeHueckel: DebyeHueckel;
  /** ln K of each species, in the order of SPECIES. */
  readonly lnK: readonly number[];
  readonly lnCalcite: number;
  /** ln of a(H⁺)² a(CO₃²⁻) / (p(CO₂) a(H₂O)), p in atmospheres. */
  readonly lnGas: number;
}

/** The temperatures at which the solver has been checked, K: 0–50 °C. */
const SOLVER_RANGE = { min: ICE_POINT, max: ICE_POINT + 50 } as const;

/** The system asked for last: a search asks for the same one many times. */
let latest: System | undefined;

/**
 * Every constant of the carbonate system at a temperature in K. Range 0–50 °C, where the solver is
 * checked.
 * @throws {DomainError} outside 0–50 °C.
 * @source plummer-busenberg-1982, wateq4f
 */
export function systemAt(
  temperature: number,
  activity: ActivityModel = 'extended-debye-hueckel',
): System {
  if (latest?.temperature === temperature && latest.activity === activity) return latest;
  demand('temperature', temperature, 'temperature', SOLVER_RANGE);
  const ln = (k: Parameters<typeof logK>[0]) => logK(k, temperature) * Math.LN10;
  latest = {
    temperature,
    activity,
    debyeHueckel: debyeHueckel(temperature),
    lnK: SPECIES.map((s) => s.constants.reduce((sum, [sign, k]) => sum + sign * ln(k), 0)),
    lnCalcite: ln(CALCITE),
    lnGas: ln(HENRY) + ln(FIRST_DISSOCIATION) + ln(SECOND_DISSOCIATION),
  };
  return latest;
}
