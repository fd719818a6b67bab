import type { HeatRun } from '../../../core/curing/heat/conduction.ts';
import { type HeatInside, readerAt } from '../../../core/curing/heat/inside.ts';
import { firstAfter } from '../../../core/interpolate.ts';
import { DAY } from '../../../core/quantity/constants.ts';
import { fromUnit, toUnit } from '../../../core/quantity/convert.ts';
import { KINDS, unitOf } from '../../../core/quantity/kinds.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { type Axes, Curve, Plot, type Point } from '../../../islands/plots/Plot.tsx';
import { scaleLinear, WIDTH } from '../../../islands/plots/scale.ts';
import { HOURS } from '../../shared/words/amounts.ts';

const LEFT = 50;
const RIGHT = 14;
const TOP = 8;
const HIGH = 150;
const COLUMNS = 84;
const ROWS = 20;
const SHADES = 7;
const POINTS = 126;
/** How much warmer each shade begins, °C or °F: every second one is named, in round figures. */
const SHADE_STEPS = [0.5, 1, 2.5, 5, 10, 12.5, 15, 20, 25, 30, 40, 50] as const;
/** Room for a name of four letters, set at the size it has on a phone. */
const NAME = { wide: 32, high: 18 } as const;

/** How warm every depth is at every time, and below it the hottest depth and the faces as curves. */
export function HeatPicture({
  found,
  thickness,
  say,
}: {
  readonly found: HeatInside & { readonly asDry?: HeatInside | undefined };
  readonly thickness: number;
  readonly say: Say;
}) {
  const { run, asDry } = found;
  const unit = KINDS.temperature.shown[say.system];
  const { symbol } = unitOf('temperature', unit);
  const inUnit = (kelvin: number) => toUnit(kelvin, 'temperature', unit);
  const duration = run.times[run.times.length - 1]!;
  const rows = Array.from({ length: POINTS + 1 }, (_, i) => rowAt(run, i / POINTS));
  const inner = inside(found, thickness);
  const series = (of: HeatRun, depth: number): Point[] => {
    const at = readerAt(of, depth);
    return rows.map((row) => [of.times[row]! / DAY, inUnit(at(row))]);
  };
  const core = series(run, inner);
  const near = series(run, 0);
  const far = series(run, thickness);
  const dry = asDry ? series(asDry.run, inside(asDry, thickness)) : [];
  const all = [...core, ...near, ...far, ...dry].map(([, y]) => y);
  const told = ({ peak, difference }: HeatInside) =>
    `hottest ${say(peak.temperature, 'temperature')} after ${say(peak.time, 'time', { units: HOURS, significant: 2 })}; the inside is at most ${say(difference.value, 'temperatureDifference', { significant: 2 })} warmer than the cooler face.`;
  const wet = `${asDry ? 'As when wet' : 'Inside'}: ${told(found)}`;
  const words = `${wet}${asDry ? ` As when dry: ${told(asDry)}` : ''}`;
  const most = (points: readonly Point[]) =>
    say(fromUnit(Math.max(...points.map(([, y]) => y)), 'temperature', unit), 'temperature', {
      decimals: 0,
    });
  return (
    <>
      <TimeDepth
        run={run}
        thickness={thickness}
        words={wet}
        asWet={asDry !== undefined}
        say={say}
      />
      <Plot
        words={`${words} Curves of the hottest depth and of both faces over ${Math.round(duration / DAY)} days; the faces come to ${most(near)} and ${most(far)}${asDry ? ', as when wet' : ''}.`}
        caption={`Full: the hottest depth${asDry ? ', conducting as when wet and, the hotter of the two, as when dry' : ''}. Dashed: the two faces${asDry ? ', as when wet' : ''}.`}
        x={[0, duration / DAY]}
        y={[Math.min(...all), Math.max(...all)]}
        xLabel="days since casting"
        yLabel={`temperature, ${symbol}`}
      >
        {(axes) => (
          <>
            <Curve axes={axes} points={near} dashed />
            <Curve axes={axes} points={far} dashed />
            {dry.length > 0 && <Curve axes={axes} points={dry} />}
            <Curve axes={axes} points={core} />
            {dry.length > 0 && <Names axes={axes} wet={core} dry={dry} faces={[near, far]} />}
          </>
        )}
      </Plot>
    </>
  );
}

