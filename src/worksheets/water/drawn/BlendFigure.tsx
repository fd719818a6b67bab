import { ifAllowed } from '../../../core/domain-error.ts';
import { formatNumber, formatQuantity } from '../../../core/quantity/format.ts';
import { blendOf } from '../../../core/water/blend.ts';
import { Curve, Dot, Level, Plot, type Point } from '../../../islands/plots/Plot.tsx';
import { IonBars } from './IonBars.tsx';

interface BlendPart {
  readonly name: string;
  /** What it carries of the quantity blended for, in the unit shown. */
  readonly value: number;
  readonly fraction: number;
}

interface Props {
  readonly parts: readonly BlendPart[];
  readonly target: number;
  /** The quantity, where it has a name of its own: `hardness`. */
  readonly name?: string | undefined;
  /** What it is counted in: `mg/L CaCO₃`. */
  readonly unit: string;
  /** pH of a blend with this share of the second water; absent when pH is not asked for. */
  readonly pH:
    | ((share: number) => { readonly solved: number; readonly averaged: number })
    | undefined;
}

const TONES = ['water', 'foam', 'sand', 'cement', 'bar'] as const;

/** Grains to the gallon are few: a tenth of one counts. */
const inWords = (value: number) => formatNumber(value, { atMost: value < 30 ? 1 : 0 });
const inPercent = (share: number) => formatQuantity(share, 'ratio', '%', { decimals: 0 }).text;

const named = (name: string | undefined, unit: string) => (name ? `${name}, ${unit}` : unit);

/** A slider for two waters, a triangle for three, a bar for more. */
export function BlendFigure(props: Props) {
  const { parts } = props;
  if (parts.length === 2) return <TwoWaters {...props} />;
  if (parts.length === 3) return <Triangle {...props} />;
  return (
    <IonBars
      title="What the batch is made of, per cent"
      caption="Per cent of the batch."
      rows={[
        {
          name: 'The batch',
          parts: parts.map(({ name, fraction }, i) => ({
            label: `${name} ${inPercent(fraction)}`,
            amount: 100 * fraction,
            tone: TONES[i] ?? 'bar',
          })),
        },
      ]}
      atLeast={100}
    />
  );
}

function TwoWaters({ parts, target, name, unit, pH }: Props) {
  const [first, second] = parts as [BlendPart, BlendPart];
  const share = 100 * second.fraction;
  const at = (percent: number) =>
    blendOf([
      { amount: 100 - percent, value: first.value },
      { amount: percent, value: second.value },
    ]);
  // Closer together at the end, where a little hard water still decides the pH.
  const steps = [0, 15, 30, 45, 60, 70, 78, 85, 90, 94, 97, 100];
  const found = steps.flatMap((percent) => {
    const both = pH && ifAllowed(() => pH(percent / 100));
    return both ? [{ percent, ...both }] : [];
  });
  const here = pH && ifAllowed(() => pH(second.fraction));
  const all = found.flatMap(({ solved, averaged }) => [solved, averaged]);
  const xLabel = `${second.name} in the blend, %`;
  return (
    <>
      <Plot
        words={`From ${inWords(first.value)} with none of the ${second.name} to ${inWords(second.value)} with nothing else; wanted ${inWords(target)}\u00a0${unit}, at ${inPercent(second.fraction)}.`}
        caption="A straight line: what is conserved blends by volume."
        x={[0, 100]}
        y={[0, Math.max(first.value, second.value, 1)]}
        xLabel={xLabel}
        yLabel={named(name, unit)}
      >
        {(axes) => (
          <>
            <Level
              axes={axes}
              y={target}
              label={`wanted ${inWords(target)}`}
              named={
                Math.abs(first.value - target) > Math.abs(second.value - target) ? 'start' : 'end'
              }
            />
            <Curve axes={axes} points={steps.map((percent): Point => [percent, at(percent)])} />
            <Dot
              axes={axes}
              at={[share, target]}
              label={inPercent(second.fraction)}
              on={second.value > first.value ? 'rising' : 'falling'}
            />
          </>
        )}
      </Plot>
      {here && found.length > 1 && (
        <Plot
          words={`pH from ${found[0]!.solved.toFixed(1)} to ${found.at(-1)!.solved.toFixed(1)}; ${here.solved.toFixed(2)} at ${inPercent(second.fraction)}, where the average of the two would be ${here.averaged.toFixed(2)}.`}
          caption="pH of the blend, solved from what is dissolved. Broken line: the average of the two pH values, which is not what you get."
          x={[0, 100]}
          y={[Math.min(...all) - 0.1, Math.max(...all) + 0.1]}
          xLabel={xLabel}
          yLabel="pH"
        >
          {(axes) => (
            <>
              <Curve
                axes={axes}
                points={found.map(({ percent, averaged }): Point => [percent, averaged])}
                dashed
              />
              <Curve
                axes={axes}
                points={found.map(({ percent, solved }): Point => [percent, solved])}
              />
              <Dot axes={axes} at={[share, here.solved]} label={here.solved.toFixed(2)} />
            </>
          )}
        </Plot>
      )}
    </>
  );
}

