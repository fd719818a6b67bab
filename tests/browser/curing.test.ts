import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, describe, expect, test } from 'vitest';
import { type Opened, openPage, wakeWorksheets } from './browser.ts';
import { shown } from './shown.ts';

let opened: Opened;

const open = async (path: string) => {
  opened = await openPage(path);
  await wakeWorksheets(opened.page);
  return opened.page;
};
afterEach(async () => {
  expect(opened.complaints).toEqual([]);
  await opened.close();
});

test('the time since a casting that lies on the bench is offered, and used when pressed', async () => {
  const page = await open('demoulding/when-to-strip/');
  const now = page.locator('#strip-window-now');
  const offered = page.getByRole('button', { name: /since “Cast at”/ });
  expect(await offered.count()).toBe(0);
  // 26 h and a minute ago, by the clock of this browser.
  await page.evaluate(() => {
    const at = new Date(Date.now() - 26 * 3_600_000 - 60_000);
    at.setMinutes(at.getMinutes() - at.getTimezoneOffset());
    localStorage.setItem(
      'suds.bench.1.curing.castAt',
      JSON.stringify({ t: at.toISOString().slice(0, 16) }),
    );
  });
  await opened.go('demoulding/when-to-strip/');
  await wakeWorksheets(page);
  await expect.poll(() => offered.innerText()).toMatch(/^Use 26\.0\sh since/);
  expect(await now.inputValue()).not.toContain('26');
  await offered.click();
  await expect.poll(() => now.inputValue()).toMatch(/^26\.0\sh$/);
});

