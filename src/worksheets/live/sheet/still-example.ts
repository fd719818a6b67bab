import type { Kept } from '../../../bench/entries.ts';
import { isBy } from '../../../islands/engine/keeping.ts';
import {
  exampleFields,
  type FieldReading,
  inputId,
  type Reading,
} from '../../../islands/engine/reading.ts';
import type { AnyWorksheet } from '../../../islands/worksheet.ts';

/** Whether a field shows what a worksheet found, or the example of it: not what was typed or another found. */
export const restsOn = (
  sheet: AnyWorksheet,
  field: FieldReading | undefined,
  kept: Kept | undefined,
): boolean =>
  field?.origin !== 'yours' && !(field?.origin === 'kept' && kept && !isBy(kept, sheet));

/** The fields shown in a worksheet, folded ones that the plan finds and `later` ones aside, that still hold the invented example. */
export const stillExample = (
  sheet: AnyWorksheet,
  reading: Reading,
  later: readonly string[] = [],
) =>
  exampleFields(reading).flatMap(([name, { field }]) =>
    later.includes(name) || (field.folded && 'takes' in field)
      ? []
      : [{ label: field.label, input: inputId(sheet.id, name) }],
  );
