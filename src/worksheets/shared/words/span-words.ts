/** The least and the most of what is drawn, in words, for a picture's text. */
export const spanWords = (values: readonly number[], words: (si: number) => string): string =>
  `${words(Math.min(...values))} to ${words(Math.max(...values))}`;
