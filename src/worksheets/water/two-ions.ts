import { number } from '../../islands/fields.ts';

/** The two ions of hardness, as a report gives them. */
export const calcium = number('concentration', {
  label: 'Calcium, Ca',
  help: 'Given as CaCO₃: divide by 2.5.',
  example: '95 mg/L',
  plusMinus: '2 mg/L',
  min: '0 mg/L',
  max: '2000 mg/L',
  bench: 'water.calcium',
});
export const magnesium = number('concentration', {
  label: 'Magnesium, Mg',
  help: 'Given as CaCO₃: divide by 4.12.',
  example: '18 mg/L',
  plusMinus: '1 mg/L',
  min: '0 mg/L',
  max: '2000 mg/L',
  bench: 'water.magnesium',
});
