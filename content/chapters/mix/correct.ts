import { type AmountProps, inBoth } from '~/components/prose/amount.ts';
import { toTenth } from '~/components/prose/percent.ts';
import { type Correction, correctMix } from '~/core/mix/correct.ts';
import { toUnit } from '~/core/quantity/convert.ts';
import { demo } from '~/worksheets/demo.ts';
import { bucketFull, densityDoubt, onScale } from '~/worksheets/demo-tools.ts';
import { demoLoad, waterIn } from '~/worksheets/demo-worked.ts';
import { NEAR_ENOUGH } from '~/worksheets/shared/mix/near-enough.ts';

/** How far off the density that was wanted a load comes out, kg/m³: too heavy, or too light. */
export const missedBy = 40;
export const target = demo.wetDensity;
export const tooHeavy = target + missedBy;
const tooLight = target - missedBy;

/** As the scale shows it, kg. */
export const massInHand = onScale(demoLoad.mass);

const fix = (measuredDensity: number) =>
  correctMix({
    measuredDensity,
    massInHand,
    targetDensity: target,
    foamDensity: demo.foam.density,
    baseDensity: demoLoad.baseDensity,
    tolerance: NEAR_ENOUGH * target,
    inHand: { cement: demoLoad.cement, water: waterIn(demoLoad) },
    baseRecipe: { waterCement: demo.waterCement },
  });
export const heavy = fix(tooHeavy);
const light = fix(tooLight);

const litres = (volume: number) => toUnit(volume, 'volume', 'L').toFixed(1);
/** The sum for the heavy load, in litres. */
export const inLitres = { inHand: litres(heavy.volumeBefore), foam: litres(heavy.foamVolume) };

/** What is added, of the volume in hand. */
export const added = {
  foam: toTenth(heavy.foamVolume / heavy.volumeBefore),
  base: toTenth(light.baseVolume / light.volumeBefore),
};

/** What the scale shows of the bucket, full of a mix of such a density. */
const bucketReads = (density: number): AmountProps => ({
  value: bucketFull(density),
  kind: 'mass',
  significant: 4,
});
export const bucketOnTarget = bucketReads(target);
/** How surely the bucket tells the target, kg/m³. */
export const knownTo = target * densityDoubt(target);

const litresOf = (value: number, what: string) =>
  `${inBoth({ value, kind: 'volume', significant: 2 })} of ${what}`;
/** A mix as the bucket finds it, what to add, and what there is then. */
function row(density: number, add: string, after: Pick<Correction, 'volume' | 'waterCementTotal'>) {
  if (after.waterCementTotal === undefined)
    throw new Error('A mix that was corrected has no total w/c.');
  return [
    bucketReads(density),
    { value: density, kind: 'density' } as const,
    add,
    { value: after.volume, kind: 'volume' } as const,
    after.waterCementTotal.toFixed(2),
  ];
}
export const corrections = [
  row(tooHeavy, litresOf(heavy.foamVolume, 'foam'), heavy),
  row(target, 'nothing', demoLoad),
  row(tooLight, litresOf(light.baseVolume, 'base mix'), light),
];
