import type { Page } from 'playwright-core';

/** The text spacing a reader may set for themselves (WCAG 2.2, 1.4.12); a formula is no text to space. */
export const SPACED =
  '*:not(math, math *) { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important }' +
  ' p { margin-block-end: 2em !important }';
/** Text at twice its size (WCAG 2.2, 1.4.4), as a browser that enlarges text alone sets it. */
export const TWICE = ':root { font-size: 200% !important }';

/** Looks at the page as it stands, from within it. */
type Look = () => string[];

/** Lays the page out under another style, looks at it, and takes the style away again, before any of it is painted. */
export const under = (page: Page, css: string, looks: readonly Look[]): Promise<string[]> =>
  page.evaluate(`(() => {
    const style = new CSSStyleSheet();
    style.replaceSync(${JSON.stringify(css)});
    document.adoptedStyleSheets = [style];
    try {
      return [${looks.map((look) => `...(${look})()`).join()}];
    } finally {
      document.adoptedStyleSheets = [];
    }
  })()`);

/** What sticks out to the right, when the page is wider than the screen. */
export function overflow(): string[] {
  const { clientWidth, scrollWidth } = document.documentElement;
  if (scrollWidth <= clientWidth) return [];
  const scrolls = (e: Element | null): boolean =>
    e !== null &&
    e !== document.body &&
    (getComputedStyle(e).overflowX !== 'visible' || scrolls(e.parentElement));
  const out = [...document.body.querySelectorAll('*')].filter(
    (e) => e.getBoundingClientRect().right > clientWidth + 0.5 && !scrolls(e.parentElement),
  );
  const names = out
    .slice(0, 5)
    .map((e) => [e.tagName.toLowerCase(), ...e.classList].join('.') + (e.id && `#${e.id}`));
  return [`wider than the screen (${scrollWidth} px): ${names.join(', ')}`];
}

/**
 * Text that its own box cuts off, and texts in rows that lie over one another: what larger or wider
 * spaced letters do to a box of a fixed size.
 */
export function cutText(): string[] {
  const name = (e: Element) =>
    [e.tagName.toLowerCase(), ...e.classList].join('.') + (e.id && `#${e.id}`);
  const found: string[] = [];
  for (const e of document.body.querySelectorAll<HTMLElement>('*')) {
    // A name, and what nobody can read, are of any length; their fields scroll.
    const skipped =
      'svg, math, .unseen, select, option, input[aria-invalid], input[type="text"]:not([inputmode])';
    if (e.closest(skipped) || !e.checkVisibility()) continue;
    const { fontSize, overflowX, overflowY, position } = getComputedStyle(e);
    const hides = (o: string) => o === 'hidden' || o === 'clip';
    const cutX = hides(overflowX) && e.scrollWidth > e.clientWidth + 1;
    const cutY = hides(overflowY) && e.scrollHeight > e.clientHeight + 1;
    // What is one pixel large is there for screen readers.
    if ((cutX || cutY) && e.clientWidth > 1) found.push(`cut off: ${name(e)}`);
    // A box lower than its text lets it run over what follows.
    const { clientHeight, scrollHeight } = e;
    const over = clientHeight > 0 && scrollHeight > clientHeight + parseFloat(fontSize) / 2;
    if (over && overflowY === 'visible' && position !== 'absolute')
      found.push(`runs out of its box: ${name(e)}`);
  }
  return [...new Set(found)];
}

/** Options of a list that its box would show without their last letters; its arrow is some 16 pixels wide. */
export function cutOptions(): string[] {
  const pen = document.createElement('canvas').getContext('2d')!;
  return [...document.querySelectorAll<HTMLSelectElement>('select.choice')]
    .filter((list) => list.checkVisibility())
    .flatMap((list) => {
      const { fontSize, fontFamily, paddingLeft, paddingRight } = getComputedStyle(list);
      pen.font = `${fontSize} ${fontFamily}`;
      const room = list.clientWidth - parseFloat(paddingLeft) - parseFloat(paddingRight) - 16;
      return [...list.options]
        .filter(({ text }) => pen.measureText(text).width > room)
        .map(({ text }) => `cut off in the list ${list.id}: ${text}`);
    });
}

