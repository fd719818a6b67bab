import { percent } from '~/components/prose/percent.ts';
import { ICE_POINT } from '~/core/quantity/constants.ts';
import { waterViscosity } from '~/core/water/viscosity.ts';
import { jarGasLeft } from './demo-foam.ts';

const viscosity = (celsius: number) =>
  waterViscosity({ temperature: ICE_POINT + celsius }).viscosity;
/** By how much water is thinner at 30 °C than at 15 °C. */
export const thinner = percent(1 - viscosity(30) / viscosity(15));
export const gasLeft = percent(jarGasLeft);
