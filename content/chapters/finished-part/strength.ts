import type { AmountProps } from '~/components/prose/amount.ts';
import { flexuralFromCompressive } from '~/core/finished/flexural.ts';
import {
  CELLULAR_MODULUS,
  flyAshModulus,
  type Modulus,
  pauwModulus,
  sandModulus,
  tadaModulus,
} from '~/core/finished/modulus.ts';
import { strengthBand } from '~/core/finished/strength-band.ts';
import { HOFF_HIGH, HOFF_LOW, hoff1972 } from '~/core/finished/strength-forms.ts';
import { WONG_2026 } from '~/core/finished/strength-relations/measured.ts';
import { demo } from '~/worksheets/demo.ts';
import { demoMix, demoStrength } from '~/worksheets/demo-worked.ts';

/** A range of strengths, Pa. */
const from = (low: number, high: number): AmountProps => ({
  value: [low, high],
  kind: 'stress',
  significant: 2,
});

const near780 = WONG_2026.filter(({ density }) => Math.abs(density - 780) < 20).map(
  ({ strength }) => strength,
);
export const measuredNear780 = from(Math.min(...near780), Math.max(...near780));

/** How many speak of the demo's density. */
export const sources = strengthBand(demoMix(1)).relations.length;
const strength = demoStrength();
export const compressive = from(strength.low, strength.high);
const bending = flexuralFromCompressive(strength);
export const flexural: AmountProps = {
  ...from(bending.low, bending.high),
  metric: 'kPa',
  us: 'psi',
};

const hoff = (fit: typeof HOFF_LOW | typeof HOFF_HIGH) =>
  hoff1972({ wetDensity: demo.wetDensity, waterCement: 0.55, ...fit });
/** By the two fits of the power law, Pa. */
export const byPowerLaw = { low: hoff(HOFF_LOW), high: hoff(HOFF_HIGH) };

const stiffness = { kind: 'stress', metric: 'MPa', us: 'ksi', significant: 2 } as const;
const { low, high } = CELLULAR_MODULUS.modulus;
export const measuredStiffness: AmountProps = { ...stiffness, value: [low, high] };

/** What all relations are asked of: kg/m³ and Pa. */
const PIECE = { density: 500, compressive: 1e6 };
const says = (relation: (piece: typeof PIECE) => Modulus): AmountProps => ({
  ...stiffness,
  value: relation(PIECE).modulus,
});
export const stiffnessBy = {
  sand: says(sandModulus),
  flyAsh: says(flyAshModulus),
  density: says(tadaModulus),
  ordinary: says(pauwModulus),
};
