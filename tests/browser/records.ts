import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Download, Page } from 'playwright-core';
import { test as base, expect } from 'vitest';
import { type BatchRecord, blankRecord } from '../../src/bench/records/record.ts';
import { type Opened, openPage, site } from './browser.ts';

export const LIST = 'batch-records/';
export const batchPage = (id: string) => `batch-records/batch/#${id}`;

/** Each test has a window of its own, on the list of batches, and fails when the window complains. */
export const test = base.extend<{ opened: Opened; page: Page }>({
  // biome-ignore lint/correctness/noEmptyPattern: fixtures name what they need
  opened: async ({}, use) => {
    const opened = await openPage(LIST);
    await listed(opened.page);
    await use(opened);
    expect(opened.complaints).toEqual([]);
    await opened.close();
  },
  page: ({ opened }, use) => use(opened.page),
});

export const listed = (on: Page) => on.locator('[data-records="there"]').waitFor();
export const rows = (on: Page) => on.locator('.records-list > li');

/** The id of what has the focus. */
export const focused = (on: Page) => on.evaluate(() => document.activeElement?.id);

/** Notes all that is said from now on in the status at this place; what was, each time it changed. */
export async function listenTo(on: Page, place: string): Promise<() => Promise<string[]>> {
  const said = await on.locator(place).evaluateHandle((told) => {
    const said: string[] = [];
    new MutationObserver(() => {
      if (told.textContent !== (said.at(-1) ?? '')) said.push(told.textContent);
    }).observe(told, { childList: true, characterData: true, subtree: true });
    return said;
  });
  return async () => (await said.jsonValue()).filter(Boolean);
}

/** Puts raw values straight into the database, as an earlier visit might have left them. */
export async function leave(
  on: Page,
  values: readonly unknown[],
  store = 'batches',
): Promise<void> {
  await on.evaluate(
    ([store, values]) =>
      new Promise<void>((done, failed) => {
        const opening = indexedDB.open('suds-records');
        opening.onerror = () => failed(opening.error);
        opening.onsuccess = () => {
          const db = opening.result;
          const tx = db.transaction(store, 'readwrite');
          for (const value of values) tx.objectStore(store).put(value);
          tx.oncomplete = () => {
            db.close();
            done();
          };
          tx.onerror = () => failed(tx.error);
        };
      }),
    [store, values] as const,
  );
}

/** Takes all out of a store, as if the browser had been emptied. */
export const empty = (on: Page, store: string): Promise<void> =>
  on.evaluate(
    (store) =>
      new Promise<void>((done, failed) => {
        const opening = indexedDB.open('suds-records');
        opening.onsuccess = () => {
          const tx = opening.result.transaction(store, 'readwrite');
          tx.objectStore(store).clear();
          tx.oncomplete = () => {
            opening.result.close();
            done();
          };
          tx.onerror = () => failed(tx.error);
        };
      }),
    store,
  );

/** What the database holds of a store. */
export const stored = <T = BatchRecord>(on: Page, store = 'batches'): Promise<T[]> =>
  on.evaluate(
    (store) =>
      new Promise<T[]>((done, failed) => {
        const opening = indexedDB.open('suds-records');
        opening.onsuccess = () => {
          const all = opening.result.transaction(store).objectStore(store).getAll();
          all.onsuccess = () => {
            opening.result.close();
            done(all.result as T[]);
          };
          all.onerror = () => failed(all.error);
        };
      }),
    store,
  );

export const slabs = (id: string, over: Partial<BatchRecord> = {}) =>
  blankRecord({
    id,
    revision: 1,
    name: `Slabs ${id}`,
    date: '2025-04-05',
    readings: {
      planned: { t: '600', u: 'kg/m3', s: 'metric' },
      tare: { t: '0.85', u: 'kg', s: 'metric' },
      full: { t: '13.4', u: 'kg', s: 'metric' },
      vessel: { t: '20', u: 'L', s: 'metric' },
    },
    ...over,
  });

const at = (path: string) => new URL(path, site.url).href;
export async function visit(on: Page, path: string, wait: string): Promise<void> {
  const address = at(path);
  // Only the part behind # may differ from where it is, and then nothing would be loaded.
  await on.goto('about:blank');
  await on.goto(address);
  await on.locator(wait).first().waitFor();
}
/** Begins a batch step by step, as one does who comes to the page. */
export async function beginRun(on: Page): Promise<void> {
  await visit(on, 'bench/run/', '[data-run="begin"]');
  await on.getByRole('button', { name: 'Begin a batch' }).click();
  await on.locator('[data-run="0"]').waitFor();
}
/** Saves the bench as a batch from the page shown, under a name or the one suggested, and opens its record. */
export async function saveBench(on: Page, name?: string): Promise<void> {
  await on.locator('[data-save-batch]').click();
  if (name) await on.locator('#save-batch-name').fill(name);
  await on.getByRole('button', { name: 'Save', exact: true }).click();
  await on.getByRole('button', { name: 'Open its record' }).click();
}

export const state = (on: Page) => on.locator('.record').getAttribute('data-state');
/** Waits until all that was typed into a record is stored. */
export const settled = (on: Page) => on.locator('.record[data-state="saved"]').waitFor();

export async function text(download: Download): Promise<string> {
  const file = join(mkdtempSync(join(tmpdir(), 'taken-')), 'out');
  await download.saveAs(file);
  return readFileSync(file, 'utf8');
}

/** Leaves a batch with so many photos, each with its number for a caption. */
export async function leavePictured(on: Page, id: string, count: number): Promise<void> {
  const data = await on.evaluate(() => {
    const canvas = document.createElement('canvas');
    canvas.width = canvas.height = 8;
    return canvas.toDataURL('image/jpeg').split(',')[1]!;
  });
  const photos = Array.from({ length: count }, (_, i) => ({ id: `p${i}`, caption: `No ${i}` }));
  await leave(on, [slabs(id, { photos })]);
  const pictures = photos.map((note) => ({ id: note.id, batch: id, width: 8, height: 8, data }));
  await leave(on, pictures, 'photos');
}

/** Adds a photo, drawn on the spot: large and noisy, so that it must be made smaller. */
export async function addPhoto(on: Page): Promise<void> {
  const png = await on.evaluate(async () => {
    const canvas = document.createElement('canvas');
    canvas.width = 2400;
    canvas.height = 1800;
    const pen = canvas.getContext('2d')!;
    for (let x = 0; x < 2400; x += 12)
      for (let y = 0; y < 1800; y += 12) {
        pen.fillStyle = `hsl(${(x * 7 + y * 13) % 360} 60% ${(x * y) % 90}%)`;
        pen.fillRect(x, y, 12, 12);
      }
    return canvas.toDataURL('image/png').split(',')[1]!;
  });
  await on.locator('.photos input[type="file"]').setInputFiles({
    name: 'slab.png',
    mimeType: 'image/png',
    buffer: Buffer.from(png, 'base64'),
  });
  await on.locator('.photos img').last().waitFor();
}
