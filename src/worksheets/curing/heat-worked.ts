import { firstAtOrBelow } from '../../core/curing/cold-spells.ts';
import { adiabaticRise } from '../../core/curing/heat/hydration.ts';
import { faceHistory, type HeatInside } from '../../core/curing/heat/inside.ts';
import { extremesOf } from '../../core/curing/history.ts';
import { COLDEST_CURE, FREEZES_AT, tooColdToCure } from '../../core/curing/limits.ts';
import { DomainError } from '../../core/domain-error.ts';
import { COARSE, FINE, type HeatValues, heatCase } from '../shared/heat-cases.ts';
import { lazy } from '../shared/lazy.ts';

/** Thicknesses, m, and wet densities, kg/m³, shown beside the reader's own. */
const THICKNESSES = [0.06, 0.15, 0.3, 0.6] as const;
const DENSITIES = [400, 600, 900, 1200] as const;

type Case = { readonly thickness: number; readonly wet: number };
type Beside = Case & Pick<HeatInside, 'peak' | 'difference'>;

function work(v: HeatValues) {
  // Worked as solid, a wall of so much would come out far too cool.
  if (v.shape !== 'slab' && v.inside === 'hollow')
    throw new DomainError({
      quantity: 'shape',
      value: v.thickness,
      kind: 'length',
      allowed: {},
      because: 'hollow-round',
    });
  const own = { thickness: v.thickness, wet: v.wet };
  const found = heatCase(v, own, FINE);
  const asDry =
    v.conducts === 'own' ? undefined : heatCase(v, { ...own, conducts: 'as-dry' }, FINE);
  const beside: readonly Case[] = [
    ...THICKNESSES.map((thickness) => ({ ...own, thickness })),
    ...DENSITIES.filter(
      (wet) => wet !== own.wet || !THICKNESSES.some((thickness) => thickness === own.thickness),
    ).map((wet) => ({ ...own, wet })),
  ];
  return {
    ...found,
    asDry,
    /** K, whichever way it conducts. */
    hottest: Math.max(found.peak.temperature, asDry?.peak.temperature ?? 0),
    cold: coldFace(v, [found, asDry ?? found]),
    rise: adiabaticRise({
      heat: found.hydration.heat,
      degree: found.hydration.ultimate,
      cement: found.cement,
      heatCapacity: found.heatCapacity,
    }),
    // The reader's own stands in the comparison as it is worked above, on the finer mesh.
    beside: lazy(() =>
      beside.flatMap((each) =>
        each.thickness === own.thickness && each.wet === own.wet
          ? [{ ...own, peak: found.peak, difference: found.difference }]
          : besideCase(v, each),
      ),
    ),
  };
}

/**
 * Of faces that freeze, or else of those too cold to cure, the one that does so first, and since when, s, whichever
 * way it conducts; undefined where none does.
 */
function coldFace({ shape, near, far }: HeatValues, runs: readonly HeatInside[]) {
  const faces = (['near', 'far'] as const).map((side) => {
    const histories = runs.map(({ run }) => faceHistory(run, side));
    const temperature = Math.min(...histories.map((each) => extremesOf(each).coldest));
    return { cover: side === 'far' && shape === 'slab' ? far : near, histories, temperature };
  });
  const frozen = faces.filter(({ temperature }) => temperature <= FREEZES_AT);
  const cold = faces.filter(({ temperature }) => tooColdToCure(temperature));
  const [of, level] = frozen.length > 0 ? [frozen, FREEZES_AT] : [cold, COLDEST_CURE];
  const [first] = of
    .map(({ histories, ...face }) => ({
      ...face,
      since: Math.min(...histories.map((each) => firstAtOrBelow(each, level) ?? Infinity)),
    }))
    .toSorted((a, b) => a.since - b.since);
  return first;
}

/** Cases worked out lately: while one figure is typed, half of those beside it stay as they were. */
const besides = new Map<string, readonly Beside[]>();

function besideCase(v: HeatValues, each: Case): readonly Beside[] {
  const key = JSON.stringify({ ...v, ...each });
  const known = besides.get(key);
  if (known) return known;
  if (besides.size > 64) besides.clear();
  const found = workBeside(v, each);
  besides.set(key, found);
  return found;
}

function workBeside(v: HeatValues, each: Case): readonly Beside[] {
  try {
    const { peak, difference } = heatCase(v, each, COARSE);
    return [{ ...each, peak, difference }];
  } catch (error) {
    // A density this foam and this base mix cannot make is left out of the comparison.
    if (error instanceof DomainError) return [];
    throw error;
  }
}

/** The last answer, kept: the page asks for it several times for one key press. */
let last: { readonly key: string; readonly answer: ReturnType<typeof work> } | undefined;

export function heatWorked(v: HeatValues) {
  const key = JSON.stringify(v);
  if (last?.key !== key) last = { key, answer: work(v) };
  return last.answer;
}
