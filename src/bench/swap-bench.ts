import { same } from './entries.ts';
import { type Bench, enter, keep, noteBehind, onBench, replaceBench, use } from './store.ts';

/**
 * The keys at which `put` differs from `before` and that have not changed since, with the value
 * before.
 */
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
 * Replaces the bench. Its kept results are recomputed, for they may come from an earlier version or
 * have been edited by hand. Returns a function that restores the reader's own bench, except for
 * what was typed since.
 */
export function swapBench(put: Bench): () => void {
  const before = onBench();
  replaceBench(put);
  noteBehind(...Object.keys({ ...put.entries, ...put.kept }));
  return () => {
    const now = onBench();
    // If nothing was typed, what was kept since is the new bench's own results, recomputed.
    const typed = undone(put.entries, now.entries, now.entries).length > 0;
    const kept = typed ? put.kept : now.kept;
    for (const [key, result] of undone(before.kept, kept, now.kept)) keep(key, result);
    for (const [id, used] of undone(before.used, put.used, now.used)) use(id, used === 'yes');
    for (const [key, entry] of undone(before.entries, put.entries, now.entries)) enter(key, entry);
  };
}
