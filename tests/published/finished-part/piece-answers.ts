import {
  ABSORPTION_BY_MASS,
  C869_ABSORPTION_LIMIT,
  moistureByVolume,
} from '../../../src/core/finished/absorption.ts';
import { moistureByMass } from '../../../src/core/finished/drying.ts';
import { FROST } from '../../../src/core/finished/frost.ts';
import {
  blockDensity,
  cylinderDensity,
  densityByGain,
  densityByHanging,
} from '../../../src/core/finished/piece-density.ts';
import type { PublishedRange } from '../../../src/core/finished/published-range.ts';
import { DRYING_SHRINKAGE } from '../../../src/core/finished/shrinkage.ts';
import { type Answers, answer } from '../answer.ts';

const sure = (value: number) => ({ value, uncertainty: 0 });

function inPerCent(ranges: readonly PublishedRange[], row: string): readonly number[] {
  const { low, high } = ranges.find(({ id }) => id === row)!;
  return [low * 100, high * 100];
}

export const pieceAnswers: Answers = {
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
    beside: true,
    work: moistureByVolume,
  }),
};
