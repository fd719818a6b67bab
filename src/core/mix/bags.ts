import { demand, ifAllowed } from '../domain-error.ts';
import { type Design, type DesignInput, designBatch } from './batch-design.ts';
import { wholeFilled, wholeOnes } from './whole.ts';

/** A batch that uses whole bags, keeping either the recipe or the volume. */
export interface BagChoice {
  readonly bags: number;
  /** kg */
  readonly cementitious: number;
  /** The volume the bags give with the same recipe, m³. */
  readonly volume: number;
  /** The same volume with this much cement; undefined if that is impossible. */
  readonly sameVolume: Design | undefined;
}

/**
 * Rounds a batch to whole bags of cement, down and up, and shows the effect on the rest.
 *
 * Either the recipe stays and the volume changes in proportion to the bags, or the volume stays:
 * then more cement makes the mix denser, less makes it lighter. For a blended binder the bag holds
 * the portland cement.
 *
 * @param bag kg in one bag; `input` and `design` as for `designBatch`
 * @returns the choice below and the one above (the same one when it comes out even; `down`
 *   undefined when the batch needs less than a bag)
 * @throws {DomainError} for a bag that holds nothing, a binder without portland cement
 *   ('no-cement')
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
      // The batch itself is possible, but this choice may not be: so much cement may overfill it,
      // or so little may leave the foam too much of all the water. Then it is not offered.
      sameVolume: ifAllowed(() =>
        designBatch({ ...input, target: { cementContent: cementitious / input.volume } }),
      ),
    };
  };
  return { exact, down: floor >= 1 ? choice(floor) : undefined, up: choice(wholeOnes(exact)) };
}

/**
 * What density do these bags give in this form? The design for a given binder instead of a given
 * density.
 *
 * @param bags how many, parts of one allowed; @param bag kg in one
 * @throws {DomainError} as `designBatch`: 'overfills' when the base mix alone is more than the form
 *   holds, its limit in kg of binder per m³
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
