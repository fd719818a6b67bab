import {
  STRENGTH_RELATIONS,
  type StrengthBand,
  strengthBand,
} from '../../core/finished/strength-band.ts';
import type { Say } from '../../islands/engine/say.ts';
import { choice, number } from '../../islands/fields.ts';
import { DensityScale } from '../../islands/figures/DensityScale.tsx';
import { worksheet } from '../../islands/worksheet.ts';
import { foamShare } from '../shared/foam/foam-share.ts';
import { isFoam } from '../shared/foam/is-foam.ts';
import { cubicMetre } from '../shared/mix/cubic-metre.ts';
import { mixRefusals } from '../shared/mix/mix-refusals.ts';
import { foamDensityField, sandCement, waterCement } from '../shared/mix/recipe.ts';
import { cementDensity, countsElsewhere } from '../shared/mix/recipe-details.ts';
import { sandTakenAsDry } from '../shared/mix/sand-taken-as-dry.ts';
import { STRENGTH_TABLE, strengthRows } from '../shared/part/strength-rows.ts';
import { judgeBy } from '../shared/words/judge-by.ts';
import { mixDoubts } from './mix-doubts.ts';
import { lighterThanAny, USES, usesNear } from './uses.ts';

/** Below this a thumb leaves its mark, Pa: its push spread over its pad. Common practice, no source. */
const DENTS_BELOW = 0.5e6;

const upperFirst = (words: string) => words[0]!.toUpperCase() + words.slice(1);

/** What densities like it are for, and on what condition. */
const usual = (wet: number, say: Say) =>
  usesNear(wet)
    .map(({ name, density, note }) => `${say(density, 'density')} is for “${name}” (${note})`)
    .join(', ');

export default worksheet({
  id: 'target-density',
  question: 'How dense should it be?',
  fields: {
    by: choice({
      label: 'Choose by',
      options: { use: 'What the part is for', number: 'A wet density' },
      example: 'number',
      bench: 'mix.targetBy',
    }),
    use: choice({
      label: 'The part',
      help: 'Each stands for one density, common practice with no source.',
      options: Object.fromEntries(
        Object.entries(USES).map(([key, { name }]) => [key, name]),
      ) as Record<keyof typeof USES, string>,
      example: 'insulation',
      bench: 'mix.use',
      when: { by: ['use'] },
    }),
    density: number('density', {
      label: 'Wet density',
      help: 'Its weight per volume as it goes into the form, as the bucket on the scale shows it.',
      example: '600 kg/m3',
      min: '200 kg/m3',
      max: '2000 kg/m3',
      bench: 'mix.targetDensity',
      when: { by: ['number'] },
    }),
    waterCement,
    counts: countsElsewhere,
    sandCement,
    foam: foamDensityField,
    cementDensity,
    plannedSurvival: foamShare,
  },
  folded: 'The cement, and the foam that survives',
  work: ({ by, use, density, foam, ...planned }) => {
    const wet = by === 'use' ? USES[use].density : density;
    const mix = cubicMetre({ ...planned, foamDensity: foam }, wet);
    // What is published is of mixes made with foam.
    const band: StrengthBand = isFoam(foam)
      ? strengthBand({ wetDensity: wet, ovenDryDensity: mix.ovenDryDensity })
      : { known: false, relations: [] };
    return { wet, mix, band, base: mix.baseDensity };
  },
  results: {
    wet: { label: 'Wet density to aim for', kind: 'density', of: (r) => r.wet },
    dry: {
      label: 'Oven-dry density to expect',
      kind: 'density',
      of: (r) => r.mix.ovenDryDensity,
    },
    low: {
      label: 'Compressive strength, from',
      kind: 'stress',
      of: (r) => (r.band.known ? r.band.low : undefined),
      significant: 2,
    },
    high: {
      label: 'Compressive strength, up to',
      kind: 'stress',
      of: (r) => (r.band.known ? (r.band.high ?? undefined) : undefined),
      significant: 2,
      note: 'a band from published figures, class minima among them; never a promise for your mix',
    },
  },
  judge: (r, { by, use, foam }, say) => {
    const doubts = mixDoubts(r.mix, foam, say);
    if (!r.band.known && isFoam(foam))
      doubts.push({
        verdict: 'stop',
        say: `No published figure covers ${say(r.wet, 'density')} wet, ${say(r.mix.ovenDryDensity, 'density')} dry. What strength it reaches is not known here.`,
      });
    const fit =
      by === 'use'
        ? `${upperFirst(USES[use].note)}. `
        : `By common practice ${usual(r.wet, say)}${lighterThanAny(r.wet) ? '; yours is lighter and softer still' : ''}. `;
    const soft =
      r.band.known && r.band.low < DENTS_BELOW
        ? `The least any specification or table here gives is ${say(r.band.low, 'stress', { significant: 2 })}: so weak, a thumb dents it and corners break. `
        : '';
    return judgeBy(doubts, {
      verdict: 'good',
      say: `${fit}${soft}For parts that carry nothing but themselves. Never a lintel, beam, stair, foundation or retaining wall, and nothing that people stand or walk on.`,
    });
  },
  notes: (r, v, say) => [
    ...(r.band.known
      ? [
          r.band.high
            ? `Published figures at one density lie more than a factor of two apart: ${say(r.band.low, 'stress', { significant: 2 })} is the least and ${say(r.band.high, 'stress', { significant: 2 })} the most of the ${r.band.relations.length} that cover this one.`
            : 'Only the least of the published figures covers this density.',
        ]
      : []),
    ...(v.counts === 'total'
      ? ['The water/cement ratio counts all water here, as in “What goes into the batch?”.']
      : []),
    ...sandTakenAsDry(v),
  ],
  refusals: mixRefusals,
  blames: { wetDensity: 'density', foamDensity: 'foam' },
  keeps: { wet: 'mix.wetDensity' },
  // The batch may be aimed otherwise.
  givesWay: { wet: 'mix.planned', dry: 'part.dryDensity' },
  working: [
    {
      tex: String.raw`\rho_{\text{dry}} = \frac{1.2\,C + A}{V}`,
      put: ({ mix }, { sandCement }, say) =>
        `ρdry = 1.2 × ${say(mix.cement / mix.volume, 'density')} + ${say((sandCement * mix.cement) / mix.volume, 'density')} = ${say(mix.ovenDryDensity, 'density')}. A fifth of the cement’s mass stays as bound water.`,
    },
  ],
  figure: ({ result, say }) => (
    <DensityScale
      title="Target, between foam and base mix"
      from={0}
      to={2200}
      bands={[]}
      marks={[
        { at: result.base, label: 'base mix', role: 'plain' },
        { at: result.wet, label: 'wet target', role: 'target' },
        { at: result.mix.ovenDryDensity, label: 'oven-dry', role: 'plain' },
      ]}
      say={say}
    />
  ),
  tables: [
    {
      ...STRENGTH_TABLE,
      rows: ({ band }, _, say) => strengthRows(band.relations, say),
    },
  ],
  cautions: ['not-load-bearing', 'who-decides-structure'],
  defers: [
    'Whether a part may carry anything is for local code and a licensed engineer, never for a density.',
  ],
  sources: [
    ...new Set(['astm-c869', 'common-practice', ...STRENGTH_RELATIONS.map(({ source }) => source)]),
  ] as [string, ...string[]],
});
