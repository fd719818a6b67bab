import { describe, expect, test } from 'vitest';
import { openPage, wakeWorksheets } from './browser.ts';

/** Pairs that carry text, and the pairs that only have to be seen: edges, marks, focus. */
const TEXT = [
  ['ink', 'paper'],
  ['ink', 'sheet'],
  ['ink', 'well'],
  ['ink', 'look-soft'],
  ['ink', 'accent-soft'],
  ['ink', 'stop-soft'],
  ['ink-soft', 'accent-soft'],
  ['ink-soft', 'paper'],
  ['ink-soft', 'sheet'],
  ['ink-soft', 'well'],
  ['accent', 'paper'],
  ['accent', 'sheet'],
  ['paper', 'accent'],
  ['good', 'sheet'],
  ['look', 'sheet'],
  ['look', 'paper'],
  ['stop', 'sheet'],
  ['stop', 'paper'],
] as const;
const SEEN = [
  ['line-strong', 'paper'],
  ['line-strong', 'sheet'],
  ['accent', 'paper'],
  ['accent', 'sheet'],
  ['accent', 'look-soft'],
  ['stop', 'stop-soft'],
  ['look', 'look-soft'],
  ['foam-edge', 'foam'],
] as const;

/** Relative luminance of an sRGB colour (WCAG 2.2). */
function luminance([r, g, b]: readonly number[]): number {
  const linear = (c: number) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4);
  return 0.2126 * linear(r! / 255) + 0.7152 * linear(g! / 255) + 0.0722 * linear(b! / 255);
}

function contrast(a: readonly number[], b: readonly number[]): number {
  const [dark, light] = [luminance(a), luminance(b)].sort((x, y) => x - y) as [number, number];
  return (light + 0.05) / (dark + 0.05);
}

describe.each(['light', 'dark'] as const)('in %s', (theme) => {
  test('every pair of colours is told apart', async () => {
    const { page, close } = await openPage('parts/', { theme });
    const colours: Record<string, number[]> = await page.evaluate(
      (names) => {
        const probe = document.body.appendChild(document.createElement('i'));
        return Object.fromEntries(
          names.map((name) => {
            probe.style.color = `var(--${name})`;
            return [name, getComputedStyle(probe).color.match(/\d+/g)!.map(Number)];
          }),
        );
      },
      [...new Set([...TEXT, ...SEEN].flat())],
    );
    await close();
    const low = (pairs: readonly (readonly [string, string])[], least: number) =>
      pairs
        .map(([a, b]) => [`${a} on ${b}`, contrast(colours[a]!, colours[b]!)] as const)
        .filter(([, ratio]) => ratio < least)
        .map(([pair, ratio]) => `${pair}: ${ratio.toFixed(2)}`);
    expect(low(TEXT, 4.5)).toEqual([]);
    expect(low(SEEN, 3)).toEqual([]);
  });
});

test.each([
  ['dark', undefined],
  ['dark', 'dark'],
  ['light', 'dark'],
  ['dark', 'light'],
] as const)(
  'paper gets black on white: the system %s, the reader’s choice %s',
  async (theme, chosen) => {
    const { page, close } = await openPage('parts/', { theme });
    await page.evaluate((choice) => {
      if (choice) document.documentElement.dataset.theme = choice;
    }, chosen);
    await page.emulateMedia({ media: 'print', colorScheme: theme });
    const [ink, paper] = await page.evaluate(() => {
      const { color, backgroundColor } = getComputedStyle(document.body);
      const probe = document.body.appendChild(document.createElement('i'));
      probe.style.color = 'var(--paper)';
      return [[color, backgroundColor], getComputedStyle(probe).color];
    });
    // The body itself is not painted: printers leave backgrounds out anyway.
    expect(ink).toEqual(['rgb(0, 0, 0)', 'rgba(0, 0, 0, 0)']);
    expect(paper).toBe('rgb(255, 255, 255)');
    await close();
  },
);

test('light colours that were chosen stay, where a browser darkens pages by itself', async () => {
  const { page, context, close } = await openPage('mix/proportion/', { theme: 'dark' });
  await wakeWorksheets(page);
  await page.locator('[data-theme-turn]').click();
  await page.evaluate(() => document.fonts.ready);
  const drawing = page.locator('figure').first();
  const before = await drawing.screenshot();
  const cdp = await context.newCDPSession(page);
  await cdp.send('Emulation.setAutoDarkModeOverride', { enabled: true });
  await expect.poll(async () => (await drawing.screenshot()).equals(before)).toBe(true);
  await close();
});
