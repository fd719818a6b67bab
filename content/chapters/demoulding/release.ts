import type { AmountProps } from '~/components/prose/amount.ts';
import { inKilopascals } from '~/components/prose/amounts.ts';
import { MOULD_ADHESION, type MouldFace } from '~/core/demould/multipliers.ts';
import { demoSlabFace } from '~/worksheets/demo-worked.ts';

/** How hard such a face holds on, and what that comes to over the underside of the demo slab. */
function holdOf(face: MouldFace): { readonly pull: AmountProps; readonly onSlab: AmountProps } {
  const pull = MOULD_ADHESION[face];
  return {
    pull: inKilopascals(pull, 2),
    onSlab: { value: pull * demoSlabFace, kind: 'force', metric: 'N', us: 'lbf', significant: 2 },
  };
}

export const smooth = holdOf('oiled-steel-or-plastic');
export const varnished = holdOf('varnished-timber');
export const rough = holdOf('rough-timber');
