import type { Editor } from '../../bench/records/editor.ts';
import { type ReadingName, readingOf } from '../../bench/records/readings.ts';
import { formatPlain } from '../../core/quantity/format.ts';
import { writeReading } from './RecordFields.tsx';
import { RECORD_FIELDS } from './record-fields.ts';

/** Writes a reading in the metric unit of its field, as a scale with that last digit would show it; `pm`: its ±, where it is reckoned. */
export function put(
  editor: Editor,
  name: ReadingName,
  si: number,
  significant = 5,
  pm?: number,
): void {
  const spec = readingOf(name);
  if ('options' in spec) return;
  const field = RECORD_FIELDS[name];
  // Another unit than the field's would turn the field over to it.
  const unit = 'units' in field ? field.units.metric : spec.unit;
  writeReading(editor, name, {
    t: formatPlain(si, spec.kind, unit, significant),
    u: unit,
    s: 'metric',
    ...(pm !== undefined && { p: formatPlain(pm, spec.kind, unit, 2), pu: unit }),
  });
}
