import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { $foamClock, type Clock } from '../../../bench/clock.ts';
import type { Editor } from '../../../bench/records/editor.ts';
import { filled } from '../../../bench/records/record.ts';
import { listRecords } from '../../../bench/records/store.ts';
import { $going } from '../../../bench/run.ts';
import { firstWeighed } from './run-going.ts';
import { nameMoved } from './run-name.ts';
import { isUnmixed } from './run-unfinished.ts';

/**
 * Copies the start of the foam clock into the record as the time its foam was made, until the clock
 * is cleared. The start of a batch is reset when its first reading is entered.
 */
export function useRunTimes(
  editor: Editor,
  over: boolean,
  begun = Date.parse(`${editor.record.date}T00:00`),
): void {
  const { record } = editor;
  const unmixed = isUnmixed(record);
  const empty = useRef(unmixed);
  useLayoutEffect(() => {
    const now = $going.get();
    if (!empty.current || unmixed || !now) return;
    empty.current = false;
    const { begun, date } = firstWeighed(record, now);
    $going.set({ ...now, begun });
    if (date === record.date) return;
    editor.change({ date });
    // If the batches cannot be listed, the name stays.
    listRecords().then(
      ({ records }) => {
        const name = nameMoved(editor.record, record.date, records);
        if (name !== editor.record.name) editor.change({ name });
      },
      () => {},
    );
  }, [unmixed]);
  const [clock, setClock] = useState(() => $foamClock.get());
  /** The clock before, and the start of one that was cleared here. */
  const [had, cleared] = [useRef(clock), useRef(Number.NaN)];
  useEffect(() => $foamClock.subscribe((now) => setClock(now)), []);
  // Before painting: the time is recorded even if the page is left at once.
  useLayoutEffect(() => {
    const before = had.current;
    had.current = clock;
    // While a batch is only recorded, or once it is placed, the clock is not for its foam.
    if (over || filled(record.readings.placed)) return;
    if (!clock) {
      // Clearing a clock clears the foam's time only if that came from this clock.
      if (!before || madeAt(before) !== record.foamMade) return;
      cleared.current = before.start;
      const { foamMade: _, ...untimed } = record;
      editor.record = untimed;
      editor.change({});
      empty.current = isUnmixed(untimed);
      return;
    }
    const made = madeAt(clock);
    // A clock of an earlier batch is not used; one restored by undo is.
    // A start in the future means that the device's clock was set back: it is not compared.
    const its = clock.start >= begun || clock.start === cleared.current || begun > Date.now();
    if (its && made !== record.foamMade) editor.change({ foamMade: made });
  }, [clock?.start]);
}

const madeAt = ({ start }: Clock): string => new Date(start).toISOString();
