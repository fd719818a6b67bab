import { percent } from '~/components/prose/percent.ts';
import {
  ALKALI_RESISTANT_ZIRCONIA,
  FIBRES,
  type FibreKind,
  fibreMass,
  triedUpTo,
} from '~/core/mix/fibres.ts';
import { demoVolume } from '~/worksheets/demo-worked.ts';

/** The demo's whole batch, m³. */
export const volume = demoVolume().total;

/** 0.3 % of it, kg. */
const dose = (kind: FibreKind) => fibreMass({ kind, share: 0.003, volume }).mass;
export const glass = dose('ar-glass');
export const polypropylene = dose('polypropylene');

function inPercent(share: number | undefined): string {
  if (share === undefined) throw new Error('The page names a dose of which none was read.');
  return percent(share, { atMost: 1 });
}

/** Doses by volume; zirconia by mass of the glass. */
export const shares = {
  polypropyleneTried: inPercent(FIBRES.polypropylene.tried),
  glassTriedInOrdinary: inPercent(FIBRES['ar-glass'].triedInOrdinary),
  /** Of a kind of which no dose in foam was read. */
  notDoubted: inPercent(triedUpTo('pva')),
  leastZirconia: inPercent(ALKALI_RESISTANT_ZIRCONIA),
};
