import { demand } from '../domain-error.ts';
import { ICE_POINT } from '../quantity/constants.ts';

/**
 * Freezing points of glycerol–water at 0, 10 … 100 % by mass, °C (Lange's Handbook, Table 5.13).
 */
const FREEZING = [0, -1.6, -4.8, -9.5, -15.5, -22.0, -33.6, -37.8, -19.2, -1.6, 17.0] as const;

export interface GlycerolFreezing {
  /** Temperature at which the first solid forms, K. */
  readonly freezing: number;
}

/**
 * Where does a glycerol–water mixture freeze? Straight lines between the rows of a handbook table.
 *
 * Below 10 % the table is on the warm side: the freezing-point depression of an ideal dilute
 * solution (1.86 K per mol/kg, from memory) is 2.2 K at 10 %, where the table has 1.6 K. The table
 * is followed. From 60 to 70 % the eutectic, the coldest point of the curve, lies between two rows
 * (near 67 % and −46 °C, from memory), so the straight line between them is far too warm.
 * Concentrate in the solution is not included.
 *
 * @param glycerol share of the mixture by mass, 0–1
 * @returns freezing point, K. Range: the whole table, 0–100 %.
 * @throws {DomainError} glycerol outside 0–1
 * @source lange-15 Table 5.13 (the minus signs lost in the scan restored from its °F column)
 */
export function glycerolFreezing({ glycerol }: { readonly glycerol: number }): GlycerolFreezing {
  demand('glycerol', glycerol, 'ratio', { min: 0, max: 1 });
  const place = glycerol * 10;
  const below = Math.min(Math.floor(place), 9);
  const low = FREEZING[below]!;
  const high = FREEZING[below + 1]!;
  return { freezing: ICE_POINT + low + (high - low) * (place - below) };
}
