import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import type { Answered } from '../../src/islands/engine/answer.ts';
import { Results } from '../../src/islands/parts/Results.tsx';
import type { AnyWorksheet } from '../../src/islands/worksheet.ts';

/** What the other system of units says of a mass. */
function other(value: number, pm?: number): string | undefined {
  const sheet = {
    results: { missing: { label: 'Missing', kind: 'mass', of: () => value } },
  } as unknown as AnyWorksheet;
  const answered = {
    numbers: { missing: { value, sure: pm === undefined ? undefined : { pm } } },
  } as unknown as Answered;
  const html = renderToString(h(Results, { sheet, answered, system: 'metric' }));
  return /<span class="other">(.*?)<\/span>/.exec(html)?.[1]?.replaceAll('\u00a0', ' ').trim();
}

test('a ± is shown in both unit systems', () => {
  expect(other(2, 0.03)).toBe('4.41 ± 0.07 lb');
  expect(other(2)).toBe('4.41 lb');
});

test('a negligible ± is not shown, and adds no digits', () => {
  expect(other(2, 2e-6)).toBe('4.41 lb');
  expect(other(2, 2e-4)).toBe('4.4092 ± 0.0004 lb');
});

test('the notes on the main results follow them, before the other results', () => {
  const spec = (label: string, answer?: true) => ({
    label,
    kind: 'mass' as const,
    answer: !!answer,
  });
  const sheet = { results: { a: spec('Cement'), b: spec('Water'), c: spec('Foam', true) } };
  const numbers = { a: { value: 1 }, b: { value: 2 }, c: { value: 3 } };
  const props = { sheet, answered: { numbers }, system: 'metric' as const };
  const html = renderToString(h(Results, props, h('p', {}, 'Good.')));
  const order = [...html.matchAll(/Cement|Water|Foam|Good/g)].map(([word]) => word);
  expect(order).toEqual(['Cement', 'Foam', 'Good', 'Water']);
});
