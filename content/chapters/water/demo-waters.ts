import { fromUnit, toUnit } from '~/core/quantity/convert.ts';
import type { ActivityModel } from '~/core/water/carbonate/activity.ts';
import {
  type Report,
  solutesFromReport,
  waterPerVolume,
} from '~/core/water/carbonate/from-report.ts';
import { speciate } from '~/core/water/carbonate/speciate.ts';
import { hardnessFromIons } from '~/core/water/hardness.ts';
import { demo } from '~/worksheets/demo.ts';
import { demoBatchSolution } from '~/worksheets/demo-worked.ts';

const { temperature } = demo.water;
/** Mass of a cubic metre of any of the demo’s waters, kg. */
export const perVolume = waterPerVolume({ temperature });

/** Hardness of the mains, mol/m³: both ions, and each. */
export const mainsHardness = hardnessFromIons(demo.water);

const AS_CARBONATE = 'mg/L CaCO3';
/** A hardness in mg/L as calcium carbonate, in mol/m³. */
export const asCarbonate = (milligrams: number) => fromUnit(milligrams, 'hardness', AS_CARBONATE);
/** The mains to the whole mg/L, as the worksheets that ask for a total have it. */
export const mainsAsTyped = asCarbonate(
  Math.round(toUnit(mainsHardness.total, 'hardness', AS_CARBONATE)),
);

/** The soft water that the foam for all slabs takes, m³, to the digits the pages show. */
export const foamWater = Number(demoBatchSolution.waterVolume.toPrecision(3));

interface Sample extends Omit<Report, 'temperature'> {
  readonly pH: number;
  /** eq/m³. */
  readonly alkalinity: number;
}

/** What is in one of the demo's waters, per kg of it. Without chloride, that balances the charges. */
export const speciated = (
  { pH, alkalinity, ...ions }: Sample,
  activity: ActivityModel = 'extended-debye-hueckel',
) =>
  speciate(
    { ...solutesFromReport({ temperature, ...ions }, perVolume), activity },
    { pH, alkalinity: alkalinity / perVolume },
  );

/** The same of a report that gives hardness, alkalinity and pH alone. */
export const speciatedByHardness = ({ calcium, magnesium, pH, alkalinity }: Sample) =>
  speciated({ calcium, magnesium, pH, alkalinity });
