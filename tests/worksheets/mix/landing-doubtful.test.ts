import { expect, test } from 'vitest';
import type { Entry } from '../../../src/bench/entries.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import landing from '../../../src/worksheets/mix/landing.tsx';

const say = speaker('metric');
const refused = (entries: Record<string, Entry>) => {
  const found = answer(landing, readWorksheet(landing, entries, {}, say), say);
  return found.ok ? undefined : found.problems[0];
};
const bucket = (p: string) => ({ 'bucket.volume': { t: '20', u: 'L', p, pu: 'L' } });

test.each([
  // Half of 5.43 kg of water, whether or not it is more than half of the cement too.
  ['landing-baseScale', '2714\u00a0g', { 'landing.baseScale': { t: '6.8', u: 'kg' } }],
  ['landing-baseScale', '2714\u00a0g', { 'landing.baseScale': { t: '2.72', u: 'kg' } }],
  // The foam in the bucket, 1.6 kg, is known to half of itself by two weighings to ±566 g, its volume to 1 %.
  ['landing-foamScale', '565.57\u00a0g', { 'landing.foamScale': { t: '579', u: 'g' } }],
  ['landing-bucket', '10\u00a0L', bucket('11')],
  [
    'landing-foamFill',
    '21.794\u00a0%',
    { 'landing.foamFill': { t: '40', u: '%' }, ...bucket('9') },
  ],
])('a ± too large is told at its own field, in its unit: %s, %s', (input, most, entries) => {
  const problem = refused(entries);
  expect(problem?.input).toBe(input);
  expect(problem?.say).toContain(`it must be at most ${most}.`);
  const [, name] = input.split('-') as [string, keyof typeof landing.fields];
  const { label } = landing.fields[name] as { label: string };
  expect(problem?.say.split(': read')[0]).toBe(name === 'bucket' ? `± of ${label}` : label);
  // What is said may be typed.
  const [t, u] = most.split('\u00a0') as [string, string];
  const [key, typed] = Object.entries(entries)[0] as [string, Entry];
  const less = 'p' in typed ? { ...typed, p: t, pu: u } : { t, u };
  // It is then answered, or the next ± is told.
  expect(refused({ ...entries, [key]: less })?.input).not.toBe(input);
});

test.each([
  ['0.5', '0.35', '600', '87.5'],
  ['0.1', '0.5', '600', '25'],
  ['1', '0.35', '500', '175'],
])(
  'a ± of half of it is one still: %s kg of cement at %s, for %s, to ±%s g',
  (cement, ratio, target, pm) => {
    const entries = (t: string) => ({
      'landing.cement': { t: cement, u: 'kg' },
      'mix.waterCement': { t: ratio },
      'landing.target': { t: target, u: 'kg/m3' },
      'landing.baseScale': { t, u: 'g' },
    });
    expect(refused(entries(pm))).toBeUndefined();
    expect(refused(entries(`${Number(pm) + 0.01}`))?.input).toBe('landing-baseScale');
  },
);

test('a refused ± is named after its reading', () => {
  const lost = { 'landing.gasLost': { t: '3', u: '%', p: '60', pu: '%' } };
  expect(refused(lost)?.say).toMatch(
    /^± of Gas lost while blending: read 60\s%; it must be at most 50\s%/,
  );
});

test('a small amount is told to need a finer scale than the example’s', () => {
  const jar = { 'bucket.volume': { t: '0.2', u: 'L' } };
  expect(refused(jar)).toMatchObject({
    input: 'landing-foamScale',
    say: expect.stringContaining('So small a load needs a finer scale: type what yours shows.'),
  });
  expect(refused({ ...jar, 'landing.foamScale': { t: '1', u: 'g' } })).toBeUndefined();
});
