import type { Kept, KeptResults } from '../../../bench/entries.ts';
import { heldElsewhere, isBy } from '../../../islands/engine/keeping.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { Way } from '../../../islands/parts/Way.tsx';
import { proportionPlan } from '../../mix/proportion-plan.ts';
import { freeInSand, holdsFurther } from '../../shared/mix/further.ts';
import type { Worked } from '../worked.ts';

/**
 * What another worksheet than “What goes into the batch?” has as the plan, where its batch is another one or has
 * more in it. What is weighed by the one must not be corrected by the other: the run weighs out by the holder (`runPlan`),
 * and the bench sheet, which knows this one mix alone, gives no amounts.
 */
export function planHeld(
  { reading, outcome }: Worked<unknown>,
  kept: KeptResults,
  say: Say,
): Kept | undefined {
  const holder = kept['mix.planned'];
  if (!holder || !outcome.ok || isBy(holder, proportionPlan)) return undefined;
  // A dry density bears on nothing that is weighed out.
  const amounts = Object.entries(kept).filter(([key]) => key.startsWith('mix.'));
  const another =
    'waits' in holder ||
    holdsFurther(kept) ||
    freeInSand(kept) ||
    heldElsewhere(proportionPlan, reading, outcome, Object.fromEntries(amounts), say);
  return another ? holder : undefined;
}

/** That it is so, and what to do. */
export const PlanHeld = ({ by, from }: Kept) => (
  <>
    <Way to={by}>“{from}”</Way> was worked in last, and its batch is another one: weigh out by the
    table there. For amounts here, work in <Way to="proportion">“{proportionPlan.question}”</Way>{' '}
    again.
  </>
);
