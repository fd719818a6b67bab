import type { Entries } from '../../bench/entries.ts';
import { notify } from '../../bench/notices.ts';
import { $entries, enter } from '../../bench/store.ts';
import { pageAt } from './use-records.ts';

/** Puts entries on the bench in place of those there, says so, and offers the way on and the way back. */
export function ontoBench(
  entries: Entries,
  say: string,
  open: { readonly label: string; readonly page: string },
): void {
  const there = $entries.get();
  const before = Object.keys(entries).map((key) => [key, there[key]] as const);
  for (const [key, entry] of Object.entries(entries)) enter(key, entry);
  notify('bench', say, [
    { label: open.label, run: () => location.assign(pageAt(open.page)) },
    {
      label: 'Put mine back',
      undoes: true,
      run: () => {
        for (const [key, entry] of before) enter(key, entry);
      },
    },
  ]);
}
