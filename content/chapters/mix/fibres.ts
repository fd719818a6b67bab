import { percent } from '~/components/prose/percent.ts';
import {
  ALKALI_RESISTANT_ZIRCONIA,
  FIBRES,
  type FibreKind,
  fibreMass,
  triedUpTo,
} from '~/core/mix/fibres.ts';
import { demoBatch } from '~/worksheets/demo-worked.ts';

/** How much the pages on fibres put in, of the volume. */
export const FIBRE_SHARE = 0.003;
/** For all that is made for the demo’s slabs, kg. */
const dose = (kind: FibreKind) =>
  fibreMass({ kind, share: FIBRE_SHARE, volume: demoBatch.volume }).mass;
export const glass = dose('ar-glass');
export const polypropylene = dose('polypropylene');

function doseOf(share: number | undefined): string {
  if (share === undefined) throw new Error('Of one of these kinds no dose was read.');
  return percent(share, { atMost: 1 });
}

/** Doses by volume; zirconia by mass of the glass. */
export const shares = {
  polypropyleneTried: doseOf(FIBRES.polypropylene.tried),
  glassTriedInOrdinary: doseOf(FIBRES['ar-glass'].triedInOrdinary),
  /** Of a kind of which no dose in foam was read. */
  notDoubted: doseOf(triedUpTo('pva')),
  leastZirconia: doseOf(ALKALI_RESISTANT_ZIRCONIA),
};
