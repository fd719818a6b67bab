import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { afterAll, describe, expect, test, vi } from 'vitest';
import { Editor } from '../../../src/bench/records/editor.ts';
import type { ReadingName } from '../../../src/bench/records/readings.ts';
import type { BatchRecord } from '../../../src/bench/records/record.ts';
import { RUN_STEPS } from '../../../src/worksheets/live/run/RunSteps.tsx';
import { planMass } from '../../../src/worksheets/live/run/run-base.ts';
import { runReadings } from '../../../src/worksheets/live/run/run-readings.ts';
import { batch, plan, say } from './run-batch.ts';

vi.stubGlobal('document', { body: { dataset: {} } });
afterAll(() => void vi.unstubAllGlobals());

type Readings = Partial<Record<ReadingName, string>>;
/** A step as it is drawn. */
const drawn = (step: number, readings: Readings, of: typeof plan, over = false) =>
  drawnOf(step, batch(readings), of, over);
function drawnOf(step: number, record: BatchRecord, of: typeof plan, over = false) {
  const editor = new Editor(record, () => {});
  const { Step } = RUN_STEPS[step]!;
  const html = renderToString(
    h(Step, { editor, plan: of, say, over, undo: undefined, setUndo: () => {} }),
  );
  return html.replaceAll('\u00a0', ' ');
}

test('a bucket larger than the mix is explained by the readings of the run', () => {
  const own = { ...plan, example: false };
  const small = { cement: '1', water: '0.4', foamDensity: '80', planned: '600' };
  const words = drawn(2, { ...small, tare: '0.85', vessel: '20', full: '12.9' }, own);
  expect(words).toMatch(/holds more than the whole mix.*look again at its volume and its weights/);
  expect(words).not.toContain('example');
});

