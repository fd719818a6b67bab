/**
 * The demo scenario, invented: the tool-library workshop of a market garden casts twelve insulating
 * floor slabs for a potting shed. Every example in the handbook comes from here. In SI.
 */
export const demo = {
  water: {
    /** Mains: 95 mg/L calcium and 18 mg/L magnesium. */
    calcium: 0.095,
    magnesium: 0.018,
    /** Rain butt: 12 mg/L as CaCO₃, in mol/m³. */
    rain: 12 / 100.0869,
    temperature: 288.15,
  },
  slab: { length: 0.45, width: 0.3, thickness: 0.06 },
  slabs: 12,
  wetDensity: 600,
  bucket: { volume: 0.02, tare: 0.85 },
  scale: 0.01,
  foam: { density: 80, partsWater: 40, glycerolShare: 0.02 },
  waterCement: 0.4,
} as const;
