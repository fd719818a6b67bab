import { dryConductivityBand } from '../../../core/finished/conductivity.ts';
import { WONG_2026 } from '../../../core/finished/strength-relations/measured.ts';
import { valoreConductivity } from '../../../core/finished/valore.ts';
import { toUnit } from '../../../core/quantity/convert.ts';
import { KINDS, unitOf } from '../../../core/quantity/kinds.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { Band, Curve, Plot } from '../../../islands/plots/Plot.tsx';
import { spanWords } from '../../shared/words/span-words.ts';

interface Props {
  /** kg/m³ */
  readonly density: number;
  /** W/(m·K), moist. */
  readonly low: number;
  readonly high: number;
  readonly say: Say;
}

const SHOWN = { min: 320, max: 1600 } as const;
const STEPS = 64;
const across = Array.from(
  { length: STEPS + 1 },
  (_, i) => SHOWN.min + ((SHOWN.max - SHOWN.min) * i) / STEPS,
);
const bands = across.map((d) => ({ d, ...dryConductivityBand({ dryDensity: d }) }));
const relation = across.map(
  (d) => [d, valoreConductivity({ dryDensity: d }).conductivity] as const,
);

/** Conductivity against dry density: the dry band, measured points of another binder, and the reader's. */
export function ConductivityPlot({ density, low, high, say }: Props) {
  const kUnit = KINDS.conductivity.shown[say.system];
  const dUnit = KINDS.density.shown[say.system];
  const k = (si: number) => toUnit(si, 'conductivity', kUnit);
  const d = (si: number) => toUnit(si, 'density', dUnit);
  const top = Math.max(0.7, high);
  const [left, right] = [Math.min(SHOWN.min, density), Math.max(SHOWN.max, density)];
  const heavy = (si: number) => say(si, 'density');
  const conducts = (si: number) => say(si, 'conductivity', { significant: 2 });
  const dry = dryConductivityBand({ dryDensity: density });
  return (
    <Plot
      words={`Conductivity against dry density. At ${heavy(density)}, dry: ${spanWords([dry.low, dry.high], conducts)}; with its moisture: ${spanWords([low, high], conducts)}. Crosses: ${spanWords(
        WONG_2026.map((point) => point.density),
        heavy,
      )}, ${spanWords(
        WONG_2026.map((point) => point.conductivity),
        conducts,
      )}.`}
      caption="Shaded: dry, between the least and the most of a relation (line) and two tables. Crosses: measured points of a foamed slag binder whose moisture is not given; all lie above the dry band. Upright: yours, with its moisture."
      x={[d(left), d(right)]}
      y={[0, k(top)]}
      xLabel={`dry density, ${unitOf('density', dUnit).symbol}`}
      yLabel={`conductivity, ${unitOf('conductivity', kUnit).symbol}`}
    >
      {(axes) => (
        <>
          <Band axes={axes} edges={bands.map((b) => [d(b.d), k(b.low), k(b.high)] as const)} />
          <Curve axes={axes} points={relation.map(([x, y]) => [d(x), k(y)] as const)} />
          {WONG_2026.map(({ mix, density, conductivity }) => (
            <path
              key={mix}
              class="tick"
              d={`M${axes.x(d(density)) - 3.5} ${axes.y(k(conductivity)) - 3.5}l7 7m0 -7l-7 7`}
            />
          ))}
          <path
            class="arrow"
            d={`M${axes.x(d(density))} ${axes.y(k(low))}V${axes.y(k(high))}m-6 0h12M${axes.x(d(density)) - 6} ${axes.y(k(low))}h12`}
          />
        </>
      )}
    </Plot>
  );
}
