import type { AmountProps } from '~/components/prose/amount.ts';
import {
  ESSENTIAL_REQUIREMENTS,
  PCC2_AMBIENT,
  storedEnergy,
  testDistance,
} from '~/core/air/stored-energy.ts';
import { STANDARD_GRAVITY } from '~/core/quantity/constants.ts';
import { fromUnit } from '~/core/quantity/convert.ts';
import { formatNumber, formatQuantity } from '~/core/quantity/format.ts';
import { demo } from '~/worksheets/demo.ts';
import { demoSlabMix } from '~/worksheets/demo-worked.ts';

interface Vessel {
  /** m³ */
  readonly volume: number;
  /** By its gauge, Pa. */
  readonly pressure: number;
}

const vessel = (litres: number, bar: number): Vessel => ({
  volume: fromUnit(litres, 'volume', 'L'),
  pressure: fromUnit(bar, 'pressure', 'bar'),
});
/** What comes out at once if it bursts full of air, J. */
const energyIn = ({ volume, pressure }: Vessel) =>
  storedEnergy({ vessel: volume, pressure: pressure + PCC2_AMBIENT }).isentropic;

/** `24 L (6.3 gal) at 8 bar (116 psi)` */
function sizeOf({ volume, pressure }: Vessel): string {
  const holds = (unit: string) => formatQuantity(volume, 'volume', unit, { atMost: 1 }).text;
  const gauge = (unit: string) => formatQuantity(pressure, 'pressure', unit, { atMost: 0 }).text;
  return `${holds('L')} (${holds('gal')}) at ${gauge('bar')} (${gauge('psi')})`;
}

/** A vessel, its energy, and from how high a demo slab would fall with as much. */
function burst(which: Vessel): {
  readonly size: string;
  readonly energy: AmountProps;
  readonly fall: AmountProps;
} {
  const energy = energyIn(which);
  const height = energy / (demoSlabMix.mass * STANDARD_GRAVITY);
  return {
    size: sizeOf(which),
    energy: { value: energy, kind: 'energy', significant: 2 },
    fall: { value: height, kind: 'length', metric: 'm', us: 'ft', significant: 2 },
  };
}

const TANK: Vessel = demo.receiver;
export const tank = burst(TANK);
export const pipe = burst(vessel(8, 4));
export const sprayer = burst(vessel(5, 3));

/** Bulk modulus of water, Pa, from memory. */
const WATER_STIFFNESS = 2.2e9;
const ofWater = (TANK.pressure ** 2 * TANK.volume) / (2 * WATER_STIFFNESS);
export const fullOfWater = {
  /** J */
  energy: ofWater,
  timesLess: formatNumber(energyIn(TANK) / ofWater, { significant: 1 }),
};

/** How far the formula keeps people away while the tank is tested with air, m: less than the floor. */
function distanceByFormula(): number {
  const { scaled, floor = 0 } = testDistance({ isentropic: energyIn(TANK) });
  if (scaled >= floor)
    throw new Error('The formula keeps people farther from this tank than the floor does.');
  return scaled;
}
export const keptAway = distanceByFormula();

/** From how much gauge pressure times volume on a vessel has to meet more than good practice, bar·L. */
export const essentialFrom =
  ESSENTIAL_REQUIREMENTS / (fromUnit(1, 'pressure', 'bar') * fromUnit(1, 'volume', 'L'));
