import type { Kept } from '../../bench/entries.ts';
import { isBy } from '../../islands/engine/keeping.ts';
import {
  choices,
  type FieldReading,
  inputId,
  isExample,
  isShown,
  type Reading,
} from '../../islands/engine/reading.ts';
import type { AnyWorksheet } from '../../islands/worksheet.ts';

/** Whether a field shows what a worksheet found, or the example of it: not what was typed or another found. */
export const restsOn = (
  sheet: AnyWorksheet,
  field: FieldReading | undefined,
  kept: Kept | undefined,
): boolean =>
  field?.origin !== 'yours' && !(field?.origin === 'kept' && kept && !isBy(kept, sheet));

/** The fields shown in a worksheet, folded and `later` ones aside, that still hold the invented example. */
export function stillExample(
  sheet: AnyWorksheet,
  { fields }: Reading,
  later: readonly string[] = [],
) {
  const chosen = choices(fields);
  return Object.entries(fields).flatMap(([name, reading]) =>
    isExample(reading) && !later.includes(name) && isShown(reading.field.when, chosen)
      ? [{ label: reading.field.label, input: inputId(sheet.id, name) }]
      : [],
  );
}
