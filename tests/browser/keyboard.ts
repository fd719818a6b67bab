import type { Page } from 'playwright-core';

/** Tabs to the element with this id, back where it lies behind; fails when no Tab reaches it. */
export async function tabTo(page: Page, id: string): Promise<void> {
  for (let presses = 0; presses < 400; presses++) {
    const lies = await page.evaluate((id) => {
      const [at, to] = [document.activeElement, document.getElementById(id)];
      if (at === to) return 'here';
      const back = at && to && at.compareDocumentPosition(to) & Node.DOCUMENT_POSITION_PRECEDING;
      return back ? 'behind' : 'ahead';
    }, id);
    if (lies === 'here') return;
    await page.keyboard.press(lies === 'behind' ? 'Shift+Tab' : 'Tab');
  }
  throw new Error(`no number of Tabs reached #${id}`);
}

/** Types over what is in a field, gone to at once: where the way to it is not what is tried. */
export async function typeOver(page: Page, id: string, text: string): Promise<void> {
  await page.locator(`[id="${id}"]`).focus();
  await page.keyboard.press('Control+A');
  await page.keyboard.type(text);
}

/** Tabs to a field and types over what is in it. */
export async function fill(page: Page, id: string, text: string): Promise<void> {
  await tabTo(page, id);
  await typeOver(page, id, text);
}

/** Tabs to the button with this name and presses it; fails when no Tab reaches it, or when its focus cannot be seen. */
export async function press(page: Page, name: string): Promise<void> {
  for (let presses = 0; presses < 400; presses++) {
    const at = await page.evaluate((name) => {
      const button = document.activeElement;
      if (button?.tagName !== 'BUTTON' || button.textContent?.trim() !== name) return 'elsewhere';
      const { top, bottom } = button.getBoundingClientRect();
      const ring = getComputedStyle(button).outlineStyle;
      return bottom > 0 && top < innerHeight && ring !== 'none' ? 'there' : 'unseen';
    }, name);
    if (at === 'unseen') throw new Error(`“${name}” has the focus and nobody sees it`);
    if (at === 'there') {
      await page.keyboard.press('Enter');
      return;
    }
    await page.keyboard.press('Tab');
  }
  throw new Error(`no number of Tabs reached “${name}”`);
}