describe('a logger’s file', () => {
  test('that cannot be read, as it was moved or is a folder, is told of', async () => {
    const page = await open('curing/temperature-and-age/');
    await page.evaluate(() => {
      Blob.prototype.arrayBuffer = () => Promise.reject(new DOMException('', 'NotFoundError'));
    });
    const file = { name: 'shed.csv', mimeType: 'text/csv', buffer: Buffer.from('14:00;20') };
    await page.locator('#log-file').setInputFiles(file);
    await expect
      .poll(() => page.locator('.drop').innerText(), { timeout: 5000 })
      .toContain('‘shed.csv’ cannot be read');
  });

  test('is read row by row, counted from, and shared with the next page', async () => {
    const page = await open('curing/temperature-and-age/');
    const fetched: string[] = [];
    page.on('request', (request) => fetched.push(request.url()));
    // A day at a steady 20 °C counts as a day, whatever the law.
    await page.locator('#log-file').setInputFiles({
      name: 'shed.csv',
      mimeType: 'text/csv',
      buffer: Buffer.from(
        'logger 7\nwhen;°C\n2026-03-01 09:00;20,0\nno reading;–\n2026-03-02 09:00;20,0\n',
      ),
    });
    const told = page.locator('.drop [role="status"]').first();
    await expect.poll(() => told.innerText(), { timeout: 5000 }).toContain('2 readings in °C');
    await expect.poll(() => told.innerText()).toContain('Rows 1–2: a heading');
    await expect.poll(() => told.innerText()).toContain('Row 4: no time');
    expect(fetched.some((url) => url.includes('papaparse'))).toBe(true);
    // Mended, it may be chosen again under its name.
    expect(await page.locator('#log-file').inputValue()).toBe('');
    await page.getByRole('button', { name: 'Use these readings' }).click();
    await expect.poll(() => shown(opened.page, 'temperature-age', 'age')).toBe('1.00 d');
    await expect
      .poll(() => page.locator('#temperature-age-castAt').inputValue())
      .toBe('2026-03-01T09:00');

    await opened.go('curing/plan/');
    await wakeWorksheets(page);
    await expect
      .poll(() => page.locator('#curing-plan-readings').inputValue())
      .toBe('0\t20\n24\t20');
  });

  test('dragged as text, lies in the box as if it were pasted', async () => {
    const page = await open('curing/temperature-and-age/');
    const box = page.locator('#log-text');
    await box.scrollIntoViewIfNeeded();
    const { x, y } = (await box.boundingBox())!;
    const session = await opened.context.newCDPSession(page);
    for (const type of ['dragEnter', 'dragOver', 'drop'] as const)
      await session.send('Input.dispatchDragEvent', {
        type,
        x: x + 20,
        y: y + 20,
        data: {
          items: [{ mimeType: 'text/plain', data: '2026-03-01 09:00;20,0' }],
          dragOperationsMask: 1,
        },
      });
    await expect.poll(() => box.inputValue()).toBe('2026-03-01 09:00;20,0');
    await expect.poll(() => page.locator('.drop').innerText()).toContain('1 reading in °C');
  });

  test('typed, is spoken of once it has settled, in a place that stood before', async () => {
    const page = await open('curing/temperature-and-age/');
    const told = page.locator('.drop [role="status"]');
    await told.evaluate((place) => {
      const heard: string[] = [];
      Object.assign(window, { heard });
      new MutationObserver(() => heard.push(place.textContent!)).observe(place, {
        childList: true,
        characterData: true,
        subtree: true,
      });
    });
    await page
      .locator('#log-text')
      .pressSequentially('2026-05-08 14:00;20.1\n2026-05-08 15:00;20.6', { delay: 20 });
    await expect.poll(() => told.innerText(), { timeout: 5000 }).toContain('2 readings');
    await page.getByRole('button', { name: 'Use these readings' }).click();
    await expect.poll(() => told.innerText(), { timeout: 3000 }).toContain('On the bench');
    const heard = await page.evaluate(() => (window as unknown as { heard: string[] }).heard);
    expect(heard.filter(Boolean)).toHaveLength(2);
    const box = (await page.locator('.drop [type="checkbox"]').boundingBox())!;
    expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(20);
  });

  const logged = (first: string, hours: number, row: (at: string, hour: number) => string) =>
    Array.from({ length: hours + 1 }, (_, hour) =>
      row(new Date(Date.parse(`${first}Z`) + hour * 3_600_000).toISOString().slice(0, 16), hour),
    ).join('\n');
  const readings = () => opened.page.locator('#temperature-age-readings').inputValue();
  const use = () => opened.page.getByRole('button', { name: 'Use these readings' });

  test('that has only the clock is placed on the day it is told, once the casting is known', async () => {
    const page = await open('curing/temperature-and-age/');
    await page.locator('#temperature-age-castAt').fill('2026-01-09T16:00');
    await page
      .locator('#log-text')
      .fill(
        logged(
          '2026-01-09T04:00',
          36,
          (at, hour) => `${at.slice(11)},${hour < 12 || hour === 36 ? 22 : 6}`,
        ),
      );
    const day = page.getByLabel('These clocks name no day. The first reading is:');
    await day.waitFor();
    expect(await use().count()).toBe(0);
    await day.selectOption({ label: 'Fri\u00a09\u00a0Jan, 04:00' });
    await use().click();
    await expect.poll(readings).toMatch(/^0\t6\n1\t6\n/);
    expect(await readings()).toMatch(/\n24\t22$/);
    await day.selectOption({ label: 'the casting' });
    await expect
      .poll(() => page.locator('.drop').innerText())
      .toContain('The first is taken as the casting.');
  });

  test('is counted from its first reading where the casting is asked for, and says so', async () => {
    const page = await open('curing/temperature-and-age/');
    await page.locator('#temperature-age-castAt').fill('');
    await page.locator('#log-text').fill(logged('2026-05-08T06:00', 26, (at) => `${at},20`));
    const box = page.locator('.drop [type="checkbox"]');
    await box.waitFor();
    expect([await box.isChecked(), await box.isDisabled()]).toEqual([false, true]);
    await use().click();
    await expect
      .poll(() => page.locator('#temperature-age-castAt').inputValue())
      .toBe('2026-05-08T06:00');
  });

  test('to the second is counted from the minute that Cast at then says, and is on the bench', async () => {
    const page = await open('curing/temperature-and-age/');
    await page.locator('#log-text').fill('2026-05-08 06:00:36;20\n2026-05-08 07:00:36;21');
    await use().click();
    await expect.poll(readings).toBe('0.01\t20\n1.01\t21');
    await expect
      .poll(() => page.locator('.drop [role="status"]').innerText(), { timeout: 3000 })
      .toContain('On the bench');
  });

  test('is counted anew from a casting that is corrected, on another page too', async () => {
    const page = await open('curing/temperature-and-age/');
    await page
      .locator('#log-text')
      .fill(
        logged(
          '2026-01-08T00:00',
          70,
          (at, hour) => `${at},${Math.max(-2, 22 - 3 * Math.max(0, hour - 46))}`,
        ),
      );
    await use().click();
    const drop = page.locator('.drop');
    await expect.poll(() => drop.innerText()).toContain('On the bench');
    await opened.go('curing/frost/');
    await wakeWorksheets(page);
    const field = page.locator('#frost-guard-readings');
    const notice = page.locator('.field.lines + .problem');
    await field.waitFor();
    expect(await notice.count()).toBe(0);
    await page.locator('#frost-guard-castAt').fill('2026-01-09T16:00');
    await notice.waitFor();
    expect(await notice.innerText()).toMatch(/a casting on Thu\s8\sJan, 00:00/);
    await notice.getByRole('button').click();
    await expect.poll(() => field.inputValue()).toMatch(/^0\t22\n[\s\S]*\n30\t-2$/);
    expect(await notice.count()).toBe(0);
    await expect
      .poll(() => page.locator('[data-worksheet="frost-guard"]').innerText())
      .toMatch(/Sat\s10\sJan, 05:00/);
  });

  test('does not bring its library along before there is a file', async () => {
    const page = await open('curing/temperature-and-age/');
    const scripts = await page.evaluate(() =>
      performance.getEntriesByType('resource').map(({ name }) => name),
    );
    expect(scripts.filter((name) => /papaparse|logger-file/.test(name))).toEqual([]);
  });
});

