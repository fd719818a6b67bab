import type { AmountProps } from '~/components/prose/amount.ts';
import { hardnessFromIons, hardnessFromTitration } from '~/core/water/hardness.ts';
import { EXTREMELY_HARD, tradeClass, USGS_CLASS_ENDS } from '~/core/water/hardness-class.ts';
import { soapLost } from '~/core/water/soap.ts';
import { demo } from '~/worksheets/demo.ts';
import { asCarbonate, mainsHardness } from './demo-waters.ts';

/** Sodium oleate bound in a litre of each water, kg. */
const soapBound = (hardness: number) =>
  soapLost({ hardness, soap: 'sodiumOleate' }).stoichiometric / 1000;
export const soapBoundBy = {
  mains: soapBound(mainsHardness.total),
  rain: soapBound(demo.water.rain),
};

/** What a millilitre of EDTA at 0.01 mol/L stands for on a sample of 50 mL, mol/m³. */
export const perMillilitre = hardnessFromTitration({ titrant: 1e-6, titre: 10, sample: 50e-6 });

/** “Calcium 100” in mg/L, as the ion and as calcium carbonate, mol/m³. */
export const calcium100 = {
  asIon: hardnessFromIons({ calcium: 0.1, magnesium: 0 }).total,
  asCarbonate: asCarbonate(100),
};

/** The mains in one unit alone. */
export const mainsIn = (unit: string): AmountProps => ({
  value: mainsHardness.total,
  kind: 'hardness',
  metric: unit,
  us: unit,
});

const [[, soft], [, moderatelyHard], [, hard]] = USGS_CLASS_ENDS;
/** The hardness where each word ends, and where the last begins, mol/m³. */
export const classEnds = {
  soft: asCarbonate(soft),
  moderatelyHard: asCarbonate(moderatelyHard),
  hard: asCarbonate(hard),
  extremelyHard: asCarbonate(EXTREMELY_HARD),
};

const inWords = (hardness: number) => tradeClass(hardness).replaceAll('-', ' ');
export const called = { mains: inWords(mainsHardness.total), rain: inWords(demo.water.rain) };
