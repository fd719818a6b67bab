import { type DomainError, demand } from '../../core/domain-error.ts';
import { STANDARD_ATMOSPHERE } from '../../core/quantity/constants.ts';
import { solutesFromReport, waterPerVolume } from '../../core/water/carbonate/from-report.ts';
import { speciate } from '../../core/water/carbonate/speciate.ts';
import type { Speciation } from '../../core/water/carbonate/speciation.ts';
import type { Say } from '../../islands/engine/say.ts';
import { demandNotSalty, salty } from './brine.ts';
import { type HardnessParts, twoIons } from './hardness-parts.ts';

export interface OtherIons {
  readonly others: 'report' | 'none';
  readonly sodium?: number | undefined;
  readonly potassium?: number | undefined;
  readonly sulfate?: number | undefined;
  readonly chloride?: number | undefined;
  readonly nitrate?: number | undefined;
}

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
