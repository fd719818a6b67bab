import { flexuralFromCompressive } from '../core/finished/flexural.ts';
import { strengthBand } from '../core/finished/strength-band.ts';
import { demoCube } from './demo-worked.ts';

function published() {
  const band = strengthBand(demoCube);
  if (!band.known || band.high === null)
    throw new Error('No published relation bounds the strength of the demo’s mix from above.');
  return { low: band.low, high: band.high, relations: band.relations };
}

/** The least and the most that is published of the strength of the demo's mix at 28 days, Pa, and by how many relations. */
export const demoStrength = published();
/** The same of its bending strength. */
export const demoBending = flexuralFromCompressive(demoStrength);
