import { inKilopascals, wholeDegrees } from '~/components/prose/amounts.ts';
import { percent } from '~/components/prose/percent.ts';
import { grownBand } from '~/core/curing/strength-growth.ts';
import { withJerk } from '~/core/demould/jerk.ts';
import { CAUTIOUS_SHARE, type StripWindow, stripWindow } from '~/core/demould/strip-window.ts';
import { DAY, HOUR, ICE_POINT } from '~/core/quantity/constants.ts';
import { demoBending } from '~/worksheets/demo-strength.ts';
import { GROWTH } from '~/worksheets/shared/part/cement-growth.ts';
import { paceBetween } from '~/worksheets/shared/time/paces.ts';
import { AHEAD } from '~/worksheets/shared/time/since.ts';
import { FREED, SMOOTH, tensionIn } from './handling.ts';

/** In the demo slab, lifted by its ends off the board that holds it, and with the board drawn off first, Pa. */
const lifted = { held: tensionIn(SMOOTH), freed: tensionIn(FREED) };
export const tension = { held: inKilopascals(lifted.held), freed: inKilopascals(lifted.freed) };

/** When the slab may bear such a tension, Pa, kept at one temperature, °C. */
function windowAt(celsius: number, asked: number): StripWindow {
  const { slow, fast } = paceBetween(celsius + ICE_POINT, celsius + ICE_POINT);
  const age = (elapsed: number) => ({ low: elapsed * slow, high: elapsed * fast });
  return stripWindow({
    stress: { low: asked, high: withJerk(asked) },
    strength: (elapsed) =>
      grownBand({
        known: demoBending,
        least: { age: age(elapsed).low },
        most: { age: age(elapsed).high },
        coefficients: GROWTH.unknown,
      }),
    age,
    within: AHEAD,
  });
}

/** The temperature it is kept at, when to begin to test it, and by when it should pass. */
export const byTemperature = [20, 12, 5].map((celsius) => {
  const { earliest, latest } = windowAt(celsius, lifted.freed);
  if (earliest === undefined || latest === undefined)
    throw new Error(`The window of a freed slab kept at ${celsius} °C was not found.`);
  return [
    wholeDegrees(celsius),
    `${(earliest / HOUR).toFixed(0)} h`,
    `${(latest / DAY).toFixed(1)} d`,
  ];
});

/** How many days ahead the end of the window was looked for, of a slab that its board holds: there was none. */
function daysWithoutEnd(): number {
  if (windowAt(20, lifted.held).latest !== undefined)
    throw new Error('The window of a slab that its board holds has an end.');
  return AHEAD / DAY;
}
export const noEndWithin = daysWithoutEnd();

export const mayUse = percent(CAUTIOUS_SHARE);
