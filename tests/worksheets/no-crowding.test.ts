import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import { LandingChart } from '../../src/worksheets/shared/LandingChart.tsx';
import { RankedBars } from '../../src/worksheets/shared/RankedBars.tsx';

test('nothing to rank is no picture', () => {
  expect(renderToString(h(RankedBars, { title: 'What the money goes on', bars: [] }))).toBe('');
});

test('batches beyond the limits are marked by their numbers, however long their names', () => {
  const landed = [600, 601, 598, 602, 600, 599, 900, 905, 601, 600, 598, 602].map((weighed, i) => ({
    name: `Workshop slabs for the shed, load ${i + 1}`,
    planned: 600,
    weighed,
  }));
  const html = renderToString(h(LandingChart, { landed, byName: false }));
  const marked = [...html.matchAll(/<text class="strong on-layer"[^>]*>([^<]+)</g)];
  expect(marked.map(([, name]) => name)).toEqual(['7', '8']);
});
