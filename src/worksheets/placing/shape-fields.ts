import { lines } from '../../islands/fields/lines.tsx';
import { rows } from '../../islands/fields/rows.tsx';
import { choice, number } from '../../islands/fields.ts';
import { learned } from '../../islands/parts/LearnedOffer.tsx';
import { PERCENT } from '../shared/words/amounts.ts';

const length = (label: string, example: string, when: readonly string[], more: object = {}) =>
  number('length', {
    label,
    example,
    min: '0 mm',
    aboveMin: true,
    max: '20 m',
    when: { shape: when },
    ...more,
  });
const orNothing = { aboveMin: false } as const;

const BARS = { bars: ['some'] } as const;
const bar = (label: string, example: string) =>
  number('length', { label, example, usual: true, min: '1 mm', max: '5 m', when: BARS });

export const shapeFields = {
  shape: choice({
    label: 'Shape of the form',
    options: {
      slab: 'Slab',
      block: 'Block',
      cylinder: 'Cylinder',
      ring: 'Ring',
      'cone-frustum': 'Round, sloping sides',
      'box-frustum': 'Box, sloping sides',
      wedge: 'Wedge',
      ball: 'Ball',
      cap: 'Slice of a ball',
      shell: 'Bowl or dome',
      prism: 'Any outline, straight up',
    },
    example: 'slab',
  }),
  count: number('count', { label: 'How many', example: '12', min: '1', max: '10000', whole: true }),
  length: length('Length', '450 mm', ['slab', 'block', 'box-frustum', 'wedge']),
  width: length('Width', '300 mm', ['slab', 'block', 'box-frustum', 'wedge']),
  thickness: length('Thickness', '60 mm', ['slab', 'shell']),
  thickEnd: length('Thickness at the thick end', '60 mm', ['wedge']),
  thinEnd: length('Thickness at the thin end', '30 mm', ['wedge'], orNothing),
  diameter: length('Diameter', '300 mm', ['cylinder', 'ring', 'ball']),
  inner: length('Diameter of the hole', '200 mm', ['ring']),
  bottomDiameter: length('Diameter at the bottom', '240 mm', ['cone-frustum']),
  topDiameter: length('Diameter at the top', '300 mm', ['cone-frustum'], orNothing),
  topLength: length('Length at the top', '500 mm', ['box-frustum'], orNothing),
  topWidth: length('Width at the top', '350 mm', ['box-frustum'], orNothing),
  baseDiameter: length('Diameter across its flat', '400 mm', ['cap', 'shell']),
  height: length('Height', '150 mm', [
    'block',
    'cylinder',
    'ring',
    'cone-frustum',
    'box-frustum',
    'cap',
    'shell',
    'prism',
  ]),
  corners: lines({
    label: 'Corners, in order round the outline',
    help: 'Typed or pasted; the last joins the first.',
    most: 60,
    example: '0\t0\n450\t0\n450\t300\n250\t300\n150\t200\n0\t200',
    of: {
      x: number('length', {
        label: 'Along',
        example: '0 mm',
        min: '-20 m',
        max: '20 m',
      }),
      y: number('length', {
        label: 'Across',
        example: '0 mm',
        min: '-20 m',
        max: '20 m',
      }),
    },
    when: { shape: ['prism'] },
  }),
  hollow: choice({
    label: 'Cores and blockouts in each',
    options: { none: 'None', some: 'Some' },
    example: 'none',
  }),
  cores: rows({
    label: 'Left out of each form',
    help: 'Measures of the part of it that stands in the mix. One that lies along the form goes in as a box of as much volume.',
    row: 'core',
    most: 8,
    example: [{ core: 'round', count: '2', across: '40 mm', deep: '60 mm' }],
    when: { hollow: ['some'] },
    of: {
      core: choice({
        label: 'Shape',
        options: {
          round: 'Round',
          box: 'Box',
          taper: 'Round, tapered',
          'box-taper': 'Box, tapered',
          ball: 'Ball',
        },
        example: 'round',
      }),
      count: number('count', {
        label: 'In each form',
        example: '2',
        min: '1',
        max: '1000',
        whole: true,
      }),
      across: number('length', {
        label: 'Diameter of the core, or length',
        example: '40 mm',
        min: '0 mm',
        aboveMin: true,
        max: '20 m',
      }),
      wide: number('length', {
        label: 'Width of the core',
        example: '40 mm',
        min: '0 mm',
        aboveMin: true,
        max: '20 m',
        when: { core: ['box', 'box-taper'] },
      }),
      end: number('length', {
        label: 'Diameter at the other end, or length',
        example: '30 mm',
        min: '0 mm',
        max: '20 m',
        when: { core: ['taper', 'box-taper'] },
      }),
      endWide: number('length', {
        label: 'Width at the other end',
        example: '30 mm',
        min: '0 mm',
        max: '20 m',
        when: { core: ['box-taper'] },
      }),
      deep: number('length', {
        label: 'Depth in the mix',
        example: '60 mm',
        min: '0 mm',
        aboveMin: true,
        max: '20 m',
        when: { core: ['round', 'box', 'taper', 'box-taper'] },
      }),
    },
  }),
  bars: choice({
    label: 'Test bars with them',
    options: { none: 'None', some: 'Some' },
    example: 'none',
  }),
  barCount: number('count', {
    label: 'How many bars',
    example: '4',
    usual: true,
    min: '1',
    max: '1000',
    whole: true,
    when: BARS,
  }),
  barLength: bar('Length of a bar', '300 mm'),
  barWidth: bar('Width of a bar', '50 mm'),
  barHeight: bar('Height of a bar', '50 mm'),
  settling: number('ratio', {
    label: 'Left proud, for settling',
    usual: true,
    learned: learned('form.settling'),
    help: 'A guess until you have seen what your own batches do.',
    example: '3 %',
    min: '0 %',
    max: '50 %',
    units: PERCENT,
    bench: 'pieces.settling',
  }),
  waste: number('ratio', {
    label: 'Waste',
    usual: true,
    example: '5 %',
    min: '0 %',
    max: '50 %',
    units: PERCENT,
    bench: 'pieces.waste',
  }),
} as const;
