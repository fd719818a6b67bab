import type { ReadingName } from '../../../src/bench/records/readings.ts';
import { type BatchRecord, blankRecord } from '../../../src/bench/records/record.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import { foamWanted } from '../../../src/worksheets/live/run/run-base.ts';
import { runPlan } from '../../../src/worksheets/live/run/run-plan.ts';
import { runReadings } from '../../../src/worksheets/live/run/run-readings.ts';

export const say = speaker('metric');
/** The example’s. */
export const plan = runPlan({}, {}, say)!;

const UNITS: Partial<Record<ReadingName, string>> = {
  vessel: 'L',
  foamVolume: 'L',
  foamAdded: 'L',
  placed: 'L',
  foamDensity: 'g/L',
  planned: 'kg/m3',
};

/** A batch with these readings, in the units of `UNITS` or else kg. */
export const batch = (readings: Partial<Record<ReadingName, string>>, over = {}): BatchRecord =>
  blankRecord({
    readings: Object.fromEntries(
      Object.entries(readings).map(([name, t]) => [
        name,
        { t, u: UNITS[name as ReadingName] ?? 'kg', s: 'metric' as const },
      ]),
    ),
    ...over,
  });

/** The foam that so much weighed in wants. */
export const wanted = (
  readings: Partial<Record<ReadingName, string>>,
  of: typeof plan | undefined = plan,
) => foamWanted(runReadings(batch(readings), say), of, say);
