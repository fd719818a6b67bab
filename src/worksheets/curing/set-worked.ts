import { acceleratorFactor, CHLORIDE_LIMIT, chlorideSet } from '../../core/curing/accelerator.ts';
import { ageFactor } from '../../core/curing/age-factor.ts';
import { quicken } from '../../core/curing/quicken.ts';
import { scaleSet, setByTemperature, setRace } from '../../core/curing/set.ts';
import { sabinFactors } from '../../core/curing/set-by-water.ts';
import type { Note } from '../../core/note.ts';
import type { Values } from '../../islands/fields.ts';
import { lawOf } from './age-laws.ts';
import type { setFields } from './set-fields.ts';

/** Set by temperature, water and accelerator, what it does to the part meanwhile, and what would quicken it. */
export function setWorked(v: Values<typeof setFields>) {
  const reference = { initial: v.initial, final: v.final };
  const law = lawOf(v.law, v.energy);
  const { arrhenius, third, notes } = setByTemperature({
    reference,
    referenceTemperature: v.referenceAt,
    temperature: v.mixAt,
    law,
  });
  const steel = v.steel === 'yes';
  const dosed: { factor: number; notes?: readonly Note[]; shortest?: number } =
    v.accelerator === 'chloride'
      ? chlorideSet({ dose: v.chloride, steel })
      : v.accelerator === 'product'
        ? acceleratorFactor(v)
        : { factor: 1 };
  const set = scaleSet(arrhenius, dosed.factor);
  const race = setRace({
    initialSet: set.initial,
    foamTime: v.foamTime,
    ...(v.sunk === undefined ? {} : { settling: { depth: v.sunk, after: v.sunkAfter } }),
  });
  const { settlingBySet } = race;
  // A part sinks no further than it is deep.
  const sinking = settlingBySet === undefined ? undefined : Math.min(settlingBySet, v.depth);
  return {
    set,
    third: scaleSet(third, dosed.factor),
    notes,
    dosed,
    /** The bag's times are too short for it, and nobody knows by how much. */
    wetter: v.waterCement > v.testWater,
    water: sabinFactors({ from: v.testWater, to: v.waterCement }),
    shortest: dosed.shortest === undefined ? undefined : scaleSet(arrhenius, dosed.shortest),
    race,
    sinking,
    share: sinking === undefined ? undefined : sinking / v.depth,
    pace: {
      reference: ageFactor(law, v.referenceAt),
      here: ageFactor(law, v.mixAt),
    },
    ways: quicken({
      set: arrhenius,
      temperature: v.mixAt,
      law,
      mixWarmer: v.warmerWater,
      roomWarmer: v.warmerRoom,
      rapidFactor: v.rapid,
      ...(v.accelerator === 'product' && { product: v }),
      chlorideDose: Math.min(v.chloride, CHLORIDE_LIMIT),
      steel,
    }),
  };
}
