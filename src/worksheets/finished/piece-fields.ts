import { lines } from '../../islands/fields/lines.tsx';
import { choice, number } from '../../islands/fields.ts';
import { HOURS } from '../shared/words/amounts.ts';

const inWater = { method: ['gain', 'hanging'] } as const;
const side = (label: string, example: string, methods: readonly string[]) =>
  number('length', {
    label,
    example,
    plusMinus: '0.5 mm',
    min: '5 mm',
    max: '5 m',
    when: { method: methods },
  });
const weighed = (
  label: string,
  example: string,
  when: Record<string, readonly string[]>,
  help = '',
) =>
  number('mass', {
    label,
    ...(help && { help }),
    example,
    plusMinus: '0.001 kg',
    min: '0 kg',
    max: '500 kg',
    when,
  });

/** What is read of a hardened piece: its mass, what its volume follows from, and how it dried. */
export const pieceFields = {
  method: choice({
    label: 'Its volume',
    options: {
      block: 'from its sides: a block',
      cylinder: 'from its sides: a cylinder',
      gain: 'pushed under in water on the scale',
      hanging: 'hung under water, with a sinker',
    },
    example: 'block',
  }),
  mass: number('mass', {
    label: 'The piece, as it is',
    example: '0.705 kg',
    plusMinus: '0.001 kg',
    min: '0.001 kg',
    max: '500 kg',
  }),
  length: side('Length', '150 mm', ['block']),
  width: side('Width', '150 mm', ['block']),
  diameter: side('Diameter', '150 mm', ['cylinder']),
  height: side('Height or thickness', '60 mm', ['block', 'cylinder']),
  wrapped: weighed(
    'Wrapped in film, in air',
    '0.712 kg',
    inWater,
    'Tight, so that no air is caught.',
  ),
  gain: weighed(
    'The scale gains',
    '1.358 kg',
    { method: ['gain'] },
    'With the piece held just under by a thin rod, less the reading before.',
  ),
  sinker: weighed('Sinker alone, under water', '1.5 kg', { method: ['hanging'] }),
  both: weighed('Piece and sinker, under water', '0.854 kg', { method: ['hanging'] }),
  dried: choice({
    label: 'Has it been dried?',
    options: { yes: 'Yes, in an oven', no: 'No' },
    example: 'yes',
  }),
  oven: number('temperature', {
    label: 'Oven',
    example: '105 °C',
    min: '30 °C',
    max: '120 °C',
    when: { dried: ['yes'] },
  }),
  weighings: lines({
    label: 'Weighings while it dried',
    help: 'Cooled, without its film. It is dry when a day more takes less than 0.2\u00a0% of its mass.',
    of: {
      time: number('time', {
        label: 'Time',
        example: '24 h',
        min: '0 h',
        max: '5000 h',
        units: HOURS,
      }),
      mass: number('mass', {
        label: 'Mass',
        example: '0.63 kg',
        min: '0.001 kg',
        max: '500 kg',
      }),
    },
    example: '0\t0.705\n24\t0.641\n48\t0.629\n72\t0.628',
    most: 40,
    when: { dried: ['yes'] },
  }),
  water: number('temperature', {
    usual: true,
    label: 'Temperature of the water',
    example: '15 °C',
    min: '0 °C',
    max: '40 °C',
    when: inWater,
    folded: true,
  }),
  film: number('density', {
    usual: true,
    label: 'Density of the film',
    help: 'Polyethylene, from memory.',
    example: '920 kg/m3',
    min: '500 kg/m3',
    max: '2000 kg/m3',
    when: inWater,
    folded: true,
  }),
};
