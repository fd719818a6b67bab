import { afterEach, expect, test } from 'vitest';
import { type Opened, openPage, wakeWorksheets } from './browser.ts';
import { typeOver } from './keyboard.ts';

let opened: Opened;
afterEach(async () => {
  expect(opened.complaints).toEqual([]);
  await opened.close();
});

async function open(path: string) {
  opened = await openPage(path, { width: 360 });
  await wakeWorksheets(opened.page);
  return opened.page;
}

test('a field that waits is no slip, and leads to the worksheet that must be answered', async () => {
  const page = await open('foam/weighing/');
  await typeOver(page, 'foam-density-full', '0.5');
  await page.locator('#foam-density-full').blur();
  await expect
    .poll(() => page.evaluate(() => localStorage.getItem('suds.kept.1.foam.density')))
    .toContain('waits');

  await opened.go('mix/proportion/');
  await wakeWorksheets(page);
  const field = page.locator('#proportion-foamDensity');
  const said = page.locator('#proportion-foamDensity-problem');
  await expect.poll(() => said.innerText()).toContain('waits for an answer to');
  expect(await field.getAttribute('aria-invalid')).toBeNull();
  const colours = await said.evaluate((words) => {
    const probe = document.createElement('i');
    words.append(probe);
    const of = (token: string) => {
      probe.style.color = `var(${token})`;
      return getComputedStyle(probe).color;
    };
    return { is: getComputedStyle(words).color, look: of('--look'), stop: of('--stop') };
  });
  expect(colours.is).toBe(colours.look);
  expect(colours.is).not.toBe(colours.stop);

  const listed = page.locator('[data-worksheet="proportion"] .withheld a');
  const there = /\/foam\/weighing\/#foam-density-question$/;
  await expect.poll(() => listed.first().getAttribute('href')).toMatch(there);
  await expect.poll(() => said.locator('a').getAttribute('href')).toMatch(there);
  await said.locator('a').click();
  await page.waitForURL(there);
  await page.locator('#foam-density-question').waitFor();
});

test('on the page of both, the way is to the worksheet further up', async () => {
  const page = await open('first-batch/');
  await typeOver(page, 'foam-density-full', '0.5');
  await page.locator('#foam-density-full').blur();
  const listed = page.locator('[data-worksheet="proportion"] .withheld a', {
    hasText: 'Foam density waits',
  });
  await expect.poll(() => listed.getAttribute('href')).toBe('#foam-density-question');
});

test('what follows takes another worksheet’s answer: that is to be looked at, and can be turned', async () => {
  const page = await open('mix/proportion/');
  const owner = () => page.evaluate(() => localStorage.getItem('suds.kept.1.mix.cement'));
  await typeOver(page, 'proportion-wetDensity', '500');
  await expect.poll(owner).toContain('"by":"proportion"');
  await typeOver(page, 'batch-volume', '33');
  await expect.poll(owner).toContain('"by":"batch"');
  await page.locator('#batch-volume').blur();
  const told = page.locator('[data-worksheet="proportion"] .verdict.look', {
    hasText: 'what follows takes',
  });
  await told.waitFor();
  expect(await told.locator('a').getAttribute('href')).toBe('#batch-question');
  const take = told.getByRole('button', { name: 'Take this one' });
  await take.focus();
  await page.keyboard.press('Enter');
  await expect.poll(owner).toContain('"by":"proportion"');
  await told.waitFor({ state: 'detached' });
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('proportion-fields');
});

test('the window of the reader’s own part waits for its move, and leads there', async () => {
  const page = await open('first-batch/');
  await typeOver(page, 'pieces-pieces-0-thickness', '40');
  await typeOver(page, 'target-density-density', '1000');
  await expect
    .poll(() => page.evaluate(() => localStorage.getItem('suds.kept.1.batch.count')))
    .toContain('"v":12');
  await opened.go('demoulding/when-to-strip/');
  await wakeWorksheets(page);
  const window = page.locator('[data-worksheet="strip-window"]');
  const verdict = window.locator('.verdict');
  await expect
    .poll(() => verdict.innerText())
    .toMatch(
      /^Look again\. What handling asks of your part is not known: 57\.1.kPa is the example/,
    );
  expect(await window.locator('.results, figure').count()).toBe(0);
  expect(await window.locator('table').count()).toBe(1);
  const way = verdict.getByRole('link', { name: 'Answer it' });
  await expect
    .poll(() => way.getAttribute('href'))
    .toMatch(/\/demoulding\/handling\/#handling-question$/);
  // Answered, or typed, it is told again.
  await page.locator('#strip-window-stress').fill('20');
  await expect.poll(() => window.locator('.results').count()).toBeGreaterThan(0);
});
