import { useEffect, useState } from 'preact/hooks';
import { notify, withdraw } from '../../../bench/notices.ts';
import { dropAside, emptyBin, listAside, listBin } from '../../../bench/records/bin.ts';
import { type Done, reportFault, type SetAside } from '../../../bench/records/database.ts';
import { today } from '../../../bench/records/record.ts';
import { askToPersist, type Room, room } from '../../../bench/records/room.ts';
import type { Listed } from '../../../bench/records/store.ts';
import { formatNumber } from '../../../core/quantity/format.ts';
import { keepFocus } from '../../../islands/parts/keep-focus.ts';
import { dayInWords } from '../../shared/time/moments.ts';
import { nameOf, progressOf } from './record-words.ts';
import { takeDamaged } from './refused-notice.ts';
import { putBackAndTell } from './removed-notice.ts';

const MEGABYTE = 1e6;
const bytes = (n: number) =>
  n < 0.1 * MEGABYTE
    ? `${Math.ceil(n / 1000)}\u00a0kB`
    : n < 1000 * MEGABYTE
      ? `${formatNumber(n / MEGABYTE, { decimals: 1 })}\u00a0MB`
      : `${formatNumber(n / MEGABYTE / 1000, { decimals: 1 })}\u00a0GB`;

/** Ids of the elements that receive the focus when a button disappears. */
const [ROOM, BIN] = ['records-room', 'records-bin'];

type Binned = Awaited<ReturnType<typeof listBin>>[number];

/**
 * The storage that records take, whether the browser keeps it permanently, and the contents of the
 * bin.
 */
export function RecordsRoom({
  listed,
  onChanged,
}: {
  readonly listed: Listed;
  readonly onChanged: () => Promise<void>;
}) {
  const [space, setSpace] = useState<Room>();
  const [bin, setBin] = useState<readonly Binned[]>([]);
  const [aside, setAside] = useState<readonly SetAside[]>([]);
  const [asked, setAsked] = useState('');
  useEffect(() => {
    Promise.all([room(), listBin(), listAside()])
      .then(([space, bin, aside]) => {
        setSpace(space);
        setBin(bin);
        setAside(aside);
      })
      .catch(reportFault);
  }, [listed]);
  const clear = async (work: Promise<Done>, stale?: string) => {
    const done = await work;
    if (!done.ok) notify('refused', done.say);
    else if (stale) withdraw(stale);
    await onChanged();
  };
  const ask = async (event: MouseEvent) => {
    const granted = await askToPersist();
    if (granted) keepFocus(event, ROOM);
    setSpace(await room());
    setAsked(
      granted
        ? ''
        : 'The browser did not promise. It may when this site is used more often or installed; take a backup meanwhile.',
    );
  };
  return (
    <section class="records-room" id={ROOM} aria-label="Room for batches" tabIndex={-1}>
      {space && (
        <p>
          {space.used !== undefined &&
            `This site uses ${bytes(space.used)}${space.allowed ? ` of the ${bytes(space.allowed)} the browser allows it` : ''}, the handbook itself included. `}
          {space.persistent
            ? 'The browser has promised to keep it until you clear it.'
            : 'The browser may clear it when the disk is full, Safari after a week away too (from memory). '}
          {space.persistent === false && (
            <button type="button" onClick={ask}>
              Ask the browser to keep your records
            </button>
          )}
        </p>
      )}
      <p role="status">{asked}</p>
      {bin.length > 0 && (
        <details class="folded">
          <summary id={BIN}>
            In the bin: {bin.length} {bin.length === 1 ? 'batch' : 'batches'}
          </summary>
          <ul class="records-bin">
            {bin.map(({ id, record, removed }) => (
              <li key={id}>
                {nameOf(record)}: {progressOf(record)}; removed{' '}
                {dayInWords(today(new Date(removed)))}{' '}
                <button
                  type="button"
                  aria-label={`Put back “${nameOf(record)}”`}
                  onClick={(event) => {
                    keepFocus(event, bin.length > 1 ? BIN : ROOM);
                    // Before the store has finished, so that the next press counts what is left.
                    setBin(bin.filter((one) => one.id !== id));
                    putBackAndTell([id]).then(onChanged);
                  }}
                >
                  Put back
                </button>
              </li>
            ))}
          </ul>
          <button
            type="button"
            // Nothing can be restored from it any more.
            onClick={(event) => {
              keepFocus(event, ROOM);
              clear(emptyBin(), 'removed');
            }}
          >
            Empty the bin for good
          </button>
        </details>
      )}
      {aside.length > 0 && (
        <p class="note">
          {aside.length === 1 ? 'One damaged batch was' : `${aside.length} damaged batches were`}{' '}
          set aside: {aside[0]!.why}.{' '}
          <button type="button" onClick={() => takeDamaged(aside)}>
            Take {aside.length === 1 ? 'it' : 'them'} out as found
          </button>{' '}
          <button
            type="button"
            onClick={(event) => {
              keepFocus(event, ROOM);
              clear(dropAside());
            }}
          >
            Throw {aside.length === 1 ? 'it' : 'them'} away
          </button>
        </p>
      )}
    </section>
  );
}
