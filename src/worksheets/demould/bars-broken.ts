import { breakABar } from '../../core/demould/break-a-bar.ts';
import { barsTogether } from '../../core/demould/several-bars.ts';
import { demand } from '../../core/domain-error.ts';
import { POSSIBLE_DENSITY } from '../../core/finished/possible-density.ts';
import { lines } from '../../islands/fields/lines.tsx';
import { choice, number, type Values } from '../../islands/fields.ts';
import { barAge } from '../shared/part/bar-fields.ts';
import { ONE_BAR_SHARE } from '../shared/part/bars-doubt.ts';

const side = (label: string, example: string) =>
  number('length', { label, example, min: '5 mm', max: '1 m' });

interface Bar {
  readonly hung: number;
  readonly breadth: number;
  readonly depth: number;
  readonly mass: number;
  /** From the middle of the span to the break, m. */
  readonly brokeAt: number;
}

/** A bar on a line of its own. */
const bar = {
  hung: number('mass', {
    label: 'Hung from it when it broke',
    example: '7.45 kg',
    min: '0 kg',
    max: '500 kg',
  }),
  breadth: side('Breadth', '50 mm'),
  depth: side('Depth', '50 mm'),
  mass: number('mass', {
    label: 'The bar itself',
    example: '0.45 kg',
    min: '0.001 kg',
    max: '200 kg',
  }),
};

/** What “How strong is it in bending?” asks for. */
export const barFields = {
  loading: choice({
    label: 'Loaded',
    options: {
      centre: 'At one point, in the middle',
      thirds: 'At two points, a third of the span in from each support',
    },
    example: 'centre',
  }),
  span: number('length', {
    label: 'Between the supports',
    help: 'At least three times the depth, or the bar is too stubby for the sum.',
    example: '250 mm',
    min: '20 mm',
    max: '3 m',
  }),
  length: number('length', {
    label: 'Length of the bars',
    example: '300 mm',
    min: '20 mm',
    max: '4 m',
  }),
  age: { ...barAge, usual: true },
  bars: lines({
    label: 'Bars broken',
    help: 'Hung: bucket, what was in it, hook and batten. Breadth and depth at the break.',
    of: bar,
    example: '7.45\t50\t50\t0.45\n8.10\t50\t50.5\t0.46\n6.70\t50\t49.5\t0.44\n7.70\t50.5\t50\t0.45',
    most: 20,
    when: { loading: ['centre'] },
  }),
  thirds: lines({
    label: 'Bars broken',
    help: 'Hung: bucket, what was in it, hook and spreader. Breadth and depth at the break.',
    of: {
      ...bar,
      brokeAt: number('length', {
        label: 'Break from the middle of the span',
        example: '4 mm',
        min: '0 mm',
        max: '1.5 m',
      }),
    },
    example: '11.2\t50\t50\t0.45\t4\n12.1\t50\t50.5\t0.46\t39\n10.1\t50\t49.5\t0.44\t12',
    most: 20,
    when: { loading: ['thirds'] },
  }),
  tape: number('length', {
    label: '± of the tape',
    example: '0.5 mm',
    min: '0 mm',
    max: '20 mm',
    folded: true,
  }),
  scale: number('mass', {
    label: '± of the scale',
    example: '0.01 kg',
    min: '0 kg',
    max: '5 kg',
    folded: true,
  }),
} as const;

/** Each bar's strength, and what they say together. */
export function barsBroken({
  loading,
  span,
  length,
  bars,
  thirds,
  tape,
  scale,
}: Values<typeof barFields>) {
  const read: readonly Bar[] =
    loading === 'thirds' ? thirds : bars.map((line) => ({ ...line, brokeAt: 0 }));
  const list = loading === 'thirds' ? 'thirds' : 'bars';
  const densities = read.map(({ mass, breadth, depth }) => mass / (breadth * depth * length));
  for (const [i, { brokeAt }] of read.entries()) {
    demand(`${list}.${i}.mass`, densities[i]!, 'density', POSSIBLE_DENSITY, 'no-such-bar');
    demand(`${list}.${i}.brokeAt`, brokeAt, 'length', { max: span / 2, belowMax: true });
  }
  const metres = (value: number) => ({ value, uncertainty: tape });
  const kilograms = (value: number) => ({ value, uncertainty: scale });
  const broken = read.map((bar) =>
    breakABar(
      {
        span: metres(span),
        breadth: metres(bar.breadth),
        depth: metres(bar.depth),
        length: metres(length),
        barMass: kilograms(bar.mass),
        hung: kilograms(bar.hung),
      },
      loading,
      bar.brokeAt,
    ),
  );
  const has = (code: string) => broken.filter(({ notes }) => notes.some((n) => n.code === code));
  const counted = broken.filter((bar) => !has('throw-out').includes(bar));
  demand('bars', counted.length, 'count', { min: 1 }, 'all-thrown-out');
  const together = barsTogether(counted);
  const reading = Math.max(...counted.map((bar) => bar.uncertainty));
  return {
    read,
    broken,
    counted,
    /** The density of the heaviest bar, kg/m³. */
    density: Math.max(...densities),
    together,
    reading,
    guessed: together.nextBarLow === undefined,
    // No strength is below 0: bars that scatter so widely say nothing of the next one.
    low: Math.max(0, together.nextBarLow ?? ONE_BAR_SHARE * together.mean),
    short: has('short-span').length > 0,
    heaviest: Math.max(...read.map(({ hung }) => hung)),
    thrown: broken.length - counted.length,
  };
}