/** The row of a run by a share of its time: its steps are not all alike. */
function rowAt({ times }: HeatRun, share: number): number {
  // A microsecond before, for a time that is the row's own but for its last digit.
  return firstAfter(times, share * times[times.length - 1]! - 1e-6);
}

/** The hottest depth, or the middle where that is a face, m. */
function inside({ peak }: HeatInside, thickness: number): number {
  return peak.depth > 0 && peak.depth < thickness ? peak.depth : thickness / 2;
}

/** The names of both curves, clear of each other too. */
function Names({
  axes,
  wet,
  dry,
  faces,
}: {
  readonly axes: Axes;
  readonly wet: readonly Point[];
  readonly dry: readonly Point[];
  readonly faces: readonly (readonly Point[])[];
}) {
  const clearOf = [wet, dry, ...faces].map((points) =>
    points.map(([x, y]): Point => [axes.x(x), axes.y(y)]),
  );
  return (['wet', 'dry'] as const).map((name, i) => {
    const place = placeBeside(axes, clearOf[i]!, clearOf, name === 'dry');
    if (!place) return null;
    const [left, foot] = place;
    clearOf.push([place, [left + NAME.wide, foot - NAME.high]]);
    return (
      <text x={left + NAME.wide / 2} y={foot - 4} text-anchor="middle">
        {name}
      </text>
    );
  });
}

/**
 * The place of a curve's name: above its peak, if it is the hottest; else beside the curve where it
 * falls. Undefined if there is no clear place.
 */
function placeBeside(
  axes: Axes,
  own: readonly Point[],
  clearOf: readonly (readonly Point[])[],
  hottest: boolean,
): Point | undefined {
  const [bottom, roof] = axes.y.range();
  const right = axes.x.range()[1];
  const isClear = ([left, foot]: Point) =>
    foot < bottom - 4 &&
    foot - NAME.high > roof - 10 &&
    left + NAME.wide < right &&
    clearOf.every((points) =>
      points.every((to, i) => {
        const from = points[Math.max(0, i - 1)]!;
        return (
          Math.max(from[0], to[0]) < left ||
          Math.min(from[0], to[0]) > left + NAME.wide ||
          Math.max(from[1], to[1]) < foot - NAME.high ||
          Math.min(from[1], to[1]) > foot
        );
      }),
    );
  const peak = own.reduce((best, point, i) => (point[1] < own[best]![1] ? i : best), 0);
  const [peakX, peakY] = own[peak]!;
  const lowest = own.reduce((most, [, y]) => Math.max(most, y), peakY);
  const fall = own.slice(peak);
  const low = fall.findIndex(([, y]) => y > peakY + 0.6 * (lowest - peakY));
  const places: readonly Point[] = [
    ...(hottest ? [[peakX - NAME.wide / 2, peakY - 4] as const] : []),
    ...fall.slice(1, low).map(([x, y]): Point => [x + 4, y - 1]),
  ];
  return places.find(isClear);
}

/** Where the shades begin, and how far apart, in a unit: round figures that hold the whole span. */
function shadesOf(low: number, high: number): { readonly start: number; readonly step: number } {
  for (const step of SHADE_STEPS) {
    const round = step < 2.5 ? 1 : step < 10 ? 5 : 10;
    const start = Math.floor(low / round) * round;
    if (start + SHADES * step > high) return { start, step };
  }
  return { start: Math.floor(low / 10) * 10, step: Math.ceil((high - low) / SHADES / 10 + 1) * 10 };
}

