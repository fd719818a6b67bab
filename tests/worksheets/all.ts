import { worksheets } from '../../src/components/live/catalogue.ts';
import type { AnyWorksheet } from '../../src/islands/worksheet.ts';

/** Every worksheet of the site. */
export const sheets: readonly AnyWorksheet[] = [...worksheets.values()];
