import type { AmountProps } from '~/components/prose/amount.ts';
import { percent, toTenth } from '~/components/prose/percent.ts';
import { dryConductivityBand, tabledConductivity } from '~/core/finished/conductivity.ts';
import {
  ASHRAE_CONDUCTIVITY,
  BCA_CONDUCTIVITY,
  type ConductivityTable,
} from '~/core/finished/conductivity-data.ts';
import {
  EQUILIBRIUM_MOISTURE,
  moistConductivity,
  SATURATED_FACTOR,
  SERVICE_MOISTURE_MOST,
} from '~/core/finished/moisture.ts';
import { layerResistance, thicknessForResistance } from '~/core/finished/thermal-resistance.ts';
import { valoreConductivity } from '~/core/finished/valore.ts';
import { demo } from '~/worksheets/demo.ts';
import { demoDryDensity } from '~/worksheets/demo-worked.ts';

const byRelation = (dryDensity: number) => valoreConductivity({ dryDensity }).conductivity;

/** `0.11`, or `0.17 to 0.23`, in W/(m·K). */
function tabled(table: ConductivityTable, dryDensity: number): string {
  const found = tabledConductivity(table, dryDensity);
  if (!found) throw new Error(`The table ${table.key} does not reach ${dryDensity} kg/m³.`);
  return [...new Set([found.low, found.high].map((each) => each.toFixed(2)))].join(' to ');
}

/** What a dry piece conducts by its density: by the relation, the British table and the US one. */
export const byDryDensity = [400, 600, 800, 1000, 1200, 1600].map((dryDensity) => [
  { value: dryDensity, kind: 'density' } as const,
  byRelation(dryDensity).toFixed(2),
  tabled(BCA_CONDUCTIVITY, dryDensity),
  tabled(ASHRAE_CONDUCTIVITY, dryDensity),
]);

/** Of aerated concrete, by mass. */
export const moisture = {
  dryRoom: toTenth(EQUILIBRIUM_MOISTURE.dryRoom),
  dampRoom: toTenth(EQUILIBRIUM_MOISTURE.dampRoom),
  inService: percent(SERVICE_MOISTURE_MOST),
};

const moist = (dry: number, moisture: number) => moistConductivity({ dry, moisture }).conductivity;
/** How many times as much it conducts with such moisture. */
const times = (moisture: number) => moist(1, moisture);
export const timesInDampRoom = times(EQUILIBRIUM_MOISTURE.dampRoom);

/** By the relation, the logarithm of conductivity grows by as much with each kg/m³. */
const perKilogram = Math.log(byRelation(501) / byRelation(500));
/** The dry density that costs as much insulation as conducting so many times as much. */
const asDensity = (factor: number): AmountProps => ({
  value: Math.log(factor) / perKilogram,
  kind: 'density',
  significant: 2,
});
export const costsAsMuchAs = {
  dampRoom: asDensity(timesInDampRoom),
  dryRoom: asDensity(times(EQUILIBRIUM_MOISTURE.dryRoom)),
  soaking: asDensity(SATURATED_FACTOR),
};

const inDampRoom = (dry: number) => moist(dry, EQUILIBRIUM_MOISTURE.dampRoom);
const dry = dryConductivityBand({ dryDensity: demoDryDensity });
const damp = { low: inDampRoom(dry.low), high: inDampRoom(dry.high) };
const conducts = ({ low, high }: { readonly low: number; readonly high: number }): AmountProps => ({
  value: [low, high],
  kind: 'conductivity',
  significant: 2,
});
export const slabConducts = { dry: conducts(dry), damp: conducts(damp) };

const resists = (conductivity: number) =>
  layerResistance({ thickness: demo.slab.thickness, conductivity });
/** What the demo slab resists when it is damp, m²·K/W. */
export const slabResists = [resists(damp.high), resists(damp.low)] as const;

/** A damp layer of 1 m²·K/W. */
const wanted = (conductivity: number) =>
  thicknessForResistance({
    resistance: 1,
    conductivity,
    density: demoDryDensity * (1 + EQUILIBRIUM_MOISTURE.dampRoom),
  });
const [thinner, thicker] = [wanted(damp.low), wanted(damp.high)];
/** To the next centimetre that is enough, m. */
const centimetres = (thickness: number) => Math.ceil(100 * thickness) / 100;
export const thickEnough = [
  centimetres(thinner.thickness),
  centimetres(thicker.thickness),
] as const;
/** What a square metre of the thicker weighs, kg. */
export const heaviest = thicker.massPerArea;
