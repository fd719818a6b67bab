import { fallsTo } from '../../core/curing/cold-spells.ts';
import { ageAt, timeToReachAge } from '../../core/curing/equivalent-age.ts';
import { STEP } from '../../core/curing/forecast.ts';
import {
  frostGuard,
  ONE_FREEZE_STRENGTH,
  REPEATED_FREEZE_STRENGTH,
  strongAfter,
} from '../../core/curing/frost.ts';
import { COLDEST_AT, extremesOf, temperatureAt } from '../../core/curing/history.ts';
import {
  COLDEST_CURE,
  EARLIEST_ADJUSTED_AGE,
  FREEZES_AT,
  tooColdToCure,
} from '../../core/curing/limits.ts';
import { type Coefficients, leastShare } from '../../core/curing/strength-growth.ts';
import { DAY, HOUR } from '../../core/quantity/constants.ts';
import { number } from '../../islands/fields.ts';
import { worksheet } from '../../islands/worksheet.ts';
import { cement, GROWTH, ownGrowth } from '../shared/part/cement-growth.ts';
import { strongCubes } from '../shared/part/strong-cubes.ts';
import { heatDoubt, oneText } from '../shared/time/heat-doubt.ts';
import { KEPT_EXTREMES } from '../shared/time/kept-extremes.ts';
import { AHEAD } from '../shared/time/since.ts';
import { DAYS, HOURS } from '../shared/words/amounts.ts';
import { saidApart } from '../shared/words/said-apart.ts';
import { lawOf } from './age-laws.ts';
import { temperatureFields } from './curing-fields.ts';
import {
  COLDEST,
  freezesWords,
  historyBlames,
  historyNotes,
  historyOf,
  isMeasured,
  leavesFrost,
  passedFrostWords,
  unreadWords,
  WARMEST,
} from './curing-history.ts';
import { historyRefusals } from './days.ts';
import { FrostChart } from './drawn/FrostChart.tsx';

/** Each that the cement may have, and that of the reader's own results. */
const coefficientsOf = (v: {
  readonly cement: keyof typeof GROWTH;
  readonly growth: number | undefined;
}): Coefficients => [...GROWTH[v.cement], ...(v.growth === undefined ? [] : [v.growth])];

