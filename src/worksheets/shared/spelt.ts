/** `1:40`, `1 to 40`, `40 : 1` → `40`. */
export const withoutOne = (text: string): string =>
  /^\s*1\s*(?::|to)\s*(.+)$/i.exec(text)?.[1] ??
  /^(.+?)\s*(?::|to)\s*1\s*$/i.exec(text)?.[1] ??
  text;

/** `2:40`, as setting times are written, is hours and minutes though minutes are shown. */
export const byHours = (text: string): string =>
  /^\s*\d+:\d\d\s*$/.test(text) ? `${text.trim()}:00` : text;
