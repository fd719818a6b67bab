import { describe } from 'vitest';
import { beginRun, leave, stored, test, text } from './records.ts';
import { turns } from './turns.ts';

describe.concurrent('a run that was left, or not stored', () => {
  test('a batch that was stopped for another has its foam, its foam’s vessel and its clock when it is gone on with', async ({
    expect,
    page,
  }) => {
    const next = page.getByRole('button', { name: /^Next/ });
    const step = (n: number) => page.locator(`[data-run="${n}"]`).waitFor();
    const stop = page.getByRole('button', { name: /^Stop here/ });
    const clock = () => page.evaluate(() => localStorage.getItem('suds.clock.1'));
    const value = (id: string) => page.locator(`#${id}`).inputValue();
    await beginRun(page);
    for (const name of ['I put in exactly that', 'I put in exactly that'])
      await page.getByRole('button', { name }).first().click();
    await next.click();
    await step(1);
    await page.getByRole('button', { name: /Foam made/ }).click();
    const started = await clock();
    for (const [id, text] of [
      ['record-tare', '0.85'],
      ['record-vessel', '20'],
      ['run-foam', '2.47'],
    ])
      await page.locator(`#${id}`).fill(text!);
    await expect.poll(() => value('record-foamDensity')).toBe('81');
    await next.click();
    await step(2);
    // The foam's bucket is folded away, and is the blend's until another is typed.
    await page.locator('.run .folded > summary').click();
    await page.locator('#record-tare').fill('0.35');
    await page.locator('#record-vessel').fill('1');
    // Started again by mistake: that can be put back while this batch is at the bench, and no longer.
    // By key: a second tap so soon would not count.
    await page.getByRole('button', { name: 'Stop', exact: true }).press('Enter');
    await page.getByRole('button', { name: 'New foam: start again' }).press('Enter');
    await page.locator('[data-notice="clock"]').getByText('Put it back').click();
    await expect.poll(clock).toContain('"stop"');
    await page.getByRole('button', { name: 'New foam: start again' }).press('Enter');
    await page.locator('[data-notice="clock"]').waitFor();
    await stop.click();
    await page.locator('[data-run="begin"]').waitFor();
    expect(await page.locator('[data-notice="clock"]').count()).toBe(0);
    const again = await clock();
    expect(again).not.toBe(started);
    // Stored once typing rests; no hand is faster than that to another batch and back.
    const made = new Date(JSON.parse(again!).start).toISOString();
    await expect.poll(async () => (await stored(page))[0]!.foamMade).toBe(made);

    await page.getByRole('button', { name: 'Begin a batch' }).click();
    await step(0);
    expect(await clock()).toBeNull();
    await next.click();
    await step(1);
    await page.getByRole('button', { name: /Foam made/ }).click();
    await stop.click();
    await page.getByRole('button', { name: /not placed yet/ }).click();
    await step(2);
    expect(await clock()).toBe(again);
    expect(await value('record-vessel')).toBe('1');
    await page.getByRole('button', { name: 'Back', exact: true }).click();
    await step(1);
    expect(
      await Promise.all(['record-vessel', 'run-foam', 'record-foamDensity'].map(value)),
    ).toEqual(['20', '2.47', '81']);
  });

  test('a cleared clock takes its time out of the record, and once the batch is placed no clock is its foam’s', async ({
    expect,
    page,
  }) => {
    await beginRun(page);
    const next = page.getByRole('button', { name: /^Next/ });
    const made = async () => (await stored(page))[0]!.foamMade;
    const clock = () => page.evaluate(() => localStorage.getItem('suds.clock.1'));
    // By key: a second tap so soon would not count.
    const key = (name: string) => page.getByRole('button', { name, exact: true }).press('Enter');
    const clear = async () => {
      await key('Clear');
      await expect.poll(made).toBeUndefined();
    };
    await next.click();
    await key('Foam made: start');
    await expect.poll(made).toBeDefined();
    const first = await made();
    await key('Stop');
    await clear();
    // What is written down meanwhile begins the batch, which is then younger than its foam.
    const putIn = page.locator('#record-foamVolume');
    await putIn.fill('25');
    await expect.poll(async () => (await stored(page))[0]!.readings.foamVolume?.t).toBe('25');
    await key('Put it back');
    await expect.poll(made).toBe(first);
    await putIn.fill('');
    await clear();
    await key('Back');
    // What is weighed in later is no older than that, though its foam was said to be.
    await page.evaluate(() => {
      const now = Date.now;
      Date.now = () => now() + 8 * 3_600_000;
    });
    await page.locator('#record-water').fill('5.43');
    const begun = () => page.evaluate(() => JSON.parse(localStorage.getItem('suds.run.1')!).begun);
    await expect.poll(begun).toBeGreaterThan(Date.parse(first!) + 7 * 3_600_000);
    await next.click();
    await key('Foam made: start');
    await expect.poll(made).toBeDefined();
    const second = await made();
    for (const step of [2, 3]) {
      await next.click();
      await page.locator(`[data-run="${step}"]`).waitFor();
    }
    await page.locator('#record-placed').fill('30');
    await expect.poll(async () => (await stored(page))[0]!.readings.placed?.t).toBe('30');
    await key('Stop');
    const stopped = await clock();
    await key('New foam: start again');
    await expect.poll(clock).not.toBe(stopped);
    // Stored after it.
    await page.locator('#record-leftOver').fill('1');
    await expect.poll(async () => (await stored(page))[0]!.readings.leftOver?.t).toBe('1');
    expect(await made()).toBe(second);
  });

  test('a run left yesterday is not walked into: it is said first, and may be written up', async ({
    expect,
    page,
  }) => {
    await beginRun(page);
    expect(await page.locator('[data-save-batch]').isVisible()).toBe(false);
    await page.locator('#record-water').fill('1.23');
    await page.getByRole('button', { name: /^Next/ }).click();
    await page.getByRole('button', { name: /Foam made/ }).click();
    await page.evaluate(() => {
      const [run, clock] = ['suds.run.1', 'suds.clock.1'].map((key) => ({
        key,
        was: JSON.parse(localStorage.getItem(key)!),
      })) as [{ key: string; was: { begun: number } }, { key: string; was: { start: number } }];
      const ago = 22 * 3_600_000;
      localStorage.setItem(run.key, JSON.stringify({ ...run.was, begun: run.was.begun - ago }));
      localStorage.setItem(clock.key, JSON.stringify({ start: clock.was.start - ago }));
    });
    await page.reload();
    await expect.poll(() => page.locator('.run').innerText()).toContain('half a day ago');
    await page.getByRole('button', { name: /^Go on with/ }).click();
    await page.locator('[data-run="1"]').waitFor();
    const [before] = await stored(page);
    for (const step of [1, 2, 3]) {
      await page.locator(`[data-run="${step}"]`).waitFor();
      expect(await page.locator('[role="timer"]').count()).toBe(0);
      expect(await page.locator('.run > .verdict').innerText()).toContain('place nothing of it');
      await page.getByRole('button', { name: /^Next/ }).click();
    }
    await page.getByRole('button', { name: /^Stop here/ }).click();
    await page.getByRole('button', { name: 'Begin a batch' }).click();
    await page.locator('[data-run="0"]').waitFor();
    await page.getByRole('button', { name: /^Stop here/ }).click();
    // Another batch makes it no younger.
    const again = page.getByRole('button', { name: /^Write up .* mix and place nothing of it/ });
    await again.click();
    await page.locator('[data-run="4"]').waitFor();
    expect(await page.locator('.run > .verdict').innerText()).toContain('half a day ago');
    const after = (await stored(page)).find(({ id }) => id === before!.id)!;
    expect(after.foamMade).toBe(before!.foamMade);
  });

  test('a batch begun one day and weighed on another goes by that day in its name too', async ({
    expect,
    page,
  }) => {
    await beginRun(page);
    const named = async () => {
      const { name, date } = (await stored(page))[0]!;
      return [name.replace(/\D*(\d+)\D.*/, '$1'), date.replace(/.*-0?/, '')];
    };
    const [day] = await named();
    await page.evaluate(() => {
      const now = Date.now;
      Date.now = () => now() + 24 * 3_600_000;
    });
    await page.locator('#record-water').fill('1.23');
    await expect.poll(async () => (await named())[0]).not.toBe(day);
    const [name, date] = await named();
    expect(name).toBe(date);
  });

  test('a device whose clock is set back writes down its foam all the same, and says when its age is not known', async ({
    expect,
    page,
  }) => {
    await beginRun(page);
    const setBack = (minutes: number) =>
      page.evaluate((ms) => {
        const now = Date.now;
        Date.now = () => now() - ms;
      }, minutes * 60_000);
    await setBack(10);
    await page.getByRole('button', { name: /^Next/ }).click();
    await page.getByRole('button', { name: /Foam made/ }).click();
    await expect.poll(async () => (await stored(page))[0]?.foamMade).toBeDefined();
    const clock = page.locator('.foam-clock');
    const figures = clock.locator('.clock-figures');
    await expect.poll(() => figures.innerText()).toMatch(/^0:0[1-9]/);
    await setBack(60);
    await expect.poll(() => figures.innerText()).toBe('?');
    expect(await clock.innerText()).toContain('Go by another clock');
    // Long after, as well: it looks four times a second.
    await setBack(-300);
    await turns(page, 600);
    expect(await figures.innerText()).toBe('?');
  });

  test('a run left open over night says so when it is seen again, and one with nothing weighed in does not', async ({
    expect,
    page,
  }) => {
    await beginRun(page);
    const later = () =>
      page.evaluate(() => {
        const now = Date.now;
        Date.now = () => now() + 13 * 3_600_000;
        document.dispatchEvent(new Event('visibilitychange'));
      });
    const over = page.locator('.run > .verdict', { hasText: 'half a day ago' });
    await later();
    await page.locator('#record-water').fill('1.23');
    await expect.poll(async () => (await stored(page))[0]?.readings.water?.t).toBe('1.23');
    expect(await over.count()).toBe(0);
    await later();
    await over.waitFor();
    expect(await page.locator('[data-run="0"] .run-number').count()).toBe(0);
  });

  test('“Keep both” in a run goes on with the copy, in its step', async ({ expect, page }) => {
    await beginRun(page);
    const [begun] = await stored(page);
    const theirs = { t: '9', u: 'kg', s: 'metric' } as const;
    await leave(page, [{ ...begun!, revision: 7, readings: { water: theirs } }]);
    await page.locator('#record-water').fill('1.23');
    await page.getByRole('button', { name: /^Keep both/ }).click();
    await expect.poll(() => page.locator('.records-conflict').count()).toBe(0);
    await page.locator('#record-cement').fill('3');
    const water = async (id: string) =>
      (await stored(page)).find((record) => record.id === id)?.readings.water?.t;
    const going = () =>
      page.evaluate(() => JSON.parse(localStorage.getItem('suds.run.1')!).id as string);
    await expect.poll(going).not.toBe(begun!.id);
    const copy = await going();
    await expect
      .poll(async () => (await stored(page)).find(({ id }) => id === copy)?.readings.cement?.t)
      .toBe('3');
    expect([await water(copy), await water(begun!.id)]).toEqual(['1.23', '9']);
    expect(await page.locator('[data-run="0"] #record-water').inputValue()).toBe('1.23');
    await page.reload();
    await expect.poll(() => page.locator('#record-water').inputValue()).toBe('1.23');
  });

  test('what the browser neither stores nor keeps as a draft is left by neither “Done” nor “Stop here”', async ({
    expect,
    page,
  }) => {
    await beginRun(page);
    await page.evaluate(() => {
      const full = () => {
        throw new DOMException('full', 'QuotaExceededError');
      };
      const [put, set] = [IDBObjectStore.prototype.put, Storage.prototype.setItem];
      IDBObjectStore.prototype.put = full;
      Storage.prototype.setItem = full;
      addEventListener('room', () => {
        IDBObjectStore.prototype.put = put;
        Storage.prototype.setItem = set;
      });
    });
    await page.locator('#record-water').fill('1.23');
    expect(await page.locator('.run').innerText()).not.toContain('keeps no place');
    const notices = () => page.locator('#notices').innerText();
    await expect.poll(notices).toContain('stored nowhere');
    expect(await page.locator('.run-awake').innerText()).toContain('stored nowhere');
    expect(await page.locator('.run-awake').innerText()).not.toContain('nothing is lost');
    // A link leaves it no more than they do, unless the reader says so.
    page.once('dialog', (asked) => asked.dismiss());
    const asked = page.waitForEvent('dialog');
    await page.getByRole('link', { name: 'the order' }).click({ noWaitAfter: true });
    expect((await asked).type()).toBe('beforeunload');
    expect(await page.locator('#record-water').inputValue()).toBe('1.23');
    for (const step of [1, 2, 3, 4]) {
      await page.getByRole('button', { name: /^Next/ }).click();
      await page.locator(`[data-run="${step}"]`).waitFor();
    }
    await page.getByRole('button', { name: 'Back', exact: true }).click();
    await page.getByRole('button', { name: 'Back', exact: true }).click();
    await page.getByRole('button', { name: /Foam made/ }).click();
    await expect.poll(notices).toContain('refused to store the foam clock');
    // A run hides it.
    expect(await notices()).not.toContain('Save batch');
    for (const step of [3, 4]) {
      await page.getByRole('button', { name: /^Next/ }).click();
      await page.locator(`[data-run="${step}"]`).waitFor();
    }
    const done = page.getByRole('button', { name: /^Done/ });
    await done.click();
    const head = page.locator('#run-step');
    await expect.poll(() => head.evaluate((it) => it === document.activeElement)).toBe(true);
    expect(await page.locator('.run [role="alert"]').innerText()).toContain('no room left');
    // No record to go on from either.
    expect(await page.locator('.run').innerText()).not.toContain('from its record alone');
    await done.focus();
    await page.getByRole('button', { name: /^Stop here/ }).click();
    await expect.poll(() => head.evaluate((it) => it === document.activeElement)).toBe(true);
    const taking = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Take this batch out as a file' }).click();
    expect(await text(await taking)).toContain('"1.23"');
    await page.evaluate(() => dispatchEvent(new Event('room')));
    await page.getByRole('button', { name: 'Try to store it again' }).click();
    await page.locator('body:not([data-unheld])').waitFor({ state: 'attached' });
    await expect.poll(notices).not.toContain('stored nowhere');
    await done.click();
    await page.locator('.record').waitFor();
    expect((await stored(page))[0]!.readings.water).toMatchObject({ t: '1.23' });
  });
});
