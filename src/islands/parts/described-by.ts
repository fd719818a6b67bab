/**
 * The ids of the texts that describe an input, for those present: `help`, `problem`. The note that
 * it holds the example exists once per page (`layouts/Site.astro`); one per field, with its own id,
 * would cost bytes.
 */
export const describedBy = (
  id: string,
  { example, ...said }: Readonly<Record<string, unknown>>,
): string | undefined =>
  [
    ...Object.keys(said).flatMap((what) => (said[what] ? `${id}-${what}` : [])),
    ...(example ? ['an-example'] : []),
  ].join(' ') || undefined;
