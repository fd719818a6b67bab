import { same } from './entries.ts';
import { type Bench, enter, keep, noteBehind, onBench, replaceBench, use } from './store.ts';

/** What changed hands between two states of a store and has not changed since, by key, as it was before. */
function undone<T>(
  before: Readonly<Record<string, T>> = {},
  put: Readonly<Record<string, T>> = {},
  now: Readonly<Record<string, T>> = {},
): readonly (readonly [string, T | undefined])[] {
  return [...new Set([...Object.keys(before), ...Object.keys(put)])].flatMap((key) =>
    same(before[key], put[key]) || !same(now[key], put[key]) ? [] : [[key, before[key]] as const],
  );
}

/**
 * Puts another bench in place of the one there; what it has kept is worked out anew, for an earlier version or a
 * hand may have left it. What is returned puts the reader's own back, but for what was typed since.
 */
export function swapBench(put: Bench): () => void {
  const before = onBench();
  replaceBench(put);
  noteBehind(...Object.keys({ ...put.entries, ...put.kept }));
  return () => {
    const now = onBench();
    // Where nothing was typed, what was kept since is that bench's, worked out anew.
    const typed = undone(put.entries, now.entries, now.entries).length > 0;
    const kept = typed ? put.kept : now.kept;
    for (const [key, result] of undone(before.kept, kept, now.kept)) keep(key, result);
    for (const [id, used] of undone(before.used, put.used, now.used)) use(id, used === 'yes');
    for (const [key, entry] of undone(before.entries, put.entries, now.entries)) enter(key, entry);
  };
}
