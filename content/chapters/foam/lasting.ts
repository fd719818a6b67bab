import { wholeDegrees } from '~/components/prose/amounts.ts';
import { percent } from '~/components/prose/percent.ts';
import { drainedAt } from '~/core/foam/drainage-curve.ts';
import { glycerolViscosity } from '~/core/foam/glycerol.ts';
import { ICE_POINT, MINUTE } from '~/core/quantity/constants.ts';
import { waterSurfaceTension } from '~/core/water/surface-tension.ts';
import { waterViscosity } from '~/core/water/viscosity.ts';
import { demo } from '~/worksheets/demo.ts';
import { demoFoam, drainageFit } from './demo-foam.ts';

const LITRE = 1e-3;

/** How wide the bubbles are taken to be, all alike, m. */
export const bubble = 0.3e-3;
const gasInLitre = demoFoam.gasFraction * LITRE;
const liquidInLitre = (1 - demoFoam.gasFraction) * LITRE;
export const gasShare = percent(demoFoam.gasFraction);
export const liquidShare = percent(1 - demoFoam.gasFraction);
/** Bubbles in a litre of foam, millions. */
export const millions = gasInLitre / ((Math.PI / 6) * bubble ** 3) / 1e6;
/** Their skin, m²: six volumes over the width of a ball. */
export const skin = (6 * gasInLitre) / bubble;
/** All liquid spread on it, two skins to a wall, µm. */
export const wallMicrometres = (liquidInLitre / (skin / 2)) * 1e6;

/** Half of clean water’s, N/m. */
const tension = waterSurfaceTension({ temperature: ICE_POINT + 20 }) / 2;
const pressureInside = (diameter: number) => (4 * tension) / diameter;
/** How far a bubble stands above its surroundings, Pa: as wide as those, and twice as wide. */
export const excess = { small: pressureInside(bubble), large: pressureInside(2 * bubble) };

export const drainedInFive = percent(drainedAt({ drainage: drainageFit.curve, time: 5 * MINUTE }));
export const halfTime = drainageFit.halfTime.value;

/** Of water, Pa·s. */
export const viscosity = (celsius: number) =>
  waterViscosity({ temperature: celsius + ICE_POINT }).viscosity;
const [COLD, WARM] = [10, 25];
export const [cold, warm] = [wholeDegrees(COLD), wholeDegrees(WARM)];
/** By how much water is thicker cold than warm. */
export const thickerCold = percent(viscosity(COLD) / viscosity(WARM) - 1);

const withGlycerol = glycerolViscosity({
  glycerol: demo.foam.glycerolShare,
  temperature: demo.water.temperature,
});
export const glycerolShare = percent(demo.foam.glycerolShare);
export const thickerByGlycerol = percent(withGlycerol.thickening - 1);
