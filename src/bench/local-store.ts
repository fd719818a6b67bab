/**
 * Attribute of the body of a page that holds readings which the browser would not store, for
 * scripts that do not fetch the bench.
 */
export const UNSTORED = 'data-unstored';
/** The same for a batch whose latest text is neither stored nor in a draft. */
export const UNHELD = 'data-unheld';

/** Whether leaving or reloading the page would lose what was entered. */
export const isUnstored = (): boolean =>
  [UNSTORED, UNHELD].some((mark) => document.body.hasAttribute(mark));

const ask = (event: BeforeUnloadEvent) => {
  event.preventDefault();
  event.returnValue = true;
};

/**
 * Sets or removes one of these marks. While any is set, the browser asks before the page is left.
 */
export function markUnstored(mark: typeof UNSTORED | typeof UNHELD, on: boolean): void {
  if (!globalThis.document) return;
  document.body.toggleAttribute(mark, on);
  // Adding the same listener twice has no effect.
  (isUnstored() ? addEventListener : removeEventListener)('beforeunload', ask);
}

/** The reader's local storage; undefined if the browser provides none. */
export function localStore(): Storage | undefined {
  try {
    const store = globalThis.localStorage ?? undefined;
    // A tracking blocker may leave a storage object that throws on every access.
    store?.getItem('');
    return store;
  } catch {
    return undefined;
  }
}
