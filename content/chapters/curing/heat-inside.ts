import type { AmountProps } from '~/components/prose/amount.ts';
import { inMillimetres } from '~/components/prose/amounts.ts';
import { steadyFace, throughLayers } from '~/core/curing/heat/face.ts';
import { adiabaticRise, ORDINARY_CEMENT } from '~/core/curing/heat/hydration.ts';
import { heatInside, type Part } from '~/core/curing/heat/inside.ts';
import { STILL_AIR_TRANSFER } from '~/core/curing/heat/still-air.ts';
import { freshHeatCapacity, mostFreshConductivity } from '~/core/curing/heat/thermal-properties.ts';
import { valoreConductivity } from '~/core/finished/valore.ts';
import type { Proportion } from '~/core/mix/proportion.ts';
import { DAY, ICE_POINT } from '~/core/quantity/constants.ts';
import { demo } from '~/worksheets/demo.ts';
import { demoCube, demoMix, waterIn } from '~/worksheets/demo-worked.ts';

const AIR = 15 + ICE_POINT;
const bare = steadyFace({ temperature: AIR, transfer: STILL_AIR_TRANSFER });
/** 50 mm of foam board. */
const boarded = steadyFace({
  temperature: AIR,
  transfer: throughLayers({
    film: STILL_AIR_TRANSFER,
    layers: [{ thickness: 0.05, conductivity: 0.035 }],
  }),
});

/** What is warmed in a mix: its cement and all of its water, kg. */
const fresh = (of: Proportion) => ({ cement: of.cement, water: waterIn(of) });

export const capacity = freshHeatCapacity(fresh(demoCube));
export const rise = adiabaticRise({
  heat: ORDINARY_CEMENT.heat,
  degree: ORDINARY_CEMENT.ultimate,
  cement: demoCube.cement,
  heatCapacity: capacity,
});
/** What the mix conducts at the most, wet through, and at the least, as when dry. */
export const conducts = {
  most: mostFreshConductivity(fresh(demoCube)),
  least: valoreConductivity({ dryDensity: demoCube.ovenDryDensity }).conductivity,
};

/** How the tables are worked. */
export const TABLED = { duration: 5 * DAY, cells: 40, step: 300 } as const;

type Otherwise = Partial<Part> & { readonly of?: Proportion };

/** What a part comes to, cast at 20 °C into air at 15 °C: as a mix that conducts the most, and as one that does the least. */
function bothWays(thickness: number, { of = demoCube, ...otherwise }: Otherwise = {}) {
  const dry = valoreConductivity({ dryDensity: of.ovenDryDensity });
  const inside = (conducting: Pick<Part, 'conductivity'>) =>
    heatInside({
      thickness,
      mix: fresh(of),
      hydration: ORDINARY_CEMENT,
      initialTemperature: 20 + ICE_POINT,
      near: bare,
      far: bare,
      ...TABLED,
      ...otherwise,
      ...conducting,
    });
  const [wet, asDry] = [inside({}), inside({ conductivity: dry.conductivity })];
  return {
    hottest: [wet.peak.temperature, asDry.peak.temperature] as const,
    difference: [wet.difference.value, asDry.difference.value] as const,
  };
}

const hottest = (thickness: number, otherwise?: Otherwise): AmountProps => ({
  value: bothWays(thickness, otherwise).hottest,
  kind: 'temperature',
  decimals: 0,
});
const difference = (thickness: number, otherwise?: Otherwise): AmountProps => ({
  value: bothWays(thickness, otherwise).difference,
  kind: 'temperatureDifference',
  significant: 2,
});

const THICKNESSES = [0.06, 0.15, 0.3, 0.6];
export const byThickness = THICKNESSES.map((each) => [
  inMillimetres(each),
  hottest(each),
  difference(each),
]);

const DENSITIES = [400, 600, 800, 1200];
export const thicknesses = THICKNESSES.map((each) => inMillimetres(each));
export const byDensity = DENSITIES.map((wetDensity): AmountProps[] => [
  { value: wetDensity, kind: 'density' },
  ...THICKNESSES.map((thickness) =>
    hottest(thickness, { of: demoMix(1, { target: { wetDensity } }) }),
  ),
]);

export const column = hottest(0.3, { round: 1 });
export const ball = hottest(0.3, { round: 2 });

/** The part of 150 mm and the demo slab, between boards, and the slab with one face bare. */
const between = { near: boarded, far: boarded };
export const insulated = {
  difference: difference(0.15, between),
  hottest: hottest(0.15, between),
  slab: hottest(demo.slab.thickness, between),
  slabOneFace: hottest(demo.slab.thickness, { near: boarded }),
};
