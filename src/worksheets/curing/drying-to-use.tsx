import {
  DIFFUSIVITY_DOUBT,
  diffusionDryingTime,
  moistureLeft,
  screedDryingTime,
} from '../../core/curing/drying.ts';
import { demand } from '../../core/domain-error.ts';
import { HYDRATE_WATER } from '../../core/mix/oven-dry.ts';
import { choice, number } from '../../islands/fields.ts';
import { worksheet } from '../../islands/worksheet.ts';
import { foamShare } from '../shared/foam/foam-share.ts';
import { cubicMetre } from '../shared/mix/cubic-metre.ts';
import { mixRefusals } from '../shared/mix/mix-refusals.ts';
import { foamDensityField, sandCement, waterCement } from '../shared/mix/recipe.ts';
import { cementDensity, counts } from '../shared/mix/recipe-details.ts';
import { wetDensity } from '../shared/part/part-densities.ts';
import { partThickness } from '../shared/part/part-sides.ts';
import { DAYS, PERCENT } from '../shared/words/amounts.ts';
import { DryingChart } from './drawn/DryingChart.tsx';

const moisture = (label: string, example: string, help = 'Mass of water over dry mass.') =>
  number('ratio', {
    label,
    help,
    example,
    min: '0.1 %',
    max: '200 %',
    units: PERCENT,
    folded: true,
  });

/** An ordinary concrete’s moisture diffusivity, 10⁻¹⁰ m²/s. */
const ORDINARY = 3;

/** Later by less than this is the same day. A choice. */
const WORTH_SAYING = 1.2;

