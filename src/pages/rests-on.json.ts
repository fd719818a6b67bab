import { worksheets } from '../components/live/catalogue.ts';
import { borrowedKeys, entryKeys, keptKeys, takenKeys } from '../islands/worksheet.ts';

/**
 * The bench keys that each worksheet which keeps anything rests on, by its id: so that after a change a page
 * fetches those worksheets of other pages that follow from it, and no more (`components/live/catch-up.ts`).
 */
export const GET = () =>
  Response.json(
    Object.fromEntries(
      [...worksheets.values()]
        .filter((sheet) => keptKeys(sheet).length > 0)
        .map((sheet) => [
          sheet.id,
          [...new Set([...entryKeys(sheet), ...borrowedKeys(sheet), ...takenKeys(sheet)])],
        ]),
    ),
  );
