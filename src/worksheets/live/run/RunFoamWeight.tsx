import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { Entry } from '../../../bench/entries.ts';
import type { Editor } from '../../../bench/records/editor.ts';
import { readingValue } from '../../../bench/records/reading-value.ts';
import { $going, type Going } from '../../../bench/run.ts';
import { onBench } from '../../../bench/store.ts';
import { readWorksheet } from '../../../islands/engine/read.ts';
import type { NumberReading } from '../../../islands/engine/reading.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { number } from '../../../islands/fields.ts';
import { useTyping } from '../../../islands/hooks.ts';
import { keepFocus } from '../../../islands/parts/keep-focus.ts';
import { NumberInput } from '../../../islands/parts/NumberInput.tsx';
import { writeReading } from '../records/RecordFields.tsx';
import { SCALE } from '../records/record-fields.ts';
import { handOver, takeBack } from './run-foam-bench.ts';
import { foamIn, foamWeighing } from './run-foam-in.ts';
import { put } from './run-put.ts';
import { pmOf, runReadings } from './run-readings.ts';
import { cameOf, foamByWeight, foamWeighed } from './run-weighings.ts';

const mass = { plusMinus: '0.01 kg', min: '0 kg', optional: true } as const;
const SHEET = {
  id: 'run',
  fields: {
    foam: number('mass', {
      ...mass,
      label: 'Bucket, full of foam',
      help: 'Struck level. It fills in the foam’s density below.',
      example: '2.45 kg',
      max: '200 kg',
    }),
    foamMass: number('mass', {
      ...mass,
      label: 'Foam put in, by weight',
      help: 'The foam alone: less what the empty bucket weighs. It fills in the volume above.',
      example: '2 kg',
      max: '5000 kg',
    }),
  },
};

interface Props {
  readonly editor: Editor;
  readonly say: Say;
}

/** Stores weighings that are not readings of the record with its run. */
function keepInRun(more: Pick<Going, 'foam' | 'foamIn' | 'foamMass'>): void {
  const going = $going.get();
  if (going) $going.set({ ...going, ...more });
}

/** Reads one of the weighings that are not readings of the record but give one. */
const read = (name: keyof typeof SHEET.fields, entry: Entry, say: Say) =>
  readWorksheet(SHEET, { [`run.${name}`]: { ...SCALE[entry.s ?? say.system], ...entry } }, {}, say)
    .fields[name] as NumberReading;

const withPm = (reading: NumberReading) => ({ ...reading, pm: pmOf(reading) });

function Weighing({
  id,
  problem,
  say,
  onEntry,
  ...shown
}: {
  readonly id: string;
  readonly reading: NumberReading;
  readonly entry: Entry;
  readonly problem: string | undefined;
  readonly say: Say;
  readonly onEntry: (entry: Entry) => void;
}) {
  const typing = useTyping();
  const quiet = typing.input === id;
  return (
    <div class="fields" spellcheck={false}>
      <NumberInput
        {...shown}
        id={id}
        system={say.system}
        problem={quiet ? undefined : problem}
        pmProblem={quiet ? undefined : shown.reading.pmProblem}
        onEntry={(typed) => {
          typing.start(id);
          onEntry({ t: '', ...typed });
        }}
        onLeave={typing.stop}
      />
    </div>
  );
}

interface FoamWeighing {
  readonly entry: Entry;
  readonly onEntry: (entry: Entry) => void;
  readonly reading: NumberReading;
  readonly problem: string | undefined;
  /** A sentence that asks for what the weighing still needs: the empty bucket or its volume. */
  readonly lacks: string | undefined;
  /** Whether it replaced a weighing that the reader typed on the bench. */
  readonly over: boolean;
  readonly putBack: () => void;
}

/**
 * The weighing of a bucket full of foam, which gives the foam's density with the empty weight and
 * volume.
 */
