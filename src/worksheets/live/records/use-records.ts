import { useEffect, useRef, useState } from 'preact/hooks';
import { notify } from '../../../bench/notices.ts';
import { batchAt } from '../../../bench/page-at.ts';
import { onChange, reportFault, unreadOf } from '../../../bench/records/database.ts';
import { type DraftLeft, draftsUnread } from '../../../bench/records/drafts.ts';
import { recoverDrafts } from '../../../bench/records/recover.ts';
import { type Listed, listRecords } from '../../../bench/records/store.ts';
import { nameOf } from './record-words.ts';
import { takeDamaged } from './refused-notice.ts';

export type Loaded =
  | { readonly is: 'loading' }
  | { readonly is: 'there'; readonly listed: Listed }
  | { readonly is: 'failed'; readonly say: string };

/** Tells which stored batches were set aside as unreadable. */
export function tellDamaged({ damaged: { length } }: Listed): void {
  if (length > 0)
    notify(
      'records-aside',
      `${length === 1 ? 'One stored batch' : `${length} stored batches`} could not be read and ${length === 1 ? 'was' : 'were'} set aside. Everything else is as you left it.`,
    );
}

/** Tells of each draft that could not be stored or opened. */
function tellLeft(left: readonly DraftLeft[]): void {
  for (const { record, drop } of left)
    notify(`draft-${record.id}`, `What was typed into “${nameOf(record)}” last is not stored.`, [
      { label: 'Open it', run: () => location.assign(batchAt(record.id)) },
      { label: 'Throw it away', run: drop },
    ]);
  for (const { aside, drop } of draftsUnread())
    notify(
      `draft-${aside.id}`,
      'What was typed into a batch and not stored cannot be opened here.',
      [
        { label: 'Take it out as a file', run: () => takeDamaged([aside]) },
        { label: 'Throw it away', run: drop },
      ],
    );
}

/** All batches, read again whenever one changes in this tab or another. */
export function useRecords(): readonly [Loaded, () => Promise<void>] {
  const [loaded, setLoaded] = useState<Loaded>({ is: 'loading' });
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const load = async () => {
    performance.mark('batches-asked');
    try {
      const listed = await listRecords();
      tellDamaged(listed);
      setLoaded({ is: 'there', listed });
    } catch (error) {
      setLoaded({ is: 'failed', say: unreadOf(error) });
    }
  };
  useEffect(() => {
    load()
      .then(() => recoverDrafts())
      .then(({ recovered, left }) => {
        tellLeft(left);
        if (recovered > 0)
          notify(
            'recovered',
            `What you typed into ${recovered === 1 ? 'a batch' : `${recovered} batches`} before a page was closed is stored now.`,
          );
      })
      // A browser that denies storage was reported with the list.
      .catch(reportFault);
    const stop = onChange(() => {
      clearTimeout(timer.current);
      timer.current = setTimeout(load, 120);
    });
    return () => {
      clearTimeout(timer.current);
      stop();
    };
  }, []);
  return [loaded, load];
}
