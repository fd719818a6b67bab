import type { Editor } from '../../../bench/records/editor.ts';
import { type ReadingName, readingOf } from '../../../bench/records/readings.ts';
import { formatPlain } from '../../../core/quantity/format.ts';
import { KINDS } from '../../../core/quantity/kinds.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { retyped, writeComputed, writeReading } from '../records/RecordFields.tsx';
import { RECORD_FIELDS } from '../records/record-fields.ts';

/**
 * Writes a reading in the reader's unit of its field, as if typed there; `pm`: its ±, if
 * calculated; an infinite one is left out.
 */
export function put(
  editor: Editor,
  name: ReadingName,
  si: number,
  say: Say,
  { significant = 5, pm }: { readonly significant?: number; readonly pm?: number | undefined } = {},
): void {
  const spec = readingOf(name);
  if ('options' in spec) return;
  const { system } = say;
  const field = RECORD_FIELDS[name];
  // Writing another unit would change the unit of the field.
  const unit = ('units' in field ? field.units : KINDS[spec.kind].shown)[system];
  const typed = { t: formatPlain(si, spec.kind, unit, significant), u: unit, s: system };
  if (pm !== undefined)
    writeComputed(editor, name, {
      ...typed,
      ...(Number.isFinite(pm) && { p: formatPlain(pm, spec.kind, unit, 2), pu: unit }),
    });
  else {
    const { p, pu } = editor.record.readings[name] ?? {};
    const beside = { ...(p !== undefined && { p }), ...(pu !== undefined && { pu }) };
    writeReading(editor, name, retyped(editor, name, { ...typed, ...beside }));
  }
}
