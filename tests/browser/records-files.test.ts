import { readFileSync } from 'node:fs';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe } from 'vitest';
import { type BatchRecord, RECORD_VERSION } from '../../src/bench/records/record.ts';
import { FORMAT } from '../../src/bench/records/schema.ts';
import { openPage, wakeWorksheets } from './browser.ts';
import { press } from './keyboard.ts';
import {
  addPhoto,
  batchPage,
  empty,
  focused,
  LIST,
  leave,
  listenTo,
  rows,
  settled,
  slabs,
  stored,
  test,
  text,
  visit,
} from './records.ts';

describe.concurrent('out and in', () => {
  const bring = (on: Page, content: string, name = 'batches.json') =>
    on.locator('input[type="file"]').setInputFiles({
      name,
      mimeType: 'application/json',
      buffer: Buffer.from(content),
    });
  /** Brings in one of the files that the window holds, without sending it there. */
  const bringTaken = (on: Page, which: number) =>
    on.evaluate((i) => {
      const { taken } = window as unknown as { taken: Blob[] };
      const input = document.querySelector<HTMLInputElement>('.batches-file input[type="file"]')!;
      const held = new DataTransfer();
      held.items.add(new File([taken[i]!], 'part.json', { type: 'application/json' }));
      input.files = held.files;
      input.dispatchEvent(new Event('change', { bubbles: true }));
    }, which);
  const status = (on: Page) => on.locator('.batches-file [role="status"]').innerText();
  const out = async (on: Page) => {
    const taking = on.waitForEvent('download');
    await on.getByRole('button', { name: 'Take everything out' }).click();
    return text(await taking);
  };
  const keep = (on: Page) => visit(on, 'batch-records/keep/', '.batches-file');

  test('an emptied browser is as it was after its own file', async ({ expect, page }) => {
    await page.getByRole('button', { name: 'Load six invented' }).click();
    await expect.poll(() => rows(page).count()).toBe(6);
    await leave(page, [
      slabs('a', { readings: { full: { t: '13,4 kg', u: 'lb', s: 'us', p: '½', pu: 'lb' } } }),
    ]);
    await visit(page, batchPage('a'), '.record');
    await addPhoto(page);
    await settled(page);
    await keep(page);
    const before = await out(page);

    const fresh = await openPage('batch-records/keep/');
    await fresh.page.locator('.batches-file').waitFor();
    await wakeWorksheets(fresh.page);
    await bring(fresh.page, before);
    await expect
      .poll(() => status(fresh.page))
      .toBe('“batches.json” holds 7 batches: 7 new here. Nothing has changed yet.');
    expect(await stored(fresh.page)).toEqual([]);
    await fresh.page.getByRole('button', { name: 'Bring in 7 batches' }).click();
    await expect.poll(() => status(fresh.page)).toContain('Brought in: 7 batches');
    const after = await out(fresh.page);
    const content = (file: string) => {
      const { taken: _, ...rest } = JSON.parse(file);
      rest.batches.sort((a: BatchRecord, b: BatchRecord) => (a.id < b.id ? -1 : 1));
      return rest;
    };
    expect(content(after)).toEqual(content(before));
    expect(content(after).photos.length).toBe(1);

    await bring(fresh.page, after);
    await expect.poll(() => status(fresh.page)).toContain('7 here already, the same');
    expect(await fresh.page.getByRole('button', { name: 'Nothing to bring in' }).isDisabled()).toBe(
      true,
    );
    expect(fresh.complaints).toEqual([]);
    await fresh.close();
  });

  test('an emptied browser has its bench again with one button, and another bench is asked about', async ({
    expect,
    page,
  }) => {
    const bench = { 'bucket.tare': { t: '0.9', u: 'kg' }, 'mix.targetDensity': { t: '550' } };
    const file = JSON.stringify({
      format: FORMAT,
      version: 1,
      taken: new Date().toISOString(),
      batches: [slabs('a'), slabs('b')],
      photos: [],
      bench,
    });
    const tare = () => page.evaluate(() => localStorage.getItem('suds.bench.1.bucket.tare'));
    await keep(page);
    await bring(page, file);
    await page.getByRole('button', { name: 'Bring in 2 batches and the bench' }).click();
    await expect.poll(() => status(page)).toBe('Brought in: 2 batches and the bench.');
    expect(await page.locator('.coming').count()).toBe(0);
    expect(JSON.parse(await out(page)).bench).toEqual(bench);
    await bring(page, file);
    await page.getByRole('button', { name: 'Nothing to bring in' }).waitFor();

    await page.evaluate(() => localStorage.setItem('suds.bench.1.bucket.tare', '{"t":"1.2"}'));
    await keep(page);
    await bring(page, file.replace('Slabs b', 'Slabs c').replace('"id":"b"', '"id":"c"'));
    await page.getByRole('button', { name: 'Bring in one batch', exact: true }).click();
    await expect.poll(() => status(page)).toContain('Your bench is as it was');
    expect(await tare()).toContain('1.2');
    await press(page, 'Put the file’s bench on the bench');
    await expect.poll(tare).toContain('0.9');
    expect(await focused(page)).toBe('batches-file-coming');
    await press(page, 'Leave it');
    await expect.poll(() => status(page)).toBe('Left as it is.');
    expect(await focused(page)).toBe('batches-file-said');
    expect((await stored(page)).map(({ id }) => id).sort()).toEqual(['a', 'b', 'c']);
  });

  test('a changed batch is shown beside the one here before anything changes', async ({
    expect,
    page,
  }) => {
    await leave(page, [slabs('a', { notes: 'here' })]);
    await keep(page);
    await bring(
      page,
      JSON.stringify({
        format: FORMAT,
        version: 1,
        taken: new Date().toISOString(),
        batches: [slabs('a', { notes: 'in the file' }), slabs('b')],
        photos: [],
      }),
    );
    const coming = page.locator('.coming');
    await expect.poll(() => coming.innerText()).toContain('in the file');
    await expect.poll(() => status(page)).toContain('1 new here, 1 here with other content');
    expect((await stored(page)).map(({ notes }) => notes)).toEqual(['here']);
    await page.getByLabel('Take what is in the file').check();
    await press(page, 'Bring in 2 batches');
    await expect.poll(async () => (await stored(page)).length).toBe(2);
    expect(await focused(page)).toBe('batches-file-said');
    expect((await stored(page)).find(({ id }) => id === 'a')!.notes).toBe('in the file');
  });

  test('files chosen together are looked at one after the other, a refused one too', async ({
    expect,
    page,
  }) => {
    const of = (id: string) =>
      JSON.stringify({ format: FORMAT, version: 1, batches: [slabs(id)], photos: [] });
    await keep(page);
    await page.locator('input[type="file"]').setInputFiles(
      (
        [
          ['one.json', of('a')],
          ['two.json', 'not JSON at all'],
          ['three.json', of('c')],
        ] as const
      ).map(([name, content]) => ({
        name,
        mimeType: 'application/json',
        buffer: Buffer.from(content),
      })),
    );
    await expect.poll(() => status(page)).toContain('“one.json” holds one batch');
    const next = page.getByRole('button', { name: 'See the next file' });
    expect(await next.count()).toBe(0);
    await press(page, 'Bring in one batch');
    await expect.poll(() => next.innerText()).toContain('“two.json”, and 1 after it');
    await press(page, 'See the next file, “two.json”, and 1 after it');
    await expect.poll(() => status(page)).toContain('not JSON');
    expect(await focused(page)).toBe('batches-file-said');
    await expect.poll(() => next.innerText()).toBe('See the next file, “three.json”');
    await press(page, 'See the next file, “three.json”');
    await expect.poll(() => status(page)).toContain('“three.json” holds one batch');
    await press(page, 'Leave it');
    await expect.poll(() => status(page)).toBe('Left as it is.');
    expect(await next.count()).toBe(0);
    expect((await stored(page)).map(({ id }) => id)).toEqual(['a']);
    // Chosen anew, one alone leaves none waiting.
    await bring(page, of('d'), 'four.json');
    await expect.poll(() => status(page)).toContain('“four.json” holds one batch');
    await press(page, 'Bring in one batch');
    await expect.poll(async () => (await stored(page)).length).toBe(2);
    expect(await next.count()).toBe(0);
  });

  test('a file that is gone by the time it is looked at is told of, and the rest still wait', async ({
    expect,
    page,
  }) => {
    const folder = await mkdtemp(join(tmpdir(), 'files-'));
    const paths = ['one', 'two', 'three'].map((name) => join(folder, `${name}.json`));
    const of = (id: string) =>
      JSON.stringify({ format: FORMAT, version: 1, batches: [slabs(id)], photos: [] });
    for (const [i, path] of paths.entries()) await writeFile(path, of(`${i}`));
    await keep(page);
    await page.locator('input[type="file"]').setInputFiles(paths);
    await expect.poll(() => status(page)).toContain('“one.json” holds one batch');
    await rm(paths[1]!);
    await press(page, 'Leave it');
    await press(page, 'See the next file, “two.json”, and 1 after it');
    await expect.poll(() => status(page)).toContain('“two.json” cannot be read: was it moved');
    await press(page, 'See the next file, “three.json”');
    await expect.poll(() => status(page)).toContain('“three.json” holds one batch');
    await rm(folder, { recursive: true });
  });

  const hostile = [
    ['{"format": "suds', 'not JSON'],
    ['[1, 2, 3]', 'holds no batches'],
    [JSON.stringify({ format: 'other', batches: [] }), 'not a file of batches'],
    [JSON.stringify({ format: FORMAT, version: 9, batches: [] }), 'later version (9)'],
    ['['.repeat(200_000), 'not JSON'],
    ['Id,Name,Date\nx,Slabs,2025-04-05', 'Tables cannot be brought in'],
  ] as const;
  test('what another tab saves meanwhile is not lost: it is looked at again', async ({
    expect,
    opened,
    page,
  }) => {
    await leave(page, [slabs('a', { notes: 'here' })]);
    await keep(page);
    const file = { format: FORMAT, version: 1, taken: new Date().toISOString(), photos: [] };
    await bring(page, JSON.stringify({ ...file, batches: [slabs('a', { notes: 'of the file' })] }));
    const take = page.getByLabel('Take what is in the file');
    await take.check();
    const other = await opened.tab();
    await visit(other, batchPage('a'), '.record');
    await other.locator('#record-notes').fill('typed in tab 2');
    await settled(other);
    const go = page.getByRole('button', { name: 'Bring in one batch' });
    await go.click();
    await expect.poll(() => status(page)).toContain('“Slabs a”. It was changed in another tab');
    expect((await stored(page))[0]!.notes).toBe('typed in tab 2');
    expect(await page.locator('.coming').innerText()).toContain('typed in tab 2');
    expect(await page.getByLabel('Keep what is here').isChecked()).toBe(true);
    await take.check();
    await go.dblclick();
    await expect.poll(() => status(page)).toBe('Brought in: one batch.');
    expect((await stored(page))[0]!.notes).toBe('of the file');
    await expect.poll(() => other.locator('#record-notes').inputValue()).toBe('of the file');
  });

  test('a hostile file changes nothing', async ({ expect, page }) => {
    await leave(page, [slabs('a')]);
    await keep(page);
    const heard = await listenTo(page, '.batches-file [role="status"]');
    for (const [i, [content, words]] of [...hostile, hostile.at(-1)!].entries()) {
      await bring(page, content);
      // The same a second time, too.
      await expect.poll(async () => (await heard())[i]).toContain(words);
      expect(await page.locator('.coming').count(), words).toBe(0);
      expect((await stored(page)).map(({ id }) => id)).toEqual(['a']);
    }
  });

  test('hostile batches are left out and named, and their markup stays text', async ({
    expect,
    page,
  }) => {
    await keep(page);
    const markup = '<img src=x onerror="document.title=1">';
    const smuggled = JSON.stringify(slabs('p', { readings: {} })).replace(
      '"readings":{}',
      '"readings":{"__proto__":{}}',
    );
    await bring(
      page,
      `{"format":"${FORMAT}","version":1,"taken":"2025-01-01T00:00:00Z","photos":[],"batches":[${[
        JSON.stringify(slabs('m', { name: markup })),
        smuggled,
        JSON.stringify({ ...slabs('x'), id: '../x' }),
        JSON.stringify({ ...slabs('y'), readings: { cement: { t: '1', u: 'parsec' } } }),
      ].join(',')}]}`,
    );
    const coming = page.locator('.coming');
    await expect.poll(() => coming.innerText()).toContain(markup);
    const lost = page.getByRole('region', { name: 'What of the file could not be used' });
    const named = await lost.innerText();
    expect(named).toContain('“__proto__” was left out');
    expect(named).toContain('its id is “../x”');
    expect(named).toContain('“Cement” was left out: its unit is “parsec”');
    await page.getByRole('button', { name: 'Bring in 3 batches' }).click();
    await expect.poll(async () => (await stored(page)).length).toBe(3);
    // What is lost stands until it is mended.
    expect(await coming.count()).toBe(0);
    expect(await lost.innerText()).toBe(named);
    const kept = await stored(page);
    expect(kept.find(({ id }) => id === 'y')!.readings).toEqual({});
    await visit(page, LIST, '[data-records="there"]');
    // A row out of sight is not drawn yet, and has no inner text.
    await expect.poll(async () => (await rows(page).allTextContents()).join()).toContain(markup);
    expect(await page.locator('.records img').count()).toBe(0);
    expect(await page.title()).not.toBe('1');
  });

  test('a huge file is refused before it is read', async ({ expect, page }) => {
    await keep(page);
    await page.evaluate(() => {
      Object.assign(window, { taken: [new Blob([new Uint8Array(64 * 1024 * 1024 + 1)])] });
    });
    await bringTaken(page, 0);
    await expect.poll(() => status(page), { timeout: 20_000 }).toContain('larger than 64\u00a0MB');
  });

  const PATIENT = { timeout: 50_000 };
  test('more than one file can hold goes out in parts, and comes in whole', {
    timeout: 180_000,
  }, async ({ expect, page }) => {
    const batches = Array.from({ length: 45 }, (_, i) =>
      slabs(`b${i}`, {
        photos: Array.from({ length: 12 }, (_, n) => ({ id: `p${i}-${n}`, caption: '' })),
      }),
    );
    await leave(page, batches);
    // Photos as heavy as they may be, made in the page.
    await page.evaluate(
      () =>
        new Promise<void>((done) => {
          const opening = indexedDB.open('suds-records');
          opening.onsuccess = () => {
            const tx = opening.result.transaction('photos', 'readwrite');
            const data = `/9j/${'A'.repeat(133_000)}`;
            for (let i = 0; i < 540; i++) {
              const batch = Math.floor(i / 12);
              const id = `p${batch}-${i % 12}`;
              tx.objectStore('photos').put({ id, batch: `b${batch}`, width: 3, height: 2, data });
            }
            tx.oncomplete = () => {
              opening.result.close();
              done();
            };
          };
        }),
    );
    await keep(page);
    // What is taken out stays in the window: 70 MB to the disk and back would take a minute.
    await page.evaluate(() => {
      const { createObjectURL } = URL;
      const taken: Blob[] = [];
      Object.assign(window, { taken });
      URL.createObjectURL = (file: Blob) => {
        taken.push(file);
        return createObjectURL.call(URL, file);
      };
    });
    for (const [i, button] of ['Take everything out', 'Take part 2 of 2 out'].entries()) {
      await page.getByRole('button', { name: button }).press('Enter');
      await expect.poll(() => status(page), PATIENT).toContain(`part ${i + 1} of 2`);
    }
    expect(await page.getByRole('button', { name: 'Take part' }).count()).toBe(0);
    expect(await focused(page)).toBe('batches-file-said');

    for (const store of ['batches', 'photos']) await empty(page, store);
    expect(await stored(page)).toEqual([]);
    for (const i of [0, 1]) {
      await bringTaken(page, i);
      await page.getByRole('button', { name: 'Bring in' }).click(PATIENT);
      await expect.poll(() => status(page), PATIENT).toContain('Brought in');
    }
    expect((await stored(page)).length).toBe(45);
    const photos = () =>
      new Promise((done) => {
        const opening = indexedDB.open('suds-records');
        opening.onsuccess = () => {
          const count = opening.result.transaction('photos').objectStore('photos').count();
          count.onsuccess = () => {
            opening.result.close();
            done(count.result);
          };
        };
      });
    expect(await page.evaluate(photos)).toBe(540);
  });

  test('a button pressed before its part is awake does its work once it is', async ({
    expect,
    page,
  }) => {
    await page.route('**/_astro/**', async (route) => {
      await new Promise((done) => setTimeout(done, 1000));
      await route.continue();
    });
    await keep(page);
    expect(await page.locator('[data-awake="yes"] .batches-file').count()).toBe(0);
    const taking = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Take everything out' }).click();
    await text(await taking);
    expect(await status(page)).toContain('Taken out');
  });

  test('an old file opens', async ({ expect, page }) => {
    await keep(page);
    const fixture = new URL('../bench/records/fixtures/version-0.json', import.meta.url);
    await bring(page, readFileSync(fixture, 'utf8'));
    await page.getByRole('button', { name: 'Bring in 2 batches' }).click();
    await expect.poll(async () => (await stored(page)).length).toBe(2);
    expect((await stored(page)).every(({ version }) => version === RECORD_VERSION)).toBe(true);
  });

  test('the table for a spreadsheet names its units', async ({ expect, page }) => {
    await leave(page, [slabs('a')]);
    await keep(page);
    const taking = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Table for a spreadsheet' }).click();
    const csv = await text(await taking);
    expect(csv).toContain('Bucket’s volume (L)');
    expect(csv).toContain('Slabs a');
  });
});
