import { percent } from '~/components/prose/percent.ts';
import { freeAirForFoam } from '~/core/air/foam-air.ts';
import { criticalRatio, SHARP_CHOKED, SHARP_EDGED } from '~/core/air/orifice.ts';
import { receiverContents } from '~/core/air/receiver.ts';
import { PCC2_AMBIENT, storedEnergy, TNT_ENERGY } from '~/core/air/stored-energy.ts';
import { STANDARD_ATMOSPHERE } from '~/core/quantity/constants.ts';
import { fromUnit } from '~/core/quantity/convert.ts';
import { demo } from '~/worksheets/demo.ts';
import { demoFoam } from './demo-foam.ts';

const bar = (value: number) => fromUnit(value, 'pressure', 'bar');

const { volume: vessel, pressure: full } = demo.receiver;
/** What would come out of the full receiver at once. */
export const stored = storedEnergy({ vessel, pressure: full + PCC2_AMBIENT });
/** The energy of TNT as the same standard has it, MJ/kg. */
export const tntMegajoules = TNT_ENERGY / 1e6;

/** Free air that the demo’s foam takes, as a share of the foam’s volume. */
export const freeAirShare = freeAirForFoam({ foamVolume: 1, expansion: demoFoam.expansion });

/** Free air that the receiver gives from full down to 4 bar by its gauge, m³. */
export const givenOff = receiverContents({
  vessel,
  high: full + STANDARD_ATMOSPHERE,
  low: bar(4) + STANDARD_ATMOSPHERE,
});

/** The pressure behind a hole, over the absolute one before it, at which it is choked. */
export const chokedRatio = criticalRatio();
/** That pressure by a gauge, Pa, with 3 bar on the gauge before the hole. */
export const chokedBelow = chokedRatio * (bar(3) + STANDARD_ATMOSPHERE) - STANDARD_ATMOSPHERE;
/** How much more a choked sharp edge passes than its usual coefficient says. */
export const passesMore = percent(SHARP_CHOKED / SHARP_EDGED - 1);
