import {
  ACI_COLD,
  DIN_COLD,
  EN_CLASS_1_SET,
  type GainClass,
} from '../../core/curing/curing-rules.ts';
import type { DayExtremes } from '../../core/curing/history.ts';
import type { PlanEntry } from '../../core/curing/plan.ts';
import { DAY } from '../../core/quantity/constants.ts';
import type { Say } from '../../islands/engine/say.ts';
import { readMoment } from '../../islands/fields/read-moment.ts';
import { worksheet } from '../../islands/worksheet.ts';
import { heatDoubt, oneText } from '../shared/time/heat-doubt.ts';
import { KEPT_EXTREMES } from '../shared/time/kept-extremes.ts';
import { clockAfter, momentInWords, roundMoment } from '../shared/time/moments.ts';
import { DAYS, HOURS } from '../shared/words/amounts.ts';
import { saidApart } from '../shared/words/said-apart.ts';
import { castAt } from './curing-fields.ts';
import {
  COLDEST,
  freezesWords,
  historyBlames,
  historyNotes,
  isMeasured,
  leavesFrost,
  passedFrostWords,
  unreadWords,
  WARMEST,
} from './curing-history.ts';
import { historyRefusals } from './days.ts';
import { PlanChart } from './drawn/PlanChart.tsx';
import type { CalendarDate } from './icalendar.ts';
import { planFields, planWorked } from './plan-worked.ts';

const RULES: Readonly<Record<PlanEntry['rule'], string>> = {
  'din-1045-3': 'German table',
  'nhbc-plain': 'UK housing, plain Portland',
  'nhbc-reinforced': 'UK housing, steel or blends',
  'aci-normal': 'American practice',
  'aci-high-early': 'American, high-early cement',
  'en-class-1': 'European class 1',
  'en-class-2': 'European class 2, 35\u00a0%',
  'en-class-3': 'European class 3, 50\u00a0%',
  'en-class-4': 'European class 4, 70\u00a0%',
};
/** The example’s casting: dates counted from it are nobody’s own, and say so wherever they go. */
const EXAMPLE_CASTING = readMoment(castAt.example);

const GAIN_WORDS: Readonly<Record<GainClass, string>> = {
  rapid: 'rapid gain',
  medium: 'middling gain',
  slow: 'slow gain',
  'very-slow': 'very slow gain',
};
const BINDER_WORDS = {
  plain: 'Portland cement without steel',
  other: 'a blend, or with steel in it',
} as const;

/** A note if the longest European class, which is not one of the rules, asks for longer than they do. */
function class4Note(ends: number | undefined, longest: number, castAt: number): readonly string[] {
  if (ends !== undefined && ends <= longest) return [];
  return [
    `European class 4 asks for longer: ${ends === undefined ? 'beyond these temperatures' : `until ${momentInWords(clockAfter(castAt, ends), 'hour-up')}`}. It counts only if your specification names class 4.`,
  ];
}

/** From the coldest to the warmest, to the degree: `6 to 21 °C`. */
function span({ coldest, warmest }: DayExtremes, say: Say): string {
  const [low, high] = [coldest, warmest].map((t) => say(t, 'temperature', { decimals: 0 }));
  return low === high ? low! : `${low!.split('\u00a0')[0]} to ${high}`;
}

const WHY: Readonly<Record<string, string>> = {
  'too-cold': 'too cold: not within these temperatures',
  'history-too-short': 'not within these temperatures',
  'extended-for-cold': 'longer, for the time below 5\u00a0°C (41\u00a0°F)',
  'held-after-end': 'beyond what you entered',
};

/** What European class 1 asks of set; a mix wetter than the bag’s test sets later than was worked out. */
const ofSet = (does: string, set: number | undefined, say: Say) =>
  `only if it sets within ${say(EN_CLASS_1_SET, 'time', { units: HOURS, plain: true })}${
    set === undefined
      ? ''
      : `: yours ${does}, at ${saidApart(set, 'time', [EN_CLASS_1_SET], say, { units: HOURS, significant: 2 })}`
  }`;
