import { expect, test } from 'vitest';
import { DomainError } from '../../src/core/domain-error.ts';
import { answer } from '../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import { choice, number } from '../../src/islands/fields.ts';
import { type AnyWorksheet, worksheet } from '../../src/islands/worksheet.ts';

const say = speaker('metric');

/** A worksheet whose core refuses whatever it is given, of a quantity that two fields may hold. */
const refusing = worksheet({
  id: 'refusing',
  question: 'Who is to blame?',
  fields: {
    how: choice({ label: 'How', options: { one: 'One', many: 'Many' }, example: 'one' }),
    one: number('mass', { label: 'One', example: '1 kg', when: { how: ['one'] } }),
    many: number('mass', { label: 'Many', example: '2 kg', when: { how: ['many'] } }),
  },
  blames: { weight: ['one', 'many'] },
  work: (): number => {
    throw new DomainError({ quantity: 'weight', value: 1, kind: 'mass', allowed: { min: 5 } });
  },
  results: {},
  judge: () => ({ verdict: 'good', say: '' }),
  working: [{ tex: 'x', put: () => '1' }],
  cautions: ['caustic-slurry'],
  defers: ['Nobody.'],
  sources: ['common-practice'],
});

test.each(['one', 'many'])('a refusal is shown beside a visible field: %s', (how) => {
  const reading = readWorksheet(refusing, { 'refusing.how': { t: how } }, {}, say);
  expect(answer(refusing, reading, say)).toMatchObject({
    ok: false,
    problems: [{ input: `refusing-${how}` }],
  });
});

test('a refusal by core is given in the units of its field', () => {
  const grams = { metric: 'g', us: 'oz' } as const;
  const fields = { ...refusing.fields, one: { ...refusing.fields.one, units: grams } };
  const sheet = { ...refusing, fields } as unknown as AnyWorksheet;
  const found = answer(sheet, readWorksheet(sheet, {}, {}, say), say);
  expect(found).toMatchObject({
    ok: false,
    problems: [{ say: 'One: read 1000\u00a0g; it must be at least 5000\u00a0g.' }],
  });
});

test.each([
  [1, ''],
  [0.5, ' Still the example’s: “Lives”.'],
])('an example that only happens to be 100 %% refuses nothing: %s', (max, still) => {
  const units = { metric: '%', us: '%' } as const;
  const fields = {
    share: number('ratio', { label: 'Share', example: '20 %', units }),
    lives: number('ratio', { label: 'Lives', example: `${100 * max} %`, units }),
  };
  const work = (): number => {
    throw new DomainError({ quantity: 'share', value: 2, kind: 'ratio', allowed: { max } });
  };
  const sheet = { ...refusing, fields, work } as unknown as AnyWorksheet;
  const found = answer(
    sheet,
    readWorksheet(sheet, { 'refusing.share': { t: '200' } }, {}, say),
    say,
  );
  expect(found).toMatchObject({
    ok: false,
    problems: [{ say: `Share: read 200\u00a0%; it must be at most ${100 * max}\u00a0%.${still}` }],
  });
});

test.each([
  ['200', ' it must be at most 50\u00a0%. Still the example’s: “Most”.'],
  ['5', ' it must be at least 10\u00a0%. Still the example’s: “Least”.'],
])('of two examples the one is named whose limit is passed: %s', (t, words) => {
  const of = (label: string, example: string) =>
    number('ratio', { label, example, units: { metric: '%', us: '%' } });
  const fields = {
    share: of('Share', '20 %'),
    least: of('Least', '10 %'),
    most: of('Most', '50 %'),
  };
  const work = (v: { readonly share: number }): number => {
    const allowed = { min: 0.1, max: 0.5 };
    throw new DomainError({ quantity: 'share', value: v.share, kind: 'ratio', allowed });
  };
  const sheet = { ...refusing, fields, work } as unknown as AnyWorksheet;
  const found = answer(sheet, readWorksheet(sheet, { 'refusing.share': { t } }, {}, say), say);
  expect(found).toMatchObject({ ok: false, problems: [{ say: expect.stringContaining(words) }] });
});
