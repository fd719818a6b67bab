import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { Plot } from '../../src/islands/plots/Plot.tsx';

const NUMBER = /translate\(([\d.]+) [\d.]+\)"><path class="tick"[^>]*><\/path><text[^>]*>([^<]*)</g;

const along = (x: readonly [number, number], counted: { xCounted?: number } = {}) =>
  [
    ...renderToString(
      h(Plot, {
        words: '',
        caption: '',
        x,
        y: [0, 1],
        xLabel: '',
        yLabel: '',
        children: () => null,
        ...counted,
      }),
    ).matchAll(NUMBER),
  ].map(([, at, number]) => ({ at: Number(at), number: number! }));

describe('the numbers along an axis', () => {
  it.each([
    [0, 14_000],
    [0, 1],
    [0, 7000],
    [0, 140_000_000],
  ])('stand apart on a phone, from %d to %d', (from, to) => {
    const numbers = along([from, to]);
    expect(numbers.length).toBeGreaterThan(1);
    numbers.slice(1).forEach(({ at, number }, i) => {
      expect(at - numbers[i]!.at).toBeGreaterThan(number.length * 9.8);
    });
  });

  it.each([
    [2, 3.3, ['1', '2']],
    [6, 8.9, ['2', '4', '6']],
  ])('count whole things alone: of %d none beyond', (xCounted, to, wanted) => {
    expect(along([0.5, to], { xCounted }).map(({ number }) => number)).toEqual(wanted);
  });
});