/** What is known of it, by the plan's note. */
const SETS: Readonly<Record<string, string>> = {
  'if-it-sets-in-time': 'may',
  'sets-too-late': 'does not',
};

export default worksheet({
  id: 'curing-plan',
  question: 'How long must it stay covered and damp?',
  fields: planFields,
  work: planWorked,
  results: {
    longest: {
      label: 'By the longest of the three rules',
      kind: 'time',
      of: (r) => (r.stopped || r.endless ? undefined : r.longest),
      units: DAYS,
      significant: 2,
    },
    known: {
      label: 'By the longest of those that end',
      kind: 'time',
      of: (r) => (r.endless && !r.stopped ? r.longest : undefined),
      units: DAYS,
      significant: 2,
      note: 'not before: American practice gives no end',
    },
    din: {
      label: 'By the German table',
      kind: 'time',
      of: (r) => (r.stopped ? undefined : r.din),
      units: DAYS,
      significant: 2,
    },
    coldest: { ...COLDEST, of: (r) => r.coldest },
    warmest: { ...WARMEST, of: (r) => r.warmest },
  },
  judge: ({ longest, stopped, endless, freezes, known, cold, warmest }, v, say) => {
    const hot = heatDoubt(warmest, say);
    if (hot?.verdict === 'stop') return hot;
    const passed = oneText(
      // Of what froze already no reading tells more.
      unreadWords(known, say, isMeasured(known, freezes ?? Infinity) ? 0 : longest),
      passedFrostWords(known, v.castAt, say),
      hot?.say,
    );
    const first = passed ? `${passed} ` : '';
    const until = momentInWords(clockAfter(v.castAt, longest), 'hour-up');
    if (freezes !== undefined)
      return {
        verdict: 'stop',
        say: `${freezesWords(known, v.castAt, freezes)}. ${isMeasured(known, freezes) ? 'No end of curing makes up for that: see “If it has frozen”, on the page on frost.' : 'Keep it from freezing first of all: bring it indoors or insulate it, and make the plan anew with the temperatures it then has.'}${passed ? ` ${passed}` : ''}`,
      };
    if (stopped)
      return {
        verdict: 'stop',
        say: `${first}It is too cold: by one of the rules the time does not count at all. Warm it, or keep it covered until the weather turns and then begin to count.`,
      };
    if (endless)
      return {
        verdict: 'look',
        say: `${first}Keep it covered and damp until ${until} at the least. American practice counts no time below ${say(ACI_COLD, 'temperature', { plain: true })} and gives no end: warm it, or keep it covered for longer.`,
      };
    const warm =
      cold > 0
        ? ` But it is below ${say(DIN_COLD, 'temperature', { plain: true })} for ${say(cold, 'time', { units: cold < 2 * DAY ? HOURS : DAYS, significant: 2 })} of that: warm or insulate it, for it is to stay above the whole time.`
        : ' Longer does no harm to a part that is not to dry yet.';
    return {
      verdict: passed || cold > 0 ? 'look' : 'good',
      say: `${first}Keep it covered and damp until ${until}.${warm}`,
    };
  },
  notes: ({ known, longest, entries, stopped, freezesLater }, v) => [
    ...(freezesLater === undefined
      ? []
      : [
          `${freezesWords(known, v.castAt, freezesLater)}, after the last of these ends. A part that is still wet through can be hurt then: let it dry before.`,
        ]),
    ...historyNotes(
      known,
      `The end by the longest rule, ${momentInWords(clockAfter(v.castAt, longest), 'hour-up')},`,
      stopped ? undefined : longest,
    ),
    ...(stopped
      ? [
          'Read the days in the table and the picture as “not before”: what is lost to cold or heat comes on top.',
        ]
      : class4Note(entries.find(({ rule }) => rule === 'en-class-4')?.ends, longest, v.castAt)),
    'All these rules were written for ordinary concrete; none was seen for foamed. A thin, light part dries faster than a thick one: err on the long side.',
    'The German table names a surface temperature and not how to average it; the mean over its days is used here, or over more of the cure where that is colder.',
  ],
  refusals: historyRefusals,
  folded: 'Cement, growth and set',
  blames: { ...historyBlames, ratio: 'gain', share: 'cement', coefficient: 'growth' },
  keeps: KEPT_EXTREMES,
  leaves: leavesFrost,
  working: [
    {
      tex: String.raw`t_{\text{end}} = t_{\text{table}}(\bar T,\ r) + t_{T < 5\,°\mathrm C}`,
      put: ({ din, mean }, _, say) =>
        din === undefined || mean === undefined
          ? 'Too cold for the table to end.'
          : `Mean ${say(mean, 'temperature')}: ${say(din, 'time', { units: DAYS, significant: 2 })}, the time below 5\u00a0°C (41\u00a0°F) added`,
    },
  ],
  figure: ({ values: v, result, say }) => {
    const { known, entries, stopped, endless, longest, longestRule } = result;
    const example = v.castAt === EXAMPLE_CASTING;
    const passed = passedFrostWords(known, v.castAt, say);
    const endsAt = (ends: number) => roundMoment(clockAfter(v.castAt, ends), 'hour-up');
    const rows = entries.map(({ rule, ends }) => ({
      name: RULES[rule],
      ends: ends === undefined ? undefined : endsAt(ends) - v.castAt,
    }));
    // One date: what ends sooner, or asks for another part, would have it uncovered too soon.
    const date: CalendarDate | undefined =
      stopped || endless
        ? undefined
        : {
            uid: `${longestRule}-${Math.round(v.castAt)}-${Math.round(longest)}@curing-plan.invalid`,
            at: endsAt(longest),
            title: `${example ? 'Example: curing' : 'Curing'} may end, by the longest of three rules: ${RULES[longestRule]}`,
            text: `${example ? 'The casting date is the example’s, nobody’s own. ' : ''}${passed ? `${passed} ` : ''}Cast ${momentInWords(v.castAt)}. By this rule the part has been kept damp for ${(longest / DAY).toFixed(1)} days, the longest of the three. Rules for ordinary concrete; look at the part before you uncover it.`,
          };
    return (
      <>
        <PlanChart rows={rows} castAt={v.castAt} date={date} stopped={stopped} example={example} />
        <p class="on-paper">{`Worked out for ${span(result, say)}, ${GAIN_WORDS[v.gain]}, ${BINDER_WORDS[v.binder]}; cast ${momentInWords(v.castAt)}.`}</p>
      </>
    );
  },
  tables: [
    {
      caption: 'The rules side by side',
      columns: ['Rule', 'How long', 'Until'],
      rows: ({ entries, stopped }, v, say) =>
        entries.map(({ rule, ends, notes }) => [
          RULES[rule],
          ends === undefined ? '—' : say(ends, 'time', { units: DAYS, significant: 2 }),
          [
            ...(ends === undefined
              ? []
              : [
                  `${stopped ? 'not before ' : ''}${momentInWords(clockAfter(v.castAt, ends), 'hour-up')}`,
                ]),
            ...notes.flatMap(({ code }) =>
              SETS[code] ? ofSet(SETS[code], v.set, say) : (WHY[code] ?? []),
            ),
          ].join('; '),
        ]),
    },
  ],
  cautions: ['frost-and-heat', 'caustic-slurry'],
  defers: [
    'The local code and the specification decide, where there is one; the part’s own surface tells when it is dry too soon.',
  ],
  sources: [
    'din-1045-3',
    'nhbc-3-1-15',
    'aci-308r',
    'en-13670',
    'en-1992-1-1',
    'fhp-1977',
    'common-practice',
  ],
});
