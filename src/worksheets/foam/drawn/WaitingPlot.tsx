import type { Dose } from '../../../core/foam/standing-foam.ts';
import type { AfterWaiting } from '../../../core/foam/time-in-hand.ts';
import { MINUTE } from '../../../core/quantity/constants.ts';
import { toUnit } from '../../../core/quantity/convert.ts';
import { KINDS, unitOf } from '../../../core/quantity/kinds.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { type Axes, Band, Curve, Plot, type Point } from '../../../islands/plots/Plot.tsx';
import { LETTER } from '../../../islands/plots/scale.ts';
import { DrainingColumns } from './DrainingColumns.tsx';

const POINTS = 30;
const DOSES = ['whole', 'volume', 'mass'] as const;
const NAMES = { whole: 'all tipped in', volume: 'by volume', mass: 'by weight' } as const;

/** How far along its curve a name may stand, the best place first. */
const ALONG = [0.8, 0.95, 0.6, 0.4, 0.2, 0] as const;
/** From one line of text to the next. */
const LINE = 18;

interface Props {
  /** What a wait brings; undefined when nothing is left to dose. */
  readonly after: (wait: number, dose?: Dose) => AfterWaiting | undefined;
  /** Share of the liquid lost by a time. */
  readonly lost: (time: number) => number;
  readonly dose: Dose;
  readonly target: number;
  readonly tolerance: number;
  readonly wait: number;
  readonly latest: number | undefined;
  readonly foamDensity: number;
  readonly solutionDensity: number;
  readonly say: Say;
}

/** What waiting costs: the wet density against the wait for each way of dosing, and the foam itself. */
export function WaitingPlot({ after, lost, dose, target, tolerance, wait, latest, ...of }: Props) {
  const { say } = of;
  const unit = KINDS.density.shown[say.system];
  const shown = (density: number) => toUnit(density, 'density', unit);
  const end = Math.max(10 * MINUTE, 2 * wait, 1.5 * (latest ?? 0));
  // Foam that has lost nearly all its liquid, dosed by weight, is no bench's case: stop in sight.
  const least = target - 4 * tolerance;
  const curves = DOSES.map((way) => ({
    way,
    points: Array.from({ length: POINTS + 1 }, (_, i) => (end * i) / POINTS)
      .flatMap((time): Point[] => {
        const then = after(time, way);
        return then ? [[time / MINUTE, then.liquidStays]] : [];
      })
      .filter(([, density]) => density >= least && density <= target + 4 * tolerance),
  }));
  const drawn = curves.map(({ way, points }) => ({
    way,
    points: points.map(([at, density]): Point => [at, shown(density)]),
  }));
  const all = [
    target - tolerance,
    target + tolerance,
    ...curves.flatMap(({ points }) => points.map(([, d]) => d)),
  ];
  const room = (Math.max(...all) - Math.min(...all)) * 0.08;
  const minutes = (time: number) => say(time, 'time', { significant: 2 });
  const heavy = (density: number) => say(density, 'density');
  const words = curves.map(({ way, points }) => {
    const last = points.at(-1);
    if (!last) return `${NAMES[way]} out of the picture`;
    const leaves = points.length <= POINTS ? ', where it leaves the picture' : '';
    return `${NAMES[way]} ${heavy(last[1])} after ${minutes(last[0] * MINUTE)}${leaves}`;
  });
  const columns = [0, wait, ...(latest === undefined ? [] : [latest]), end]
    .sort((a, b) => a - b)
    .filter((time, i, times) => i === 0 || time > times[i - 1]! + 1);
  return (
    <>
      <Plot
        words={`Wet density against the wait, planned ${heavy(target)}, ${say(tolerance, 'density', { significant: 2 })} more or less allowed. At its end each way of dosing gives: ${words.join('; ')}.`}
        caption="Wet density if the drained liquid is left behind. Solid: the way you dose. Shaded: your tolerance."
        x={[0, end / MINUTE]}
        y={[shown(Math.min(...all) - room), shown(Math.max(...all) + room)]}
        xLabel="minutes from making to blending"
        yLabel={`wet density, ${unitOf('density', unit).symbol}`}
      >
        {(axes) => (
          <>
            <Band
              axes={axes}
              edges={[0, end / MINUTE].map((at) => [
                at,
                shown(target - tolerance),
                shown(target + tolerance),
              ])}
            />
            {drawn.map(({ way, points }) => (
              <Curve axes={axes} points={points} dashed={way !== dose} />
            ))}
            {namesOf(drawn, axes).map(({ way, x, y, ends }) => (
              <text
                class={way === dose ? 'strong on-layer' : 'on-layer'}
                x={x}
                y={y}
                text-anchor={ends ? 'end' : 'start'}
              >
                {NAMES[way]}
              </text>
            ))}
          </>
        )}
      </Plot>
      <DrainingColumns
        id="waiting"
        title="The foam while it waits"
        columns={columns.map((time) => ({
          label: minutes(time),
          share: lost(time),
        }))}
        {...of}
      />
    </>
  );
}

interface Way {
  readonly way: Dose;
  readonly points: readonly Point[];
}

interface Name {
  readonly way: Dose;
  readonly x: number;
  readonly y: number;
  readonly ends: boolean;
}

/**
 * The places of the curves' names: each beside its own curve and clear of the earlier names, and if
 * possible clear of all curves too.
 */
function namesOf(curves: readonly Way[], axes: Axes): readonly Name[] {
  const left = ({ way, x, ends }: Name) => (ends ? x - NAMES[way].length * LETTER : x);
  const right = ({ way, x, ends }: Name) => (ends ? x : x + NAMES[way].length * LETTER);
  const [start, end] = axes.x.range();
  const [foot, top] = axes.y.range();
  const names: Name[] = [];
  for (const { way, points } of curves) {
    const steep = way === 'mass';
    // A curve that falls out of the picture is clear of the others near its end.
    const first = points.length > POINTS ? 0.8 : 0.95;
    // On its outer side all along, before the other: there its neighbour runs.
    const places = (way === 'volume' ? [20, -7] : [-7, 20]).flatMap((down) =>
      [first, ...ALONG].flatMap((along) => {
        const at = points[Math.round((points.length - 1) * along)];
        if (!at) return [];
        const x = axes.x(at[0]);
        // The name of a steep fall stands on its open side, where there is room.
        const ends = x > start + (end - start) * (steep ? 0.7 : 1 / 3);
        return { way, x: x + (steep ? 4 : 0), y: axes.y(at[1]) + down, ends };
      }),
    );
    const clear = (name: Name) =>
      name.y < foot &&
      name.y > top &&
      names.every(
        (other) =>
          Math.abs(other.y - name.y) >= LINE ||
          left(other) > right(name) ||
          right(other) < left(name),
      );
    const free = (name: Name) =>
      clear(name) &&
      curves.every(({ points }) =>
        points.every(([at, density]) => {
          const [x, y] = [axes.x(at), axes.y(density)];
          return x < left(name) || x > right(name) || y < name.y - 12 || y > name.y + 4;
        }),
      );
    const name = places.find(free) ?? places.find(clear) ?? places[0];
    if (name) names.push(name);
  }
  return names;
}
