import { expect, test } from 'vitest';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import setTime from '../../../src/worksheets/curing/set-time.tsx';

type Values = Parameters<typeof setTime.work>[0];
const say = speaker('metric');
const values = readWorksheet(setTime, {}, {}, say).values as Values;
const judged = (more: Partial<Values>) => {
  const v = { ...values, ...more };
  return setTime.judge(setTime.work(v, {} as never), v, say);
};
const initial = (more: Partial<Values>) =>
  setTime.work({ ...values, ...more }, {} as never).set.initial;

test('the verdict depends on the share of the depth that sinks before set', () => {
  const bags = { waterCement: values.testWater };
  expect(judged({ ...bags, sunk: 0.0001 }).verdict).toBe('good');
  expect(judged({ sunk: 0.003 })).toMatchObject({ verdict: 'look' });
  expect(judged({ sunk: 0.003 }).say).toMatch(/15\smm, 25\s% of its depth/);
  expect(judged({ sunk: 0.007 }).verdict).toBe('stop');
  expect(judged({ sunk: 0.003, depth: 0.6 }).say).toMatch(/2\.5\s% of its depth/);
  const lasting = { foamTime: 4 * 3600, sunk: undefined };
  expect(judged({ ...lasting, waterCement: values.testWater }).verdict).toBe('good');
  // A wetter mix sets later than the bag's times, by which alone the foam would last.
  for (const waterCement of [values.testWater + 0.001, 0.4, 0.55])
    expect(judged({ ...lasting, waterCement })).toMatchObject({
      verdict: 'look',
      say: expect.stringMatching(/^With the bag’s water.*yours is wetter.*Only its level tells/),
    });
});

test('a wall in colder air gives its set if kept warm, if cold at once, and in between', () => {
  const v = { ...values, mixAt: 293.15, around: 'other', air: 282.15, thickness: 0.04 } as const;
  const found = (more: Partial<Values> = {}) => {
    const all = { ...v, ...more };
    const result = setTime.work(all, {} as never);
    return {
      note: setTime.notes!(result, all, say)[0]!,
      put: setTime.working[0]!.put(result, all, say),
      ways: setTime.tables![0]!.rows(result, all, say),
    };
  };
  // exp((33500 + 1470·11)/8.314462618·(1/282.15 − 1/293.15)) = 2.21 of 2.5 h; e^(−1) of the way is left after 45 min.
  expect(found().note).toMatch(
    /half way from 20\s°C to the air’s 9\s°C after 31\smin, .*kept as poured .*at 2\.5\sh, .*at once at 5\.5\sh\.$/,
  );
  expect(found().put).toMatch(/e\^\(−t \/ 45\.0\smin\) of the way left/);
  expect(found({ thickness: 0.1 }).note).not.toContain('so thick');
  expect(found({ thickness: 0.101 }).note).toMatch(/so thick stays warmer inside/);
  // Poured at 20.01 °C into air of 20 °C, it has no way to go.
  const level = { air: 293.15, mixAt: 293.16 };
  expect(found(level).note).toBe('As warm as the air, it stays so, its own heat left out.');
  expect(found({ ...level, thickness: 0.2 }).note).toMatch(/so thick stays warmer inside/);
  expect(found({ around: 'alike' }).note).toContain('Worked as if it stayed as warm as poured');
  // The room outdoes the water, which has cooled before it tells.
  const [water, room] = found().ways.map(([, time]) => Number.parseFloat(time!));
  expect(room).toBeLessThan(water!);
});

test('a hot mix gets no advice to warm it, and with steel a chloride-free product', () => {
  const of = (more: Partial<Values>) => {
    const v = { ...values, ...more };
    const result = setTime.work(v, {} as never);
    return {
      ways: setTime.tables![0]!.rows(result, v, say).map(([way]) => way),
      notes: setTime.notes!(result, v, say).join(' '),
      put: setTime.working[0]!.put(result, v, say),
    };
  };
  const warmer = ['Warmer mixing water', 'A warmer room and bags'];
  expect(of({ mixAt: 303.15 }).ways).toEqual(expect.arrayContaining(warmer));
  const hot = of({ mixAt: 311.15 }).ways;
  expect(hot.filter((way) => warmer.includes(way!))).toEqual([]);
  expect(hot[0]).toContain('Rapid-hardening cement');
  const product = { accelerator: 'product', dose: 0.04 } as const;
  expect(of({ ...product, steel: 'yes' }).notes).toContain('free of chloride');
  expect(of({ ...product, steel: 'no' }).notes).not.toContain('free of chloride');
  // The working has each factor of what it comes to: 2.5 h × 1.000 ÷ 1.005 × 0.4.
  expect(of(product).put).toContain(' × 0.400 for the accelerator = 59.7');
  expect(of({}).put).not.toContain('accelerator');
});

