import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { describe, type ExpectStatic } from 'vitest';
import { RECORD_VERSION } from '../../src/bench/records/record.ts';
import { type Opened, openPage } from './browser.ts';
import {
  batchPage,
  focused,
  LIST,
  leave,
  leavePictured,
  listed,
  rows,
  settled,
  slabs,
  state,
  stored,
  test,
  text,
  visit,
} from './records.ts';

describe.concurrent('a tab that dies', () => {
  test('in the middle of typing loses nothing', async ({ expect, opened, page }) => {
    await leave(page, [slabs('a')]);
    const tab = await opened.context.newPage();
    await visit(tab, batchPage('a'), '.record');
    const session = await opened.context.newCDPSession(tab);
    await tab.locator('#record-notes').fill('The third bucket was thin.');
    // No handler of the page runs when its process is gone.
    session.send('Page.crash').catch(() => {});
    await tab.waitForEvent('crash');
    await tab.close();

    await visit(page, batchPage('a'), '.record');
    await expect
      .poll(() => page.locator('#record-notes').inputValue())
      .toBe('The third bucket was thin.');
    await settled(page);
    expect((await stored(page))[0]!.notes).toBe('The third bucket was thin.');
    await expect.poll(() => page.locator('#notices').innerText()).toContain('here again');
  });

  test('while it saves leaves no half-written record', async ({ expect, opened, page }) => {
    await leave(page, [slabs('a')]);
    // From before the save begins until after it has ended.
    for (const wait of [350, 395, 405, 450]) {
      const tab = await opened.tab();
      await visit(tab, batchPage('a'), '.record');
      const text = `closed after ${wait} ms`;
      await tab.locator('#record-notes').fill(text);
      await tab.waitForTimeout(wait);
      await tab.close();
      const [record] = await stored(page);
      expect(Object.keys(record!).length).toBeGreaterThan(9);
      await visit(page, batchPage('a'), '.record');
      await expect.poll(() => page.locator('#record-notes').inputValue()).toBe(text);
      await settled(page);
    }
  });
});

describe.concurrent('a browser without room', () => {
  test('keeps what is typed, says so, and stores it when there is room again', async ({
    expect,
  }) => {
    // A browser asks once how much room there is, so it must be short of it from the beginning.
    const opened = await openPage('chapters/');
    const { page } = opened;
    const session = await opened.context.newCDPSession(page);
    const origin = new URL(page.url()).origin;
    await session.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 90_000 });
    await opened.go(LIST);
    await listed(page);
    await leave(page, [slabs('a')]);
    await visit(page, batchPage('a'), '.record');
    const long = 'It slumped at the far end. '.repeat(700);
    await page.locator('#record-notes').fill(long);
    await expect.poll(() => state(page)).toBe('refused');
    await expect.poll(() => page.locator('.record-state').innerText()).toContain('no room left');
    await expect.poll(() => page.locator('#record-notes').inputValue()).toBe(long);
    expect((await stored(page))[0]!.notes).toBe('');

    const taking = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Take this batch out' }).click();
    expect(await text(await taking)).toContain('It slumped');

    await session.send('Storage.overrideQuotaForOrigin', { origin });
    await page.getByRole('button', { name: 'Try to store it again' }).click();
    await settled(page);
    expect((await stored(page))[0]!.notes).toBe(long);
    expect(opened.complaints).toEqual([]);
    await opened.close();
  });
});

