import { expect, test } from 'vitest';
import type { Entry } from '../../src/bench/entries.ts';
import { readNumber } from '../../src/islands/engine/read-number.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import { number } from '../../src/islands/fields.ts';

const field = number('volume', {
  label: 'Vessel',
  example: '20 L',
  plusMinus: '0.2 L',
  plusMinusGrows: true,
});
const read = (entry?: Entry) => readNumber(field, entry, {}, speaker('metric'));

test('a jar is known as closely, for its size, as a bucket, until a ± is typed', () => {
  expect(read()).toMatchObject({ pm: 2e-4, pmText: '0.2' });
  expect(read({ t: '1' }).pm).toBeCloseTo(1e-5, 12);
  expect(read({ t: '1' }).pmText).toBe('0.01');
  expect(read({ t: '1000', u: 'mL' }).pm).toBeCloseTo(1e-5, 12);
  expect(read({ t: '1', p: '0.05', pu: 'L' }).pm).toBeCloseTo(5e-5, 12);
  // What cannot be read has no size.
  expect(read({ t: 'a jar' }).pm).toBe(2e-4);
});
