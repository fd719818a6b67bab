import { fibreCount, fibreMass } from '~/core/mix/fibres.ts';
import { pigmentMass } from '~/core/mix/pigment.ts';
import { formatNumber } from '~/core/quantity/format.ts';
import { demoSlabMix } from '~/worksheets/demo-worked.ts';
import { FIBRE_SHARE } from '../mix/fibres.ts';
import { PIGMENT_SHARE } from '../mix/pigment.ts';
import { inMilligrams, limitOf } from './limits-in-air.ts';
import { weighedOut } from './weighed-out.ts';

const { volume } = demoSlabMix;
const strandsPerVolume = fibreCount({ share: FIBRE_SHARE, length: 0.012, diameter: 0.0003 });

/** What one demo slab takes. */
export const inSlab = {
  glass: weighedOut(fibreMass({ kind: 'ar-glass', share: FIBRE_SHARE, volume }).mass),
  strands: formatNumber(strandsPerVolume.perVolume * volume, { significant: 2 }),
  pigment: weighedOut(pigmentMass({ cementitious: demoSlabMix.cement, share: PIGMENT_SHARE }).mass),
};

export const glass = {
  /** In a cubic centimetre. */
  fibres: limitOf('glass-fibre-rel').value / 1e6,
  all: inMilligrams('glass-total-rel'),
};
export const ironOxide = {
  niosh: inMilligrams('iron-oxide-rel'),
  law: inMilligrams('iron-oxide-pel'),
};
