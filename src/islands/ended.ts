/** Adds a full stop to a text that has no end mark; an empty text stays empty. */
export const ended = (text: string): string => text.replace(/[^.?!]$/, '$&.');
