import { choice, number } from '../../islands/fields.ts';
import { ALKALINITY } from '../shared/words/amounts.ts';
import { atMost } from '../shared/words/spelt.ts';

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
