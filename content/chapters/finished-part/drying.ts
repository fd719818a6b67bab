import type { AmountProps } from '~/components/prose/amount.ts';
import { percent, toTenth } from '~/components/prose/percent.ts';
import { ABSORPTION_BY_MASS, C869_ABSORPTION_LIMIT } from '~/core/finished/absorption.ts';
import { FROST } from '~/core/finished/frost.ts';
import { POWERS_2001, powersVolumes } from '~/core/finished/powers.ts';
import type { PublishedRange } from '~/core/finished/published-range.ts';
import { DRYING_SHRINKAGE } from '~/core/finished/shrinkage.ts';
import { MIX_WATER_DENSITY } from '~/core/mix/densities.ts';
import { demo } from '~/worksheets/demo.ts';
import { demoCube } from '~/worksheets/demo-worked.ts';
import { TEST_BATCH } from '../mix/proportion.ts';
import { bar as testBar } from '../placing/how-much.ts';

function published<Row extends { readonly id: string }>(rows: readonly Row[], id: string): Row {
  const row = rows.find((each) => each.id === id);
  if (!row) throw new Error(`Nothing is published as ${id}.`);
  return row;
}

const paste = powersVolumes({
  waterCement: demoCube.waterCementTotal,
  degree: 0.7,
  air: demoCube.airShare,
  inert: 0,
  reaction: POWERS_2001,
  curing: 'sealed',
  waterDensity: MIX_WATER_DENSITY,
});
/** What the demo's part is made of once 70 % of its cement has reacted, by volume. */
export const madeOf = {
  air: percent(paste.air),
  gel: percent(paste.gelSolids + paste.gelWater),
  capillaries: percent(paste.capillaryWater + paste.emptied),
  unhydrated: toTenth(paste.unhydrated),
};

const shrinkage = (id: string) => published(DRYING_SHRINKAGE, id);
/** `0.25 to 0.30 %` */
const shares = ({ low, high }: PublishedRange) =>
  `${(100 * low).toFixed(2)} to ${percent(high, { decimals: 2 })}`;
function densities({ id, density }: PublishedRange): AmountProps {
  if (!density) throw new Error(`What is published as ${id} has no density.`);
  return { value: [density.min, density.max], kind: 'density', decimals: 0 };
}
const row = (id: string) => [densities(shrinkage(id)), shares(shrinkage(id))];

export const shrinkageReviewed = [
  ['w/c 0.5, 90 days', ...row('review-44')],
  ['several mixes', ...row('review-95')],
  ['several mixes, 90 days', ...row('review-96')],
  ['with fly ash, 28 days', ...row('review-99')],
  ['with polymer fibres', ...row('review-92')],
  ['fly ash and sand, a year', ...row('review-94')],
  ['sanded, 28 days: an outlier', ...row('review-97')],
];
export const shrinkageTabled = ['bca-400', 'bca-800', 'bca-1600'].map(row);

const firstReviewed = shrinkage('review-44');
const shortens = (length: number) =>
  [firstReviewed.low * length, firstReviewed.high * length] as const;
/** How much the demo's slab and its test bars lose of their length, m. */
export const slabShortens = shortens(demo.slab.length);
export const bar = { length: testBar.length, shortens: shortens(testBar.length) };

const absorbed = (id: string) => published(ABSORPTION_BY_MASS, id);
/** Water taken up, of the dry mass unless said. */
export const takesUp = {
  /** Of its volume, at most. */
  testBatch: percent(C869_ABSORPTION_LIMIT),
  testBatchByMass: percent((C869_ABSORPTION_LIMIT * MIX_WATER_DENSITY) / TEST_BATCH.dryDensity),
  waterCured: toTenth(absorbed('kado-1500').low),
  airCured: toTenth(absorbed('kado-1800').low),
  blocks: toTenth(absorbed('blocks-800').high),
};

const frost = (id: string) => published(FROST, id).value;
export const burstsAbove = toTenth(frost('critical-saturation'));
/** How many frosts aerated concrete bore. */
export const cycles = { saturated: frost('aac-saturated'), moist: frost('aac-moist') };
