/**
 * The share of a volume of foam that is left in the mix: the liquid of what died stays. No range:
 * it adds volumes.
 * @param foam the share of its gas that lives; `liquid` of the foam, by volume: its density over
 *   water's
 * @throws nothing
 * @source none: volumes add
 */
export const leftOfFoam = (foam: { readonly survival: number; readonly liquid: number }): number =>
  1 - (1 - foam.survival) * (1 - foam.liquid);
