import type { Page } from 'playwright-core';
import { describe } from 'vitest';
import { press } from './keyboard.ts';
import {
  beginRun,
  focused,
  LIST,
  leave,
  listed,
  listenTo,
  rows,
  slabs,
  stored,
  test,
  visit,
} from './records.ts';

/** Stands in for a browser that answers as told, and counts how often it was asked. */
const answering = (page: Page, granted: boolean) =>
  page.addInitScript((granted) => {
    // The empty page between two visits has no storage.
    if (!navigator.storage) return;
    const asked = () => Number(localStorage.getItem('test.asked') ?? 0);
    navigator.storage.persist = async () => {
      localStorage.setItem('test.asked', String(asked() + 1));
      return granted;
    };
    navigator.storage.persisted = async () => granted && asked() > 0;
    navigator.storage.estimate = async () => ({ usage: 3_400_000, quota: 2e9 });
  }, granted);

const asked = (page: Page) => page.evaluate(() => localStorage.getItem('test.asked'));
const room = (page: Page) => page.locator('.records-room');

describe.concurrent('the room records take', () => {
  test('is shown, and a promise to keep them is shown when it is given', async ({
    expect,
    page,
  }) => {
    await answering(page, true);
    await visit(page, LIST, '.records-room p');
    const text = await room(page).innerText();
    expect(text).toContain('uses 3.4\u00a0MB of the 2.0\u00a0GB');
    expect(text).toContain('may clear it when the disk is full');
    expect(await asked(page)).toBeNull();
    await press(page, 'Ask the browser to keep your records');
    await expect.poll(() => room(page).innerText()).toContain('promised to keep it');
    expect(await focused(page)).toBe('records-room');
    expect(await asked(page)).toBe('1');
  });

  test('stays in doubt when the browser does not promise, and says what to do', async ({
    expect,
    page,
  }) => {
    await answering(page, false);
    await visit(page, LIST, '.records-room p');
    const heard = await listenTo(page, '.records-room [role="status"]');
    await page.getByRole('button', { name: 'Ask the browser to keep your records' }).click();
    await expect.poll(async () => (await heard()).join()).toContain('take a backup meanwhile');
    await expect.poll(() => room(page).innerText()).toContain('may clear it');
  });

  test('is asked for with each batch begun, on the list and at the bench', async ({
    expect,
    page,
  }) => {
    await answering(page, false);
    await visit(page, LIST, '[data-records="there"]');
    await page.getByRole('button', { name: 'Begin it empty' }).click();
    await page.locator('.record').waitFor();
    expect(await asked(page)).toBe('1');
    await beginRun(page);
    expect(await asked(page)).toBe('2');
  });
});

describe.concurrent('the bin', () => {
  test('shows the day of removal where the reader is', async ({ expect, opened, page }) => {
    const session = await opened.context.newCDPSession(page);
    await session.send('Emulation.setTimezoneOverride', { timezoneId: 'America/New_York' });
    const removed = '2025-05-31T00:30:00.000Z';
    await leave(page, [{ id: 'a', removed, record: slabs('a'), photos: [] }], 'bin');
    await page.reload();
    await page.getByText('In the bin: 1 batch').click();
    await expect
      .poll(() => page.locator('.records-bin').innerText())
      .toContain('removed 30\u00a0May\u00a02025');
  });
});

describe.concurrent('the bin by keys alone', () => {
  test('names each that can be put back, and the focus stays near', async ({ expect, page }) => {
    await leave(page, [slabs('a'), slabs('b')]);
    await page.reload();
    await listed(page);
    await press(page, 'Remove all 2 batches');
    await page.locator('[data-notice="removed"]').getByText('Close').click();
    const bin = page.locator('#records-bin');
    await bin.press('Enter');
    await page.getByRole('button', { name: 'Put back “Slabs a”', exact: true }).press('Enter');
    await expect.poll(() => rows(page).count()).toBe(1);
    expect(await focused(page)).toBe('records-bin');
    await page.getByRole('button', { name: 'Put back “Slabs b”', exact: true }).press('Enter');
    await expect.poll(() => rows(page).count()).toBe(2);
    expect(await focused(page)).toBe('records-room');

    await page.getByRole('button', { name: 'Remove Slabs a' }).press('Enter');
    await bin.press('Enter');
    await press(page, 'Empty the bin for good');
    await expect.poll(() => bin.count()).toBe(0);
    expect(await focused(page)).toBe('records-room');
  });

  test('two put back within a moment leave the focus near too', async ({ expect, page }) => {
    await leave(page, [slabs('a'), slabs('b')]);
    await page.reload();
    await listed(page);
    await press(page, 'Remove all 2 batches');
    await page.locator('#records-bin').press('Enter');
    await page.locator('.records-bin').evaluate(async (list) => {
      for (let left = 2; left > 0; left--) {
        list.querySelector('button')!.click();
        // The page has drawn; its store has not answered.
        await Promise.resolve();
        await Promise.resolve();
      }
    });
    await expect.poll(() => rows(page).count()).toBe(2);
    await expect.poll(() => page.locator('#records-bin').count()).toBe(0);
    expect(await focused(page)).toBe('records-room');
  });
});

describe.concurrent('all batches at once', () => {
  test('go into the bin and come back, by keys alone', async ({ expect, page }) => {
    await leave(page, [slabs('a'), slabs('b'), slabs('c')]);
    await page.reload();
    await listed(page);
    await press(page, 'Remove all 3 batches');
    await expect.poll(() => rows(page).count()).toBe(0);
    expect((await stored(page, 'bin')).length).toBe(3);
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('records-name');
    await press(page, 'Put back');
    await expect.poll(() => rows(page).count()).toBe(3);
    expect(await stored(page, 'bin')).toEqual([]);
  });
});
