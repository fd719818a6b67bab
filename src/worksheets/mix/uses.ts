/**
 * What small parts are cast for, and the wet density usual for each, kg/m³. Common practice, no
 * source: a place to begin, which the reader's own batches then move.
 */
export const USES = {
  insulation: {
    name: 'Insulating slab or fill, fully supported',
    density: 600,
    note: 'Light and warm, and soft.',
  },
  panel: {
    name: 'Light panel or former that carries nothing',
    density: 800,
    note: 'Holds an edge if it is handled with care.',
  },
  planter: {
    name: 'Planter or garden piece',
    density: 1000,
    note: 'Firm enough to move, and holds no water; in winter bring it in or keep it dry.',
  },
  block: {
    name: 'Block that closes an opening and holds up nothing',
    density: 1300,
    note: 'Heavier, its face harder, and still no strength to count on.',
  },
} as const;
