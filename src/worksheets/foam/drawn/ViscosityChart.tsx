import { glycerolViscosity } from '../../../core/foam/glycerol.ts';
import { ICE_POINT } from '../../../core/quantity/constants.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { type Axes, Curve, Plot, type Point } from '../../../islands/plots/Plot.tsx';

const MOST = 0.4;
const POINTS = 20;
/** Height of a line of text, and where the reader's own label stands: above the curves. */
const LINE = 18;
const ABOVE = 44;
const LINES = [0, 10, 20, 30, 40] as const;

/** Viscosity of glycerol and water from 0 to 40 % by mass, a curve for each of five temperatures. */
export function ViscosityChart({
  glycerol,
  temperature,
  say,
}: {
  readonly glycerol: number;
  readonly temperature: number;
  readonly say: Say;
}) {
  const at = (share: number, kelvin: number) =>
    glycerolViscosity({ glycerol: share, temperature: kelvin }).viscosity * 1e3;
  const yours = at(glycerol, temperature);
  // The names of the curves stand at their ends, each at least a line above the next.
  const named = (axes: Axes) => {
    let last = Number.POSITIVE_INFINITY;
    return LINES.toReversed().map((celsius) => {
      last = Math.min(axes.y(at(MOST, ICE_POINT + celsius)), last - LINE);
      return [celsius, last] as const;
    });
  };
  const name = (kelvin: number) => say(kelvin, 'temperature', { decimals: 0 });
  return (
    <Plot
      words={`Viscosity rises with glycerol and falls with temperature: water ${at(0, ICE_POINT + 20).toFixed(2)} mPa·s at ${name(ICE_POINT + 20)}, ${at(MOST, ICE_POINT + 20).toFixed(2)} with 40\u00a0% glycerol; yours ${yours.toFixed(2)}.`}
      caption={`Viscosity of glycerol and water, for five temperatures; the whole line is ${name(ICE_POINT + 20)}. A few per cent hardly leave the left edge.`}
      x={[0, MOST * 100 * 1.16]}
      y={[0, at(MOST, ICE_POINT)]}
      xLabel="glycerol, % by mass"
      yLabel="viscosity, mPa·s"
    >
      {(axes) => {
        const x = axes.x(glycerol * 100);
        // Near the right end there is no room beside it.
        const side = glycerol > 0.3 ? -1 : 1;
        return (
          <>
            {/* Where the names stand no grid runs on: beside a number it reads as a minus. */}
            <rect
              class="ground"
              x={axes.x(MOST * 100) + 1}
              width={axes.x(MOST * 100 * 1.16) - axes.x(MOST * 100)}
              y={axes.y.range()[1]! - 1}
              height={axes.y.range()[0]! - axes.y.range()[1]! + 1}
            />
            {LINES.map((celsius) => (
              <Curve
                axes={axes}
                points={Array.from({ length: POINTS + 1 }, (_, i): Point => {
                  const share = (MOST * i) / POINTS;
                  return [share * 100, at(share, ICE_POINT + celsius)];
                })}
                dashed={celsius !== 20}
              />
            ))}
            {named(axes).map(([celsius, y]) => (
              <text class="soft" x={axes.x(MOST * 100) + 8} y={y + 5}>
                {name(ICE_POINT + celsius)}
              </text>
            ))}
            <path class="leader" d={`M${x} ${axes.y(yours)}V${ABOVE + 6}h${8 * side}`} />
            <circle class="marker measured" cx={x} cy={axes.y(yours)} r="6" />
            <text
              class="strong on-layer"
              x={x + 11 * side}
              y={ABOVE + 11}
              text-anchor={side < 0 ? 'end' : 'start'}
            >
              {`yours ${yours.toFixed(2)}`}
            </text>
          </>
        );
      }}
    </Plot>
  );
}
