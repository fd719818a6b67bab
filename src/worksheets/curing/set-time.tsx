import { CHLORIDE_LIMIT } from '../../core/curing/accelerator.ts';
import { COLDEST_CURE, FREEZES_AT, tooColdToCure } from '../../core/curing/limits.ts';
import { SABIN_ROWS, type SabinRows, type sabinFactors } from '../../core/curing/set-by-water.ts';
import { HOUR } from '../../core/quantity/constants.ts';
import type { Say } from '../../islands/engine/say.ts';
import type { Values } from '../../islands/fields.ts';
import { type Judgement, worksheet } from '../../islands/worksheet.ts';
import { HOURS, PERCENT } from '../shared/words/amounts.ts';
import { saidApart } from '../shared/words/said-apart.ts';
import { LAWS } from './age-laws.ts';
import { SetRace } from './drawn/SetRace.tsx';
import { MIX, mixWarmth } from './mix-warmth.ts';
import { setFields } from './set-fields.ts';
import { setWorked } from './set-worked.ts';

const WAYS = {
  'warmer-water': ['Warmer mixing water', 'a kettle; never above 60\u00a0°C (140\u00a0°F)'],
  'warmer-room': ['A warmer room and bags', 'heat for a night; no open flame'],
  'rapid-cement': ['Rapid-hardening cement', 'another bag; more heat inside a thick part'],
  'accelerator-by-sheet': [
    'Another accelerator',
    'its price; try it with your foam; with steel, one free of chloride',
  ],
  'calcium-chloride': ['Calcium chloride', 'rust, more shrinkage, less resistance to sulfate'],
} as const;
/** Before this the pour itself may not be over. Common practice, no source, s. */
const TOO_SOON = HOUR;
/** Beyond a working day, nobody watches. Common practice, no source, s. */
const TOO_LATE = 8 * HOUR;
/** The sinking, as a share of the depth, that strike-off covers, and that no part survives. Common practice, no source. */
const LITTLE = 0.02;
const TOO_DEEP = 0.5;
/**
 * A part thicker than this, m, is noticeably warmer inside than at its faces. A choice: at this
 * thickness, half of the part resists heat about as much as the air at its face.
 */
const THIN = 0.1;
type Worked = ReturnType<typeof setWorked>;
const factor = ([low, high]: readonly [number, number]) => {
  const [one, other] = [low.toFixed(1), high.toFixed(1)];
  return one === other ? `about ${one}` : `${one} to ${other}`;
};

/** `one cement from w/c 0.27 to 0.40, the other from w/c 0.24 to 0.36` */
const rowsInWords = (rows: readonly SabinRows[]) =>
  rows
    .map(
      ({ from, to }, i) =>
        `${i ? 'the other' : 'one cement'} from w/c\u00a0${from.toFixed(2)} to ${to.toFixed(2)}`,
    )
    .join(', ');

/** What more water does to set, as far as the table shows it. */
function waterNote(
  { testWater, waterCement }: Values<typeof setFields>,
  shown: ReturnType<typeof sabinFactors>,
): string {
  if (waterCement <= testWater) return 'Your mix is no wetter than the bag’s test.';
  const later =
    'Your mix is wetter than the bag’s test, so it sets later; the times above do not count that.';
  if (!shown)
    return `${later} By how much is not known: the one old table at hand has ${rowsInWords(SABIN_ROWS)}.`;
  const { initial, final, covers } = shown;
  const beyond = [
    testWater < Math.min(...covers.map(({ from }) => from)) && 'the bag’s test is drier still',
    waterCement > Math.max(...covers.map(({ to }) => to)) && 'yours is wetter still',
  ].filter(Boolean);
  return `${later} In one old table (${rowsInWords(covers)}) initial set took ${factor(initial)} times as long, final set ${factor(final)} times${beyond.map((each) => `, and ${each}`).join('')}.`;
}

