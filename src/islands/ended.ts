/** A text with the mark that ends it; nothing stays nothing. */
export const ended = (text: string): string => text.replace(/[^.?!]$/, '$&.');
