import type { ReadingName } from '../../../src/bench/records/readings.ts';
import type { BatchRecord } from '../../../src/bench/records/record.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import { judgementsOf } from '../../../src/worksheets/live/records/BatchOutcome.tsx';
import { demoBatches } from '../../../src/worksheets/live/records/demo-batches.ts';
import { balanceOf } from '../../../src/worksheets/live/records/record-numbers.ts';
import { recordStrengthDoubts } from '../../../src/worksheets/live/records/record-strength-doubts.ts';

export const say = speaker('metric');
/** A batch of the demo scenario, of which nothing is doubted. */
export const [sound] = demoBatches();
const UNITS: Partial<Record<ReadingName, string>> = { dryVolume: 'L', foamAdded: 'L' };
/** The same with other readings: masses in kg. */
export const but = (readings: Partial<Record<ReadingName, string>>): BatchRecord => ({
  ...sound!,
  readings: {
    ...sound!.readings,
    ...Object.fromEntries(
      Object.entries(readings).map(([name, t]) => [
        name,
        { t, u: UNITS[name as ReadingName] ?? 'kg', s: 'metric' as const },
      ]),
    ),
  },
});
/** What its page says of a batch. */
export const verdicts = (record: BatchRecord) =>
  judgementsOf(record, balanceOf(record), say, recordStrengthDoubts(record, say));