/** What of its set, s, by how it comes to the temperature of the air. */
function airNote({ cooling }: Worked, { thickness, mixAt }: Values<typeof setFields>, say: Say) {
  if (!cooling)
    return 'Worked as if it stayed as warm as poured. A part under 100\u00a0mm (4\u00a0in) is as warm as the air within an hour or two: if the air is colder or warmer, say so above.';
  const hours = (time: number) => say(time, 'time', { units: HOURS, significant: 2 });
  const [from, to] = [mixAt, cooling.temperature].map((at) => say(at, 'temperature'));
  const inAir =
    from === to
      ? 'As warm as the air, it stays so, its own heat left out.'
      : `Bare in still air it is half way from ${from} to the air’s ${to} after ${hours(cooling.timeConstant * Math.LN2)}, its own heat left out. In wind it is sooner, in wood or wrapped later: kept as poured it would begin to set at ${hours(cooling.kept)}, as warm as the air at once at ${hours(cooling.atOnce)}.`;
  return `${inAir}${thickness > THIN ? ' A part so thick stays warmer inside, where it may set sooner than said here.' : ''}`;
}

/** What is to be said of a part that gets too cold before it sets; undefined where it does not. */
function ofCooling({ cooling }: Worked, mixAt: number, say: Say): Judgement | undefined {
  if (!cooling || cooling.atSet >= mixAt || !tooColdToCure(cooling.atSet)) return undefined;
  const freezes = cooling.atSet <= FREEZES_AT;
  const t = saidApart(cooling.atSet, 'temperature', [FREEZES_AT, COLDEST_CURE], say, {
    decimals: 1,
  });
  return {
    verdict: freezes ? 'stop' : 'look',
    say: `In this air it ${freezes ? 'freezes before it sets' : 'hardly sets'}: it falls to ${t} first. Keep it warmer, and see Frost, in this chapter, before you cast.`,
  };
}

/** What the race between set and foam says by itself. */
function ofRace(
  { race, set, sinking, share, wetter, cooling }: Worked,
  mixAt: number,
  say: Say,
): Judgement {
  const at = say(set.initial, 'time', { units: HOURS, significant: 2 });
  const lasts = race.first === 'set';
  const times = `${race.againstFoam.toFixed(race.againstFoam < 10 ? 1 : 0)} times the foam’s half-life`;
  if (!lasts && set.initial > TOO_LATE)
    return {
      verdict: 'stop',
      say: `It does not begin to set before ${at}, ${times}. That is long for any foam: ${mixAt > MIX.hot ? 'quicken the set' : cooling && cooling.temperature < mixAt ? 'keep it warmer' : 'warm the mix'}, or do not cast today.`,
    };
  const begins = lasts
    ? wetter
      ? `With the bag’s water it would begin to set at ${at}, before half of the bare foam would have drained; yours is wetter and sets later.`
      : `It should begin to set at ${at}, before half of the bare foam would have drained.`
    : `It ${wetter ? 'does not begin to set before' : 'begins to set at'} ${at}, ${times}.`;
  const sinks =
    sinking === undefined || share === undefined
      ? undefined
      : `${say(sinking, 'length', { significant: 2 })}, ${say(share, 'ratio', { units: PERCENT, significant: 2 })} of its depth, by then${wetter ? ', and may sink on until it sets' : ''}`;
  if (share !== undefined && share >= TOO_DEEP)
    return {
      verdict: 'stop',
      say: `${begins} At the pace seen it would sink ${sinks}. Even if it slows, the part would be lost: quicken the set, or cast with a foam that lasts.`,
    };
  if (set.initial < TOO_SOON)
    return {
      verdict: 'look',
      say: `It begins to set at ${at}, perhaps before you have placed it. Check the bag’s time; if it is right, mix less at once${mixAt < MIX.cold ? '' : ', or cooler'}.`,
    };
  if (share === undefined)
    return lasts && !wetter
      ? { verdict: 'good', say: `${begins} Watch the level all the same.` }
      : {
          verdict: 'look',
          say: `${begins} Only its level tells whether the paste holds the foam so long: read how far it sinks in the first half hour, and enter that.`,
        };
  if (share === 0)
    return {
      verdict: 'good',
      say: `${begins} It was not seen to sink: the paste holds its foam. Watch the level all the same.`,
    };
  if (share > LITTLE)
    return {
      verdict: 'look',
      say: `${begins} At the pace seen it would sink ${sinks}. If that is too much, quicken the set or lengthen the foam’s life.`,
    };
  return wetter
    ? {
        verdict: 'look',
        say: `${begins} At the pace seen it sinks ${sinks}: read the level again until it has.`,
      }
    : {
        verdict: 'good',
        say: `${begins} At the pace seen it sinks ${sinks}: the paste holds its foam. Leave that much to strike off.`,
      };
}

