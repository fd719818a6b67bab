import fc from 'fast-check';
import { expect, test } from 'vitest';
import { DomainError } from '../../../src/core/domain-error.ts';
import { strengthBand } from '../../../src/core/finished/strength-band.ts';
import { foamDensity } from '../../../src/core/foam/density.ts';
import { foamingSolution } from '../../../src/core/foam/solution.ts';
import { vesselVolume } from '../../../src/core/foam/vessel.ts';
import { absoluteVolume } from '../../../src/core/mix/absolute-volume.ts';
import { baseMix, waterCementRatio } from '../../../src/core/mix/base-mix.ts';
import { correctMix } from '../../../src/core/mix/correct.ts';
import { correctionTable } from '../../../src/core/mix/correction-table.ts';
import { dundeeRule } from '../../../src/core/mix/dundee.ts';
import { ovenDryDensity } from '../../../src/core/mix/oven-dry.ts';
import { proportion } from '../../../src/core/mix/proportion.ts';
import { airContent, wetDensity, yieldVolume } from '../../../src/core/mix/weigh.ts';
import { batchVolume } from '../../../src/core/placing/volume.ts';
import {
  hardnessFromDrops,
  hardnessFromIons,
  hardnessFromTitration,
  hardnessParts,
  titreFromStandard,
} from '../../../src/core/water/hardness.ts';

/** Numbers a slip of the finger can make, among numbers that make sense. */
const anyNumber = fc.oneof(
  fc.constantFrom(0, -0, 1, -1, Number.NaN, Infinity, -Infinity, 5e-324, 1e308, 1e-12, 1e9),
  fc.double(),
  fc.double({ min: -320, max: 308, noNaN: true }).map((e) => 10 ** e),
  fc.double({ min: 0, max: 2, noNaN: true }),
  fc.double({ min: 0, max: 3000, noNaN: true }),
  fc.double({ min: 273, max: 313, noNaN: true }),
);

type Numbers = Readonly<Record<string, number>>;

/** Every function of a first batch, by the arguments it takes. Extra arguments do no harm. */
const asked: readonly [name: string, takes: readonly string[], ask: (given: never) => unknown][] = [
  ['ions', ['calcium', 'magnesium'], hardnessFromIons],
  ['titration', ['titrant', 'titre', 'sample', 'blank'], hardnessFromTitration],
  ['titre', ['standard', 'sample', 'titrant'], titreFromStandard],
  ['drops', ['drops', 'perDrop'], hardnessFromDrops],
  ['parts', ['total', 'alkalinity'], hardnessParts],
  ['vessel', ['empty', 'filled', 'temperature'], vesselVolume],
  ['foam', ['tare', 'full', 'vessel', 'solutionDensity', 'airDensity'], foamDensity],
  [
    'solution',
    ['foamVolume', 'foamDensity', 'partsWater', 'glycerolShare', 'lanceLoss'],
    foamingSolution,
  ],
  [
    'batch',
    ['outerDiameter', 'innerDiameter', 'height', 'count', 'settling', 'waste'],
    ({ count = 1, settling = 0, waste = 0, ...ring }: Numbers) =>
      batchVolume({
        pieces: [{ piece: { shape: 'ring', ...ring } as never, count }],
        settling,
        waste,
      }),
  ],
  ['base mix', ['waterCement', 'sandCement'], baseMix],
  ['w/c', ['cement', 'water'], waterCementRatio],
  ['absolute volume', ['mass', 'density'], absoluteVolume],
  ['Dundee rule', ['density', 'cement', 'waterCement'], dundeeRule],
  ['oven-dry', ['cement', 'aggregate', 'volume'], ovenDryDensity],
  ...(['base', 'total'] as const).flatMap((waterCementOf) =>
    (['wetDensity', 'ovenDryDensity'] as const).map((kind): (typeof asked)[number] => [
      `proportion, ${waterCementOf}, ${kind}`,
      ['volume', 'waterCement', 'sandCement', 'foamDensity', 'target'],
      ({ target = 0, ...input }: Numbers) =>
        proportion({ ...input, waterCementOf, target: { [kind]: target } } as never),
    ]),
  ),
  [
    'correction',
    [
      'measuredDensity',
      'massInHand',
      'targetDensity',
      'foamDensity',
      'baseDensity',
      'tolerance',
      'cement',
      'water',
      'waterCement',
    ],
    ({ cement, water, waterCement, ...input }: Numbers) =>
      correctMix({ ...input, inHand: { cement, water }, baseRecipe: { waterCement } } as never),
  ],
  [
    'correction table',
    ['tare', 'vessel', 'massInHand', 'targetDensity', 'foamDensity', 'baseDensity', 'a', 'b'],
    ({ a = 0, b = 0, ...sheet }: Numbers) =>
      correctionTable({ ...sheet, tolerance: 20, densities: [a, b] } as never),
  ],
  ['wet density', ['tare', 'full', 'vessel'], wetDensity],
  ['yield', ['mass', 'density'], yieldVolume],
  ['air', ['airFreeDensity', 'density'], airContent],
  ['strength', ['wetDensity', 'ovenDryDensity'], strengthBand],
];

/** Every number in a result, however deep. */
function numbersIn(result: unknown): number[] {
  if (typeof result === 'number') return [result];
  if (result && typeof result === 'object') return Object.values(result).flatMap(numbersIn);
  return [];
}

test.each(asked)('%s: any numbers give finite results or a DomainError', (_, takes, ask) => {
  const given = fc.record(Object.fromEntries(takes.map((name) => [name, anyNumber])));
  fc.assert(
    fc.property(given, (input) => {
      let result: unknown;
      try {
        result = ask(input as never);
      } catch (error) {
        expect(error).toBeInstanceOf(DomainError);
        return;
      }
      expect(numbersIn(result).filter((x) => !Number.isFinite(x))).toEqual([]);
    }),
    { numRuns: 400 },
  );
});
