import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { RunOnly } from 'axe-core';
import type { BrowserContext, Page } from 'playwright-core';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** Every rule of WCAG 2.2 A and AA, and what is good practice beside them. */
const ALL: RunOnly = {
  type: 'tag',
  values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
};
/** What turning the colours can change. */
export const COLOURS: RunOnly = { type: 'rule', values: ['color-contrast', 'link-in-text-block'] };
/** What another width of the screen can change, where it shows the same things. */
export const WIDTH: RunOnly = {
  type: 'rule',
  values: ['target-size', 'scrollable-region-focusable', 'meta-viewport', 'css-orientation-lock'],
};

/** Every page of this window brings axe along. */
export const bringAxe = (context: BrowserContext) => context.addInitScript(axe);

/** What axe finds on the page as it is shown now, one line a place; in parts of it, if any are named. */
export async function faults(
  page: Page,
  only: RunOnly = ALL,
  within: readonly string[] = [],
): Promise<string[]> {
  const { violations } = await page.evaluate(
    async ([runOnly, within]) => {
      const { axe } = window as unknown as { axe: typeof import('axe-core') };
      const places = within.flatMap((part) => [...document.querySelectorAll(part)]);
      if (within.length > 0 && places.length === 0) throw new Error(`nothing is ${within}`);
      const where = within.length > 0 ? { include: places } : document;
      return axe.run(where, { runOnly, resultTypes: ['violations'] });
    },
    [only, within] as const,
  );
  return violations.flatMap(({ id, nodes }) =>
    nodes.map((node) => `${id}: ${node.target.join(' ')} ${node.failureSummary ?? ''}`),
  );
}
