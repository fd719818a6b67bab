/** Works something out once, when it is first wanted: a ± is carried by asking for one result only. */
export function lazy<T>(find: () => T): () => T {
  let found: { readonly it: T } | undefined;
  return () => {
    found ??= { it: find() };
    return found.it;
  };
}
