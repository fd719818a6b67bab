import { MOLAR_MASS_CALCIUM_CARBONATE } from '../core/quantity/constants.ts';

/**
 * The demo scenario, invented: the tool-library workshop of a market garden casts twelve insulating
 * slabs to lie under the floor of a potting shed. Every example in the handbook comes from here. In SI.
 */
export const demo = {
  water: {
    /** Mains: 95 mg/L calcium and 18 mg/L magnesium. */
    calcium: 0.095,
    magnesium: 0.018,
    /** Rain butt: 12 mg/L as CaCO₃, in mol/m³. */
    rain: 12 / MOLAR_MASS_CALCIUM_CARBONATE,
    temperature: 288.15,
  },
  /** The rest of the mains report: kg/m³ of each ion, alkalinity in eq/m³. */
  mains: {
    calcium: 0.095,
    magnesium: 0.018,
    sodium: 0.022,
    potassium: 0.003,
    sulfate: 0.045,
    chloride: 0.042,
    nitrate: 0.02,
    dissolved: 0.4,
    alkalinity: (2 * 240) / MOLAR_MASS_CALCIUM_CARBONATE,
    pH: 7.4,
  },
  /** The rain butt: 4 mg/L calcium and 0.5 mg/L magnesium make its 12 mg/L as CaCO₃. */
  rainButt: {
    calcium: 0.004,
    magnesium: 0.0005,
    alkalinity: (2 * 10) / MOLAR_MASS_CALCIUM_CARBONATE,
    pH: 6.8,
  },
  /** A dose of dry soap for the page on soap: 8.2 g to a litre of water, about 1:40 of a liquid soap of some 30 % and 1.1 g/cm³. */
  soapDose: 8.2,
  /** A hand softener that holds 5 L of resin. */
  resin: 0.005,
  /** Mortar made with the garden's well beside one with distilled water: s, Pa. */
  trial: {
    control: { initialSet: 9900, finalSet: 15000, strength: 24e6 },
    test: { initialSet: 11400, finalSet: 17100, strength: 22.8e6 },
  },
  slab: { length: 0.45, width: 0.3, thickness: 0.06 },
  slabs: 12,
  wetDensity: 600,
  bucket: { volume: 0.02, tare: 0.85 },
  scale: 0.01,
  /** What its mixer takes, m³. */
  mixer: 0.04,
  /** A bag of cement, kg. */
  bag: 25,
  /** A compressor's tank, m³, and its gauge pressure when it is full, Pa. */
  receiver: { volume: 0.024, pressure: 8e5 },
  foam: { density: 80, partsWater: 40, glycerolShare: 0.02 },
  waterCement: 0.4,
} as const;
