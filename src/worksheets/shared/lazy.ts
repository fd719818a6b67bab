/**
 * Computes a value once, when it is first asked for. A ± is propagated through one result at a
 * time, so a value that only other results use is then never computed.
 */
export function lazy<T>(find: () => T): () => T {
  let found: { readonly it: T } | undefined;
  return () => {
    found ??= { it: find() };
    return found.it;
  };
}
