import type { ReadFile } from '../../../src/bench/records/file.ts';
import { RECORD_VERSION } from '../../../src/bench/records/record.ts';
import { FORMAT } from '../../../src/bench/records/schema.ts';

export const file = (read: ReadFile) => {
  if (!read.ok) throw new Error(read.why);
  return read.file;
};

export const whole = (batches: unknown[], over: object = {}) =>
  JSON.stringify({
    format: FORMAT,
    version: RECORD_VERSION,
    taken: new Date().toISOString(),
    batches,
    photos: [],
    ...over,
  });
