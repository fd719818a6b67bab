import { choice, number } from '../../islands/fields.ts';
import { atMost } from '../shared/words/spelt.ts';
import { dissolved, otherIons, pH } from './water-fields.ts';

const shown = { folded: false, when: {} } as const;
const trace = (label: string, bench: string) =>
  number('concentration', {
    label,
    example: '',
    min: '0 mg/L',
    max: '500000 mg/L',
    optional: true,
    folded: true,
    spelt: atMost,
    bench,
  });

/** What “Is this water fit to mix cement with?” asks for. */
export const fitFields = {
  senses: choice({
    label: 'Look, smell, rub a drop between the fingers',
    options: {
      clear: 'Clear, no smell, no film',
      alive: 'Cloudy, or something swims in it',
      green: 'Green, brown or smelling',
      oil: 'Oily film, soap or sweet',
    },
    example: 'clear',
    bench: 'water.senses',
  }),
  use: choice({
    label: 'What is inside the part?',
    options: {
      plain: 'No steel',
      reinforced: 'Steel wire, mesh or bars',
      prestressed: 'Prestressed steel',
    },
    example: 'plain',
    bench: 'water.steel',
  }),
  chloride: { ...otherIons.chloride, ...shown },
  sulfate: { ...otherIons.sulfate, ...shown },
  sodium: { ...otherIons.sodium, ...shown },
  potassium: { ...otherIons.potassium, ...shown },
  dissolvedSolids: { ...dissolved, optional: true, spelt: atMost },
  nitrate: { ...otherIons.nitrate, when: {} },
  pH: { ...pH, optional: true, folded: true },
  phosphate: trace('Phosphate, as P₂O₅', 'water.phosphate'),
  sugars: trace('Sugars', 'water.sugars'),
  lead: trace('Lead, Pb', 'water.lead'),
  zinc: trace('Zinc, Zn', 'water.zinc'),
} as const;
