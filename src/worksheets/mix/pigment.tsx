import { PIGMENT_CEILING, PIGMENT_USUAL, pigmentMass } from '../../core/mix/pigment.ts';
import type { Say } from '../../islands/engine/say.ts';
import { number } from '../../islands/fields.ts';
import { worksheet } from '../../islands/worksheet.ts';
import { PERCENT, SMALL_MASS } from '../shared/words/amounts.ts';
import { DoseBar } from './drawn/DoseBar.tsx';
import { pigmentDoubt } from './pigment-doubt.ts';
import { pigmentShare } from './pigment-share.ts';

/** Below this mass, kg, a gram is more than a twentieth. A choice, no source. */
const LITTLE = 0.02;

/** What a load's pigment is weighed to, kg. */
const weighedTo = (mass: number, say: Say): string =>
  mass < LITTLE
    ? `${say.system === 'us' ? '0.005\u00a0oz' : '0.1\u00a0g'}, on a finer scale than a kitchen’s`
    : say.system === 'us'
      ? '0.05\u00a0oz'
      : 'the gram';

const percent = (share: number) => share * 100;

export default worksheet({
  id: 'pigment',
  question: 'How much pigment?',
  fields: {
    cement: number('mass', {
      label: 'Cement and its stand-ins in the load',
      help: 'Slag, fly ash and silica fume count.',
      example: '13.57 kg',
      min: '0 kg',
      aboveMin: true,
      max: '10 t',
      takes: 'mix.loadCement',
    }),
    share: pigmentShare,
    own: number('ratio', {
      label: 'The pigment’s own maximum',
      help: 'From its sheet; of a blend, the lowest of its parts.',
      example: '10 %',
      min: '0 %',
      aboveMin: true,
      max: '100 %',
      units: PERCENT,
      folded: true,
    }),
    loads: number('count', {
      label: 'Loads that must match',
      usual: true,
      example: '3',
      min: '1',
      // As many as core shares a batch into.
      max: '10000',
      whole: true,
      takes: 'mix.loads',
      folded: true,
    }),
  },
  work: (v) => {
    const dose = pigmentMass({ cementitious: v.cement, share: v.share, ownMaximum: v.own });
    return { dose, all: dose.mass * v.loads };
  },
  results: {
    mass: { label: 'Pigment for a load', kind: 'mass', of: (r) => r.dose.mass, units: SMALL_MASS },
    all: { label: 'Pigment for all the loads', kind: 'mass', of: (r) => r.all, units: SMALL_MASS },
    most: {
      label: 'Pigment in a load, at most',
      kind: 'mass',
      of: (r) => r.dose.most,
      units: SMALL_MASS,
    },
  },
  judge: ({ dose }, { share }, say) =>
    pigmentDoubt(dose, say) ?? {
      verdict: 'good',
      say:
        share > 0
          ? `Within the usual range. Weigh it to ${weighedTo(dose.mass, say)}, the same for every load, and stir it into the mixing water before the cement.`
          : 'No pigment: the part keeps the colour of its cement.',
    },
  folded: 'Its own maximum, and how many loads',
  blames: { cementitious: 'cement', pigmentShare: 'share', ownMaximum: 'own' },
  working: [
    {
      tex: String.raw`m = d\,C_{\text{all}} \qquad d \le 10\,\%`,
      put: ({ dose }, v, say) =>
        `m = ${say(v.share, 'ratio', { units: PERCENT })} × ${say(v.cement, 'mass')} = ${say(dose.mass, 'mass', { units: SMALL_MASS })}`,
    },
  ],
  figure: ({ values }) => (
    <DoseBar
      title="Pigment, of cement and stand-ins"
      dose={percent(values.share)}
      usual={[percent(PIGMENT_USUAL.min), percent(PIGMENT_USUAL.max)]}
      ceiling={percent(PIGMENT_CEILING)}
    />
  ),
  cautions: ['pigment-dust'],
  defers: ['The pigment’s own sheet, and a piece cast, cured and dried, decide the colour.'],
  sources: ['astm-c979', 'csce-rfi-2019', 'pigment-practice', 'en-12878'],
});
