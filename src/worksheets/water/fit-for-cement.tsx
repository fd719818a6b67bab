import type { Constituent } from '../../core/water/mixing-water-limits.ts';
import { WASH_WATER } from '../../core/water/ph-limits.ts';
import type { Say } from '../../islands/engine/say.ts';
import { worksheet } from '../../islands/worksheet.ts';
import { saidApart } from '../shared/words/said-apart.ts';
import { LimitBars } from './drawn/LimitBars.tsx';
import { fitFields } from './fit-fields.ts';
import { fitWorked, type Line, NATURAL } from './fit-worked.ts';

/** Lime water is caustic to 13.0 at the most, cold, at 10 °C: beyond that it is lye. From memory. */
const LYE = 13;
/** What was read stands in the working as it was read: 22 mg/L, not 22.0. */
const READ = { plain: true, significant: 3 } as const;

const NAMES: Readonly<Record<Constituent, string>> = {
  chloride: 'Chloride',
  sulfate: 'Sulfate',
  alkalies: 'Alkalis, Na₂O',
  dissolvedSolids: 'Dissolved solids',
  sugars: 'Sugars',
  phosphate: 'Phosphate, P₂O₅',
  nitrate: 'Nitrate',
  lead: 'Lead',
  zinc: 'Zinc',
  pH: 'pH',
};

export default worksheet({
  id: 'fit-for-cement',
  question: 'Is this water fit to mix cement with?',
  fields: fitFields,
  folded: 'What fewer reports give',
  work: fitWorked,
  results: {
    beyond: { label: 'Limits exceeded', kind: 'count', of: (r) => r.beyond, decimals: 0 },
    unknown: {
      label: 'Limits the report is silent on',
      kind: 'count',
      of: (r) => r.unknown,
      decimals: 0,
    },
    alkalies: {
      label: 'Alkalis, as Na₂O',
      kind: 'concentration',
      of: (r) => r.alkalies,
      note: 'Na₂O + 0.658\u00a0K₂O, from sodium and potassium',
    },
  },
  judge: (r, v, say) => {
    const over = r.judged.filter(({ verdict }) => verdict === 'beyond');
    const coarse = r.judged.filter(({ verdict }) => verdict === 'coarse');
    // Its limit is a least one, so that diluting is no remedy.
    const acid = over.find(({ limit }) => limit.of === 'pH');
    const above = over.filter((line) => line !== acid);
    const listed = namesOf(above);
    const [optional, bind, it] =
      over.length > 1
        ? ['optional limits', 'They bind', 'them']
        : ['an optional limit', 'It binds', 'it'];
    if (v.senses === 'oil')
      return {
        verdict: 'stop',
        say: 'Oil, soap and sugar spoil the set or the bond, and oil kills foam. Do not mix with it, whatever the report says.',
      };
    if ((v.pH ?? 0) > LYE)
      return {
        verdict: 'stop',
        say: 'So caustic a water is lye or strong wash water, or the strip is read too high. Keep it off skin and out of eyes, and do not mix with it until it has passed the comparison test.',
      };
    if (over.some(({ limit }) => !limit.optional))
      return {
        verdict: 'stop',
        say: `${acid ? tooAcid(acid, say) : ''}${listed ? `Beyond a limit: ${listed}. ` : ''}Use another water, ${acid ? '' : 'or dilute it with one that has less, '}or let the comparison test and whoever answers for the part decide.`,
      };
    if (v.senses === 'green')
      return {
        verdict: 'stop',
        say: 'Algae and rot hold back the set and draw in air. Do not mix with it until it has passed the comparison test below, on this very water.',
      };
    if (coarse.length > 0)
      return {
        verdict: 'look',
        say: `The report is too coarse to tell: of ${namesOf(coarse)} it says only that there is less than a figure above the limit. Ask for a finer one, or run the comparison test.${over.length > 0 ? ` Beyond ${optional} of ASTM C1602: ${listed}.` : ''}`,
      };
    if (over.length > 0)
      return {
        verdict: 'look',
        say: `Within EN 1008, beyond ${optional} of ASTM C1602: ${listed}. ${bind} if the buyer asks for ${it}; otherwise run the comparison test.`,
      };
    if (v.senses === 'alive')
      return {
        verdict: 'look',
        say: 'Let it settle, pass it through a fine cloth or sieve, look again. If it stays cloudy, run the comparison test.',
      };
    if ((v.pH ?? 0) > WASH_WATER)
      return {
        verdict: 'look',
        say: 'Natural water is not so caustic: this is wash water or lye. Clear wash water of your own mix may go into the next one; any other only after the comparison test. Gloves and goggles on.',
      };
    if (r.doubted)
      return {
        verdict: 'look',
        say: `The ions of the report come to ${say(r.named, 'concentration')}, more than the ${say(v.dissolvedSolids ?? 0, 'concentration')} it says is dissolved in all. One of these is misread: find out which, or run the comparison test.`,
      };
    if ((r.solids ?? 0) > NATURAL)
      return {
        verdict: 'look',
        say: 'Within every limit the report covers, but it holds more than natural waters do. Find out what that is, or run the comparison test, before it mixes cement.',
      };
    const silent = (['chloride', 'sulfate', 'alkalies'] as const).filter((of) =>
      r.judged.some(({ limit, verdict }) => limit.of === of && verdict === 'unknown'),
    );
    if (silent.length > 0)
      return {
        verdict: 'look',
        say: `Nothing is beyond a limit, but the report is silent on ${silent.map(spoken).join(', ')}. For a well or a stream get ${silent.length > 1 ? 'those' : 'that'}, or run the comparison test.`,
      };
    return {
      verdict: 'good',
      say: 'Within every limit the report covers. Mix cement with it.',
    };
  },
  notes: (r, v, say) => {
    const notes = [
      'Water fit to drink is taken as fit to mix, without a test (common practice). Passing a list of limits is no permission for water of unknown origin: the comparison test decides. Neither standard has a line for bicarbonate, though much of it may change the set: see “Does this hard water set cement faster?”',
    ];
    if (r.solids !== undefined)
      notes.push(
        r.solids <= NATURAL
          ? `${say(r.solids, 'concentration')} of dissolved solids is what natural waters have; up to 2000\u00a0mg/L they are generally suitable.`
          : `${say(r.solids, 'concentration')} of dissolved solids is more than natural waters usually have: find out what they are.`,
      );
    if (v.use !== 'plain')
      notes.push(
        'Steel in foamed concrete is poorly protected whatever the water: the paste is porous. Nothing on this site makes a load-bearing part.',
      );
    return notes;
  },
  blames: { alkalies: 'sodium' },
  working: [
    {
      tex: String.raw`\mathrm{Na_2O_{eq}} = 1.348\,\mathrm{Na} + 0.658 \times 1.205\,\mathrm{K}`,
      put: (r, v, say) =>
        r.alkalies === undefined || v.sodium === undefined || v.potassium === undefined
          ? 'Wants both sodium and potassium.'
          : `1.348 × ${say(v.sodium, 'concentration', READ)} + 0.793 × ${say(v.potassium, 'concentration', READ)} = ${say(r.alkalies, 'concentration')}`,
    },
  ],
  figure: ({ result, say }) => <LimitBars judged={result.judged} names={NAMES} say={say} />,
  tables: [
    {
      caption: 'Line by line, with its clause from memory. A figure from memory says so',
      columns: ['', 'Your report', 'EN 1008', 'ASTM C1602, optional'],
      rows: (r, _, say) =>
        [...new Set(r.judged.map(({ limit }) => limit.of))].map((of) => {
          const lines = r.judged.filter(({ limit }) => limit.of === of);
          const { value, upTo } = lines[0]!;
          const cell = (standard: string) => {
            const line = lines.find(({ limit }) => limit.standard === standard);
            return line ? worded(line, say) : 'no limit';
          };
          return [
            NAMES[of],
            value === undefined ? 'silent' : (upTo ? 'at most ' : '') + amount(of, value, say),
            cell('EN 1008'),
            cell('ASTM C1602'),
          ];
        }),
    },
  ],
  cautions: ['caustic-slurry', 'stored-rainwater'],
  defers: [
    'The standards themselves, in the edition your place applies, and whoever answers for the part.',
  ],
  sources: [
    'en-1008-lecture',
    'en-1008-memory',
    'pca-mixing-water',
    'steinour-pca-119',
    'common-practice',
  ],
});

