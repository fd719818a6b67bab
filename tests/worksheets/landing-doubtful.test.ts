import { expect, test } from 'vitest';
import type { Entry } from '../../src/bench/entries.ts';
import { answer } from '../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import landing from '../../src/worksheets/mix/landing.tsx';

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
