import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import { describe } from 'vitest';
import { wakeWorksheets } from './browser.ts';
import { fill } from './keyboard.ts';
import {
  addPhoto,
  batchPage,
  LIST,
  leave,
  listed,
  rows,
  settled,
  slabs,
  stored,
  test,
  visit,
} from './records.ts';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

describe.concurrent('one batch', () => {
  test('a photo is kept small, and goes with its batch to the bin and back', async ({
    expect,
    page,
  }) => {
    await leave(page, [slabs('a')]);
    await visit(page, batchPage('a'), '.record');
    await addPhoto(page);
    await settled(page);
    const [photo] = await stored<{ data: string; width: number }>(page, 'photos');
    expect(photo!.data.length * 0.75).toBeLessThanOrEqual(100_000);
    expect(photo!.width).toBeGreaterThan(200);
    await visit(page, LIST, '[data-records="there"]');
    await page.getByRole('button', { name: 'Remove Slabs a' }).click();
    await expect.poll(() => rows(page).count()).toBe(0);
    expect(await stored(page, 'photos')).toEqual([]);
    await page.getByRole('button', { name: 'Put back' }).first().click();
    await expect.poll(() => rows(page).count()).toBe(1);
    expect((await stored(page, 'photos')).length).toBe(1);
  });

  test('a removed batch can be put back after a reload', async ({ expect, page }) => {
    await leave(page, [slabs('a')]);
    await page.reload();
    await listed(page);
    await page.getByRole('button', { name: 'Remove Slabs a' }).click();
    await expect.poll(() => rows(page).count()).toBe(0);
    await page.reload();
    await page.getByText('In the bin: 1 batch').click();
    await page.locator('.records-bin').getByRole('button', { name: 'Put back' }).click();
    await expect.poll(() => rows(page).count()).toBe(1);
  });

  test('what is removed on its own page can be put back at once', async ({ expect, page }) => {
    await leave(page, [slabs('a')]);
    await visit(page, batchPage('a'), '.record');
    await addPhoto(page);
    await page.locator('[data-stage="cured"] summary').click();
    await page.locator('#record-log').fill('hours,°C\n0,18.5\n30,16.0');
    await page.getByRole('button', { name: 'Attach these lines' }).click();
    await page.getByRole('button', { name: 'Take the log off' }).click();
    await page.getByRole('button', { name: 'Remove photo 1' }).click();
    await settled(page);
    expect((await stored(page))[0]).not.toHaveProperty('log');
    expect(await stored(page, 'photos')).toEqual([]);
    for (const notice of ['log', 'photo'])
      await page.locator(`[data-notice="${notice}"]`).getByRole('button').first().click();
    await page.locator('.photos img').waitFor();
    await settled(page);
    expect((await stored(page))[0]).toMatchObject({
      log: { seconds: [0, 108_000] },
      photos: [{ caption: '' }],
    });

    await page.getByRole('button', { name: 'Remove this batch' }).click();
    await listed(page);
    expect(await rows(page).count()).toBe(0);
    await page.locator('[data-notice="removed"]').getByText('Put back').click();
    await expect.poll(() => rows(page).count()).toBe(1);
    expect((await stored(page, 'photos')).length).toBe(1);
  });

  test('its days are written up and reconciled as they are typed', async ({ expect, page }) => {
    await leave(page, [slabs('a')]);
    await visit(page, batchPage('a'), '.record');
    await page.locator('[data-stage="mixed"] summary').click();
    for (const [name, value] of [
      ['cement', '13.57'],
      ['water', '5,43'],
      ['foamVolume', '25.3'],
      ['foamDensity', '80'],
    ])
      await fill(page, `record-${name}`, value!);
    await expect.poll(() => page.locator('[data-outcome]').innerText()).toMatch(/9[0-9] ± \d\s%/);
    await settled(page);
    await page.reload();
    await page.locator('.record').waitFor();
    await page.locator('[data-stage="mixed"] summary').click();
    expect(await page.locator('#record-water').inputValue()).toBe('5,43');
  });

  test('a log of temperatures is attached', async ({ expect, page }) => {
    await leave(page, [slabs('a')]);
    await visit(page, batchPage('a'), '.record');
    await page.locator('[data-stage="cured"] summary').click();
    await page.locator('#record-log').fill('hours,°C\n0,18.5\n1,19.0\n2,21.5\n30,16.0');
    await page.getByRole('button', { name: 'Attach these lines' }).click();
    await expect
      .poll(() => page.locator('[data-stage="cured"]').innerText())
      .toContain('4 readings over');
    await settled(page);
    const [record] = await stored(page);
    expect(record!.log!.seconds.at(-1)).toBe(30 * 3600);
    expect(record!.log!.kelvin[0]).toBeCloseTo(291.65, 6);
  });
});

