import { AGE_FACTOR_RANGE } from '../../core/curing/age-factor.ts';
import { DIFFERENCE_LIMIT } from '../../core/curing/heat/inside.ts';
import { COLDEST_CURE, FREEZES_AT, PEAK_LIMIT, tooHotToCure } from '../../core/curing/limits.ts';
import type { Note } from '../../core/note.ts';
import type { Say } from '../../islands/engine/say.ts';
import { type Judgement, worksheet } from '../../islands/worksheet.ts';
import { mixRefusals } from '../shared/mix/mix-refusals.ts';
import { heatDoubt } from '../shared/time/heat-doubt.ts';
import { HOURS, PERCENT } from '../shared/words/amounts.ts';
import { judgeBy } from '../shared/words/judge-by.ts';
import { saidApart } from '../shared/words/said-apart.ts';
import { historyRefusals } from './days.ts';
import { HeatPicture } from './drawn/HeatPicture.tsx';
import { FINE, type HeatValues, ROUND } from './heat-cases.ts';
import { heatFields } from './heat-fields.ts';
import { heatWorked } from './heat-worked.ts';
import { mixWarmth } from './mix-warmth.ts';

type Worked = ReturnType<typeof heatWorked>;

/**
 * A warning is given this close to the limit, K: about the error of the cement's figures. Common
 * practice, no source.
 */
const NEAR = 2;

/**
 * A conductivity is doubted above this many times the most that the mix can have, since that figure
 * is rough too. A choice.
 */
const OVER = 1.5;

/** From so many times the published heat on, that a wetter mix gives more of it is said. A choice. */
const MUCH_WETTER = 1.05;

/** How near heat released and let in comes to heat stored, in words. */
const closeTo = (imbalance: number) =>
  imbalance < 1e-6 ? 'better than a millionth' : imbalance.toPrecision(1);

/** From one amount to another, in words: ends that read alike are one. */
const span = (least: string, most = least) => (most === least ? least : `${least} to ${most}`);

/** What is to be said of its heat. */
function ofHeat({ peak, difference, asDry, hottest }: Worked, v: HeatValues, say: Say): Judgement {
  const degrees = (kelvin: number) => say(kelvin, 'temperature', { decimals: 0 });
  const least = degrees(peak.temperature);
  const hot = span(least, asDry && degrees(asDry.peak.temperature));
  const slab = v.shape === 'slab';
  const smaller = slab ? 'thinner' : 'smaller';
  const limit = `${degrees(PEAK_LIMIT)}, the usual limit for the middle of concrete (common practice, no source)`;
  if (tooHotToCure(peak.temperature))
    return {
      verdict: 'stop',
      say: `${saidApart(peak.temperature, 'temperature', [PEAK_LIMIT], say, { decimals: 0 })}${asDry ? ' at the least' : ''}${slab ? ' in a slab' : ''} ${peak.temperature > PEAK_LIMIT ? 'is above' : 'comes to'} ${limit}. Cast it ${smaller}, in lifts with days between, or with cooler water.`,
    };
  if (hottest > PEAK_LIMIT - NEAR)
    return {
      verdict: 'look',
      say: `${hot}${asDry ? ', by how well the fresh mix conducts,' : ''} comes too near to ${limit}, or exceeds it. Cast it ${smaller} or in lifts, or with cooler water; at the least, leave a thermometer in the middle of the first one.`,
    };
  const lag = Math.max(difference.value, asDry?.difference.value ?? 0);
  // What is past the limit does not read as it.
  const apart = (kelvin: number) =>
    saidApart(kelvin, 'temperatureDifference', [DIFFERENCE_LIMIT], say, { significant: 2 });
  if (lag > DIFFERENCE_LIMIT)
    return {
      verdict: 'look',
      say: `The face ${difference.value > DIFFERENCE_LIMIT ? 'lags' : 'may lag'} the inside by ${span(apart(difference.value), asDry && apart(lag))}: that is above the usual ${say(DIFFERENCE_LIMIT, 'temperatureDifference', { significant: 2 })} (common practice for ordinary concrete, no source). Cast it ${smaller}. Insulation brings the difference down and drives the peak up: choose it above and see both before you use it.`,
    };
  if (hottest <= v.mixAt + 0.5)
    return {
      verdict: 'good',
      say: 'Inside it gets hardly warmer than it was mixed: its heat leaves as fast as it comes.',
    };
  return {
    verdict: 'good',
    say: `${hot} at most, and ${say(lag, 'temperatureDifference', { significant: 2 })} across it: within the usual limits. The warmth helps it set; keep the face damp meanwhile.`,
  };
}

