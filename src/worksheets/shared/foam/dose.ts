import type { foamingSolution } from '../../../core/foam/solution.ts';
import { soapLost } from '../../../core/water/soap.ts';
import type { Values } from '../../../islands/fields.ts';
import type { concentrate, partsWater, stated } from './dose-fields.ts';

type Dose = Values<typeof stated & typeof concentrate & { readonly partsWater: typeof partsWater }>;

/** Soap that the water of the solution turns to curd; undefined where the concentrate is none. */
export const curd = (v: Pick<Dose, 'kind' | 'hardness' | 'soap'>) =>
  v.kind === 'soap' ? soapLost(v) : undefined;

/** How much concentrate a foaming solution takes, as the fields say it, whichever worksheet mixes one. */
export function doseOf(v: Dose) {
  const { dose: convention, concentrateDensity, content } = v;
  const number = { 'parts-water': v.partsWater, 'one-in': v.oneIn }[convention as string];
  const lost = curd(v);
  return {
    dilution: { convention, stated: number ?? v.percent },
    concentrateDensity,
    ...(lost && { soap: { lost: lost.stoichiometric, content } }),
  } satisfies Partial<Parameters<typeof foamingSolution>[0]>;
}
