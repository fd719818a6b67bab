import { expect, test } from 'vitest';
import type { Entries } from '../../../src/bench/entries.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import frostGuard from '../../../src/worksheets/curing/frost-guard.tsx';
import { mustAnswer } from '../must-answer.ts';

const judged = (mpa: string, entries: Entries, system: 'metric' | 'us' = 'metric') => {
  const say = speaker(system);
  const all = {
    'curing.castAt': { t: '2026-11-01T14:00' },
    'frost-guard.strength28': { t: mpa, u: 'MPa', s: 'metric' as const },
    ...entries,
  };
  const found = answer(frostGuard, readWorksheet(frostGuard, all, {}, say), say);
  mustAnswer(found);
  const { verdict, say: words } = found.judgement;
  return { verdict, words: words.replaceAll('\u00a0', ' '), numbers: found.numbers };
};
const of = (count: number, day: string) => Array.from({ length: count }, () => day);
const days = (...lines: readonly string[]) => ({ 'curing.days': { t: lines.join('\n') } });
/** Fourteen days at 15 °C, read every six hours, but below freezing at some. */
const read = (freezing: (hours: number) => boolean, after: Entries) => ({
  'curing.source': { t: 'readings' },
  'curing.readings': {
    t: Array.from({ length: 57 }, (_, i) => `${i * 6}\t${freezing(i * 6) ? -2 : 15}`).join('\n'),
  },
  ...after,
});
const once = (hours: number) => hours === 282 || hours === 288;
const forecast = (...lines: readonly string[]) => ({
  'curing.after': { t: 'days' },
  'curing.forecast': { t: lines.join('\n') },
});
const mean = (t: string) => ({ 'curing.after': { t: 'mean' }, 'curing.afterMean': { t } });

test.each([
  ['one temperature held', mean('-2'), 'Sun 15 Nov, 14:00'],
  ['one line of days', forecast('-4\t-1'), 'Sun 15 Nov, 14:00'],
  ['two lines of days', forecast('-4\t-1', '-4\t-1'), 'Sun 15 Nov, 14:00'],
  ['a night of three', forecast('5\t9', '-2\t8', '5\t9'), 'Mon 16 Nov'],
  ['sixty lines of days', forecast('-4\t-1', ...of(59, '5\t9')), 'Sun 15 Nov, 14:00'],
])('a second freeze ahead is stopped, without giving the part up: %s', (_, after, when) => {
  const { verdict, words } = judged('10', read(once, after));
  expect(verdict).toBe('stop');
  expect(words).toMatch(
    /^By your readings it froze on Fri 13 Nov.* with 7\.4 MPa: 3\.5 MPa stands one freeze\. It freezes again on /,
  );
  expect(words).toContain(`again on ${when}`);
  expect(words).toContain('more than one, which takes 24 MPa. Bring it indoors or insulate it');
  expect(words).not.toMatch(/If it has frozen|do not cast/);
});

test('two freezes among the readings are told as past', () => {
  const { verdict, words } = judged(
    '10',
    read((hours) => once(hours) || hours === 312, mean('15')),
  );
  expect(verdict).toBe('stop');
  expect(words).toMatch(/By your readings it froze again on Sat 14 Nov.*“If it has frozen”/);
});

test('one freeze among the readings and none ahead is looked at', () => {
  expect(judged('10', read(once, mean('15'))).verdict).toBe('look');
  // The evening falls towards a low that nobody entered.
  expect(judged('10', read(once, forecast('-4\t8'))).verdict).toBe('look');
});

test('the forecast is to be watched until a freeze does no harm', () => {
  const watched = (mpa: string) => judged(mpa, days(...of(2, '12\t20'), ...of(3, '12\t19')));
  expect(watched('10')).toMatchObject({
    verdict: 'good',
    words: expect.stringContaining('until it has 7.0 MPa, where its cure ends.'),
  });
  expect(watched('4').words).toContain('until it has 3.5 MPa.');
  expect(watched('40').words).toContain('until it has 24 MPa.');
  const passed = judged('10', days('-2\t20', ...of(4, '12\t19'))).words;
  expect(passed).toContain('Keep it from freezing until it has 7.0 MPa, where its cure ends.');
});

test.each([
  [mean('15'), 'good'],
  [forecast('-4\t15', '8\t15'), 'look'],
])('a part that has that strength by its readings need not wait for it', (after, verdict) => {
  const found = judged(
    '10',
    read(() => false, after),
  );
  expect(found.verdict).toBe(verdict);
  expect(found.words).toMatch(
    /By your readings it has 7\.0 MPa, where its cure ends, and stands a freeze\.$/,
  );
  expect(found.words).not.toContain('until it has');
});

test('readings that end before the strength is reached do not confirm it', () => {
  const found = judged('3.7', {
    'curing.source': { t: 'readings' },
    'curing.readings': { t: '0 5.5\n12 5.5\n24 5.5\n36 5.5\n48 5.5' },
    ...mean('5.5'),
  });
  expect(found.words).toContain('Look at the forecast each day until it has 3.5 MPa.');
});

test.each(['0 20\n400 15', '0 20\n4 21\n400 15', '0 20\n4 21\n8 21\n400 15', '400 15'])(
  'nights without readings do not confirm a strength: %j',
  (t) => {
    const readings = { 'curing.source': { t: 'readings' }, 'curing.readings': { t } };
    for (const mpa of ['10', '0.5']) {
      const { verdict, words } = judged(mpa, { ...readings, ...mean('15') });
      expect(verdict).toBe('look');
      expect(words).toMatch(/^Find out how cold it got in the 1[67] d before reading \d:/);
      expect(words).not.toContain('By your readings');
    }
  },
);

