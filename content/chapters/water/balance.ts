import { STANDARD_ATMOSPHERE } from '~/core/quantity/constants.ts';
import { equilibrateWithCalcite } from '~/core/water/carbonate/equilibrate.ts';
import { precipitationPotential, saturationPH } from '~/core/water/carbonate/langelier.ts';
import { saturationIndex } from '~/core/water/carbonate/saturation.ts';
import { langelierField } from '~/core/water/langelier-field.ts';
import * as MOLAR_MASS from '~/core/water/molar-masses.ts';
import { AIR_CARBON_DIOXIDE } from '~/core/water/soften/boil.ts';
import { demo } from '~/worksheets/demo.ts';
import { mainsHardness, perVolume, speciated } from './demo-waters.ts';

const { temperature } = demo.water;
const { pH, alkalinity, dissolved } = demo.mains;
const mains = speciated(demo.mains);

/** Share of all its carbon that is bicarbonate. */
export const bicarbonate = mains.molality.bicarbonate / mains.carbon;

export const index = {
  byDebyeHueckel: saturationIndex(mains, 'calcite'),
  byDavies: saturationIndex(speciated(demo.mains, 'davies'), 'calcite'),
};

/** mol of calcite in a kg of water to kg in a m³. */
const calcite = (molality: number) => molality * perVolume * MOLAR_MASS.calciumCarbonate;
/** What would come out beside calcite, closed to the air, kg/m³. */
export const excess = calcite(precipitationPotential(mains));

function justSaturated() {
  const found = saturationPH(mains);
  if (found === undefined) throw new Error('The demo’s mains is saturated at no pH.');
  return { pH: found, index: pH - found };
}
/** The pH at which it would be just balanced, and how far its own is above that. */
export const balanced = justSaturated();
export const byFieldFormula = langelierField({
  pH,
  temperature,
  dissolved,
  calcium: mainsHardness.calcium,
  alkalinity,
});

/** The CO₂ it would rest with: of the air above it, and times what outdoor air has. */
export const carbonDioxide = {
  share: mains.carbonDioxidePressure / STANDARD_ATMOSPHERE,
  timesAir: mains.carbonDioxidePressure / AIR_CARBON_DIOXIDE,
};

const rested = equilibrateWithCalcite(mains, { carbonDioxidePressure: AIR_CARBON_DIOXIDE });
/** Once it has come to rest with the air and its calcite; what it lost, kg/m³. */
export const stood = { pH: rested.pH, loses: calcite(rested.precipitated) };

const cations = 2 * (mains.calcium + mains.magnesium) + mains.sodium + mains.otherCations;
/** How far the charges of its report miss each other, as a share of all of them. */
export const imbalance = Math.abs(mains.chargeImbalance) / (2 * cations);
