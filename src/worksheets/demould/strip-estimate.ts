import { ageBetween } from '../../core/curing/age-between.ts';
import { EARLIEST_ADJUSTED_AGE } from '../../core/curing/limits.ts';
import { type Band, grownBand } from '../../core/curing/strength-growth.ts';
import { JERK, withJerk } from '../../core/demould/jerk.ts';
import { strengthAfterBars } from '../../core/demould/strength-after-bars.ts';
import { CAUTIOUS_SHARE, type StripWindow, stripWindow } from '../../core/demould/strip-window.ts';
import { demand } from '../../core/domain-error.ts';
import { ICE_POINT } from '../../core/quantity/constants.ts';
import { justUnder } from '../../core/quantity/dust.ts';
import { number, type Values } from '../../islands/fields.ts';
import { barAge, barLow, barMean, barsCounted, strengthFrom } from '../shared/part/bar-fields.ts';
import { barsBand } from '../shared/part/bars-doubt.ts';
import { cement, GROWTH } from '../shared/part/cement-growth.ts';
import { dryDensity, wetDensity } from '../shared/part/part-densities.ts';
import { flexuralAt28Days } from '../shared/part/part-strength.ts';
import { firstFrost, hasFrozen } from '../shared/time/first-frost.ts';
import { KEPT_EXTREMES } from '../shared/time/kept-extremes.ts';
import { paceBetween } from '../shared/time/paces.ts';
import { AHEAD } from '../shared/time/since.ts';
import { SINCE_CASTING } from '../shared/time/since-casting.ts';
import { DAYS, KPA, PERCENT } from '../shared/words/amounts.ts';

const temperature = (
  label: string,
  example: string,
  more: { readonly bench: string; readonly takes: string; readonly help?: string },
) => number('temperature', { label, example, min: '-40 °C', max: '70 °C', ...more });

/**
 * The times after casting, s, between which a part at these paces reaches adjusted ages of `low` to
 * `high`, s. All four are at least `EARLIEST_ADJUSTED_AGE`, before which no estimate holds.
 */
export function timesOfAges({ low, high }: Band, { slow, fast }: ReturnType<typeof paceBetween>) {
  const floor = (time: number) => Math.max(time, EARLIEST_ADJUSTED_AGE);
  const ages = { low: floor(low), high: floor(high) };
  return { ages, times: { low: floor(ages.low / fast), high: floor(ages.high / slow) } };
}

/** What handling asks of the part, where “Will it bear being moved like this?” found it. */
export const STRESS = 'part.strippingStress';

/** What “When may it come out of the form?” asks for. */
export const stripFields = {
  now: number('time', {
    label: 'Time since casting, now',
    min: '0 h',
    ...SINCE_CASTING,
  }),
  age: number('time', {
    label: 'Adjusted age now, as at 20\u00a0°C (68\u00a0°F)',
    help: 'From “How old is it, for its temperature?”. Empty: the coldest and the warmest alone count.',
    example: '',
    min: '0 h',
    max: '365 d',
    units: DAYS,
    optional: true,
    takes: 'curing.age',
  }),
  cold: temperature('Coldest, so far or ahead', '6 °C', {
    help: 'Nights ahead count too: when it should pass rests on them. Days entered on the pages on curing come here by themselves.',
    bench: 'curing.coldest',
    takes: KEPT_EXTREMES.coldest,
  }),
  warm: temperature('Warmest, so far or ahead', '21 °C', {
    bench: 'curing.warmest',
    takes: KEPT_EXTREMES.warmest,
  }),
  frost: firstFrost,
  stress: number('stress', {
    label: 'What handling asks of it',
    help: 'Its tension with the form’s pull or factor, from “Will it bear being moved like this?”. If the form is drawn off first, that of the part carried.',
    example: '57.1 kPa',
    min: '0.01 kPa',
    max: '20 MPa',
    units: KPA,
    takes: STRESS,
  }),
  strengthFrom,
  mean: barMean,
  low: barLow,
  bars: barsCounted,
  tested: { ...barAge, when: { strengthFrom: ['bars'] } },
  cement,
  density: wetDensity,
  dry: { ...dryDensity, folded: true, when: { strengthFrom: ['density'] } },
  worse: number('ratio', {
    label: 'Handling may be rougher by',
    help: 'A jerk, a corner that sticks. Less than half counts as half. A guess; common practice, no source.',
    example: `${JERK * 100} %`,
    min: '0 %',
    max: '500 %',
    units: PERCENT,
    folded: true,
  }),
  share: number('ratio', {
    label: 'Share of the strength to use',
    help: 'Half is a choice on the cautious side; common practice, no source. Above half it moves only the time to begin testing.',
    example: '50 %',
    min: '1 %',
    max: '100 %',
    units: PERCENT,
    folded: true,
  }),
} as const;

