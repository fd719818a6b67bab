import { foamBench, foamInOf, sameVessel, vesselOf } from '../../../bench/records/carried.ts';
import { $going, type FoamIn } from '../../../bench/run.ts';
import type { Written } from '../records/RecordFields.tsx';

/** What the foam of the batch at the bench is weighed in: as it was typed there, else as the batch has it. */
export const foamIn = ({ record }: Written): FoamIn => $going.get()?.foamIn ?? foamInOf(record);

/**
 * The batch as its foam is weighed: the foam's vessel in the place of the blend's bucket, which follows what is typed
 * as long as it is the same one.
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
