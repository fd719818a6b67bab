/**
 * The keys one `@source` names: the first word, and hyphenated words after commas and semicolons.
 */
export function keysIn(source: string): readonly string[] {
  const parts = source.replace(/\([^)]*\)/g, '').split(/[,;]\s/);
  const words = parts.map((part) => part.trim().split(/\s+/)[0] ?? '');
  return words.filter((word, i) => i === 0 || /^[a-z]\w*(-\w+)+$/.test(word));
}

/** The text of each `@source` in a file's comments, on one line. */
export const sourcesIn = (code: string): readonly string[] =>
  [...code.matchAll(/@source ((?:(?!\*\/|\n\s*\* @)[\s\S])*)/g)].map(([, text]) =>
    text!.replace(/\s*\n\s*\*?\s*/g, ' ').trim(),
  );
