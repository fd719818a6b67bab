import { percent } from '~/components/prose/percent.ts';
import { viscosity } from './lasting.ts';

/** By how much water is thinner at 30 °C than at 15 °C. */
export const thinner = percent(1 - viscosity(30) / viscosity(15));
