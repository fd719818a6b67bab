import { describe, expect, test } from 'vitest';
import type { Entries } from '../../../src/bench/entries.ts';
import { baseMix } from '../../../src/core/mix/base-mix.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import type { AnyWorksheet } from '../../../src/islands/worksheet.ts';
import baseCheck from '../../../src/worksheets/mix/base-check.tsx';
import batch from '../../../src/worksheets/mix/batch.tsx';
import { mustAnswer } from '../must-answer.ts';

const say = speaker('metric');
const kept = (v: number, sheet: AnyWorksheet) => ({ v, from: sheet.question, by: sheet.id });

/** What is found in a litre of base mix of this density, kg, by a plan with its base density kept; w/c 0.4 meant. */
function byPlan(kg: number, base?: number) {
  const entries = {
    'jug.tare': { t: '0', u: 'kg' },
    'base-check.full': { t: String(kg), u: 'kg' },
    'jug.volume': { t: '1', u: 'L' },
  };
  const plan = base === undefined ? {} : { 'mix.baseDensity': kept(base, batch) };
  const found = answer(baseCheck, readWorksheet(baseCheck, entries, plan, say), say);
  mustAnswer(found);
  return found;
}

test('a jug that holds more than the whole base mix tells nothing of it', () => {
  const of = (cement: string) => {
    const entries = { 'base-check.cement': { t: cement, u: 'g' } };
    const found = answer(baseCheck, readWorksheet(baseCheck, entries, {}, say), say);
    mustAnswer(found);
    return found;
  };
  // 198 g at w/c 0.40 is 147 mL as heavy as the jug says, 1890 kg/m³; 1350 g just a litre.
  const small = of('198');
  expect(small.judgement).toMatchObject({
    verdict: 'stop',
    say: expect.stringMatching(/^The jug holds more than the whole base mix, 147\smL: /),
  });
  expect(small.numbers.addCement).toBeUndefined();
  expect(of('1340').judgement.say).toContain('holds more than the whole base mix');
  expect(of('1360').judgement.say).not.toContain('holds more than the whole base mix');
});

