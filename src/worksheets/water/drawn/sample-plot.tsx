import { ICE_POINT } from '../../../core/quantity/constants.ts';
import { formatQuantity } from '../../../core/quantity/format.ts';
import { waterDensity } from '../../../core/water/density.ts';
import { Band, Curve, Dot, Level, Plot, type Point } from '../../../islands/plots/Plot.tsx';

/** kg/m³ either side of the curve, so that the sample shows a band. */
const BAND = 0.6;

/** The parts page's plot: the density of water, with every part a plot may have. */
export function SamplePlot() {
  const points: Point[] = Array.from({ length: 41 }, (_, t) => [t, waterDensity(t + ICE_POINT)]);
  const at20 = waterDensity(20 + ICE_POINT);
  return (
    <Plot
      words={`Density of water falls from ${formatQuantity(points[4]![1], 'density', 'kg/m3', { decimals: 1 }).text} at 4\u00a0°C through ${at20.toFixed(1)} at 20\u00a0°C to ${points[40]![1].toFixed(1)} at 40\u00a0°C.`}
      caption="Density of water, with a band, a level and a point: the parts of a plot."
      x={[0, 40]}
      y={[991, 1001]}
      xLabel="temperature, °C"
      yLabel="density, kg/m³"
    >
      {(axes) => (
        <>
          <Band axes={axes} edges={points.map(([t, d]) => [t, d - BAND, d + BAND])} />
          <Level axes={axes} y={1000} label="the trade’s round number" />
          <Curve axes={axes} points={points} />
          <Dot axes={axes} at={[20, at20]} label={`20\u00a0°C: ${at20.toFixed(1)}`} />
        </>
      )}
    </Plot>
  );
}
