import { DAY, PSI } from '../quantity/constants.ts';

/** An exposure limit for air, or a measure of public guidance, as a fact with its source. */
export interface ExposureLimit {
  readonly id: string;
  readonly agent: Agent;
  /** Whose limit: `osha-pel` is law in the USA, the others are recommendations. */
  readonly kind: 'osha-pel' | 'osha-action-level' | 'niosh-rel' | 'acgih-tlv' | 'idlh';
  /** kg/m³, or 1/m³ for fibres. */
  readonly value: number;
  readonly unit: 'kg/m3' | 'fibres/m3';
  /** The fraction of dust it applies to: total, or respirable. */
  readonly fraction?: 'total' | 'respirable';
  /** The averaging time in hours, if stated. */
  readonly hours?: number;
  readonly source: string;
  readonly standing: 'published' | 'from memory';
}

export type Agent = 'portland-cement' | 'crystalline-silica' | 'fibrous-glass' | 'iron-oxide';

const MG = 1e-6;
const UG = 1e-9;
const read = { standing: 'published', unit: 'kg/m3' } as const;
const recalled = { standing: 'from memory', unit: 'kg/m3' } as const;

/**
 * Exposure limits for what this work raises. They are US figures; elsewhere other limits hold, and
 * the product's own safety sheet and the law where the reader works decide.
 * @source osha-csi-cement
 * @source niosh-portland-cement
 * @source acgih-portland-cement
 * @source cpwr-silica
 * @source osha-1926-1153
 * @source osha-csi-fibrous-glass
 * @source niosh-iron-oxide
 */
export const EXPOSURE_LIMITS: readonly ExposureLimit[] = [
  {
    ...read,
    id: 'cement-pel',
    agent: 'portland-cement',
    kind: 'osha-pel',
    value: 15 * MG,
    fraction: 'total',
    source: 'osha-csi-cement',
  },
  {
    ...read,
    id: 'cement-rel',
    agent: 'portland-cement',
    kind: 'niosh-rel',
    value: 10 * MG,
    fraction: 'total',
    source: 'osha-csi-cement',
  },
  {
    ...recalled,
    id: 'cement-pel-respirable',
    agent: 'portland-cement',
    kind: 'osha-pel',
    value: 5 * MG,
    fraction: 'respirable',
    source: 'niosh-portland-cement',
  },
  {
    ...recalled,
    id: 'cement-rel-respirable',
    agent: 'portland-cement',
    kind: 'niosh-rel',
    value: 5 * MG,
    fraction: 'respirable',
    source: 'niosh-portland-cement',
  },
  {
    ...recalled,
    id: 'cement-tlv',
    agent: 'portland-cement',
    kind: 'acgih-tlv',
    value: 1 * MG,
    fraction: 'respirable',
    source: 'acgih-portland-cement',
  },
  {
    ...read,
    id: 'cement-idlh',
    agent: 'portland-cement',
    kind: 'idlh',
    value: 5000 * MG,
    source: 'osha-csi-cement',
  },
  {
    ...read,
    id: 'silica-pel',
    agent: 'crystalline-silica',
    kind: 'osha-pel',
    value: 50 * UG,
    fraction: 'respirable',
    hours: 8,
    source: 'cpwr-silica',
  },
  {
    ...read,
    id: 'silica-rel',
    agent: 'crystalline-silica',
    kind: 'niosh-rel',
    value: 0.05 * MG,
    fraction: 'respirable',
    hours: 10,
    source: 'cpwr-silica',
  },
  {
    ...read,
    id: 'silica-tlv',
    agent: 'crystalline-silica',
    kind: 'acgih-tlv',
    value: 0.025 * MG,
    fraction: 'respirable',
    hours: 8,
    source: 'cpwr-silica',
  },
  {
    ...read,
    id: 'silica-action',
    agent: 'crystalline-silica',
    kind: 'osha-action-level',
    value: 25 * UG,
    fraction: 'respirable',
    hours: 8,
    source: 'osha-1926-1153',
  },
  {
    ...read,
    id: 'glass-fibre-rel',
    agent: 'fibrous-glass',
    kind: 'niosh-rel',
    value: 3e6,
    unit: 'fibres/m3',
    source: 'osha-csi-fibrous-glass',
  },
  {
    ...read,
    id: 'glass-total-rel',
    agent: 'fibrous-glass',
    kind: 'niosh-rel',
    value: 5 * MG,
    fraction: 'total',
    source: 'osha-csi-fibrous-glass',
  },
  {
    ...recalled,
    id: 'iron-oxide-rel',
    agent: 'iron-oxide',
    kind: 'niosh-rel',
    value: 5 * MG,
    source: 'niosh-iron-oxide',
  },
  {
    ...recalled,
    id: 'iron-oxide-pel',
    agent: 'iron-oxide',
    kind: 'osha-pel',
    value: 10 * MG,
    source: 'niosh-iron-oxide',
  },
];

/**
 * Every limit known for an agent, kg/m³ or fibres/m³.
 * @source none: a search through rows that carry their own sources
 */
export function exposureLimits(agent: Agent): readonly ExposureLimit[] {
  return EXPOSURE_LIMITS.filter((limit) => limit.agent === agent);
}

/**
 * The lowest limit for an agent over a working day, in one fraction of its dust, kg/m³: the one to
 * use if there are several. Levels at which an employer must act, or that are immediately
 * dangerous, are not such limits. Undefined if none is known.
 * @source none: the least of rows that carry their own sources
 */
export function strictestLimit(
  agent: Agent,
  fraction: 'total' | 'respirable',
): ExposureLimit | undefined {
  return exposureLimits(agent)
    .filter((limit) => limit.fraction === fraction && !/idlh|action/.test(limit.kind))
    .sort((a, b) => a.value - b.value)[0];
}

/**
 * Water-soluble chromium(VI), kg per kg of dry cement, that the EU allows in cement placed on the
 * market and above which it must be labelled: 0.0002 %.
 * @source reach-47 @source clp-euh203
 */
export const CHROMIUM_VI_LIMIT = 2e-6;
/** How long a reducer lasts: in the bag, and opened, s (months of 30 days). @source bfa-cement */
export const REDUCER_KEEPS = { bagged: 12 * 30 * DAY, opened: 2 * 30 * DAY } as const;
/**
 * Minimum time to rinse eyes that cement water has reached, in the standard's warning, s.
 * @source astm-c191-2003
 */
export const EYE_RINSE = 15 * 60;
/**
 * The minimum time this handbook asks for: public guidance on alkali in the eye, s. From memory.
 * @source first-aid-general
 */
export const EYE_RINSE_ALKALI = 20 * 60;
/**
 * Maximum air pressure for blowing off, Pa gauge: below 30 psi, with chip guard.
 * @source osha-1910-242
 */
export const BLOW_OFF_PRESSURE = 30 * PSI;
