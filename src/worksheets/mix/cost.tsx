import { foamingSolution } from '../../core/foam/solution.ts';
import { batchCost } from '../../core/mix/cost.ts';
import { proportion } from '../../core/mix/proportion.ts';
import { wholeOnes } from '../../core/mix/whole.ts';
import { YARD } from '../../core/quantity/constants.ts';
import { justOver, SLIVER } from '../../core/quantity/dust.ts';
import { formatNumber } from '../../core/quantity/format.ts';
import { number } from '../../islands/fields.ts';
import { worksheet } from '../../islands/worksheet.ts';
import { doseOf } from '../shared/foam/dose.ts';
import { glycerol, lanceLoss, otherDose, partsWater, priming } from '../shared/foam/dose-fields.ts';
import { unfitFoam } from '../shared/foam/foam-doubt.ts';
import { BATCH_VOLUME } from '../shared/mix/batch-volume.ts';
import { mixRefusals } from '../shared/mix/mix-refusals.ts';
import { foamDensityField, sandCement, targetDensity, waterCement } from '../shared/mix/recipe.ts';
import { cementDensity, counts } from '../shared/mix/recipe-details.ts';
import { PERCENT } from '../shared/words/amounts.ts';
import { withoutMoney } from '../shared/words/spelt.ts';
import { RankedBars } from './drawn/RankedBars.tsx';
import { plannedSurvival } from './planned-survival.ts';

const price = (label: string, example: string, help?: string) =>
  number('count', {
    label,
    example,
    min: '0',
    max: '1000000',
    spelt: withoutMoney,
    ...(help ? { help } : {}),
  });
/** Money has no kind: the reader’s own, whatever its name. */
const money = (x: number) => formatNumber(x, { decimals: x >= 1000 ? 0 : 2 });
/** What concrete is priced by, m³. */
const LARGE = {
  metric: [1, 'cubic metre'],
  us: [YARD ** 3, 'cubic yard'],
} as const;

