import { type Entries, same } from '../../../bench/entries.ts';
import { notify } from '../../../bench/notices.ts';
import { pageAt } from '../../../bench/page-at.ts';
import { $entries, enter } from '../../../bench/store.ts';

/** What is put on the bench or lies there; nothing, where it is to be taken off or there is none. */
type Laid = Partial<Entries>;

/** What an act put on the bench, and what lay there before it. */
interface Act {
  readonly put: Laid;
  readonly before: Laid;
}
/** The last of each kind on this page, while it is not taken back. */
const acts = new Map<string, Act>();

/**
 * Puts entries on the bench in place of those there. What is returned puts the reader's own back: what lay
 * there before the first act of that kind, where nothing was typed since.
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

/** The same, said; it offers the way on and the way back. Each kind of act has a notice of its own. */
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
