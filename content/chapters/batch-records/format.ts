import { READING_NAMES, readingOf } from '~/bench/records/readings.ts';
import { blankRecord, RECORD_VERSION } from '~/bench/records/record.ts';
import { FORMAT } from '~/bench/records/schema.ts';

const SAVED = '2025-04-05T16:00:00.000Z';
const batch = blankRecord({
  id: 'invented-1',
  revision: 1,
  name: 'Invented: slabs',
  date: '2025-04-05',
  changed: SAVED,
  invented: true,
  readings: {
    cement: { t: '13,57', u: 'kg', s: 'metric', p: '0.01', pu: 'kg' },
    stripped: { t: 'clean' },
  },
});
export const example = JSON.stringify(
  { format: FORMAT, version: RECORD_VERSION, taken: SAVED, batches: [batch], photos: [] },
  null,
  2,
);

/** Each reading: its name in the words it is made of, between which a line may break, and what it holds. */
export const readings = READING_NAMES.map((name) => {
  const spec = readingOf(name);
  return {
    words: name.split(/(?=[A-Z])/),
    label: spec.label,
    day: spec.stage,
    holds:
      'options' in spec
        ? spec.options.join(', ')
        : [spec.kind, spec.unit].filter(Boolean).join(', '),
  };
});
