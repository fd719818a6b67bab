import type { AmountProps } from '~/components/prose/amount.ts';
import { inMillimetres } from '~/components/prose/amounts.ts';
import { percent } from '~/components/prose/percent.ts';
import { ageFactor } from '~/core/curing/age-factor.ts';
import { HOUR, MINUTE } from '~/core/quantity/constants.ts';
import { FOAM } from '~/worksheets/shared/words/amounts.ts';
import { VARIABLE } from '../curing/ageing.ts';
import { reading } from './invented.ts';

const foamDensity = (value: number): AmountProps => ({ value, kind: 'density', ...FOAM });
const [foamFirst, foamLater] = [reading('foamDensity'), reading('foamLater')];
/** The foam of the first invented batch, weighed twice. */
export const foam = {
  first: foamDensity(foamFirst),
  later: foamDensity(foamLater),
  minutes: reading('foamLaterAfter') / MINUTE,
  lost: percent(1 - foamLater / foamFirst),
};

export const sunk = inMillimetres(reading('sunk'));

const hours = reading('stripAge') / HOUR;
const cureTemperature = reading('cureTemperature');
/** When it was stripped: hours by the clock, how warm it had been, K, and hours as they count at 20 °C. */
export const stripped = {
  hours,
  cureTemperature,
  hoursAt20: hours * ageFactor(VARIABLE, cureTemperature),
};

export const dryMass = reading('dryMass');
