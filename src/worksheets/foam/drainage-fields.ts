import { lines } from '../../islands/fields/lines.tsx';
import { number } from '../../islands/fields.ts';
import { foamDensityField } from '../shared/mix/recipe.ts';
import { PERCENT, SMALL_VOLUME } from '../shared/words/amounts.ts';
import { demoDrainage, typedReadings } from './demo-drainage.ts';

const SMALL_MASS = { metric: 'kg', us: 'oz' } as const;

const time = number('time', {
  label: 'Time since the foam was made',
  example: '2 min',
  min: '0 min',
  max: '3 d',
});
const HELP =
  'Type them, or paste two columns from a table. A time may be 1:30, and a unit may stand behind a number.';
const MOST = 60;

/** How the liquid is measured, and the readings in that measure. */
export const drainageFields = {
  foamMass: number('mass', {
    label: 'Foam in the vessel when the clock started',
    example: `${demoDrainage.foam} kg`,
    min: '0.001 kg',
    max: '1000 kg',
    when: { measure: ['mass'] },
  }),
  foamVolume: number('volume', {
    label: 'Foam in the vessel when the clock started',
    example: '2 L',
    min: '1 mL',
    max: '10 m3',
    when: { measure: ['volume'] },
  }),
  foamHeight: number('length', {
    label: 'Height of the foam when the clock started',
    example: '240 mm',
    min: '5 mm',
    max: '10 m',
    when: { measure: ['height'] },
  }),
  foamDensity: { ...foamDensityField, help: 'It says how much liquid the foam held.' },
  byMass: lines({
    label: 'Readings',
    help: HELP,
    most: MOST,
    example: typedReadings(),
    when: { measure: ['mass'] },
    of: {
      time,
      drained: number('mass', {
        label: 'Liquid run out by then',
        example: '0.04 kg',
        min: '0 kg',
        units: SMALL_MASS,
      }),
    },
  }),
  byVolume: lines({
    label: 'Readings',
    help: HELP,
    most: MOST,
    // Two litres of the same foam hold a tenth of the liquid.
    example: typedReadings(100),
    when: { measure: ['volume'] },
    of: {
      time,
      drained: number('volume', {
        label: 'Liquid below the foam',
        example: '4 mL',
        min: '0 mL',
        units: SMALL_VOLUME,
      }),
    },
  }),
  byHeight: lines({
    label: 'Readings',
    help: HELP,
    most: MOST,
    example: '4\t1.5\n6\t2.5\n8\t3.5\n10\t4.5\n15\t7\n20\t9\n30\t12\n45\t14.5',
    when: { measure: ['height'] },
    of: {
      time,
      drained: number('length', {
        label: 'Height of clear liquid',
        example: '4 mm',
        min: '0 mm',
      }),
    },
  }),
  byShare: lines({
    label: 'Readings',
    help: HELP,
    most: MOST,
    example: '2\t2.5\n4\t7.5\n6\t12.5\n8\t17.5\n10\t24\n15\t36\n20\t47\n30\t61',
    when: { measure: ['share'] },
    of: {
      time,
      drained: number('ratio', {
        label: 'Share of the liquid drained',
        example: '5 %',
        min: '0 %',
        max: '100 %',
        units: PERCENT,
      }),
    },
  }),
  error: number('ratio', {
    label: 'Error of one reading, as a share of all the liquid',
    help: 'A millilitre is 1\u00a0% where the foam holds 100\u00a0mL of liquid, and 6\u00a0% where it holds 16, as a small measuring jar of foam does.',
    example: '1 %',
    min: '0.05 %',
    max: '20 %',
    units: PERCENT,
    folded: true,
  }),
};
