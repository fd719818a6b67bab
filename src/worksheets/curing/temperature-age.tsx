import {
  ACTIVATION_ENERGY_ASTM,
  type AgeLaw,
  outsideAgeRange,
} from '../../core/curing/age-factor.ts';
import { firstAtOrBelow } from '../../core/curing/cold-spells.ts';
import { ageAt, timeToReachAge } from '../../core/curing/equivalent-age.ts';
import { extremesOf, type TemperatureHistory, temperatureAt } from '../../core/curing/history.ts';
import { FREEZES_AT } from '../../core/curing/limits.ts';
import { ASTM_DATUM, NURSE_SAUL_DATUM, nurseSaul } from '../../core/curing/nurse-saul.ts';
import { DAY, HOUR } from '../../core/quantity/constants.ts';
import { formatNumber } from '../../core/quantity/format.ts';
import { choice, number } from '../../islands/fields.ts';
import { worksheet } from '../../islands/worksheet.ts';
import { heatDoubt, oneText } from '../shared/time/heat-doubt.ts';
import { KEPT_EXTREMES } from '../shared/time/kept-extremes.ts';
import { clockAfter, momentInWords } from '../shared/time/moments.ts';
import { AHEAD } from '../shared/time/since.ts';
import { SINCE_CASTING } from '../shared/time/since-casting.ts';
import { DAYS, HOURS } from '../shared/words/amounts.ts';
import { LAWS, lawOf } from './age-laws.ts';
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
import { AgeCharts } from './drawn/AgeCharts.tsx';

/** The part of a history before a moment, s. */
function cutAt({ times, temperatures, gaps }: TemperatureHistory, end: number): TemperatureHistory {
  const history = { times, temperatures, gaps };
  const before = times.filter((time) => time < end);
  return {
    times: [...before, end],
    temperatures: [...temperatures.slice(0, before.length), temperatureAt(history, end)],
    gaps,
  };
}

