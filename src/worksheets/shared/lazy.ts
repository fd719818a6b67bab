import { DomainError, Unsettled } from '../../core/domain-error.ts';

/** Works something out once, when it is first wanted: a ± is carried by asking for one result only. */
export function lazy<T>(find: () => T): () => T {
  let found: { readonly it: T } | undefined;
  return () => {
    found ??= { it: find() };
    return found.it;
  };
}

/** Points of a picture that core refuses are left out: a picture is never the place for a refusal. */
export function ifAllowed<T>(find: () => T): T | undefined {
  try {
    return find();
  } catch (refusal) {
    if (refusal instanceof DomainError || refusal instanceof Unsettled) return undefined;
    throw refusal;
  }
}
