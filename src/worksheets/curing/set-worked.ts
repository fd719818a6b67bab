import { acceleratorFactor, CHLORIDE_LIMIT, chlorideSet } from '../../core/curing/accelerator.ts';
import { ageFactor } from '../../core/curing/age-factor.ts';
import { STILL_AIR_TRANSFER } from '../../core/curing/heat/still-air.ts';
import { freshHeatCapacity } from '../../core/curing/heat/thermal-properties.ts';
import { type AirAround, coolingTime, temperatureInAir } from '../../core/curing/in-air.ts';
import { quicken } from '../../core/curing/quicken.ts';
import { scaleSet, setByTemperature, setRace } from '../../core/curing/set.ts';
import { sabinFactors } from '../../core/curing/set-by-water.ts';
import type { Note } from '../../core/note.ts';
import type { Values } from '../../islands/fields.ts';
import { lawOf } from './age-laws.ts';
import type { setFields } from './set-fields.ts';

type SetValues = Values<typeof setFields>;

/** The air, where it is not as warm as the mix, and how fast the part follows it, bare in still air. */
function airAround(v: SetValues): AirAround | undefined {
  if (v.around === 'alike') return undefined;
  const cement = v.wet / (1 + v.waterCement + v.sandCement);
  const heatCapacity = freshHeatCapacity({
    cement,
    water: cement * v.waterCement,
    sand: cement * v.sandCement,
  });
  return {
    temperature: v.air,
    timeConstant: coolingTime({
      thickness: v.thickness,
      heatCapacity,
      transfer: STILL_AIR_TRANSFER,
    }),
  };
}

/** The set by temperature, air, water and accelerator; its effects on the part; and what would speed it up. */
export function setWorked(v: SetValues) {
  const law = lawOf(v.law, v.energy);
  const air = airAround(v);
  const bag = {
    reference: { initial: v.initial, final: v.final },
    referenceTemperature: v.referenceAt,
  };
  /** The set if an accelerator leaves this share of the bag's times. */
  const found = (factor: number, temperature: number, around: AirAround | undefined) =>
    setByTemperature({
      reference: scaleSet(bag.reference, factor),
      referenceTemperature: bag.referenceTemperature,
      temperature,
      law,
      air: around,
    });
  const steel = v.steel === 'yes';
  const dosed: { factor: number; notes?: readonly Note[]; shortest?: number } =
    v.accelerator === 'chloride'
      ? chlorideSet({ dose: v.chloride, steel })
      : v.accelerator === 'product'
        ? acceleratorFactor(v)
        : { factor: 1 };
  const { arrhenius: set, third, notes } = found(dosed.factor, v.mixAt, air);
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
    third,
    notes,
    /**
     * Its approach to the temperature of the air; and its initial set, s, if it stayed as warm as
     * poured, and if it had the temperature of the air at once.
     */
    cooling: air && {
      ...air,
      atSet: temperatureInAir(v.mixAt, air, set.initial),
      kept: found(dosed.factor, v.mixAt, undefined).arrhenius.initial,
      atOnce: found(dosed.factor, v.air, undefined).arrhenius.initial,
    },
    dosed,
    /** The bag's times are too short for it, and nobody knows by how much. */
    wetter: v.waterCement > v.testWater,
    water: sabinFactors({ from: v.testWater, to: v.waterCement }),
    shortest:
      dosed.shortest === undefined ? undefined : found(dosed.shortest, v.mixAt, air).arrhenius,
    race,
    sinking,
    share: sinking === undefined ? undefined : sinking / v.depth,
    pace: {
      reference: ageFactor(law, v.referenceAt),
      here: ageFactor(law, v.mixAt),
    },
    ways: quicken({
      set: found(1, v.mixAt, air).arrhenius,
      cooling: air && { ...bag, air },
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
