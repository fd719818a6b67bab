/**
 * What small parts are cast for, and the wet density usual for each, kg/m³. Common practice, no
 * source: a place to begin, which the reader's own batches then move.
 */
export const USES = {
  insulation: {
    name: 'Insulating slab or fill, fully supported',
    density: 600,
    note: 'light and warm, and soft',
  },
  panel: {
    name: 'Light panel or former that carries nothing',
    density: 800,
    note: 'holds an edge handled with care; never fixed to a wall',
  },
  planter: {
    name: 'Planter or garden piece',
    density: 1000,
    note: 'firm enough to move, and holds no water; in winter bring it in or keep it dry',
  },
  block: {
    name: 'Block that closes an opening and holds up nothing',
    density: 1300,
    note: 'heavier, its face harder, and still no strength to count on',
  },
} as const;

/** A density within this of the usual one, kg/m³, counts as usual: 37.5 lb/ft³ is 601 kg/m³. A choice, no source. */
const NEAR = 25;

/** Whether a wet density, kg/m³, is below what any of them is usual for. */
export const lighterThanAny = (density: number): boolean =>
  density < USES.insulation.density - NEAR;

/** The use that a wet density, kg/m³, is usual for, or those next below and above it. */
export function usesNear(density: number) {
  const uses = Object.values(USES);
  const usual = uses.find((use) => Math.abs(use.density - density) <= NEAR);
  if (usual) return [usual];
  const above = uses.findIndex((use) => use.density > density);
  return above < 0 ? uses.slice(-1) : uses.slice(Math.max(0, above - 1), above + 1);
}