export function useFoamWeighing({ editor, say }: Props): FoamWeighing {
  // A weighing on the bench may be that of another batch's foam.
  const [entry, setEntry] = useState<Entry>(() => $going.get()?.foam ?? { t: '' });
  const reading = read('foam', entry, say);
  const weighing = runReadings(foamWeighing(editor).record, say);
  const { density, doubt, problem, lacks } = foamWeighed(withPm(reading), weighing, say);
  const first = useRef(true);
  const last = useRef(density);
  // Before painting, so that what is typed next is never overwritten.
  useLayoutEffect(() => {
    // A stored density stays until one of its weighings changes.
    const untouched = first.current;
    first.current = false;
    const before = last.current;
    last.current = density ?? before;
    if (untouched) return;
    if (density !== undefined)
      put(editor, 'foamDensity', density, say, { significant: 3, pm: doubt });
    // A density from an earlier weighing is cleared; a typed one is not.
    else if ((problem || lacks) && cameOf(before, readingValue(editor.record, 'foamDensity')))
      writeReading(editor, 'foamDensity', { t: '' });
  }, [density, doubt, problem === undefined, lacks]);
  const bucket = foamIn(editor);
  const set = JSON.stringify([entry, bucket]);
  const handed = useRef(set);
  const [over, setOver] = useState(false);
  useLayoutEffect(() => {
    const going = $going.get();
    if (handed.current === set || !going) return;
    handed.current = set;
    setOver(handOver(going, bucket, onBench()));
  }, [set]);
  const onEntry = (typed: Entry) => {
    setEntry(typed);
    keepInRun({ foam: typed, foamIn: foamIn(editor) });
  };
  const putBack = () => {
    takeBack($going.get()?.id);
    setOver(false);
  };
  return { entry, onEntry, reading, problem, lacks, over, putBack };
}

/** The field of the bucket full of foam. */
export function FoamWeight({
  of: { lacks, over, putBack, ...of },
  say,
}: {
  readonly of: FoamWeighing;
  readonly say: Say;
}) {
  return (
    <>
      <Weighing id="run-foam" {...of} say={say} />
      {lacks && (
        <p class="note" data-heard>
          {lacks}
        </p>
      )}
      {over && (
        <div class="run-undo">
          <p>On the bench this weighing has replaced the one there.</p>
          <button
            type="button"
            onClick={(event) => {
              keepFocus(event, 'run-foam');
              putBack();
            }}
          >
            Put my readings back
          </button>
        </div>
      )}
    </>
  );
}

/** The field of foam weighed into the mixer, which gives its volume once its density is known. */
export function FoamByWeight({ editor, say }: Props) {
  const [entry, setEntry] = useState<Entry>(() => $going.get()?.foamMass ?? { t: '' });
  const onEntry = (typed: Entry) => {
    setEntry(typed);
    keepInRun({ foamMass: typed });
  };
  const reading = read('foamMass', entry, say);
  const { volume, doubt } = foamByWeight(withPm(reading), runReadings(editor.record, say)) ?? {};
  const written = readingValue(editor.record, 'foamVolume');
  const last = useRef<Partial<Record<'volume' | 'doubt' | 'written', number | undefined>>>({
    volume,
    doubt,
    written,
  });
  // The last typed of weight and volume counts; a stored volume stays until either, or the foam's
  // density, changes.
  useLayoutEffect(() => {
    const before = last.current;
    if (written !== before.written) {
      last.current = { written };
      if (entry.t) onEntry({ t: '' });
    } else if (volume !== undefined && (volume !== before.volume || doubt !== before.doubt)) {
      put(editor, 'foamVolume', volume, say, { significant: 4, pm: doubt });
      last.current = { volume, doubt, written: readingValue(editor.record, 'foamVolume') };
    } else if (volume === undefined && before.volume !== undefined) {
      // A weight that is emptied or refused clears the volume calculated from it.
      if (cameOf(before.volume, written)) writeReading(editor, 'foamVolume', { t: '' });
      last.current = { written: readingValue(editor.record, 'foamVolume') };
    }
  }, [volume, doubt, written]);
  if (readingValue(editor.record, 'foamDensity') === undefined) return null;
  return (
    <Weighing
      id="run-foamMass"
      reading={reading}
      entry={entry}
      problem={reading.problem}
      say={say}
      onEntry={onEntry}
    />
  );
}
