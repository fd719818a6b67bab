import { foamingSolution, type SoapInConcentrate } from '../core/foam/solution.ts';
import { type Proportion, type ProportionInput, proportion } from '../core/mix/proportion.ts';
import { batchVolume, pieceVolume } from '../core/placing/volume.ts';
import { demo } from './demo.ts';

/** What the demo uses beside its materials. Shares but for `loads` and `priming`, m³. */
export const demoPlan = {
  settling: 0.03,
  waste: 0.05,
  loads: 3,
  lanceLoss: 0.1,
  priming: 0.0005,
} as const;

export const demoSlab = { shape: 'slab', ...demo.slab } as const;
/** One of its two large faces, m². */
export const demoSlabFace = demo.slab.length * demo.slab.width;

/** What its batch is made of, as whole batches are designed. */
export const demoRecipe = {
  binder: [{ kind: 'portland', share: 1 }],
  waterCement: demo.waterCement,
  foamDensity: demo.foam.density,
} as const;

/** How much to make for the demo's slabs, or for so many of them. */
export const demoVolume = (count: number = demo.slabs) =>
  batchVolume({ pieces: [{ piece: demoSlab, count }], ...demoPlan });

/** A volume, m³, of the demo's mix, or of one that differs from it. */
export const demoMix = (volume: number, otherwise: Partial<ProportionInput> = {}) =>
  proportion({
    volume,
    target: { wetDensity: demo.wetDensity },
    waterCement: demo.waterCement,
    foamDensity: demo.foam.density,
    ...otherwise,
  });

/** A cubic metre of it, one slab as cast, all that is made for its slabs, and one of the loads that is mixed in. */
export const demoCube = demoMix(1);
export const demoSlabMix = demoMix(pieceVolume(demoSlab));
export const demoBatch = demoMix(demoVolume().total);
export const demoLoad = demoMix(demoBatch.volume / demoPlan.loads);

/** All the water in a mix, that of its foam counted whole, kg. */
export const waterIn = ({ water, foamMass }: Pick<Proportion, 'water' | 'foamMass'>) =>
  water + foamMass;

/** What its mix dries to, kg/m³, as somebody would type it. */
export const demoDryDensity = Math.round(demoCube.ovenDryDensity);

/** The solution for so much of the demo's foam, m³; for a soap, or where hose and lance are full already, another. */
export const demoSolution = (
  foamVolume: number,
  otherwise: { readonly priming?: number; readonly soap?: SoapInConcentrate } = {},
) =>
  foamingSolution({
    foamVolume,
    foamDensity: demo.foam.density,
    partsWater: demo.foam.partsWater,
    glycerolShare: demo.foam.glycerolShare,
    lanceLoss: demoPlan.lanceLoss,
    priming: demoPlan.priming,
    ...otherwise,
  });

/** The solution for all that is made. */
export const demoBatchSolution = demoSolution(demoBatch.foamVolume);