export default worksheet({
  id: 'cost',
  question: 'What does it cost, and how much of that is waste?',
  fields: {
    bagPrice: price(
      'A bag of cement costs',
      '7.50',
      'In your money. The prices here are invented.',
    ),
    bag: number('mass', {
      label: 'A bag of cement holds',
      example: '25 kg',
      min: '0.1 kg',
      max: '2 t',
    }),
    concentratePrice: price('Concentrate costs', '6'),
    concentrateSize: number('volume', {
      label: 'Concentrate for that price',
      example: '1 L',
      min: '1 mL',
      max: '1 m3',
    }),
    extras: price(
      'Everything else in the batch',
      '2',
      'Fibre, pigment, glycerol, release, bought water.',
    ),
    volume: number('volume', {
      label: 'Foamed mix to make',
      example: '105.12 L',
      min: '0 L',
      aboveMin: true,
      max: '100 m3',
      ...BATCH_VOLUME,
    }),
    net: number('volume', {
      label: 'Of the mix, in the forms',
      help: 'Like the parts below, by the form worked on last: for several, type what all hold.',
      example: '97.2 L',
      min: '0 L',
      aboveMin: true,
      max: '100 m3',
      takes: 'batch.net',
    }),
    parts: number('count', {
      label: 'Parts',
      example: '12',
      min: '1',
      max: '100000',
      whole: true,
      takes: 'batch.count',
    }),
    sandPrice: { ...price('Sand costs', '0.10'), folded: true },
    sandSize: number('mass', {
      label: 'Sand for that price',
      example: '1 kg',
      min: '1 g',
      max: '2 t',
      folded: true,
    }),
    density: { ...targetDensity, label: 'Wet density', folded: true },
    waterCement: { ...waterCement, folded: true },
    counts,
    sandCement: { ...sandCement, folded: true },
    cementDensity,
    foamDensity: { ...foamDensityField, folded: true },
    plannedSurvival,
    dose: otherDose.dose,
    oneIn: { ...otherDose.oneIn, folded: true },
    percent: { ...otherDose.percent, folded: true },
    kind: otherDose.kind,
    hardness: { ...otherDose.hardness, folded: true },
    soap: { ...otherDose.soap, folded: true },
    content: { ...otherDose.content, folded: true },
    concentrateDensity: otherDose.concentrateDensity,
    partsWater: { ...partsWater, folded: true },
    glycerol: { ...glycerol, folded: true },
    lanceLoss: { ...lanceLoss, folded: true },
    priming: { ...priming, folded: true },
  },
  work: (v) => {
    const mix = proportion({
      volume: v.volume,
      target: { wetDensity: v.density },
      waterCement: v.waterCement,
      waterCementOf: v.counts,
      sandCement: v.sandCement,
      cementDensity: v.cementDensity,
      foamDensity: v.foamDensity,
      survival: v.plannedSurvival,
    });
    const { concentrateVolume } = foamingSolution({
      foamVolume: mix.foamVolume,
      foamDensity: v.foamDensity,
      ...doseOf(v),
      glycerolShare: v.glycerol,
      lanceLoss: v.lanceLoss,
      priming: v.priming,
    });
    const cost = batchCost({
      lines: [
        { name: 'Cement', amount: mix.cement, price: v.bagPrice / v.bag },
        { name: 'Sand', amount: mix.sand, price: v.sandPrice / v.sandSize },
        {
          name: 'Concentrate',
          amount: concentrateVolume,
          price: v.concentratePrice / v.concentrateSize,
        },
        { name: 'Everything else', amount: 1, price: v.extras },
      ],
      parts: v.parts,
      made: v.volume,
      used: v.net,
    });
    return { ...cost, bags: wholeOnes(mix.cement / v.bag) };
  },
  results: {
    perPart: {
      label: 'One part costs',
      kind: 'count',
      of: (r) => r.perPart,
      decimals: 2,
      note: 'in your money',
    },
    total: { label: 'The batch costs', kind: 'count', of: (r) => r.total, decimals: 2 },
    wasted: {
      label: 'Of the batch, waste and what is struck off',
      kind: 'count',
      of: (r) => r.wasted,
      decimals: 2,
    },
    bags: {
      label: 'Bags of cement to open',
      kind: 'count',
      of: (r) => r.bags,
      decimals: 0,
      note: 'the costs count the cement used, not the rest of the last bag',
    },
  },
  judge: (r, v, say) => {
    const unfit = unfitFoam(v.foamDensity, say);
    if (unfit) return unfit;
    const share = 1 - v.net / v.volume;
    const inWords = say(share, 'ratio', { units: PERCENT, significant: 2 });
    const dearest = r.dearest === undefined ? undefined : r.lines[r.dearest];
    if (share > justOver(0.15, SLIVER))
      return {
        verdict: 'look',
        say: `${inWords} of the mix does not end in a part. Have a small form ready for what is left, and take the allowance from your own last batch.`,
      };
    return {
      verdict: 'good',
      say: `${inWords} of the mix is allowance.${dearest ? ` The largest part of the cost, ${say(dearest.share, 'ratio', { units: PERCENT, significant: 2 })}, is ${dearest.name.toLowerCase()}.` : ''}`,
    };
  },
  notes: ({ perVolume }, _, say) => {
    const [size, name] = LARGE[say.system];
    return [
      `A ${name} in the forms costs ${money(perVolume * size)}.`,
      'Materials only. What is left in a bag keeps some weeks, dry and shut.',
    ];
  },
  refusals: {
    'more-used-than-made': () => 'More is in the forms than is made. Check the two volumes.',
    ...mixRefusals,
  },
  folded: 'The recipe behind it',
  blames: { used: 'net', made: 'volume', wetDensity: 'density', price: 'bagPrice' },
  working: [
    {
      tex: String.raw`K = \sum m_i\,k_i \qquad k_{\text{part}} = \frac{K}{n}`,
      put: (r, v) =>
        `K = ${
          r.lines
            .filter(({ cost }) => cost > 0)
            .map(({ name, cost }) => `${name.toLowerCase()} ${money(cost)}`)
            .join(' + ') || 'nothing'
        } = ${money(r.total)}; ÷ ${v.parts} = ${money(r.perPart)} a part`,
    },
  ],
  figure: ({ result }) => (
    <RankedBars
      title="What the money goes on"
      bars={result.lines
        .filter(({ cost }) => cost > 0)
        .map(({ name, cost }) => ({ label: name, size: cost, text: money(cost) }))
        .sort((a, b) => b.size - a.size)}
    />
  ),
  cautions: ['cement-dust', 'alkaline-washout'],
  defers: ['The prices are yours.'],
  sources: ['common-practice'],
});
