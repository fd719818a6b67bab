import { type KeptResults, keptValue } from '../../../bench/entries.ts';

/** What a batch may hold beside cement, water, sand and foam: no reading names it. Kept by these names. */
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

/** Whether a plan holds anything of that. */
export const holdsFurther = (kept: KeptResults): boolean => !!keptValue(kept['mix.further']);

/**
 * Fibre and pigment of the loads weighed in, kg and m³: as planned, for as many loads as the cement, kg, makes.
 * Undefined where the plan holds nothing such, or something whose water or binding is not known by that.
 */
export function furtherIn(cement: number, kept: KeptResults) {
  const [mass, volume, planned, loads] = ['further', 'furtherVolume', 'portland', 'loads'].map(
    (name) => keptValue(kept[`mix.${name}`]),
  );
  if (!mass || !volume || !planned || !loads) return undefined;
  const share = (Math.round((cement * loads) / planned) || 1) / loads;
  return { further: share * mass, furtherVolume: share * volume };
}

/** Water that comes with sand as the plan has it weighed, as a share of that sand; of sand that drinks, below 0. */
export const freeInSand = (kept: KeptResults): number => keptValue(kept['mix.sandFree']) ?? 0;

/** Water and surface-dry sand, kg, of what was poured and of sand as it lies. */
export const surfaceDry = (poured: number, lying: number, kept: KeptResults) => ({
  water: poured + lying * freeInSand(kept),
  sand: lying * (1 - freeInSand(kept)),
});
