import type { Page } from 'playwright-core';
import { describe } from 'vitest';
import { openPage, wakeWorksheets } from './browser.ts';
import {
  addPhoto,
  batchPage,
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

const notices = (on: Page) => on.locator('#notices').innerText();
const press = (on: Page, name: string) => on.getByRole('button', { name }).first().click();
/** The questions asked before a page is left; each is answered with yes. */
const askedOn = (on: Page) => {
  const asked: string[] = [];
  on.on('dialog', (dialog) => {
    asked.push(dialog.type());
    dialog.accept();
  });
  return asked;
};
const takenBy = async (on: Page, name: string) => {
  const taking = on.waitForEvent('download');
  await press(on, name);
  return JSON.parse(await text(await taking));
};
/** A page in a browser that lacks some of its storage, with what it complains of. */
const without = async (path: string, lacks: ('localStorage' | 'indexedDB')[]) => {
  const opened = await openPage('chapters/');
  await opened.context.addInitScript((lacks) => {
    for (const name of lacks)
      Object.defineProperty(window, name, {
        get: () => {
          throw new DOMException('denied', 'SecurityError');
        },
      });
  }, lacks);
  await opened.go(path);
  return opened;
};

describe.concurrent('more than a field keeps', () => {
  test('is refused and said, on the bench', async ({ expect, page }) => {
    await visit(page, 'foam/drainage/', '.worksheet');
    await wakeWorksheets(page);
    const lines = page.locator('.field.lines textarea').first();
    await lines.fill('2 0.04\n4 0.1');
    const many = Array.from({ length: 600 }, (_, i) => `${i + 1}\t0.04`).join('\n');
    await lines.fill(many);
    await expect.poll(() => notices(page)).toContain('more than one field keeps');
    await expect.poll(() => lines.inputValue()).toBe('2 0.04\n4 0.1');
    await page.reload();
    await expect.poll(() => lines.inputValue()).toBe('2 0.04\n4 0.1');
    expect(await notices(page)).toBe('');
  });

  test('is refused and said, in a record', async ({ expect, page }) => {
    await leave(page, [slabs('a')]);
    await visit(page, batchPage('a'), '.record');
    await page.locator('#record-full').fill('1'.repeat(4001));
    await expect.poll(() => notices(page)).toContain('more than one field keeps');
    await expect.poll(() => page.locator('#record-full').inputValue()).toBe('13.4');
    // A slip of a key in the year: the box takes four digits, and what is no day is not stored.
    await page.locator('#record-date').evaluate((box: HTMLInputElement) => {
      box.value = '20266-11-28';
      box.dispatchEvent(new Event('input', { bubbles: true }));
    });
    await page.locator('#record-notes').fill('after');
    await settled(page);
    expect(await page.locator('#record-date').getAttribute('max')).toBe('9999-12-31');
    await visit(page, LIST, '[data-records="there"]');
    expect(await stored(page)).toMatchObject([{ date: '2025-04-05', notes: 'after' }]);
  });
});

describe.concurrent('more than a record keeps', () => {
  test('of photos is refused and said, and what was to be put back waits', async ({
    expect,
    page,
  }) => {
    await leavePictured(page, 'a', 12);
    await visit(page, batchPage('a'), '.photos img');
    const figures = page.locator('.photos figure');
    await page.getByRole('button', { name: 'Remove photo 1', exact: true }).click();
    await expect.poll(() => stored(page, 'photos')).toHaveLength(11);
    await addPhoto(page);
    await expect.poll(() => figures.count()).toBe(12);
    await press(page, 'Put it back');
    await expect.poll(() => notices(page)).toContain('at most 12 photos');
    expect(await figures.count()).toBe(12);
    await page.getByRole('button', { name: 'Remove photo 12', exact: true }).click();
    await expect.poll(() => stored(page, 'photos')).toHaveLength(11);
    await page.locator('[data-notice="photo-p0"]').getByText('Put it back').click();
    await expect.poll(() => page.locator('.photos img').count()).toBe(12);
    await settled(page);
    const [{ photos }] = (await stored(page)) as [ReturnType<typeof slabs>];
    expect(photos.map(({ caption }) => caption)).toEqual(
      [...Array(12).keys()].map((i) => `No ${i}`),
    );
    expect(await stored(page, 'photos')).toHaveLength(12);
  });

  test('of notes waits on its page to be shortened, after the page was closed too', async ({
    expect,
    page,
  }) => {
    await leave(page, [slabs('a')]);
    const typed = slabs('a', { name: 'Renamed since', notes: 'x'.repeat(20_001) });
    await page.evaluate(
      (typed) => localStorage.setItem('suds.draft.1.a.x', JSON.stringify(typed)),
      { ...typed, changed: new Date(Date.now() - 60_000).toISOString() },
    );
    await page.reload();
    await expect.poll(() => notices(page)).toContain('“Renamed since” last is not stored');
    await press(page, 'Open it');
    await expect.poll(() => state(page)).toBe('refused');
    expect(await page.locator('.record-state').innerText()).toContain('20000 characters');
    expect((await page.locator('#record-notes').inputValue()).length).toBe(20_001);
    await page.locator('#record-notes').fill('short');
    await settled(page);
    expect(await stored(page)).toMatchObject([{ name: 'Renamed since', notes: 'short' }]);
  });

  test('a draft that cannot be opened is handed over as a file', async ({ expect, page }) => {
    await page.evaluate((bad) => localStorage.setItem('suds.draft.1.a.x', JSON.stringify(bad)), {
      ...slabs('a'),
      name: 5,
      notes: 'typed',
    });
    await page.reload();
    await expect.poll(() => notices(page)).toContain('cannot be opened here');
    expect((await takenBy(page, 'Take it out as a file')).batches).toMatchObject([
      { notes: 'typed' },
    ]);
    await page.reload();
    await press(page, 'Throw it away');
    await page.reload();
    await listed(page);
    expect(await notices(page)).toBe('');
  });
});

describe.concurrent('a fault of the program', () => {
  test('while a draft is taken up comes to light, and the list stands', async ({ expect }) => {
    const opened = await openPage('chapters/');
    const { page } = opened;
    await page.evaluate(
      (typed) => localStorage.setItem('suds.draft.1.a.x', JSON.stringify(typed)),
      slabs('a', { changed: '2025-04-05T12:00:00.000Z' }),
    );
    await opened.context.addInitScript(() => {
      IDBObjectStore.prototype.get = () => {
        throw new TypeError('taken up by nobody');
      };
    });
    await opened.go(LIST);
    await wakeWorksheets(page);
    await listed(page);
    await expect.poll(() => opened.complaints.join('\n')).toContain('taken up by nobody');
    expect(await page.locator('.records-failed').count()).toBe(0);
    await opened.close();
  });
});

describe.concurrent('a browser without room', () => {
  test('says that it cannot remove, removes for good when asked, and hands over what is not stored', async ({
    expect,
  }) => {
    const opened = await openPage('chapters/');
    const { page } = opened;
    const session = await opened.context.newCDPSession(page);
    const origin = new URL(page.url()).origin;
    await session.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 90_000 });
    await opened.go(LIST);
    await listed(page);
    // Each fits, and the two at once do not: so the bin has room for one.
    for (const id of ['a', 'c']) await leave(page, [slabs(id, { notes: 'x'.repeat(13_000) })]);
    await leave(page, [slabs('b')]);
    await visit(page, batchPage('b'), '.record');
    const long = 'It slumped at the far end. '.repeat(700);
    await page.locator('#record-notes').fill(long);
    await expect.poll(() => state(page)).toBe('refused');

    await visit(page, 'batch-records/keep/', '.batches-file');
    await wakeWorksheets(page);
    const { batches } = await takenBy(page, 'Take everything out');
    expect(batches.find(({ id }: { id: string }) => id === 'b').notes).toBe(long);
    expect(await page.locator('.batches-file [role="status"]').innerText()).toContain(
      'not stored yet',
    );

    await visit(page, LIST, '[data-records="there"]');
    await press(page, 'Remove all 3 batches');
    await expect.poll(() => notices(page)).toContain('Nothing was removed');
    expect((await stored(page)).length).toBe(3);
    await press(page, 'Remove them for good');
    await expect.poll(() => rows(page).count()).toBe(0);
    expect(await stored(page, 'bin')).toEqual([]);
    expect(opened.complaints).toEqual([]);
    await opened.close();
  });
});

