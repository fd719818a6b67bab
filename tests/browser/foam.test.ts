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

/** Holds back the script that wakes worksheets, while the reader types, until what is returned is called. */
async function heldBack(): Promise<() => void> {
  let letGo = () => {};
  const held = new Promise<void>((done) => {
    letGo = done;
  });
  await opened.page.route(/_astro\/mount\./, async (route) => {
    await held;
    await route.continue();
  });
  return letGo;
}

const seconds = (text: string) => {
  const [minutes = 0, rest = 0] = text.split(':').map(Number);
  return 60 * minutes + rest;
};

test('every key is kept that is pressed while a worksheet wakes', async () => {
  opened = await openPage('water/softening/', { height: 600 });
  const { page, context } = opened;
  const cdp = await context.newCDPSession(page);
  await cdp.send('Emulation.setCPUThrottlingRate', { rate: 6 });
  const lost: string[] = [];
  for (const delay of [10, 25, 40, 60]) {
    await opened.go('water/softening/');
    const field = page.locator('#softener-hardness');
    await field.evaluate((input: HTMLInputElement) => {
      input.scrollIntoView();
      input.select();
      input.focus();
    });
    await page.keyboard.type('338.512345678', { delay });
    await expect
      .poll(() => page.locator('[data-island="water/softener"]').getAttribute('data-awake'))
      .toBe('yes');
    const typed = await field.inputValue();
    if (typed !== '338.512345678') lost.push(`${delay} ms: ${typed}`);
    await page.evaluate(() => localStorage.clear());
  }
  expect(lost).toEqual([]);
});

test('a number, its ± and its unit given before a worksheet wakes are all kept', async () => {
  opened = await openPage('');
  const { page } = opened;
  const letGo = await heldBack();
  await opened.go('foam/weighing/');
  // The example's own number, too.
  await page.locator('#foam-density-tare').fill('0.85');
  await page.locator('#foam-density-full').fill('2710');
  await page.locator('#foam-density-full-pm').fill('30');
  await page.getByLabel('Unit of Vessel, struck full of foam').selectOption('g');
  letGo();
  await wakeWorksheets(page);
  await expect.poll(() => shown(opened.page, 'foam-density', 'density')).toMatch(/^93\.0 ± /);
  expect(await page.locator('#foam-density-full').inputValue()).toBe('2710');
  expect(await page.locator('#foam-density-full-pm').inputValue()).toBe('30');
  expect(await page.locator('#foam-density-tare').inputValue()).toBe('0.85');
  expect(await page.locator('[data-origin="example"] #foam-density-tare').count()).toBe(0);
});

test('what is typed before a worksheet wakes is of the unit that stood beside it', async () => {
  opened = await openPage('');
  const { page } = opened;
  const letGo = await heldBack();
  await page.evaluate(() => localStorage.setItem('suds.units', 'us'));
  await opened.go('foam/time-in-hand/');
  const tare = page.locator('#survival-jar-tare');
  await tare.fill('0.4');
  await page.locator('#survival-jar-readings').fill('0 1.012\n10 1.02');
  letGo();
  await wakeWorksheets(page);
  const unit = page.getByLabel('Unit of Jar, empty');
  expect(await tare.inputValue()).toBe('0.4');
  expect(await unit.evaluate((list: HTMLSelectElement) => list.value)).toBe('kg');
  // The rest is in the reader's own.
  expect(await page.locator('#survival-jar-jar').inputValue()).not.toBe('1');
  await page.locator('[data-units]').click();
  await expect.poll(() => shown(opened.page, 'survival-jar', 'first')).toMatch(/^612/);
});

test('a worksheet that did not arrive says so, and comes when the page is loaded again', async () => {
  opened = await openPage('');
  const { page, complaints } = opened;
  let cut = true;
  await page.route(/_astro\/mount\./, (route) => (cut ? route.abort() : route.continue()));
  await opened.go('foam/weighing/');
  await page.locator('[data-worksheet="foam-density"]').scrollIntoViewIfNeeded();
  const notice = page.locator('[data-notice="asleep"]');
  await notice.waitFor();
  // The cut was ours, and the only complaint.
  expect(complaints.every((line) => /mount\.|dynamically imported/.test(line))).toBe(true);
  complaints.length = 0;
  cut = false;
  await notice.getByRole('button', { name: 'Load the page again' }).click();
  await notice.waitFor({ state: 'detached' });
  await page.waitForLoadState('load');
  await wakeWorksheets(page);
  await page.locator('#foam-density-full').fill('2.9');
  await expect.poll(() => shown(opened.page, 'foam-density', 'density')).toMatch(/^102/);
});

