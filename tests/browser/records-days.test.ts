import { describe } from 'vitest';
import { demoBatches } from '../../src/worksheets/live/records/demo-batches.ts';
import { faults } from './axe.ts';
import { cutText, overflow, SPACED, smallTargets, under } from './boxes.ts';
import { typeOver } from './keyboard.ts';
import { nameFaults } from './names.ts';
import {
  addPhoto,
  batchPage,
  LIST,
  leave,
  listed,
  listenTo,
  rows,
  settled,
  slabs,
  stored,
  test,
  visit,
} from './records.ts';

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

    // One that is small already is taken as it is.
    await visit(page, batchPage('a'), '.photos img');
    const dot = await page.evaluate(() => {
      const canvas = document.createElement('canvas');
      [canvas.width, canvas.height] = [8, 6];
      return canvas.toDataURL('image/png').split(',')[1]!;
    });
    const file = { name: 'dot.png', mimeType: 'image/png', buffer: Buffer.from(dot, 'base64') };
    await page.locator('.photos input[type="file"]').setInputFiles(file);
    await expect.poll(() => page.locator('.photos img').count()).toBe(2);
    await settled(page);
    const sizes = (await stored<{ width: number; height: number }>(page, 'photos')).map(
      ({ width, height }) => `${width}×${height}`,
    );
    expect(sizes).toContain('8×6');
  });

  test('prints all that was written, and no box that holds nothing', async ({ expect, page }) => {
    const name = `Slabs ${'of the long winter '.repeat(5)}`.trim();
    const notes = Array.from({ length: 12 }, (_, i) => `Line ${i + 1}`).join('\n');
    const cureTemperature = { t: '15', u: 'degC' };
    const { readings } = slabs('a');
    const record = slabs('a', { name, notes, readings: { ...readings, cureTemperature } });
    await leave(page, [record, slabs('b')]);
    await visit(page, batchPage('a'), '.record');
    await page.emulateMedia({ media: 'print' });
    const printed = await page.locator('.record').innerText();
    expect(printed).toContain(name);
    expect(printed).toContain(notes);
    const seen = (at: string) => page.locator(at).isVisible();
    expect([await seen('#record-cureTemperature'), await seen('#record-log')]).toEqual([
      true,
      false,
    ]);
    expect(await seen('[data-stage="dried"]')).toBe(false);
    await visit(page, batchPage('b'), '.record');
    expect(await seen('label[for="record-notes"]')).toBe(false);
  });

  test('typing is announced as stored once, not at each key', async ({ expect, page }) => {
    await leave(page, [slabs('a')]);
    await visit(page, batchPage('a'), '.record');
    const heard = await listenTo(page, '.record > [role="status"]');
    // Each key rests long enough to be stored by itself.
    for (const key of 'thin') {
      await page.locator('#record-notes').press(key);
      await settled(page);
    }
    await expect.poll(heard).toEqual(['Stored in this browser.']);
    // Who reads line by line comes to it where it is seen, and not a second time.
    expect(await page.locator('.record > [data-heard]').isVisible()).toBe(false);
    await page.locator('#record-notes').press('!');
    await settled(page);
    await page.locator('[data-stage="mixed"] summary').click();
    const water = page.locator('#record-water');
    await water.fill('abc');
    // What is refused is not only told as stored.
    await expect
      .poll(async () => (await heard()).slice(1).join())
      .toMatch(/^Mixing water: ‘abc’ is not a number\./);
    await page.locator('#record-cement').fill('13.57');
    await water.fill('50');
    await expect.poll(async () => (await heard()).at(-1)).toMatch(/^Stop\. The w\/c .* 3\.68/);
  });

  test('a photo removed by key keeps the focus near, and the key that undoes brings it back', async ({
    expect,
    page,
  }) => {
    await leave(page, [slabs('a')]);
    await visit(page, batchPage('a'), '.record');
    await addPhoto(page);
    const said = () => page.locator('.photos [role="status"]').innerText();
    await expect.poll(said).toBe('Photo 1 is added.');
    await page.getByRole('button', { name: 'Remove photo 1' }).press('Enter');
    await expect.poll(() => page.locator('.photos img').count()).toBe(0);
    expect(await said()).toBe('');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('photos');
    await page.locator('[data-notice="photo"]').waitFor();
    await page.keyboard.press('Control+z');
    await expect.poll(() => page.locator('.photos img').count()).toBe(1);
    expect(await page.locator('[data-notice="photo"]').count()).toBe(0);
    // In a box it undoes what was typed there, and nothing else.
    await page.getByRole('button', { name: 'Remove photo 1' }).press('Enter');
    await page.locator('[data-notice="photo"]').waitFor();
    await page.locator('#record-notes').press('Control+z');
    expect(await page.locator('[data-notice="photo"]').count()).toBe(1);
    await settled(page);
  });

  test('a removed batch can be put back after a reload', async ({ expect, page }) => {
    await leave(page, [slabs('a')]);
    await page.reload();
    await listed(page);
    await page.getByRole('button', { name: 'Remove Slabs a' }).click();
    await expect.poll(() => rows(page).count()).toBe(0);
    await page.reload();
    await page.getByText('In the bin: 1 batch').click();
    await page.getByRole('button', { name: 'Put back “Slabs a”' }).click();
    await expect.poll(() => rows(page).count()).toBe(1);
  });

  test('one that nobody named or mixed is called in the bin as in the list', async ({
    expect,
    page,
  }) => {
    await leave(page, [{ ...slabs('a'), name: '', readings: {} }]);
    await page.reload();
    await listed(page);
    const row = (await rows(page).first().innerText()).replace(/\s*Remove\s*$/, '');
    await page.getByRole('button', { name: 'Remove Batch of' }).click();
    await page.getByText('In the bin: 1 batch').click();
    const binned = await page.locator('.records-bin li').innerText();
    for (const words of row.split('\n')) expect(binned).toContain(words.trim());
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
      await typeOver(page, `record-${name}`, value!);
    await expect.poll(() => page.locator('[data-outcome]').innerText()).toMatch(/9[0-9]\s±\s\d\s%/);
    await settled(page);
    await page.reload();
    await page.locator('.record').waitFor();
    await page.locator('[data-stage="mixed"] summary').click();
    await expect.poll(() => page.locator('#record-water').inputValue()).toBe('5,43');
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

  test('lines not attached are there again, and an emptied day says that it stays', async ({
    expect,
    page,
  }) => {
    await leave(page, [slabs('a')]);
    await visit(page, batchPage('a'), '.record');
    await page.locator('[data-stage="cured"] summary').click();
    await page.locator('#record-log').fill('hours,°C\n0,18.5\n1,19.0');
    await page.reload();
    await expect
      .poll(() => page.locator('#record-log').inputValue())
      .toBe('hours,°C\n0,18.5\n1,19.0');
    await page.getByRole('button', { name: 'Attach these lines' }).click();
    const cured = page.locator('[data-stage="cured"]');
    await expect.poll(() => cured.innerText()).toContain('2 readings over');
    await settled(page);
    await page.reload();
    await expect.poll(() => cured.innerText()).toContain('2 readings over');
    expect(await page.locator('#record-log').count()).toBe(0);
    const day = page.locator('#record-date');
    const before = await day.inputValue();
    const problem = page.locator('#record-date-problem');
    await day.fill('');
    await expect.poll(() => problem.innerText()).toContain(`stays ${before}`);
    await day.blur();
    expect(await day.inputValue()).toBe(before);
    await expect.poll(() => problem.count()).toBe(0);
    // The day that is back may itself be one to look at.
    await day.fill('9998-01-01');
    await day.fill('');
    await day.blur();
    await expect.poll(() => problem.innerText()).toContain('still to come');
    await day.fill(before);
  });

  test('a log that leaves something open is asked about, and rows not counted stay', async ({
    expect,
    page,
  }) => {
    await leave(page, [slabs('a')]);
    await visit(page, batchPage('a'), '.record');
    const cured = page.locator('[data-stage="cured"]');
    await cured.locator('summary').click();
    await page
      .locator('#record-log')
      .fill('Time;air °C;slab °C\n2026-05-08 14:00;15;18.5\nmoved;16;19\n2026-05-08 16:00;17;21.5');
    await page.getByRole('button', { name: 'Attach these lines' }).press('Enter');
    await expect.poll(() => cured.innerText()).toContain('Choose above');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('record-log-said');
    await page.getByLabel('Which column').selectOption('column 3, slab °C: 18.5, …');
    await expect
      .poll(() => cured.innerText())
      .toMatch(/2 readings over .*from 18\.5\s°C to 21\.5\s°C/);
    expect(await cured.innerText()).toContain('Row 3: no time');
    expect(await page.locator('#record-log').inputValue()).toContain('moved;16;19');
    await page.locator('#record-log').fill('2026-05-08 14:00;18\n2026-05-08 15:00;19');
    await page.getByRole('button', { name: 'Attach these lines' }).click();
    await expect.poll(() => cured.innerText()).toMatch(/from 18\s°C to 19\s°C/);
    expect(await page.locator('#record-log').count()).toBe(0);
  });
});

