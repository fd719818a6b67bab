import { parseQuantity } from '../../core/quantity/parse.ts';
import type { Possible } from '../../core/records/verdict.ts';
import type { Fields } from '../../islands/fields.ts';
import { ANY_FOAM } from '../shared/foam/is-foam.ts';

/** What each weighing can be, SI: what its field takes, and of foam what is any. */
export function readingLimits(fields: Fields): Possible {
  const limits = Object.entries(fields).flatMap(([name, field]) => {
    if (field.type !== 'number') return [];
    const [min, max] = [field.min, field.max].map((end) => parseQuantity(end ?? '', field.kind));
    return min?.ok && max?.ok ? [[name, { min: min.value, max: max.value }]] : [];
  });
  return { ...Object.fromEntries(limits), foamDensity: ANY_FOAM };
}
