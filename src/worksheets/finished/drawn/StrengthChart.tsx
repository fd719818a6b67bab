import { STRENGTH_RELATIONS } from '../../../core/finished/strength-band.ts';
import { WONG_2026 } from '../../../core/finished/strength-relations/measured.ts';
import { POUND_PER_CUBIC_FOOT, PSI } from '../../../core/quantity/constants.ts';
import { toUnit } from '../../../core/quantity/convert.ts';
import { KINDS, unitOf } from '../../../core/quantity/kinds.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { scaleLinear } from '../../../islands/plots/scale.ts';
import { spanWords } from '../../shared/words/span-words.ts';

interface Own {
  readonly density: number;
  readonly low: number;
  readonly high: number;
}

interface Props {
  readonly wet: number;
  readonly dry: number;
  readonly low: number;
  readonly high: number | null;
  /** The reader's own tests: a point where both ends are one. */
  readonly own: readonly Own[];
  readonly say: Say;
}

const [LEFT, RIGHT, TOP, BOTTOM] = [50, 408, 28, 308] as const;
/** kg/m³ and Pa: the sources lie within. */
const DENSITIES = [250, 1950] as const;
const STRENGTHS = [0.05e6, 50e6] as const;
const STEPS = 120;

const x = scaleLinear(DENSITIES, [LEFT, RIGHT]);
const logs = scaleLinear([Math.log10(STRENGTHS[0]), Math.log10(STRENGTHS[1])], [BOTTOM, TOP]);
const y = (strength: number) => logs(Math.log10(strength));
const at = (d: number, f: number) => `${x(d).toFixed(1)} ${y(f).toFixed(1)}`;

/** Each relation over its own range: an area where both ends are given, a step line for minima. */
const drawn = STRENGTH_RELATIONS.map((relation) => {
  const { min, max } = relation.range;
  const points = Array.from({ length: STEPS + 1 }, (_, i) => {
    const density = min + ((max - min) * i) / STEPS;
    return { density, ...relation.at(density) };
  });
  // A class holds to its edge: the line runs level, then rises upright.
  const floor = points
    .map((p, i) => {
      const before = points[i - 1];
      const steps = before && p.high === null && before.low !== p.low;
      return steps ? `${at(p.density, before.low)}L${at(p.density, p.low)}` : at(p.density, p.low);
    })
    .join('L');
  const ceiling = points
    .toReversed()
    .map((p) => (p.high === null ? '' : at(p.density, p.high)))
    .join('L');
  const area = points.every((p) => p.high !== null);
  return { key: relation.key, area, path: area ? `M${floor}L${ceiling}Z` : `M${floor}` };
});

/** The names of the step lines: density and strength of the place, and the text anchor. */
const STEP_NAMES = [
  ['California', 1460, 1.82e6, 'start'],
  ['ACI 229', 1922, 4.1e6, 'end'],
  ['C869', 566, 1.9e6, 'start'],
  ['IS 2185', 1790, 28e6, 'end'],
] as const;

