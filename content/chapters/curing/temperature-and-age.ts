import { ACTIVATION_ENERGY_ASTM, type AgeLaw, ageFactor } from '~/core/curing/age-factor.ts';
import { ageAt } from '~/core/curing/equivalent-age.ts';
import { dailyHistory, steadyHistory } from '~/core/curing/history.ts';
import { ASTM_DATUM, NURSE_SAUL_DATUM, nurseSaul } from '~/core/curing/nurse-saul.ts';
import { DAY, HOUR, ICE_POINT } from '~/core/quantity/constants.ts';
import { toUnit } from '~/core/quantity/convert.ts';

const VARIABLE: AgeLaw = { law: 'fhp' };
const ONE_ENERGY: AgeLaw = { law: 'arrhenius', activationEnergy: ACTIVATION_ENERGY_ASTM };
const MODEL_CODE: AgeLaw = { law: 'model-code' };

/** Hours at 20 °C that an hour so warm is worth. */
const worthBy = (law: AgeLaw, celsius: number) => ageFactor(law, celsius + ICE_POINT);

/** The same by Nurse and Saul. `datum` in K. */
function worthAbove(datum: number, celsius: number): number {
  const anHour = (at: number) =>
    nurseSaul({ history: steadyHistory({ temperature: at + ICE_POINT, duration: HOUR }), datum });
  return anHour(celsius) / anHour(20);
}

export const modelCodeAt20 = worthBy(MODEL_CODE, 20);

const fahrenheit = (celsius: number) => toUnit(celsius + ICE_POINT, 'temperature', 'degF');
export const anHourIsWorth = [0, 5, 10, 15, 20, 25, 30, 40].map((celsius) => [
  `${celsius}\u00a0(${fahrenheit(celsius).toFixed(0)})`,
  ...[
    worthBy(VARIABLE, celsius),
    worthBy(ONE_ENERGY, celsius),
    worthBy(MODEL_CODE, celsius),
    worthAbove(NURSE_SAUL_DATUM, celsius),
    worthAbove(ASTM_DATUM, celsius),
  ].map((hours) => hours.toFixed(2)),
]);

/** From 12 °C before dawn to 20 °C in the afternoon. */
const shedDay = { coldest: 12 + ICE_POINT, warmest: 20 + ICE_POINT };
/** Hours at 20 °C that the demo's slabs are old, a day after they were cast at two in the afternoon. */
export const hoursOldAfterADay =
  ageAt({
    history: dailyHistory({ days: [shedDay, shedDay], start: 14 * HOUR }),
    law: VARIABLE,
    time: DAY,
  }) / HOUR;

/** What twelve hours at 20 °C make them older than twelve at 10 °C do, in such hours. */
export const hoursGained = 12 * (worthBy(VARIABLE, 20) - worthBy(VARIABLE, 10));
