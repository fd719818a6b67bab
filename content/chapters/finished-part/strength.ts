import type { AmountProps } from '~/components/prose/amount.ts';
import { inKilopascals, inMegapascals } from '~/components/prose/amounts.ts';
import {
  CELLULAR_MODULUS,
  flyAshModulus,
  type Modulus,
  pauwModulus,
  sandModulus,
  tadaModulus,
} from '~/core/finished/modulus.ts';
import { HOFF_HIGH, HOFF_LOW, hoff1972 } from '~/core/finished/strength-forms.ts';
import { WONG_2026 } from '~/core/finished/strength-relations/measured.ts';
import { demo } from '~/worksheets/demo.ts';
import { demoBending, demoStrength } from '~/worksheets/demo-strength.ts';

const near780 = WONG_2026.filter(({ density }) => Math.abs(density - 780) < 20).map(
  ({ strength }) => strength,
);
export const measuredNear780 = inMegapascals([Math.min(...near780), Math.max(...near780)]);

/** What is published of the demo’s mix, and how many sources speak of its density. */
export const compressive = inMegapascals([demoStrength.low, demoStrength.high]);
export const flexural = inKilopascals([demoBending.low, demoBending.high], 2);
export const sourceCount = demoStrength.relations.length;

const hoff = (fit: typeof HOFF_LOW | typeof HOFF_HIGH) =>
  hoff1972({ wetDensity: demo.wetDensity, waterCement: 0.55, ...fit });
/** By the two fits of the power law. */
export const byPowerLaw = {
  low: inMegapascals(hoff(HOFF_LOW)),
  high: inMegapascals(hoff(HOFF_HIGH)),
};

const stiffness = { kind: 'stress', metric: 'MPa', us: 'ksi', significant: 2 } as const;
const { low, high } = CELLULAR_MODULUS.modulus;
export const measuredStiffness: AmountProps = { ...stiffness, value: [low, high] };

/** The piece that all formulas of stiffness are asked of: kg/m³ and Pa. */
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
