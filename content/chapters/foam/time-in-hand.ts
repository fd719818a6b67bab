import { inBoth } from '~/components/prose/amount.ts';
import { inMinutes } from '~/components/prose/amounts.ts';
import type { Holds } from '~/components/prose/Cell.astro';
import { percent } from '~/components/prose/percent.ts';
import { plannedFoam } from '~/core/foam/planned-foam.ts';
import type { Dose } from '~/core/foam/standing-foam.ts';
import { timeInHand } from '~/core/foam/time-in-hand.ts';
import { MINUTE } from '~/core/quantity/constants.ts';
import { demo } from '~/worksheets/demo.ts';
import { demoLoad } from '~/worksheets/demo-worked.ts';
import { NEAR_ENOUGH } from '~/worksheets/shared/mix/near-enough.ts';
import { demoBlend, drainageFit } from './demo-foam.ts';

/** How far off is near enough, kg/m³. */
const TOLERANCE = NEAR_ENOUGH * demo.wetDensity;

/** A load of the demo whose foam has stood for ten minutes. */
const afterTen = (dose: Dose) =>
  timeInHand({
    ...plannedFoam({ mass: demoLoad.mass, ...demoBlend }),
    ...demoBlend,
    drainage: drainageFit.curve,
    tolerance: TOLERANCE,
    wait: 10 * MINUTE,
    dose,
  });
const whole = afterTen('whole');
export const lost = percent(whole.lost);
/** What that leaves the foam to weigh, kg/m³. */
export const drainedFoam = whole.foam.density;

/** Until when it is still near enough, s; `Infinity` is always. */
function until(latest: number | undefined): Holds {
  if (latest === undefined) throw new Error('The demo’s mix is off even with fresh foam.');
  return Number.isFinite(latest) ? inMinutes(latest) : 'always';
}

const tolerance = inBoth({ value: TOLERANCE, kind: 'density', significant: 2 });
export const head = ['The foam is', 'Wet density', `Still within ${tolerance} until`];
const row = (taken: string, { liquidStays, latest }: typeof whole): readonly Holds[] => [
  taken,
  { value: liquidStays, kind: 'density' },
  until(latest),
];
export const byDose = [
  row('all tipped in, the liquid left behind', whole),
  row('taken by volume from a larger stock', afterTen('volume')),
  row('taken by weight from a larger stock', afterTen('mass')),
];
