import type { HeatRun } from '../../core/curing/heat/conduction.ts';
import { type HeatInside, readerAt } from '../../core/curing/heat/inside.ts';
import { DAY } from '../../core/curing/units.ts';
import { toUnit } from '../../core/quantity/convert.ts';
import type { Say } from '../../islands/engine/say.ts';
import { Curve, Plot, type Point } from '../../islands/plots/Plot.tsx';
import { scaleLinear } from '../../islands/plots/scale.ts';

const WIDTH = 420;
const LEFT = 50;
const RIGHT = 14;
const TOP = 8;
const HIGH = 150;
const COLUMNS = 84;
const ROWS = 20;
const SHADES = 7;
const POINTS = 126;

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
  const { run, peak, difference, asDry } = found;
  const unit = say.system === 'us' ? 'degF' : 'degC';
  const symbol = say.system === 'us' ? '°F' : '°C';
  const inUnit = (kelvin: number) => toUnit(kelvin, 'temperature', unit);
  const last = run.times.length - 1;
  const rowAt = (share: number) => Math.round(share * last);
  const inner = inside(found, thickness);
  const series = (of: HeatRun, depth: number): Point[] => {
    const at = readerAt(of, depth);
    return Array.from({ length: POINTS + 1 }, (_, i) => {
      const row = rowAt(i / POINTS);
      return [of.times[row]! / DAY, inUnit(at(row))];
    });
  };
  const core = series(run, inner);
  const near = series(run, 0);
  const far = series(run, thickness);
  const dry = asDry ? series(asDry.run, inside(asDry, thickness)) : [];
  const all = [...core, ...near, ...far, ...dry].map(([, y]) => y);
  const words = `Hottest ${say(peak.temperature, 'temperature')} after ${say(peak.time, 'time', { units: { metric: 'h', us: 'h' }, significant: 2 })}; the inside is at most ${say(difference.value, 'temperatureDifference', { significant: 2 })} warmer than the cooler face.`;
  return (
    <>
      <TimeDepth run={run} thickness={thickness} words={words} say={say} />
      <Plot
        words={`${words} Curves of the hottest depth and of both faces over seven days.`}
        caption={`Full: the hottest depth${asDry ? ', and above it the same if the part conducts no more than when dry' : ''}. Dashed: the two faces.`}
        x={[0, run.times[last]! / DAY]}
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
          </>
        )}
      </Plot>
    </>
  );
}

/** The hottest depth, or the middle where that is a face, m. */
function inside({ peak }: HeatInside, thickness: number): number {
  return peak.depth > 0 && peak.depth < thickness ? peak.depth : thickness / 2;
}

function TimeDepth({
  run,
  thickness,
  words,
  say,
}: {
  readonly run: HeatRun;
  readonly thickness: number;
  readonly words: string;
  readonly say: Say;
}) {
  const { temperatures, times } = run;
  const last = times.length - 1;
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const t of temperatures) {
    if (t < low) low = t;
    if (t > high) high = t;
  }
  const span = Math.max(high - low, 0.5);
  const shadeOf = (kelvin: number) =>
    Math.min(SHADES - 1, Math.floor(((kelvin - low) / span) * SHADES));
  const wide = (WIDTH - LEFT - RIGHT) / COLUMNS;
  const tall = HIGH / ROWS;
  const paths = Array.from({ length: SHADES }, () => '');
  for (let r = 0; r < ROWS; r++) {
    const depth = ((r + 0.5) / ROWS) * thickness;
    const at = readerAt(run, depth);
    let start = 0;
    let shade = -1;
    for (let c = 0; c <= COLUMNS; c++) {
      const here = c < COLUMNS ? shadeOf(at(Math.round(((c + 0.5) / COLUMNS) * last))) : -2;
      if (here === shade) continue;
      if (shade >= 0)
        paths[shade] += block(LEFT + start * wide, TOP + r * tall, (c - start) * wide, tall);
      [start, shade] = [c, here];
    }
  }
  const x = scaleLinear([0, times[last]! / DAY], [LEFT, WIDTH - RIGHT]);
  const floor = TOP + HIGH;
  const key = (WIDTH - LEFT - RIGHT) / SHADES;
  return (
    <figure class="fig">
      <svg
        viewBox={`0 0 ${WIDTH} ${floor + 104}`}
        role="img"
        aria-label={`Time and depth, over ${say(thickness, 'length', { units: { metric: 'mm', us: 'in' } })}. ${words}`}
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
          {say(thickness, 'length', { units: { metric: 'mm', us: 'in' } })}
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
                {say(low + (shade / SHADES) * span, 'temperature', { decimals: 0 })}
              </text>
            )}
          </g>
        ))}
        <rect class="edge" x={LEFT} y={floor + 52} width={WIDTH - LEFT - RIGHT} height="16" />
      </svg>
      <figcaption>
        Every depth at every hour, from one face to the other. The stronger the colour, the warmer;
        each shade begins at the temperature below it.
      </figcaption>
    </figure>
  );
}

const opacity = (shade: number) => (0.06 + (0.86 * shade) / (SHADES - 1)).toFixed(2);

const block = (x: number, y: number, width: number, height: number) =>
  `M${x.toFixed(1)} ${y.toFixed(1)}h${width.toFixed(1)}v${height.toFixed(1)}h${(-width).toFixed(1)}z`;
