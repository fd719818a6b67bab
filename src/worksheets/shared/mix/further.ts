import { type KeptResults, keptValue } from '../../../bench/entries.ts';

/**
 * What a batch may hold besides cement, water, sand and foam. A batch record has no readings for
 * these. They are kept on the bench under these names.
 */
export const FURTHER = {
  slag: 'Ground slag',
  'fly-ash': 'Fly ash',
  'silica-fume': 'Silica fume',
  limestone: 'Limestone powder',
  lightFiller: 'Light filler',
  fibre: 'Fibre',
  pigment: 'Pigment',
  admixture: 'Admixture',
} as const;
export type Further = keyof typeof FURTHER;
export const FURTHER_NAMES = Object.keys(FURTHER) as Further[];

/** Whether the plan holds any of these. */
export const holdsFurther = (kept: KeptResults): boolean => !!keptValue(kept['mix.further']);

/**
 * The mass, kg, and the volume, m³, of the fibre and pigment in the loads weighed in: as planned,
 * for the whole number of loads nearest to the cement weighed, kg. Undefined if the plan holds
 * none, or holds an ingredient that takes part in the water or the cement.
 */
export function furtherIn(cement: number, kept: KeptResults) {
  const [mass, volume, planned, loads] = ['further', 'furtherVolume', 'portland', 'loads'].map(
    (name) => keptValue(kept[`mix.${name}`]),
  );
  if (!mass || !volume || !planned || !loads) return undefined;
  const share = (Math.round((cement * loads) / planned) || 1) / loads;
  return { further: share * mass, furtherVolume: share * volume };
}

/**
 * Free water in the sand of the plan, as a share of its mass as weighed; negative if the sand
 * absorbs water.
 */
export const freeInSand = (kept: KeptResults): number => keptValue(kept['mix.sandFree']) ?? 0;

/**
 * Mixing water and surface-dry sand, kg, from the water `poured` and the sand as it was weighed,
 * `lying`.
 */
export const surfaceDry = (poured: number, lying: number, kept: KeptResults) => ({
  water: poured + lying * freeInSand(kept),
  sand: lying * (1 - freeInSand(kept)),
});
