import { LEAST_PH } from './ph-limits.ts';

/** A value a water report may hold. Concentrations in kg/m³. */
export const CONSTITUENTS = [
  'chloride',
  'sulfate',
  'alkalies',
  'dissolvedSolids',
  'sugars',
  'phosphate',
  'nitrate',
  'lead',
  'zinc',
  'pH',
] as const;
export type Constituent = (typeof CONSTITUENTS)[number];

/** What the concrete is for, where a limit depends on it. This handbook's concrete is 'plain'. */
export type Use = 'plain' | 'reinforced' | 'prestressed';

export interface Limit {
  readonly standard: 'EN 1008' | 'ASTM C1602';
  readonly of: Constituent;
  /** Uses it applies to. */
  readonly uses: readonly Use[];
  /** The most allowed, kg/m³ (1 mg/L is 0.001); for pH the least allowed. */
  readonly most?: number;
  readonly least?: number;
  /** Where the standard has it. */
  readonly clause: string;
  /** Optional limits bind only when the buyer asks for them. */
  readonly optional: boolean;
  readonly standing: 'read second-hand' | 'from memory';
  readonly source: string;
}

const ALL: readonly Use[] = ['plain', 'reinforced', 'prestressed'];

const en = (
  of: Constituent,
  mgPerL: number,
  clause: string,
  standing: Limit['standing'],
  uses = ALL,
): Limit => ({
  standard: 'EN 1008',
  of,
  uses,
  most: mgPerL / 1000,
  clause,
  optional: false,
  standing,
  source: standing === 'from memory' ? 'en-1008-memory' : 'en-1008-lecture',
});

const astm = (of: Constituent, mgPerL: number, uses = ALL): Limit => ({
  standard: 'ASTM C1602',
  of,
  uses,
  most: mgPerL / 1000,
  clause: 'Table 2',
  optional: true,
  standing: 'read second-hand',
  source: 'pca-mixing-water',
});

/**
 * The limits on mixing water of the two standards, line by line. The clauses are from memory
 * throughout; `standing` is that of the figure. Where the standards differ, both stand.
 *
 * ASTM's chloride line names prestressed concrete and bridge decks, and other reinforced concrete
 * in moist surroundings or with dissimilar metals; neither covers plain concrete. Its alkalies are
 * Na₂O + 0.658 K₂O, as are EN's; phosphate is as P₂O₅. EN lets sugars to nitrate be passed by the
 * comparison test instead.
 *
 * @source en-1008-lecture, en-1008-memory, pca-mixing-water
 */
export const LIMITS: readonly Limit[] = [
  en('chloride', 4500, '4.3.1', 'from memory', ['plain']),
  en('chloride', 1000, '4.3.1', 'read second-hand', ['reinforced']),
  en('chloride', 500, '4.3.1', 'read second-hand', ['prestressed']),
  en('sulfate', 2000, '4.3.2', 'read second-hand'),
  en('alkalies', 1500, '4.3.3', 'read second-hand'),
  en('sugars', 100, 'Table 3', 'from memory'),
  en('phosphate', 100, 'Table 3', 'from memory'),
  en('nitrate', 500, 'Table 3', 'from memory'),
  en('lead', 100, 'Table 3', 'from memory'),
  en('zinc', 100, 'Table 3', 'from memory'),
  {
    standard: 'EN 1008',
    of: 'pH',
    uses: ALL,
    least: LEAST_PH,
    clause: 'Table 1',
    optional: false,
    standing: 'from memory',
    source: 'en-1008-memory',
  },
  astm('chloride', 1000, ['reinforced']),
  astm('chloride', 500, ['prestressed']),
  astm('sulfate', 3000),
  astm('alkalies', 600),
  astm('dissolvedSolids', 50000),
];
