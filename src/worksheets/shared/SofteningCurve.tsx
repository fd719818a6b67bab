import type { CarbonateWater } from '../../core/water/carbonate/water.ts';
import { MOLAR_MASS } from '../../core/water/molar-masses.ts';
import {
  SETTLED_COLD,
  type SodaForm,
  softenWithSoda,
} from '../../core/water/soften/washing-soda.ts';
import { Curve, Dot, Plot, type Point } from '../../islands/plots/Plot.tsx';
import { ifAllowed } from './lazy.ts';

const STEPS = 24;

interface Props {
  readonly water: CarbonateWater;
  readonly form: SodaForm;
  /** kg of one mole of soda in that form. */
  readonly molarMass: number;
  /** mol per kg of water: the reader's. */
  readonly soda: number;
  /** kg of water in a m³. */
  readonly perVolume: number;
}

/** Hardness and pH against the dose of washing soda, with what stays in a cold bucket. */
export function SofteningCurve({ water, form, molarMass, soda, perVolume }: Props) {
  const calcium = water.calcium ?? 0;
  const excess = Math.max(0, water.carbon - water.alkalinity);
  const end = Math.max(1.5 * soda, 1.25 * (calcium + excess), 1e-4);
  const made = Array.from({ length: STEPS + 1 }, (_, i) => (end * i) / STEPS).flatMap((dose) => {
    const it = ifAllowed(() => softenWithSoda({ water, soda: dose }));
    return it ? [{ dose, ...it }] : [];
  });
  const here = ifAllowed(() => softenWithSoda({ water, soda }));
  if (!here || made.length < 2) return null;
  const grams = (dose: number) => dose * perVolume * molarMass;
  const mg = (molal: number) => molal * perVolume * MOLAR_MASS.calciumCarbonate * 1000;
  const hardness = made.map((it): Point => [grams(it.dose), mg(it.hardness)]);
  const settled = made.map((it): Point => [grams(it.dose), mg(it.settled.max)]);
  const acidity = made.map((it): Point => [grams(it.dose), it.water.pH]);
  const limit = mg(SETTLED_COLD.max / 1000 + (water.magnesium ?? 0));
  const x = [0, grams(end)] as const;
  const xLabel = `${form === 'anhydrous' ? 'soda ash' : 'soda crystals'}, g/L`;
  const dose = grams(soda).toFixed(2);
  const low = Math.floor(Math.min(...acidity.map(([, pH]) => pH)));
  const high = Math.ceil(Math.max(...acidity.map(([, pH]) => pH)) + 0.2);
  return (
    <>
      <Plot
        words={`Hardness falls from ${hardness[0]![1].toFixed(0)} to ${mg(here.hardness).toFixed(0)}\u00a0mg/L as calcium carbonate at ${dose}\u00a0g/L. A cold bucket stops near ${limit.toFixed(0)}.`}
        caption="Hardness against the dose. Whole line: at equilibrium, which without soda is the water less the lime it cannot keep. Broken line: what settles in a cold bucket."
        x={x}
        y={[0, hardness[0]![1]]}
        xLabel={xLabel}
        yLabel="hardness, mg/L CaCO₃"
      >
        {(axes) => (
          <>
            <Curve axes={axes} points={settled} dashed />
            <Curve axes={axes} points={hardness} />
            <Dot
              axes={axes}
              at={[grams(soda), mg(here.hardness)]}
              label={`${dose}\u00a0g/L`}
              on="falling"
            />
            <text class="soft" x={axes.x(grams(end))} y={axes.y(limit) - 8} text-anchor="end">
              cold bucket
            </text>
          </>
        )}
      </Plot>
      <Plot
        words={`pH goes from ${acidity[0]![1].toFixed(1)} to ${here.water.pH.toFixed(1)} at ${dose}\u00a0g/L, and to ${acidity.at(-1)![1].toFixed(1)} at ${grams(end).toFixed(2)}\u00a0g/L.`}
        caption="pH against the same dose, from that rested water on: once the calcium is gone, more soda only makes the water caustic."
        x={x}
        y={[low, high]}
        xLabel={xLabel}
        yLabel="pH"
      >
        {(axes) => (
          <>
            <Curve axes={axes} points={acidity} />
            <Dot
              axes={axes}
              at={[grams(soda), here.water.pH]}
              label={`pH ${here.water.pH.toFixed(1)}`}
            />
          </>
        )}
      </Plot>
    </>
  );
}