describe.concurrent('the invented batches', () => {
  test('come in one click, are marked, teach, and go in one click', async ({ expect, page }) => {
    await page.getByRole('button', { name: 'Load six invented' }).click();
    await expect.poll(() => rows(page).count()).toBe(6);
    for (const row of await rows(page).allInnerTexts()) expect(row).toMatch(/invented/);
    await expect
      .poll(() => page.evaluate(() => localStorage.getItem('suds.learned.1')))
      .toContain('foam.survival');
    await visit(page, 'batch-records/compare/', '.compare figure');
    expect(await page.locator('.compare').innerText()).toContain(
      'All of these batches are invented',
    );
    await visit(page, 'batch-records/learn/', '.learned');
    expect(await page.locator('.learned').innerText()).toContain('From the invented batches only');
    expect(await page.locator('.learned-odds').innerText()).toMatch(/\d+ times in 100/);
    await page.locator('.learned figure').waitFor();
    expect(await page.locator('.learned figure svg').getAttribute('aria-label')).toMatch(
      /^6 batches: dry density .* crushing strength/,
    );
    await visit(page, batchPage('invented-1'), '.record');
    expect(await page.locator('.record').innerText()).toContain('nobody cast or weighed');

    await visit(page, LIST, '[data-records="there"]');
    await page.getByRole('button', { name: 'Remove the invented' }).click();
    await expect.poll(() => rows(page).count()).toBe(0);
    expect(await stored(page, 'bin')).toEqual([]);
    await page.getByRole('button', { name: 'Put back' }).click();
    await expect.poll(() => rows(page).count()).toBe(6);
    await page.getByRole('button', { name: 'Remove the invented' }).click();
    await expect.poll(() => rows(page).count()).toBe(0);
    await expect
      .poll(() => page.evaluate(() => localStorage.getItem('suds.learned.1')))
      .not.toContain('foam.survival');
  });

  const shown = [
    [LIST, '[data-records="there"]'],
    [batchPage('invented-2'), '.record'],
    ['batch-records/learn/', '.learned'],
    ['batch-records/compare/', '.compare figure'],
  ] as const;
  test('are accessible and fit a phone wherever they are shown', async ({ expect, page }) => {
    await page.getByRole('button', { name: 'Load six invented' }).click();
    await expect.poll(() => rows(page).count()).toBe(6);
    for (const [path, wait] of shown) {
      await page.setViewportSize({ width: 1280, height: 900 });
      await visit(page, path, wait);
      await page.evaluate(axe);
      const found = await page.evaluate(() =>
        (window as unknown as { axe: typeof import('axe-core') }).axe.run(document, {
          runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
        }),
      );
      expect(
        (found as AxeResults).violations.flatMap(({ id, nodes }) =>
          nodes.map(({ target }) => `${id}: ${target.join(' ')}`),
        ),
        path,
      ).toEqual([]);
      await page.setViewportSize({ width: 320, height: 800 });
      expect(
        await page.evaluate(
          () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
        ),
      ).toBeLessThanOrEqual(0);
    }
  });
});

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
    await page.locator('[data-save-batch]').click();
    await page.locator('#save-batch-name').fill('North wall');
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await page.getByRole('button', { name: 'Open its record' }).click();
    await page.locator('.record').waitFor();
    expect(await page.locator('#record-name').inputValue()).toBe('North wall');
    const [record] = await stored(page);
    expect(record).toMatchObject({
      name: 'North wall',
      readings: { tare: { t: '0.9' }, foamDensity: { t: '80' } },
      bench: { 'foam-density.full': { t: '2.5' } },
    });
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
    expect(await page.locator('#pieces-settling').inputValue()).toBe('3');
    const offer = field.getByRole('button', { name: /from 6 invented batches/ });
    expect(await offer.innerText()).toMatch(/\d(\.\d)? ± \d(\.\d)?\s%/);
    await offer.click();
    expect(await page.locator('#pieces-settling').inputValue()).toMatch(/^3\.5/);
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
    await page.getByRole('button', { name: /Foam made/ }).click();
    await page.locator('#record-tare').fill('0.85');
    await page.locator('#record-vessel').fill('20');
    expect(await page.locator('#run-foam').inputValue()).toBe('');
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
    expect(await page.locator('#record-full').inputValue()).toBe('');
    await page.locator('#record-full').fill('13.65');
    await expect.poll(() => page.locator('.run').innerText()).toContain('Too heavy. Add');
    await page.getByRole('button', { name: 'I added that foam' }).click();
    expect(await page.locator('#record-full').inputValue()).toBe('');
    await page.getByRole('button', { name: 'I did not add it' }).click();
    expect(await page.locator('#record-full').inputValue()).toBe('13.65');
    await page.getByRole('button', { name: 'I added that foam' }).click();
    await page.reload();
    await page.locator('[data-run="2"]').waitFor();
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
});