/** Its name within a sentence: `alkalis`. */
const spoken = (of: Constituent) => (of === 'pH' ? 'pH' : NAMES[of].split(',')[0]!.toLowerCase());

const namesOf = (lines: readonly Line[]) =>
  [...new Set(lines.map(({ limit }) => spoken(limit.of)))].join(', ');

const tooAcid = ({ value = 0, limit: { least = 0 } }: Line, say: Say) =>
  `Too acid: pH\u00a0${saidApart(value, 'count', [least], say, { plain: true })}, where the least allowed is ${say(least, 'count', { plain: true })}. `;

const amount = (of: Constituent, value: number, say: Say) =>
  of === 'pH'
    ? say(value, 'count', { plain: true })
    : say(value, 'concentration', { significant: of === 'alkalies' ? 3 : 4, plain: true });

const VERDICTS = {
  within: 'within',
  beyond: 'BEYOND',
  coarse: 'too coarse for',
  unknown: 'limit',
} as const;

function worded({ limit, verdict }: Line, say: Say): string {
  const bound =
    limit.most !== undefined
      ? ` ${say(limit.most, 'concentration', { decimals: 0 })}`
      : `: at least\u00a0${amount(limit.of, limit.least ?? 0, say)}`;
  const memory = limit.standing === 'from memory' ? ' (from memory)' : '';
  return `${VERDICTS[verdict]}${bound}${memory}, ${limit.clause}`;
}