describe('a cement with limestone in it', () => {
  /** A base mix of w/c 0.42 with 30 % of limestone: 1 ÷ (0.7 ÷ 3150 + 0.3 ÷ 2700) = 3000 kg/m³, so 1885 in the jug. */
  const weighed = (more: Entries = {}) => {
    const entries = {
      'jug.tare': { t: '0', u: 'kg' },
      'base-check.full': { t: '1.885', u: 'kg' },
      'jug.volume': { t: '1', u: 'L' },
      'mix.waterCement': { t: '0.42' },
      ...more,
    };
    const found = answer(baseCheck, readWorksheet(baseCheck, entries, {}, say), say);
    mustAnswer(found);
    return found.judgement;
  };

  test('is named as a possible reason beside water and air', () => {
    expect(weighed()).toMatchObject({
      verdict: 'look',
      say: expect.stringMatching(
        /^Wetter than meant\. .*once more: whipped air .*limestone, slag or ash in the cement \(give its density.*If it is still wetter, add /,
      ),
    });
  });

  test('gives a good result once its density is entered', () => {
    expect(weighed({ 'mix.cementDensity': { t: '3000' } }).verdict).toBe('good');
  });

  test('is not named where a density was entered', () => {
    const wetter = weighed({
      'mix.cementDensity': { t: '3000' },
      'mix.waterCement': { t: '0.36' },
    });
    expect(wetter.say).toContain('Wetter than meant');
    expect(wetter.say).not.toContain('limestone');
  });

  test('can be entered as part of the binder of a batch', () => {
    const entries = {
      'batch.cementKind': { t: 'blend' },
      'batch.ash': { t: '0', u: '%' },
      'batch.limestone': { t: '30', u: '%' },
      'mix.waterCement': { t: '0.42' },
    };
    const found = answer(batch, readWorksheet(batch, entries, {}, say), say);
    expect(found.ok && found.numbers.base!.value).toBeCloseTo(1.42 / (1 / 3000 + 0.42 / 1000), 6);
    expect(found.ok && found.numbers.limestone!.value).toBeCloseTo(
      (found.ok ? found.numbers.cementitious!.value : 0) * 0.3,
      9,
    );
  });
});

describe('a base mix with more in it than cement, sand and water', () => {
  const ways = {
    pigment: { 'pigment.share': { t: '5', u: '%' } },
    'fly ash': { 'batch.cementKind': { t: 'blend' } },
    slag: {
      'batch.cementKind': { t: 'blend' },
      'batch.slag': { t: '50', u: '%' },
      'batch.ash': { t: '0', u: '%' },
    },
    'a light filler': { 'batch.filler': { t: 'some' } },
    'an admixture': { 'batch.admixture': { t: '2', u: '%' } },
  };
  /** The base mix of the whole batch with such a w/c, kg/m³. */
  const base = (entries: Entries, waterCement = '0.4') => {
    const all = { ...entries, 'mix.waterCement': { t: waterCement } };
    const found = answer(batch, readWorksheet(batch, all, {}, say), say);
    mustAnswer(found);
    return found.numbers.base!.value;
  };

  test.each(Object.entries(ways))('is good if as planned: %s', (_, entries) => {
    const { numbers, judgement, notes } = byPlan(base(entries) / 1000, base(entries));
    expect(numbers.ratio!.value).toBeCloseTo(0.4, 9);
    expect(judgement.verdict).toBe('good');
    expect(notes.join(' ')).toContain('its share of pigment and filler');
  });

  test.each(Object.entries(ways))('is found too wet by the right amount: %s', (_, entries) => {
    const { ratio, addCement } = byPlan(base(entries, '0.45') / 1000, base(entries)).numbers;
    expect(Math.abs(ratio!.value - 0.45)).toBeLessThan(0.05 * 0.05);
    expect(addCement!.value).toBeCloseTo((0.45 / 0.4 - 1) * 13.57, 0);
  });

  test('is refused where no cement could give its density', () => {
    expect(() => byPlan(1.5, 1500)).toThrow('no cement makes a base mix of 1500');
  });

  test('a plan of cement and water alone changes neither the result nor its ±', () => {
    const [plain, planned] = [byPlan(1.9), byPlan(1.9, base({}))];
    expect(planned.numbers.ratio!.value).toBeCloseTo(plain.numbers.ratio!.value, 9);
    const pm = plain.numbers.ratio!.sure!.pm;
    expect(planned.numbers.ratio!.sure!.pm / pm).toBeCloseTo(1, 1);
    expect(planned.notes).toEqual(plain.notes);
  });
});

/** A jug of a litre, full of a sanded mix of this w/c, checked against 0.40. */
function sanded(mixed: number) {
  const { density } = baseMix({ waterCement: mixed, sandCement: 1 });
  const entries = {
    'jug.tare': { t: '0.15', u: 'kg' },
    'base-check.full': { t: String(0.15 + density / 1000), u: 'kg' },
    'jug.volume': { t: '1', u: 'L' },
    'mix.waterCement': { t: '0.4', u: '1' },
    'mix.sandCement': { t: '1', u: '1' },
  };
  const found = answer(baseCheck, readWorksheet(baseCheck, entries, {}, say), say);
  mustAnswer(found);
  return found;
}

test('says to add nothing, sand neither, when the mix is near enough', () => {
  const near = sanded(0.41);
  expect(near.judgement.verdict).toBe('good');
  expect(Object.keys(near.numbers)).not.toContain('addSand');
});

test('sand is added in proportion to the cement added to a wet mix', () => {
  const wet = sanded(0.48);
  expect(wet.judgement.verdict).toBe('look');
  expect(wet.numbers.addSand!.value).toBeCloseTo(wet.numbers.addCement!.value, 9);
});

describe('what no correction mends', () => {
  /** A litre, to 3 mL, of neat base mix of this density, kg, where this w/c was meant. */
  function neat(kg: number, wanted = 0.4, cement = 13.57) {
    const entries = {
      'jug.tare': { t: '0', u: 'kg' },
      'base-check.full': { t: String(kg), u: 'kg' },
      'jug.volume': { t: '1', u: 'L', p: '0.003' },
      'mix.waterCement': { t: String(wanted), u: '1' },
      'base-check.cement': { t: String(cement), u: 'kg' },
    };
    const found = answer(baseCheck, readWorksheet(baseCheck, entries, {}, say), say);
    mustAnswer(found);
    const { addCement, addWater, addSand } = found.numbers;
    const { judgement, notes } = found;
    return { ...judgement, notes, added: addCement ?? addWater ?? addSand };
  }
  const mixed = (waterCement: number, wanted?: number) =>
    neat(baseMix({ waterCement }).density / 1000, wanted);

  test.each([1.05, 1.01])('%s kg in a litre is to be weighed again, without an amount', (kg) => {
    const found = neat(kg);
    expect(found.verdict).toBe('stop');
    expect(found.say).toContain('Weigh again');
    expect(found.added).toBeUndefined();
    // At a mix that is none, how finely a jug tells it means nothing.
    expect(found.notes.join(' ')).not.toContain('a hundredth of w/c');
  });

  test('no amount is given beyond half of the cement, or below the least w/c of any base mix', () => {
    expect(mixed(0.59).added).toBeDefined();
    expect(mixed(0.61).say).toContain('Weigh again');
    expect(mixed(0.21).added).toBeDefined();
    expect(mixed(0.19).say).toContain('Weigh again');
    expect(mixed(0.64, 1.15).say).toContain('Weigh again');
  });

  test.each([
    [0.25, 0.25],
    [0.34, 0.36],
    [0.3, 0.25],
  ])('a w/c of %s takes water out of the foam, though %s was planned', (waterCement, wanted) => {
    const found = mixed(waterCement, wanted);
    expect(found.verdict).toBe('look');
    expect(found.say).toContain('takes water out of the foam');
    expect(found.added).toBeUndefined();
  });

  test.each([
    [0.25, 0.26],
    [0.25, 0.21],
    [0.25, 0.45],
    [0.3, 0.34],
    [0.34, 0.36],
    [0.4, 0.3],
    [0.4, 0.5],
  ])('following the advice reaches a good mix: %s planned, %s mixed', (wanted, start) => {
    let [cement, water] = [13.57, start * 13.57];
    const trail: string[] = [];
    for (let i = 0; i < 3 && trail.at(-1) !== 'good'; i++) {
      const found = neat(baseMix({ waterCement: water / cement }).density / 1000, wanted, cement);
      const [, kg, unit, what] =
        /add ([\d.]+)\s(kg|g) of (water|cement)/i.exec(found.say) ??
        (found.say.includes('Add a little water') ? ['', '20', 'g', 'water'] : []);
      const amount = Number(kg ?? 0) / (unit === 'g' ? 1000 : 1);
      if (what === 'water') water += amount;
      else cement += amount;
      trail.push(found.verdict!);
    }
    expect(trail.at(-1)).toBe('good');
    expect(Math.abs(water / cement - Math.max(wanted, 0.35))).toBeLessThan(0.0205);
  });

  test('where the planned w/c is too dry for foam, each amount is explained', () => {
    const driest = ' 0.35, the driest to meet foam,';
    expect(mixed(0.361, 0.27)).toMatchObject({
      verdict: 'good',
      say: expect.stringMatching(
        /as near to 0\.35, the driest to meet foam, .*; 0\.27 was meant\./,
      ),
    });
    expect(mixed(0.361, 0.27).say).toContain('the base mix is more than was planned');
    expect(mixed(0.355, 0.345).say).not.toContain('more than was planned');
    expect(mixed(0.361, 0.36).say).not.toContain('the driest');
    expect(mixed(0.42, 0.27).say).toContain(`cement, which brings it to${driest} mix until`);
    expect(mixed(0.25, 0.34).say).toContain(`water, which brings it to${driest} and mix`);
    expect(mixed(0.25).say).not.toContain('the driest');
  });

  test('a mix that dry by mistake is stopped, with the water to add', () => {
    const found = mixed(0.303);
    expect(found.verdict).toBe('stop');
    expect(found.added!.value).toBeCloseTo((0.4 - 0.303) * 13.57, 3);
  });
});

describe('readings that cannot tell', () => {
  const at = (full: string, jug: Entries[string], more: Entries = {}) => {
    const entries = {
      'jug.tare': { t: '0.15', u: 'kg' },
      'base-check.full': { t: full, u: 'kg' },
      'jug.volume': jug,
      'mix.waterCement': { t: '0.4' },
      ...more,
    };
    return answer(baseCheck, readWorksheet(baseCheck, entries, {}, say), say);
  };
  const judged = (...typed: Parameters<typeof at>) => {
    const found = at(...typed);
    mustAnswer(found);
    const { addWater, addCement, ratio } = found.numbers;
    return { ...found.judgement, added: addWater ?? addCement, pm: ratio!.sure!.pm };
  };
  const litre = (p: string) => ({ t: '1', u: 'L', p, pu: 'L' });

  test.each([
    ['2.09', '0.05'],
    ['2.16', '0.05'],
    ['2.06', '0.03'],
    ['2.19', '0.05'],
  ])('%s kg in a litre ± %s L: no amount, and not good', (full, pm) => {
    const found = judged(full, litre(pm));
    expect(found.verdict).toBe('look');
    expect(found.say).toMatch(/^Weigh the jug’s volume with water.*cannot tell a base mix/);
    expect(found.added).toBeUndefined();
  });

  test.each([{}, { 'base-check.plan': { t: '1951', u: 'kg/m3' } }])(
    'the limit is the ± shown: 0.02 of w/c (%j)',
    (more) => {
      const pms = Array.from({ length: 30 }, (_, i) => String((i + 1) / 1000));
      const found = pms.map((pm) => judged('2.09', litre(pm), more));
      expect(found.map(({ say }) => say.includes('cannot tell'))).toEqual(
        found.map(({ pm }) => pm > 0.02),
      );
      expect(new Set(found.map(({ verdict }) => verdict))).toEqual(new Set(['good', 'look']));
    },
  );

  test('a base mix wetter by more than its ± is found, however coarse the jug', () => {
    const found = judged(
      '1.68',
      { t: '1', u: 'L' },
      { 'mix.waterCement': { t: '0.65' }, 'base-check.tare': { t: '0.15', u: 'kg' } },
    );
    expect(found.pm).toBeGreaterThan(0.02);
    expect(found.say).toMatch(/^Wetter than meant/);
  });

  test('where the cement’s density contributes most, its own value is asked for', () => {
    const exact = { t: '1', u: 'L', p: '0' };
    const found = judged('2.09', exact, {
      'jug.tare': { t: '0.15', u: 'kg', p: '0' },
      'base-check.full': { t: '2.09', u: 'kg', p: '0' },
      'mix.cementDensity': { t: '3150', u: 'kg/m3', p: '100' },
    });
    expect(found.say).toMatch(/^Find the cement’s own density/);
  });

  const sanded = (share: string, waterCement: string) => ({
    'jug.tare': { t: '0.12', u: 'kg' },
    'mix.sandCement': { t: share },
    'mix.waterCement': { t: waterCement },
  });
  test('a larger jug on the same scale is enough: a sanded mix as planned is good', () => {
    const small = judged('2.288', { t: '1', u: 'L' }, sanded('1.5', '0.5'));
    expect(small.say).toMatch(
      /^Weigh the jug’s volume with water on a finer scale, or take a larger/,
    );
    const large = judged('21.8', { t: '10', u: 'L' }, sanded('1.5', '0.5'));
    expect(large.verdict).toBe('good');
    expect(large.pm).toBeLessThan(small.pm / 2);
  });

  test('a difference above its ± is told', () => {
    const found = judged('2.138', { t: '1', u: 'L' }, sanded('1', '0.55'));
    expect(found.pm).toBeGreaterThan(0.02);
    expect(found.say).toMatch(/^Wetter than meant.* add 9\d\d\sg of cement/);
  });

  test.each([
    ['2.04', '10'],
    ['20.4', '1'],
    ['1.15', '1'],
    ['3.2', '1'],
    ['1.2', '1'],
  ])('%s kg in %s L: the jug’s weights and volume are questioned', (full, t) => {
    const found = at(full, { t, u: 'L' });
    const words = found.ok ? found.judgement.say : found.problems[0]!.say;
    expect(words).toMatch(/Weigh again: the jug empty, full, and its volume with water\./);
  });
});

test('the ± of the jug’s volume is that of two weighings on a scale of 5 g', () => {
  const { jug, tare } = baseCheck.fields;
  // Two weighings, and a kilogram a litre.
  const grams = Number.parseFloat(tare.plusMinus) * 1000;
  expect(Number.parseFloat(jug.plusMinus) * 1000).toBeCloseTo(grams * Math.SQRT2, 0);
});

test('a wet jug is weighed again only once it is topped up', () => {
  const found = answer(baseCheck, readWorksheet(baseCheck, {}, {}, say), say);
  mustAnswer(found);
  const { say: words } = found.judgement;
  expect(words).toMatch(/^Wetter than meant\. Tap the jug, let the air rise.*top it up, strike it/);
});