export default worksheet({
  id: 'frost-guard',
  question: 'Will frost catch it before it is strong enough?',
  fields: {
    ...temperatureFields,
    cement,
    strength28: number('stress', {
      label: 'Strength at 28 days, low end',
      help: 'From “How strong is it getting?”, for your own density or bars.',
      example: '0.552 MPa',
      min: '0.001 MPa',
      max: '100 MPa',
      takes: 'curing.strength28',
    }),
    wanted: number('stress', {
      label: 'Strength you wait for',
      example: '0.3 MPa',
      min: '0.001 MPa',
      max: '100 MPa',
    }),
    growth: ownGrowth,
  },
  folded: 'Growth of your own',
  work: (v) => {
    const known = historyOf(v);
    const { history } = known;
    const law = lawOf('fhp');
    const coefficients = coefficientsOf(v);
    const grows = { history, law, strength28: v.strength28, coefficients };
    // One temperature held for as long as is looked ahead is nobody's count of nights.
    const held = v.source === 'steady' || (v.source === 'readings' && v.after === 'mean');
    const counted = held ? known.measured : known.until;
    const guard = frostGuard({ ...grows, until: counted });
    const wanted = strongAfter(v.wanted, grows);
    const { oneFreeze, repeated, cured } = guard;
    /** From here on one freeze does no harm: it resists one, and its cure is over or no longer needed. */
    const within = cured.strength < repeated.strength ? cured : repeated;
    const safe = within.strength > oneFreeze.strength ? within : oneFreeze;
    // After the last low that was entered, the temperature falls towards one that nobody entered. From
    // readings on, a forecast may bring frost.
    const lastLow = Math.max(known.measured + STEP, counted - DAY + COLDEST_AT);
    const [, second] = fallsTo(history, FREEZES_AT, Math.min(lastLow, repeated.time ?? Infinity));
    /** The freeze that does harm: after it, it is not known to grow any more. */
    const frozen = safe.frozenFirst ? guard.firstFreeze : second;
    /** The time until which cold matters, s: the cure is over and, if it ever does, it resists one freeze. */
    const cures = Math.max(
      cured.time ?? Infinity,
      oneFreeze.age === undefined ? 0 : (oneFreeze.time ?? Infinity),
    );
    const coldest = history.temperatures.reduce(
      (least, each, i) => (history.times[i]! > cures ? least : Math.min(least, each)),
      temperatureAt(history, cures),
    );
    const unfrozen = (time: number | undefined) =>
      time === undefined || time > (frozen ?? time) ? undefined : time;
    /** Before this it is too young for any strength. */
    const old = Math.max(
      EARLIEST_ADJUSTED_AGE,
      timeToReachAge({ history, law, age: EARLIEST_ADJUSTED_AGE }) ?? AHEAD,
    );
    const strengthAt = (time: number) =>
      v.strength28 * leastShare({ age: ageAt({ history, law, time }), coefficients });
    return {
      known,
      guard,
      safe,
      cures,
      cold: !isMeasured(known, cures) && tooColdToCure(coldest),
      warmest: extremesOf(history).warmest,
      age: wanted.age,
      frozen,
      old,
      reached: unfrozen(wanted.time),
      oneFreeze: unfrozen(oneFreeze.time),
      repeated: unfrozen(repeated.time),
      strengthAt,
      atFreeze: (guard.firstFreeze ?? 0) < old ? undefined : strengthAt(guard.firstFreeze!),
    };
  },
  results: {
    coldest: { ...COLDEST, of: (r) => r.guard.coldest, answer: true },
    reached: {
      label: 'The strength you wait for is reached after',
      kind: 'time',
      of: (r) => r.reached,
      note: 'your own mark; not one that stands a freeze unless it is 3.5\u00a0MPa (500\u00a0psi) or more',
      units: DAYS,
      significant: 2,
    },
    oneFreeze: {
      label: '3.5\u00a0MPa (500\u00a0psi), for one freeze, after',
      kind: 'time',
      of: (r) => r.oneFreeze,
      units: DAYS,
      significant: 2,
    },
    repeated: {
      label: '24\u00a0MPa (3500\u00a0psi), for freezing again and again while soaked, after',
      kind: 'time',
      of: (r) => r.repeated,
      units: DAYS,
      significant: 2,
    },
    firstFreeze: {
      label: 'First freeze after',
      kind: 'time',
      of: (r) => r.guard.firstFreeze,
      units: HOURS,
      significant: 2,
    },
    atFreeze: {
      label: 'Strength it has by then',
      kind: 'stress',
      of: (r) => r.atFreeze,
      significant: 2,
    },
    warmest: { ...WARMEST, of: (r) => r.warmest },
  },
  doubts: (_, { strength28 }, say) => strongCubes(strength28, say),
  judge: ({ known, guard, safe, cures, cold, frozen, atFreeze, warmest }, v, say) => {
    const hot = heatDoubt(warmest, say);
    if (hot?.verdict === 'stop') return hot;
    const passed = oneText(passedFrostWords(known, v.castAt, say), hot?.say);
    const { oneFreeze, repeated, cured, firstFreeze, frozenFor } = guard;
    const near = atFreeze === undefined ? [] : [atFreeze];
    const mpa = (pa: number, marks: readonly number[] = near, significant = 2) =>
      saidApart(pa, 'stress', marks, say, { significant });
    // 500 psi, as its source rounds it.
    const mark = mpa(ONE_FREEZE_STRENGTH, near, say.system === 'us' ? 1 : 2);
    const often = mpa(REPEATED_FREEZE_STRENGTH);
    const also = passed ? ` ${passed}` : '';
    const unread = unreadWords(known, say, Math.min(cures, safe.time ?? Infinity));
    const doubt = oneText(unread, passed);
    const falls = firstFreeze === undefined ? '' : freezesWords(known, v.castAt, firstFreeze);
    const has =
      atFreeze === undefined
        ? ''
        : `with ${mpa(atFreeze, [ONE_FREEZE_STRENGTH, REPEATED_FREEZE_STRENGTH, cured.strength])}`;
    const stands = `${falls}${frozenFor > STEP ? `, for ${say(frozenFor, 'time', { units: HOURS, significant: 2 })} in all` : ''}, ${has}: ${mark} stands one freeze`;
    if (frozen !== undefined) {
      const why = oneFreeze.frozenFirst
        ? `${falls}, ${has ? `${has}: less than the ${mark} that stands one freeze` : 'too young to have any strength worth counting'}`
        : safe.frozenFirst
          ? `${stands}, but its cure lasts until it has ${mpa(cured.strength)}, by the longest European class`
          : `${stands}. ${freezesWords(known, v.castAt, frozen, ' again')}: more than one, which takes ${often}`;
      return {
        verdict: 'stop',
        say: `${why}. ${isMeasured(known, frozen) ? 'No strength can be worked out from its age any more: see “If it has frozen”, below.' : `Bring it indoors or insulate it before then${known.measured > 0 ? '' : ', or do not cast'}.`}${also}`,
      };
    }
    if (firstFreeze !== undefined && repeated.frozenFirst)
      return {
        verdict: 'look',
        say: `${stands}. Keep it from freezing again${repeated.age === undefined ? '' : ` before it has ${often}`}.${doubt ? ` ${doubt}` : ''}`,
      };
    const stood = falls && `${falls}, ${has}: ${often} stands it again and again.`;
    const enough =
      safe === cured
        ? `${mpa(cured.strength)}, where its cure ends`
        : safe === repeated
          ? often
          : mark;
    const strong =
      !unread &&
      isMeasured(known, safe.time ?? Infinity) &&
      `By your readings it has ${enough}, and stands a freeze.`;
    const never = `mix never reaches the ${mark} that stands even one freeze: keep it from freezing for the whole cure, and dry before any winter.`;
    const ages = `below ${say(COLDEST_CURE, 'temperature', { plain: true })} it hardly ages. Keep it warmer.`;
    const too = cold ? ` And ${ages}` : '';
    if (doubt)
      return {
        verdict: 'look',
        say: `${
          stood
            ? `${stood} ${doubt}`
            : `${doubt} ${oneFreeze.age === undefined ? `This ${never}` : strong || `Keep it from freezing until it has ${enough}.`}`
        }${too}`,
      };
    if (oneFreeze.age === undefined)
      return {
        verdict: cold ? 'look' : 'good',
        say: `No frost is in these temperatures. But this ${never}${too}`,
      };
    if (cold)
      return {
        verdict: 'look',
        say: `${stood ? `${stood} But` : 'No frost is in these temperatures, but'} ${ages}`,
      };
    return {
      verdict: 'good',
      say:
        stood ||
        `No frost catches it by these temperatures. ${strong || `Look at the forecast each day until it has ${enough}.`}`,
    };
  },
  notes: ({ known, guard, reached }, v, say) => [
    ...historyNotes(
      known,
      `The strength you wait for, after ${say(reached ?? 0, 'time', { units: DAYS, significant: 2 })},`,
      reached,
    ),
    ...(guard.repeated.age === undefined
      ? [
          `It never reaches the ${say(REPEATED_FREEZE_STRENGTH, 'stress', { significant: 2 })} asked of concrete that freezes again and again while soaked. Use it where it stays dry.`,
        ]
      : []),
    ...(v.growth === undefined
      ? []
      : [
          `Growth goes by the lowest curve at each age: of those the cement may have, and that of your own results, s = ${v.growth.toFixed(2)}.`,
        ]),
    'Both marks are for ordinary concrete; none was seen for foamed. Its growth is not validated for foamed concrete either.',
    `No strength is worked out before ${EARLIEST_ADJUSTED_AGE / HOUR} hours, at 20\u00a0°C (68\u00a0°F) or warmer.`,
  ],
  refusals: historyRefusals,
  blames: {
    ...historyBlames,
    share: 'wanted',
    strength: 'wanted',
    age: 'wanted',
    coefficient: 'growth',
  },
  keeps: KEPT_EXTREMES,
  leaves: leavesFrost,
  working: [
    {
      tex: String.raw`t_e = \frac{28\,\mathrm d}{\left(1 - \ln(f/f_{28})/s\right)^2}`,
      put: ({ age, frozen, reached }, v, say) => {
        const s = new Set(coefficientsOf(v).map((each) => each.toFixed(2)));
        return age === undefined
          ? `${say(v.wanted, 'stress')} is above where the lowest curve levels out.`
          : `s = ${[...s].join(' or ')}: ${say(v.wanted, 'stress')} ${age > EARLIEST_ADJUSTED_AGE ? 'takes an adjusted age of' : 'comes before the least adjusted age that counts,'} ${say(age, 'time', { units: DAYS, significant: 2 })}${reached === undefined ? (frozen === undefined ? `, not reached in ${AHEAD / DAY} days` : ', and it freezes before') : `, reached after ${say(reached, 'time', { units: DAYS, significant: 2 })}`}`;
      },
    },
  ],
  figure: ({ values: v, result: r, say }) => (
    <FrostChart
      history={r.known.history}
      strengthAt={r.strengthAt}
      frozen={r.frozen}
      old={r.old}
      wanted={v.wanted}
      reached={r.reached}
      until={Math.min(AHEAD, Math.max(3 * DAY, Math.min(r.known.until, 21 * DAY)))}
      say={say}
    />
  ),
  cautions: ['frost-and-heat'],
  defers: [
    'A thermometer on the part decides. Whether a frozen part may be used is for tests, never for its looks.',
  ],
  sources: [
    'aci-faq-795',
    'frost-strength-loss',
    'en-1992-1-1',
    'en-12390-2',
    'en-13670',
    'fhp-1977',
    'common-practice',
  ],
});
