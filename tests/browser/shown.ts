import type { Page } from 'playwright-core';
import { worksheets } from '../../src/components/live/catalogue.ts';

/** A result as the page shows it, found by the words it has there. */
export const shown = async (page: Page, sheet: string, result: string): Promise<string> => {
  const label = page.getByText(worksheets.get(sheet)!.results[result]!.label, { exact: true });
  const found = page.locator(`[data-worksheet="${sheet}"] .result`).filter({ has: label });
  return (await found.locator('.number').innerText()).replace(/\s+/g, ' ').trim();
};
