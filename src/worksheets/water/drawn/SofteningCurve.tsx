import { ifAllowed } from '../../../core/domain-error.ts';
import { toUnit } from '../../../core/quantity/convert.ts';
import { KINDS, unitOf } from '../../../core/quantity/kinds.ts';
import type { CarbonateWater } from '../../../core/water/carbonate/water.ts';
import {
  SETTLED_COLD,
  type SodaForm,
  softenWithSoda,
} from '../../../core/water/soften/washing-soda.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { Curve, Dot, Plot, type Point } from '../../../islands/plots/Plot.tsx';
import { IN_SOLUTION } from '../water-fields.ts';

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
  readonly say: Say;
}

/** Hardness and pH against the dose of washing soda, with what stays in a cold bucket. */
export function SofteningCurve({ water, form, molarMass, soda, perVolume, say }: Props) {
  const calcium = water.calcium ?? 0;
  const excess = Math.max(0, water.carbon - water.alkalinity);
  const end = Math.max(1.5 * soda, 1.25 * (calcium + excess), 1e-4);
  const made = Array.from({ length: STEPS + 1 }, (_, i) => (end * i) / STEPS).flatMap((dose) => {
    const it = ifAllowed(() => softenWithSoda({ water, soda: dose }));
    return it ? [{ dose, ...it }] : [];
  });
  const here = ifAllowed(() => softenWithSoda({ water, soda }));
  if (!here || made.length < 2) return null;
  const [doseUnit, unit] = [IN_SOLUTION[say.system], KINDS.hardness.shown[say.system]];
  const doseOf = (moles: number) =>
    toUnit(moles * perVolume * molarMass, 'concentration', doseUnit);
  const of = (molal: number) => toUnit(molal * perVolume, 'hardness', unit);
  const hardness = made.map((it): Point => [doseOf(it.dose), of(it.hardness)]);
  const settled = made.map((it): Point => [doseOf(it.dose), of(it.settled.max)]);
  const acidity = made.map((it): Point => [doseOf(it.dose), it.water.pH]);
  const most = SETTLED_COLD.max / 1000 + (water.magnesium ?? 0);
  const x = [0, doseOf(end)] as const;
  const xLabel = `${form === 'anhydrous' ? 'soda ash' : 'soda crystals'}, ${unitOf('concentration', doseUnit).symbol}`;
  const saidDose = (moles: number) =>
    say(moles * perVolume * molarMass, 'concentration', { units: IN_SOLUTION });
  const said = (molal: number) => say(molal * perVolume, 'hardness', { significant: 2 });
  const dose = saidDose(soda);
  const low = Math.floor(Math.min(...acidity.map(([, pH]) => pH)));
  const high = Math.ceil(Math.max(...acidity.map(([, pH]) => pH)) + 0.2);
  return (
    <>
      <Plot
        words={`Hardness falls from ${said(made[0]!.hardness)} to ${said(here.hardness)} at ${dose}. A cold bucket stops near ${said(most)}.`}
        caption="Hardness against the dose. Whole line: at equilibrium, which without soda is the water less the calcite it cannot keep. Broken line: what settles in a cold bucket."
        x={x}
        y={[0, Math.max(hardness[0]![1], settled[0]![1])]}
        xLabel={xLabel}
        yLabel={`hardness, ${unitOf('hardness', unit).symbol}`}
      >
        {(axes) => (
          <>
            <Curve axes={axes} points={settled} dashed />
            <Curve axes={axes} points={hardness} />
            <Dot axes={axes} at={[doseOf(soda), of(here.hardness)]} label={dose} on="falling" />
          </>
        )}
      </Plot>
      <Plot
        words={`pH goes from ${acidity[0]![1].toFixed(1)} to ${here.water.pH.toFixed(1)} at ${dose}, and to ${acidity.at(-1)![1].toFixed(1)} at ${saidDose(end)}.`}
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
              at={[doseOf(soda), here.water.pH]}
              label={`pH ${here.water.pH.toFixed(1)}`}
            />
          </>
        )}
      </Plot>
    </>
  );
}
