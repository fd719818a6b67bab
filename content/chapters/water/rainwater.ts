import { hardnessFromIons } from '~/core/water/hardness.ts';
import { rainCaught, rainFor } from '~/core/water/rain-catch.ts';
import { demo } from '~/worksheets/demo.ts';
import { foamWater } from './demo-waters.ts';

/** The shed’s roof, m², and what of a rain is let run away, m. */
const shed = { roof: 6, firstFlush: 0.001 };
/** Of 9 mm of rain, m³. */
export const caught = rainCaught({ ...shed, rain: 0.009 });
/** Of soft water, m³, and the rain that brings it, m. */
export const fourBatches = 4 * foamWater;
export const rainForFour = rainFor({ ...shed, volume: fourBatches });

/** Of the butt, by its ions, mol/m³. */
export const buttHardness = hardnessFromIons(demo.rainButt).total;
