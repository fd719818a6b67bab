/** A name that none of those has, so that two loads of one day are told apart. */
export function freeName(name: string, taken: readonly string[]): string {
  for (let n = 1; ; n++) {
    const next = n === 1 ? name : `${name}, ${n}`;
    if (!taken.includes(next)) return next;
  }
}
