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
import { demoMix, demoSolution, demoVolume } from '~/worksheets/demo-worked.ts';

const { temperature } = demo.water;
/** kg of water in a cubic metre of any of the demo's waters. */
export const perVolume = waterPerVolume({ temperature });

/** Hardness of the mains, mol/m³: both ions, and each. */
export const mains = hardnessFromIons(demo.water);

const AS_CARBONATE = 'mg/L CaCO3';
/** mg/L as calcium carbonate to mol/m³. */
export const asCarbonate = (milligrams: number) => fromUnit(milligrams, 'hardness', AS_CARBONATE);
/** The mains to the whole mg/L, as the worksheets that ask for a total have it. */
export const mainsAsTyped = asCarbonate(Math.round(toUnit(mains.total, 'hardness', AS_CARBONATE)));

/** The mix of all twelve slabs, and the soft water its foam takes, m³, to the digits the pages show. */
export const demoBatch = demoMix(demoVolume().total);
export const foamWater = Number(demoSolution(demoBatch.foamVolume).waterVolume.toPrecision(3));

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
