/** On the body of a page that holds readings the browser would not store: for scripts that fetch no bench. */
export const UNSTORED = 'data-unstored';
/** And of one that holds a batch which is neither stored nor a draft as it was last typed. */
export const UNHELD = 'data-unheld';

/** Whether to leave the page, or to load it anew, loses what was entered. */
export const isUnstored = (): boolean =>
  [UNSTORED, UNHELD].some((mark) => document.body.hasAttribute(mark));

const ask = (event: BeforeUnloadEvent) => {
  event.preventDefault();
  event.returnValue = true;
};

/** Marks the page with one of these, or takes the mark off: while there is any, the browser asks before it is left. */
export function markUnstored(mark: typeof UNSTORED | typeof UNHELD, on: boolean): void {
  if (!globalThis.document) return;
  document.body.toggleAttribute(mark, on);
  // Added again it is the same.
  (isUnstored() ? addEventListener : removeEventListener)('beforeunload', ask);
}

/** The reader's own store, or nothing where the browser keeps none. */
export function localStore(): Storage | undefined {
  try {
    const store = globalThis.localStorage ?? undefined;
    // What blocks trackers may leave one there that refuses all that is asked of it.
    store?.getItem('');
    return store;
  } catch {
    return undefined;
  }
}