export default worksheet({
  id: 'drying-to-use',
  question: 'When is it dry enough to use?',
  fields: {
    thickness: partThickness,
    faces: choice({
      label: 'It dries from',
      options: { one: 'One face', two: 'Two faces' },
      example: 'two',
    }),
    wet: wetDensity,
    waterCement,
    foamDensity: foamDensityField,
    sandCement: { ...sandCement, folded: true },
    counts,
    cementDensity,
    plannedSurvival: foamShare,
    target: moisture(
      'Dry enough at',
      '4.2 %',
      'Of dry mass: where aerated concrete rests in air of 75\u00a0% humidity, between 2.6\u00a0% at 50\u00a0% and 4.5\u00a0% at 80\u00a0%.',
    ),
    resting: moisture('It would come to rest in this room at', '2.6 %'),
    diffusivity: number('count', {
      label: 'Moisture diffusivity, in 10⁻¹⁰ m²/s',
      help: `${ORDINARY} is an ordinary concrete’s while wet; foamed concrete’s own is not known to us.`,
      example: `${ORDINARY}`,
      min: '0.01',
      max: '1000',
      folded: true,
    }),
  },
  work: (v) => {
    const mix = cubicMetre(v, v.wet);
    const free = mix.water + mix.foamMass - HYDRATE_WATER * mix.cement;
    const initial = free / mix.ovenDryDensity;
    demand('target', v.target, 'ratio', { min: v.resting, aboveMin: true }, 'never-that-dry');
    demand('target', v.target, 'ratio', { max: Math.max(initial, 0) }, 'dry-already');
    const slab = {
      thickness: v.thickness,
      faces: v.faces === 'two' ? 2 : 1,
      diffusivity: v.diffusivity * 1e-10,
    } as const;
    const diffusion = diffusionDryingTime({
      ...slab,
      initial,
      target: v.target,
      resting: v.resting,
    });
    // The rule is told for one face; from two each dries half the depth.
    const rule = screedDryingTime({
      thickness: v.faces === 'two' ? v.thickness / 2 : v.thickness,
    });
    const meanAt = (time: number) =>
      v.resting + (initial - v.resting) * moistureLeft({ ...slab, time });
    // The rule may ask for longer than diffusion at its slowest: of a thin part it does.
    return { rule, diffusion, latest: Math.max(rule, diffusion.latest), initial, meanAt, free };
  },
  results: {
    rule: {
      label: 'By the rule for screeds',
      kind: 'time',
      of: (r) => r.rule,
      units: DAYS,
      significant: 2,
      note: 'in warm, dry, moving air, after curing',
    },
    diffusion: {
      label: 'By diffusion',
      kind: 'time',
      of: (r) => r.diffusion.time,
      units: DAYS,
      significant: 2,
      answer: true,
      note: 'a guess: it may be five times less or more',
    },
    soonest: {
      label: 'Perhaps as soon as',
      kind: 'time',
      of: (r) => r.diffusion.soonest,
      units: DAYS,
      significant: 2,
    },
    latest: {
      label: 'Perhaps as late as',
      kind: 'time',
      of: (r) => r.latest,
      units: DAYS,
      significant: 2,
    },
    initial: {
      label: 'Water in it that can leave, of its dry mass',
      kind: 'ratio',
      of: (r) => r.initial,
      units: PERCENT,
      significant: 2,
    },
  },
  judge: ({ rule, diffusion, latest }, _, say) => {
    const days = (s: number) => say(s, 'time', { units: DAYS, significant: 2 });
    const longest = Math.max(rule, diffusion.time);
    return {
      verdict: 'look',
      say: `Plan for ${days(longest)}, the longer of the two${latest > WORTH_SAYING * longest ? `, and be ready for ${days(latest)}` : ''}. Before you seal or cover it, weigh it until it loses no more from week to week, or read a hygrometer under a sealed box.`,
    };
  },
  notes: (_, { diffusivity }) => [
    'The rule was made for sand and cement screeds.',
    diffusivity === ORDINARY
      ? `The diffusion uses an ordinary concrete’s figure, and is ${DIFFUSIVITY_DOUBT} times out either way, as none is known for foamed concrete.`
      : `The diffusion uses your figure, with ${DIFFUSIVITY_DOUBT} times either way left to it.`,
    'Drying begins when curing ends. A part dried sooner stays weaker and shrinks more.',
  ],
  refusals: {
    'never-that-dry': () =>
      'In that room it never gets so dry: “dry enough” must be above what it comes to rest at.',
    'dry-already': () =>
      'This mix holds less free water than that from the start: aim drier, or check the water/cement ratio.',
    ...mixRefusals,
  },
  folded: 'The mix, how dry, and how fast water moves',
  blames: { wetDensity: 'wet', initial: 'target' },
  working: [
    {
      tex: String.raw`t = 1\ \mathrm{d/mm}\ \text{to}\ 50\ \mathrm{mm},\quad 2\ \mathrm{d/mm}\ \text{beyond}`,
      put: ({ rule }, v, say) =>
        `${say(v.faces === 'two' ? v.thickness / 2 : v.thickness, 'length', { units: { metric: 'mm', us: 'mm' } })} to each face: ${say(rule, 'time', { units: DAYS, significant: 2 })}`,
    },
    {
      tex: String.raw`\frac{u - u_\infty}{u_0 - u_\infty} = \sum_{n=0}^{\infty} \frac{8}{(2n+1)^2\pi^2}\; e^{-\left(\frac{(2n+1)\pi}{2}\right)^2 \frac{D t}{L^2}}`,
      put: ({ initial, diffusion }, v, say) =>
        `u0 = ${say(initial, 'ratio', { units: PERCENT, significant: 2 })}, u = ${say(v.target, 'ratio', { units: PERCENT, significant: 2 })}, u∞ = ${say(v.resting, 'ratio', { units: PERCENT, significant: 2 })}: ${say(diffusion.time, 'time', { units: DAYS, significant: 2 })}`,
    },
  ],
  figure: ({ values: v, result: r, say }) => (
    <DryingChart
      meanAt={r.meanAt}
      target={v.target}
      dry={r.diffusion}
      rule={r.rule}
      until={Math.max(r.rule, r.diffusion.time) * 1.4}
      say={say}
    />
  ),
  cautions: ['falling-and-tipping', 'not-load-bearing'],
  defers: [
    'A hygrometer reading of 75\u00a0% or less, or the covering’s own sheet, decides when it may be covered.',
  ],
  sources: [
    'bs-8204',
    'bs-8204-coverings',
    'code-aster-hsna102',
    'code-aster-ttll01',
    'iso-10456',
    'common-practice',
  ],
});
