import { site } from './browser.ts';

/**
 * Checks and sources are tables cast in two moulds: the first of each, and the page that leads to them,
 * are tried as every page is; the others on a phone, where their own words and numbers could break.
 */
const MOULDS = ['checks/', 'sources/'];
const casts = MOULDS.flatMap((mould) =>
  site.pages.filter((path) => path.startsWith(mould) && path !== mould).slice(1),
);
export const triedWhole = (path: string) => !casts.includes(path);
