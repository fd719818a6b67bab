import { wholeDegrees } from '~/components/prose/amounts.ts';
import type { AgeLaw } from '~/core/curing/age-factor.ts';
import { ageAt } from '~/core/curing/equivalent-age.ts';
import { dailyHistory, steadyHistory } from '~/core/curing/history.ts';
import { ASTM_DATUM, NURSE_SAUL_DATUM, nurseSaul } from '~/core/curing/nurse-saul.ts';
import { DAY, HOUR, ICE_POINT } from '~/core/quantity/constants.ts';
import { CAST_AT, ONE_ENERGY, VARIABLE, worth } from './ageing.ts';

const MODEL_CODE: AgeLaw = { law: 'model-code' };

/** Hours at 20 °C that an hour so warm is worth by Nurse and Saul. `datum` in K. */
function worthAbove(datum: number, celsius: number): number {
  const anHour = (at: number) =>
    nurseSaul({ history: steadyHistory({ temperature: at + ICE_POINT, duration: HOUR }), datum });
  return anHour(celsius) / anHour(20);
}

export const modelCodeAt20 = worth(20, MODEL_CODE);

export const anHourIsWorth = [0, 5, 10, 15, 20, 25, 30, 40].map((celsius) => [
  wholeDegrees(celsius),
  ...[
    worth(celsius),
    worth(celsius, ONE_ENERGY),
    worth(celsius, MODEL_CODE),
    worthAbove(NURSE_SAUL_DATUM, celsius),
    worthAbove(ASTM_DATUM, celsius),
  ].map((hours) => hours.toFixed(2)),
]);

/** From 12 °C before dawn to 20 °C in the afternoon. */
const shedDay = { coldest: 12 + ICE_POINT, warmest: 20 + ICE_POINT };
/** Hours at 20 °C that the demo’s slabs are old, a day after they were cast. */
export const hoursOldAfterADay =
  ageAt({
    history: dailyHistory({ days: [shedDay, shedDay], start: CAST_AT }),
    law: VARIABLE,
    time: DAY,
  }) / HOUR;

/** What twelve hours at 20 °C make them older than twelve at 10 °C do, in such hours. */
export const hoursGained = 12 * (worth(20) - worth(10));
