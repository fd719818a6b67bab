import { demand } from '../../core/domain-error.ts';
import { EXTREMES } from '../../core/extremes.ts';
import { SOLUTION_DENSITY } from '../../core/foam/density.ts';
import { drainedAt } from '../../core/foam/drainage-curve.ts';
import { standingFoam } from '../../core/foam/standing-foam.ts';
import { correctMix } from '../../core/mix/correct.ts';
import { pooled } from '../../core/mix/several-buckets.ts';
import { wetDensity } from '../../core/mix/weigh.ts';
import type { Values } from '../../islands/fields.ts';
import type { PlusMinus } from '../../islands/worksheet.ts';
import { DRAINED } from '../shared/foam/drained-foam.ts';
import { drainageOf } from '../shared/foam/drains.ts';
import { hasRoom, type MixAdvice, mixAdvice } from '../shared/mix/correction-advice.ts';
import { densityDoubt } from '../shared/mix/density-doubt.ts';
import type { bucketsFields } from './buckets-fields.ts';

/** Buckets farther apart than this are not one mix. Common practice, no source. */
const ONE_MIX = 0.05;

/** Advice about one bucket of several that may not show in what they come to together. */
const DOUBTED: readonly MixAdvice['is'][] = ['refused', 'weigh-again', 'too-small'];

type V = Values<typeof bucketsFields>;

/** The share of the foam’s liquid that has drained by now. */
function drained(v: V): number {
  if (v.drains === 'not') return 0;
  const drainage = drainageOf(v.drains, v);
  // The last of the liquid never leaves, and foam without any has no density to use.
  return Math.min(DRAINED.all, drainedAt({ drainage, time: v.age }));
}

/**
 * The density from several buckets, and the corrections for each of them and for the whole, with the
 * density that the foam has by now.
 */
export function bucketsWorked(
  v: V,
  pm: PlusMinus<typeof bucketsFields>,
  typed?: (field: 'load') => string,
) {
  const share = drained(v);
  const foam = standingFoam({
    foamDensity: v.foamDensity,
    solutionDensity: SOLUTION_DENSITY,
    share,
  });
  const common = {
    targetDensity: v.target,
    foamDensity: foam.density,
    baseDensity: v.baseDensity,
    tolerance: v.tolerance * v.target,
  };
  const { target, made, most, tare, vessel } = v;
  // Of a mixer that nobody typed nothing is known.
  const load = typed?.('load') ? v.load : Number.POSITIVE_INFINITY;
  const mix = { target, tolerance: common.tolerance, made, most, vessel, load };
  const weighing = (density: number) => ({
    ...mix,
    density,
    // One scale errs alike in each bucket: together they are known no closer than one.
    doubt: densityDoubt(
      { tare, full: tare + density * vessel, vessel },
      { tare: pm.tare, full: pm.tare, vessel: pm.vessel },
    ),
  });
  const each = v.buckets.map(({ full, mass }, i) => {
    demand(`buckets.${i}.full`, full, 'mass', { min: tare, aboveMin: true });
    const density = wetDensity({ tare, full, vessel });
    demand(`buckets.${i}.full`, density, 'density', EXTREMES.density, 'no-such-mix');
    const fix = correctMix({
      ...common,
      massInHand: mass,
      measuredDensity: density,
    });
    return { mass, density, fix, advice: mixAdvice(fix, weighing(density)) };
  });
  const all = pooled(each);
  // Each stands for a mix of its own: together they have room where the largest has.
  const mixers = all.mass / Math.max(...each.map(({ mass }) => mass));
  const together = (density: number) => ({ ...weighing(density), load: mixers * load });
  const fix = correctMix({
    ...common,
    massInHand: all.mass,
    measuredDensity: all.density,
  });
  // Only a correction that should be made is shown as an amount.
  const advice = mixAdvice(fix, together(all.density));
  const tooLarge = each.findIndex(({ mass, density }) => !hasRoom(mass / density, load));
  const doubted = each.findIndex(({ advice: { is } }) => DOUBTED.includes(is));
  const apart = all.spread > ONE_MIX;
  const over = advice.is === 'add' && each.length > 1 ? advice.over : undefined;
  const advised = apart || over ? each.map((one) => one.advice) : [advice];
  const wantsFoam = advised.some((one) => one.is === 'add' && one.fix.action === 'add-foam');
  const gone = share > DRAINED.gone;
  const mayAdd = doubted < 0 && !over && !(gone && fix.action === 'add-foam');
  const add = advice.is === 'add' && mayAdd ? advice.fix : undefined;
  return {
    share,
    foam,
    each,
    all,
    advice,
    byScale: pm.tare / vessel,
    /** The index of the first doubtful bucket, and of the first above the mixer's largest load; -1 for none. */
    doubted,
    tooLarge,
    apart,
    /** The largest of the mixes once corrected, m³, where the mixer has no room for that. */
    over: over && over.volume / mixers,
    wantsFoam,
    gone,
    add,
    common,
    mix,
    /** A mix of some density, as advice is asked for one bucket’s and for all of it. */
    weighing,
    together,
  };
}
