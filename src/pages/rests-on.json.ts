import { worksheets } from '../components/live/catalogue.ts';
import { borrowedKeys, entryKeys, keptKeys, takenKeys } from '../islands/worksheet.ts';

/**
 * The bench keys that each worksheet with kept results depends on, by its id. After a change, a
 * page uses it to fetch only the dependent worksheets of other pages
 * (`components/live/catch-up.ts`).
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
