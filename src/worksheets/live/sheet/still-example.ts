import type { Kept } from '../../../bench/entries.ts';
import { isBy } from '../../../islands/engine/keeping.ts';
import {
  exampleFields,
  type FieldReading,
  inputId,
  type Reading,
} from '../../../islands/engine/reading.ts';
import type { AnyWorksheet } from '../../../islands/worksheet.ts';

/**
 * Whether a field shows a worksheet's result or the example, not a typed value or another
 * worksheet's result.
 */
export const restsOn = (
  sheet: AnyWorksheet,
  field: FieldReading | undefined,
  kept: Kept | undefined,
): boolean =>
  field?.origin !== 'yours' && !(field?.origin === 'kept' && kept && !isBy(kept, sheet));

/**
 * The visible fields of a worksheet that still hold the example, except `later` ones and folded
 * ones that take the plan's result.
 */
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
