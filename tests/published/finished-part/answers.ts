import {
  ABSORPTION_BY_MASS,
  C869_ABSORPTION_LIMIT,
  moistureByVolume,
} from '../../../src/core/finished/absorption.ts';
import {
  linearTraverse,
  pointCount,
  SPACING_BRANCH,
} from '../../../src/core/finished/air-voids.ts';
import {
  moistConductivity,
  tabledConductivity,
  valoreConductivity,
  valoreUsConductivity,
} from '../../../src/core/finished/conductivity.ts';
import {
  ASHRAE_CONDUCTIVITY,
  BCA_CONDUCTIVITY,
} from '../../../src/core/finished/conductivity-data.ts';
import { moistureByMass } from '../../../src/core/finished/drying.ts';
import {
  FLEXURAL_RATIO,
  SPLITTING_RATIO_MINIMA,
  splittingComparators,
} from '../../../src/core/finished/flexural.ts';
import { FROST } from '../../../src/core/finished/frost.ts';
import { gelSpaceRatio } from '../../../src/core/finished/gel-space.ts';
import {
  flyAshModulus,
  pauwModulus,
  sandModulus,
  tadaModulus,
} from '../../../src/core/finished/modulus.ts';
import {
  blockDensity,
  cylinderDensity,
  densityByGain,
  densityByHanging,
} from '../../../src/core/finished/piece-density.ts';
import {
  type CuringWater,
  FULL_HYDRATION_WATER,
  greatestHydration,
  POWERS_2001,
  POWERS_BENTZ,
  POWERS_PER_GRAM,
  type PowersVolumes,
  powersVolumes,
} from '../../../src/core/finished/powers.ts';
import type { PublishedRange } from '../../../src/core/finished/published-range.ts';
import { DRYING_SHRINKAGE } from '../../../src/core/finished/shrinkage.ts';
import {
  INSIDE_SURFACE,
  layerResistance,
  thicknessForResistance,
  transmittance,
} from '../../../src/core/finished/thermal-resistance.ts';
import { studentT } from '../../../src/core/uncertainty/student-t.ts';
import { answer } from '../answer.ts';

const sure = (value: number) => ({ value, uncertainty: 0 });

function inPerCent(ranges: readonly PublishedRange[], row: string): readonly number[] {
  const { low, high } = ranges.find(({ id }) => id === row)!;
  return [low * 100, high * 100];
}

type NumberOf<T> = { [K in keyof T]: T[K] extends number ? K : never }[keyof T];
type Void = NumberOf<ReturnType<typeof linearTraverse>>;
type Volume = NumberOf<PowersVolumes>;

