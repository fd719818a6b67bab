import type { Page } from 'playwright-core';

/** Tabs until the element with this id has the focus; fails when no Tab reaches it. */
export async function tabTo(page: Page, id: string): Promise<void> {
  for (let presses = 0; presses < 400; presses++) {
    if ((await page.evaluate(() => document.activeElement?.id)) === id) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`no number of Tabs reached #${id}`);
}

/** Tabs to a field and types over what is in it. */
export async function fill(page: Page, id: string, text: string): Promise<void> {
  await tabTo(page, id);
  await page.keyboard.press('Control+A');
  await page.keyboard.type(text);
}
