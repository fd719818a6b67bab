import { expect, test } from 'vitest';
import { blankRecord } from '../../../src/bench/records/record.ts';
import type { Going } from '../../../src/bench/run.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import {
  begunBy,
  firstWeighed,
  foamCounts,
  isOver,
  isPast,
  resumed,
} from '../../../src/worksheets/live/run/run-going.ts';

const say = speaker('metric');
const noon = new Date('2026-05-09T12:00').getTime();
const MINUTES = 60_000;
const made = (before: number) => new Date(noon - before * MINUTES).toISOString();
const kg = (t: string) => ({ t, u: 'kg', s: 'metric' }) as const;
const litres = (t: string) => ({ t, u: 'L', s: 'metric' }) as const;

test('a batch left for another keeps its foam’s weighing and vessel, whatever its blend is weighed in', () => {
  const jar = { tare: kg('0.35'), vessel: litres('1') };
  const record = blankRecord({ readings: { ...jar, cement: kg('13.57'), water: kg('5.43') } });
  const left: Going = {
    ...{ id: record.id, step: 2, begun: noon - 60 * MINUTES, stopped: true },
    foam: kg('2.47'),
    foamIn: { tare: kg('0.85'), vessel: litres('20') },
  };
  const { stopped: _, ...as } = left;
  expect(resumed(record, left, say, noon)).toEqual(as);
});

test('a batch without a known step begins where a reading is missing, or else at placing', () => {
  const readings = { cement: kg('13.57'), water: kg('5.43') };
  const step = (of: object) => resumed(blankRecord({ readings: of }), undefined, say, noon).step;
  expect(step(readings)).toBe(1);
  const foam = { foamDensity: { t: '80', u: 'g/L' }, foamVolume: litres('25') };
  expect(step({ ...readings, ...foam })).toBe(2);
  const bucket = { tare: kg('0.85'), vessel: litres('20'), full: kg('12.85') };
  expect(step({ ...readings, ...foam, ...bucket })).toBe(3);
});

test('the foam’s time goes on past midnight', () => {
  const midnight = new Date('2026-05-09T00:00').getTime();
  const foamMade = new Date(midnight - 10 * MINUTES).toISOString();
  const record = blankRecord({ date: '2026-05-08', foamMade });
  expect(foamCounts(record, midnight + 5 * MINUTES)).toBe(midnight - 10 * MINUTES);
});

test('the foam’s time counts while it is recent and the batch not placed', () => {
  const record = blankRecord({ foamMade: made(20) });
  expect(foamCounts(record, noon)).toBe(noon - 20 * MINUTES);
  expect(resumed(record, undefined, say, noon).begun).toBe(noon - 20 * MINUTES);
  expect(foamCounts(blankRecord({ foamMade: made(13 * 60) }), noon)).toBeUndefined();
  expect(foamCounts(blankRecord({}), noon)).toBeUndefined();
  const placed = { ...record, readings: { placed: litres('32') } };
  expect(foamCounts(placed, noon)).toBeUndefined();
});

test('a run ends half a day after its start, one without a start does not', () => {
  const at = (hours: number) =>
    isOver({ id: 'x', step: 2, begun: noon }, noon + hours * 60 * MINUTES);
  expect([at(0), at(11.9), at(12), at(22)]).toEqual([false, false, true, true]);
  expect(isOver({ id: 'x', step: 2 }, noon)).toBe(false);
});

test('switching batches does not reset the age of what is in the mixer', () => {
  const hours = (n: number) => noon - n * 60 * MINUTES;
  const mixed = blankRecord({ date: '2026-05-09', readings: { water: kg('5.43') } });
  const left: Going = { id: mixed.id, step: 1, begun: hours(13), stopped: true };
  const again = resumed(mixed, left, say, noon);
  expect(again.begun).toBe(hours(13));
  expect(isPast(mixed, again, noon)).toBe(true);
  // Its foam is no older than its base mix; a run of which only that is known is as old.
  const foamed = { ...mixed, foamMade: made(14 * 60) };
  expect(resumed(foamed, undefined, say, noon).begun).toBe(hours(14));
  // Nothing is known but its day: it was begun by the end of that.
  const evening = { ...mixed, date: '2026-05-08' };
  expect(begunBy(evening, undefined, noon)).toBe(hours(12));
  expect(begunBy(mixed, undefined, noon)).toBe(noon);
});

test('without anything weighed in, nothing is too old', () => {
  const empty = blankRecord({ date: '2026-05-09' });
  const left: Going = { id: empty.id, step: 0, begun: noon - 20 * 60 * MINUTES };
  expect(isPast(empty, left, noon)).toBe(false);
  expect(isPast(empty, resumed(empty, left, say, noon), noon)).toBe(false);
});

test('a batch planned in the evening and weighed in the next day has that day’s date', () => {
  const evening = noon - 13 * 60 * MINUTES;
  const planned = blankRecord({ date: '2026-05-08' });
  const going = { id: planned.id, step: 0, begun: evening };
  expect(firstWeighed(planned, going, noon)).toEqual({ begun: noon, date: '2026-05-09' });
  // Of foam made first it is as old as that.
  const foamed = { ...planned, foamMade: made(5) };
  expect(firstWeighed(foamed, going, noon).begun).toBe(noon - 5 * MINUTES);
  // Its day was set by hand: what is typed was weighed then.
  const written = { ...going, begun: noon - MINUTES };
  expect(firstWeighed(planned, written, noon)).toEqual({
    begun: noon - 12 * 60 * MINUTES,
    date: '2026-05-08',
  });
});
