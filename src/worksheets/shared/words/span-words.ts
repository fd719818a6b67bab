/** The smallest and largest plotted value, in words, for a picture's label. */
export const spanWords = (values: readonly number[], words: (si: number) => string): string =>
  `${words(Math.min(...values))} to ${words(Math.max(...values))}`;