test('observed sinking counts before the life of the foam, at most the depth of the part', () => {
  const lasting = { foamTime: 4 * 3600, waterCement: values.testWater };
  expect(judged({ ...lasting, sunk: 0.0001 }).verdict).toBe('good');
  expect(judged({ ...lasting, sunk: 0.003 }).verdict).toBe('look');
  expect(judged({ ...lasting, sunk: 0.01 }).verdict).toBe('stop');
  const gone = { ...lasting, sunk: 0.06, sunkAfter: 600 };
  expect(judged(gone).verdict).toBe('stop');
  expect(judged(gone).say).toMatch(/60\smm, 100\s% of its depth/);
  const { sinking, share } = setTime.work({ ...values, ...gone }, {} as never);
  expect(sinking).toBe(values.depth);
  expect(share).toBe(1);
});

test('a set within an hour is noted as maybe before the end of the pour, in minutes', () => {
  const at = (minutes: number) => ({
    initial: minutes * 60,
    final: 4 * 3600,
    mixAt: values.referenceAt,
    foamTime: 4 * 3600,
    sunk: undefined,
    waterCement: values.testWater,
  });
  expect(judged(at(10))).toMatchObject({
    verdict: 'look',
    say: expect.stringMatching(/at 10\smin, perhaps before you have placed it/),
  });
  expect(judged(at(59)).verdict).toBe('look');
  expect(judged(at(61)).verdict).toBe('good');
  // A sinking that leaves no part is worse.
  expect(judged({ ...at(10), sunk: 0.04, sunkAfter: 60 }).verdict).toBe('stop');
});

test('set in the cold uses the same law as age', () => {
  const cold = { mixAt: 278.15 };
  // exp((33500 + 1470·15)/8.314462618·(1/278.15 − 1/293.15)) of 2.5 h.
  const factor = Math.exp((55550 / 8.314462618) * (1 / 278.15 - 1 / 293.15));
  expect(initial(cold) / 9000).toBeCloseTo(factor, 9);
  expect(initial({ ...cold, law: 'arrhenius' })).toBeLessThan(initial(cold));
});

test('an accelerator is listed by its data sheet, with steel too; without one the maker is to be asked', () => {
  const rows = (more: Partial<Values>) => {
    const v = { ...values, ...more };
    return setTime.tables![0]!.rows(setTime.work(v, {} as never), v, say);
  };
  const plain = rows({ accelerator: 'none', steel: 'yes' });
  expect(plain.at(-2)!.slice(0, 2)).toEqual(['Another accelerator', 'by its sheet']);
  expect(plain.at(-1)![1]).toBe('never with steel');
  const own = { accelerator: 'product', steel: 'yes' } as const;
  const [name, time, share] = rows(own).at(-2)!;
  expect(name).toBe('Another accelerator, 2.0\u00a0%');
  // The way promises what the result above the table has come to.
  expect(time).toBe(say(initial(own), 'time', { units: { metric: 'h', us: 'h' }, significant: 2 }));
  expect(share).toBe('70\u00a0%');
});

test('a final set before the initial one is refused in hours, naming both', () => {
  const entries = {
    'set-time.initial': { t: '2 1/2 hours' },
    'set-time.final': { t: '2', u: 'h', s: 'metric' },
  } as const;
  const say = speaker('metric');
  const found = answer(setTime, readWorksheet(setTime, entries, {}, say), say);
  const problems = found.ok ? [] : found.problems;
  expect(problems.map((problem) => problem.input)).toEqual(['set-time-final']);
  expect(problems[0]!.say.replaceAll('\u00a0', ' ')).toBe(
    'Final set: 2 h is before the initial set, 2.5 h as given above. Both are counted from the first water.',
  );
});