describe.concurrent('two tabs', () => {
  /** The same batch, open in two tabs: the second. */
  const openTwice = async (opened: Opened, page: Page) => {
    await leave(page, [slabs('a')]);
    const other = await opened.tab();
    await Promise.all([
      visit(page, batchPage('a'), '.record'),
      visit(other, batchPage('a'), '.record'),
    ]);
    return other;
  };

  /** Both are changed before either has saved; the tab that was late. */
  const typedAtOnce = async (expect: ExpectStatic, page: Page, other: Page) => {
    await Promise.all([
      page.locator('#record-notes').fill('first'),
      other.locator('#record-notes').fill('second'),
    ]);
    await expect
      .poll(async () => [await state(page), await state(other)].sort())
      .toEqual(['conflict', 'saved']);
    return (await state(other)) === 'conflict' ? other : page;
  };

  test('show the same while only one is typed in', async ({ expect, opened, page }) => {
    const other = await openTwice(opened, page);
    await page.locator('#record-notes').fill('from the first tab');
    await settled(page);
    await expect.poll(() => other.locator('#record-notes').inputValue()).toBe('from the first tab');
    await other.locator('#record-name').fill('Named in the second');
    await settled(other);
    await expect.poll(() => page.locator('#record-name').inputValue()).toBe('Named in the second');
    expect((await stored(page))[0]).toMatchObject({
      name: 'Named in the second',
      notes: 'from the first tab',
    });
  });

  test.for([
    ['Keep what is here', 'second', 1],
    ['Take what is in the other tab', 'first', 1],
    ['Keep both', 'first', 2],
  ] as const)(
    'typed in at once show both versions: %s',
    async ([choice, notes, count], { expect, opened, page }) => {
      const other = await openTwice(opened, page);
      const late = await typedAtOnce(expect, page, other);
      const [mine, theirs] = late === other ? ['second', 'first'] : ['first', 'second'];
      const shown = await late.locator('.records-conflict').innerText();
      expect(shown).toContain(mine);
      expect(shown).toContain(theirs);
      expect((await stored(page)).map((record) => record.notes)).toEqual([theirs]);

      const alert = late.getByRole('alert');
      expect(await alert.locator('table').count()).toBe(0);
      await late.getByRole('button', { name: choice }).press('Enter');
      await settled(late);
      await expect.poll(() => alert.count()).toBe(0);
      expect(await focused(late)).toBe('record-state');
      const after = await stored(page);
      expect(after.length).toBe(count);
      const kept = after.find(({ id }) => id === 'a')!.notes;
      expect(kept).toBe(notes === 'second' ? mine : theirs);
      if (count === 2) expect(after.find(({ id }) => id !== 'a')!.notes).toBe(mine);
    },
  );

  test('in a conflict the latest of the other is shown and taken', async ({
    expect,
    opened,
    page,
  }) => {
    const other = await openTwice(opened, page);
    const late = await typedAtOnce(expect, page, other);
    const first = late === other ? page : other;
    await first.locator('#record-notes').fill('later in the other tab');
    await settled(first);
    await expect
      .poll(() => late.locator('.records-conflict').innerText())
      .toContain('later in the other tab');
    await late.getByRole('button', { name: 'Take what is in the other tab' }).click();
    await settled(late);
    expect(await late.locator('#record-notes').inputValue()).toBe('later in the other tab');
  });

  test('a photo removed in the one that was late is there when the other is taken', async ({
    expect,
    opened,
    page,
  }) => {
    const other = await openTwice(opened, page);
    await leavePictured(page, 'a', 1);
    await Promise.all([page.reload(), other.reload()]);
    await Promise.all([page, other].map((tab) => tab.locator('.photos img').waitFor()));
    const late = await typedAtOnce(expect, page, other);
    await late.getByRole('button', { name: 'Remove photo 1' }).click();
    await expect.poll(() => late.locator('.photos img').count()).toBe(0);
    await late.getByRole('button', { name: 'Take what is in the other tab' }).click();
    await settled(late);
    await late.locator('.photos img').waitFor();
    expect((await stored(page))[0]!.photos.length).toBe(1);
    expect((await stored(page, 'photos')).length).toBe(1);
    // Put back, it is not there twice.
    await late.locator('[data-notice="photo"]').getByText('Put it back').click();
    expect(await late.locator('.photos figure').count()).toBe(1);
  });

  test('one that removes it does not see it come back unasked', async ({
    expect,
    opened,
    page,
  }) => {
    const other = await openTwice(opened, page);
    await other.getByRole('button', { name: 'Remove this batch' }).click();
    await listed(other);
    await expect.poll(() => state(page)).toBe('conflict');
    await expect
      .poll(() => page.locator('.records-conflict').innerText())
      .toContain('another tab removed it');
    expect(await stored(page)).toEqual([]);
    await page.getByRole('button', { name: 'Save it again' }).click();
    await settled(page);
    expect((await stored(page)).length).toBe(1);
  });
});