describe('the step that weighs the blend', () => {
  const own = { ...plan, example: false, aimed: true };
  const small = { cement: '1', water: '0.4', foamDensity: '80', planned: '600' };
  const weigh = (readings: Readings, of: typeof plan) => drawn(2, readings, of);

  test('gives the possible weights of the full bucket, where it weighs something else', () => {
    // By hand: 0.85 kg, and 20 L of 80 and of 1951 kg/m³.
    const bucket = { ...small, tare: '0.85', vessel: '20' };
    for (const full of ['129', '1.29'])
      expect(weigh({ ...bucket, full }, own)).toMatch(
        new RegExp(`full of blended mix: read ${full}\\S* kg; .* from 2.45 kg to 39.9 kg. Weigh`),
      );
    expect(weigh({ ...bucket, full: '12.9' }, own)).not.toContain('Weigh again');
    // The bucket may be right and the foam is not.
    const heavy = { ...bucket, foamDensity: '700', full: '20' };
    expect(weigh(heavy, own)).toContain('These readings cannot be a mix');
  });

  test('asks for the empty bucket where only the full one is written down', () => {
    expect(weigh({ ...small, vessel: '20', full: '12.9' }, own)).toContain(
      'This weighing needs “Bucket, empty” too',
    );
    const whole = { ...small, tare: '0.85', vessel: '20' };
    expect(weigh({ ...whole, full: '12.9' }, own)).not.toContain('This weighing needs');
    expect(weigh({ ...small, vessel: '20' }, own)).not.toContain('This weighing needs');
  });

  test('a blend that is to be weighed again before it is placed is placed only if that stands', () => {
    // All of its foam alive it would weigh 600 kg/m³, and 564 is within twice what is near enough.
    const mixed = batch({
      ...{ cement: '13.57', water: '5.43', foamDensity: '80', foamVolume: '25.3' },
      ...{ tare: '0.85', vessel: '20', full: '12.13', planned: '600' },
    });
    const made = { weighed: 640, foam: 0 };
    const words = drawnOf(2, { ...mixed, corrections: [made, made] }, own);
    expect(words).toContain('Weigh again before anything is added or placed.');
    expect(words).toMatch(/If it is right: No more corrections\..*place it as it is/);
    const heavy = { ...mixed.readings, full: { t: '13.6', u: 'kg', s: 'metric' } as const };
    const told = drawnOf(2, { ...mixed, readings: heavy, corrections: [made, made] }, own);
    expect(told).toContain('No more corrections.');
    expect(told).not.toContain('If it is right');
  });

  test('says what base mix to add is made of, its pigment and fibre too', () => {
    const other = [
      { name: 'Fibre', mass: 0.2 },
      { name: 'Pigment', mass: 0.3 },
    ];
    // 10 kg of base mix of 1950 kg/m³ or so and 14 L of foam of 80: 11.1 kg of 540 or so, and 520 weighed.
    const light = { cement: '6.5', water: '3', sand: '0', foamDensity: '80', foamVolume: '14' };
    const bucket = { tare: '1', vessel: '20', full: '11.4', planned: '600' };
    const of = { ...own, cement: 6.5, water: 3, sand: 0 };
    const parts = (words: string) => {
      const [, kg = '', within = ''] = /Add ([\d.]+) kg of base mix \((.*?)\)/.exec(words) ?? [];
      return { kg: Number(kg), within };
    };
    const { kg, within } = parts(weigh({ ...light, ...bucket }, { ...of, other }));
    expect(within).toMatch(
      /^[\d.]+ kg of cement, \d+ g of fibre, \d+ g of pigment, [\d.]+ (?:kg|g) of water$/,
    );
    const [cement, fibre, pigment] = within.match(/[\d.]+/g)!.map(Number);
    expect(cement! / kg).toBeCloseTo(0.65, 1);
    expect(fibre! / 1000 / kg).toBeCloseTo(0.02, 2);
    expect(pigment! / 1000 / kg).toBeCloseTo(0.03, 2);
    expect(parts(weigh({ ...light, ...bucket }, of)).within).toMatch(
      /^[\d.]+ kg of cement, [\d.]+ (?:kg|g) of water$/,
    );
  });

  test('warns of a bucket that the mix will not fill, until it is weighed', () => {
    expect(weigh({ ...small, tare: '0.85', vessel: '20' }, own)).toContain('a smaller vessel');
    const weighed = { ...small, tare: '0.85', vessel: '20', full: '12.9' };
    expect(weigh(weighed, own)).not.toContain('a smaller vessel');
  });

  test('warns of less mix than the forms hold', () => {
    const { unsized: _, ...sized } = own;
    // 21 kg come to 35 L at 600 kg/m³, and to 33.4 L at 629, which is near enough.
    const bucket = { cement: '13.57', water: '5.43', tare: '0.85', vessel: '20' };
    const at = (full: string, of: typeof plan) => weigh({ ...bucket, full }, of);
    const forms = { ...sized, forms: 0.102, loads: 3 };
    expect(at('13.43', forms)).toMatch(
      /There are 33\.4 L of it, and the forms of a load hold 34\.0 L: fill whole pieces first/,
    );
    expect(at('12.85', forms)).not.toContain('There are');
    // What is to be corrected is not placed; of forms that are the example’s nothing is said.
    expect(at('13.6', forms)).toMatch(/fold it in gently/);
    expect(at('13.6', forms)).not.toContain('There are');
    expect(at('13.43', { ...forms, unsized: true })).not.toContain('There are');
  });

  test('does not call a mix good against the example’s density, which it names', () => {
    const bucket = { cement: '13.57', water: '5.43', tare: '0.85', vessel: '20', full: '12.9' };
    const example = weigh(bucket, { ...plan, example: true });
    expect(example).toMatch(
      /the example’s: 600 kg.*Near enough to the invented example’s density/s,
    );
    expect(example).not.toContain('Stop stirring');
    expect(weigh(bucket, own)).toMatch(/planned: 600 kg.*Near enough. Stop stirring/s);
    // A batch of one's own size, of the example's density.
    expect(weigh(bucket, { ...own, aimed: false })).not.toContain('Stop stirring');
    expect(weigh({ ...bucket, planned: '600' }, { ...plan, example: true })).toContain(
      'Stop stirr',
    );
  });
});

test('without a possible amount of foam the reason is given once', () => {
  const mixed = { cement: '13.57', water: '5.43', planned: '600' };
  for (const foamDensity of ['15', '30', '400']) {
    const foam = drawn(1, { ...mixed, foamDensity }, { ...plan, example: false });
    expect(foam.match(/<strong>Stop\.<\/strong>/g)).toHaveLength(1);
    expect(foam).not.toContain('run-number');
  }
  const wet = drawn(1, { ...mixed, foamDensity: '130' }, { ...plan, example: false });
  expect(wet).toMatch(/Foam to put in: <strong.*Foam of 130 g\/L is wet/s);
});

test.each(['', 'x', '1 h', '-1'])(
  'a foam whose ± is ‘%s’ is drawn, and what is wrong stands beside it',
  (p) => {
    const { foamDensity } = batch({ foamDensity: '80' }).readings;
    const record = batch({}, { readings: { foamDensity: { ...foamDensity, p } } });
    const foam = drawnOf(1, record, plan);
    expect(foam).toMatch(/id="record-foamDensity-pm-problem"[^>]*>± of Foam density/);
    expect(foam).not.toContain('no better than one assumed');
  },
);

test('the next load follows the reader’s plan, not the example’s', () => {
  const cover = (example: boolean) => drawn(4, {}, { ...plan, loads: 3, example });
  expect(cover(false)).toContain('The next of the 3 loads');
  expect(cover(true)).not.toContain('loads');
});

