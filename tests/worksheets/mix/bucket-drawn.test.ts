import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import { speaker } from '../../../src/islands/engine/say.ts';
import { Bucket } from '../../../src/worksheets/shared/mix/Bucket.tsx';

/** The units of the amounts in the picture of a bucket that holds so many litres. */
function units(litres: readonly number[], system: 'metric' | 'us') {
  const parts = litres.map((volume) => ({
    name: 'part',
    fill: 'foam' as const,
    volume: volume / 1000,
  }));
  const html = renderToString(h(Bucket, { title: 'T', parts, say: speaker(system) }));
  return [...new Set(html.match(/(?<=\d\u00a0)(mL|L|gal|qt|fl oz)\b/g))];
}

test('a bucket’s parts are all in the unit of the whole', () => {
  expect(units([2.5, 3.1, 14.4], 'us')).toEqual(['gal']);
  expect(units([0.4, 0.5, 1.1], 'us')).toEqual(['qt']);
  expect(units([0.4, 0.5, 1.1], 'metric')).toEqual(['L']);
});

test('the longest of its labels stays inside the picture on a phone', () => {
  const parts = [
    { name: 'foam’s liquid', fill: 'solution' as const, volume: 0.0825 },
    { name: 'gas', fill: 'foam' as const, volume: 0.2612 },
  ];
  const html = renderToString(h(Bucket, { title: 'T', parts, say: speaker('us') }));
  const [, x, text] =
    /<text x="(\d+)"[^>]*>(foam’s liquid 21\.8\u00a0gal, 24\u00a0%)</.exec(html) ?? [];
  // A letter of 16 px is about 7 wide here.
  expect(Number(x) + 7 * text!.length).toBeLessThan(420);
});