/** Published strengths against density, with measured points and the reader's own. */
export function StrengthChart({ wet, dry, low, high, own, say }: Props) {
  const inside = (d: number, f: number) =>
    d >= DENSITIES[0] && d <= DENSITIES[1] && f >= STRENGTHS[0] && f <= STRENGTHS[1];
  const clampX = (d: number) => x(Math.min(DENSITIES[1], Math.max(DENSITIES[0], d)));
  const [from, to] = [clampX(dry), clampX(wet)];
  /** No room for the words behind it. */
  const late = from > 0.7 * RIGHT;
  const mpa = unitOf('stress', KINDS.stress.shown[say.system]).symbol;
  const ticks = say.system === 'us' ? [10 * PSI, 100 * PSI, 1000 * PSI] : [0.1e6, 1e6, 10e6];
  const words = (f: number) => say(f, 'stress', { significant: 2 });
  const heavy = (d: number) => say(d, 'density');
  const crosses = `Crosses: ${spanWords(
    WONG_2026.map(({ density }) => density),
    heavy,
  )}, ${spanWords(
    WONG_2026.map(({ strength }) => strength),
    words,
  )}.`;
  const mine = own.filter((o) => inside(o.density, o.low) && inside(o.density, o.high));
  const tests = mine.map(
    (o) =>
      `${heavy(o.density)}, ${o.low === o.high ? words(o.low) : spanWords([o.low, o.high], words)}`,
  );
  return (
    <figure class="fig">
      <svg
        viewBox="0 0 420 356"
        role="img"
        aria-label={`Published compressive strength against density, ${spanWords(STRENGTHS, words)} on a logarithmic scale. At yours, ${heavy(dry)} dry and ${heavy(wet)} wet: ${words(low)}${high ? ` to ${words(high)}` : ' at the least'}. ${crosses}${tests.length > 0 ? ` Your own tests: ${tests.join('; ')}.` : ''}`}
      >
        <rect
          class="class-a"
          x={from}
          width={Math.max(2, to - from)}
          y={TOP}
          height={BOTTOM - TOP}
        />
        {ticks.map((tick) => (
          <g>
            <path class="grid" d={`M${LEFT} ${y(tick)}H${RIGHT}`} />
            <text class="soft" x={LEFT - 6} y={y(tick) + 5} text-anchor="end">
              {label(toUnit(tick, 'stress', KINDS.stress.shown[say.system]))}
            </text>
          </g>
        ))}
        <text
          class="soft on-layer"
          x={late ? Math.min(to, RIGHT) - 3 : from + 3}
          y={late ? BOTTOM - 8 : TOP + 14}
          text-anchor={late ? 'end' : 'start'}
        >
          yours, dry to wet
        </text>
        {drawn.map(({ key, area, path }) => (
          <path key={key} class={area ? 'band' : 'curve dashed'} d={path} />
        ))}
        {STEP_NAMES.map(([name, density, strength, anchor]) => (
          <text class="soft on-layer" x={x(density)} y={y(strength)} text-anchor={anchor}>
            {name}
          </text>
        ))}
        {WONG_2026.map(({ mix, density, strength }) => (
          <path key={mix} class="tick" d={`M${x(density) - 4} ${y(strength) - 4}l8 8m0 -8l-8 8`} />
        ))}
        <path
          class="outline"
          d={`M${(from + to) / 2} ${y(Math.max(low, STRENGTHS[0]))}V${y(Math.min(high ?? low * 1.02, STRENGTHS[1]))}`}
        />
        {mine.map((o) =>
          o.low === o.high ? (
            <circle class="marker measured" cx={x(o.density)} cy={y(o.low)} r="6" />
          ) : (
            <path
              class="arrow"
              d={`M${x(o.density)} ${y(o.low)}V${y(o.high)}m-5 0h10M${x(o.density) - 5} ${y(o.low)}h10`}
            />
          ),
        )}
        <path class="axis" d={`M${LEFT} ${TOP}V${BOTTOM}H${RIGHT}`} />
        {(say.system === 'us' ? US_TICKS : METRIC_TICKS).map(([name, density]) => (
          <g transform={`translate(${x(density)} ${BOTTOM})`}>
            <path class="tick" d="M0 0V5" />
            <text class="soft" y="19" text-anchor="middle">
              {name}
            </text>
          </g>
        ))}
        <text class="axis-name" x={(LEFT + RIGHT) / 2} y="350" text-anchor="middle">
          {`density, ${unitOf('density', KINDS.density.shown[say.system]).symbol}`}
        </text>
        <text class="axis-name" x="2" y="15">
          {`compressive strength, ${mpa}`}
        </text>
      </svg>
      <figcaption>
        Upwards each mark is ten times the one below. Shaded: ranges given by a source. Dashed:
        least strengths, of the classes of California and of ACI 229, of blocks (IS 2185) and of a
        standard batch (ASTM C869). Crosses: 24 measured points of a foamed slag binder, not
        Portland cement, its age and moisture not given. Each source against the density it names,
        wet or dry. Upright line: the band at yours. Dots, or lines with a bar at each end: your own
        tests.
      </figcaption>
    </figure>
  );
}

const METRIC_TICKS = [400, 800, 1200, 1600].map((d) => [String(d), d] as const);
const US_TICKS = [20, 40, 60, 80, 100].map((w) => [String(w), w * POUND_PER_CUBIC_FOOT] as const);
const label = (value: number) => String(Number(value.toPrecision(2)));