test('the bucket is rinsed before the foam of the next load, and the part struck off when it has sunk', () => {
  const own = { ...plan, example: false };
  const cover = drawn(4, {}, { ...own, loads: 3 });
  expect(cover).toMatch(/next of the 3 loads.*Rinse the bucket, shake it out.*before its foam/s);
  expect(cover).toMatch(
    /Wash before anything sets.*stopped sinking.*strike it off.*cover it again/s,
  );
  expect(drawn(4, {}, { ...own, loads: 1 })).not.toContain('Rinse the bucket');
});

test('the base mix is compared with the weight of a full jug', () => {
  // By hand: 1.4 kg in 1/3.15 + 0.4 L.
  expect(drawn(0, {}, plan)).toMatch(
    /#base-check-question">a jug of it<\/a>: it should come to 1\.95 kg\/L\./,
  );
});

test('other ingredients have their place in the order, fibre after the jug of base mix', () => {
  const holding = (...names: string[]) => ({
    ...plan,
    other: names.map((name) => ({ name, mass: 0.3 })),
  });
  const work = (...names: string[]) =>
    RUN_STEPS[0].work(holding(...names), say).replaceAll('\u00a0', ' ');
  expect(work()).toBe('Water first, cement into it, until no lump is left.');
  expect(work('Fibre', 'Pigment')).toBe(
    'Water first, pigment, 300 g, stirred into it, cement into it, until no lump is left.',
  );
  const both = drawn(0, {}, holding('Fibre', 'Pigment'));
  expect(both).toMatch(
    /id="record-cement".*Before the fibre and the foam weigh <a.*Fibre last, 300 g: drill off/s,
  );
  // Once is enough.
  expect(both).not.toContain('And:');
  const plain = drawn(0, {}, holding('Pigment'));
  expect(plain).toContain('Before the foam weigh');
  expect(plain).not.toContain('ibre');
});

test('a batch that is only recorded is asked for nothing more', () => {
  const own = { ...plan, example: false };
  const orders = /Add |Good\.|place it|run-number|exactly that|a jug of it|strike it off/;
  const mixed = { cement: '13.57', water: '5.43', foamDensity: '80', planned: '600' };
  const bucket = { ...mixed, tare: '0.85', vessel: '20' };
  for (const [step, readings] of [
    [0, { water: '5.43' }],
    [1, mixed],
    [2, { ...bucket, full: '12.9' }],
    [2, { ...bucket, full: '15.5' }],
    [4, {}],
  ] as const) {
    expect(drawn(step, readings, own)).toMatch(orders);
    const asked = drawn(step, readings, own, true).replaceAll(
      /It weighs <strong.*?<\/strong>/g,
      '',
    );
    expect(asked).not.toMatch(orders);
  }
});

test('mix is told as taken out only where a correction had some taken out', () => {
  const place = (corrections: BatchRecord['corrections']) => {
    const record = { ...batch({ leftOver: '2' }), corrections };
    const { Step } = RUN_STEPS[3];
    const editor = new Editor(record, () => {});
    return renderToString(h(Step, { editor, plan, say, undo: undefined, setUndo: () => {} }));
  };
  expect(place([{ weighed: 660, out: 2, foam: 0.001 }])).toContain('taken out of the mixer');
  expect(place([])).not.toContain('taken out of the mixer');
  expect(place([{ weighed: 660, foam: 0.001 }])).not.toContain('taken out of the mixer');
});

test('ingredients without a field are named, for one load', () => {
  const other = [
    { name: 'Fly ash', mass: 1.024 },
    { name: 'Fibre', mass: 0.045 },
  ];
  const base = (of: typeof plan) => drawn(0, {}, of);
  expect(base({ ...plan, loads: 2, other })).toMatch(
    /And: fly ash 1\.02 kg\. What has no field here counts as put in\..*Fibre last, 45\.0 g:/s,
  );
  expect(base(plan)).not.toContain('no field');
});

