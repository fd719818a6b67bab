import { FIBRES, fibreCount, fibreMass, fibreShare } from '../../core/mix/fibres.ts';
import { choice, number } from '../../islands/fields.ts';
import { worksheet } from '../../islands/worksheet.ts';
import { BATCH_VOLUME } from '../shared/mix/batch-volume.ts';
import { PERCENT, SMALL_MASS, SMALL_VOLUME } from '../shared/words/amounts.ts';
import { fibreDoubt } from './fibre-doubt.ts';
import { FIBRE_NAMES } from './fibre-names.ts';

export default worksheet({
  id: 'fibres',
  question: 'How much fibre is that?',
  fields: {
    kind: choice({
      label: 'Fibre',
      options: FIBRE_NAMES,
      example: 'ar-glass',
      bench: 'fibre.kind',
    }),
    by: choice({
      label: 'I know',
      options: { share: 'Per cent of the volume', mass: 'Grams in the batch' },
      example: 'share',
    }),
    share: number('ratio', {
      label: 'Fibre, of the finished mix by volume',
      example: '0.3 %',
      min: '0 %',
      max: '5 %',
      units: PERCENT,
      bench: 'fibre.share',
      when: { by: ['share'] },
    }),
    mass: number('mass', {
      label: 'Fibre in the batch',
      example: '845 g',
      min: '0 g',
      max: '100 kg',
      units: SMALL_MASS,
      when: { by: ['mass'] },
    }),
    volume: number('volume', {
      label: 'Foamed mix to make',
      example: '105.12 L',
      min: '0 L',
      aboveMin: true,
      max: '100 m3',
      ...BATCH_VOLUME,
    }),
    length: number('length', {
      label: 'Length of a fibre',
      example: '12 mm',
      min: '0.1 mm',
      max: '200 mm',
      folded: true,
    }),
    diameter: number('length', {
      label: 'Thickness of a fibre',
      help: 'Of a strand that stays together, the strand’s.',
      example: '0.3 mm',
      min: '0.001 mm',
      max: '5 mm',
      folded: true,
    }),
  },
  work: (v) => {
    const { kind, volume } = v;
    const share = v.by === 'share' ? v.share : fibreShare({ kind, mass: v.mass, volume });
    const dose = fibreMass({ kind, share, volume });
    return {
      share,
      dose,
      count: fibreCount({ share, length: v.length, diameter: v.diameter }),
      volume,
    };
  },
  results: {
    mass: { label: 'Fibre for the batch', kind: 'mass', of: (r) => r.dose.mass, units: SMALL_MASS },
    share: {
      label: 'Fibre in the finished mix, by volume',
      kind: 'ratio',
      of: (r) => r.share,
      units: PERCENT,
      answer: true,
    },
    perVolume: {
      label: 'Fibre content',
      kind: 'density',
      of: (r) => r.dose.mass / r.volume,
    },
    space: {
      label: 'The fibre takes up',
      kind: 'volume',
      of: (r) => r.dose.volume,
      units: SMALL_VOLUME,
    },
    count: {
      label: 'Fibres in a litre, about a quart',
      kind: 'count',
      of: (r) => r.count.perVolume / 1000,
      significant: 2,
    },
    slender: {
      label: 'Length over thickness',
      kind: 'count',
      of: (r) => r.count.slenderness,
      significant: 2,
    },
  },
  judge: ({ share }, { kind }, say) =>
    fibreDoubt(kind, share, say) ?? {
      verdict: 'good',
      say:
        share > 0
          ? 'Drill off, sprinkle some close above the base mix, drill on until each fibre is wet; repeat until all is in, then the foam. It holds corners and fine cracks; it does not make the part carry.'
          : 'No fibre: corners and fine cracks have the paste alone to hold them.',
    },
  notes: (_, { kind }) => [
    ...(FIBRES[kind].tried === undefined && kind !== 'plain-glass'
      ? ['No dose of this fibre in foamed concrete was found for this page: begin low.']
      : []),
    'Long, thin and many fibres ball sooner. No published limit for a mix without stone was found.',
  ],
  refusals: {
    'over-a-tenth': (e, say) =>
      `${say(e.value, 'mass')} of it would take more than a tenth of the volume, which is no dose: that is ${say(e.allowed.max!, 'mass')}. Look at both amounts, and at their units.`,
  },
  folded: 'Size of a fibre',
  blames: { fibreShare: 'mass', fibreMass: 'mass' },
  working: [
    {
      tex: String.raw`m = \varphi\,\rho_\varphi\,V`,
      put: ({ share, dose }, v, say) =>
        `m = ${say(share, 'ratio', { units: PERCENT })} × ${say(FIBRES[v.kind].density, 'density')} × ${say(v.volume, 'volume')} = ${say(dose.mass, 'mass', { units: SMALL_MASS })}`,
    },
  ],
  tables: [
    {
      caption: 'The same dose of other fibres',
      columns: ['Fibre', 'Density', 'For the batch', 'Tried to'],
      rows: ({ share, volume }, _, say) =>
        (Object.keys(FIBRES) as (keyof typeof FIBRES)[]).map((kind) => {
          const { density, tried, triedInOrdinary } = FIBRES[kind];
          const percent = (x: number) => say(x, 'ratio', { units: PERCENT, significant: 2 });
          return [
            FIBRE_NAMES[kind],
            say(density, 'density'),
            say(fibreMass({ kind, share, volume }).mass, 'mass', { units: SMALL_MASS }),
            tried
              ? percent(tried)
              : triedInOrdinary
                ? `${percent(triedInOrdinary)}, in ordinary concrete`
                : 'none found',
          ];
        }),
    },
  ],
  cautions: ['glass-fibre', 'not-load-bearing'],
  defers: [
    'The fibre’s own sheet says what it is, how long it lasts in alkali, and how to handle it.',
  ],
  sources: [
    'ijcsm-2015',
    'en-15422',
    'aci-544-1r',
    'hamad-2015',
    'uow-2021',
    'plain-glass',
    'common-practice',
  ],
});
