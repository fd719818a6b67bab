import type { AmountProps } from '~/components/prose/amount.ts';
import { percent } from '~/components/prose/percent.ts';
import { ACTIVATION_ENERGY_ASTM, type AgeLaw } from '~/core/curing/age-factor.ts';
import { STILL_AIR_TRANSFER } from '~/core/curing/heat/still-air.ts';
import { freshHeatCapacity, SPECIFIC_HEAT } from '~/core/curing/heat/thermal-properties.ts';
import { type AirAround, coolingTime } from '~/core/curing/in-air.ts';
import { mixTemperature, waterTemperatureFor } from '~/core/curing/mix-temperature.ts';
import { EARLIEST_SET, setByTemperature, setRace } from '~/core/curing/set.ts';
import { sabinFactors } from '~/core/curing/set-by-water.ts';
import { HOUR, ICE_POINT, MINUTE } from '~/core/quantity/constants.ts';
import { formatQuantity } from '~/core/quantity/format.ts';
import { demo } from '~/worksheets/demo.ts';
import { demoMix, demoVolume } from '~/worksheets/demo-worked.ts';

/** Of the page's cement, at 20 °C. */
const bagSet = { initial: 2.5 * HOUR, final: 3.5 * HOUR };

const inMillimetres = (value: number, significant: number): AmountProps => ({
  value,
  kind: 'length',
  metric: 'mm',
  us: 'in',
  significant,
});
const sinking = { depth: 0.003, after: 30 * MINUTE };
const { settlingBySet } = setRace({
  initialSet: bagSet.initial,
  foamTime: 22 * MINUTE,
  settling: sinking,
});
if (settlingBySet === undefined) throw new Error('The sinking is not carried on to the set.');
/** What a top sinks in half an hour, by the set at that pace, and what share of the demo slab's depth that is. */
export const sunk = {
  inHalfAnHour: inMillimetres(sinking.depth, 1),
  bySet: inMillimetres(settlingBySet, 2),
  share: percent(settlingBySet / demo.slab.thickness),
};

/** Minutes, by the class of the cement. */
export const earliestSet = {
  class32: EARLIEST_SET['32.5'] / MINUTE,
  class42: EARLIEST_SET['42.5'] / MINUTE,
  class52: EARLIEST_SET['52.5'] / MINUTE,
};

const VARIABLE: AgeLaw = { law: 'fhp' };
const ONE_ENERGY: AgeLaw = { law: 'arrhenius', activationEnergy: ACTIVATION_ENERGY_ASTM };
const setAt = (celsius: number, law: AgeLaw) =>
  setByTemperature({
    reference: bagSet,
    referenceTemperature: 20 + ICE_POINT,
    temperature: celsius + ICE_POINT,
    law,
  });
const inHours = (seconds: number) => formatQuantity(seconds, 'time', 'h', { decimals: 1 }).text;
export const oneEnergy = `One energy, ${(ACTIVATION_ENERGY_ASTM / 1000).toFixed(1)} kJ/mol`;
export const initialSet = [5, 10, 15, 20, 25, 30].map((celsius) => {
  const { arrhenius, third } = setAt(celsius, VARIABLE);
  const fixed = setAt(celsius, ONE_ENERGY).arrhenius;
  const mixAt: AmountProps = { value: celsius + ICE_POINT, kind: 'temperature', decimals: 0 };
  return [mixAt, ...[arrhenius, fixed, third].map(({ initial }) => inHours(initial))];
});

const wetter = sabinFactors({ from: 0.3, to: 0.36 });
if (!wetter) throw new Error('Sabin’s table says nothing of a w/c from 0.30 to 0.36.');
const times = ([low, high]: readonly [number, number]) => `${low.toFixed(1)} to ${high.toFixed(1)}`;
/** How many times as long as at a w/c of 0.30 it takes at 0.36. */
export const slower = { initial: times(wetter.initial), final: times(wetter.final) };

/** A thin wall of the demo's mix in colder air, both faces bare. */
const wall = { thickness: 0.04, poured: 20 + ICE_POINT, air: 10 + ICE_POINT };
const { cement, water: mixing, foamMass } = demoMix(1);
const cooling: AirAround = {
  temperature: wall.air,
  timeConstant: coolingTime({
    thickness: wall.thickness,
    heatCapacity: freshHeatCapacity({ cement, water: mixing + foamMass }),
    transfer: STILL_AIR_TRANSFER,
  }),
};
const wallSets = (air?: AirAround) =>
  setByTemperature({
    reference: bagSet,
    referenceTemperature: 20 + ICE_POINT,
    temperature: wall.poured,
    law: VARIABLE,
    air,
  }).arrhenius.initial;
const timeIn = (value: number, metric: string): AmountProps => ({
  value,
  kind: 'time',
  metric,
  us: metric,
  significant: 2,
});
export const coldWall = {
  ...wall,
  thickness: inMillimetres(wall.thickness, 2),
  halfWay: timeIn(cooling.timeConstant * Math.LN2, 'min'),
  set: timeIn(wallSets(cooling), 'h'),
  kept: timeIn(wallSets(), 'h'),
};

const batch = demoMix(demoVolume().total);
/** The batch but for its water, as warm as in the worksheet’s example. */
export const otherwise = { cement: 18 + ICE_POINT, solution: 15 + ICE_POINT };
const others = [
  { mass: batch.cement, temperature: otherwise.cement, specificHeat: SPECIFIC_HEAT.cement },
  { mass: batch.foamMass, temperature: otherwise.solution, specificHeat: SPECIFIC_HEAT.water },
];
const water = {
  mass: batch.water,
  temperature: demo.water.temperature,
  specificHeat: SPECIFIC_HEAT.water,
};
/** The mix with its water cold, and the water that brings it to 22 °C. K. */
export const coldMix = mixTemperature({ ingredients: [...others, water] }).temperature;
export const warmWater = waterTemperatureFor({
  others,
  water: water.mass,
  wanted: 22 + ICE_POINT,
}).temperature;
