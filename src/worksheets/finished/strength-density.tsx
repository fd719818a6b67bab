import { REFERENCE_AGE } from '../../core/curing/strength-growth.ts';
import { demand } from '../../core/domain-error.ts';
import { FLEXURAL_RATIO, flexuralFromCompressive } from '../../core/finished/flexural.ts';
import {
  STRENGTH_RELATIONS,
  type StrengthBand,
  strengthBand,
} from '../../core/finished/strength-band.ts';
import { lines } from '../../islands/fields/lines.tsx';
import { choice, number } from '../../islands/fields.ts';
import { worksheet } from '../../islands/worksheet.ts';
import { barAge, barMean } from '../shared/part/bar-fields.ts';
import { FEW } from '../shared/part/bars-doubt.ts';
import { densitiesDoubt } from '../shared/part/densities-doubt.ts';
import { dryDensity, wetDensity } from '../shared/part/part-densities.ts';
import { STRENGTH_TABLE, strengthName, strengthRows } from '../shared/part/strength-rows.ts';
import { DAYS, KPA } from '../shared/words/amounts.ts';
import { StrengthChart } from './drawn/StrengthChart.tsx';

/** The source whose figure is the upper end. */
const setBy = ({ relations, high }: Extract<StrengthBand, { known: true }>) => {
  return strengthName(relations.find((relation) => (relation.high ?? relation.low) === high)!);
};
/** A strength as tested, or between what it may be, Pa, of a piece of a dry density, kg/m³. */
interface Tested {
  readonly density: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Where a test lies in the band for its own density. Only the dry density of a piece is known; its
 * wet density is assumed to have the same ratio to that as in `mix`, the fields of the page.
 */
function lies(
  { density, low, high }: Tested,
  mix: { readonly wet: number; readonly dry: number },
): 'below' | 'within' | 'above' | 'unknown' {
  const wetDensity = Math.max(density, mix.wet * (density / mix.dry));
  const band = strengthBand({ wetDensity, ovenDryDensity: density });
  if (!band.known) return 'unknown';
  if (high < band.low) return 'below';
  return band.high !== null && low > band.high ? 'above' : 'within';
}

const [LEAST_RATIO, MOST_RATIO] = [FLEXURAL_RATIO.cellular.low, FLEXURAL_RATIO.foamed.high];

const are = (count: number) => (count === 1 ? '1 is' : `${count} are`);

/** How many tests lie outside the band of their density, in words. */
const outside = (below: number, above: number, unknown: number) =>
  [
    ...(below > 0 ? [`${are(below)} below what is published for the density`] : []),
    ...(above > 0
      ? [`${are(above)} above ${below > 0 ? 'it' : 'what is published for the density'}`]
      : []),
    ...(unknown > 0 ? [`${are(unknown)} of a density for which nothing is published`] : []),
  ].join(', ');

export default worksheet({
  id: 'strength-density',
  question: 'How strong is it likely to be?',
  fields: {
    wet: wetDensity,
    dry: dryDensity,
    own: choice({
      label: 'Tests of my own',
      options: {
        none: 'None',
        bars: 'Bars broken in bending',
        crushed: 'Crushed pieces',
      },
      example: 'none',
      follows: { 'part.flexural': 'bars' },
    }),
    flexural: { ...barMean, when: { own: ['bars'] } },
    age: { ...barAge, when: { own: ['bars'] } },
    crushedAge: number('time', {
      label: 'Age of the pieces when crushed',
      example: '28 d',
      min: '12 h',
      max: '3650 d',
      units: DAYS,
      when: { own: ['crushed'] },
    }),
    crushed: lines({
      label: 'Pieces crushed',
      help: 'A laboratory’s, or your own with a press whose force is known.',
      of: {
        density: number('density', {
          label: 'Dry density',
          example: '465 kg/m3',
          min: '50 kg/m3',
          max: '2500 kg/m3',
        }),
        strength: number('stress', {
          label: 'Strength',
          example: '0.9 MPa',
          min: '0.001 MPa',
          max: '100 MPa',
        }),
      },
      example: '465\t0.9\n470\t1.1\n452\t0.8',
      most: 60,
      when: { own: ['crushed'] },
    }),
  },
  work: ({ wet, dry, own, flexural, age, crushedAge, crushed }) => {
    const band = strengthBand({ wetDensity: wet, ovenDryDensity: dry });
    demand('wet', band.known ? 0 : wet, 'density', { max: 0 }, 'no-source');
    const known = band as Extract<typeof band, { known: true }>;
    const tested: readonly Tested[] = {
      none: [],
      // The compressive strength that would go with what the bars bore.
      bars: [{ density: dry, low: flexural / MOST_RATIO, high: flexural / LEAST_RATIO }],
      crushed: crushed.map(({ density, strength }) => ({ density, low: strength, high: strength })),
    }[own];
    const tests = tested.map((test) => ({ ...test, lies: lies(test, { wet, dry }) }));
    const high = known.high ?? Math.max(...known.relations.map(({ low }) => low));
    const testedAt = own === 'bars' ? age : crushedAge;
    // Days and hours of one length differ in their last digit.
    const young = testedAt < REFERENCE_AGE - 1 ? testedAt : undefined;
    return { ...known, tests, young, flexural: flexuralFromCompressive({ low: known.low, high }) };
  },
  results: {
    low: {
      label: 'Compressive strength, from',
      kind: 'stress',
      of: (r) => r.low,
      significant: 2,
    },
    high: {
      label: 'Compressive strength, up to',
      kind: 'stress',
      of: (r) => r.high ?? undefined,
      significant: 2,
      answer: true,
      note: 'at 28 days; a band, never a promise',
    },
    bendLow: {
      label: 'In bending, from',
      kind: 'stress',
      of: (r) => r.flexural.low,
      units: KPA,
      significant: 2,
    },
    bendHigh: {
      label: 'In bending, up to',
      kind: 'stress',
      of: (r) => r.flexural.high,
      units: KPA,
      significant: 2,
      note: '0.22 to 0.35 of the above, from memory',
    },
    relations: {
      label: 'Sources that cover this density',
      kind: 'count',
      of: (r) => r.relations.length,
      decimals: 0,
    },
  },
  doubts: (_, { wet, dry }, say) => densitiesDoubt(wet, dry, say),
  judge: (r, { own }, say) => {
    const mpa = (f: number) => say(f, 'stress', { significant: 2 });
    const band = r.high === null ? `at least ${mpa(r.low)}` : `${mpa(r.low)} to ${mpa(r.high)}`;
    if (own === 'none')
      return {
        verdict: 'look',
        say: `Published figures say ${band}. Density alone says no more: break bars of your own. Whatever they give, nothing here may carry a load that matters.`,
      };
    const all = r.tests.length;
    // The mean of bars is of several.
    const counted = own === 'crushed' ? all : FEW;
    const one = counted === 1;
    const [lie, their] = one ? ['Your one test lies', 'its'] : ['All of your tests lie', 'their'];
    const [below, above, unknown] = (['below', 'above', 'unknown'] as const).map(
      (where) => r.tests.filter((test) => test.lies === where).length,
    ) as [number, number, number];
    if (above === all)
      return {
        verdict: 'look',
        say: `${lie} above what is published for ${their} density. Check the force, the sides and the density before you believe it.`,
      };
    if (unknown === all)
      return {
        verdict: 'look',
        say: 'Nothing is published for the density of what you tested, so nothing says whether that is right. Go by the lowest.',
      };
    if (r.young !== undefined)
      return {
        verdict: 'look',
        say: `Tested younger than 28 days, yours are not held against what is published for that age, ${band}. Take them for the age they had; test again at 28 days. Nothing here may carry a load that matters.`,
      };
    if (below === all)
      return {
        verdict: 'stop',
        say: `${lie} below the least that any specification or table here gives for ${their} density; at that above it is ${mpa(r.low)}. Look for a poor cure, old cement, a bad mix or a wrong density; believe ${one ? 'it until others say otherwise' : 'the tests'}.`,
      };
    if (below + above + unknown > 0)
      return {
        verdict: 'look',
        say: `Of your ${all} tests, ${outside(below, above, unknown)}. Look for what sets them apart: the force, the sides, the density, the cure; until you know, go by the lowest.`,
      };
    if (counted < FEW)
      return {
        verdict: 'look',
        say: `${one ? 'Crush three more before you rely on it: your one test agrees' : `Crush another or two: your ${all} tests agree`} with what is published for ${their} density, but ${one ? 'tells nothing of the next' : 'few may by chance; until then, go by the lowest'}. Nothing here may carry a load that matters.`,
      };
    return {
      verdict: 'good',
      say: `Your tests agree with what is published${own === 'bars' ? `, ${band}` : ' for their density'}. Take your own. Nothing here may carry a load that matters.`,
    };
  },
  notes: (r, { own }) => [
    'Mixes of one density lie more than a factor of two apart, by cement, sand, water, foam and cure. The figures are of other people’s mixes.',
    r.high === null
      ? 'Everything published at this density is a least value; none says how strong it may be.'
      : `The upper end is set by ${setBy(r)}. Each source covers densities of its own: where one begins or ends, the band jumps, and its upper end may fall as the mix gets denser. That is the sources’ doing, not the concrete’s.`,
    ...(own === 'crushed' && r.young === undefined
      ? [
          'Each piece is held against the band of its own dry density, its wet density taken to stand to that as the two above do.',
        ]
      : []),
    ...(own === 'bars'
      ? [
          'Bars are drawn as the compressive strength that would go with them at the age they had, over the whole span of published ratios (from memory).',
        ]
      : []),
  ],
  refusals: {
    'no-source': (e, say) =>
      `Wet density: no published figure covers ${say(e.value, 'density')}, with the dry density given. What strength it has is not known here, and no number is shown.`,
  },
  blames: { wetDensity: 'wet', ovenDryDensity: 'dry', compressive: 'wet' },
  working: [
    {
      tex: String.raw`f_c \in \left[\min_i f_i(\rho),\ \max_i f_i(\rho)\right]`,
      put: (r, _, say) =>
        `${r.relations.length} sources cover it: ${say(r.low, 'stress', { significant: 2 })} is the least of them${r.high === null ? '' : `, ${say(r.high, 'stress', { significant: 2 })} the most`}.`,
    },
    {
      tex: String.raw`f_{\text{bend}} = 0.22\ldots0.35\; f_c`,
      put: (r, _, say) =>
        `${say(r.flexural.low, 'stress', { units: KPA, significant: 2 })} to ${say(r.flexural.high, 'stress', { units: KPA, significant: 2 })}`,
    },
  ],
  figure: ({ values, result, say }) => (
    <StrengthChart
      wet={values.wet}
      dry={values.dry}
      low={result.low}
      high={result.high}
      own={result.tests}
      say={say}
    />
  ),
  tables: [
    {
      ...STRENGTH_TABLE,
      rows: ({ relations }, _, say) => strengthRows(relations, say),
    },
  ],
  cautions: ['flying-pieces', 'not-load-bearing', 'who-decides-structure'],
  defers: [
    'No strength here is a design value. What may carry anything is for local code and a licensed structural engineer.',
  ],
  sources: [
    ...new Set([
      ...STRENGTH_RELATIONS.map(({ source }) => source),
      'wong-2026',
      'narayanan-ramamurthy-2000',
      'ramamurthy-2009',
    ]),
  ] as [string, ...string[]],
});
