import * as MOLAR_MASS from '../../core/water/molar-masses.ts';
import { choice, number } from '../../islands/fields.ts';
import { PERCENT } from '../shared/words/amounts.ts';
import { calcium, magnesium } from './two-ions.ts';
import { hardness } from './water-fields.ts';

/** Calcium and magnesium, or the total and a guess at their shares. */
export const hardnessParts = {
  known: choice({
    label: 'What do you know of the hardness?',
    options: { ions: 'Calcium and magnesium', total: 'Only the total' },
    example: 'ions',
    follows: { 'water.together': 'total' },
    bench: 'water.known',
  }),
  calcium: { ...calcium, when: { known: ['ions'] } },
  magnesium: { ...magnesium, when: { known: ['ions'] } },
  hardness: { ...hardness, when: { known: ['total'] } },
  magnesiumShare: number('ratio', {
    usual: true,
    label: 'Magnesium’s share of it',
    help: 'A guess unless a report says it; a quarter is ordinary over limestone (common practice, no source).',
    example: '24 %',
    min: '0 %',
    max: '100 %',
    units: PERCENT,
    bench: 'water.magnesiumShare',
    when: { known: ['total'] },
    folded: true,
  }),
} as const;

export interface HardnessParts {
  readonly known: 'ions' | 'total';
  readonly calcium: number;
  readonly magnesium: number;
  readonly hardness: number;
  readonly magnesiumShare: number;
}

/** Calcium and magnesium in kg/m³, whichever way they were entered. */
export const twoIons = (v: HardnessParts) =>
  v.known === 'ions'
    ? { calcium: v.calcium, magnesium: v.magnesium }
    : {
        calcium: v.hardness * (1 - v.magnesiumShare) * MOLAR_MASS.calcium,
        magnesium: v.hardness * v.magnesiumShare * MOLAR_MASS.magnesium,
      };