test.each([
  ['daily', 24],
  ['every 36 hours', 36],
])('many readings with nights missing do not confirm it either: %s', (_, step) => {
  for (const count of [100, 101, 201]) {
    const t = of(count, '')
      .map((_, i) => `${i * step} 20`)
      .join('\n');
    const readings = { 'curing.source': { t: 'readings' }, 'curing.readings': { t } };
    expect(judged('10', { ...readings, ...mean('15') }), `${count}`).toMatchObject({
      verdict: 'look',
      words: expect.stringMatching(/^Find out how cold it got/),
    });
  }
});

test('gaps after a freeze does no harm are not asked about', () => {
  const readings = {
    'curing.readings': {
      t: of(40, '')
        .map((_, i) => `${i * 12} 15`)
        .join('\n'),
    },
  };
  const then = { 'curing.readings': { t: `${readings['curing.readings'].t}\n900 15` } };
  for (const entries of [readings, then])
    expect(judged('10', { ...read(() => false, mean('15')), ...entries })).toMatchObject({
      verdict: 'good',
      words: expect.stringContaining('By your readings it has 7.0 MPa'),
    });
});

test('the first line of a forecast begins at the last reading, not at casting', () => {
  const fifteen = { 'curing.readings': { t: '0 15\n6 15\n12 15\n18 15' } };
  const ahead = forecast('6 10', '-4 8', '6 12');
  const { verdict, words, numbers } = judged('10', { ...read(() => false, ahead), ...fifteen });
  expect(verdict).toBe('stop');
  // Read until Monday at eight: from 10 °C at 15:00 along a cosine to −4 °C at 05:00, 15:00 + 14 h × acos(−3/7) ÷ π.
  expect(words).toMatch(/^It freezes on Mon 2 Nov, 23:00, with 1\.6 MPa/);
  expect(numbers.firstFreeze!.value / 3600).toBeCloseTo(33.97, 1);
});

test('a frost among the readings is told beside a forecast low that was not counted', () => {
  const { words } = judged(
    '39',
    read((hours) => hours >= 330, forecast('-4\t-1', '5\t9', '5\t10')),
  );
  expect(words).toMatch(
    /^By your readings it froze on Sun 15 Nov.* with \d\d MPa: 24 MPa stands it again and again\. You entered −4 °C/,
  );
  expect(words).not.toContain('Keep it from freezing');
});

test.each(['metric', 'us'] as const)(
  'a strength that misses a mark is shown below it: %s',
  (system) => {
    const figure = String.raw`([\d.,]+) (?:MPa|psi)`;
    const misses = new RegExp(
      `with ${figure}: .*(?:less than the|lasts until it has|before it has) ${figure}`,
    );
    const stands = new RegExp(`with ${figure}: ${figure} stands`);
    const amount = (text: string | undefined) => Number(text!.replaceAll(',', ''));
    const warm = [...of(6, '12\t20'), '-2\t8', ...of(3, '12\t20')];
    const late = [...of(25, '12\t20'), '-2\t8', ...of(3, '12\t20')];
    let missed = 0;
    for (let i = 0; i <= 40; i++)
      for (const [mpa, lines] of [
        [5 + i / 200, warm],
        [5 + i / 20, late],
        [24.5 + i / 50, late],
      ] as const) {
        const t = lines.join('\n');
        const { words } = judged(
          `${mpa}`,
          { 'curing.cement': { t: 'ordinary' }, 'curing.days': { t, s: 'metric' } },
          system,
        );
        const [, has, mark] = misses.exec(words) ?? [];
        if (mark !== undefined) {
          missed++;
          expect(amount(has), words).toBeLessThan(amount(mark));
        }
        const [, stood, one] = stands.exec(words) ?? [];
        if (one !== undefined) expect(amount(stood), words).toBeGreaterThanOrEqual(amount(one));
      }
    expect(missed).toBeGreaterThan(40);
  },
);

test('cold after the cure gets no advice to warm', () => {
  const nineteen = of(19, '12\t20');
  const frost = judged('39', days(...nineteen, '-2\t8'));
  expect(frost.verdict).toBe('good');
  expect(frost.words).toMatch(/with 34 MPa: 24 MPa stands it again and again\.$/);
  expect(judged('39', days(...nineteen, '2\t8')).verdict).toBe('good');
  expect(judged('39', days('12\t20', '2\t8', ...nineteen)).words).toContain('hardly ages');
  // Once it is cured by the readings, neither does the cold that they had.
  const warm = of(49, '').map((_, i) => `\n${30 + 12 * i} 15`);
  const past = { 'curing.readings': { t: `0 4\n12 4\n24 4${warm.join('')}` } };
  expect(judged('10', { ...read(() => false, mean('15')), ...past }).verdict).toBe('good');
  // It ages towards 3.5 MPa yet, though its cure is over.
  const late = judged('4', days(...of(26, '8\t12'), ...of(30, '2\t4')));
  expect(late).toMatchObject({
    verdict: 'look',
    words: expect.stringContaining('below 5 °C it hardly ages'),
  });
  expect(judged('4', days(...of(9, '12\t20'), '2\t8')).words).toContain('hardly ages');
});
