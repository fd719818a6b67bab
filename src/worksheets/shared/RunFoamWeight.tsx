import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { Entry } from '../../bench/entries.ts';
import { readingValue } from '../../bench/records/csv.ts';
import type { Editor } from '../../bench/records/editor.ts';
import { $entries, enter } from '../../bench/store.ts';
import { readWorksheet } from '../../islands/engine/read.ts';
import type { Say } from '../../islands/engine/say.ts';
import { number } from '../../islands/fields.ts';
import { useTyping } from '../../islands/hooks.ts';
import { NumberInput } from '../../islands/parts/NumberInput.tsx';
import { writeReading } from './RecordFields.tsx';
import { put } from './run-put.ts';
import { runReadings } from './run-readings.ts';
import { type FoamWeighed, foamWeighed } from './run-weighings.ts';

const FOAM_FULL = {
  id: 'run',
  fields: {
    foam: number('mass', {
      label: 'Bucket, full of foam',
      help: 'Struck level. It fills in the foam’s density below.',
      example: '2.45 kg',
      plusMinus: '0.01 kg',
      min: '0 kg',
      max: '200 kg',
      optional: true,
    }),
  },
};
/** The bench's own key for that weighing. */
const FOAM_KEY = 'foam-density.full';

/** The bucket full of foam; with the empty bucket and its volume it gives the foam's density. */
export function FoamWeight({ editor, say }: { readonly editor: Editor; readonly say: Say }) {
  const typing = useTyping();
  // Until this batch's foam is weighed, a weighing on the bench is that of another foam.
  const [entry, setEntry] = useState<Entry>(() =>
    readingValue(editor.record, 'foamDensity') === undefined
      ? { t: '' }
      : ($entries.get()[FOAM_KEY] ?? { t: '' }),
  );
  const reading = readWorksheet(FOAM_FULL, { 'run.foam': entry }, {}, say).fields.foam!;
  const readings = runReadings(editor.record, say);
  const { density, doubt, problem } =
    reading.type === 'number' ? foamWeighed(reading, readings, say) : ({} as FoamWeighed);
  const first = useRef(true);
  // With the drawing, not after it: what is typed next is never written over.
  useLayoutEffect(() => {
    // A density that was stored stands until one of its weighings changes.
    const untouched = first.current;
    first.current = false;
    if (untouched) return;
    if (density !== undefined) put(editor, 'foamDensity', density, 3, doubt);
    // One of an earlier weighing is not this foam's.
    else if (problem) writeReading(editor, 'foamDensity', { t: '' });
  }, [density, doubt, problem === undefined]);
  if (reading.type !== 'number') return null;
  return (
    <NumberInput
      id="run-foam"
      reading={reading}
      entry={entry}
      system={say.system}
      problem={typing.input === 'run-foam' ? undefined : problem}
      pmProblem={reading.pmProblem}
      onEntry={(typed) => {
        typing.start('run-foam');
        setEntry({ t: '', ...typed });
        enter(FOAM_KEY, typed);
      }}
      onLeave={typing.stop}
    />
  );
}