describe.concurrent('a browser that stores nothing more', () => {
  test('does not ask about what its batch removed for good takes along', async ({
    expect,
    page,
  }) => {
    await leave(page, [slabs('a')]);
    await visit(page, batchPage('a'), '.record');
    await page.evaluate(() => {
      Storage.prototype.setItem = IDBObjectStore.prototype.put = () => {
        throw new DOMException('full', 'QuotaExceededError');
      };
    });
    await page.locator('#record-name').fill('Renamed');
    await page.locator('body[data-unheld]').waitFor();
    await press(page, 'Remove this batch');
    const asked = askedOn(page);
    await press(page, 'Remove it for good');
    await listed(page);
    expect(asked).toEqual([]);
    expect(await stored(page)).toEqual([]);
  });
});

describe.concurrent('a browser that stores no records', () => {
  test('hands over the bench, and a batch as a file', async ({ expect }) => {
    const opened = await without('first-batch/', ['indexedDB']);
    const { page } = opened;
    await wakeWorksheets(page);
    await page.evaluate(() => localStorage.setItem('suds.bench.1.bucket.tare', '{"t":"0.9"}'));
    await page.reload();
    await page.locator('[data-save-batch]').click();
    await page.locator('#save-batch-name').fill('North wall');
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await expect.poll(() => notices(page)).toContain('would not store anything');
    const batch = await takenBy(page, 'Take it out as a file');
    expect(batch.batches[0]).toMatchObject({ name: 'North wall', bench: { 'bucket.tare': {} } });
    expect(await page.locator('#save-batch-name').inputValue()).toBe('North wall');

    await opened.go('batch-records/keep/');
    await wakeWorksheets(page);
    expect((await takenBy(page, 'Take everything out')).bench).toEqual({
      'bucket.tare': { t: '0.9' },
    });
    for (const path of [LIST, 'batch-records/compare/', 'batch-records/learn/']) {
      await opened.go(path);
      await wakeWorksheets(page);
      await expect
        .poll(() => page.locator('.records-failed').first().innerText())
        .toContain('cannot be read here');
    }
    await opened.close();
  });
});

