/**
 * The share of a volume of foam that remains in the mix: surviving gas and all of the liquid, 1 −
 * (1 − survival)(1 − liquid). No range: it adds volumes.
 * @param foam `survival`: the share of its gas that survives; `liquid`: the share of its volume
 *   that is liquid, its density over water’s
 * @throws nothing
 * @source none: volumes add
 */
export const leftOfFoam = (foam: { readonly survival: number; readonly liquid: number }): number =>
  1 - (1 - foam.survival) * (1 - foam.liquid);
