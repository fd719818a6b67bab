import { expect, test } from 'vitest';
import type { Entries } from '../../../src/bench/entries.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import handling from '../../../src/worksheets/demould/handling.tsx';
import { mustAnswer } from '../must-answer.ts';

const say = speaker('metric');
const found = (entries: Entries) =>
  answer(handling, readWorksheet(handling, entries, {}, say), say);
const answered = (entries: Entries) => {
  const got = found(entries);
  mustAnswer(got);
  const ways = handling.tables![0]!.rows(got.result as never, got.values as never, say);
  return { stress: got.numbers.stress!.value, ways: ways.map(([name]) => name!) };
};
const edge = { 'handling.lies': { t: 'edge' } };
const held = (t: string): Entries => ({ 'handling.hold': { t } });

test('a slab may stand on edge, however thin it is', () => {
  for (const thickness of ['30', '60', '100', '130']) {
    const slab = { 'part.thickness': { t: thickness } };
    const [flat, onEdge] = [answered(slab), answered({ ...slab, ...edge })];
    expect(onEdge.stress, thickness).toBeLessThan(flat.stress);
    // Nor is it held at four points so, nor tipped up: those ask how it lies no more.
    expect(onEdge.ways.filter((way) => /four|tipped/.test(way))).toEqual([]);
    expect(flat.ways.filter((way) => /four|tipped/.test(way))).toHaveLength(2);
  }
});

test('standing on edge is ignored for holds that do not allow it', () => {
  for (const hold of ['tipping', 'four-points'])
    expect(answered({ ...held(hold), ...edge }).stress, hold).toBe(answered(held(hold)).stress);
  for (const hold of ['ends', 'two-points', 'middle'])
    expect(answered({ ...held(hold), ...edge }).stress, hold).toBeLessThan(
      answered(held(hold)).stress,
    );
});

test('stresses on edge, tipped up and across the width are those worked out by hand', () => {
  // 1 m × 300 × 60 mm of 600 kg/m³ with the 1.2 of being carried: 127.1 N/m.
  const slab: Entries = {
    'part.length': { t: '1', u: 'm' },
    'part.width': { t: '300', u: 'mm' },
    'part.thickness': { t: '60', u: 'mm' },
    'part.wetDensity': { t: '600', u: 'kg/m3' },
    'handling.stage': { t: 'carried' },
  };
  const numbers = (more: Entries) => {
    const got = found({ ...slab, ...more });
    mustAnswer(got);
    return got.numbers;
  };
  // w L² ÷ 8, over 60 × 300² ÷ 6 mm³.
  const upright = numbers({ ...held('ends'), ...edge });
  expect(upright.moment!.value).toBeCloseTo(15.89, 2);
  expect(upright.stress!.value / 1000).toBeCloseTo(17.65, 2);
  // Gripped 200 mm in, the end it turns about bears 0.3 ÷ 0.8 of its weight, R: R² ÷ 2 w, over 300 × 60² ÷ 6.
  const right = { 'handling.right': { t: '200', u: 'mm' }, 'handling.left': { t: '50', u: 'mm' } };
  expect(numbers({ ...held('tipping'), ...right }).stress!.value / 1000).toBeCloseTo(49.65, 2);
  expect(numbers({ 'handling.spans': { t: 'width' } }).mass!.value).toBeCloseTo(10.8, 9);
});

test('hold positions at or past the middle of a side are refused at that side’s field', () => {
  const refused = (place: string, t: string) => {
    const got = found({ ...held('four-points'), [`handling.${place}`]: { t } });
    return got.ok ? [] : got.problems;
  };
  // 450 × 300 mm.
  for (const [place, t] of [
    ['aside', '150'],
    ['aside', '310'],
    ['left', '225'],
    ['left', '460'],
  ] as const)
    expect(refused(place, t), `${place} ${t}`).toEqual([
      { input: `handling-${place}`, say: expect.stringContaining('at or past one another') },
    ]);
  expect(refused('aside', '149')).toEqual([]);
});

test('the better place to hold it refers to the side that spans', () => {
  const words = (spans: string) => {
    const got = found({ 'handling.spans': { t: spans }, ...held('ends') });
    mustAnswer(got);
    return got.judgement.say.replaceAll('\u00a0', ' ');
  };
  // 0.207 of 450 mm and of 300 mm.
  expect(words('length')).toContain('Held 93 mm from each end of its span');
  expect(words('width')).toContain('Held 62 mm from each end of its span');
});
