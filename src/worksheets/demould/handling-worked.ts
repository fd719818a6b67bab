import { tooYoungToEstimate } from '../../core/curing/limits.ts';
import { ageForLeastShare, type Band, grownBand } from '../../core/curing/strength-growth.ts';
import { bestSupportDistance } from '../../core/demould/beam.ts';
import {
  type FlatPart,
  type Hold,
  handlingStress,
  utilisation,
} from '../../core/demould/handling.ts';
import { withJerk } from '../../core/demould/jerk.ts';
import { CAUTIOUS_SHARE } from '../../core/demould/strip-window.ts';
import { choice, number, type Values } from '../../islands/fields.ts';
import { barLow, barMean, barsCounted, strengthFrom } from '../shared/part/bar-fields.ts';
import { barsBand } from '../shared/part/bars-doubt.ts';
import { cement, GROWTH } from '../shared/part/cement-growth.ts';
import { dryDensity, wetDensity } from '../shared/part/part-densities.ts';
import { partLength, partThickness, partWidth } from '../shared/part/part-sides.ts';
import { flexuralAt28Days } from '../shared/part/part-strength.ts';
import { firstFrost, hasFrozen } from '../shared/time/first-frost.ts';
import { sinceCasting } from '../shared/time/since-by-clock.ts';
import { DAYS } from '../shared/words/amounts.ts';
import {
  burden,
  face,
  finish,
  form,
  hold,
  places,
  seenFromTheSide,
  stage,
  type WAYS,
} from './handling-fields.ts';

/** The holds that a part standing on edge may have. */
const ON_EDGE: readonly Hold['by'][] = ['ends', 'two-points', 'middle'];

/** What “Will it bear being moved like this?” asks for. */
export const moveFields = {
  length: partLength,
  width: partWidth,
  thickness: {
    ...partThickness,
    help: 'Worked out for a solid, flat part. Of a hollow one type the sides of one wall: the tension and the weight are then that wall’s alone.',
  },
  density: wetDensity,
  stage,
  face,
  hold,
  ...places,
  strengthFrom,
  mean: barMean,
  low: barLow,
  bars: barsCounted,
  beside: choice({
    label: 'The part, against the bars',
    options: {
      same: 'As old as they were or older, and kept beside them',
      other: 'Younger, or kept elsewhere',
      unsaid: 'Not said yet',
    },
    example: 'same',
    unsaid: 'unsaid',
    when: { strengthFrom: ['bars'] },
  }),
  age: number('time', {
    label: 'Adjusted age now, as at 20\u00a0°C (68\u00a0°F)',
    help: 'A cold part is younger than its days.',
    example: '0.8 d',
    min: '0 h',
    max: '365 d',
    units: DAYS,
    takes: 'curing.age',
    when: { strengthFrom: ['density'] },
  }),
  since: { ...sinceCasting, when: { strengthFrom: ['density'] } },
  cement: { ...cement, when: { strengthFrom: ['density'] } },
  form,
  finish,
  spans: choice({
    label: 'The side that spans',
    options: { length: 'The length', width: 'The width' },
    example: 'length',
    folded: true,
  }),
  lies: choice({
    label: 'It is held',
    options: { flat: 'Flat', edge: 'Standing on edge' },
    example: 'flat',
    when: { hold: ON_EDGE },
    folded: true,
  }),
  frost: { ...firstFrost, folded: true },
  dry: { ...dryDensity, folded: true, when: { strengthFrom: ['density'] } },
} as const;

type Moves = Values<typeof moveFields>;

/** The tension of the move that was chosen, of the other moves, and what the part can bear. */
export function moved(v: Moves) {
  const [span, across] = v.spans === 'length' ? [v.length, v.width] : [v.width, v.length];
  // Chosen for one hold, it does not go for another that leaves no choice.
  const onEdge = v.lies === 'edge' && ON_EDGE.includes(v.hold);
  const depth = onEdge ? across : v.thickness;
  const { stripping, ...load } = burden(v, { density: v.density, depth });
  const plain = { length: span, width: onEdge ? v.thickness : across, depth, density: v.density };
  const part: FlatPart = { ...plain, ...load };
  const free: FlatPart = { ...plain, ...burden({ ...v, stage: 'carried' }, plain) };
  const asked: Record<keyof typeof WAYS, Hold> = {
    ends: { by: 'ends' },
    'two-points': { by: 'two-points', left: v.left, right: v.right },
    'four-points': { by: 'four-points', in: v.left, aside: v.aside },
    tipping: { by: 'tipping', grip: v.right },
    middle: { by: 'middle', grip: v.grip },
  };
  const held = handlingStress(part, asked[v.hold]);
  const young =
    v.strengthFrom === 'density' &&
    tooYoungToEstimate({ adjustedAge: v.age, sinceCasting: v.since });
  const frozen = v.strengthFrom === 'density' && hasFrozen(v);
  const strength = young || frozen ? undefined : bears(v);
  const best = bestSupportDistance(span);
  const atBest: Hold = { by: 'two-points', left: best, right: best };
  const others: readonly [string, Hold][] = [
    ['at its two ends', { by: 'ends' }],
    ['at two lines, best place', atBest],
    [
      'at four points, best place',
      { by: 'four-points', in: best, aside: bestSupportDistance(across) },
    ],
    ['tipped about one end', { by: 'tipping', grip: 0 }],
    ['in the middle, on one hand or two close together', { by: 'middle', grip: 0 }],
  ];
  const ways = [
    ...others
      .filter(([, { by }]) => !onEdge || ON_EDGE.includes(by))
      .map(([name, way]) => ({ name, ...handlingStress(part, way) })),
    ...(stripping
      ? [
          {
            name: 'freed of the form first, at its two ends',
            ...handlingStress(free, { by: 'ends' }),
          },
        ]
      : []),
  ];
  return {
    part,
    held,
    stripping,
    mass: v.density * v.length * v.width * v.thickness,
    /** Whether it is too young for any estimate of its strength. */
    young,
    /** Whether it has frozen, and a strength by its age is worth nothing. */
    frozen,
    strength,
    /** Whether the strength is of bars, and of no more than one, as far as was said. */
    ofBars: v.strengthFrom === 'bars',
    oneBar: v.strengthFrom === 'bars' && (v.bars ?? 1) < 2,
    use: strength && utilisation({ stress: held.stress, strength }),
    enough: v.strengthFrom === 'density' ? oldEnough(v, held.stress) : undefined,
    best,
    bestStress: handlingStress(part, atBest).stress,
    /** The same hold once the form has let go. */
    freed: handlingStress(free, asked[v.hold]).stress,
    ways,
    beam: seenFromTheSide(v.hold, v, part, held.load),
  };
}

const at28Days = (v: Moves) => flexuralAt28Days({ wetDensity: v.density, dryDensity: v.dry });

/**
 * The age at 20 °C, s, at which a tension, Pa, with a jerk is within the cautious share of the low
 * end of the strength; undefined if it never is.
 */
function oldEnough(v: Moves, stress: number): number | undefined {
  const at28 = at28Days(v);
  const share = at28 && withJerk(stress) / CAUTIOUS_SHARE / at28.low;
  return share && ageForLeastShare({ share, coefficients: GROWTH[v.cement] });
}

/** The bending strength now, Pa: from the bars, or from published figures and growth curves. */
function bears(v: Moves): Band | undefined {
  if (v.strengthFrom === 'bars') return barsBand(v);
  const known = at28Days(v);
  const at = { age: v.age };
  return known && grownBand({ known, least: at, most: at, coefficients: GROWTH[v.cement] });
}