function TimeDepth({
  run,
  thickness,
  words,
  asWet,
  say,
}: {
  readonly run: HeatRun;
  readonly thickness: number;
  readonly words: string;
  readonly asWet: boolean;
  readonly say: Say;
}) {
  const { temperatures, times } = run;
  const duration = times[times.length - 1]!;
  const rows = Array.from({ length: COLUMNS }, (_, c) => rowAt(run, (c + 0.5) / COLUMNS));
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const along of temperatures)
    for (const t of along) {
      if (t < low) low = t;
      if (t > high) high = t;
    }
  const unit = KINDS.temperature.shown[say.system];
  const { start, step } = shadesOf(
    toUnit(low, 'temperature', unit),
    toUnit(high, 'temperature', unit),
  );
  const begins = (shade: number) => fromUnit(start + shade * step, 'temperature', unit);
  const span = begins(SHADES) - begins(0);
  const shadeOf = (kelvin: number) =>
    Math.max(0, Math.min(SHADES - 1, Math.floor(((kelvin - begins(0)) / span) * SHADES + 1e-9)));
  const wide = (WIDTH - LEFT - RIGHT) / COLUMNS;
  const tall = HIGH / ROWS;
  const paths = Array.from({ length: SHADES }, () => '');
  for (let r = 0; r < ROWS; r++) {
    const depth = ((r + 0.5) / ROWS) * thickness;
    const at = readerAt(run, depth);
    let from = 0;
    let shade = -1;
    for (let c = 0; c <= COLUMNS; c++) {
      const here = c < COLUMNS ? shadeOf(at(rows[c]!)) : -2;
      if (here === shade) continue;
      if (shade >= 0)
        paths[shade] += block(LEFT + from * wide, TOP + r * tall, (c - from) * wide, tall);
      [from, shade] = [c, here];
    }
  }
  const x = scaleLinear([0, duration / DAY], [LEFT, WIDTH - RIGHT]);
  const floor = TOP + HIGH;
  const key = (WIDTH - LEFT - RIGHT) / SHADES;
  return (
    <figure class="fig">
      <svg
        viewBox={`0 0 ${WIDTH} ${floor + 104}`}
        role="img"
        aria-label={`Time and depth, over ${say(thickness, 'length')}. ${words}`}
      >
        {paths.map((d, shade) => (
          <path class="heat" fill-opacity={opacity(shade)} d={d} />
        ))}
        <rect class="edge" x={LEFT} y={TOP} width={WIDTH - LEFT - RIGHT} height={HIGH} />
        <text class="soft" x={LEFT - 6} y={TOP + 12} text-anchor="end">
          one
        </text>
        <text class="soft" x={LEFT - 6} y={floor - 2} text-anchor="end">
          other
        </text>
        <text transform={`translate(13 ${TOP + HIGH / 2}) rotate(-90)`} text-anchor="middle">
          {say(thickness, 'length')}
        </text>
        {x.ticks(7).map((tick) => (
          <g transform={`translate(${x(tick)} ${floor})`}>
            <path class="tick" d="M0 0V5" />
            <text class="soft" y="19" text-anchor="middle">
              {tick}
            </text>
          </g>
        ))}
        <text x={(LEFT + WIDTH - RIGHT) / 2} y={floor + 36} text-anchor="middle">
          days since casting
        </text>
        {paths.map((_, shade) => (
          <g transform={`translate(${LEFT + shade * key} ${floor + 52})`}>
            <rect class="heat" fill-opacity={opacity(shade)} width={key} height="16" />
            {shade % 2 === 0 && (
              <text class="soft" y="34" text-anchor={shade === 0 ? 'start' : 'middle'}>
                {say(begins(shade), 'temperature', { decimals: 0 })}
              </text>
            )}
          </g>
        ))}
        <rect class="edge" x={LEFT} y={floor + 52} width={WIDTH - LEFT - RIGHT} height="16" />
      </svg>
      <figcaption>
        Every depth at every hour, from one face to the other
        {asWet ? ', conducting as when wet' : ''}. The stronger the colour, the warmer; each shade
        begins at the temperature below it.
      </figcaption>
    </figure>
  );
}

const opacity = (shade: number) => (0.06 + (0.86 * shade) / (SHADES - 1)).toFixed(2);

const block = (x: number, y: number, width: number, height: number) =>
  `M${x.toFixed(1)} ${y.toFixed(1)}h${width.toFixed(1)}v${height.toFixed(1)}h${(-width).toFixed(1)}z`;
