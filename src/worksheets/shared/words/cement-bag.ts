/** What a bag of cement says, told alike wherever it counts. The number tells how quick it is, the letters what is in it. */
export const BY_ITS_NUMBER =
  'Go by the number on the bag: CEM\u00a0II 42.5\u00a0N is ordinary, but CEM\u00a0III counts as slow. A US type is no class: go by the strengths on the maker’s mill sheet, or leave it unknown.';

/** Which bags are a blend: the longer rule holds for these. EN 197-1 and ASTM C595, from memory. */
export const BY_ITS_LETTERS =
  'Whatever its number: CEM\u00a0I is Portland cement; CEM\u00a0II, III or a US Type\u00a0IL counts as a blend.';

/**
 * What of it is seldom lighter. EN 197-1, from memory: CEM II may hold a third of limestone, at 2700 kg/m³; with it
 * 2984. ASTM C595, from memory: Type IL holds 5 to 15 % of it; with 10 % it weighs 3098.
 */
export const CEM_TWO_WEIGHS =
  'CEM\u00a0II: near 3000\u00a0kg/m³ (187\u00a0lb/ft³), US Type\u00a0IL 3100 (194), from memory: see its sheet.';
