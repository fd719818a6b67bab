/** On the body of a page that holds readings the browser would not store: for scripts that fetch no bench. */
export const UNSTORED = 'data-unstored';

/** The reader's own store, or nothing where the browser keeps none. */
export function localStore(): Storage | undefined {
  try {
    return globalThis.localStorage ?? undefined;
  } catch {
    return undefined;
  }
}