/** The judgement of a rapid cement worked out as an ordinary one: it gives more heat on the first day. */
const ofCement = ({ cement, heat }: HeatValues): Judgement | undefined =>
  cement === 'rapid' && heat !== 'oxides'
    ? {
        verdict: 'look',
        say: 'This is worked out for an ordinary cement. A rapid one gets hotter inside: work it out from its oxides and fineness, above, or leave a thermometer in the first one.',
      }
    : undefined;

/** The doubt about a conductivity that no such mix can have: too high a one makes the part too cool. */
function ofConductivity({ conductivity, most }: Worked, say: Say): string | undefined {
  if (conductivity <= OVER * most) return undefined;
  const [own, limit] = [conductivity, most].map((each) =>
    say(each, 'conductivity', { significant: 2 }),
  );
  return `Check the conductivity and its unit: ${own} is far above ${limit}, the most that paste, sand and wet gas of this mix can conduct, and the more it conducts, the cooler it comes out here.`;
}

/** What a face sees, and what there is to do where it gets too cold. */
const COLD_FACES: Readonly<
  Record<HeatValues['far'] | 'uncovered', readonly [face: string, remedy: string]>
> = {
  bare: ['bare face', 'insulate it'],
  wood: ['face under the wood', 'insulate over it'],
  insulated: ['face, insulated as it is,', 'insulate it better'],
  uncovered: [
    'face, bare once its cover is off,',
    'leave the cover on until the cold is past (try that time here)',
  ],
  room: ['face towards the room', 'warm the room'],
  swing: ['face towards the room', 'warm the room'],
  ground: ['face on the ground', 'lay foam board under it'],
  closed: ['face', 'insulate it'],
};

/** What is to be said of the face that is too cold; undefined where none is. */
function ofCold({ cold }: Worked, v: HeatValues, say: Say): Judgement | undefined {
  if (!cold) return undefined;
  const { temperature, since, cover } = cold;
  const off = (cover === 'wood' || cover === 'insulated') && since > v.strip;
  const [name, remedy] = COLD_FACES[off ? 'uncovered' : cover];
  const freezes = temperature <= FREEZES_AT;
  return {
    verdict: freezes ? 'stop' : 'look',
    say: `By these temperatures its ${name} falls to ${saidApart(temperature, 'temperature', [FREEZES_AT, COLDEST_CURE], say, { decimals: 1 })}${freezes ? ' and freezes' : `, below ${say(COLDEST_CURE, 'temperature', { plain: true })}`}: ${remedy} or bring it in, and see Frost, in the chapter on curing, before you cast.`,
  };
}

/** What is to be said of temperatures at which the sum is stretched, or means nothing. */
function ofRange(notes: readonly Note[], say: Say): readonly string[] {
  if (notes.some(({ code }) => code === 'boils'))
    return [
      'Above boiling point the figure only means far too hot: steam carries heat the sum leaves out.',
    ];
  const { min, max } = AGE_FACTOR_RANGE;
  const plain = (kelvin: number) => say(kelvin, 'temperature', { plain: true });
  return notes.some(({ of }) => of === 'temperature')
    ? [
        `Some of it leaves ${plain(min)} to ${plain(max)}, where the rule by which cement ages is held to work (from memory): the figures there are stretched.`,
      ]
    : [];
}

