import {
  BTU,
  FAHRENHEIT_DEGREE,
  FOOT,
  HOUR,
  INCH,
  POUND_PER_CUBIC_FOOT,
} from '../quantity/constants.ts';

/** What a table says of conductivity at one oven-dry density: kg/m³ and W/(m·K). */
interface ConductivityPoint {
  readonly density: number;
  readonly low: number;
  readonly high: number;
}

export interface ConductivityTable {
  readonly key: string;
  readonly source: string;
  readonly standing: 'from memory';
  readonly points: readonly ConductivityPoint[];
}

/** 1 Btu·in/(h·ft²·°F) with the International Table Btu, W/(m·K). @source nist-sp-811 */
export const BTU_INCH = (BTU * INCH) / (HOUR * FOOT ** 2 * FAHRENHEIT_DEGREE);

const range = (density: number, low: number, high = low): ConductivityPoint => ({
  density,
  low,
  high,
});
const us = (weight: number, k: number): ConductivityPoint =>
  range(weight * POUND_PER_CUBIC_FOOT, k * BTU_INCH);

/** Foamed concrete by dry density. From memory. @source bca-1994 */
export const BCA_CONDUCTIVITY: ConductivityTable = {
  key: 'bca',
  source: 'bca-1994',
  standing: 'from memory',
  points: [
    range(400, 0.1),
    range(600, 0.11),
    range(800, 0.17, 0.23),
    range(1000, 0.23, 0.3),
    range(1200, 0.38, 0.42),
    range(1400, 0.5, 0.55),
    range(1600, 0.62, 0.66),
  ],
};

/**
 * Foam concretes in lb/ft³ and Btu·in/(h·ft²·°F), turned to SI. From memory.
 * @source ashrae-materials
 */
export const ASHRAE_CONDUCTIVITY: ConductivityTable = {
  key: 'ashrae',
  source: 'ashrae-materials',
  standing: 'from memory',
  points: [
    us(20, 0.8),
    us(40, 1.4),
    us(60, 2.1),
    us(70, 2.5),
    us(80, 3),
    us(100, 4.1),
    us(120, 5.4),
  ],
};