/** The window, the strength behind it at any time, and how fast the part ages. */
export function stripEstimate(v: Values<typeof stripFields>) {
  const { now } = v;
  /** A frost still to come: until then it has not frozen, and no day after it is given. */
  const frost = v.frost !== undefined && v.frost > now ? v.frost : undefined;
  const froze = hasFrozen({ frost: v.frost, since: now });
  /** Bars broken since a frost tell of a part that froze with them; nothing else does. */
  const thawed = froze && v.strengthFrom === 'bars' && v.tested >= v.frost!;
  const frozen = froze && !thawed;
  demand('warm', v.warm, 'temperature', { min: v.cold });
  const dated = v.frost === undefined ? v.cold : ICE_POINT;
  demand('cold', dated, 'temperature', { min: ICE_POINT }, 'may-freeze');
  const [cold, warm] = [Math.max(ICE_POINT, v.cold), Math.max(ICE_POINT, v.warm)];
  const pace = paceBetween(cold, warm);
  /** The age it has now, where that is known and these temperatures can have brought it there. */
  const age =
    v.age === undefined ? undefined : Math.min(Math.max(v.age, now * pace.slow), now * pace.fast);
  const ageing = { ...pace, time: age === undefined ? 0 : now, age: age ?? 0 };
  const ages = (at: number) => ageBetween({ ...ageing, at });
  const coefficients = GROWTH[v.cement];
  const byBars = (): Estimate => {
    demand('now', now, 'time', { min: justUnder(v.tested) }, 'bars-older');
    const bars = { tested: barsBand(v), testedAt: v.tested, ageing, coefficients };
    return (elapsed) => strengthAfterBars({ ...bars, elapsed });
  };
  const byDensity = (): Estimate => {
    const known = flexuralAt28Days({ wetDensity: v.density, dryDensity: v.dry });
    demand('density', known ? 0 : v.density, 'density', { max: 0 }, 'no-published-strength');
    return (elapsed) => {
      const { low, high } = ages(elapsed);
      return grownBand({ known: known!, least: { age: low }, most: { age: high }, coefficients });
    };
  };
  const strength = v.strengthFrom === 'bars' ? byBars() : byDensity();
  // The later end is at least as cautious as “Will it bear being moved like this?”, so that a part
  // stripped then is not refused there.
  const stress = { low: v.stress, high: withJerk(v.stress, Math.max(v.worse, JERK)) };
  const sure = Math.min(v.share, CAUTIOUS_SHARE);
  const found = stripWindow({ stress, strength, age: ages, share: v.share, sure, within: AHEAD });
  const window = frozen ? noWindow(found) : untilFrost(found, frost);
  /** Whether its strength is from one bar only, as far as is known. */
  const oneBar = v.strengthFrom === 'bars' && (v.bars ?? 1) < 2;
  return { window, strength, pace, cold, warm, frost, thawed, frozen, age, stress, sure, oneBar };
}

/** What it bears at a time after casting, Pa. */
type Estimate = (elapsed: number) => Band;

/** The window of a part that has frozen: no time is given. */
const noWindow = ({ needed }: StripWindow): StripWindow => ({ needed, notes: [] });

/** No time by which it should pass lies beyond a frost. */
const untilFrost = ({ latest, ...window }: StripWindow, frost: number | undefined): StripWindow =>
  latest === undefined || latest > (frost ?? latest) ? window : { ...window, latest };
