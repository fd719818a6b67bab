import { foamBench, foamInOf, sameVessel, vesselOf } from '../../../bench/records/carried.ts';
import { $going, type FoamIn } from '../../../bench/run.ts';
import type { Written } from '../records/RecordFields.tsx';

/**
 * The vessel that the foam of the running batch is weighed in: as typed in the run, else the
 * batch's.
 */
export const foamIn = ({ record }: Written): FoamIn => $going.get()?.foamIn ?? foamInOf(record);

/**
 * The batch for the step that weighs foam: with the foam's vessel in place of the blend's bucket.
 * As long as the two are the same, typing changes both.
 */
export function foamWeighing(editor: Written): Written {
  const foam = foamIn(editor);
  const { tare: _, vessel: __, ...others } = editor.record.readings;
  return {
    record: {
      ...editor.record,
      bench: foamBench(editor.record.bench),
      readings: { ...others, ...foam },
    },
    change: ({ readings, ...patch }) => {
      if (!readings) return editor.change(patch);
      const { tare: _, vessel: __, ...others } = readings;
      const [typed, blend] = [vesselOf(readings), vesselOf(editor.record.readings)];
      const going = $going.get();
      if (going) $going.set({ ...going, foamIn: typed });
      editor.change({
        ...patch,
        readings: { ...others, ...(sameVessel(foam, blend) ? typed : blend) },
      });
    },
  };
}
