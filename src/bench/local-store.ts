/** The reader's own store, or nothing where the browser keeps none. */
export function localStore(): Storage | undefined {
  try {
    return globalThis.localStorage;
  } catch {
    return undefined;
  }
}
