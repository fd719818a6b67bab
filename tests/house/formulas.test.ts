import { expect, test } from 'vitest';
import { typeset } from '../../src/components/markdown/math.mjs';

test('the box that a formula scrolls in is a stop of the key with a name; the formula keeps its own words', () => {
  const set = typeset(String.raw`\rho = m / V`);
  const stops = set.match(/<[^>]*tabindex="0"[^>]*>/g);
  expect(stops).toHaveLength(1);
  expect(stops![0]).toMatch(/^<span /);
  expect(stops![0]).toMatch(/role="group"/);
  expect(stops![0]).toMatch(/aria-label="[^"]+"/);
  expect(/<math [^>]*>/.exec(set)![0]).not.toContain('aria-label');
});

test('a formula within a line does not scroll, and is no stop', () => {
  const set = typeset(String.raw`\rho`, false);
  expect(set).toContain('<math');
  expect(set).not.toMatch(/tabindex|aria-label/);
});

test('no letter of a formula is a word to be translated', () => {
  for (const display of [true, false])
    expect(typeset(String.raw`m_\text{full}`, display)).toMatch(/<math [^>]*translate="no"/);
});
