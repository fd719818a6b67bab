import type { OtherIons } from './water-solved.ts';

/** Whether the charges are the report’s: else one ion is taken as what balances them. */
export const isReported = (v: OtherIons) => v.others !== 'none' && v.chloride !== undefined;

/** Names the ion that was assumed to balance the charges: chloride, or a cation if there are too few of those. */
export const balancedBy = (water: { readonly chloride: number }): string =>
  water.chloride > 0
    ? 'Chloride was taken as what balances the charges.'
    : 'The alkalinity is more than the cations given: a cation that pairs with nothing was taken as what balances the charges. Softened water has sodium there.';
