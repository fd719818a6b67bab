import { type DomainError, demand } from '../../core/domain-error.ts';
import { STANDARD_ATMOSPHERE } from '../../core/quantity/constants.ts';
import { solutesFromReport, waterPerVolume } from '../../core/water/carbonate/from-report.ts';
import { speciate } from '../../core/water/carbonate/speciate.ts';
import type { Speciation } from '../../core/water/carbonate/speciation.ts';
import * as MOLAR_MASS from '../../core/water/molar-masses.ts';
import type { Say } from '../../islands/engine/say.ts';
import { choice, number } from '../../islands/fields.ts';
import { ALKALINITY, PERCENT } from './amounts.ts';
import { demandNotSalty, salty } from './brine.ts';
import { atMost } from './spelt.ts';
import { calcium, magnesium } from './two-ions.ts';

/** What is weighed out and dissolved, in the water of a batch. */
export const IN_SOLUTION = { metric: 'g/L', us: 'oz/gal' } as const;

/** The hardness found on the hardness page, or typed here. */
export const hardness = number('hardness', {
  label: 'Hardness of the water',
  example: '311 mg/L CaCO3',
  plusMinus: '15 mg/L CaCO3',
  min: '0 mg/L CaCO3',
  // Past sea water: it is told what it is, not that its number is too large.
  max: '15000 mg/L CaCO3',
  takes: 'water.hardness',
  bench: 'water.hardnessUsed',
});

export const softHardness = number('hardness', {
  label: 'Hardness of the soft water',
  help: 'Rain, distilled or softened.',
  example: '12 mg/L CaCO3',
  min: '0 mg/L CaCO3',
  max: '5000 mg/L CaCO3',
  bench: 'water.soft',
});

/** Sea water holds some 20 g/L of chloride: it is told what it is, not that its number is too large. */
const ion = (label: string, example: string) =>
  ({ label, example, min: '0 mg/L', max: '50000 mg/L' }) as const;
const other = {
  optional: true,
  folded: true,
  spelt: atMost,
  when: { others: ['report'] },
} as const;

export const alkalinity = number('hardness', {
  label: 'Alkalinity',
  help: 'As CaCO₃. A report that gives bicarbonate: multiply its mg/L by 0.82.',
  example: '240 mg/L CaCO3',
  min: '0 mg/L CaCO3',
  max: '5000 mg/L CaCO3',
  units: ALKALINITY,
  bench: 'water.alkalinity',
});
/** With the ± of a drop kit or a report, where it is carried through. */
export const readAlkalinity = { ...alkalinity, plusMinus: '5 mg/L CaCO3' } as const;
export const pH = number('count', {
  label: 'pH',
  example: '7.4',
  min: '0',
  max: '14',
  bench: 'water.pH',
});
/** With the ± of a meter, where it is carried through. */
export const readPH = { ...pH, plusMinus: '0.1' } as const;
export const waterTemperature = number('temperature', {
  label: 'Temperature of the water',
  example: '15 °C',
  min: '0 °C',
  max: '50 °C',
  bench: 'water.temperature',
});
export const others = choice({
  label: 'The other ions',
  options: { report: 'From the report (folded below)', none: 'Not known: leave them out' },
  example: 'report',
  bench: 'water.others',
});
export const otherIons = {
  sodium: number('concentration', {
    ...ion('Sodium, Na', '22 mg/L'),
    ...other,
    bench: 'water.sodium',
  }),
  potassium: number('concentration', {
    ...ion('Potassium, K', '3 mg/L'),
    ...other,
    bench: 'water.potassium',
  }),
  sulfate: number('concentration', {
    ...ion('Sulfate, SO₄', '45 mg/L'),
    ...other,
    bench: 'water.sulfate',
  }),
  chloride: number('concentration', {
    ...ion('Chloride, Cl', '42 mg/L'),
    ...other,
    bench: 'water.chloride',
  }),
  nitrate: number('concentration', {
    ...ion('Nitrate, NO₃', '20 mg/L'),
    ...other,
    bench: 'water.nitrate',
  }),
} as const;

