import type { foamingSolution } from '../../../core/foam/solution.ts';
import { soapLost } from '../../../core/water/soap.ts';
import type { Values } from '../../../islands/fields.ts';
import type { concentrate, partsWater, stated } from './dose-fields.ts';

type Dose = Values<typeof stated & typeof concentrate & { readonly partsWater: typeof partsWater }>;

/** The soap that hard water turns to curd; undefined if the concentrate is not a soap. */
export const curd = (v: Pick<Dose, 'kind' | 'hardness' | 'soap'>) =>
  v.kind === 'soap' ? soapLost(v) : undefined;

/** The dose of concentrate as core takes it, from the fields of any worksheet. */
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
