import { rows } from '../../islands/fields/rows.tsx';
import { choice, number } from '../../islands/fields.ts';
import { slide } from '../../islands/parts/Slider.tsx';
import { ALKALINITY } from '../shared/words/amounts.ts';
import { softWater } from './soft-water.ts';
import { alkalinity, hardness, pH, softHardness, waterTemperature } from './water-fields.ts';

const conserved = { min: '0 mg/L', max: '500000 mg/L', when: { of: ['other'] } } as const;
const byHardness = { when: { of: ['hardness'] } } as const;
const forPH = { ...byHardness, optional: true, folded: true } as const;

export const blendFields = {
  of: choice({
    label: 'Blend for',
    options: { hardness: 'A hardness', other: 'Something else dissolved, in mg/L' },
    example: 'hardness',
    bench: 'water.blendOf',
  }),
  hardness: { ...hardness, label: 'Hardness of the first water', ...byHardness },
  soft: { ...softHardness, label: 'Hardness of the second water', ...byHardness },
  otherFirst: number('concentration', {
    label: 'In the first water',
    example: '42 mg/L',
    ...conserved,
  }),
  otherSecond: number('concentration', {
    label: 'In the second water',
    example: '2 mg/L',
    ...conserved,
  }),
  more: choice({
    label: 'Waters at hand',
    options: { two: 'Two', more: 'More' },
    example: 'two',
    bench: 'water.blendMore',
  }),
  further: rows({
    label: 'Further waters',
    help: 'Fill in what you blend for; alkalinity and pH are for the pH of the blend.',
    row: 'water',
    most: 3,
    example: [
      { hardness: '160 mg/L CaCO3', alkalinity: '120 mg/L CaCO3', pH: '7.6', other: '20 mg/L' },
    ],
    of: {
      hardness: number('hardness', {
        label: 'Hardness',
        example: '160 mg/L CaCO3',
        min: '0 mg/L CaCO3',
        max: '5000 mg/L CaCO3',
      }),
      alkalinity: number('hardness', {
        label: 'Alkalinity',
        example: '120 mg/L CaCO3',
        min: '0 mg/L CaCO3',
        max: '5000 mg/L CaCO3',
        units: ALKALINITY,
        optional: true,
      }),
      pH: number('count', {
        label: 'pH',
        example: '7.6',
        min: '2',
        max: '12.5',
        optional: true,
      }),
      other: number('concentration', {
        label: 'The other quantity',
        example: '20 mg/L',
        min: '0 mg/L',
        max: '500000 mg/L',
      }),
    },
    when: { more: ['more'] },
  }),
  target: number('hardness', {
    label: 'Hardness wanted',
    example: '120 mg/L CaCO3',
    min: '0 mg/L CaCO3',
    max: '5000 mg/L CaCO3',
    bench: 'water.softTarget',
    slider: slide('15 mg/L CaCO3', '400 mg/L CaCO3'),
    ...byHardness,
  }),
  otherTarget: number('concentration', { label: 'Wanted', example: '20 mg/L', ...conserved }),
  volume: number('volume', {
    label: 'Water wanted',
    ...softWater,
    bench: 'water.blendVolume',
  }),
  alkalinity: {
    ...alkalinity,
    label: 'Alkalinity of the first water',
    ...forPH,
  },
  pH: { ...pH, label: 'pH of the first water', ...forPH },
  softAlkalinity: number('hardness', {
    label: 'Alkalinity of the second water',
    example: '10 mg/L CaCO3',
    min: '0 mg/L CaCO3',
    max: '5000 mg/L CaCO3',
    units: ALKALINITY,
    bench: 'water.softAlkalinity',
    ...forPH,
  }),
  softPH: number('count', {
    label: 'pH of the second water',
    example: '6.8',
    min: '2',
    max: '12.5',
    bench: 'water.softPH',
    ...forPH,
  }),
  temperature: {
    ...waterTemperature,
    label: 'Temperature of the blend',
    folded: true,
    ...byHardness,
  },
} as const;
