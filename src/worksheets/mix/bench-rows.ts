import { EXTREMES } from '../../core/extremes.ts';
import { correctionTable } from '../../core/mix/correction-table.ts';
import { fromUnit, toUnit } from '../../core/quantity/convert.ts';
import type { Say } from '../../islands/engine/say.ts';
import { inTable, overflows } from '../shared/mix/correction-advice.ts';
import { baseWaterCement, type TypedRatio } from '../shared/mix/paste-water.ts';
import { baseCell, correctionColumns } from '../shared/words/one-unit.ts';

/** Steps a scale's reading may be printed in, in the reader's unit. */
export const STEPS = [
  0.001, 0.002, 0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.25, 0.5, 1, 2, 5, 10, 20, 50,
];
const ROWS = 15;
/** The densities a bench sheet covers, as shares of the target: a blend lands heavy more often than light. */
const FROM = 0.8;
const TO = 1.35;

export const SCALE = { metric: 'kg', us: 'lb' } as const;
/** The decimals that readings in such a step have. */
export const decimalsIn = (step: number) => /\.(\d+)/.exec(String(step))?.[1]?.length ?? 0;

/**
 * Wet densities, kg/m³, at which the scale reads whole steps of so much in the reader's unit, from the `first` to the
 * `last`; no line for a bucket that is empty but for dust, nor for one that weighs what none can.
 */
export function atSteps(
  of: Readonly<Record<'tare' | 'vessel' | 'step' | 'first' | 'last', number>>,
  say: Say,
): number[] {
  const { min, max } = EXTREMES.density;
  const reading = (i: number) => fromUnit((of.first + i) * of.step, 'mass', SCALE[say.system]);
  return Array.from(
    { length: Math.max(0, of.last - of.first + 1) },
    (_, i) => (reading(i) - of.tare) / of.vessel,
  ).filter((density) => density >= min && density <= max);
}

export const BENCH_COLUMNS = [
  'Bucket weighs',
  'Wet density',
  'Add foam',
  'or base mix (cement + water + any sand)',
];

/**
 * What to add for each round reading of the scale, in the reader's units; none of a bucket that the load cannot fill.
 * `load`: the most the mixer takes, m³; `made`: so many corrections were.
 */
export function benchRows(
  {
    load,
    made = 0,
    ...mix
  }: Omit<Parameters<typeof correctionTable>[0], 'densities'> & {
    readonly load: number;
    readonly made?: number;
  },
  recipe: TypedRatio & { readonly sandCement: number },
  say: Say,
): string[][] {
  if (overflows(mix)) return [];
  const unit = SCALE[say.system];
  const inUnit = (kg: number) => toUnit(kg, 'mass', unit);
  const at = (share: number) => inUnit(mix.tare + share * mix.targetDensity * mix.vessel);
  const step = STEPS.find((size) => (at(TO) - at(FROM)) / size <= ROWS) ?? 100;
  const first = Math.ceil(at(FROM) / step);
  const last = Math.floor(at(TO) / step);
  const densities = atSteps({ ...mix, step, first, last }, say);
  const decimals = decimalsIn(step);
  const table = correctionTable({ ...mix, densities });
  const { targetDensity: target, tolerance, vessel } = mix;
  const planned = { target, tolerance, vessel, load, made };
  const cells = table.map((row) => inTable(row, { ...planned, density: row.density }, say));
  const columns = correctionColumns(cells, say);
  return table.map((row, i) => {
    const line = [
      say(row.reading, 'mass', { units: SCALE, decimals }),
      say(row.density, 'density'),
    ];
    const { fix, instead, first } = cells[i]!;
    if (instead) return [...line, instead];
    if (fix.foamVolume > 0)
      return [
        ...line,
        `${first}${say(fix.foamVolume, 'volume', columns.foam)} (${say(fix.foamMass, 'mass', columns.foamMass)})`,
        '—',
      ];
    const amount = () => `${first}${base(fix.baseMass, recipe, say, columns.base)}`;
    return [...line, '—', baseCell(fix, amount, 'leave it, place it')];
  });
}

/** The base mix to add, and what to weigh for it. */
function base(
  mass: number,
  { sandCement, ...ratio }: TypedRatio & { readonly sandCement: number },
  say: Say,
  how: ReturnType<typeof correctionColumns>['base'],
): string {
  const waterCement = baseWaterCement(ratio);
  const cement = mass / (1 + waterCement + sandCement);
  const parts = [cement, waterCement * cement, ...(sandCement > 0 ? [sandCement * cement] : [])];
  // All in the unit of the sum: nobody adds kilograms to grams with wet gloves.
  const number = (part: number) => say(part, 'mass', how).replace(/\u00a0.*/, '');
  return `${say(mass, 'mass', how)} (${parts.map(number).join(' + ')})`;
}
