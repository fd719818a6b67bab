import { fromUnit } from '../../core/quantity/convert.ts';
import {
  hardnessFromDrops,
  hardnessFromIons,
  hardnessFromTitration,
  hardnessParts,
} from '../../core/water/hardness.ts';
import {
  EXTREMELY_HARD,
  SOFT_ENOUGH,
  softEnoughForFoam,
  tradeClass,
  USGS_CLASS_ENDS,
  usgsClass,
} from '../../core/water/hardness-class.ts';
import type { Say } from '../../islands/engine/say.ts';
import { choice, number } from '../../islands/fields.ts';
import { worksheet } from '../../islands/worksheet.ts';
import { ALKALINITY } from '../shared/words/amounts.ts';
import { saidApart } from '../shared/words/said-apart.ts';
import { BRINE, brineSaid, FIT } from './brine.ts';
import { HardnessBar } from './drawn/HardnessBar.tsx';
import { softenedOrSlip } from './softened-or-slip.ts';
import { calcium, magnesium } from './two-ions.ts';

/** What was read stands in the working as it was read: 95 mg/L, not 95.0. */
const READ = { plain: true, significant: 3 } as const;
const SAMPLE = { metric: 'mL', us: 'mL' } as const;
const NAMES = {
  soft: 'soft',
  'moderately-hard': 'moderately hard',
  hard: 'hard',
  'very-hard': 'very hard',
  'extremely-hard': 'extremely hard, as the trade calls it',
} as const;

const asCarbonate = (milligrams: number) => fromUnit(milligrams, 'hardness', 'mg/L CaCO3');
/** A hardness past one of these is called by another name, mol/m³. */
const ENDS = USGS_CLASS_ENDS.map(([, end]) => asCarbonate(end));
/** A sample this large, m³, is titrated only where there is less hardness than that in it. From memory. */
const [LARGE_SAMPLE, LITTLE] = [250e-6, asCarbonate(5)];
const EXTREME = asCarbonate(EXTREMELY_HARD);
/**
 * Tap water commonly has up to so many German degrees, while only rain has so few mg/L. Common
 * practice, no source.
 */
const MOST_DEGREES = 30;

/**
 * The hardness, mol/m³, if a number typed without a unit and read as few mg/L was meant in °dH;
 * undefined if that is soft enough for foam too.
 */
function perhapsDegrees(total: number, typed: string): number | undefined {
  const number = Number(typed.trim().replace(',', '.'));
  const inDegrees = fromUnit(number, 'hardness', 'dH');
  // A text with a unit in it is no number; one in another unit that was picked is another amount.
  return number <= MOST_DEGREES &&
    Math.abs(total - asCarbonate(number)) < asCarbonate(1e-6) &&
    !softEnoughForFoam(inDegrees)
    ? inDegrees
    : undefined;
}

