/**
 * The ids of what stands about an input, of all that is there: `help`, `problem`. That it holds the example is said by
 * a word that every page has once (`layouts/Site.astro`): one at each field with an id of its own would weigh.
 */
export const describedBy = (
  id: string,
  { example, ...said }: Readonly<Record<string, unknown>>,
): string | undefined =>
  [
    ...Object.keys(said).flatMap((what) => (said[what] ? `${id}-${what}` : [])),
    ...(example ? ['an-example'] : []),
  ].join(' ') || undefined;
