import { expect, test } from 'vitest';
import { saturationPressure } from '../../../../src/core/air/saturation.ts';
import { arrheniusFactor } from '../../../../src/core/curing/age-factor.ts';
import { steadyFace } from '../../../../src/core/curing/heat/face.ts';
import { degreeOfHydration, ORDINARY_CEMENT } from '../../../../src/core/curing/heat/hydration.ts';
import { heatInside } from '../../../../src/core/curing/heat/inside.ts';
import {
  freshHeatCapacity,
  MOST_CONDUCTED,
} from '../../../../src/core/curing/heat/thermal-properties.ts';
import { PEAK_LIMIT } from '../../../../src/core/curing/limits.ts';

const CELSIUS = 273.15;
const CELLS = 12;
/** The demo mix, kg/m³, and the gas in it. */
const mix = { cement: 387.3, water: 212.7 };
const gas = 1 - mix.cement / 3150 - mix.water / 1000;

/** W/(m·K) of gas over wet walls: dry air's own, and vapour's L·D·M/(RT)·P/(P − p)·dp/dT. From memory. */
function wetGas(kelvin: number): number {
  const p = saturationPressure({ temperature: kelvin });
  const slope = saturationPressure({ temperature: kelvin + 1 }) - p;
  const diffusivity = 2.26e-5 * (kelvin / CELSIUS) ** 1.81;
  const latent = 2.501e6 - 2370 * (kelvin - CELSIUS);
  const carried = (latent * diffusivity * 0.018015) / (8.314 * kelvin);
  return 0.026 + carried * (101_325 / (101_325 - p)) * slope;
}

/** By the degree, K: it is asked for every cell of every step. */
const table = Array.from({ length: 95 }, (_, i) => wetGas(CELSIUS + i));
const gasAt = (kelvin: number) => {
  const t = Math.max(0, Math.min(93.999, kelvin - CELSIUS));
  const i = Math.floor(t);
  return table[i]! + (t - i) * (table[i + 1]! - table[i]!);
};

/** The hottest a slab gets, K, when each cell conducts side by side by its own temperature: explicit steps. */
function hottest(of: { thickness: number; mixed: number; air: number; film: number }): number {
  const n = CELLS;
  const dx = of.thickness / n;
  const store = freshHeatCapacity(mix) * dx;
  // Short enough to be stable at 4 W/(m·K), as at 94 °C.
  const dt = (store * dx) / 10;
  const temperatures = new Float64Array(n).fill(of.mixed);
  const ages = new Float64Array(n);
  const degrees = new Float64Array(n);
  const halves = new Float64Array(n);
  let most = of.mixed;
  for (let time = 0; time < 1.5 * 86_400; time += dt) {
    for (let i = 0; i < n; i++)
      halves[i] = dx / 2 / ((1 - gas) * MOST_CONDUCTED.paste + gas * gasAt(temperatures[i]!));
    let inward = (of.air - temperatures[0]!) / (1 / of.film + halves[0]!);
    for (let i = 0; i < n; i++) {
      const here = temperatures[i]!;
      const onward =
        i < n - 1
          ? (here - temperatures[i + 1]!) / (halves[i]! + halves[i + 1]!)
          : (here - of.air) / (1 / of.film + halves[i]!);
      ages[i]! += dt * arrheniusFactor({ ...ORDINARY_CEMENT, temperature: here });
      const degree = degreeOfHydration({ ...ORDINARY_CEMENT, age: ages[i]! });
      const heat = ORDINARY_CEMENT.heat * mix.cement * dx * (degree - degrees[i]!);
      degrees[i] = degree;
      temperatures[i] = here + (dt * (inward - onward) + heat) / store;
      inward = onward;
      most = Math.max(most, temperatures[i]!);
    }
  }
  return most;
}

test.each([
  [20, 15],
  [35, 35],
])(
  'below the limit no part is cooler than with its gas at 60 °C: cast at %s °C in air at %s',
  (mixed, air) => {
    const film = 8;
    const face = steadyFace({ temperature: CELSIUS + air, transfer: film });
    let below = 0;
    for (const thickness of [0.12, 0.18, 0.24, 0.3]) {
      const { peak } = heatInside({
        thickness,
        mix,
        hydration: ORDINARY_CEMENT,
        initialTemperature: CELSIUS + mixed,
        near: face,
        far: face,
        duration: 1.5 * 86_400,
        cells: CELLS,
      });
      if (peak.temperature > PEAK_LIMIT) continue;
      below++;
      const own = hottest({ thickness, mixed: CELSIUS + mixed, air: CELSIUS + air, film });
      expect(own).toBeGreaterThan(peak.temperature - 0.1);
    }
    expect(below).toBeGreaterThan(0);
  },
);
