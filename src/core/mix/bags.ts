import { demand, ifAllowed } from '../domain-error.ts';
import { type Design, type DesignInput, designBatch } from './batch-design.ts';
import { wholeFilled, wholeOnes } from './whole.ts';

/** A batch made to use whole bags, the recipe kept or the volume kept. */
export interface BagChoice {
  readonly bags: number;
  /** kg */
  readonly cementitious: number;
  /** The same recipe, as much of it as the bags give, m³. */
  readonly volume: number;
  /** The same volume with so much cement in it: undefined when it cannot be made, for too much or too little. */
  readonly sameVolume: Design | undefined;
}

/**
 * Rounds a batch to whole bags of cement, down and up, and says what that does to the rest.
 *
 * Either the recipe stays and the volume changes in proportion to the bags, or the volume stays and
 * more cement makes the mix denser, less makes it lighter. Of a blended binder the bag holds the
 * portland cement.
 *
 * @param bag kg in one bag; `input` and `design` as for `designBatch`
 * @returns the choice below and the one above (the same one when it comes out even; `down` undefined
 *   when the batch needs less than a bag)
 * @throws {DomainError} for a bag that holds nothing, a binder without portland cement ('no-cement')
 * @source none: it shares out what has been worked out
 */
export function wholeBags(
  input: DesignInput,
  design: Design,
  bag: number,
): {
  readonly exact: number;
  readonly down: BagChoice | undefined;
  readonly up: BagChoice;
} {
  demand('bag', bag, 'mass', { min: 0, aboveMin: true });
  const inBags = portlandShare(input);
  const exact = (design.cementitious * inBags) / bag;
  const floor = wholeFilled(exact);
  const choice = (bags: number): BagChoice => {
    const cementitious = (bags * bag) / inBags;
    return {
      bags,
      cementitious,
      volume: (input.volume * cementitious) / design.cementitious,
      // The batch itself can be made: so much cement may overfill it, or so little leave the foam too much of
      // the water there is in all. This choice is then not on offer.
      sameVolume: ifAllowed(() =>
        designBatch({ ...input, target: { cementContent: cementitious / input.volume } }),
      ),
    };
  };
  return { exact, down: floor >= 1 ? choice(floor) : undefined, up: choice(wholeOnes(exact)) };
}

/**
 * What density comes out of these bags in this form: the design with the binder given, not the density.
 *
 * @param bags how many, parts of one allowed; @param bag kg in one
 * @throws {DomainError} as `designBatch`: 'overfills' when the base mix alone is more than the form holds,
 *   its limit in kg of binder per m³
 * @source none: `designBatch` turned round
 */
export function fromBags(
  input: Omit<DesignInput, 'target'>,
  { bags, bag }: { readonly bags: number; readonly bag: number },
): Design {
  demand('bags', bags, 'count', { min: 0, aboveMin: true });
  demand('bag', bag, 'mass', { min: 0, aboveMin: true });
  const cementContent = (bags * bag) / portlandShare(input) / input.volume;
  return designBatch({ ...input, target: { cementContent } });
}

function portlandShare({ binder }: Pick<DesignInput, 'binder'>): number {
  const share = binder
    .filter(({ kind }) => kind === 'portland')
    .reduce((sum, part) => sum + part.share, 0);
  demand('portland', share, 'ratio', { min: 0, aboveMin: true }, 'no-cement');
  return share;
}
