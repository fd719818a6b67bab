import { choice, number } from '../../islands/fields.ts';

const GPA = { metric: 'GPa', us: 'psi' } as const;
const length = (label: string, example: string, max: string, more: object = {}) =>
  number('length', { label, example, min: '0 mm', aboveMin: true, max, ...more });

export const pressureFields = {
  depth: length('Depth of mix in the form', '60 mm', '10 m', { takes: 'piece.deep' }),
  density: number('density', {
    label: 'Wet density',
    example: '600 kg/m3',
    min: '100 kg/m3',
    max: '2500 kg/m3',
    takes: 'mix.planned',
  }),
  width: length('Length of the side', '450 mm', '50 m', { takes: 'piece.long' }),
  thickness: length('Thickness of the panel', '18 mm', '200 mm'),
  spans: choice({
    label: 'The panel runs over',
    options: {
      one: 'One span',
      two: 'Two spans',
      three: 'Three spans or more',
      up: 'The depth, up to a batten at the top',
    },
    example: 'one',
  }),
  span: length('Between its battens or stakes', '450 mm', '5 m', {
    when: { spans: ['one', 'two', 'three'] },
  }),
  spacing: length('Clamps or ties along the side, every', '450 mm', '10 m'),
  core: choice({
    label: 'Something stands in the mix',
    options: {
      none: 'No core',
      floats: 'A core the mix flows under',
      leans: 'A face that leans over it',
    },
    example: 'none',
    follows: { 'part.cores': 'floats' },
  }),
  displaced: number('volume', {
    label: 'Volume of the core below the surface',
    example: '1 L',
    min: '0 L',
    aboveMin: true,
    max: '10 m3',
    takes: 'part.cores',
    when: { core: ['floats'] },
  }),
  coreMass: number('mass', {
    label: 'The core weighs',
    example: '0.05 kg',
    min: '0 kg',
    max: '10 t',
    when: { core: ['floats'] },
  }),
  lean: number('angle', {
    label: 'The face leans from upright by',
    example: '20 deg',
    min: '0 deg',
    max: '80 deg',
    when: { core: ['leans'] },
  }),
  faceWidth: length('Width of that face', '450 mm', '50 m', { when: { core: ['leans'] } }),
  material: choice({
    label: 'The panel is',
    options: {
      ply: 'Softwood plywood, along the grain',
      board: 'Softwood boards',
      own: 'Something I know',
    },
    example: 'ply',
    folded: true,
  }),
  modulus: number('stress', {
    label: 'Its modulus of elasticity',
    example: '7 GPa',
    min: '0.1 GPa',
    max: '250 GPa',
    units: GPA,
    when: { material: ['own'] },
    folded: true,
  }),
  limit: choice({
    label: 'It may bend by',
    options: {
      seen: 'Span ÷ 360, a face that is seen',
      plain: 'Span ÷ 270',
      rough: 'Span ÷ 180, rough',
    },
    example: 'seen',
    folded: true,
  }),
  stress: number('stress', {
    label: 'It may be stressed in bending to',
    help: 'From the panel’s sheet; 10\u00a0MPa (1450\u00a0psi) for one of unknown grade, from memory.',
    example: '10 MPa',
    min: '0 MPa',
    aboveMin: true,
    max: '500 MPa',
    folded: true,
  }),
  lower: number('length', {
    label: 'Lower row above the bottom',
    example: '0 mm',
    min: '0 mm',
    max: '10 m',
    folded: true,
  }),
  below: number('length', {
    label: 'Upper row below the surface of the mix',
    example: '0 mm',
    min: '0 mm',
    max: '10 m',
    folded: true,
  }),
} as const;

/** Modulus along the grain, Pa: the lower end of the usual range. @source plywood-modulus (from memory) */
export const MODULUS = { ply: 7e9, board: 9e9 } as const;
export const BENDS = { seen: 1 / 360, plain: 1 / 270, rough: 1 / 180 } as const;
export const SPANS = { one: 1, two: 2, three: 3, up: 1 } as const;
/** Spans along the side, as they are drawn. */
export const RUNS = { ...SPANS, up: 0 } as const;