export default worksheet({
  id: 'heat-inside',
  question: 'How hot does it get inside?',
  fields: heatFields,
  work: heatWorked,
  results: {
    peak: {
      label: 'Hottest inside, conducting as when wet or as measured',
      kind: 'temperature',
      of: (r) => r.peak.temperature,
      decimals: 0,
      note: 'as well as a wet mix can, unless you measured it',
    },
    asDry: {
      label: 'Hottest inside, conducting as when dry',
      kind: 'temperature',
      of: (r) => r.asDry?.peak.temperature,
      decimals: 0,
      answer: true,
      note: 'the truth lies between the two',
    },
    peakAt: {
      label: 'Hottest inside, wet or measured, reached after',
      kind: 'time',
      of: (r) => r.peak.time,
      units: HOURS,
      significant: 2,
      answer: true,
    },
    difference: {
      label: 'Inside over the cooler face, wet or measured, up to',
      kind: 'temperatureDifference',
      of: (r) => r.difference.value,
      significant: 2,
    },
    differenceAt: {
      label: 'That difference is widest after',
      kind: 'time',
      of: (r) => r.difference.time,
      units: HOURS,
      significant: 2,
    },
    differenceDry: {
      label: 'Inside over the cooler face, dry, up to',
      kind: 'temperatureDifference',
      of: (r) => r.asDry?.difference.value,
      significant: 2,
    },
    rise: {
      label: 'Warming if no heat got out',
      kind: 'temperatureDifference',
      of: (r) => r.rise,
    },
    conductivity: {
      label: 'Conductivity, damp: the most',
      kind: 'conductivity',
      of: (r) => r.conductivity,
      significant: 2,
    },
    conductivityDry: {
      label: 'Conductivity, dry: the least',
      kind: 'conductivity',
      of: (r) => r.asDry?.conductivity,
      significant: 2,
    },
  },
  doubts: (r, _, say) => ofConductivity(r, say),
  judge: (r, v, say) => {
    const air = Math.max(...(v.air === 'alike' ? [v] : v.days).map(({ warmest }) => warmest));
    const room = Math.max(v.roomAt, v.roomWarmest);
    const heat = ofHeat(r, v, say);
    return judgeBy(
      [
        mixWarmth(v.mixAt, say),
        heatDoubt(Math.max(air, room), say, room > air ? 'The room' : 'The air'),
        ofCement(v),
        heat,
        ofCold(r, v, say),
      ],
      heat,
    );
  },
  notes: (r, { shape }, say) => [
    ...ofRange([...r.notes, ...(r.asDry?.notes ?? [])], say),
    `${
      shape === 'slab'
        ? 'Worked one way through, as in a slab far wider than thick. A cube or a short block loses heat by its other faces too, and may come out tens of degrees cooler: see it as a ball.'
        : `Worked from the middle outwards, alike all round${shape === 'ball' ? '. A cube' : '; the ends do not count. A square bar'} as wide comes out hotter: in air no warmer than the mix, between this and a slab.`
    } Sun, rain and evaporation are left out.`,
    ...(r.asDry
      ? [
          'No figure was seen for how well a fresh foamed mix conducts. The two figures take it at the most its paste, sand and wet gas can conduct, side by side, and as dry: the first is the cooler, and is what the picture of depths and the dashed curves show.',
        ]
      : []),
    'The hydration figures were found on ordinary concrete; none was seen for foamed.',
    ...(r.wetter > MUCH_WETTER
      ? [
          `So wet a mix gives up to ${say(r.wetter - 1, 'ratio', { units: PERCENT, significant: 2 })} more heat, as more of its cement reacts. To count that, choose “A total I know” and type ${say(r.hydration.heat, 'specificEnergy')}.`,
        ]
      : []),
    ...(r.asDry?.notes.some(({ of }) => of === 'dryDensity')
      ? ['Dry, it is lighter or heavier than the relation for its conductivity covers.']
      : []),
  ],
  refusals: {
    ...historyRefusals,
    'highest-below-lowest': (e, say) =>
      `${e.quantity === 'warmest' ? 'Air' : 'Room'}, highest of the day: ${say(e.value, 'temperature', { plain: true })} is below the lowest, ${say(e.allowed.min!, 'temperature', { plain: true })}.`,
    ...mixRefusals,
    'hollow-round': () =>
      'Hollow, it is worked by its wall: choose the slab or wall above, type the thickness of the wall, and say what its inner face sees.',
    'rich-in-iron': (e, say) =>
      `Al₂O₃ over Fe₂O₃ is ${saidApart(e.value, 'count', [e.allowed.min!], say, { decimals: 2 })}; it must be at least ${say(e.allowed.min!, 'count', { decimals: 2 })}. A cement richer in iron has other compounds, which are not worked here: check the two shares, or choose the heat as a total you know.`,
    'not-a-cement': () =>
      'Oxides like these do not make a cement by Bogue: one of its compounds comes out negative. Check the shares.',
  },
  folded: 'Cement, mix, covers and weather',
  blames: {
    wetDensity: 'wet',
    dryDensity: 'wet',
    from: 'strip',
    windSpeed: 'wind',
    initialTemperature: 'mixAt',
    'al2o3/fe2o3': 'al2o3',
    c3s: 'cao',
    c2s: 'sio2',
    c3a: 'al2o3',
    c4af: 'fe2o3',
    ultimate: 'waterCement',
  },
  keeps: { peak: 'curing.peak' },
  working: [
    {
      tex: String.raw`\rho c\,\frac{\partial T}{\partial t} = \frac{\lambda}{r^n}\,\frac{\partial}{\partial r}\!\left(r^n\,\frac{\partial T}{\partial r}\right) + H\,C\,\frac{\partial \alpha}{\partial t}`,
      put: (r, { shape, wet }, say) =>
        `n = ${ROUND[shape]}, λ = ${say(r.conductivity, 'conductivity')}, ρ = ${say(wet, 'density')}, c = ${say(r.heatCapacity / wet, 'specificHeat')}, H = ${say(r.hydration.heat, 'specificEnergy')}, C = ${say(r.cement, 'density')} of cement, in ${FINE.cells} cells and steps of up to ${Math.round(r.step / 60)} minutes at first and an hour at last`,
    },
    {
      tex: String.raw`\alpha = \alpha_u\, e^{-(\tau/t_e)^\beta}`,
      put: ({ hydration: h }, _, say) =>
        `αu = ${h.ultimate.toFixed(3)}, τ = ${say(h.tau, 'time', { units: HOURS })}, β = ${h.beta.toFixed(3)}, age by Arrhenius with E = ${say(h.activationEnergy, 'molarEnergy')}`,
    },
    {
      tex: String.raw`\Delta T_{\text{ad}} = \frac{H\,\alpha_u\,C}{\rho c}`,
      put: (r, _, say) =>
        `${say(r.rise, 'temperatureDifference')} if no heat got out. Released and come in at the faces equals stored to ${closeTo(r.run.energy.imbalance)} of the largest.`,
    },
  ],
  figure: ({ values, result, say }) => (
    <HeatPicture found={result} thickness={values.thickness} say={say} />
  ),
  tables: [
    {
      caption: 'Thinner, thicker, lighter and heavier, wet or measured',
      columns: ['Part', 'Hottest', 'Inside over face'],
      rows: ({ beside }, _, say) =>
        beside().map(({ thickness, wet, peak, difference }) => [
          `${say(thickness, 'length', { significant: 2 })}, ${say(wet, 'density', { significant: 2 })}`,
          say(peak.temperature, 'temperature', { decimals: 0 }),
          say(difference.value, 'temperatureDifference', { significant: 2 }),
        ]),
    },
  ],
  cautions: ['frost-and-heat'],
  defers: [
    'A thermometer in the middle of the part decides. The two limits are common practice for ordinary concrete, no source.',
  ],
  sources: [
    'schindler-folliard-2005',
    'brown-2022',
    'bentz-2007',
    'wiener-1912',
    'de-vries-1963',
    'mills-1966',
    'astm-c150',
    'aci-122r',
    'iso-10456',
    'iso-6946',
    'crank-nicolson',
    'common-practice',
  ],
});
