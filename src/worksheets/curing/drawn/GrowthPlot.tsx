import { DAY } from '../../../core/quantity/constants.ts';
import { toUnit } from '../../../core/quantity/convert.ts';
import { unitOf } from '../../../core/quantity/kinds.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { type Axes, Band, Curve, Plot } from '../../../islands/plots/Plot.tsx';
import { DAYS, MPA } from '../../shared/words/amounts.ts';
import { spanWords } from '../../shared/words/span-words.ts';

const POINTS = 60;

interface Props {
  /** Strength at an adjusted age, s: low and high, Pa. */
  readonly at: (age: number) => { readonly low: number; readonly high: number };
  /** The curve through the reader's own results, Pa. */
  readonly curve: ((age: number) => number) | undefined;
  /** Whether the width of the band is a guess. */
  readonly guessed: boolean;
  readonly results: readonly { readonly age: number; readonly strength: number }[];
  /** Undefined where nothing can be said of now. */
  readonly now: number | undefined;
  /** No strength is given of anything younger, s. */
  readonly from: number;
  readonly say: Say;
}

/** Strength against adjusted age, as a band, with the reader's own results on it. */
export function GrowthPlot({ at, curve, guessed, results, now, from, say }: Props) {
  const unit = MPA[say.system];
  const inUnit = (pascal: number) => toUnit(pascal, 'stress', unit);
  const end = Math.max(28 * DAY, (now ?? 0) * 1.1, ...results.map(({ age }) => age * 1.05));
  // Closer together where the curve bends.
  const ages = Array.from(
    { length: POINTS + 1 },
    (_, i) => from + (end - from) * (i / POINTS) ** 2,
  );
  const here = now === undefined ? undefined : { now, ...at(now) };
  const most = Math.max(
    at(end).high,
    ...results.map(({ strength }) => strength),
    curve ? curve(end) : 0,
  );
  const words = (pa: number) => say(pa, 'stress', { significant: 2 });
  const days = (time: number) => say(time, 'time', { units: DAYS, significant: 2 });
  const band = ({ low, high }: ReturnType<typeof at>) => spanWords([low, high], words);
  const tests = results.map(({ age, strength }) => `${days(age)} ${words(strength)}`);
  return (
    <Plot
      words={`${here ? `At an adjusted age of ${days(here.now)}: ${band(here)}; at` : 'At'} 28\u00a0d: ${band(at(28 * DAY))}.${tests.length > 0 ? ` Your results: ${tests.join('; ')}.` : ''}`}
      caption={
        curve
          ? `Compressive strength: your results, the curve through them, and where the next should lie, ${guessed ? 'a guess' : '19 times in 20 above the low end'}.`
          : 'Compressive strength to expect of the kind: the band of its density, grown by age.'
      }
      x={[0, end / DAY]}
      y={[0, inUnit(most) * 1.08]}
      xLabel="adjusted age, days at 20&nbsp;°C (68&nbsp;°F)"
      yLabel={`compressive strength, ${unitOf('stress', unit).symbol}`}
    >
      {(axes) => (
        <>
          <Band
            axes={axes}
            edges={ages.map((age) => {
              const { low, high } = at(age);
              return [age / DAY, inUnit(low), inUnit(high)];
            })}
          />
          {curve && (
            <Curve axes={axes} points={ages.map((age) => [age / DAY, inUnit(curve(age))])} />
          )}
          {results.map(({ age, strength }) => (
            <circle
              class="marker measured"
              cx={axes.x(age / DAY)}
              cy={axes.y(inUnit(strength))}
              r="5"
            />
          ))}
          {here && (
            <Now axes={axes} x={here.now / DAY} ends={[inUnit(here.low), inUnit(here.high)]} />
          )}
        </>
      )}
    </Plot>
  );
}

/** What it is now is the span between two ends: no dot, which would be one number that nobody states. */
function Now({
  axes,
  x,
  ends: [low, high],
}: {
  readonly axes: Axes;
  readonly x: number;
  readonly ends: readonly [low: number, high: number];
}) {
  return (
    <>
      <path class="arrow" d={`M${axes.x(x) - 5} ${axes.y(low)}h10m-5 0V${axes.y(high)}m-5 0h10`} />
      <text class="strong on-layer" x={axes.x(x) + 9} y={axes.y(high) - 4}>
        now
      </text>
    </>
  );
}