/** Names of results, and boxes for a number, too narrow to be read or to show six digits; words far from their box. */
export function crushed(): string[] {
  const found = (
    [
      ['.result dt', 4],
      ['.entry > input', 5],
    ] as const
  ).flatMap(([kind, ems]) =>
    [...document.querySelectorAll<HTMLElement>(kind)]
      .filter((e) => {
        const { clientWidth } = e;
        return clientWidth > 0 && clientWidth < ems * parseFloat(getComputedStyle(e).fontSize);
      })
      .map((e) => `crushed to ${e.clientWidth} px: ${kind} ${e.id || e.textContent}`),
  );
  // Nor is one drawn beyond its column, or as high as what stands beside it.
  const kinds = '.entry > input, .field select, .field span.kept';
  const boxes = [...document.querySelectorAll<HTMLElement>(kinds)];
  for (const e of boxes) {
    const { right, height } = e.getBoundingClientRect();
    const column = e.closest('.field')?.getBoundingClientRect().right ?? right;
    if (right > column + 1) found.push(`sticks out of its column: ${e.id || e.textContent}`);
    if (height > 3.6 * parseFloat(getComputedStyle(e).fontSize))
      found.push(`${height.toFixed(0)} px high: ${e.id}`);
  }
  // What is said of an entry stands under it, however high its neighbour is.
  for (const e of document.querySelectorAll('.entry:not(:has(+ .slider))')) {
    const said = e.nextElementSibling?.getBoundingClientRect();
    const gap = said?.height ? said.top - e.getBoundingClientRect().bottom : 0;
    if (gap > 16) found.push(`${gap.toFixed(0)} px under its entry: ${e.nextElementSibling?.id}`);
  }
  return found.slice(0, 5);
}

/** Whether anything in the page scrolls by itself: where nothing does, there is nothing to reach by keys. */
export const scrolls = (): boolean =>
  [...document.querySelectorAll('*')].some((e) => {
    if (e.scrollWidth <= e.clientWidth && e.scrollHeight <= e.clientHeight) return false;
    const { overflowX, overflowY } = getComputedStyle(e);
    return /auto|scroll/.test(overflowX + overflowY);
  });

/** Whether everything shown at one width is shown at the other. */
export const shownThings = (page: Page): Promise<number> =>
  page.evaluate(
    () => [...document.body.querySelectorAll('*')].filter((e) => e.checkVisibility()).length,
  );

/** Things to press or type into that are lower or narrower than a finger needs. */
export function smallTargets(page: Page, least: number, within = 'body'): Promise<string[]> {
  return page.evaluate(
    ([least, within]) => {
      const all = [...document.querySelectorAll<HTMLElement>(within)].flatMap((place) => [
        ...place.querySelectorAll<HTMLElement>(
          'a[href], button, input, select, textarea, summary, [role="option"]',
        ),
      ]);
      /** A link among the words of a sentence has the height of its line. */
      const inSentence = (e: HTMLElement) => {
        if (e.tagName !== 'A' || getComputedStyle(e).display !== 'inline') return false;
        const around = e.closest('p, li, dd, dt, td, th, figcaption, h2, h3, h4, div');
        // Alone in a cell of a table it has the cell's height around it.
        if (around?.matches('td, th') && around.clientHeight >= least) return true;
        return around?.textContent.trim() !== e.textContent.trim();
      };
      /** A tick or a dot is pressed through its label. */
      const pressed = (e: HTMLElement) =>
        e.matches('input[type="checkbox"], input[type="radio"], input[type="file"]')
          ? (e.closest('label') ?? e)
          : e;
      return all
        .filter((e) => e.checkVisibility({ visibilityProperty: true }) && !inSentence(e))
        .flatMap((e) => {
          const { width, height } = pressed(e).getBoundingClientRect();
          if (Math.min(width, height) >= least - 0.01) return [];
          const name = [e.tagName.toLowerCase(), ...e.classList].join('.') + (e.id && `#${e.id}`);
          const words = e.textContent.trim().slice(0, 30);
          return [`${width.toFixed(0)} × ${height.toFixed(0)} px: ${name} “${words}”`];
        });
    },
    [least, within] as const,
  );
}
