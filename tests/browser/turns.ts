import type { Page } from 'playwright-core';

/**
 * Waits so long by the page's own timers, and then some turns of drawing and tasks: whatever the page had set for
 * sooner has been done by then, however slow the machine is. For what must not happen.
 */
export const turns = (page: Page, ms = 0): Promise<void> =>
  page.evaluate(async (ms) => {
    await new Promise((done) => setTimeout(done, ms));
    for (let turn = 0; turn < 5; turn++)
      await new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
  }, ms);
