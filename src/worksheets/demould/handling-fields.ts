import type { HeldBeam } from '../../core/demould/beam.ts';
import type { FlatPart } from '../../core/demould/handling.ts';
import {
  type FormShape,
  handlingMultiplier,
  MOULD_ADHESION,
  type MouldFace,
} from '../../core/demould/multipliers.ts';
import { type Stripping, strippingBurden } from '../../core/demould/stripping.ts';
import { choice, number } from '../../islands/fields.ts';

export const stage = choice({
  label: 'What happens to it',
  options: {
    form: 'It comes out of the form',
    carried: 'It is free, and carried',
    travel: 'It travels on a cart or a vehicle',
  },
  example: 'form',
});

export const form = choice({
  label: 'Shape of the form',
  options: {
    'flat-removable-sides': 'Flat, sides come off first',
    'flat-with-joints': 'Flat, with false joints or returns',
    fluted: 'Fluted, with draft',
    sculptured: 'Sculptured',
  },
  example: 'flat-removable-sides',
  when: { stage: ['form'] },
  folded: true,
});

export const finish = choice({
  label: 'Surface it leaves',
  options: {
    'smooth-oiled': 'Smooth',
    'retarded-exposed': 'Retarded, aggregate to be exposed',
  },
  example: 'smooth-oiled',
  when: { stage: ['form'] },
  folded: true,
});

/**
 * The source's classes are oiled steel or plastic, varnished timber and rough timber. That wax does what oil
 * does, and faced board what plastic does, is common practice, no source.
 */
export const face = choice({
  label: 'Face of the form',
  help: 'Steel, plastic and faced board are smooth. The figure was given for oiled steel and plastic.',
  options: {
    'oiled-steel-or-plastic': 'Smooth, waxed or oiled',
    'varnished-timber': 'Varnished timber',
    'rough-timber': 'Rough timber',
  },
  example: 'oiled-steel-or-plastic',
  when: { stage: ['form'] },
});

export const hold = choice({
  label: 'How it is held',
  options: {
    ends: 'At its two ends',
    'two-points': 'At two lines, in from the ends',
    'four-points': 'At four points',
    tipping: 'Tipped up about one end',
    middle: 'In the middle, by one pair of hands',
  },
  example: 'ends',
});

const inset = (label: string, example: string, when: readonly string[]) =>
  number('length', { label, example, min: '0 mm', max: '5 m', when: { hold: when } });

/** Distances of the holds. */
export const places = {
  left: inset('Hold, in from the end', '93 mm', ['two-points', 'four-points']),
  right: inset('Other hold, in from its end', '93 mm', ['two-points', 'tipping']),
  aside: inset('Hold, in from the side', '62 mm', ['four-points']),
  grip: inset('Hands apart by', '200 mm', ['middle']),
};

/** What presses on the part at a stage: out of the form, the harder of two ways to work it out. */
export function burden(
  chosen: {
    readonly stage: keyof typeof stage.options;
    readonly form: FormShape;
    readonly finish: 'smooth-oiled' | 'retarded-exposed';
    readonly face: MouldFace;
  },
  part: { readonly density: number; readonly depth: number },
): {
  readonly factor: number;
  readonly adhesion: number;
  readonly stripping?: Stripping;
} {
  const { stage, form, finish, face } = chosen;
  const during = { form: 'stripping', carried: 'yard-handling', travel: 'travel' } as const;
  const factor = handlingMultiplier({ form, finish, during: during[stage] })?.factor ?? 1;
  if (stage !== 'form') return { factor, adhesion: 0 };
  const stripping = strippingBurden({ ...part, factor, adhesion: MOULD_ADHESION[face] });
  return { factor: stripping.factor, adhesion: stripping.adhesion, stripping };
}

/** A knife edge cannot be drawn as two holds. */
const NARROWEST = 1e-4;
/** Each hold, as a sentence says how a part is moved. */
export const WAYS = {
  ends: 'at its ends',
  'two-points': 'at two lines',
  'four-points': 'at four points',
  tipping: 'tipped about one end',
  middle: 'in the middle',
} as const;

/** The holds along the span, for the drawing. */
export function seenFromTheSide(
  by: keyof typeof WAYS,
  v: { readonly left: number; readonly right: number; readonly grip: number },
  { length }: FlatPart,
  load: number,
): HeldBeam {
  const middle = (length - Math.max(v.grip, NARROWEST * length)) / 2;
  const [left, right] = {
    ends: [0, 0],
    'two-points': [v.left, v.right],
    'four-points': [v.left, v.left],
    tipping: [0, v.right],
    middle: [middle, middle],
  }[by] as [number, number];
  return { length, left, right, load };
}
