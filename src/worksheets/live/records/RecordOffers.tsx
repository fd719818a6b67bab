import type { Editor } from '../../../bench/records/editor.ts';
import { readingValue } from '../../../bench/records/reading-value.ts';
import { type ReadingName, readingOf } from '../../../bench/records/readings.ts';
import { filled } from '../../../bench/records/record.ts';
import { unsaidPlan, unsaidWeighings } from '../../../bench/records/unsaid.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { keepFocus } from '../../../islands/parts/keep-focus.ts';
import { put } from '../run/run-put.ts';
import { RECORD_FIELDS } from './record-fields.ts';

/** Offers values of the bench that a batch was saved from and that its record lacks. */
export function RecordOffers({
  editor,
  say,
  stays,
}: {
  readonly editor: Editor;
  readonly say: Say;
  /** The id of the element that gets the focus once an offer is taken. */
  readonly stays: string;
}) {
  const { record } = editor;
  const plan = unsaidPlan(record);
  const weighings = unsaidWeighings(record);
  const words = (Object.keys(weighings) as ReadingName[]).flatMap((name) => {
    const found = wordsOf(name, readingValue({ ...record, readings: weighings }, name), say);
    return found ? [found] : [];
  });
  return (
    <>
      {plan !== undefined && (
        <p class="note" data-offer="planned">
          No planned wet density is written down: what was aimed at stood at the example’s, which
          comes to {say(plan, 'density')}.{' '}
          <button
            type="button"
            onClick={(event) => {
              keepFocus(event, stays);
              put(editor, 'planned', plan, say);
            }}
          >
            I aimed at that
          </button>
        </p>
      )}
      {words.length > 0 && (
        <p class="note" data-offer="weighings">
          Not mixed yet. The bench it was saved from held weighings, tried or real:{' '}
          {words.join('; ')}.{' '}
          <button
            type="button"
            onClick={(event) => {
              keepFocus(event, stays);
              editor.change({ readings: { ...record.readings, ...weighings } });
            }}
          >
            They are this batch’s: write them down
          </button>
        </p>
      )}
    </>
  );
}

/** Offers the calculated volume of the form for the piece weighed dry. */
export function PieceVolume({ editor, say }: { readonly editor: Editor; readonly say: Say }) {
  const { kept, readings } = editor.record;
  const one = kept['part.volume'];
  if (!one || !('v' in one) || one.example || filled(readings.dryVolume)) return null;
  return (
    <p>
      <button
        type="button"
        onClick={(event) => {
          keepFocus(event, 'record-dryVolume');
          put(editor, 'dryVolume', one.v, say);
        }}
      >
        It is one whole piece: {say(one.v, 'volume')}
      </button>
    </p>
  );
}

function wordsOf(name: ReadingName, si: number | undefined, say: Say): string | undefined {
  const spec = readingOf(name);
  const field = RECORD_FIELDS[name];
  if (si === undefined || 'options' in spec) return undefined;
  const units = 'units' in field ? { units: field.units } : {};
  return `${spec.label.toLowerCase()} ${say(si, spec.kind, { plain: true, ...units })}`;
}
