/**
 * `2:40` or `2:40 h` is hours and minutes, as setting times are written, even where minutes are
 * shown.
 */
export const byHours = (text: string): string =>
  text.replace(/^\s*(\d+:\d\d)\s*(?:h(?:(?:ou)?rs?)?)?\s*$/i, '$1:00');

/** `15 l/m²`, as rain is reported: a litre per square metre is a millimetre. */
export const onSquareMetre = (text: string): string =>
  text.replace(/\s*l(?:it(?:er|re)s?)?\s*(?:\/|per)\s*(?:m(?:²|\^?2)|sq\.?\s*m)\s*$/i, ' mm');

/** `32k` means 32 thousand, as for the grains of a softener. */
export const inThousands = (text: string): string =>
  text.replace(/^\s*([\d.,]+)\s*k(?:\s*gr(?:ains?)?)?\s*$/i, '$1e3');

/** `5,49 €`, `EUR 5.49` → `5,49`: money has no kind of quantity. */
export const withoutMoney = (text: string): string =>
  text.replace(/^\s*(?:[A-Z]*\p{Sc}|[A-Z]{3})\s*|\s*(?:\p{Sc}|[A-Z]{3})\s*$/gu, '');

const LESS_THAN = /^\s*[<≤]\s*/;
/** `< 5` counts as 5, the most it can be; a report states a value below its detection limit so. */
export const atMost = (text: string): string => text.replace(LESS_THAN, '');
export const saysAtMost = (text: string): boolean => LESS_THAN.test(text);
