import type { AmountProps } from '~/components/prose/amount.ts';
import { inMillimetres, wholeDegrees } from '~/components/prose/amounts.ts';
import { percent } from '~/components/prose/percent.ts';
import { type AgeLaw, REFERENCE_TEMPERATURE } from '~/core/curing/age-factor.ts';
import { STILL_AIR_TRANSFER } from '~/core/curing/heat/still-air.ts';
import { freshHeatCapacity, SPECIFIC_HEAT } from '~/core/curing/heat/thermal-properties.ts';
import { type AirAround, coolingTime } from '~/core/curing/in-air.ts';
import { mixTemperature, waterTemperatureFor } from '~/core/curing/mix-temperature.ts';
import { EARLIEST_SET, setByTemperature, setRace } from '~/core/curing/set.ts';
import { sabinFactors } from '~/core/curing/set-by-water.ts';
import { HOUR, ICE_POINT, MINUTE } from '~/core/quantity/constants.ts';
import { formatQuantity } from '~/core/quantity/format.ts';
import { demo } from '~/worksheets/demo.ts';
import { demoBatch, demoCube, waterIn } from '~/worksheets/demo-worked.ts';
import { drainageFit } from '../foam/demo-foam.ts';
import { ONE_ENERGY, oneEnergy, VARIABLE } from './ageing.ts';

/** How long the page’s cement takes to set at 20 °C, s. */
const bagSet = { initial: 2.5 * HOUR, final: 3.5 * HOUR };

const sinking = { depth: 0.003, after: 30 * MINUTE };
const { settlingBySet } = setRace({
  initialSet: bagSet.initial,
  foamTime: drainageFit.halfTime.value,
  settling: sinking,
});
if (settlingBySet === undefined) throw new Error('The sinking cannot be carried on to the set.');
/** What a top sinks in half an hour, what it sinks by the set at that pace, and how much of the demo slab’s depth that is. */
export const sunk = {
  inHalfAnHour: inMillimetres(sinking.depth, 1),
  bySet: inMillimetres(settlingBySet),
  share: percent(settlingBySet / demo.slab.thickness),
};

/** The soonest that a cement may begin to set, by its class, min. */
export const earliestSet = {
  class32: EARLIEST_SET['32.5'] / MINUTE,
  class42: EARLIEST_SET['42.5'] / MINUTE,
  class52: EARLIEST_SET['52.5'] / MINUTE,
};

const setAt = (celsius: number, law: AgeLaw) =>
  setByTemperature({
    reference: bagSet,
    referenceTemperature: REFERENCE_TEMPERATURE,
    temperature: celsius + ICE_POINT,
    law,
  });
const inHours = (seconds: number) => formatQuantity(seconds, 'time', 'h', { decimals: 1 }).text;
export const head = [
  'Mix at',
  'Variable energy, used here',
  `One energy, ${oneEnergy}`,
  'Rule of a third',
];
export const initialSet = [5, 10, 15, 20, 25, 30].map((celsius) => {
  const { arrhenius, third } = setAt(celsius, VARIABLE);
  const fixed = setAt(celsius, ONE_ENERGY).arrhenius;
  return [
    wholeDegrees(celsius),
    ...[arrhenius, fixed, third].map(({ initial }) => inHours(initial)),
  ];
});

const wetter = sabinFactors({ from: 0.3, to: 0.36 });
if (!wetter) throw new Error('Sabin’s table says nothing of a w/c from 0.30 to 0.36.');
const times = ([low, high]: readonly [number, number]) => `${low.toFixed(1)} to ${high.toFixed(1)}`;
/** How many times as long as at a w/c of 0.30 it takes at 0.36. */
export const slower = { initial: times(wetter.initial), final: times(wetter.final) };

/** A thin wall of the demo's mix in colder air, both faces bare. */
const wall = { thickness: 0.04, poured: 20 + ICE_POINT, air: 10 + ICE_POINT };
const cooling: AirAround = {
  temperature: wall.air,
  timeConstant: coolingTime({
    thickness: wall.thickness,
    heatCapacity: freshHeatCapacity({ cement: demoCube.cement, water: waterIn(demoCube) }),
    transfer: STILL_AIR_TRANSFER,
  }),
};
const wallSets = (air?: AirAround) =>
  setByTemperature({
    reference: bagSet,
    referenceTemperature: REFERENCE_TEMPERATURE,
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

/** The batch but for its water, as warm as in the worksheet’s example. */
export const otherwise = { cement: 18 + ICE_POINT, solution: 15 + ICE_POINT };
const others = [
  { mass: demoBatch.cement, temperature: otherwise.cement, specificHeat: SPECIFIC_HEAT.cement },
  { mass: demoBatch.foamMass, temperature: otherwise.solution, specificHeat: SPECIFIC_HEAT.water },
];
const water = {
  mass: demoBatch.water,
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
