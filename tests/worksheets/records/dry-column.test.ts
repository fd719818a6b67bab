import { expect, test } from 'vitest';
import { speaker } from '../../../src/islands/engine/say.ts';
import { dryColumn } from '../../../src/worksheets/live/compare/dry-column.ts';

const say = speaker('metric');
const oven = { density: 491, dried: 'oven' };
const air = { density: 520, dried: 'air' };
const unsaid = { density: 505, dried: undefined };

test('how pieces were dried is said in the head where all were dried alike', () => {
  expect(dryColumn([oven, undefined, { ...oven, density: 501 }], say)).toEqual({
    head: 'Dry density, oven-dry',
    cells: ['491\u00a0kg/m³', '—', '501\u00a0kg/m³'],
  });
  expect(dryColumn([unsaid], say)).toEqual({
    head: 'Dry density, dry state not written down',
    cells: ['505\u00a0kg/m³'],
  });
});

test('and beside each where they were not', () => {
  expect(dryColumn([oven, air], say)).toEqual({
    head: 'Dry density',
    cells: ['491\u00a0kg/m³, oven-dry', '520\u00a0kg/m³, air-dry'],
  });
  expect(dryColumn([undefined], say)).toEqual({ head: 'Dry density', cells: ['—'] });
});
