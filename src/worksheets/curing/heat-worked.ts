import { firstAtOrBelow } from '../../core/curing/cold-spells.ts';
import { adiabaticRise } from '../../core/curing/heat/hydration.ts';
import { faceHistory, type HeatInside } from '../../core/curing/heat/inside.ts';
import { extremesOf } from '../../core/curing/history.ts';
import { COLDEST_CURE, FREEZES_AT, tooColdToCure } from '../../core/curing/limits.ts';
import { DomainError, ifAllowed } from '../../core/domain-error.ts';
import { lazy } from '../shared/lazy.ts';
import { FINE, type HeatValues, heatCase } from './heat-cases.ts';

/** Thickness and wet density of the parts compared with the reader's, each as a multiple of its own. */
const BESIDE = [
  [0.5, 1],
  [1, 1],
  [2, 1],
  [1, 0.8],
  [1, 1.25],
] as const;

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
  return {
    ...found,
    asDry,
    /** Conducting as when wet or as measured. One that this foam and base mix cannot make is left out. */
    beside: lazy(() =>
      BESIDE.flatMap(([thick, dense]) => {
        const part = { thickness: thick * own.thickness, wet: dense * own.wet };
        const it = thick === 1 && dense === 1 ? found : ifAllowed(() => heatCase(v, part, FINE));
        return it ? [{ ...part, peak: it.peak, difference: it.difference }] : [];
      }),
    ),
    /** K, whichever way it conducts. */
    hottest: Math.max(found.peak.temperature, asDry?.peak.temperature ?? 0),
    cold: coldFace(v, [found, asDry ?? found]),
    rise: adiabaticRise({
      heat: found.hydration.heat,
      degree: found.hydration.ultimate,
      cement: found.cement,
      heatCapacity: found.heatCapacity,
    }),
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

/** The last answer, kept: the page asks for it several times for one key press. */
let last: { readonly key: string; readonly answer: ReturnType<typeof work> } | undefined;

export function heatWorked(v: HeatValues) {
  const key = JSON.stringify(v);
  if (last?.key !== key) last = { key, answer: work(v) };
  return last.answer;
}