test('the curing plan can be taken along as a calendar file', async () => {
  const page = await open('curing/plan/');
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save the longest as a calendar file' }).click(),
  ]);
  expect(file.suggestedFilename()).toBe('curing-plan.ics');
  const folder = await mkdtemp(join(tmpdir(), 'plan-'));
  await file.saveAs(join(folder, 'plan.ics'));
  const text = await readFile(join(folder, 'plan.ics'), 'utf8');
  await rm(folder, { recursive: true });
  expect(text.startsWith('BEGIN:VCALENDAR\r\nVERSION:2.0\r\n')).toBe(true);
  expect(text.endsWith('END:VCALENDAR\r\n')).toBe(true);
  // The longest alone: seven days at 10 °C or more, from Friday 8 May at two.
  expect(text.match(/^DTSTART.*$/gm)).toEqual(['DTSTART:20260517T040000']);
  // Nobody has entered a casting yet: the file must not pass for somebody's plan.
  expect(text).toMatch(/^SUMMARY:Example: curing may end\\, by the longest of three rules: /m);
  expect(text).not.toContain('SUMMARY:Curing may end');
  await page.locator('#curing-plan-days').fill('12\t20\n-3\t4');
  await expect
    .poll(() => page.getByRole('button', { name: 'Save the longest as a calendar file' }).count())
    .toBe(0);
});

test('a printed curing plan names what is still invented, and is one page', async () => {
  const page = await open('curing/plan/');
  const days = page.locator('label[for="curing-plan-days"]');
  const mark = () => days.evaluate((label) => getComputedStyle(label, '::after').content);
  expect(await mark()).toBe('none');
  await page.locator('#curing-plan-castAt').fill('2026-11-20T14:00');
  await page.emulateMedia({ media: 'print' });
  expect(await days.isVisible()).toBe(true);
  expect(await page.locator('#curing-plan-days').isVisible()).toBe(false);
  expect(await mark()).toContain('invented example’s');
  await page.emulateMedia({ media: null });
  for (const format of ['A4', 'Letter']) {
    const pages = (await page.pdf({ format })).toString('latin1').match(/\/Type\s*\/Page\b/g);
    expect(pages?.length, format).toBe(1);
  }
});

test('calcium chloride with steel is refused in words', async () => {
  const page = await open('curing/set/');
  await page.locator('#set-time-accelerator-chloride').check();
  const outcome = page.locator('[data-worksheet="set-time"] .outcome');
  await expect.poll(() => outcome.innerText()).toContain('Calcium chloride with steel: never.');
  await page.locator('#set-time-steel-no').check();
  await expect.poll(() => shown(opened.page, 'set-time', 'initial')).toBe('1.8 h');
});

test('a thicker part is hotter inside, and says when it is too hot', async () => {
  const page = await open('curing/heat-inside/');
  await page.locator('#heat-inside-thickness').fill('600');
  await expect
    .poll(() => page.locator('[data-worksheet="heat-inside"] .outcome').innerText())
    .toContain('Stop.');
  // A mesh apart by an explicit scheme of 120 cells it is 110.60; the page shows whole degrees.
  expect(await shown(opened.page, 'heat-inside', 'peak')).toBe('111 °C');
});

test('heat by thickness and density fits a phone, and on a desk an amount breaks only between its halves', async () => {
  const page = await open('curing/heat-inside/');
  const table = page.getByRole('group', { name: 'By thickness and density' });
  const lines = () =>
    table.locator('td .kept').evaluateAll((all) => all.map((e) => e.clientHeight));
  expect(Math.max(...(await lines()))).toBeLessThan(30);
  await page.setViewportSize({ width: 360, height: 780 });
  const [whole, seen] = await table.evaluate((e) => [e.scrollWidth, e.clientWidth]);
  expect(whole).toBeLessThanOrEqual(seen!);
  expect(Math.max(...(await lines()))).toBeGreaterThan(30);
});