export default worksheet({
  id: 'water-hardness',
  question: 'How hard is my water, and where may I use it?',
  fields: {
    method: choice({
      label: 'What do you have?',
      options: {
        total: 'A total hardness, in any unit',
        ions: 'Ca and Mg, from a report',
        drops: 'A drop kit',
        titration: 'A laboratory titration with EDTA',
      },
      example: 'ions',
      bench: 'water.method',
    }),
    total: number('hardness', {
      label: 'Total hardness',
      help: 'Pick the unit first, or type it behind the number: 17 °dH.',
      example: '311 mg/L CaCO3',
      plusMinus: '15 mg/L CaCO3',
      min: '0 mg/L CaCO3',
      // Past sea water: it is told what it is, not that its number is too large.
      max: '15000 mg/L CaCO3',
      bench: 'water.total',
      when: { method: ['total'] },
    }),
    calcium: { ...calcium, when: { method: ['ions'] } },
    magnesium: { ...magnesium, when: { method: ['ions'] } },
    drops: number('count', {
      label: 'Drops to the colour change',
      example: '17',
      plusMinus: '1',
      min: '0',
      max: '500',
      whole: true,
      bench: 'water.drops',
      when: { method: ['drops'] },
    }),
    perDrop: number('hardness', {
      label: 'One drop stands for',
      help: 'It is printed on the kit.',
      example: '1 °dH',
      min: '0 °dH',
      aboveMin: true,
      max: '100 °dH',
      units: { metric: 'dH', us: 'gpg' },
      bench: 'water.perDrop',
      when: { method: ['drops'] },
    }),
    titrant: number('volume', {
      label: 'EDTA used',
      example: '31.1 mL',
      plusMinus: '0.1 mL',
      min: '0 mL',
      max: '250 mL',
      units: SAMPLE,
      bench: 'water.titrant',
      when: { method: ['titration'] },
    }),
    titre: number('amountConcentration', {
      label: 'EDTA strength',
      example: '0.01 mol/L',
      min: '0 mol/L',
      aboveMin: true,
      max: '1 mol/L',
      units: { metric: 'mol/L', us: 'mol/L' },
      bench: 'water.titre',
      when: { method: ['titration'] },
    }),
    sample: number('volume', {
      label: 'Sample',
      example: '100 mL',
      min: '1 mL',
      max: '1000 mL',
      units: SAMPLE,
      bench: 'water.sample',
      when: { method: ['titration'] },
    }),
    alkalinity: number('hardness', {
      label: 'Alkalinity, if you know it',
      help: 'As CaCO₃. It splits hardness into what boiling removes and what it leaves.',
      example: '240 mg/L CaCO3',
      min: '0 mg/L CaCO3',
      max: '5000 mg/L CaCO3',
      units: ALKALINITY,
      optional: true,
      bench: 'water.alkalinity',
    }),
    soft: number('hardness', {
      label: 'The softest water at hand',
      help: 'Rain, distilled or softened. A clean butt is often near 10\u00a0mg/L (0.6\u00a0gpg), from memory.',
      example: '12 mg/L CaCO3',
      min: '0 mg/L CaCO3',
      max: '5000 mg/L CaCO3',
      optional: true,
      bench: 'water.soft',
    }),
  },
  work: ({ method, alkalinity, soft, ...v }, pm, typed) => {
    const ions = method === 'ions' ? hardnessFromIons(v) : undefined;
    const total =
      method === 'total'
        ? v.total
        : method === 'drops'
          ? hardnessFromDrops(v)
          : (ions?.total ?? hardnessFromTitration(v));
    // Alkalinity as CaCO₃ counts two equivalents a mole.
    const parts =
      alkalinity === undefined ? undefined : hardnessParts({ total, alkalinity: 2 * alkalinity });
    const large = method === 'titration' && v.sample > LARGE_SAMPLE && total > LITTLE;
    const within =
      method === 'total'
        ? pm.total
        : method === 'drops'
          ? pm.drops * v.perDrop
          : ions
            ? hardnessFromIons(pm).total
            : (total * pm.titrant) / v.titrant;
    // No further past what foam is made with than its own ± reaches.
    const near = !softEnoughForFoam(total) && softEnoughForFoam(Math.max(0, total - within));
    const trade = tradeClass(total);
    const degrees = method === 'total' ? perhapsDegrees(total, typed?.('total') ?? '') : undefined;
    return {
      total,
      degrees,
      ions,
      parts,
      soft,
      large,
      near,
      most: total + within,
      alkalinity,
      trade,
    };
  },
  results: {
    total: {
      label: 'Total hardness',
      kind: 'hardness',
      of: (r) => r.total,
      sure: true,
      aboutZero: 'good',
    },
    german: hardnessIn('dH', 'German degrees'),
    grains: hardnessIn('gpg', 'Grains per US gallon'),
    // Kept, so that other pages know that nobody has told the two apart.
    together: {
      ...hardnessIn('mmol/L', 'Calcium and magnesium together'),
      of: (r) => (r.ions ? undefined : r.total),
    },
    carbonate: {
      label: 'Carbonate hardness',
      kind: 'hardness',
      of: (r) => r.parts?.carbonate,
      note: 'boiling takes most of it out',
    },
    nonCarbonate: {
      label: 'Non-carbonate hardness',
      kind: 'hardness',
      of: (r) => r.parts?.nonCarbonate,
      note: 'boiling leaves it in',
    },
  },
  // Beside an alkalinity that belies it, it is asked for its unit in any case.
  doubts: ({ total, degrees, alkalinity }, _, say) =>
    degrees === undefined || softenedOrSlip(total, alkalinity, '', say)
      ? undefined
      : `Look again at the unit of ${say(total, 'hardness', READ)}: if it is °dH, it is ${say(degrees, 'hardness', { significant: 3 })}, ${NAMES[tradeClass(degrees)]}. Type the unit behind the number.`,
  judge: ({ total, soft, trade, large, near, most, alkalinity }, { sample }, say) => {
    if (total > BRINE) return { verdict: 'stop', say: brineSaid(total, say) };
    const hard = (si: number, plain = false) =>
      saidApart(si, 'hardness', [...ENDS.filter((end) => end < si), EXTREME], say, {
        significant: 3,
        plain,
      });
    const is = `${hard(total)} is ${NAMES[trade]}`;
    // Hardness alone does no harm to cement; what comes with that much of it may.
    const extreme = trade === 'extremely-hard';
    const base = extreme ? `before it mixes cement, ask ${FIT}` : 'use this water for the base mix';
    const fit = softEnoughForFoam(total);
    if (fit && large)
      return {
        verdict: 'look',
        say: `Look at the sample: ${say(sample, 'volume', { units: SAMPLE })} is taken only of water below ${say(LITTLE, 'hardness')} (from memory), and this comes to ${hard(total)}.`,
      };
    const doubt = softenedOrSlip(total, alkalinity, 'use it for the foam', say);
    if (doubt) return { verdict: 'look', say: doubt };
    // Past a whole class of the survey's, not only past the line.
    if (fit && usgsClass(most) === 'very-hard')
      return {
        verdict: 'look',
        say: `Test again, closer, or make the foam with softer water: within its ± this one may be very hard, as much as ${hard(most)}.`,
      };
    if (fit)
      return {
        verdict: 'good',
        say: `${is}. Use it for the foam and for the base mix.`,
      };
    const aimed = near
      ? ` If you softened or blended it to ${say(SOFT_ENOUGH, 'hardness')}, use it for the foam: it is as near that as this test can tell.`
      : '';
    if (soft === undefined)
      return {
        verdict: 'look',
        say: `${is}. Make the foaming solution with rain, distilled or softened water; ${base}.${aimed}`,
      };
    if (softEnoughForFoam(soft))
      return {
        verdict: extreme ? 'look' : 'good',
        say: `${is}. Make the foaming solution with the soft water (${hard(soft, true)}); ${base}.${aimed}`,
      };
    const softest = soft > total ? 'harder' : soft < total / 2 ? 'still hard' : 'not much softer';
    return {
      verdict: usgsClass(Math.min(soft, total)) === 'very-hard' ? 'stop' : 'look',
      say: `${is}, and the softest water you name (${hard(soft, true)}) is ${softest}. Find rain, distilled or softened water for the foam before you spend concentrate; ${base}.${aimed}`,
    };
  },
  notes: ({ total }, { method }, say) => [
    ...(method === 'drops' || method === 'titration'
      ? [
          'The buffer such a test is done in is commonly a strong solution of ammonia (from memory): goggles and gloves, open it in fresh air, and read the kit’s own sheet.',
        ]
      : []),
    'Hardness wastes soap: two molecules for every calcium or magnesium ion. Synthetic and protein concentrates do not fall out in this way; only its sheet says what each bears.',
    ...bySurvey(total, say),
  ],
  keeps: { total: 'water.hardness', together: 'water.together' },
  working: [
    {
      tex: String.raw`H = \frac{c_{\text{Ca}}}{M_{\text{Ca}}} + \frac{c_{\text{Mg}}}{M_{\text{Mg}}}`,
      put: (r, v, say) =>
        r.ions
          ? `H = ${say(v.calcium, 'concentration', READ)} ÷ 40.078\u00a0g/mol + ${say(v.magnesium, 'concentration', READ)} ÷ 24.305\u00a0g/mol = ${say(r.total, 'hardness', { units: { metric: 'mmol/L', us: 'mmol/L' } })}`
          : `Read directly: ${say(r.total, 'hardness', { units: { metric: 'mmol/L', us: 'mmol/L' } })} of calcium and magnesium together.`,
    },
    {
      tex: String.raw`H_{\text{as CaCO}_3} = H \times 100.0869\ \text{g/mol}`,
      put: (r, _, say) =>
        `${say(r.total, 'hardness', { units: { metric: 'mmol/L', us: 'mmol/L' } })}\u00a0×\u00a0100.0869\u00a0g/mol = ${say(r.total, 'hardness')}`,
    },
  ],
  figure: ({ result: { total, soft, ions, parts }, say }) => (
    <HardnessBar total={total} soft={soft} ions={ions} parts={parts} say={say} />
  ),
  cautions: ['stored-rainwater'],
  defers: [
    'The concentrate’s own sheet says what water it needs; the laboratory’s report outranks a drop kit.',
  ],
  sources: ['standard-methods-2340b', 'usgs-hardness', 'hardness-definitions', 'common-practice'],
});

interface Found {
  readonly total: number;
}

function hardnessIn(unit: string, label: string) {
  return {
    label,
    kind: 'hardness',
    of: (r: Found) => r.total,
    units: { metric: unit, us: unit },
  } as const;
}

function bySurvey(total: number, say: Say): string[] {
  return tradeClass(total) === 'extremely-hard'
    ? [
        `No survey’s class was found above ${say(asCarbonate(180), 'hardness')}; makers call water near ${say(EXTREME, 'hardness', { significant: 2 })} extremely hard (common practice, no source). Yours is ${say(total, 'hardness')}.`,
      ]
    : [];
}
