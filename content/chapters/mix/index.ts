import { hardnessFromIons } from '~/core/water/hardness.ts';
import { demo } from '~/worksheets/demo.ts';
import { demoMix, demoVolume } from '~/worksheets/demo-worked.ts';

export const batch = demoMix(demoVolume().total);
/** Of the mains, mol/m³. */
export const mainsHardness = hardnessFromIons(demo.water).total;
