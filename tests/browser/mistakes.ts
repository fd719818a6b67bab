import type { Page } from 'playwright-core';

/** What takes a number, numbers or a moment; names and notes take any text. */
const FIELDS = ['.entry input[type="text"]', '.live .lines textarea', '.moment input']
  .map((field) => `[data-island] ${field}`)
  .join(', ');

/**
 * Types something no field can read into every field of the worksheets shown, one after the other, and
 * waits until what is wrong is said. Returns how many fields it filled.
 */
export async function makeMistakes(page: Page): Promise<number> {
  const filled = await page.evaluate(async (fields) => {
    const all = [...document.querySelectorAll<HTMLInputElement>(fields)].filter((field) =>
      field.checkVisibility(),
    );
    for (const field of all) {
      field.setAttribute('data-tried', '');
      field.value = field.type === 'datetime-local' ? '' : 'half a bucket';
      field.dispatchEvent(new InputEvent('input', { bubbles: true }));
      field.dispatchEvent(new FocusEvent('blur'));
      // Each is drawn before a hand reaches the next.
      await new Promise((drawn) => setTimeout(drawn));
    }
    const marked = () => document.querySelectorAll('[aria-invalid="true"]').length >= all.length;
    for (let waits = 0; waits < 20 && !marked(); waits++)
      await new Promise((drawn) => setTimeout(drawn, 50));
    return all.length;
  }, FIELDS);
  return filled;
}

/**
 * Fields with a mistake in them that do not say so, whose sentence is not tied to them, and worksheets
 * whose list of mistakes does not lead to their fields.
 */
export function unsaidMistakes(page: Page): Promise<string[]> {
  return page.evaluate((fields) => {
    const found: string[] = [];
    for (const field of document.querySelectorAll<HTMLInputElement>(fields)) {
      // A field that another's mistake brought up was not typed into.
      if (!field.checkVisibility() || !field.hasAttribute('data-tried')) continue;
      const name = `#${field.id} in “${field.closest('.worksheet')?.querySelector('.question')?.textContent}”`;
      if (field.ariaInvalid !== 'true') {
        found.push(`not marked as wrong: ${name}`);
        continue;
      }
      const told = (field.getAttribute('aria-describedby') ?? '')
        .split(' ')
        .map((id) => document.getElementById(id))
        .filter((e) => e?.matches('.problem') || e?.querySelector('.problem'));
      if (!told.some((e) => e?.checkVisibility())) found.push(`no sentence beside: ${name}`);
      const sheet = field.closest('.live');
      if (sheet && !sheet.querySelector(`.withheld a[href="#${CSS.escape(field.id)}"]`))
        found.push(`not in the list of what is wrong: ${name}`);
    }
    for (const link of document.querySelectorAll<HTMLAnchorElement>('.withheld a')) {
      const id = link.hash.slice(1);
      // What waits leads to the worksheet it waits for, here or on another page.
      if (id.endsWith('-question')) {
        const here = link.pathname === location.pathname;
        if (here && !document.getElementById(id)) found.push(`leads nowhere: ${link.textContent}`);
        continue;
      }
      link.click();
      if (document.activeElement?.id !== id) found.push(`leads to no field: ${link.textContent}`);
    }
    return found;
  }, FIELDS);
}