describe('what the steps say before it is needed', () => {
  const own = { ...plan, example: false, aimed: true };
  const bucket = { tare: '0.85', vessel: '20' };

  test('the bucket is asked before the foam is made, and folded once it is known', () => {
    const asked = drawn(0, {}, own);
    expect(asked).toContain('id="record-tare"');
    expect(asked).not.toContain('<details');
    for (const step of [0, 1, 2]) {
      const known = drawn(step, bucket, own);
      expect(known).toMatch(
        /<details class="folded"><summary>Bucket: 0\.850? kg empty, 20\.0 L<\/summary>.*id="record-tare"/s,
      );
      // One half of it is no bucket.
      expect(drawn(step, { tare: '0.85' }, own)).not.toContain('<details');
    }
  });

  test('the source of the bucket is named: the bench or the load before', () => {
    const record = batch(bucket);
    const { tare, vessel } = record.readings;
    const onBench = { ...record, bench: { 'bucket.tare': tare!, 'bucket.volume': vessel! } };
    expect(drawnOf(0, onBench, own)).toContain('20.0 L, as on the bench</summary>');
    const before = { name: 'One', vessel: { tare: tare!, vessel: vessel! } };
    const { Step } = RUN_STEPS[0];
    const editor = new Editor(onBench, () => {});
    const html = renderToString(
      h(Step, { editor, plan: own, say, before, undo: undefined, setUndo: () => {} }),
    );
    expect(html.replaceAll('\u00a0', ' ')).toContain('20.0 L, as for “One”</summary>');
  });

  test('the next load shows beside each amount that of the load before', () => {
    const lighter = { ...own, foamDensity: 62, cement: own.cement * 1.02, water: own.water * 1.02 };
    const was = { ...own, loads: 2, solution: 0.006 };
    const volume = planMass(was) / was.wetDensity;
    // As much mix, as dense.
    const foamVolume =
      (volume * was.wetDensity - lighter.cement - lighter.water - lighter.sand) / 62;
    const now = { ...lighter, foamVolume, loads: 2, solution: 0.00472 };
    const { Step } = RUN_STEPS[0];
    const before = { name: 'One', vessel: {}, plan: was };
    const drawnWith = (of: typeof now, over = false) =>
      renderToString(
        h(Step, {
          ...{ editor: new Editor(batch({}), () => {}), plan: of, say, before, over },
          ...{ undo: undefined, setUndo: () => {} },
        }),
      ).replaceAll('\u00a0', ' ');
    const words = drawnWith(now);
    expect(words).toContain('planned at 62.0 g/L now');
    expect(words).toContain(
      `Cement: <strong class="run-number">${now.cement.toFixed(2)} kg</strong></p><p class="note">The load before took ${was.cement.toFixed(2)} kg.`,
    );
    expect(words).toContain(
      '6.00 L was planned for all loads, and by this plan they take 4.72 L. What was mixed does',
    );
    expect(drawnWith(was as typeof now)).not.toContain('The load before took');
    expect(drawnWith(now, true)).not.toContain('The load before took');
  });

  test('the advice to weigh the heaviest amount in portions is given once', () => {
    const times = (of: typeof plan) => drawn(0, {}, of).split('in portions').length - 1;
    expect(times(own)).toBe(1);
    expect(times({ ...own, cement: 5, water: 2 })).toBe(0);
    // What it offers is read.
    const sum = batch({ cement: '4.8 + 4.8 + 4.8' });
    expect(runReadings(sum, say).at('cement')).toBeCloseTo(14.4, 9);
  });

  test('the expected reading of the full bucket is above its field, the verdict below', () => {
    const weighed = { ...bucket, cement: '13.57', water: '5.43', foamDensity: '80', full: '14.2' };
    // 0.85 kg and 20 L of 600 kg/m³.
    const aim = 'Full of blended mix it should read 12.85 kg.';
    const before = drawn(2, { ...weighed, full: '' }, own);
    expect(before).toMatch(new RegExp(`${aim}.*id="record-full".*<details`, 's'));
    const after = drawn(2, weighed, own);
    expect(after).toMatch(new RegExp(`${aim}.*id="record-full".*It weighs.*<details`, 's'));
    // Between the weight and its verdict stands its own ± alone.
    const between = after.slice(after.indexOf('id="record-full"'), after.indexOf('It weighs'));
    expect(between.match(/<input id="[^"]*/g)).toEqual(['<input id="record-full-pm']);
    expect(drawn(2, weighed, own, true)).not.toContain('should read');
    // A bucket that the mix cannot fill is not aimed with.
    const little = { ...weighed, cement: '1', water: '0.4', full: '' };
    expect(drawn(2, little, own)).not.toContain('should read');
    expect(drawn(2, { ...weighed, full: '' }, { ...plan, aimed: false })).toContain(
      'should read 12.85 kg at the example’s density.',
    );
  });

  test('the bucket goes back before anything is added', () => {
    const weighed = { ...bucket, cement: '13.57', water: '5.43', foamDensity: '80' };
    const back = 'Tip the bucket back into the mixer: this is for the whole load. Add';
    expect(drawn(2, { ...weighed, full: '14.2' }, own)).toContain(`Too heavy. ${back}`);
    // What is left of the first foam has drained meanwhile.
    expect(drawn(2, { ...weighed, full: '14.2' }, own)).toContain(', freshly made, fold it in');
    expect(drawn(2, { ...weighed, full: '11.6' }, own)).toContain(`Too light. ${back}`);
    expect(drawn(2, { ...weighed, full: '12.9' }, own)).not.toContain('Tip');
  });
});
