import { describe } from 'vitest';
import { fill, press } from './keyboard.ts';
import { beginRun, focused, listenTo, stored, test, visit } from './records.ts';

describe.concurrent('a batch at the bench, step by step', () => {
  test('a batch run with nothing weighed says so before it is done, and leads back', async ({
    expect,
    page,
  }) => {
    await beginRun(page);
    const cautions = () => page.locator('.run .caution').allInnerTexts();
    expect((await cautions()).join()).toMatch(/dust respirator[\s\S]*Class A GFCI/);
    for (const step of [1, 2, 3, 4]) {
      await page.getByRole('button', { name: /^Next/ }).click();
      await page.locator(`[data-run="${step}"]`).waitFor();
    }
    expect((await cautions()).join()).toMatch(/bleed to zero[\s\S]*never into a drain/);
    expect(await page.locator('.run .caution a').last().getAttribute('href')).toMatch(
      /\/safety\/#caution-alkaline-washout$/,
    );
    const missed = page.locator('[data-run-missed]');
    expect(await missed.innerText()).toContain(
      'Not written down: cement, water, foam density, foam put in, full bucket of blend.',
    );
    for (const button of await missed.getByRole('button').all())
      expect((await button.boundingBox())!.height).toBeGreaterThanOrEqual(44);
    await missed.getByRole('button', { name: 'Back to: weigh the blend' }).click();
    await page.locator('[data-run="2"]').waitFor();
    await page.locator('#record-full').fill('12.9');
    for (const step of [3, 4]) {
      await page.getByRole('button', { name: /^Next/ }).click();
      await page.locator(`[data-run="${step}"]`).waitFor();
    }
    expect(await missed.innerText()).toContain(
      'Not written down: cement, water, foam density, foam put in.',
    );
  });

  test('water and cement swapped are asked about while it can be put right, and never called good', async ({
    expect,
    page,
  }) => {
    await beginRun(page);
    await page.locator('#record-water').fill('13.57');
    await page.locator('#record-cement').fill('5.43');
    const verdicts = page.locator('.run .verdict');
    await expect.poll(() => verdicts.allInnerTexts()).toHaveLength(1);
    expect(await verdicts.innerText()).toMatch(/^Stop\. The w\/c weighed in is 2\.50/);
    for (const step of [1, 2]) {
      await page.getByRole('button', { name: /^Next/ }).click();
      await page.locator(`[data-run="${step}"]`).waitFor();
      expect((await verdicts.allInnerTexts()).join()).toContain('water and cement swapped');
      if (step === 1) {
        expect(await page.locator('.run').innerText()).not.toContain('Foam to put in');
        await page.locator('#record-tare').fill('0.85');
        await page.locator('#record-vessel').fill('20');
      }
    }
    const corrections = page.getByRole('button', { name: /^I added/ });
    await page.locator('#record-full').fill('14.05');
    await expect.poll(() => page.locator('.run').innerText()).toMatch(/It weighs 660/);
    expect((await verdicts.allInnerTexts()).join()).not.toContain('Add');
    expect(await corrections.count()).toBe(0);
    await page.locator('#record-full').fill('12.85');
    await expect
      .poll(async () => (await verdicts.allInnerTexts()).join())
      .toContain('The density is near enough.');
    expect((await verdicts.allInnerTexts()).join()).not.toContain('Good');
    // 5.9 kg in the bucket read in another unit.
    await page.locator('#record-full').fill('6.3');
    await expect
      .poll(async () => (await verdicts.allInnerTexts()).join())
      .toContain('Weigh again before anything is added');
    expect(await corrections.count()).toBe(0);
  });

  test('one batch is run step by step with large targets, and its record is written', async ({
    expect,
    page,
  }) => {
    // Weighed for an earlier batch: no part of this one.
    await page.evaluate(() => {
      localStorage.setItem('suds.bench.1.correct.full', '{"t":"15.2"}');
      localStorage.setItem('suds.bench.1.foam-density.full', '{"t":"9.9"}');
    });
    await beginRun(page);
    for (const name of ['I put in exactly that', 'I put in exactly that'])
      await page.getByRole('button', { name }).first().click();
    const next = page.getByRole('button', { name: /^Next/ });
    await next.click();
    // The second tap is not meant for “Stop”, which stands there by then.
    await page.getByRole('button', { name: /Foam made/ }).dblclick();
    expect(await page.evaluate(() => localStorage.getItem('suds.clock.1'))).not.toContain('stop');
    await page.locator('#record-tare').fill('0.85');
    await page.locator('#record-vessel').fill('20');
    await expect.poll(() => page.locator('#run-foam').inputValue()).toBe('');
    // Nor is it once a density was typed by hand: that stands, whatever becomes of the bucket.
    await page.locator('#record-foamDensity').fill('95');
    await next.click();
    await page.locator('[data-run="2"]').waitFor();
    await page.getByRole('button', { name: 'Back', exact: true }).click();
    await page.locator('[data-run="1"]').waitFor();
    expect(await page.locator('#run-foam').inputValue()).toBe('');
    await page.locator('.run .folded > summary').click();
    await page.locator('#record-vessel').fill('19.6');
    await page.locator('#record-vessel').fill('20');
    expect(await page.locator('#record-foamDensity').inputValue()).toBe('95');
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
    // 0.01 kg twice, and 0.2 of 20 L.
    expect(await page.locator('#record-foamDensity-pm').inputValue()).toBe('1.1');
    await page.locator('#run-foamMass').fill('2');
    await expect.poll(() => page.locator('#record-foamVolume').inputValue()).toBe('25');
    await page.locator('#record-foamVolume').fill('');
    await page.getByRole('button', { name: 'I put in exactly that' }).click();

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
    await expect
      .poll(() => page.locator('.run').innerText())
      .toContain('Too heavy. Tip the bucket back');
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
      full: { t: '12.9' },
      placed: { t: '32.4' },
    });
    expect(Number(record!.readings.foamAdded!.t)).toBeGreaterThan(0);
    // Made three times, and taken back twice.
    expect(record!.corrections).toEqual([
      {
        weighed: expect.closeTo(640, 6),
        foam: expect.closeTo(Number(record!.readings.foamAdded!.t) / 1000, 9),
      },
    ]);
    // The amounts were the example's: its density is asked about, and nobody's plan until then.
    expect(record!.readings).not.toHaveProperty('planned');
    await expect
      .poll(() => page.locator('[data-offer="planned"]').innerText())
      .toMatch(/stood at the example’s, which comes to 600\skg/);
    await page.getByRole('button', { name: 'I aimed at that' }).click();
    await expect.poll(() => page.locator('#record-planned').inputValue()).toBe('600');
    expect(record!.notes).toBe('');
    expect(await page.locator('[data-corrections]').textContent()).toMatch(
      /Corrected at the bench:640.kg\/m³, then \d\.\d.L of foam added\./,
    );
    await page.getByRole('button', { name: 'It was not made: take it off' }).click();
    await expect.poll(() => page.locator('#record-foamAdded').inputValue()).toBe('');
    expect(await page.locator('[data-corrections]').count()).toBe(0);
    await page.getByRole('button', { name: 'Put it back' }).click();
    await page.locator('[data-corrections]').waitFor();
    expect(await page.locator('#record-foamAdded').inputValue()).toBe(
      record!.readings.foamAdded!.t,
    );
    expect(Date.parse(record!.foamMade!)).toBeGreaterThan(Date.now() - 600_000);
    await expect
      .poll(() => page.locator('[data-outcome]').innerText())
      .toContain('Foam that survived');
    await page.locator('[data-onward]').click();
    // 12.05 kg in 20 L.
    expect(
      await page.evaluate(() =>
        ['part.wetDensity', 'curing.castAt'].map((key) =>
          localStorage.getItem(`suds.bench.1.${key}`),
        ),
      ),
    ).toEqual([expect.stringContaining('"602.5"'), expect.stringContaining(record!.date)]);
    await page.getByRole('button', { name: 'Put my readings back' }).click();
    expect(await page.evaluate(() => localStorage.getItem('suds.bench.1.curing.castAt'))).toBe(
      null,
    );
  });

  test('of the foam’s weight and its volume the last typed counts, after a reload too', async ({
    expect,
    page,
  }) => {
    await beginRun(page);
    await page.getByRole('button', { name: /^Next/ }).click();
    await page.locator('[data-run="1"]').waitFor();
    const type = (id: string, t: string) => page.locator(`#${id}`).fill(t);
    const value = (id: string) => page.locator(`#${id}`).inputValue();
    await type('record-tare', '0.85');
    await type('record-vessel', '20');
    await type('run-foam', '2.45');
    await type('run-foamMass', '2');
    await expect.poll(() => value('record-foamVolume')).toBe('25');
    await page.reload();
    await page.locator('[data-run="1"]').waitFor();
    expect(await value('run-foamMass')).toBe('2');
    // 2 kg of 100 g/L.
    await type('run-foam', '2.85');
    await expect.poll(() => value('record-foamVolume')).toBe('20');
    await type('record-foamVolume', '19.9');
    await expect.poll(() => value('run-foamMass')).toBe('');
    await type('run-foam', '2.45');
    await expect.poll(() => value('record-foamDensity')).toBe('80');
    expect(await value('record-foamVolume')).toBe('19.9');
    await type('run-foamMass', '2');
    await expect.poll(() => value('record-foamVolume')).toBe('25');
    for (const none of ['2.55 - 0.86', '']) {
      await type('run-foamMass', none);
      await expect.poll(() => value('record-foamVolume')).toBe('');
      await type('run-foamMass', '2');
      await expect.poll(() => value('record-foamVolume')).toBe('25');
    }
  });

  test('the screen is kept on while a batch is run, again after a pause, and no longer', async ({
    expect,
    opened,
    page,
  }) => {
    // A lock that writes down what is asked of it, as no test can see whether a screen goes dark.
    await opened.context.addInitScript(() => {
      const told: string[] = [];
      const request = async (kind: string) => {
        told.push(`asked for the ${kind}`);
        if (sessionStorage.getItem('refuse')) throw new DOMException('no', 'NotAllowedError');
        const lock = new EventTarget();
        const free = () => lock.dispatchEvent(new Event('release'));
        const release = async () => {
          told.push('let go');
          free();
        };
        Object.assign(window, { free });
        return Object.assign(lock, { release });
      };
      Object.defineProperty(navigator, 'wakeLock', { value: { request } });
      Object.assign(window, { told });
    });
    const told = () => page.evaluate(() => (window as unknown as { told: string[] }).told);
    const words = () => page.locator('.run-awake').innerText();
    await visit(page, 'bench/run/', '[data-run="begin"]');
    expect(await told()).toEqual([]);
    await page.getByRole('button', { name: 'Begin a batch' }).click();
    await expect.poll(words).toContain('The screen stays on.');
    await page.getByRole('button', { name: /^Next/ }).click();
    await page.locator('[data-run="1"]').waitFor();
    expect(await told()).toEqual(['asked for the screen']);

    // The browser takes the lock back while another tab is in front.
    await page.evaluate(() => (window as unknown as { free(): void }).free());
    await expect.poll(words).toContain('The screen may switch itself off');
    await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
    await expect.poll(words).toContain('The screen stays on.');
    expect(await told()).toEqual(['asked for the screen', 'asked for the screen']);

    await page.getByRole('button', { name: /^Stop here/ }).click();
    await expect.poll(told).toEqual(['asked for the screen', 'asked for the screen', 'let go']);
    await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
    expect((await told()).at(-1)).toBe('let go');

    await page.evaluate(() => sessionStorage.setItem('refuse', 'yes'));
    await page.getByRole('button', { name: /^Go on with/ }).click();
    await expect.poll(async () => (await told()).at(-1)).toBe('asked for the screen');
    await expect.poll(words).toContain('The screen may switch itself off; nothing is lost by it.');
  });

  test('at each step the number, what to do about it and what is refused are heard', async ({
    expect,
    page,
  }) => {
    await beginRun(page);
    const status = '.run > [role="status"]';
    let heard = await listenTo(page, status);
    const last = async () => (await heard()).at(-1);
    await page.locator('#record-water').fill('abc');
    await expect.poll(last).toMatch(/^Mixing water: ‘abc’ is not a number\./);
    await page.locator('#record-water').fill('');
    for (const name of ['I put in exactly that', 'I put in exactly that'])
      await page.getByRole('button', { name }).first().click();
    const next = page.getByRole('button', { name: /^Next/ });
    await next.click();
    await page.locator('[data-run="1"]').waitFor();
    // A clock that runs keeps nothing waiting.
    await page.getByRole('button', { name: /Foam made/ }).click();
    heard = await listenTo(page, status);
    for (const [id, text] of [
      ['record-tare', '0.85'],
      ['record-vessel', '20'],
      ['run-foam', '3.25'],
    ])
      await page.locator(`#${id}`).fill(text!);
    await expect.poll(last).toMatch(/^Foam to put in: 27\.4\sL\./);
    await next.click();
    await page.locator('[data-run="2"]').waitFor();
    heard = await listenTo(page, status);
    await page.locator('#record-full').fill('30');
    await expect.poll(last).toMatch(/^It weighs 1458\skg\/m³ .*Stop\. Weigh again/);
    await page.locator('#record-full').fill('0.5');
    await expect.poll(last).toMatch(/^Bucket, full of blended mix: read 0\.5\skg/);
    // The same again is heard again.
    await page.locator('#record-full').fill('30');
    await expect.poll(last).toMatch(/^It weighs 1458\skg\/m³ .*Stop\. Weigh again/);
  });

  test('one batch is run by keys alone on a phone, and the focus is never lost', async ({
    expect,
    page,
  }) => {
    await page.setViewportSize({ width: 360, height: 740 });
    const size = (volume: string) =>
      page.evaluate(
        (t) =>
          localStorage.setItem('suds.bench.1.proportion.volume', JSON.stringify({ t, u: 'L' })),
        volume,
      );
    await size('30');
    await visit(page, 'bench/run/', '[data-run="begin"]');
    const step = () => page.evaluate(() => document.activeElement?.textContent);
    await press(page, 'Begin a batch');
    await expect.poll(step).toContain('1 of 5');
    await size('50');
    await page.reload();
    await press(page, 'Use the bench’s plan');
    expect(await focused(page)).toBe('run-step');
    await press(page, 'I put in exactly that');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('record-water');
    await press(page, 'I put in exactly that');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('record-cement');
    await press(page, 'Next: foam');
    await expect.poll(step).toContain('2 of 5');
    await press(page, 'Foam made: start');
    for (const [key, then] of [
      ['Stop', 'Go on'],
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
