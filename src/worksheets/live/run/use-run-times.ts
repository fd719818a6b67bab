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
 * When the clock is started, the record knows when its foam was made, until it is cleared. The half day of a
 * batch is that of what is in the mixer: it counts from when the first of that is written down.
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
    // Where they cannot be listed, its name stays.
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
  // With the drawing, not after it: who stops here at once has the time written down too.
  useLayoutEffect(() => {
    const before = had.current;
    had.current = clock;
    // What is done with the clock while it is only written up, or once it is placed, is not its foam’s.
    if (over || filled(record.readings.placed)) return;
    if (!clock) {
      // Of its foam only its own clock tells, when it is cleared: there may have been another, or none.
      if (!before || madeAt(before) !== record.foamMade) return;
      cleared.current = before.start;
      const { foamMade: _, ...untimed } = record;
      editor.record = untimed;
      editor.change({});
      empty.current = isUnmixed(untimed);
      return;
    }
    const made = madeAt(clock);
    // A clock of an earlier batch is not this one's; one put back is.
    // A run that is still to begin was begun before the device's clock was set back: that tells nothing.
    const its = clock.start >= begun || clock.start === cleared.current || begun > Date.now();
    if (its && made !== record.foamMade) editor.change({ foamMade: made });
  }, [clock?.start]);
}

const madeAt = ({ start }: Clock): string => new Date(start).toISOString();
