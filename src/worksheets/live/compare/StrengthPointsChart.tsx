import { toUnit } from '../../../core/quantity/convert.ts';
import { KINDS, unitOf } from '../../../core/quantity/kinds.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { Dot, Plot } from '../../../islands/plots/Plot.tsx';
import { DAYS, KPA, MPA } from '../../shared/words/amounts.ts';
import type { StrengthPoint } from './StrengthPoints.tsx';

/** The fewest points for a chart. */
const FEWEST = 2;
/** Ratio of densities below which no trend can be seen. Common practice, no source. */
const CLOSE = 1.15;
/** The margin around the points, as a share of the largest. */
const ROOM = 0.04;

interface Drawn {
  readonly density: number;
  readonly strength: number;
  readonly age: number | undefined;
}

/** Points of one kind of strength against the kind of density that most of them have. */
function drawn(points: readonly StrengthPoint[], of: 'crush' | 'bend') {
  const against = (density: 'dry' | 'wet') =>
    points.flatMap((point): Drawn[] =>
      point[density] && point[of] && !point.doubted.includes(of)
        ? [{ density: point[density], strength: point[of], age: point[`${of}Age`] }]
        : [],
    );
  const [dry, wet] = [against('dry'), against('wet')];
  return dry.length >= wet.length ? { by: 'dry', found: dry } : { by: 'wet', found: wet };
}

/** Strengths against density, crushing and bending separately, without probable slips. */
export function StrengthPointsChart({
  points,
  invented,
  say,
}: {
  readonly points: readonly StrengthPoint[];
  readonly invented: boolean;
  readonly say: Say;
}) {
  return (
    <>
      {(['crush', 'bend'] as const).map((of) => {
        const { by, found } = drawn(points, of);
        if (found.length < FEWEST) return null;
        const units = of === 'crush' ? MPA : KPA;
        const name = of === 'crush' ? 'crushing strength' : 'bending strength';
        const x = (si: number) => toUnit(si, 'density', KINDS.density.shown[say.system]);
        const y = (si: number) => toUnit(si, 'stress', units[say.system]);
        const densities = found.map(({ density }) => x(density));
        const [least, most] = [Math.min(...densities), Math.max(...densities)];
        const largest = Math.max(...found.map(({ strength }) => y(strength)));
        const ages = new Set(found.map(({ age }) => age));
        const [age] = ages;
        const when =
          ages.size === 1 && age !== undefined
            ? `All at ${say(age, 'time', { units: DAYS, significant: 2 })}.`
            : 'Not all of one age: see the table.';
        const range = (of: keyof Pick<Drawn, 'density' | 'strength'>) => {
          const all = found.map((point) => point[of]);
          return [Math.min(...all), Math.max(...all)] as const;
        };
        const [d, s] = [range('density'), range('strength')];
        const density = (si: number) => say(si, 'density');
        const strength = (si: number) => say(si, 'stress', { units, significant: 2 });
        return (
          <Plot
            key={of}
            words={`${found.length} ${invented ? 'invented ' : ''}batches: ${by} density ${density(d[0])} to ${density(d[1])}, ${name} ${strength(s[0])} to ${strength(s[1])}. The table below has each.`}
            caption={`${invented ? 'Invented' : 'Your'} ${name} against ${by} density. ${when}${most < CLOSE * least ? ' So close together they tell how strong the mix is, not how its strength changes with density.' : ''}`}
            x={[least - ROOM * most, most + ROOM * most]}
            y={[0, largest * (1 + ROOM)]}
            xLabel={`${by} density, ${unitOf('density', KINDS.density.shown[say.system]).symbol}`}
            yLabel={`${name}, ${unitOf('stress', units[say.system]).symbol}`}
          >
            {(axes) =>
              found.map((point) => (
                <Dot axes={axes} at={[x(point.density), y(point.strength)]} label="" />
              ))
            }
          </Plot>
        );
      })}
    </>
  );
}