const CORNERS = [
  [60, 236],
  [360, 236],
  [210, 30],
] as const;

/** Every blend of three waters is a point in the triangle; those that hit the target lie on a line. */
function Triangle({ parts, target, name, unit }: Omit<Props, 'pH'>) {
  const what = named(name, unit);
  const point = (shares: readonly number[]): Point => [
    shares.reduce((sum, share, i) => sum + share * CORNERS[i]![0], 0),
    shares.reduce((sum, share, i) => sum + share * CORNERS[i]![1], 0),
  ];
  const crossings = [
    [0, 1],
    [1, 2],
    [2, 0],
  ].flatMap(([i, j]) => {
    const [a, b] = [parts[i!]!.value, parts[j!]!.value];
    if (a === b || (target - a) * (target - b) > 0) return [];
    const share = (target - a) / (b - a);
    const shares = [0, 0, 0];
    shares[i!] = 1 - share;
    shares[j!] = share;
    return [point(shares)];
  });
  const here = point(parts.map(({ fraction }) => fraction));
  const [from, to] = [crossings[0], crossings.find(([x, y]) => apart([x, y], crossings[0]!) > 1)];
  const words = parts
    .map(({ name, value, fraction }) => `${name} ${inWords(value)}: ${inPercent(fraction)}`)
    .join(', ');
  return (
    <figure class="fig">
      <svg
        viewBox="0 0 420 275"
        role="img"
        aria-label={`Blend of three waters for ${what} ${inWords(target)}: ${words}.`}
      >
        <path class="class-a" d={`M${CORNERS.map((corner) => corner.join(' ')).join('L')}Z`} />
        <path class="axis" d={`M${CORNERS.map((corner) => corner.join(' ')).join('L')}Z`} />
        {from && to && <path class="level" d={`M${from.join(' ')}L${to.join(' ')}`} />}
        <circle class="marker measured" cx={here[0]} cy={here[1]} r="7" />
        {parts.map(({ name, value }, i) => (
          <text
            class="strong"
            x={[2, 418, CORNERS[2][0]][i]}
            y={CORNERS[i]![1] + (i === 2 ? -10 : 24)}
            text-anchor={['start', 'end', 'middle'][i] as 'middle'}
          >
            {name} {inWords(value)}
          </text>
        ))}
      </svg>
      <figcaption>
        Each corner is one water alone, with its {what}. Every point of the broken line is a blend
        of {inWords(target)}; the dot is the one that uses most of the first water.
      </figcaption>
    </figure>
  );
}

const apart = (a: Point, b: Point) => Math.hypot(a[0] - b[0], a[1] - b[1]);