test('amounts in the text say first what the reader reads in, on every page, and turn back', async () => {
  opened = await openPage('foam/lasting/');
  const amounts = () => opened.page.locator('.amount').allInnerTexts();
  const metric = await amounts();
  const turned = metric.map((text) => text.replace(/^(.+) \((.+)\)$/, '$2 ($1)'));
  expect(turned).not.toEqual(metric);
  await opened.page.locator('[data-units]').click();
  expect(await amounts()).toEqual(turned);

  // Typed by hand in the text, where others are worked out.
  await opened.go('curing/');
  await expect.poll(amounts).toContain('50\u00a0°F (10\u00a0°C)');

  await opened.go('foam/lasting/');
  await expect.poll(amounts).toEqual(turned);
  await opened.page.locator('[data-units]').click();
  expect(await amounts()).toEqual(metric);
});

describe('readings pasted into one box', () => {
  test('are fitted, and what they say is used by the next page', async () => {
    const page = await open('foam/drainage/');
    await page.locator('#drainage-measure').selectOption('share');
    // v = 1 ÷ (1 + (10/t)²): half at 10 minutes.
    const lines = [2, 4, 6, 8, 10, 14, 20, 30].map(
      (t) => `${t}\t${(100 / (1 + (10 / t) ** 2)).toFixed(2)}`,
    );
    await page.locator('#drainage-byShare').fill(`min\t%\n${lines.join('\n')}\n`);
    await expect
      .poll(() => shown(opened.page, 'drainage', 'half'), { timeout: 5000 })
      .toBe('10.0 min');
    expect(await shown(opened.page, 'drainage', 'exponent')).toBe('2.00');

    await opened.go('foam/time-in-hand/');
    await wakeWorksheets(page);
    await expect.poll(() => page.locator('#time-in-hand-half').inputValue()).toMatch(/^(10|9\.99)/);
    const lost = 100 / (1 + (10 / 5) ** 2);
    await expect
      .poll(() => shown(opened.page, 'time-in-hand', 'lost'))
      .toBe(`${lost.toFixed(0)} %`);
  });

  test('a line that cannot be read is named, and no result stands beside it', async () => {
    const page = await open('foam/drainage/');
    await page.locator('#drainage-byMass').fill('2 0.04\nfour 0.12\n6 0.2\n8 0.28');
    await page.locator('#drainage-foamMass').focus();
    await expect
      .poll(() => page.locator('#drainage-byMass-problem').innerText(), { timeout: 5000 })
      .toContain('Line 2.');
    expect(await page.locator('[data-worksheet="drainage"] .result').count()).toBe(0);
  });
});

test('twice the foam with the same liquid has drained by less, and the fit follows', async () => {
  const page = await open('foam/drainage/');
  expect(await shown(opened.page, 'drainage', 'half')).toBe('22.0 min');
  await page.locator('#drainage-foamMass').fill('3.2');
  await expect
    .poll(() => shown(opened.page, 'drainage', 'half'), { timeout: 5000 })
    .not.toBe('22.0 min');
});

