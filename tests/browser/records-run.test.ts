import { describe } from 'vitest';
import { wakeWorksheets } from './browser.ts';
import { fill, press } from './keyboard.ts';
import { stored, test, visit } from './records.ts';

describe.concurrent('from the bench', () => {
  test('any page with something on the bench saves it as a batch', async ({
    expect,
    opened,
    page,
  }) => {
    await opened.go('foam/weighing/');
    await wakeWorksheets(page);
    expect(await page.locator('[data-save-batch]').isHidden()).toBe(true);
    await fill(page, 'foam-density-tare', '0.9');
    await fill(page, 'foam-density-full', '2.5');
    // A density is the reader's own once all that decides it is.
    await fill(page, 'foam-density-vessel', '20');
    await page.locator('[data-save-batch]').click();
    await page.locator('#save-batch-name').fill('North wall');
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await page.getByRole('button', { name: 'Open its record' }).click();
    await page.locator('.record').waitFor();
    await expect.poll(() => page.locator('#record-name').inputValue()).toBe('North wall');
    const [record] = await stored(page);
    expect(record).toMatchObject({
      name: 'North wall',
      readings: { tare: { t: '0.9' }, foamDensity: { t: '80' } },
      bench: { 'foam-density.full': { t: '2.5' } },
    });
    await visit(page, 'bench/run/', '[data-run="begin"]');
    await page.getByRole('button', { name: 'Go on with “North wall”, not mixed yet' }).click();
    await page.locator('[data-run="0"]').waitFor();
    expect(await stored(page)).toHaveLength(1);
  });

  test('what was learned is offered beside a field and used only when asked', async ({
    expect,
    opened,
    page,
  }) => {
    await page.getByRole('button', { name: 'Load six invented' }).click();
    await expect
      .poll(() => page.evaluate(() => localStorage.getItem('suds.learned.1')))
      .toContain('form.settling');
    await opened.go('first-batch/');
    await wakeWorksheets(page);
    const field = page.locator('.field', { has: page.locator('#pieces-settling') });
    await expect.poll(() => page.locator('#pieces-settling').inputValue()).toBe('3');
    const offer = field.getByRole('button', { name: /from 6 invented batches/ });
    const [, shown, spread] = /(\S+) ± (\S+)\s%/.exec(await offer.innerText()) ?? [];
    expect(Number(spread)).toBeGreaterThan(0);
    await offer.click();
    await expect.poll(() => page.locator('#pieces-settling').inputValue()).toBe(shown);
    await expect.poll(() => field.innerText()).toContain('yours:');
  });

  test('one batch is run step by step with large targets, and its record is written', async ({
    expect,
    opened,
    page,
  }) => {
    await opened.context.grantPermissions(['screen-wake-lock' as never]).catch(() => {});
    // Weighed for an earlier batch: no part of this one.
    await page.evaluate(() => {
      localStorage.setItem('suds.bench.1.correct.full', '{"t":"15.2"}');
      localStorage.setItem('suds.bench.1.foam-density.full', '{"t":"9.9"}');
    });
    await visit(page, 'bench/run/', '[data-run="begin"]');
    await page.getByRole('button', { name: 'Begin a batch' }).click();
    await page.locator('[data-run="0"]').waitFor();
    for (const name of ['Exactly that', 'Exactly that'])
      await page.getByRole('button', { name }).first().click();
    const next = page.getByRole('button', { name: /^Next/ });
    await next.click();
    // The second tap is not meant for “Stop”, which stands there by then.
    await page.getByRole('button', { name: /Foam made/ }).dblclick();
    expect(await page.evaluate(() => localStorage.getItem('suds.clock.1'))).not.toContain('stop');
    await page.locator('#record-tare').fill('0.85');
    await page.locator('#record-vessel').fill('20');
    await expect.poll(() => page.locator('#run-foam').inputValue()).toBe('');
    await page.locator('#run-foam').fill('3.25');
    await expect.poll(() => page.locator('#record-foamDensity').inputValue()).toBe('120');
    await expect.poll(() => page.locator('.run').innerText()).toMatch(/27\.4\sL/);
    await page.locator('#run-foam').fill('2400');
    await page.locator('#run-foam').blur();
    await expect
      .poll(() => page.locator('#run-foam-problem').innerText())
      .toMatch(/full of foam: read 2400\skg; it must be at most 200\skg/);
    await expect.poll(() => page.locator('#record-foamDensity').inputValue()).toBe('');
    await page.locator('#run-foam').fill('2.45');
    await expect.poll(() => page.locator('#record-foamDensity').inputValue()).toBe('80');
    await page.getByRole('button', { name: 'Exactly that' }).click();

    const small = await page.evaluate(() =>
      [...document.querySelectorAll<HTMLElement>('.run button, .run input, .run select')]
        .map((element) => ({
          name: element.innerText || element.id,
          box: element.getBoundingClientRect(),
        }))
        .filter(({ box }) => box.width > 0 && (box.height < 44 || box.width < 44))
        .map(({ name, box }) => `${name} ${box.width}×${box.height}`),
    );
    expect(small).toEqual([]);

    await next.click();
    await expect.poll(() => page.locator('#record-full').inputValue()).toBe('');
    await page.locator('#record-full').fill('0.5');
    await page.locator('#record-full').blur();
    await expect
      .poll(() => page.locator('#record-full-problem').innerText())
      .toContain('it must be more than the bucket weighs empty');
    await page.locator('#record-full').fill('13.65');
    await expect.poll(() => page.locator('.run').innerText()).toContain('Too heavy. Add');
    await page.getByRole('button', { name: 'I added that foam' }).click();
    await expect.poll(() => page.locator('#record-full').inputValue()).toBe('');
    await page.getByRole('button', { name: 'I did not add it' }).click();
    await expect.poll(() => page.locator('#record-full').inputValue()).toBe('13.65');
    await page.getByRole('button', { name: 'I added that foam' }).click();
    await page.reload();
    await page.locator('[data-run="2"]').waitFor();
    await page.getByRole('button', { name: 'I did not add it' }).click();
    await expect.poll(() => page.locator('#record-full').inputValue()).toBe('13.65');
    await page.getByRole('button', { name: 'I added that foam' }).click();
    await page.getByRole('button', { name: /^Stop here/ }).click();
    await page.reload();
    await page.getByRole('button', { name: /^Go on with/ }).click();
    await page.locator('[data-run="2"]').waitFor();
    await page.locator('#record-full').fill('12.9');
    await expect.poll(() => page.locator('.run').innerText()).toContain('Near enough');
    await next.click();
    await page.locator('#record-placed').fill('32.4');
    await next.click();
    await page.getByRole('button', { name: /^Done/ }).click();
    await page.locator('.record').waitFor();
    const [record] = await stored(page);
    expect(record!.readings).toMatchObject({
      planned: { t: '600' },
      full: { t: '12.9' },
      placed: { t: '32.4' },
    });
    expect(Number(record!.readings.foamAdded!.t)).toBeGreaterThan(0);
    expect(Date.parse(record!.foamMade!)).toBeGreaterThan(Date.now() - 600_000);
    await expect
      .poll(() => page.locator('[data-outcome]').innerText())
      .toContain('Foam that survived');
  });

  test('one batch is run by keys alone on a phone, and the focus is never lost', async ({
    expect,
    page,
  }) => {
    await page.setViewportSize({ width: 360, height: 740 });
    await visit(page, 'bench/run/', '[data-run="begin"]');
    const step = () => page.evaluate(() => document.activeElement?.textContent);
    await press(page, 'Begin a batch');
    await expect.poll(step).toContain('1 of 5');
    await press(page, 'Exactly that');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('record-water');
    await press(page, 'Exactly that');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('record-cement');
    await press(page, 'Next: foam');
    await expect.poll(step).toContain('2 of 5');
    await press(page, 'Foam made: start');
    for (const [key, then] of [
      ['Stop', 'New foam: start again'],
      ['Clear', 'Foam made: start'],
      ['Foam made: start', 'Stop'],
    ] as const) {
      await press(page, key);
      await expect.poll(step).toBe(then);
    }
    await fill(page, 'record-tare', '0.85');
    await fill(page, 'record-vessel', '20');
    await press(page, 'Next: weigh the blend');
    await expect.poll(step).toContain('3 of 5');
    await fill(page, 'record-full', '13.65');
    await press(page, 'I added that foam');
    await page.keyboard.type('12.9');
    await expect.poll(() => page.locator('#record-full').inputValue()).toBe('12.9');
    await press(page, 'Stop here; the record stays');
    await expect.poll(step).toMatch(/^Go on with/);
    await page.keyboard.press('Enter');
    await expect.poll(step).toContain('3 of 5');
  });
});
