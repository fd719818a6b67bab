import type { AmountProps } from '~/components/prose/amount.ts';
import { percent } from '~/components/prose/percent.ts';
import { EXTREMELY_HARD } from '~/core/water/hardness-class.ts';
import { type Soap, soapLeft, soapLost } from '~/core/water/soap.ts';
import { demo } from '~/worksheets/demo.ts';
import { asCarbonate, mainsHardness } from './demo-waters.ts';

/** What is weighed out and dissolved, kg/m³. */
const dissolved = (value: number, significant = 2): AmountProps => ({
  value,
  kind: 'concentration',
  metric: 'g/L',
  us: 'oz/gal',
  significant,
});
/** What is left of the dose, to a tenth of a per cent below ten. */
const shareLeft = (share: number) => percent(share, { decimals: share < 0.095 ? 1 : 0 });

export const dose = dissolved(demo.soapDose);

/** kg of a soap lost for each kg of hardness as calcium carbonate. */
const perKilogram = (soap: Soap) => soapLost({ hardness: asCarbonate(1000), soap }).stoichiometric;
export const lostPerGram = {
  oleate: perKilogram('sodiumOleate'),
  laurate: perKilogram('sodiumLaurate'),
};

/** What a water, mol/m³, does to the demo's dose of sodium oleate: by chemistry, and by what housekeepers found. */
function inWater(hardness: number, significant = 2) {
  const lost = soapLost({ hardness, soap: 'sodiumOleate' });
  const left = (by: number) => soapLeft({ dose: demo.soapDose, lost: by });
  const [chemistry, household] = [left(lost.stoichiometric), left(lost.empirical)];
  return {
    hardness: { value: hardness, kind: 'hardness', significant } satisfies AmountProps,
    lost: dissolved(lost.stoichiometric),
    chemistry: { share: shareLeft(chemistry.share), needed: dissolved(chemistry.needed, 3) },
    household: { share: shareLeft(household.share), needed: dissolved(household.needed) },
  };
}
export const rain = inWater(demo.water.rain);
export const tap = inWater(mainsHardness.total, 3);
export const extreme = inWater(asCarbonate(EXTREMELY_HARD));