describe('the foam clock', () => {
  test('runs on through a reload, stops, goes on and is cleared', async () => {
    opened = await openPage('');
    const { page } = opened;
    // In a page whose clock runs, Date says 1970 for a moment while Playwright's clock goes in: the
    // foam clock rightly takes that for a clock set back.
    await page.clock.install();
    await opened.go('foam/time-in-hand/');
    await wakeWorksheets(page);
    const clock = page.locator('.foam-clock');
    const figures = () => clock.locator('.clock-figures').innerText().then(seconds);
    await clock.getByRole('button', { name: 'Foam made: start' }).click();
    // The foam was made ten minutes ago, as far as the clock knows.
    await page.evaluate(() => {
      const stored = JSON.parse(localStorage.getItem('suds.clock.1') ?? '{}');
      localStorage.setItem('suds.clock.1', JSON.stringify({ start: stored.start - 600_000 }));
    });
    await page.reload({ waitUntil: 'load' });
    await wakeWorksheets(page);
    await expect.poll(figures).toBeGreaterThanOrEqual(600);
    await expect
      .poll(() => clock.locator('[role="status"]').innerText())
      .toContain('10 minutes since');

    await clock.getByRole('button', { name: 'Stop' }).click();
    await clock.getByRole('button', { name: 'Go on' }).waitFor();
    const stopped = await figures();
    await page.clock.runFor(5000);
    expect(await figures()).toBe(stopped);
    await clock.getByRole('button', { name: 'Go on' }).click();
    await expect.poll(figures).toBeGreaterThan(stopped);

    // By key: as taps these would come too soon after one another to count.
    await clock.getByRole('button', { name: 'Stop' }).press('Enter');
    await clock.getByRole('button', { name: 'Clear' }).press('Enter');
    await expect.poll(figures).toBe(0);
    expect(await page.evaluate(() => localStorage.getItem('suds.clock.1'))).toBeNull();
  });

  test('counts down to the time in hand that the reader’s own readings give', async () => {
    const page = await open('foam/time-in-hand/');
    const left = page.locator('.foam-clock .clock-left');
    await page.locator('#time-in-hand-half').fill('20');
    // How the curve bends is still the example's.
    await expect.poll(() => left.innerText()).toMatch(/^Nothing to count down to/);
    await page.locator('#time-in-hand-exponent').fill('1.4');
    // So is the batch it is for.
    await expect.poll(() => left.innerText()).toMatch(/^Nothing to count down to/);
    await page.locator('[data-worksheet="time-in-hand"] summary').first().click();
    for (const [name, own] of Object.entries({
      foamDensity: '82',
      target: '620',
      baseDensity: '1940',
      mass: '20',
    }))
      await page.locator(`#time-in-hand-${name}`).fill(own);
    await expect.poll(() => left.innerText()).toMatch(/^Time in hand: \d+:\d\d\.$/);
    await page.locator('.foam-clock').getByRole('button', { name: 'Foam made: start' }).click();
    await expect.poll(() => left.innerText()).toMatch(/^\d+:\d\d left of \d+:\d\d\.$/);
  });

  test('its buttons are large enough for a gloved finger', async () => {
    const page = await open('foam/time-in-hand/');
    for (const button of await page.locator('.foam-clock button').all()) {
      const box = await button.boundingBox();
      expect(box?.height).toBeGreaterThanOrEqual(44);
      expect(box?.width).toBeGreaterThanOrEqual(44);
    }
  });
});

test.each([
  ['foam/glycerol/', 'glycerol-glycerol', '38'],
  ['foam/air/', 'air-orifice-diameter', '24'],
])('the words of a picture stay inside it: %s', async (path, field, typed) => {
  const page = await open(path);
  await page.setViewportSize({ width: 360, height: 740 });
  const sheet = page.locator('[data-worksheet]', { has: page.locator(`#${field}`) });
  const before = await sheet.locator('svg[role="img"]').getAttribute('aria-label');
  await page.locator(`#${field}`).fill(typed);
  const picture = sheet.locator('svg[role="img"]');
  await expect.poll(() => picture.getAttribute('aria-label')).not.toBe(before);
  const outside = await picture.evaluate((svg) => {
    const { left, right } = svg.getBoundingClientRect();
    return [...svg.querySelectorAll('text')]
      .filter((text) => {
        const box = text.getBoundingClientRect();
        return box.left < left - 1 || box.right > right + 1;
      })
      .map((text) => text.textContent);
  });
  expect(outside).toEqual([]);
});

test('what batches tell of draining is taken alone: how long it was read stays the reader’s', async () => {
  opened = await openPage('foam/time-in-hand/');
  const { page } = opened;
  await page.evaluate(() => {
    const values = { 'foam.drained': { v: 0.01, pm: 0.001, n: 3 } };
    localStorage.setItem('suds.learned.1', JSON.stringify({ invented: false, values }));
  });
  await opened.go('foam/time-in-hand/');
  await wakeWorksheets(page);
  await page.locator('#time-in-hand-how-line').check();
  await page.locator('#time-in-hand-wait').fill('15');
  const seen = page.locator('#time-in-hand-seen');
  const verdict = page.locator('[data-island="foam/time-in-hand"] .verdict');
  await page.getByRole('button', { name: /^Yours: 1\.0/ }).click();
  await expect.poll(() => page.locator('#time-in-hand-perMinute').inputValue()).toBe('1.00');
  expect(await seen.inputValue()).toBe('');
  await seen.fill('10');
  await expect.poll(() => verdict.first().innerText()).toContain('how long it was read');
});