describe.concurrent('the invented batches', () => {
  test('come in one click, are marked, teach, and go in one click', async ({ expect, page }) => {
    await page.getByRole('button', { name: 'Load six invented' }).click();
    await expect.poll(() => rows(page).count()).toBe(6);
    for (const row of await rows(page).allTextContents()) expect(row).toMatch(/invented/);
    await expect
      .poll(() => page.evaluate(() => localStorage.getItem('suds.learned.1')))
      .toContain('foam.survival');
    await visit(page, 'batch-records/compare/', '.compare figure');
    await expect
      .poll(() => page.locator('.compare').innerText())
      .toContain('All of these batches are invented');
    await expect
      .poll(() => page.locator('.compare .verdict').innerText())
      .toContain('These batches are invented');
    await visit(page, 'batch-records/learn/', '.learned');
    await expect
      .poll(() => page.locator('.learned').innerText())
      .toContain('From the invented batches only');
    await expect.poll(() => page.locator('.learned-odds').innerText()).toMatch(/\d+ times in 100/);
    await page.locator('.learned figure').waitFor();
    expect(await page.locator('.learned figure svg').getAttribute('aria-label')).toMatch(
      /^6 invented batches: dry density .* crushing strength/,
    );
    await visit(page, batchPage('invented-1'), '.record');
    await expect
      .poll(() => page.locator('.record').innerText())
      .toContain('nobody cast or weighed');

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

  test('removed and loaded anew, are not offered to be put back beside themselves', async ({
    expect,
    page,
  }) => {
    const [remove, load, back] = ['Remove the invented', 'Load six invented', 'Put back'].map(
      (name) => page.getByRole('button', { name }),
    );
    await load!.click();
    await remove!.click();
    const removed = page.locator('[data-notice="demo"]');
    await removed.waitFor();
    await load!.click();
    await expect.poll(() => rows(page).count()).toBe(6);
    await expect.poll(() => removed.count()).toBe(0);
    // Loaded by another tab, they are not known of before the offer is taken.
    await remove!.click();
    await removed.waitFor();
    await leave(page, demoBatches().slice(0, 1));
    await back!.click();
    await page.locator('[data-notice="refused"]', { hasText: 'Nothing was put back' }).waitFor();
  });

  test('say nothing of the reader’s plan once a batch of their own has one', async ({
    expect,
    page,
  }) => {
    await page.getByRole('button', { name: 'Load six invented' }).click();
    await expect.poll(() => rows(page).count()).toBe(6);
    await leave(page, [slabs('a')]);
    const compare = page.locator('.compare');
    await visit(page, 'batch-records/compare/', '.compare');
    await expect.poll(() => compare.innerText()).toContain('there is one so far');
    expect(await page.locator('.compare figure, .compare .verdict').count()).toBe(0);
    await leave(page, [slabs('b')]);
    await visit(page, 'batch-records/compare/', '.compare figure');
    await expect
      .poll(() => page.locator('.compare figure svg').first().getAttribute('aria-label'))
      .toContain('errors of 2 batches');
    expect(await compare.innerText()).toContain('Two batches are too few');
    expect(await compare.innerText()).not.toContain('your plan stays as it is');
    expect(await compare.innerText()).toContain('What the chart says is of yours alone');
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
      expect(await faults(page), path).toEqual([]);
      expect(await nameFaults(page), path).toEqual([]);
      await page.setViewportSize({ width: 320, height: 800 });
      expect(await smallTargets(page, 24), path).toEqual([]);
      expect(await page.evaluate(overflow), path).toEqual([]);
      expect(await under(page, SPACED, [overflow, cutText]), path).toEqual([]);
    }
  });
});
