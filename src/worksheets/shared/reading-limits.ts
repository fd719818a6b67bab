import { parseQuantity } from '../../core/quantity/parse.ts';
import type { Possible } from '../../core/records/verdict.ts';
import type { Fields } from '../../islands/fields.ts';
import { ANY_FOAM } from './is-foam.ts';

/** What each weighing can be, SI: what its field takes, and of foam what is any. */
export function readingLimits(fields: Fields): Possible {
  const limits = Object.entries(fields).map(([name, field]) => {
    if (field.type !== 'number') return [name, undefined];
    const [min, max] = [field.min, field.max].map((text) => {
      const read = parseQuantity(text ?? '', field.kind);
      return read.ok ? read.value : undefined;
    });
    return [name, { min: min ?? -Infinity, max: max ?? Infinity }];
  });
  return { ...Object.fromEntries(limits), foamDensity: ANY_FOAM };
}
