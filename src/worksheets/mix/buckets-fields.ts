import { rows } from '../../islands/fields/rows.tsx';
import { choice, number } from '../../islands/fields.ts';
import { DRAINS, drains, howItDrains } from '../shared/foam/drains.ts';
import { zeroed } from '../shared/foam/foam-vessel.ts';
import { foamDensityField, targetDensity } from '../shared/mix/recipe.ts';
import { weighingBucket } from '../shared/mix/weighing-bucket.ts';
import { PERCENT } from '../shared/words/amounts.ts';
import { weighedLoadFields } from './weighed-load-fields.ts';

/** What “Several buckets, and foam that has waited: what do I add?” asks for. */
export const bucketsFields = {
  buckets: rows({
    label: 'Buckets weighed',
    help: 'One row for each vessel or part of the batch; each stands for the mix it is poured from.',
    row: 'bucket',
    most: 12,
    example: [
      { full: '13.65 kg', mass: '21.0 kg' },
      { full: '13.15 kg', mass: '21.0 kg' },
      { full: '12.95 kg', mass: '21.0 kg' },
    ],
    of: {
      full: number('mass', {
        label: 'Struck full, it weighs',
        example: '13.65 kg',
        min: '0 kg',
        max: '5000 kg',
        tooLow: zeroed,
      }),
      mass: number('mass', {
        label: 'Mix it stands for',
        example: '21.0 kg',
        min: '0 kg',
        aboveMin: true,
        max: '100 t',
      }),
    },
  }),
  tare: { ...weighingBucket.tare, help: 'Its ± is taken for that of each full bucket too.' },
  vessel: weighingBucket.vessel,
  target: targetDensity,
  age: number('time', {
    label: 'Age of the foam to be added',
    help: 'Since it left the lance. Pour off the liquid that has drained from it.',
    example: '6 min',
    min: '0 min',
    max: '1 d',
  }),
  made: number('count', {
    label: 'Corrections made so far',
    example: '0',
    min: '0',
    max: '20',
    whole: true,
  }),
  most: number('count', {
    label: 'Corrections at most',
    help: 'Two is common practice, no source.',
    example: '2',
    min: '0',
    max: '10',
    whole: true,
    folded: true,
  }),
  tolerance: number('ratio', {
    label: 'Near enough, either way',
    example: '5 %',
    min: '0 %',
    max: '50 %',
    units: PERCENT,
    folded: true,
  }),
  load: weighedLoadFields.load,
  foamDensity: { ...foamDensityField, label: 'Foam density when made', folded: true },
  drains: choice({ ...howItDrains, options: { ...DRAINS, not: 'Leave that out' }, folded: true }),
  half: { ...drains.half, when: { drains: ['curve'] }, folded: true },
  exponent: { ...drains.exponent, when: { drains: ['curve'] }, folded: true },
  perMinute: { ...drains.perMinute, when: { drains: ['line'] }, folded: true },
  baseDensity: number('density', {
    label: 'Base mix density',
    example: '1951 kg/m3',
    min: '0 kg/m3',
    aboveMin: true,
    max: '4000 kg/m3',
    takes: 'mix.baseDensity',
    folded: true,
  }),
  step: number('density', {
    label: 'The table goes in steps of about',
    help: 'As near to it as a round step of the bucket’s weight comes.',
    example: '25 kg/m3',
    min: '1 kg/m3',
    max: '500 kg/m3',
    folded: true,
  }),
  lines: number('count', {
    label: 'Lines of the table either way',
    example: '6',
    min: '1',
    max: '20',
    whole: true,
    folded: true,
  }),
} as const;
