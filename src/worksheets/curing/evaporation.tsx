import {
  ACTION_RATE,
  CAUTION_RATE,
  EVAPORATION_ACCURACY,
  type Evaporation,
  evaporation,
  LITTLE_BLEED_SHARE,
  waterLost,
} from '../../core/curing/evaporation.ts';
import { evaporationMeasures } from '../../core/curing/evaporation-measures.ts';
import { COLDEST_CURE, FREEZES_AT, tooColdToCure } from '../../core/curing/limits.ts';
import { HOUR } from '../../core/quantity/constants.ts';
import type { Say } from '../../islands/engine/say.ts';
import { choice, number } from '../../islands/fields.ts';
import { type Judgement, worksheet } from '../../islands/worksheet.ts';
import { openLength, openWidth } from '../shared/part/part-sides.ts';
import { heatDoubt } from '../shared/time/heat-doubt.ts';
import { PERCENT, SMALL_MASS } from '../shared/words/amounts.ts';
import { judgeBy } from '../shared/words/judge-by.ts';
import { temperature } from './curing-temperature.ts';
import { MeasureBars } from './drawn/MeasureBars.tsx';

const NAMES = {
  nothing: 'As it is',
  shade: 'Shade',
  windbreak: 'A windbreak',
  'cooler-mix': 'A cooler mix',
  sheet: 'A sheet on the face',
} as const;
const STATES = { calm: 'below the limits', caution: 'take care', act: 'act' } as const;
/**
 * A loss in words. A loss below the limits is called calm only if the upper end of the estimate is
 * below them too and the face may not be `warmer`.
 */
const stateOf = (rate: number, state: keyof typeof STATES, warmer: boolean) =>
  state === 'calm' &&
  (warmer || rate * (1 + EVAPORATION_ACCURACY) >= CAUTION_RATE * LITTLE_BLEED_SHARE)
    ? 'perhaps take care'
    : STATES[state];

/** A face in the sun that nobody measured, which may be warmer than it is taken to be. */
const mayBeWarmer = (v: { readonly concrete: number | undefined; readonly sun: 'no' | 'yes' }) =>
  v.concrete === undefined && v.sun === 'yes';

/** The judgement of a loss. `warmer`: the face may be warmer than assumed. */
function ofLoss(r: Evaporation, wind: number, warmer: boolean, say: Say): Judgement {
  const limit = (full: number) => say(full * LITTLE_BLEED_SHARE, 'massFlux', { significant: 2 });
  const amount = say(r.rate, 'massFlux', { significant: 2 });
  if (r.state === 'act')
    return {
      verdict: 'stop',
      say: `Cover the face now, before strike-off too: a sheet over the form, lifted only to strike off. ${amount} is at or above ${limit(ACTION_RATE)}, the limit at which to act with a foamed mix, which bleeds little.`,
    };
  if (r.state === 'caution')
    return {
      verdict: 'look',
      say: `Hold a sheet over the form until strike-off and lay it at once after${wind > 0 ? ', and break the wind' : ''}: ${amount} is at or above ${limit(CAUTION_RATE)}, the limit to take care at with a foamed mix, which bleeds little.`,
    };
  if (r.high >= CAUTION_RATE * LITTLE_BLEED_SHARE)
    return {
      verdict: 'look',
      say: `${amount} is below the limits, but the estimate is ±40\u00a0% and its upper end is not: perhaps take care. Hold a sheet over it until strike-off, and lay it on after.`,
    };
  if (warmer)
    return {
      verdict: 'look',
      say: `Hold a thermometer to the face and enter what it reads: ${amount} is below the limits only if it is as warm as the air, so perhaps take care: hold a sheet over it.`,
    };
  return {
    verdict: 'good',
    say: `${amount} is below the limits, its upper end too. Hold a sheet over it all the same.`,
  };
}

/** The units of the formula, in which its numbers are said to whoever reads it. */
const FORMULA_DEGREES = { units: { metric: 'degF', us: 'degF' }, decimals: 1 } as const;
const FORMULA_SPEED = { units: { metric: 'mph', us: 'mph' }, decimals: 1 } as const;