export const dissolved = number('concentration', {
  label: 'Total dissolved solids',
  example: '400 mg/L',
  min: '0 mg/L',
  max: '500000 mg/L',
  bench: 'water.dissolved',
});

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

interface HardnessParts {
  readonly known: 'ions' | 'total';
  readonly calcium: number;
  readonly magnesium: number;
  readonly hardness: number;
  readonly magnesiumShare: number;
}

export interface OtherIons {
  readonly others: 'report' | 'none';
  readonly sodium?: number | undefined;
  readonly potassium?: number | undefined;
  readonly sulfate?: number | undefined;
  readonly chloride?: number | undefined;
  readonly nitrate?: number | undefined;
}

/** Calcium and magnesium in kg/m³, whichever way they were entered. */
export const twoIons = (v: HardnessParts) =>
  v.known === 'ions'
    ? { calcium: v.calcium, magnesium: v.magnesium }
    : {
        calcium: v.hardness * (1 - v.magnesiumShare) * MOLAR_MASS.calcium,
        magnesium: v.hardness * v.magnesiumShare * MOLAR_MASS.magnesium,
      };

/** Left out, the other ions are none, and chloride is whatever balances the charges. */
export const theOthers = (v: OtherIons): Omit<OtherIons, 'others'> =>
  v.others === 'none' ? {} : v;

/**
 * The reader's water: its ions, its alkalinity (a hardness, two equivalents a mole) and its pH.
 * Concentrations as entered, a litre; the answer is per kg of water. Without hardness nothing
 * hangs on the pH, which distilled water hardly has: then all its alkalinity is taken as bicarbonate.
 */
export function waterOf(
  v: HardnessParts &
    OtherIons & {
      readonly alkalinity: number;
      readonly pH: number;
      readonly temperature: number;
    },
): Speciation {
  const { temperature, pH } = v;
  const { sodium, potassium, sulfate, chloride, nitrate } = theOthers(v);
  const ions = twoIons(v);
  const others = { sodium, potassium, sulfate, chloride, nitrate };
  demandNotSalty(others);
  const report = { temperature, ...ions, ...others };
  const perVolume = waterPerVolume({ temperature });
  const alkalinity = (2 * v.alkalinity) / perVolume;
  return atBenchPressure(
    speciate(
      solutesFromReport(report, perVolume),
      ions.calcium + ions.magnesium > 0 ? { pH, alkalinity } : { carbon: alkalinity, alkalinity },
    ),
  );
}

/** Sour and alkaline at once wants CO₂ under a pressure no bucket holds: such a water is refused. */
export function atBenchPressure<W extends Speciation>(water: W): W {
  const { carbonDioxidePressure } = water;
  demand(
    'carbonDioxidePressure',
    carbonDioxidePressure,
    'pressure',
    { max: STANDARD_ATMOSPHERE },
    'fizzing',
  );
  return water;
}

/** `check`: the fields that say so. */
export const fizzing =
  (check: string) =>
  ({ value }: DomainError, say: Say) =>
    `A water like this would hold CO₂ at a pressure of ${say(value, 'pressure')}, as no open bucket can. Check ${check}.`;

/** What the solver refuses, in words. */
export const WATER_REFUSALS = {
  'alkalinity-below-hydroxide': () =>
    'At this pH the hydroxide alone would be more than the alkalinity. No water has both: check the pH and the alkalinity.',
  'carbon-below-dissolved-gas': () =>
    'The CO₂ dissolved at this pressure would be more than all the carbon given. Check both.',
  fizzing: fizzing('the pH and the alkalinity'),
  salty,
  'too-concentrated': () =>
    'This is a brine. The activity model ends long before it: check for a slip of the decimal point, or of mg for g.',
} as const;
/** Core's names for what the fields hold. */
export const WATER_BLAMES = {
  hardness: ['calcium', 'magnesium', 'hardness'],
  ionicStrength: 'pH',
  carbonDioxidePressure: 'pH',
  carbon: 'pH',
} as const;
