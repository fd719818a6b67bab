import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import { speaker } from '../../src/islands/engine/say.ts';
import { Bucket } from '../../src/islands/figures/Bucket.tsx';

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
