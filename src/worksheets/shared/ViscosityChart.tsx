import { glycerolViscosity } from '../../core/foam/glycerol.ts';
import type { Say } from '../../islands/engine/say.ts';
import { Curve, Dot, Plot, type Point } from '../../islands/plots/Plot.tsx';

const CELSIUS = 273.15;
const MOST = 0.4;
const POINTS = 20;
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
  const name = (kelvin: number) => say(kelvin, 'temperature', { significant: 2 });
  return (
    <Plot
      words={`Viscosity rises with glycerol and falls with temperature: water ${at(0, CELSIUS + 20).toFixed(2)} mPa·s at ${name(CELSIUS + 20)}, ${at(MOST, CELSIUS + 20).toFixed(2)} with 40 % glycerol; yours ${yours.toFixed(2)}.`}
      caption="Viscosity of glycerol and water, for five temperatures. A few percent hardly leave the left edge."
      x={[0, MOST * 100]}
      y={[0, at(MOST, CELSIUS)]}
      xLabel="glycerol, % by mass"
      yLabel="viscosity, mPa·s"
    >
      {(axes) => (
        <>
          {LINES.map((celsius) => {
            const points = Array.from({ length: POINTS + 1 }, (_, i): Point => {
              const share = (MOST * i) / POINTS;
              return [share * 100, at(share, CELSIUS + celsius)];
            });
            const [x, y] = points.at(-1)!;
            return (
              <g>
                <Curve axes={axes} points={points} dashed={celsius !== 20} />
                <text class="soft" x={axes.x(x)} y={axes.y(y) - 5} text-anchor="end">
                  {name(CELSIUS + celsius)}
                </text>
              </g>
            );
          })}
          <Dot axes={axes} at={[glycerol * 100, yours]} label={`yours ${yours.toFixed(2)}`} />
        </>
      )}
    </Plot>
  );
}
