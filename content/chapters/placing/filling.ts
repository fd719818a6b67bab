import { type Clock, type DayPlan, dayClock } from '~/core/placing/clock.ts';
import { MINUTE } from '~/core/quantity/constants.ts';
import { demoPlan } from '~/worksheets/demo-worked.ts';
import { drainageFit } from '../foam/demo-foam.ts';

const inMinutes = (seconds: number) => seconds / MINUTE;

/** The demo’s batch by one person who makes the foam for each load. */
const alone: DayPlan = {
  loads: demoPlan.loads,
  base: 6 * MINUTE,
  foam: 3 * MINUTE,
  blend: 2 * MINUTE,
  weigh: 4 * MINUTE,
  place: 5 * MINUTE,
  foamMade: 'each',
  hands: 1,
  foamLasts: drainageFit.quarterTime.value,
  mixLasts: 15 * MINUTE,
  joint: 30 * MINUTE,
};
const day = dayClock(alone);
const madeOnce = dayClock({ ...alone, foamMade: 'once' });
const oldestFoam = ({ loads }: Clock) => Math.max(...loads.map(({ foamAge }) => foamAge));

export const minutes = {
  alone: inMinutes(day.total),
  two: inMinutes(dayClock({ ...alone, hands: 2 }).total),
  oldestFoam: inMinutes(oldestFoam(day)),
  oldestMadeOnce: inMinutes(oldestFoam(madeOnce)),
  foamLasts: inMinutes(alone.foamLasts),
};
/** Whether all the foam made before the first load lasts until the last has it. */
export const onceFits = madeOnce.obstacles.every(({ code }) => code !== 'foam-too-old');