export const answers = {
  'finished-part/conductivity-si': answer({
    asks: 'Conductivity of oven-dry concrete from its density, SI form',
    input: { dryDensity: 'density' },
    gives: 'conductivity',
    work: (of) => valoreConductivity(of).conductivity,
  }),
  'finished-part/conductivity-us': answer({
    asks: 'Conductivity of oven-dry concrete from its density, US form',
    input: { dryDensity: 'density' },
    gives: 'conductivity',
    work: (of) => valoreUsConductivity(of).conductivity,
  }),
  'finished-part/conductivity-table': answer({
    asks: 'Conductivity a table gives at a dry density, least and most, W/(m·K)',
    input: { table: 'text', dryDensity: 'density' },
    gives: 'numbers',
    work: ({ dryDensity }) => {
      const { low, high } = tabledConductivity(BCA_CONDUCTIVITY, dryDensity)!;
      return [low, high];
    },
  }),
  'finished-part/conductivity-ashrae': answer({
    asks: 'Conductivity of foam concrete in a table of materials',
    input: { dryDensity: 'density' },
    gives: 'conductivity',
    work: ({ dryDensity }) => tabledConductivity(ASHRAE_CONDUCTIVITY, dryDensity)!.low,
  }),
  'finished-part/moist-conductivity': answer({
    asks: 'Conductivity when moist from that when dry',
    input: { dry: 'conductivity', moisture: 'ratio' },
    gives: 'conductivity',
    work: (of) => moistConductivity(of).conductivity,
  }),
  'finished-part/resistance': answer({
    asks: 'Thermal resistance of one layer',
    input: { thickness: 'length', conductivity: 'conductivity' },
    gives: 'thermalResistance',
    work: layerResistance,
  }),
  'finished-part/u-value': answer({
    asks: 'Thermal transmittance of layers (m, W/(m·K)) with their surfaces (m²·K/W)',
    input: { thickness: 'numbers', conductivity: 'numbers', surfaces: 'number' },
    gives: 'thermalTransmittance',
    work: ({ thickness, conductivity, surfaces }) => {
      const layers = thickness.map((t, i) => ({ thickness: t, conductivity: conductivity[i]! }));
      return transmittance({ layers, surfaces }).transmittance;
    },
  }),
  'finished-part/thickness': answer({
    asks: 'Thickness for a wanted thermal resistance',
    input: { resistance: 'thermalResistance', conductivity: 'conductivity' },
    gives: 'length',
    work: (wanted) => thicknessForResistance({ ...wanted, density: 500 }).thickness,
  }),
  'finished-part/surface-resistance': answer({
    asks: 'Inside surface resistance by the way heat flows',
    input: { flow: 'text' },
    gives: 'thermalResistance',
    work: ({ flow }) => INSIDE_SURFACE[flow as keyof typeof INSIDE_SURFACE],
  }),
  'finished-part/powers-volume': answer({
    asks: 'A share of hardened paste by Powers’ model (`capillary`: water-filled and emptied together)',
    input: { part: 'text', set: 'text', waterCement: 'number', degree: 'number', curing: 'text' },
    gives: 'number',
    work: ({ part, set, waterCement, degree, curing }) => {
      const volumes = powersVolumes({
        waterCement,
        degree,
        air: 0,
        inert: 0,
        reaction: set === 'powers-bentz' ? POWERS_BENTZ : POWERS_2001,
        curing: curing as CuringWater,
        waterDensity: 1000,
      });
      return part === 'capillary'
        ? volumes.capillaryWater + volumes.emptied
        : volumes[part as Volume];
    },
  }),
  'finished-part/gel-space': answer({
    asks: 'Gel–space ratio',
    input: { waterCement: 'number', degree: 'number', airPerCement: 'number' },
    gives: 'number',
    work: gelSpaceRatio,
  }),
  'finished-part/greatest-hydration': answer({
    asks: 'How far the cement can react before its water is used up',
    input: { waterCement: 'number', curing: 'text' },
    gives: 'number',
    work: ({ waterCement, curing }) =>
      greatestHydration({ waterCement, curing: curing as CuringWater }),
  }),
  'finished-part/water-gap': answer({
    asks: 'Water that sealed cement needs beyond cement kept under water, g/g',
    input: {},
    gives: 'number',
    work: () => FULL_HYDRATION_WATER.sealed - FULL_HYDRATION_WATER.saturated,
  }),
  'finished-part/water-sealed-from-parts': answer({
    asks: 'Water to hydrate cement sealed, from bound and gel water, g/g',
    input: {},
    gives: 'number',
    work: () => POWERS_PER_GRAM.bound + POWERS_PER_GRAM.gel,
  }),
  'finished-part/water-saturated-from-parts': answer({
    asks: 'Water to hydrate cement kept under water, from its parts, g/g',
    input: {},
    gives: 'number',
    work: () => POWERS_PER_GRAM.bound + POWERS_PER_GRAM.gel - POWERS_PER_GRAM.shrinkage,
  }),
  'finished-part/shrinkage': answer({
    asks: 'Drying shrinkage reported, least and most, %',
    input: { row: 'text' },
    gives: 'numbers',
    work: ({ row }) => inPerCent(DRYING_SHRINKAGE, row),
  }),
  'finished-part/absorption': answer({
    asks: 'Water absorption reported or allowed, least and most, % of dry mass',
    input: { row: 'text' },
    gives: 'numbers',
    work: ({ row }) => inPerCent(ABSORPTION_BY_MASS, row),
  }),
  'finished-part/absorption-limit': answer({
    asks: 'Water a standard test batch may take up, by volume',
    input: {},
    gives: 'ratio',
    work: () => C869_ABSORPTION_LIMIT,
  }),
  'finished-part/frost': answer({
    asks: 'A published figure on freezing and thawing (Pa, share or cycles)',
    input: { row: 'text' },
    gives: 'number',
    work: ({ row }) => FROST.find(({ id }) => id === row)!.value,
  }),
  'finished-part/modulus-sand': answer({
    asks: 'Young’s modulus of sanded foamed concrete',
    input: { compressive: 'stress' },
    gives: 'stress',
    work: (of) => sandModulus(of).modulus,
  }),
  'finished-part/modulus-fly-ash': answer({
    asks: 'Young’s modulus of foamed concrete with coarse fly ash',
    input: { compressive: 'stress' },
    gives: 'stress',
    work: (of) => flyAshModulus(of).modulus,
  }),
  'finished-part/modulus-pauw': answer({
    asks: 'Young’s modulus from density and strength',
    input: { density: 'density', compressive: 'stress' },
    gives: 'stress',
    work: (of) => pauwModulus(of).modulus,
  }),
  'finished-part/modulus-tada': answer({
    asks: 'Young’s modulus from density alone',
    input: { density: 'density' },
    gives: 'stress',
    work: (of) => tadaModulus(of).modulus,
  }),
  'finished-part/splitting-normal': answer({
    asks: 'Splitting strength of normal-weight concrete, as a comparator',
    input: { compressive: 'stress' },
    gives: 'stress',
    work: ({ compressive }) => splittingComparators(compressive).normalWeight,
  }),
  'finished-part/splitting-light': answer({
    asks: 'Splitting strength of lightweight-aggregate concrete, as a comparator',
    input: { compressive: 'stress' },
    gives: 'stress',
    work: ({ compressive }) => splittingComparators(compressive).lightweight,
  }),
  'finished-part/splitting-minima': answer({
    asks: 'Least splitting over least compressive strength of the standard batch',
    input: {},
    gives: 'number',
    work: () => SPLITTING_RATIO_MINIMA,
  }),
  'finished-part/flexural-ratio': answer({
    asks: 'Flexural over compressive strength, least and most',
    input: { of: 'text' },
    gives: 'numbers',
    work: ({ of }) => {
      const { low, high } = FLEXURAL_RATIO[of as keyof typeof FLEXURAL_RATIO];
      return [low, high];
    },
  }),
  'finished-part/traverse': answer({
    asks: 'An air-void figure from a linear traverse (lengths in m)',
    input: { traverse: 'length', air: 'length', paste: 'length', voids: 'number', part: 'text' },
    gives: 'number',
    work: ({ part, ...line }) => linearTraverse(line)[part as Void],
  }),
  'finished-part/points': answer({
    asks: 'An air-void figure from a point count (lengths in m)',
    input: {
      stops: 'number',
      airStops: 'number',
      pasteStops: 'number',
      interval: 'length',
      voids: 'number',
      part: 'text',
    },
    gives: 'number',
    work: ({ part, ...grid }) => pointCount(grid)[part as Void],
  }),
  'finished-part/branch-gap': answer({
    asks: 'How far apart the two spacing expressions are where they meet, over mean chord',
    input: {},
    gives: 'number',
    work: () => {
      const spacing = (ratio: number) => {
        const air = 1 / (1 + ratio);
        const line = { traverse: 1, air, paste: Math.min(ratio * air, 1 - air), voids: 1000 };
        const { spacingFactor, meanChord } = linearTraverse(line);
        return spacingFactor / meanChord;
      };
      return spacing(SPACING_BRANCH + 1e-9) - spacing(SPACING_BRANCH - 1e-9);
    },
  }),
  'finished-part/student-t': answer({
    asks: 'Student’s t, two-sided',
    input: { freedom: 'number', confidence: 'number' },
    gives: 'number',
    work: studentT,
  }),
  'finished-part/block-density': answer({
    asks: 'Density of a block from its mass and sides',
    input: { mass: 'mass', length: 'length', width: 'length', height: 'length' },
    gives: 'density',
    work: ({ mass, length, width, height }) =>
      blockDensity({
        mass: sure(mass),
        length: sure(length),
        width: sure(width),
        height: sure(height),
      }).density,
  }),
  'finished-part/cylinder-density': answer({
    asks: 'Density of a cylinder from its mass, diameter and height',
    input: { mass: 'mass', diameter: 'length', height: 'length' },
    gives: 'density',
    work: ({ mass, diameter, height }) =>
      cylinderDensity({ mass: sure(mass), diameter: sure(diameter), height: sure(height) }).density,
  }),
  'finished-part/density-by-gain': answer({
    asks: 'Density of a wrapped piece from what the scale gains when it is pushed under',
    input: {
      mass: 'mass',
      wrapped: 'mass',
      gain: 'mass',
      waterDensity: 'density',
      filmDensity: 'density',
    },
    gives: 'density',
    work: ({ mass, wrapped, gain, ...baths }) =>
      densityByGain({ mass: sure(mass), wrapped: sure(wrapped), gain: sure(gain) }, baths).density,
  }),
  'finished-part/density-by-hanging': answer({
    asks: 'Density of a wrapped piece hung under water with a sinker',
    input: {
      mass: 'mass',
      wrapped: 'mass',
      sinker: 'mass',
      both: 'mass',
      waterDensity: 'density',
      filmDensity: 'density',
    },
    gives: 'density',
    work: ({ mass, wrapped, sinker, both, ...baths }) =>
      densityByHanging(
        { mass: sure(mass), wrapped: sure(wrapped), sinker: sure(sinker), both: sure(both) },
        baths,
      ).density,
  }),
  'finished-part/moisture': answer({
    asks: 'Moisture of a piece by dry mass',
    input: { moist: 'mass', dry: 'mass' },
    gives: 'ratio',
    work: moistureByMass,
  }),
  'finished-part/moisture-by-volume': answer({
    asks: 'Moisture by volume from moisture by mass',
    input: { byMass: 'ratio', dryDensity: 'density', waterDensity: 'density' },
    gives: 'ratio',
    work: moistureByVolume,
  }),
};
