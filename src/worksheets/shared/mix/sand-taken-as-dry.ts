/** A note beside an oven-dry density that was worked out without the absorption of the sand. */
export const sandTakenAsDry = ({ sandCement: sand }: { readonly sandCement: number }) =>
  sand > 0
    ? [
        'The sand is counted as dry. Surface-dry grains still hold water, often about 1\u00a0% of the sand (common practice, no source): the oven-dry density comes out lower by that much of the sand in it.',
      ]
    : [];
