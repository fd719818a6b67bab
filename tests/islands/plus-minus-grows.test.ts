import { expect, test } from 'vitest';
import type { Entry, KeptResults } from '../../src/bench/entries.ts';
import { readNumber } from '../../src/islands/engine/read-number.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import { number } from '../../src/islands/fields.ts';

const field = number('volume', {
  label: 'Vessel',
  example: '20 L',
  plusMinus: '0.2 L',
  plusMinusGrows: true,
});
const read = (entry?: Entry, kept: KeptResults = {}) =>
  readNumber({ ...field, takes: 'brim' }, entry, kept, speaker('metric'));

test('the default ± of a vessel is relative to its volume, until a ± is typed', () => {
  expect(read()).toMatchObject({ pm: 2e-4, pmText: '0.2' });
  expect(read({ t: '1' }).pm).toBeCloseTo(1e-5, 12);
  expect(read({ t: '1' }).pmText).toBe('0.01');
  expect(read({ t: '1000', u: 'mL' }).pm).toBeCloseTo(1e-5, 12);
  expect(read({ t: '1', p: '0.05', pu: 'L' }).pm).toBeCloseTo(5e-5, 12);
  // A slip of the sign is refused; its ± is none the less shown as one.
  expect(read({ t: '-1' })).toMatchObject({ pmText: '0.01' });
  // What cannot be read has no size.
  expect(read({ t: 'a jar' }).pm).toBe(2e-4);
});

test('a little is known no worse than a share of itself, until a ± is typed', () => {
  const little = { ...field, plusMinusGrows: false, plusMinusAtMost: 0.2 };
  const of = (entry: Entry) => readNumber(little, entry, {}, speaker('metric'));
  expect(of({ t: '3' }).pm).toBe(2e-4);
  expect(of({ t: '1' }).pm).toBe(2e-4);
  expect(of({ t: '0.5' }).pm).toBeCloseTo(1e-4, 12);
  expect(of({ t: '60', u: 'mL' })).toMatchObject({ pmText: '0.012' });
  expect(of({ t: '0.5', p: '0.4', pu: 'L' }).pm).toBeCloseTo(4e-4, 12);
  // Of nothing, and of what cannot be read, no share is known.
  expect(of({ t: '0' }).pm).toBe(2e-4);
  expect(of({ t: 'a cup' }).pm).toBe(2e-4);
});

test('so is that of a volume from another worksheet, which may have a ± of 0', () => {
  const brim = { v: 1e-3, from: 'x' };
  expect(read(undefined, { brim }).pm).toBeCloseTo(1e-5, 12);
  expect(read(undefined, { brim: { ...brim, pm: 0 } })).toMatchObject({ pm: 0, pmText: '0' });
  expect(read({ t: '20' }, { brim }).pm).toBeCloseTo(2e-4, 12);
});
