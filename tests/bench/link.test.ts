import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Entries, isEntry } from '../../src/bench/entries.ts';
import { fromFragment, toFragment } from '../../src/bench/link.ts';
import { LIMITS } from '../../src/bench/records/limits.ts';

const batch: Entries = {
  'bucket.tare': { t: '22½ lb', u: 'kg', s: 'metric', p: '0,01', pu: 'kg' },
  'pieces.pieces': { rows: [{ shape: { t: 'ring' }, count: { t: '2' } }] },
  'mix.use': { t: 'planter' },
};

/** One more than a link may carry. */
const tooMany = (each: unknown) =>
  Object.fromEntries(Array.from({ length: LIMITS.benchEntries + 1 }, (_, i) => [`k${i}`, each]));

describe('a link', () => {
  const encoded = (value: unknown) =>
    `#batch=1.${Buffer.from(JSON.stringify(value)).toString('base64url')}`;

  test('carries a batch to another device unchanged', () => {
    expect(fromFragment(toFragment({ entries: batch }, 'us')!)).toEqual({
      ok: true,
      entries: batch,
      kept: {},
      units: 'us',
    });
  });

  test('carries the results that worksheets kept, with the one that holds each', () => {
    const kept = { 'batch.volume': { v: 0.0438, from: 'How much must I make?', by: 'shapes' } };
    expect(fromFragment(toFragment({ entries: batch, kept }, 'us')!)).toMatchObject({
      ok: true,
      kept,
    });
    expect(fromFragment(encoded({ entries: batch }))).toMatchObject({ ok: true, kept: {} });
    expect(
      fromFragment(encoded({ entries: batch, kept: { 'batch.volume': { v: 'x' } } })),
    ).toMatchObject({ ok: false });
  });

  test('carries any entries unchanged, whatever script they are typed in', () => {
    const entry = fc.record(
      { t: fc.string({ unit: 'grapheme', maxLength: 40 }), p: fc.string({ maxLength: 20 }) },
      { requiredKeys: [] },
    );
    const key = fc.stringMatching(/^[a-z][a-z.-]{0,20}$/);
    fc.assert(
      fc.property(fc.dictionary(key, entry, { maxKeys: 20, noNullPrototype: true }), (entries) => {
        expect(fromFragment(toFragment({ entries: entries as Entries }, 'metric')!)).toEqual({
          ok: true,
          entries,
          kept: {},
          units: 'metric',
        });
      }),
    );
  });

  test('is made only up to the number of readings and length that will be accepted', () => {
    const many = (count: number): Entries =>
      Object.fromEntries(Array.from({ length: count }, (_, i) => [`k${i}`, {}]));
    const most = LIMITS.benchEntries;
    expect(fromFragment(toFragment({ entries: many(most) }, 'us')!)).toMatchObject({ ok: true });
    expect(toFragment({ entries: many(most + 1) }, 'us')).toBeUndefined();
    const long = (size: number): Entries => ({ 'curing.readings': { t: '1'.repeat(size) } });
    expect(isEntry(long(4000)['curing.readings'])).toBe(true);
    const four = Object.fromEntries(
      ['a', 'b', 'c', 'd'].map((key) => [key, { t: 'x'.repeat(4000) }]),
    );
    expect(toFragment({ entries: long(4000) }, 'us')).toBeDefined();
    expect(toFragment({ entries: four }, 'us')).toBeUndefined();
  });

  test('without a batch is ignored', () => {
    expect(fromFragment('')).toBeUndefined();
    expect(fromFragment('#foam')).toBeUndefined();
  });

  test.each([
    ['cut short', toFragment({ entries: batch }, 'us')!.slice(0, -7), 'cut short or altered'],
    ['altered', '#batch=1.!!!', 'cut short or altered'],
    [
      'of another version',
      toFragment({ entries: batch }, 'us')!.replace('=1.', '=9.'),
      'another version (9)',
    ],
    [
      'altered inside a letter of several bytes',
      `#batch=1.${Buffer.from(JSON.stringify({ entries: { a: { t: '½' } } }))
        .fill(0x7a, 22, 23)
        .toString('base64url')}`,
      'cut short or altered',
    ],
    ['a list', encoded([1, 2]), 'it holds no batch'],
    ['nothing', encoded(null), 'it holds no batch'],
    ['with an unknown field', encoded({ entries: { a: { t: '1', script: 'x' } } }), "reading 'a'"],
    ['with a number for a text', encoded({ entries: { a: { t: 1 } } }), "reading 'a'"],
    ['with an unknown unit', encoded({ entries: { a: { t: '1', u: 'furlong' } } }), "reading 'a'"],
    ['with a hostile key', encoded({ entries: { '__proto__ x': { t: '1' } } }), "'__proto__ x'"],
    ...['__proto__', 'constructor', 'prototype'].flatMap((name) =>
      ['entries', 'kept', 'row'].map((part): [string, string, string] => {
        const held = { [name]: part === 'kept' ? { v: 1, from: 'x' } : { t: '5' } };
        const entries = part === 'row' ? { a: { rows: [held] } } : {};
        const batch = { entries, kept: {}, ...(part !== 'row' && { [part]: held }) };
        return [
          `with ${name} for a name in its ${part}`,
          encoded(batch),
          `reading '${part === 'row' ? 'a' : name}'`,
        ];
      }),
    ),
    // Sound otherwise: nothing else refuses it.
    [
      'too long',
      encoded({
        entries: Object.fromEntries([...'abcd'].map((key) => [key, { t: 'x'.repeat(4000) }])),
      }),
      'longer than a batch can be',
    ],
    ['with too many readings', encoded({ entries: tooMany({}) }), 'more readings than a batch has'],
    [
      'with too many results',
      encoded({ entries: {}, kept: tooMany(0) }),
      'more results than a batch has',
    ],
  ])('%s is refused with a sentence that says why', (_, fragment, why) => {
    const carried = fromFragment(fragment);
    expect(carried).toMatchObject({ ok: false });
    expect(carried && !carried.ok && carried.why).toMatch(
      /^The batch in this link was not used: .+\./,
    );
    expect(carried && !carried.ok && carried.why).toContain(why);
  });

  test('random text never throws', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const carried = fromFragment(`#batch=${text}`);
        if (carried?.ok)
          for (const entry of Object.values(carried.entries)) expect(isEntry(entry)).toBe(true);
      }),
    );
  });
});
