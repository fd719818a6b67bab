import { strengthBand } from '../core/finished/strength-band.ts';
import { foamingSolution, type SoapInConcentrate } from '../core/foam/solution.ts';
import { MIX_WATER_DENSITY } from '../core/mix/densities.ts';
import { type ProportionInput, proportion } from '../core/mix/proportion.ts';
import { batchVolume, pieceVolume } from '../core/placing/volume.ts';
import { demo } from './demo.ts';

/** What the demo reckons with beside its materials. Shares but for `loads` and `priming`, m³. */
export const demoPlan = {
  settling: 0.03,
  waste: 0.05,
  loads: 3,
  lanceLoss: 0.1,
  priming: 0.0005,
} as const;

export const demoSlab = { shape: 'slab', ...demo.slab } as const;

/** How much to make for the demo's slabs, or for so many of them. */
export const demoVolume = (count: number = demo.slabs) =>
  batchVolume({ pieces: [{ piece: demoSlab, count }], ...demoPlan });

/** So much of the demo's mix, m³, or of one that differs from it. */
export const demoMix = (volume: number, otherwise: Partial<ProportionInput> = {}) =>
  proportion({
    volume,
    target: { wetDensity: demo.wetDensity },
    waterCement: demo.waterCement,
    foamDensity: demo.foam.density,
    ...otherwise,
  });

/** One of the loads its batch is mixed in. */
export const demoLoad = demoMix(demoVolume().total / demoPlan.loads);

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

/** The least and the most that is published of the strength of the demo's mix at 28 days, Pa. */
export function demoStrength(): { readonly low: number; readonly high: number } {
  const band = strengthBand(demoMix(1));
  if (!band.known || band.high === null)
    throw new Error('No published relation bounds the strength of the demo’s mix from above.');
  return { low: band.low, high: band.high };
}

/** What its mix dries to, kg/m³, as somebody would type it. */
export const demoDryDensity = Math.round(demoMix(1).ovenDryDensity);

/** One slab of it, as cast. */
export const demoSlabMix = demoMix(pieceVolume(demoSlab));

const bucketOf = (density: number) => demo.bucket.tare + demo.bucket.volume * density;
/** Its bucket, full to the brim, kg. */
export const demoBucket = {
  ofWater: bucketOf(MIX_WATER_DENSITY),
  ofBase: bucketOf(demoSlabMix.baseDensity),
  ofMix: bucketOf(demo.wetDensity),
};