export default worksheet({
  id: 'set-time',
  question: 'When will it set, and will the foam last until then?',
  fields: setFields,
  work: setWorked,
  results: {
    initial: {
      label: 'Initial set, by Arrhenius',
      kind: 'time',
      of: (r) => r.set.initial,
      units: HOURS,
      significant: 2,
      note: 'for the bag’s own water; wetter sets later',
    },
    against: {
      label: 'That is, in half-lives of the foam',
      kind: 'count',
      of: (r) => r.race.againstFoam,
      significant: 2,
      note: '1 or less: with the bag’s water it sets before half of the bare foam has drained',
    },
    sinking: {
      label: 'Sinking by then, at the pace seen',
      kind: 'length',
      of: (r) => r.sinking,
      significant: 2,
      answer: true,
      note: 'it slows as the mix stiffens; a later set lets it go on',
    },
    share: {
      label: 'The sinking, of the part’s depth',
      kind: 'ratio',
      of: (r) => r.share,
      units: PERCENT,
      significant: 2,
    },
    final: {
      label: 'Final set',
      kind: 'time',
      of: (r) => r.set.final,
      units: HOURS,
      significant: 2,
    },
    third: {
      label: 'Initial set, by the rule of a third',
      kind: 'time',
      of: (r) => r.third.initial,
      units: HOURS,
      significant: 2,
    },
  },
  judge: (r, { mixAt }, say) => {
    const raced = ofRace(r, mixAt, say);
    const warmth = mixWarmth(mixAt, say);
    if (warmth?.verdict === 'stop')
      return {
        ...warmth,
        say: `${warmth.say} ${mixAt > MIX.hot ? 'Cool' : 'Warm'} the mix, or do not cast today.`,
      };
    const cold = ofCooling(r, mixAt, say);
    if (cold?.verdict === 'stop') return cold;
    // Too soon for the pour, it does not set late, however cold it is.
    const first = mixAt < MIX.cold && r.set.initial < TOO_SOON ? undefined : warmth;
    const before = [first, cold].flatMap((each) => (each ? [each.say] : []));
    return before.length === 0
      ? raced
      : {
          verdict: raced.verdict === 'good' ? 'look' : raced.verdict,
          say: [...before, raced.say].join(' '),
        };
  },
  notes: (r, v, say) => [
    airNote(r, v, say),
    ...(v.sunk === undefined
      ? [
          'No sinking is given, so the two rows on it are left out: the example’s was not your part’s. Read the level after half an hour and enter it.',
        ]
      : []),
    waterNote(v, r.water),
    'What the foaming agent does to set is for its own sheet: some proteins and sugars hold it back.',
    ...(r.notes.length > 0
      ? [
          'The rule of a third is given down to 4\u00a0°C (40\u00a0°F), and from memory up to 38\u00a0°C (100\u00a0°F); this mix or its air is outside it.',
        ]
      : []),
    ...(v.accelerator === 'product' && v.steel === 'yes'
      ? ['With steel, only a product whose sheet says it is free of chloride.']
      : []),
    ...(r.dosed.notes?.some(({ code }) => code === 'outside-range')
      ? ['The dose is below the sheet’s lowest: it may do nothing.']
      : []),
    ...(v.accelerator === 'chloride'
      ? [
          `Each per cent of calcium chloride is taken as worth 6\u00a0°C (11\u00a0°F) of warmth; at 2\u00a0% set was seen as short as a third. Never more than ${say(CHLORIDE_LIMIT, 'ratio', { units: PERCENT, significant: 1 })}.`,
        ]
      : []),
  ],
  refusals: {
    'final-before-initial': ({ value, allowed }, say) => {
      const [final, initial] = [value, allowed.min!].map((time) =>
        say(time, 'time', { units: HOURS, plain: true }),
      );
      return `Final set: ${final} is before the initial set, ${initial} as given above. Both are counted from the first water.`;
    },
    steel: () =>
      'Calcium chloride with steel: never. It rusts the steel inside the part. Choose no accelerator, or one free of chloride.',
  },
  folded: 'The bag’s test, and what each way would bring',
  blames: {
    initialSet: 'initial',
    temperature: 'mixAt',
    referenceTemperature: 'referenceAt',
    activationEnergy: 'energy',
    rapidFactor: 'rapid',
    dose: ['chloride', 'dose'],
    settling: 'sunk',
    depth: 'sunk',
    after: 'sunkAfter',
    warmer: 'warmerWater',
  },
  keeps: { initial: 'curing.initialSet' },
  working: [
    {
      tex: String.raw`t = t_r\, \frac{\gamma(T_r)}{\gamma(T)} \qquad \gamma(T) = e^{\frac{E}{R}\left(\frac1{293.15\ \mathrm K} - \frac1T\right)}`,
      put: ({ set, pace, dosed, cooling }, v, say) =>
        cooling
          ? `T goes from ${say(v.mixAt, 'temperature')} to ${say(cooling.temperature, 'temperature')}, e^(−t / ${say(cooling.timeConstant, 'time', { units: HOURS })}) of the way left; γ(T) ÷ ${pace.reference.toFixed(3)}, summed from ${pace.here.toFixed(3)} on, comes to ${say(v.initial, 'time', { units: HOURS })}${dosed.factor === 1 ? '' : ` × ${dosed.factor.toFixed(3)} for the accelerator`} at ${say(set.initial, 'time', { units: HOURS })}. ${LAWS[v.law]}.`
          : `${say(v.initial, 'time', { units: HOURS })} at ${say(v.referenceAt, 'temperature')} × ${pace.reference.toFixed(3)} ÷ ${pace.here.toFixed(3)}${dosed.factor === 1 ? '' : ` × ${dosed.factor.toFixed(3)} for the accelerator`} = ${say(set.initial, 'time', { units: HOURS })} at ${say(v.mixAt, 'temperature')}. ${LAWS[v.law]}.`,
    },
  ],
  figure: ({ values, result, say }) => (
    <SetRace
      foamTime={values.foamTime}
      rows={[
        { name: 'by Arrhenius', set: result.set },
        { name: 'by the rule of a third', set: result.third },
        ...(result.shortest
          ? [{ name: 'as early as was seen at this dose', set: result.shortest }]
          : []),
      ]}
      say={say}
    />
  ),
  tables: [
    {
      caption: 'Ways to quicken it, the cheapest first',
      columns: ['Way', 'Initial set then', 'Of the plain', 'What it costs'],
      rows: ({ ways }, v, say) =>
        ways.flatMap(({ way, set, factor, allowed }) => {
          // A mix that is hot already is not to be warmed.
          if (v.mixAt > MIX.hot && way.startsWith('warmer')) return [];
          const [name, cost] = WAYS[way];
          const dose =
            way === 'calcium-chloride'
              ? Math.min(v.chloride, CHLORIDE_LIMIT)
              : way === 'accelerator-by-sheet'
                ? v.dose
                : undefined;
          const by =
            dose === undefined ? '' : `, ${say(dose, 'ratio', { units: PERCENT, significant: 2 })}`;
          return [
            set && factor !== undefined
              ? [
                  `${name}${by}`,
                  say(set.initial, 'time', { units: HOURS, significant: 2 }),
                  `${Math.round(factor * 100)}\u00a0%`,
                  cost,
                ]
              : [name, allowed ? 'by its sheet' : 'never with steel', '—', cost],
          ];
        }),
    },
  ],
  cautions: ['caustic-slurry', 'calcium-chloride', 'frost-and-heat'],
  defers: [
    'The accelerator’s and the cement’s own sheets decide doses and times. The order of the ways is common practice, no source.',
  ],
  sources: [
    'fhp-1977',
    'astm-c1074',
    'fib-mc2010',
    'concrete-construction-accelerators',
    'nrmca-set',
    'jove-16919',
    'rapp-1934',
    'sabin',
    'incropera',
    'brown-2022',
    'bentz-2007',
    'iso-6946',
    'common-practice',
  ],
});
