import type { Entry } from '../../../bench/entries.ts';
import { type BatchRecord, filled } from '../../../bench/records/record.ts';
import type { Going } from '../../../bench/run.ts';

type Weighed = Pick<BatchRecord, 'readings'>;

/** The ± typed beside water and cement alike: that of the one scale at this bench. */
function oneScale({ readings: { water, cement } }: Weighed): Entry | undefined {
  const { p, pu } = water ?? {};
  return p && p === cement?.p && pu === cement.pu ? { p, ...(pu && { pu }) } : undefined;
}

/** A batch about to be begun, with the ± of the scale that the one before was weighed in on. */
export function withScaleOf(before: Weighed, record: BatchRecord): BatchRecord {
  const scale = oneScale(before);
  if (!scale) return record;
  return { ...record, readings: { water: scale, cement: scale, ...record.readings } };
}

/**
 * The batch and its run with the scale's ± carried on to the weighings that follow the base mix, if
 * nothing is typed there yet. If all of them still have a ± carried earlier, it follows a correction
 * of the first.
 */
export function scaleCarried({ readings }: Weighed, { foam, foamMass }: Going) {
  const scale = oneScale({ readings });
  if (!scale) return undefined;
  const empty = { t: '', ...scale };
  const { full } = readings;
  if ([full, foam, foamMass].every((of) => !filled(of) && of?.p === full?.p && of?.pu === full?.pu))
    return { readings: { ...readings, full: scale }, going: { foam: empty, foamMass: empty } };
  return {
    readings: { full: scale, ...readings },
    going: { foam: foam ?? empty, foamMass: foamMass ?? empty },
  };
}