describe.concurrent('records of another version', () => {
  test('those of every earlier one are brought up to date and stored anew', async ({
    expect,
    page,
  }) => {
    const folder = new URL('../bench/records/fixtures/', import.meta.url);
    const older = Array.from({ length: RECORD_VERSION }, (_, version) => {
      const file = readFileSync(new URL(`version-${version}.json`, folder), 'utf8');
      const { batches }: { batches: { id: string }[] } = JSON.parse(file);
      return batches.map((batch) => ({ ...batch, id: `v${version}-${batch.id}` }));
    }).flat();
    await leave(page, older);
    await page.reload();
    await listed(page);
    await expect.poll(() => rows(page).count()).toBe(older.length);
    const texts = (await rows(page).allInnerTexts()).join('\n');
    for (const name of ['No version written at all', 'Slabs, first trial'])
      expect(texts).toContain(name);
    const records = await stored(page);
    expect(records.map(({ id }) => id).sort()).toEqual(older.map(({ id }) => id).sort());
    expect(records.filter(({ version }) => version !== RECORD_VERSION)).toEqual([]);
    expect(records.find(({ id }) => id === 'v0-trial-1')).toMatchObject({
      readings: { cement: { t: '13.56', u: 'kg' } },
    });
    expect(records.find(({ id }) => id === 'v1-corrected')!.corrections.length).toBeGreaterThan(0);
    await visit(page, batchPage('v0-trial-1'), '.record');
    await page.locator('[data-stage="mixed"] summary').click();
    await expect.poll(() => page.locator('#record-cement').inputValue()).toBe('13.56');
  });

  test('a later one is left as it is', async ({ expect, page }) => {
    await leave(page, [{ ...slabs('new'), version: RECORD_VERSION + 1, more: true }, slabs('a')]);
    await page.reload();
    await listed(page);
    expect(await rows(page).count()).toBe(1);
    await expect
      .poll(() => page.locator('.records').innerText())
      .toContain(
        'One more belongs to a later version of this handbook and was left as it is. Reload',
      );
    expect((await stored(page)).find(({ id }) => id === 'new')).toMatchObject({ more: true });
  });

  test('a later one that comes under an open page is not taken for removed, and not overwritten', async ({
    expect,
    page,
  }) => {
    await leave(page, [slabs('a')]);
    await visit(page, batchPage('a'), '.record');
    await leave(page, [{ ...slabs('a'), version: RECORD_VERSION + 1, more: true }]);
    await page.locator('#record-notes').fill('typed here');
    await expect.poll(() => state(page)).toBe('refused');
    expect(await page.locator('.record-state').innerText()).toContain('later version');
    expect(await page.locator('.records-conflict').count()).toBe(0);
    expect(await stored(page)).toMatchObject([{ more: true, notes: '' }]);
  });

  test('a damaged one is set aside, reported, and can be taken out; the rest opens', async ({
    expect,
    page,
  }) => {
    await leave(page, [slabs('a'), { id: 'bad', version: 1, name: 5 }, { id: 'worse' }]);
    await page.reload();
    await listed(page);
    await expect.poll(() => page.locator('#notices').innerText()).toContain('could not be read');
    expect(await rows(page).count()).toBe(1);
    expect((await stored(page)).map(({ id }) => id)).toEqual(['a']);
    const taking = page.waitForEvent('download');
    await page.getByRole('button', { name: 'as found' }).click();
    expect(await text(await taking)).toContain('"name": 5');
  });
});
