import type { Editor } from '../../bench/records/editor.ts';
import { type ReadingName, readingOf } from '../../bench/records/readings.ts';
import { formatPlain } from '../../core/quantity/format.ts';
import { writeReading } from './RecordFields.tsx';

/** Writes a reading in metric, as a scale with that last digit would show it. */
export function put(editor: Editor, name: ReadingName, si: number, significant = 5): void {
  const spec = readingOf(name);
  if ('options' in spec) return;
  writeReading(editor, name, {
    t: formatPlain(si, spec.kind, spec.unit, significant),
    u: spec.unit,
    s: 'metric',
  });
}
