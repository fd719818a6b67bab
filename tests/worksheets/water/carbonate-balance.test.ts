import type { VNode } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import blend from '../../../src/worksheets/water/blend-waters.tsx';
import balance from '../../../src/worksheets/water/carbonate-balance.tsx';
import { answered, refusal, report, say } from './water-answered.ts';

describe('the balance', () => {
  test('every pair of known values gives the same water', () => {
    const first = answered(balance).numbers;
    const ppm = String(first.gas!.value * 1e6);
    for (const [pair, text] of [
      ['alkalinity-gas', { 'water.gas': ppm }],
      ['alkalinity-carbon', { 'water.carbon': String(first.carbon!.value) }],
      ['carbon-pH', { 'water.carbon': String(first.carbon!.value) }],
      ['gas-pH', { 'water.gas': ppm }],
      ['carbon-gas', { 'water.carbon': String(first.carbon!.value), 'water.gas': ppm }],
    ] as const) {
      const again = answered(balance, { ...report, 'water.pair': pair, ...text }).numbers;
      expect(again.index!.value, pair).toBeCloseTo(first.index!.value, 6);
      expect(again.pH!.value, pair).toBeCloseTo(7.4, 6);
    }
  });

  // By hand, in meq/L: 7.256 of cations; anions but chloride 6.056, and a twentieth of all of them at 0.509 or 1.964 of it.
  test.each([
    ['17.9', true],
    ['18.3', false],
    ['69.3', false],
    ['69.9', true],
  ])('a report with %s mg/L of chloride is doubted: %s', (chloride, doubted) => {
    const typed = { ...report, 'water.others': 'known', 'water.chloride': chloride };
    const { say, verdict } = answered(balance, typed).judgement;
    expect(say.startsWith('Check the report first')).toBe(doubted);
    // The water itself is near balance.
    expect(verdict).toBe(doubted ? 'look' : 'good');
  });

  test.each(['10.4', '10.6'])('a water softened with soda is solved by Davies: pH %s', (pH) => {
    const typed = { 'water.pair': 'gas-pH', 'water.gas': '400', 'water.pH': pH };
    const { judgement, numbers } = answered(balance, {
      ...report,
      ...typed,
      'carbonate-balance.activity': 'davies',
    });
    expect(judgement.verdict).toBe('stop');
    expect(numbers.carbon!.value).toBeGreaterThan(0);
  });

  test('an impossibly high CO₂ pressure is refused', () => {
    expect(refusal(balance, { 'water.pH': '3' })).toContain('no open bucket');
    // Ten times the carbon, where no pH was asked for.
    const carbon = { 'water.pair': 'alkalinity-carbon', 'water.carbon': '52' };
    const refused = refusal(balance, carbon);
    expect(refused).toContain('no open bucket');
    expect(refused).not.toContain('pH');
  });

  test.each([
    ['alkalinity-carbon', { 'water.carbon': '5.2' }, 'the alkalinity and the carbon'],
    ['alkalinity-gas', { 'water.gas': '1' }, 'the alkalinity and the CO₂'],
    ['carbon-gas', { 'water.carbon': '300', 'water.gas': '1' }, 'the carbon and the CO₂'],
    ['alkalinity-pH', { 'water.pH': '10.7' }, 'the pH'],
    ['carbon-pH', { 'water.pH': '10.7' }, 'the pH'],
  ])('what is to be read again is what was read: %s', (pair, typed, read) => {
    const entries = { 'water.pair': pair, 'water.alkalinity': '480', ...typed };
    const { verdict, say } = answered(balance, entries).judgement;
    expect(verdict).toBe('stop');
    expect(say).toContain(`If none went in, read ${read} again.`);
  });

  const softened = { 'water.calcium': '0', 'water.magnesium': '0', 'water.others': 'none' };

  test('the ion that balances the charges of a softened water is a cation, and named', () => {
    const { notes, values, result } = answered(balance, softened);
    expect(notes.join()).toMatch(/a cation that pairs with nothing was taken/);
    const drawn = renderToString(balance.figure!({ values, result, say } as never) as VNode);
    expect(drawn).toContain('cation (balance) 4.8');
    expect(drawn).not.toMatch(/K 4|Cl \(balance/);
    expect(answered(balance, { 'water.others': 'none' }).notes.join()).toMatch(
      /Chloride was taken/,
    );
  });

  test('the table includes the ion pairs of sodium and sulfate, and ions that form none', () => {
    const table = (text: object) => {
      const { values, result } = answered(balance, { ...text });
      const rows = balance.tables![0]!.rows(result as never, values as never, say);
      return new Map(rows.map(([name, much]) => [name!, Number.parseFloat(much!)]));
    };
    const known = table({ ...report, 'water.others': 'report' });
    for (const name of ['Na⁺', 'SO₄²⁻', 'NaSO₄⁻', 'NaHCO₃, dissolved', 'NaCO₃⁻', 'CaOH⁺', 'MgOH⁺'])
      expect(known.get(name), name).toBeGreaterThan(0);
    // By hand, in mmol/L: 3 ÷ 39.10, 42 ÷ 35.45 and 20 ÷ 62.00.
    expect(known.get('K⁺')).toBeCloseTo(0.0767, 3);
    expect(known.get('Cl⁻')).toBeCloseTo(1.1848, 2);
    expect(known.get('NO₃⁻')).toBeCloseTo(0.3226, 3);
    expect(table(softened).get('A cation, to balance')).toBeCloseTo(4.8, 1);
    expect(table(softened).has('Na⁺')).toBe(false);
  });

  test('a pH whose hydroxide exceeds the alkalinity is refused in words', () => {
    expect(refusal(balance, { 'water.pH': '12', 'water.alkalinity': '20' })).toContain('hydroxide');
  });
});

describe('blending', () => {
  test('a target outside the range of the waters is unreachable, with the nearest one given', () => {
    expect(refusal(blend, { 'water.softTarget': '5' })).toContain('12.0');
    expect(refusal(blend, { 'water.softTarget': '500' })).toContain('Use them as they are');
  });

  test('the pH of a blend follows from its carbonate balance', () => {
    // At 25 °C, without activities: the sour water has 10^(−9) ÷ 10^(−6.35) = 2.24 mol/m³ of CO₂, the other 4 of bicarbonate
    // with 0.09. Of both the half, 6.35 + lg(2 ÷ 1.165) = 6.58; ions take 0.04 off.
    const waters = {
      'water.hardnessUsed': '200',
      'water.alkalinity': '200',
      'water.pH': '8',
      'water.soft': '0',
      'water.softAlkalinity': '0',
      'water.softPH': '4.5',
      'water.softTarget': '100',
      'water.temperature': '25',
    };
    expect(answered(blend, waters).numbers.pH!.value).toBeCloseTo(6.55, 1);
  });

  test('for a property other than hardness softening is not advised', () => {
    const other = { 'water.blendOf': 'other', 'blend-waters.otherTarget': '1' };
    expect(refusal(blend, other)).toMatch(/less of it: softening takes out neither chloride/);
    expect(refusal(blend, { 'water.softTarget': '5' })).toContain('soften one');
  });

  test('has no pH until the alkalinity and pH of each water are given', () => {
    const typed = { 'water.hardnessUsed': '250', 'water.soft': '20', 'water.softTarget': '110' };
    const given = {
      'water.alkalinity': '240',
      'water.pH': '7.4',
      'water.softAlkalinity': '10',
      'water.softPH': '6.8',
    };
    for (const left of Object.keys(given)) {
      const { numbers, notes } = answered(blend, { ...typed, ...given, [left]: '' });
      expect(numbers, left).not.toHaveProperty('pH');
      expect(notes[0]).toMatch(/give the alkalinity and pH of each water/);
    }
    expect(answered(blend, typed).numbers).not.toHaveProperty('pH');
    expect(answered(blend, { ...typed, ...given }).numbers.pH!.value).toBeCloseTo(7.34, 2);
  });

  test('the pH of the blend is nearer that of the hard water than the mean is', () => {
    const { pH, averaged } = answered(blend).numbers;
    expect(pH!.value - averaged!.value).toBeGreaterThan(0.25);
  });
});