describe.concurrent('a browser that stores no readings', () => {
  test('says so, keeps them on the page, and lets them be saved', async ({ expect }) => {
    const opened = await without('foam/drainage/', ['localStorage']);
    const { page } = opened;
    await wakeWorksheets(page);
    const field = page.locator('.field.lines textarea').first();
    expect(await notices(page)).toBe('');
    await field.fill('2 0.04\n4 0.1');
    await expect.poll(() => notices(page)).toContain('refused to store your readings');
    await page.locator('[data-save-batch]').click();
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await expect.poll(() => notices(page)).toContain('is saved in this browser');
    expect(await notices(page)).not.toContain('until you leave it');
    await field.fill('2 0.04\n4 0.2');
    await expect.poll(() => notices(page)).toContain('refused to store your readings');
    await page.locator('[data-save-batch]').click();
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await expect.poll(() => notices(page)).not.toContain('until you leave it');
    const asked = askedOn(page);
    await press(page, 'Open its record');
    await page.locator('.record').waitFor();
    expect(asked).toEqual([]);
    await opened.go('bench/');
    await wakeWorksheets(page);
    await expect
      .poll(() => page.locator('.bench-contents').innerText())
      .toContain('stores nothing for this site');
    await opened.close();
  });
});

describe.concurrent('a browser that stores records alone', () => {
  test('is not said to lose what the run has in its record', async ({ expect }) => {
    const opened = await without('bench/run/', ['localStorage']);
    const { page } = opened;
    await page.getByRole('button', { name: 'Begin a batch' }).click();
    await page.locator('[data-run="0"]').waitFor();
    await page.getByRole('button', { name: /^Next/ }).click();
    for (const [id, text] of [
      ['record-tare', '0.85'],
      ['record-vessel', '20'],
      ['run-foam', '2.47'],
    ])
      await page.locator(`#${id}`).fill(text!);
    await expect.poll(() => page.locator('#record-foamDensity').inputValue()).toBe('81');
    expect(await notices(page)).toBe('');
    expect(await page.locator('body[data-unstored]').count()).toBe(0);
    await opened.close();
  });
});

describe.concurrent('a browser that keeps no drafts', () => {
  test('says so where two versions of a batch meet', async ({ expect }) => {
    const opened = await without(LIST, ['localStorage']);
    const { page } = opened;
    await listed(page);
    await leave(page, [slabs('a')]);
    await visit(page, batchPage('a'), '.record');
    await leave(page, [slabs('a', { revision: 2, notes: 'theirs' })]);
    await page.locator('#record-notes').fill('mine');
    await expect
      .poll(() => page.locator('.records-conflict').innerText())
      .toContain('No draft can be kept');
    await press(page, 'Keep what is here');
    await settled(page);
    expect(await stored(page)).toMatchObject([{ notes: 'mine', revision: 3 }]);
    await opened.close();
  });
});

describe.concurrent('what was removed', () => {
  test('and is saved again in another tab has its photos', async ({ expect, opened, page }) => {
    await leave(page, [slabs('a')]);
    await visit(page, batchPage('a'), '.record');
    await addPhoto(page);
    await settled(page);
    const other = await opened.tab();
    await visit(other, batchPage('a'), '.record');
    await press(other, 'Remove this batch');
    await listed(other);
    await expect.poll(() => state(page)).toBe('conflict');
    await press(page, 'Save it again');
    await settled(page);
    await page.reload();
    await page.locator('.photos img').waitFor();
    await other.getByText('In the bin: 1 batch').click();
    await other.locator('.records-bin').getByRole('button', { name: 'Put back' }).click();
    await expect.poll(() => notices(other)).toContain('is in the list already');
    expect((await stored(page, 'photos')).length).toBe(1);
  });

  test('is no longer offered once the bin is empty, and that it is gone is said', async ({
    expect,
    opened,
    page,
  }) => {
    await leave(page, [slabs('a'), slabs('b')]);
    await page.reload();
    await listed(page);
    await press(page, 'Remove Slabs a');
    await expect.poll(() => notices(page)).toContain('is in the bin');
    await page.getByText('In the bin: 1 batch').click();
    await press(page, 'Empty the bin for good');
    await expect.poll(() => notices(page)).toBe('');

    await press(page, 'Remove Slabs b');
    await expect.poll(() => notices(page)).toContain('is in the bin');
    const other = await opened.tab();
    await visit(other, LIST, '[data-records="there"]');
    await other.getByText('In the bin: 1 batch').click();
    await press(other, 'Empty the bin for good');
    await expect.poll(() => stored(page, 'bin')).toEqual([]);
    await page.locator('[data-notice="removed"]').getByText('Put back').click();
    await expect.poll(() => notices(page)).toContain('could not be put back');
  });
});
