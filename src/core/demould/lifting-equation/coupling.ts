import { demand } from '../../domain-error.ts';
import { handsAreLow } from './frequency.ts';
import type { Coupling, Form } from './lift.ts';

/** Table 7: [hands below 75 cm (30 in), at or above]. @source niosh-lifting-1994 Table 7 */
const COUPLING_TABLE: Readonly<Record<Coupling, readonly [number, number]>> = {
  good: [1, 1],
  fair: [0.95, 1],
  poor: [0.9, 0.9],
};

/**
 * CM: how good the grip is. A bare slab with sharp edges and no handles is `poor`. Range: any
 * height from the floor up.
 * @param lift coupling; vertical V of the hands, m
 * @throws {DomainError} for a V below the floor
 * @source niosh-lifting-1994 Table 7
 */
export function couplingMultiplier(
  lift: { readonly coupling: Coupling; readonly vertical: number },
  form: Form,
): number {
  demand('vertical', lift.vertical, 'length', { min: 0 });
  return COUPLING_TABLE[lift.coupling][handsAreLow(lift.vertical, form) ? 0 : 1];
}
