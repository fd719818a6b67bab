import type { Kept, KeptResults } from '../../../bench/entries.ts';
import { heldElsewhere, isBy } from '../../../islands/engine/keeping.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { Way } from '../../../islands/parts/Way.tsx';
import { proportionPlan } from '../../mix/proportion-plan.ts';
import { freeInSand, holdsFurther } from '../../shared/mix/further.ts';
import type { Worked } from '../worked.ts';

/**
 * The plan held by another worksheet than “What goes into the batch?”, if it differs or has more
 * ingredients. A batch weighed by one must not be corrected by the other: the run uses the holder
 * (`runPlan`), and the bench sheet, which knows only its own mix, gives no amounts.
 */
export function planHeld(
  { reading, outcome }: Worked<unknown>,
  kept: KeptResults,
  say: Say,
): Kept | undefined {
  const holder = kept['mix.planned'];
  if (!holder || !outcome.ok || isBy(holder, proportionPlan)) return undefined;
  // The dry density affects no amount.
  const amounts = Object.entries(kept).filter(([key]) => key.startsWith('mix.'));
  const another =
    'waits' in holder ||
    holdsFurther(kept) ||
    freeInSand(kept) ||
    heldElsewhere(proportionPlan, reading, outcome, Object.fromEntries(amounts), say);
  return another ? holder : undefined;
}

/** The message about it, with what to do. */
export const PlanHeld = ({ by, from }: Kept) => (
  <>
    <Way to={by}>“{from}”</Way> was worked in last, and its batch is another one: weigh out by the
    table there. For amounts here, work in <Way to="proportion">“{proportionPlan.question}”</Way>{' '}
    again.
  </>
);
