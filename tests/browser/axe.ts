import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { RunOnly } from 'axe-core';
import type { Page } from 'playwright-core';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** Every rule of WCAG 2.2 A and AA, and what is good practice beside them. */
const ALL: RunOnly = {
  type: 'tag',
  values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
};
/** What turning the colours can change. */
export const COLOURS: RunOnly = { type: 'rule', values: ['color-contrast', 'link-in-text-block'] };
/** What another width of the screen can change, where it shows the same things; its targets are measured. */
export const WIDTH: RunOnly = { type: 'rule', values: ['scrollable-region-focusable'] };
/** What is looked at elsewhere, or never a fault: `boxes` measures targets, and what is hidden is only named. */
const ELSEWHERE = ['target-size', 'hidden-content'];

/** What axe finds on the page as it is shown now, one line a place; in parts of it, if any are named. */
export async function faults(
  page: Page,
  only: RunOnly = ALL,
  within: readonly string[] = [],
  without: RunOnly['values'] = [],
): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axe);
  const rules = Object.fromEntries(without.map((rule) => [rule, { enabled: false }]));
  const { violations } = await page.evaluate(
    async ([runOnly, within, rules]) => {
      const { axe } = window as unknown as { axe: typeof import('axe-core') };
      const places = within.flatMap((part) => [...document.querySelectorAll(part)]);
      if (within.length > 0 && places.length === 0) throw new Error(`nothing is ${within}`);
      const where = within.length > 0 ? { include: places } : document;
      return axe.run(where, { runOnly, rules, resultTypes: ['violations'] });
    },
    [only, within, rules] as const,
  );
  return violations.flatMap(({ id, nodes }) =>
    nodes.map((node) => `${id}: ${node.target.join(' ')} ${node.failureSummary ?? ''}`),
  );
}

/** What axe finds in all but the colours of the page, which are tried by themselves, and its targets. */
export const faultsButColours = (page: Page, within?: readonly string[]): Promise<string[]> =>
  faults(page, ALL, within, [...COLOURS.values, ...ELSEWHERE]);

/**
 * What axe finds in the colours of the page, where they are not among those `tried` under the same theme:
 * contrast depends on the colour of a text, on what lies behind it, and on how large and bold it is.
 */
export async function newColourFaults(page: Page, tried: Set<string>): Promise<string[]> {
  const fresh = await page.evaluate(
    (tried) => {
      const seen = new Set(tried);
      const had = seen.size;
      for (const e of document.querySelectorAll('[data-fresh]')) e.removeAttribute('data-fresh');
      /** What lies behind a text in each element that was asked, down to the first that is opaque. */
      const grounds = new Map<Element, string>();
      const ground = (e: Element | null): string => {
        if (!e) return '';
        const known = grounds.get(e);
        if (known !== undefined) return known;
        const { backgroundColor, backgroundImage, opacity } = getComputedStyle(e);
        const own = [
          opacity === '1' ? '' : opacity,
          backgroundImage === 'none' ? '' : backgroundImage,
          backgroundColor === 'rgba(0, 0, 0, 0)' ? '' : backgroundColor,
        ].filter(Boolean);
        if (!backgroundColor.startsWith('rgb(')) own.push(ground(e.parentElement));
        const found = own.join();
        grounds.set(e, found);
        return found;
      };
      for (const e of document.body.querySelectorAll('*')) {
        const speaks = [...e.childNodes].some((n) => n.nodeType === 3 && n.nodeValue?.trim());
        if (!(speaks || e.matches('input, select, textarea')) || !e.checkVisibility()) continue;
        const { color, fontSize, fontWeight, textDecorationLine } = getComputedStyle(e);
        const around = e.parentElement ? getComputedStyle(e.parentElement).color : '';
        const style = [color, fontSize, fontWeight, textDecorationLine, around, ground(e)].join();
        if (!seen.has(style)) e.setAttribute('data-fresh', '');
        seen.add(style);
      }
      return [...seen].slice(had);
    },
    [...tried],
  );
  if (fresh.length === 0) return [];
  for (const style of fresh) tried.add(style);
  return faults(page, COLOURS, ['[data-fresh]']);
}
