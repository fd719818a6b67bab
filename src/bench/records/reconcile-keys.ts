import { MIX_TARE, MIX_VESSEL } from '../mix-bucket.ts';
import type { ReadingName } from './readings.ts';

/**
 * The bench keys where the balance worksheet reads each weighing of a batch; a test compares them
 * with its fields.
 */
export const RECONCILE_KEYS = {
  cement: 'reconcile.cement',
  water: 'reconcile.water',
  sand: 'reconcile.sand',
  foamVolume: 'reconcile.foamVolume',
  foamDensity: 'mix.foamDensity',
  full: 'reconcile.full',
  tare: MIX_TARE,
  vessel: MIX_VESSEL,
  placed: 'reconcile.placed',
  leftOver: 'reconcile.leftOver',
  foamAdded: 'reconcile.foamAdded',
  baseAdded: 'reconcile.baseAdded',
} as const satisfies Partial<Record<ReadingName, string>>;
