/** Said beside a dry density for which nobody asked what the grains hold. */
export const sandTakenAsDry = ({ sandCement: sand }: { readonly sandCement: number }) =>
  sand > 0
    ? [
        'The sand is counted as dry. Surface-dry grains still hold water, often about 1\u00a0% of the sand (common practice, no source): the oven-dry density comes out lower by that much of the sand in it.',
      ]
    : [];
