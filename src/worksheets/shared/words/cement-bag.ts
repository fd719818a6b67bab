/**
 * How to choose by the strength class on a bag of cement, which tells how quickly it gains
 * strength.
 */
export const BY_ITS_NUMBER =
  'Go by the number on the bag: CEM\u00a0II 42.5\u00a0N is ordinary, but CEM\u00a0III counts as slow. A US type is no class: go by the strengths on the maker’s mill sheet, or leave it unknown.';

/**
 * How to choose by the type on the bag, which tells whether it is a blend. EN 197-1 and ASTM C595,
 * from memory.
 */
export const BY_ITS_LETTERS =
  'Whatever its number: CEM\u00a0I is Portland cement; CEM\u00a0II, III or a US Type\u00a0IL counts as a blend.';

/**
 * The particle density of CEM II. EN 197-1, from memory: it may hold a third of limestone, at 2700
 * kg/m³, which makes 2984 the least.
 */
export const CEM_TWO_WEIGHS =
  'CEM\u00a0II: near 3000\u00a0kg/m³ (187\u00a0lb/ft³), US Type\u00a0IL 3100 (194), from memory: see its sheet.';
