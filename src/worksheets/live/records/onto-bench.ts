import { type Entries, same } from '../../../bench/entries.ts';
import { notify } from '../../../bench/notices.ts';
import { pageAt } from '../../../bench/page-at.ts';
import { $entries, enter } from '../../../bench/store.ts';

/**
 * Entries put on the bench or found there; undefined for one that is to be removed or was missing.
 */
type Laid = Partial<Entries>;

/** What an action put on the bench, and what was there before it. */
interface Act {
  readonly put: Laid;
  readonly before: Laid;
}
/** The last action of each kind on this page, until it is undone. */
const acts = new Map<string, Act>();

/**
 * Puts entries on the bench in place of those there. The function returned undoes it: it restores
 * what was there before the first action of that kind, except entries typed since.
 */
export function putOnBench(kind: string, entries: Laid): () => void {
  const there = $entries.get();
  const last = acts.get(kind);
  const put = { ...last?.put, ...entries };
  const before = Object.fromEntries(
    Object.keys(put).map((key) => {
      const ofAct = last && key in last.put && same(there[key], last.put[key]);
      return [key, ofAct ? last.before[key] : there[key]];
    }),
  );
  acts.set(kind, { put, before });
  for (const [key, entry] of Object.entries(entries)) enter(key, entry);
  return () => {
    acts.delete(kind);
    const now = $entries.get();
    for (const key of Object.keys(put)) if (same(now[key], put[key])) enter(key, before[key]);
  };
}

/** The same with a notice, one for each kind of action, that offers a link onwards and an undo. */
export function ontoBench(
  kind: string,
  entries: Laid,
  say: string,
  open: { readonly label: string; readonly page: string },
): void {
  const back = putOnBench(kind, entries);
  notify(`onto-${kind}`, say, [
    { label: open.label, run: () => location.assign(pageAt(open.page)) },
    { label: 'Put my readings back', undoes: true, run: back },
  ]);
}