export default worksheet({
  id: 'temperature-age',
  question: 'How old is it, for its temperature?',
  fields: {
    ...temperatureFields,
    elapsed: number('time', {
      label: 'Time since casting, now',
      min: '0.1 h',
      ...SINCE_CASTING,
    }),
    wanted: number('time', {
      usual: true,
      label: 'Age you wait for, as at 20\u00a0°C (68\u00a0°F)',
      example: '7 d',
      min: '0.1 d',
      max: '60 d',
      units: DAYS,
    }),
    law: choice({ label: 'Law of ageing', options: LAWS, example: 'fhp', folded: true }),
    energy: number('molarEnergy', {
      usual: true,
      label: 'Activation energy',
      help: '40 to 45\u00a0kJ/mol for ordinary cement; from memory.',
      example: '42.5 kJ/mol',
      min: '0 kJ/mol',
      max: '200 kJ/mol',
      folded: true,
      when: { law: ['arrhenius'] },
    }),
  },
  work: (v) => {
    const known = historyOf(v);
    const { history } = known;
    const by = (law: AgeLaw) => ({
      law,
      now: ageAt({ history, law, time: v.elapsed }),
      reached: timeToReachAge({ history, law, age: v.wanted }),
    });
    const chosen = by(lawOf(v.law, v.energy));
    const past = cutAt(history, v.elapsed);
    const all: Readonly<Record<keyof typeof LAWS, ReturnType<typeof by>>> = {
      fhp: by(lawOf('fhp')),
      arrhenius: by(lawOf('arrhenius', v.law === 'arrhenius' ? v.energy : ACTIVATION_ENERGY_ASTM)),
      'model-code': by(lawOf('model-code')),
    };
    return {
      known,
      ...chosen,
      all,
      soFar: extremesOf(past).coldest,
      ...extremesOf(history),
      saul: nurseSaul({ history: past, datum: NURSE_SAUL_DATUM }),
      saulAtZero: nurseSaul({ history: past, datum: ASTM_DATUM }),
    };
  },
  results: {
    age: {
      label: 'Adjusted age now, as at 20\u00a0°C (68\u00a0°F)',
      kind: 'time',
      of: (r) => r.now,
      units: DAYS,
    },
    reached: {
      label: 'The wanted age is reached',
      kind: 'time',
      of: (r) => r.reached,
      units: DAYS,
      answer: true,
      note: 'after casting, if the temperatures come as entered',
    },
    saul: {
      label: 'Nurse–Saul so far, in °C × days above −10\u00a0°C',
      kind: 'count',
      of: (r) => r.saul / DAY,
    },
    saulAtZero: {
      label: 'The same above 0\u00a0°C',
      kind: 'count',
      of: (r) => r.saulAtZero / DAY,
    },
    coldest: { ...COLDEST, of: (r) => r.coldest },
    warmest: { ...WARMEST, of: (r) => r.warmest },
  },
  judge: ({ known, now, reached, soFar, warmest }, v, say) => {
    const hot = heatDoubt(warmest, say);
    if (hot?.verdict === 'stop') return hot;
    const days = (s: number) => say(s, 'time', { units: DAYS, significant: 2 });
    const passed = oneText(
      unreadWords(known, say, v.elapsed),
      passedFrostWords(known, v.castAt, say),
      hot?.say,
    );
    if (soFar <= FREEZES_AT)
      return {
        verdict: 'stop',
        say: 'It has been at or below freezing. Age counted through a frost is worth nothing if it froze young: see the page on frost.',
      };
    const freeze = firstAtOrBelow(known.history, FREEZES_AT);
    if (now < v.wanted && freeze !== undefined && freeze < (reached ?? Infinity))
      return {
        verdict: 'stop',
        say: `${freezesWords(known, v.castAt, freeze)}, before it counts as ${days(v.wanted)} old. ${isMeasured(known, freeze) ? 'That is past the “now” you gave. ' : ''}Age counted through a frost is worth nothing if it froze young: see the page on frost.${passed ? ` ${passed}` : ''}`,
      };
    if (reached === undefined)
      return {
        verdict: 'stop',
        say: `At these temperatures it does not reach ${days(v.wanted)} within ${AHEAD / DAY} days. Warm it.${passed ? ` ${passed}` : ''}`,
      };
    if (now >= v.wanted)
      return {
        verdict: passed ? 'look' : 'good',
        say: `${passed ? `${passed} ` : ''}It is past ${days(v.wanted)} already: it counts as ${days(now)} old.`,
      };
    return {
      verdict: 'look',
      say: `${passed ? `${passed} ` : ''}It counts as ${days(now)} old. If the temperatures come as entered it reaches ${days(v.wanted)} on ${momentInWords(clockAfter(v.castAt, reached), 'hour-up')}${reached > known.until ? ', beyond the days you entered' : ''}: come back to it when they turn out otherwise.`,
    };
  },
  notes: ({ known, reached, coldest, warmest }, { source, after }, say) => [
    ...historyNotes(
      known,
      `The wanted age, after ${say(reached ?? 0, 'time', { units: DAYS, significant: 2 })},`,
      reached,
    ),
    ...(outsideAgeRange(coldest, warmest).length > 0
      ? [
          'Some of these temperatures lie outside 0 to 80\u00a0°C (32 to 176\u00a0°F), where the laws are held to work.',
        ]
      : []),
    ...(source === 'days' || (source === 'readings' && after === 'days')
      ? [
          'The lowest and highest of a day are joined by a smooth wave, coldest at five and warmest at three in the afternoon: a shape, not a forecast (common practice, no source).',
        ]
      : []),
  ],
  refusals: historyRefusals,
  folded: 'The law of ageing',
  blames: { ...historyBlames, age: 'wanted', activationEnergy: 'energy' },
  keeps: { age: 'curing.age', ...KEPT_EXTREMES },
  leaves: leavesFrost,
  working: [
    {
      tex: String.raw`\begin{gathered}t_e = \int e^{\frac{E}{R}\left(\frac{1}{293.15\,\mathrm K} - \frac1T\right)} dt\\ E = 33.5 + 1.47\,\max(0,\,20 - t)\end{gathered}`,
      put: ({ now }, v, say) =>
        `E in kJ/mol, t in °C. ${LAWS[v.law]}: ${say(v.elapsed, 'time', { units: HOURS })} by the clock count as ${say(now, 'time', { units: HOURS })}`,
    },
    {
      tex: String.raw`M = \int \max(T - T_0,\ 0)\, dt`,
      put: ({ saul }) =>
        `Nurse–Saul from −10\u00a0°C: ${formatNumber(saul / HOUR, { decimals: 0 })}\u00a0°C·h, which is ${formatNumber(saul / DAY, { decimals: 1 })}\u00a0°C·d`,
    },
  ],
  figure: ({ values: v, result: { known, law, now, reached }, say }) => (
    <AgeCharts
      history={known.history}
      ageAt={(time) => ageAt({ history: known.history, law, time })}
      until={Math.min(AHEAD, Math.max(v.elapsed, reached ?? known.until, 2 * DAY) * 1.12)}
      now={{ time: v.elapsed, age: now }}
      wanted={{ age: v.wanted, time: reached }}
      say={say}
    />
  ),
  tables: [
    {
      caption: 'The laws side by side',
      columns: ['Law', 'Adjusted age now', 'Wanted age reached'],
      rows: ({ all }, v, say) =>
        Object.entries(all).map(([name, { now, reached }]) => [
          name === 'arrhenius'
            ? `One energy, ${say(v.law === 'arrhenius' ? v.energy : ACTIVATION_ENERGY_ASTM, 'molarEnergy')}`
            : name === 'fhp'
              ? 'Variable energy'
              : 'Model code',
          say(now, 'time', { units: DAYS }),
          reached === undefined
            ? `not in ${AHEAD / DAY} days`
            : `${say(reached, 'time', { units: DAYS })}, ${momentInWords(clockAfter(v.castAt, reached), 'hour-up')}`,
        ]),
    },
  ],
  cautions: ['frost-and-heat'],
  defers: [
    'The part’s own strength decides: a bar of the batch broken at its side outranks any age.',
  ],
  sources: ['fhp-1977', 'astm-c1074', 'fib-mc2010', 'nurse-saul', 'common-practice'],
});
