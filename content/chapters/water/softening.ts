import { SPECIFIC_HEAT } from '~/core/curing/heat/thermal-properties.ts';
import { BOILS } from '~/core/curing/limits.ts';
import { formatQuantity } from '~/core/quantity/format.ts';
import { SOFT_ENOUGH } from '~/core/water/hardness-class.ts';
import { boil, POT_CARBON_DIOXIDE } from '~/core/water/soften/boil.ts';
import { ionExchange } from '~/core/water/soften/ion-exchange.ts';
import { sequester } from '~/core/water/soften/sequester.ts';
import {
  SETTLED_COLD,
  type SodaForm,
  sodaForHardness,
  sodaMass,
  sodaMixUp,
  softenWithSoda,
} from '~/core/water/soften/washing-soda.ts';
import { demo } from '~/worksheets/demo.ts';
import { demoBatch } from '~/worksheets/demo-worked.ts';
import {
  asCarbonate,
  foamWater,
  mainsAsTyped,
  mainsHardness,
  perVolume,
  speciatedByHardness,
} from './demo-waters.ts';

const mains = speciatedByHardness(demo.mains);
/** The foam’s water, kg. */
const softenedMass = perVolume * foamWater;

function madeSoft() {
  const found = sodaForHardness({ water: mains, target: SOFT_ENOUGH / perVolume });
  if (!found.reached) throw new Error('No washing soda makes the demo’s mains soft enough.');
  return found;
}
const made = madeSoft();
const weighed = (form: SodaForm) => sodaMass(made.soda * softenedMass, form);
/** Hardness at equilibrium, mol/m³, and pH where one powder was weighed for the other. */
function mixedUp(meant: SodaForm, used: SodaForm) {
  const { got } = sodaMixUp({ water: mains, soda: made.soda, meant, used });
  return { hardness: got.hardness * perVolume, pH: got.water.pH };
}
/** What softening the foam’s water with soda takes and does: masses in kg; the ash as a share of the batch’s cement too. */
export const soda = {
  crystals: weighed('decahydrate'),
  ash: weighed('anhydrous'),
  ashOfCement: weighed('anhydrous') / demoBatch.cement,
  pH: made.softened.water.pH,
  sludge: made.softened.sludge * softenedMass,
  ashForCrystals: mixedUp('decahydrate', 'anhydrous'),
  crystalsForAsh: mixedUp('anhydrous', 'decahydrate'),
  pHOfTwice: softenWithSoda({ water: mains, soda: 2 * made.soda }).water.pH,
};
/** The least hardness a cold bucket gives, mol/m³. */
export const coldBucket = mainsHardness.magnesium + SETTLED_COLD.max;

/** Hardness that boiling leaves, mol/m³: once it stands with the air, after a hard boil, and by the textbook. */
export const boiled = {
  cooled: boil({ water: mains }).hardness * perVolume,
  hard: boil({ water: mains, carbonDioxidePressure: POT_CARBON_DIOXIDE }).hardness * perVolume,
  textbook: mainsHardness.total - demo.mains.alkalinity / 2,
};
/** What brings the foam’s water to the boil, J. */
export const heat = softenedMass * SPECIFIC_HEAT.water * (BOILS - demo.water.temperature);

/** What a resin holds, eq/m³ of it. */
const HELD = 1000;
export const softener = ionExchange({ capacity: demo.resin * HELD, hardness: mainsAsTyped });
/** With the resin known to ± 0.2 L and the hardness to ± 15 mg/L, as in the worksheet’s example. */
const uncertainty =
  softener.volume * Math.hypot(0.0002 / demo.resin, asCarbonate(15) / mainsAsTyped);
const softenedIn = (unit: string) =>
  formatQuantity(softener.volume, 'volume', unit, { uncertainty }).text;
export const softenedByBed = `${softenedIn('L')} (${softenedIn('gal')})`;

/** Trisodium citrate for so much water to the cement. */
function citrateFor(waterCement: number) {
  const { shareOfCement, timesRetarding } = sequester({
    hardness: mainsHardness.total,
    sequestrant: 'trisodiumCitrateDihydrate',
    waterCement,
  });
  if (timesRetarding === undefined) throw new Error('It is not known how much citrate retards.');
  return { shareOfCement, timesRetarding };
}
const foamToCement = demoBatch.foamMass / demoBatch.cement;
export const citrate = {
  foam: citrateFor(foamToCement),
  all: citrateFor(demo.waterCement + foamToCement),
};
/** The hardness of a water from which on the citrate for all of it retards, mol/m³. */
export const citrateRetardsFrom = mainsHardness.total / citrate.all.timesRetarding;
