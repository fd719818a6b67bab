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
/** The number of rows, if they cannot cover all of that. */
const FEWER_ROWS = 10;
/** The coarsest step, kg/m³, or for a dense mix a share of its density; “near enough” is 5 %. A choice. */
const coarsest = (target: number) => Math.max(30, 0.03 * target);
/** Rounding error, in kg or as a share of the last digit. */
const DUST = 1e-6;
/** The densities a bench sheet covers, as shares of the target: a blend lands heavy more often than light. */
const FROM = 0.8;
const TO = 1.35;
/** The shares of the target that stand for the rest, if the rows do not reach that far. */
const FAR = [1.2, TO] as const;

export const SCALE = { metric: 'kg', us: 'lb' } as const;
/** The decimals that readings in such a step have. */
export const decimalsIn = (step: number) => /\.(\d+)/.exec(String(step))?.[1]?.length ?? 0;

/**
 * The wet densities, kg/m³, at which the scale reads `first` to `last` times `step` in the reader's
 * unit; without those of an empty bucket, or of one heavier than any mix.
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
 * What to add for each round reading of the scale, in the reader's units; nothing for a bucket that
 * the load cannot fill. `load`: the most the mixer takes, m³; `made`: the number of corrections made.
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
  const fine = STEPS.filter((size) => size <= inUnit(coarsest(mix.targetDensity) * mix.vessel));
  const step = STEPS.find((size) => (at(TO) - at(FROM)) / size <= ROWS) ?? 100;
  const size = fine.includes(step) ? step : (fine.at(-1) ?? STEPS[0]!);
  // In such steps, less is covered on both sides: a sheet is one page.
  const span = (at(TO) - at(FROM)) / size;
  const fewer = span > ROWS;
  const part = fewer ? FEWER_ROWS / span : 1;
  // Not so much that nothing is left outside what is near enough.
  const first = Math[fewer ? 'floor' : 'ceil'](at(1 - part * (1 - FROM)) / size);
  const last = Math.floor(at(1 + part * (TO - 1)) / size);
  // Far too heavy is coarser, but told: foam that drained or died lands there.
  const beyond = fewer ? FAR.map((share) => Math.floor(at(share) / size)) : [];
  const reached = beyond.filter((i) => i > last);
  const decimals = decimalsIn(size);
  const { targetDensity: target, tolerance, vessel } = mix;
  const planned = { target, tolerance, vessel, load, made };
  const lines = (densities: readonly number[]) =>
    correctionTable({ ...mix, densities }).map((row) => ({
      ...row,
      ...inTable(row, { ...planned, density: row.density }, say),
      says: 'leave it, place it',
      reads: say(row.reading, 'mass', { units: SCALE, decimals }),
    }));
  const inSteps = fromUnit(10 ** -Math.max(2, decimals), 'mass', unit);
  const limits = [target - tolerance, target + tolerance].flatMap((density, i) =>
    density < EXTREMES.density.min || density > EXTREMES.density.max
      ? []
      : lines([density])
          .filter(({ instead, action }) => !instead && action === 'leave')
          .map((line) => ({
            ...line,
            says: `${i === 0 ? 'from here' : 'to here'}: leave it, place it`,
            reads: say(inwards(line.reading, i === 0, inSteps), 'mass', {
              units: SCALE,
              decimals: Math.max(2, decimals),
            }),
          })),
  );
  const [least, most] = limits;
  // Between the two all is left alone.
  const inRange = [[first, last], ...reached.map((i) => [i, i])] as const;
  const densities = inRange.flatMap(([first, last]) =>
    atSteps({ ...mix, step: size, first: first!, last: last! }, say),
  );
  const steps = lines(densities).filter(
    ({ reading }) =>
      !(least && most && reading > least.reading - DUST && reading < most.reading + DUST),
  );
  const table = [...steps, ...limits].sort((a, b) => a.reading - b.reading);
  const columns = correctionColumns(table, say);
  return table.map(({ fix, instead, first, says, reads, density }) => {
    const line = [reads, say(density, 'density')];
    if (instead) return [...line, instead];
    if (fix.foamVolume > 0)
      return [
        ...line,
        `${first}${say(fix.foamVolume, 'volume', columns.foam)} (${say(fix.foamMass, 'mass', columns.foamMass)})`,
        '—',
      ];
    const amount = () => `${first}${base(fix.baseMass, recipe, say, columns.base)}`;
    return [...line, '—', baseCell(fix, amount, says)];
  });
}

/** The reading of a limit, rounded to its inner side: what lies outside is corrected. */
function inwards(reading: number, up: boolean, step: number): number {
  const steps = reading / step;
  return step * (up ? Math.ceil(steps - DUST) : Math.floor(steps + DUST));
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