export default worksheet({
  id: 'evaporation',
  question: 'How fast is the open face drying?',
  fields: {
    concrete: number('temperature', {
      label: 'Face of the concrete',
      help: 'Left empty, as warm as the air. In the sun it is warmer than that: hold a thermometer to it.',
      example: '20 °C',
      min: '-15 °C',
      max: '100 °C',
      optional: true,
      takes: 'curing.mixTemperature',
      bench: 'curing.face',
    }),
    air: temperature('Air', '22 °C', { min: '-15 °C', bench: 'curing.air' }),
    humidity: number('ratio', {
      label: 'Relative humidity',
      example: '45 %',
      min: '0 %',
      max: '100 %',
      units: PERCENT,
      bench: 'curing.humidity',
    }),
    wind: number('speed', {
      label: 'Wind over the face',
      help: 'Half a metre (20\u00a0in) above it. Indoors with no draught, 0.',
      example: '20 km/h',
      min: '0 km/h',
      max: '200 km/h',
      bench: 'curing.wind',
    }),
    sun: choice({
      label: 'In the sun?',
      options: { no: 'No', yes: 'Yes' },
      example: 'yes',
      bench: 'curing.sun',
    }),
    length: openLength,
    width: openWidth,
  },
  work: ({ concrete, air, humidity, wind, sun, length, width }) => {
    const face = concrete ?? air;
    const weather = {
      concreteTemperature: face,
      airTemperature: air,
      relativeHumidity: humidity,
      windSpeed: wind,
      limitShare: LITTLE_BLEED_SHARE,
    };
    const found = evaporation(weather);
    const lost = (rate: number) => waterLost({ rate, area: length * width, duration: HOUR });
    return {
      ...found,
      face,
      lost: lost(found.rate),
      lostMost: lost(found.high),
      // In frost the wind is not the trouble, and a cooler mix no help.
      measures:
        face <= FREEZES_AT ? [] : evaporationMeasures({ ...weather, sunlit: sun === 'yes' }),
    };
  },
  results: {
    rate: {
      label: 'Water lost, by Uno',
      kind: 'massFlux',
      of: (r) => r.rate,
      significant: 2,
      note: 'as rough as ±40\u00a0%',
    },
    low: {
      label: 'Perhaps as little as',
      kind: 'massFlux',
      of: (r) => r.low,
      significant: 2,
    },
    high: {
      label: 'Perhaps as much as',
      kind: 'massFlux',
      of: (r) => r.high,
      significant: 2,
    },
    lost: {
      label: 'This slab loses in an hour',
      kind: 'mass',
      of: (r) => r.lost,
      units: SMALL_MASS,
      significant: 2,
      note: 'while water still stands on the face',
    },
    menzel: {
      label: 'Water lost, by Menzel',
      kind: 'massFlux',
      of: (r) => r.menzel,
      significant: 2,
    },
  },
  judge: (r, v, say) => {
    const { air } = v;
    const t = (kelvin: number) => say(kelvin, 'temperature', { plain: true });
    if (r.face <= FREEZES_AT)
      return {
        verdict: 'stop',
        say: `At ${t(r.face)} its trouble is frost, not wind: bring it in or insulate it at once, and see Frost, in the chapter on curing.`,
      };
    const dry = ofLoss(r, v.wind, mayBeWarmer(v), say);
    const hot = heatDoubt(air, say, 'The air');
    const loss = judgeBy([hot, dry.verdict === 'good' ? undefined : dry], dry);
    const coldest = Math.min(r.face, air);
    if (!tooColdToCure(coldest)) return loss;
    return {
      verdict: loss.verdict === 'stop' ? 'stop' : 'look',
      say: `${loss.say} ${t(coldest)} is too cold to cure in: keep the part above ${t(COLDEST_CURE)}, and see Frost, in the chapter on curing.`,
    };
  },
  notes: (r, v, say) => [
    ...(v.concrete === undefined
      ? [
          `No temperature of the face is given: it is taken to be as warm as the air, ${say(r.face, 'temperature')}.${v.sun === 'yes' ? ' In the sun it is warmer, and loses more than this.' : ''}`,
        ]
      : []),
    ...(r.notes.some(({ code }) => code === 'condensation')
      ? [
          'The face is colder than the dew point of this air: water settles on it rather than leaving.',
        ]
      : []),
    ...(r.notes.some(({ code }) => code === 'outside-range')
      ? ['This weather lies outside the chart the relation was fitted to: it is stretched here.']
      : []),
    ...(r.measures[0]
      ? [
          'Half of the published limits is used here: a foamed mix bleeds less than what they were found for.',
        ]
      : []),
  ],
  blames: {
    concreteTemperature: 'concrete',
    airTemperature: 'air',
    relativeHumidity: 'humidity',
    windSpeed: 'wind',
    area: 'length',
    rate: 'wind',
  },
  working: [
    {
      tex: String.raw`E = \left(T_c^{2.5} - r\,T_a^{2.5}\right)\left(1 + 0.4\,V\right)\times 10^{-6}`,
      put: (r, v, say) =>
        `In lb/(ft²·h), with T in °F and V in mph: Tc = ${say(r.face, 'temperature', FORMULA_DEGREES)}, Ta = ${say(v.air, 'temperature', FORMULA_DEGREES)}, r = ${v.humidity.toFixed(2)}, V = ${say(v.wind, 'speed', FORMULA_SPEED)}: E = ${say(r.rate, 'massFlux', { units: { metric: 'lb/(ft2.h)', us: 'lb/(ft2.h)' } })} = ${say(r.rate, 'massFlux', { units: { metric: 'kg/(m2.h)', us: 'kg/(m2.h)' } })}`,
    },
    {
      tex: String.raw`m = E \times A \times 1\ \mathrm h`,
      put: (r, v, say) =>
        `${say(r.rate, 'massFlux')} × ${say(v.length * v.width, 'area')} = ${say(r.lost, 'mass', { units: SMALL_MASS, significant: 2 })} an hour, at most ${say(r.lostMost, 'mass', { units: SMALL_MASS, significant: 2 })}`,
    },
  ],
  figure: ({ result, say }) =>
    result.measures[0] ? (
      <MeasureBars
        measures={result.measures}
        names={NAMES}
        limitShare={LITTLE_BLEED_SHARE}
        say={say}
      />
    ) : null,
  tables: [
    {
      caption: 'One measure at a time',
      columns: ['Measure', 'Leaves', 'Less by', 'Then'],
      rows: ({ measures }, v, say) =>
        measures.map(({ measure, rate, saved, state }) => [
          NAMES[measure],
          say(rate, 'massFlux', { significant: 2 }),
          measure === 'nothing' ? '—' : `${Math.round(saved * 100)}\u00a0%`,
          stateOf(rate, state, mayBeWarmer(v) && measure !== 'shade' && measure !== 'sheet'),
        ]),
    },
  ],
  cautions: ['frost-and-heat'],
  defers: [
    'What a windbreak (two fifths of the wind), a sheet (a twentieth of the loss) and a cooler mix (5\u00a0°C, 9\u00a0°F) do is common practice, no source; your own face, dry or shining, decides.',
  ],
  sources: [
    'uno-1998',
    'menzel-1954',
    'hover-2020',
    'fhwa-curing-2006',
    'aci-305r',
    'hasanain-1989',
    'common-practice',
  ],
});
