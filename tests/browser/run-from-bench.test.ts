import type { Page } from 'playwright-core';
import { describe } from 'vitest';
import { blankRecord } from '../../src/bench/records/record.ts';
import { wakeWorksheets } from './browser.ts';
import { press, typeOver } from './keyboard.ts';
import {
  batchPage,
  beginRun,
  LIST,
  leave,
  saveBench,
  settled,
  slabs,
  stored,
  test,
  visit,
} from './records.ts';

describe.concurrent('from the bench', () => {
  test('any page with something on the bench saves it as a batch', async ({
    expect,
    opened,
    page,
  }) => {
    await opened.go('foam/weighing/');
    await wakeWorksheets(page);
    expect(await page.locator('[data-save-batch]').isHidden()).toBe(true);
    await typeOver(page, 'foam-density-tare', '0.9');
    await typeOver(page, 'foam-density-full', '2.5');
    // A density is the reader's own once all that decides it is.
    await typeOver(page, 'foam-density-vessel', '20');
    await saveBench(page, 'North wall');
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
    // The foam of that day is weighed that day.
    const [anew, ...others] = await stored(page);
    expect(others).toEqual([]);
    expect(anew!.readings).not.toHaveProperty('foamDensity');
    expect(anew!.readings.tare).toMatchObject({ t: '0.9' });
    expect(anew!.notes).toContain('Foam tried before: 80');
    await page.getByRole('button', { name: /^Next/ }).click();
    await page.locator('[data-run="1"]').waitFor();
    expect(await page.locator('#run-foam').inputValue()).toBe('');
    expect(await page.locator('#record-foamDensity').inputValue()).toBe('');
    // Two more that nobody names, one saved and one begun empty, are told apart.
    await page.getByRole('button', { name: /^Stop here/ }).click();
    await saveBench(page);
    await page.locator('.record').waitFor();
    await visit(page, LIST, '[data-records="there"]');
    await page.getByRole('button', { name: 'Begin it empty' }).click();
    await page.locator('.record').waitFor();
    const day = await page.locator('#record-name').inputValue();
    expect(day).toMatch(/^Batch of .*, 2$/);
    const names = (await stored(page)).map(({ name }) => name);
    expect(names.sort()).toEqual([day.slice(0, -3), day, 'North wall']);
  });

  test('First batch saves the density typed there, and a bucket tried there as nothing weighed', async ({
    expect,
    opened,
    page,
  }) => {
    await opened.go('first-batch/');
    await wakeWorksheets(page);
    for (const [id, text] of [
      ['target-density-density', '550'],
      ['correct-tare', '0.9'],
      ['correct-vessel', '20'],
      ['correct-full', '13.65'],
    ])
      await page.locator(`#${id}`).fill(text!);
    await expect
      .poll(() => page.evaluate(() => localStorage.getItem('suds.kept.1.mix.planned')))
      .toContain('550');
    await saveBench(page, 'My slab');
    const offer = page.locator('[data-offer="weighings"]');
    await expect.poll(() => offer.innerText()).toMatch(/full of blended mix 13\.65\skg/);
    expect(await page.locator('[data-offer="planned"]').count()).toBe(0);
    expect(Object.keys((await stored(page))[0]!.readings).sort()).toEqual([
      'planned',
      'tare',
      'vessel',
    ]);
    await visit(page, LIST, '.records-list > li');
    await expect
      .poll(() => page.locator('.records-list > li').innerText())
      .toContain('not mixed yet');
    await visit(page, 'bench/run/', '[data-run="begin"]');
    await page.getByRole('button', { name: 'Go on with “My slab”, not mixed yet' }).waitFor();

    const [{ id } = { id: '' }] = await stored(page);
    await visit(page, batchPage(id), '[data-offer="weighings"]');
    await press(page, 'They are this batch’s: write them down');
    await settled(page);
    expect(await offer.count()).toBe(0);
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('record-state');
    expect((await stored(page))[0]!.readings).toMatchObject({
      planned: { t: '550' },
      full: { t: '13.65' },
    });

    await visit(page, 'first-batch/', '.bench-contents');
    await wakeWorksheets(page);
    const left = () =>
      page.evaluate(() => Object.keys(localStorage).filter((key) => /^suds\.used/.test(key)));
    expect(await left()).not.toEqual([]);
    await page.getByRole('button', { name: 'Clear the bench' }).click();
    expect(await left()).toEqual([]);
  });

  test('a plan left at the example is not the reader’s until they say so', async ({
    expect,
    opened,
    page,
  }) => {
    await opened.go('first-batch/');
    await wakeWorksheets(page);
    await page.locator('#proportion-volume').fill('80');
    await expect
      .poll(() => page.evaluate(() => localStorage.getItem('suds.kept.1.mix.planned')))
      .toContain('600');
    await saveBench(page);
    await expect
      .poll(() => page.locator('[data-offer="planned"]').innerText())
      .toMatch(/stood at the example’s, which comes to 600\skg/);
    expect((await stored(page))[0]!.readings).toEqual({});
    await page.getByRole('button', { name: 'I aimed at that' }).click();
    await settled(page);
    expect((await stored(page))[0]!.readings).toMatchObject({ planned: { t: '600' } });
    expect(await page.locator('[data-offer="planned"]').count()).toBe(0);
  });

  test('a batch keeps the plan it is weighed by, slips in it are asked about, and the next has a name of its own', async ({
    expect,
    page,
  }) => {
    const bench = (sized: Record<string, string>) =>
      page.evaluate((entries) => {
        for (const [key, entry] of Object.entries(entries))
          localStorage.setItem(`suds.bench.1.${key}`, entry);
      }, sized);
    await bench({
      'proportion.volume': '{"t":"23","u":"L"}',
      'proportion.wetDensity': '{"t":"1000","u":"kg/m3"}',
      'mix.waterCement': '{"t":"0.42"}',
      'mix.foamDensity': '{"t":"70","u":"g/L"}',
      'mix.largestLoad': '{"t":"25","u":"L"}',
    });
    await beginRun(page);
    const said = async () => (await page.locator('.run .verdict').allInnerTexts()).join();
    await page.locator('#record-water').fill('66');
    await page.locator('#record-cement').fill('156.6');
    await expect.poll(said).toMatch(/make 231\sL, and the mixer takes 25\.0\sL/);
    await page.locator('#record-cement').fill('0');
    await expect.poll(said).toContain('Cement cannot be 0');
    await page.locator('#record-cement').fill('');
    await page.locator('#record-water').fill('6.58');
    await expect.poll(said).toBe('');
    const next = page.getByRole('button', { name: /^Next/ });
    await next.click();
    await page.locator('[data-run="1"]').waitFor();
    const text = () => page.locator('.run').innerText();
    await expect.poll(text).toMatch(/11\.5\sL/);
    await bench({ 'proportion.wetDensity': '{"t":"500","u":"kg/m3"}' });
    await page.reload();
    await page.locator('[data-run="1"]').waitFor();
    await page.locator('#record-tare').fill('0.62');
    await page.locator('#record-vessel').fill('12');
    await expect
      .poll(text)
      .toMatch(/11\.5\sL[\s\S]*By weight 80\d\sg: the bucket then reads 1\.42\skg/);
    await page.locator('#record-foamVolume').fill('115');
    await expect.poll(said).toMatch(/115\sL of foam was put in, where 11\.5\sL is wanted/);
    await page.locator('#record-foamVolume').fill('11.5');
    await expect.poll(said).toBe('');
    await next.click();
    await page.locator('#record-full').fill('12.62');
    await expect.poll(said).toContain('Near enough');
    await next.click();
    await page.locator('#record-placed').fill('50');
    await expect.poll(said).toContain('went into the mixer: look again');
    await page.getByRole('button', { name: /^Stop here/ }).click();
    await page.getByRole('button', { name: 'Begin a batch' }).click();
    await page.locator('[data-run="0"]').waitFor();
    const names = (await stored(page)).map(({ name }) => name).sort();
    expect(names[1]).toBe(`${names[0]}, 2`);
  });

  test('a batch saved before is weighed by its own bench, and other tabs follow', async ({
    expect,
    opened,
    page,
  }) => {
    const sized = (t: string) => ({
      'proportion.wetDensity': { t, u: 'kg/m3', s: 'metric' as const },
    });
    await leave(page, [
      blankRecord({ id: 'm', revision: 1, name: 'Monday 700', bench: sized('700') }),
      blankRecord({ id: 'n', revision: 1, name: 'Now 400', bench: sized('400') }),
    ]);
    await page.evaluate(
      (entry) => localStorage.setItem('suds.bench.1.proportion.wetDensity', entry),
      JSON.stringify(sized('400')['proportion.wetDensity']),
    );
    await visit(page, 'bench/run/', '[data-run="begin"]');
    const other = await opened.tab();
    await visit(other, 'bench/run/', '[data-run="begin"]');
    const amounts = async () => (await page.locator('.run-number').allInnerTexts()).join();
    const goOn = async (name: string) => {
      await page.getByRole('button', { name: `Go on with “${name}”, not mixed yet` }).click();
      await page.locator('[data-run="0"]').waitFor();
      return amounts();
    };
    const monday = await goOn('Monday 700');
    await other.locator('[data-run="0"]').waitFor();
    await other.getByRole('button', { name: /^Next/ }).click();
    await page.locator('[data-run="1"]').waitFor();
    await page.getByRole('button', { name: /^Stop here/ }).click();
    const now = await goOn('Now 400');
    expect(monday).toMatch(/kg.*kg/s);
    expect(now).toMatch(/kg.*kg/s);
    expect(monday).not.toBe(now);
    // The other tab stores when its typing pauses, whichever batch is shown by then.
    await expect
      .poll(async () => (await stored(page)).find(({ id }) => id === 'm')!.readings)
      .toMatchObject({ planned: { t: '700' } });
  });

  test('a record and its line beside others mark what can hardly be', async ({ expect, page }) => {
    const kg = (t: string) => ({ t, u: 'kg', s: 'metric' as const });
    const { readings } = slabs('x');
    await leave(page, [
      slabs('fair', {
        readings: { ...readings, water: kg('5.43'), cement: kg('13.57') },
        corrections: [{ weighed: 660, foam: 0.001 }],
      }),
      slabs('odd', {
        readings: {
          ...readings,
          water: kg('13.57'),
          cement: kg('5.43'),
          dryMass: kg('24'),
          dryVolume: { t: '20', u: 'L', s: 'metric' },
        },
      }),
    ]);
    await visit(page, batchPage('odd'), '[data-outcome] .verdict');
    const said = (await page.locator('[data-outcome] .verdict').allInnerTexts()).join();
    expect(said).toContain('water and cement swapped');
    expect(said).toContain('drying only takes water away');
    expect(said).not.toContain('Good');
    await visit(page, 'batch-records/compare/', '.compare table');
    const line = (name: string) => page.locator('tr', { hasText: name }).innerText();
    expect(await line('Slabs fair')).toContain('0.40');
    expect(await line('Slabs fair')).not.toContain('look again');
    // As first weighed: the correction mended the mix, not the plan.
    expect(await line('Slabs fair')).toMatch(/^Slabs fair\t\+10\.0\b.*\t660\t\d+.kg\/m³/);
    expect(await page.locator('.compare thead').innerText()).toContain('Corrected to');
    expect(await line('Slabs odd')).toMatch(/^Slabs odd, look again\t.*\b2\.50\t.*1200\b/);
    expect((await page.locator('.compare .verdict').allInnerTexts()).join()).toContain(
      '“Slabs odd” has a reading',
    );
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
    const [, shown, spread] = /(\S+)\s±\s(\S+)\s%/.exec(await offer.innerText()) ?? [];
    expect(Number(spread)).toBeGreaterThan(0);
    await offer.click();
    await expect.poll(() => page.locator('#pieces-settling').inputValue()).toBe(shown);
    await expect.poll(() => field.innerText()).toContain('yours:');

    // What is mended in a batch is learned on the next page, also where that is not the list.
    const [batch] = (await stored(page)).filter(({ readings }) => readings.sunk);
    const mend = async (on: Page, sunk: string) => {
      await visit(on, batchPage(batch!.id), '.record');
      await on.locator('details[data-stage="cast"]').evaluate((fold) => {
        (fold as HTMLDetailsElement).open = true;
      });
      await on.locator('#record-sunk').fill(sunk);
      await expect
        .poll(async () => (await stored(on)).find(({ id }) => id === batch!.id)!.readings)
        .toMatchObject({ sunk: { t: sunk } });
    };
    await mend(page, '5');
    await opened.go('first-batch/');
    await wakeWorksheets(page);
    await offer.waitFor();
    expect(await offer.innerText()).not.toContain(`${shown}\u00a0±`);

    // And in a tab that stays where it is, once the reader comes back to it.
    await expect.poll(() => page.evaluate(() => localStorage.getItem('suds.unlearned'))).toBeNull();
    const before = await offer.innerText();
    await mend(await opened.tab(), '2');
    await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
    await expect.poll(() => offer.innerText()).not.toBe(before);

    // A summary of an earlier version says less: it is learned anew where that is missed.
    await page.evaluate(() => {
      const summary = JSON.parse(localStorage.getItem('suds.learned.1')!);
      for (const value of Object.values<Record<string, number>>(summary.values)) {
        delete value.low;
        delete value.high;
      }
      localStorage.setItem('suds.learned.1', JSON.stringify(summary));
      // Of the reader's own pieces nothing is said of days before it is known what their move asks.
      for (const key of Object.keys(localStorage))
        if (key.startsWith('suds.kept.1.')) localStorage.removeItem(key);
    });
    await opened.go('demoulding/when-to-strip/');
    await wakeWorksheets(page);
    await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
    await expect
      .poll(() => page.locator('main').innerText())
      .toMatch(/The invented batches \(\d\) came out clean/);
  });
});
