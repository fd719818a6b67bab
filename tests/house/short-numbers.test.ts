import { expect, test } from 'vitest';
import { shortNumbers } from '../../src/components/live/short-numbers.ts';

test('coordinates are rounded to hundredths', () => {
  expect(shortNumbers('<svg><path d="M28.247753712286013-194.5305968L.0049 7"/></svg>')).toBe(
    '<svg><path d="M28.25-194.53L.0049 7"/></svg>',
  );
  expect(shortNumbers('<svg><text x="0.9999999" transform="rotate(-33.33333)">')).toContain('0.99');
});

test('what is read, and small powers of ten, stay', () => {
  const kept =
    '<svg aria-label="12.34567 kg"><path d="M1.23456e-7 0"/><text>12.34567</text></svg><input value="1.23456">';
  expect(shortNumbers(kept)).toBe(kept);
});

test('a shape of a drawing is closed as it opens, unless it holds something', () => {
  expect(shortNumbers('<svg><path d="M0 0"></path><path><title>1</title></path></svg>')).toBe(
    '<svg><path d="M0 0"/><path><title>1</title></path></svg>',
  );
});
