import { describe, expect, test } from 'vitest';
import type { Entries, Kept, KeptResults } from '../../src/bench/entries.ts';
import { parseQuantity } from '../../src/core/quantity/parse.ts';
import { answer } from '../../src/islands/engine/answer.ts';
import { heldElsewhere, mayKeep } from '../../src/islands/engine/keeping.ts';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import { type NumberReading, restOnExample } from '../../src/islands/engine/reading.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import type { Fields } from '../../src/islands/fields.ts';
import { type AnyWorksheet, benchKey } from '../../src/islands/worksheet.ts';
import batch from '../../src/worksheets/mix/batch.tsx';
import cost from '../../src/worksheets/mix/cost.tsx';
import fibres from '../../src/worksheets/mix/fibres.tsx';
import proportion from '../../src/worksheets/mix/proportion.tsx';
import targetDensity from '../../src/worksheets/mix/target-density.tsx';
import clock from '../../src/worksheets/placing/clock.tsx';
import pieces from '../../src/worksheets/placing/pieces.tsx';
import shapes from '../../src/worksheets/placing/shapes.tsx';
import { sheets } from './all.ts';

describe('two worksheets that keep the same thing', () => {
  const sheet = { id: 'shape', question: 'What does this form hold?' };
  const mine = { from: sheet.question, by: sheet.id };
  const other = { v: 0.1, from: 'How much must I make?', by: 'pieces' };

  const rest = { sheet, onExample: false };

  test('writes where nothing is kept, or its own', () => {
    expect(mayKeep({ ...rest, holder: undefined, worked: false, answers: true })).toBe(true);
    const own = { v: 1, ...mine };
    expect(mayKeep({ ...rest, holder: own, worked: false, answers: false })).toBe(true);
  });

  test('writes over its own under an older question or without an id, not over the other’s', () => {
    const may = (holder: Kept) => mayKeep({ ...rest, holder, worked: false, answers: false });
    expect(may({ v: 1, from: 'What did it hold?', by: sheet.id })).toBe(true);
    expect(may({ waits: true, from: 'What did it hold?', by: sheet.id })).toBe(true);
    expect(may({ v: 1, from: sheet.question })).toBe(true);
    expect(may({ v: 1, from: sheet.question, by: other.by })).toBe(false);
    expect(may({ v: 1, from: other.from })).toBe(false);
  });

  test('does not write over or remove the other’s when a page opens or a shared reading changes', () => {
    expect(mayKeep({ ...rest, holder: other, worked: false, answers: true })).toBe(false);
    expect(mayKeep({ ...rest, holder: other, worked: true, answers: false })).toBe(false);
  });

  test('writes over the other’s while it is being worked in', () => {
    expect(mayKeep({ ...rest, holder: other, worked: true, answers: true })).toBe(true);
  });
});

describe('a result that rests on the example', () => {
  const sheet = { id: 'pieces', question: 'How much must I make?' };
  const change = { sheet, worked: true, answers: true, onExample: true };
  const theirs = { v: 1, from: 'What does this form hold?', by: 'shapes' };

  test('does not replace one that rests on the reader’s own numbers', () => {
    expect(mayKeep({ ...change, holder: theirs })).toBe(false);
    expect(mayKeep({ ...change, holder: theirs, onExample: false })).toBe(true);
    expect(mayKeep({ ...change, holder: { ...theirs, example: true } })).toBe(true);
    expect(mayKeep({ ...change, holder: undefined })).toBe(true);
    expect(mayKeep({ ...change, holder: { v: 1, from: sheet.question, by: sheet.id } })).toBe(true);
  });
});

test('the example’s bag size counts as example only for a batch that begins with bags', () => {
  const recipe = {
    [benchKey(batch, 'volume')]: { t: '80' },
    [benchKey(batch, 'wetDensity')]: { t: '550' },
    'mix.waterCement': { t: '0.45' },
    'mix.sandCement': { t: '0' },
    'mix.foamDensity': { t: '70' },
  };
  const bag = ' Still the example’s: “Cement comes in bags of”.';
  const rests = (more: Entries = {}) => {
    const reading = readWorksheet(batch, { ...recipe, ...more }, {}, speaker('metric'));
    return [reading.onExample, restOnExample(reading)];
  };
  expect(rests()).toEqual([false, bag]);
  const byBags = { [benchKey(batch, 'aim')]: { t: 'bags' }, [benchKey(batch, 'bags')]: { t: '2' } };
  expect(rests(byBags)).toEqual([true, bag]);
  expect(rests({ ...byBags, [benchKey(batch, 'bag')]: { t: '20' } })).toEqual([false, undefined]);
});

describe('what a worksheet answers and another one has', () => {
  const shapes = { from: 'What does this form hold?', by: 'shapes' };
  const told = (holder: Kept | undefined, system: 'metric' | 'us' = 'metric') => {
    const say = speaker(system);
    const reading = readWorksheet(pieces, {}, {}, say);
    const found = answer(pieces, reading, say);
    if (!found.ok) throw new Error('no answer');
    return heldElsewhere(pieces, reading, found, holder ? { 'batch.volume': holder } : {}, say);
  };

  test('is told with its number, where that differs', () => {
    expect(told({ v: 0.06, ...shapes })).toMatchObject({
      say: 'Foamed mix to make: what follows takes 60.0\u00a0L, from',
      holder: shapes,
    });
    expect(told({ v: 0.06, ...shapes }, 'us')!.say).toContain('15.9\u00a0gal');
  });

  test('may be replaced, unless it rests on the example and the other does not', () => {
    expect(told({ v: 0.06, ...shapes })!.mayTake).toBe(false);
    expect(told({ v: 0.06, ...shapes, example: true })!.mayTake).toBe(true);
  });

  test('is not told where it is the same, its own, missing or waiting', () => {
    expect(told({ v: 0.10512, ...shapes })).toBeUndefined();
    expect(told({ v: 0.06, from: pieces.question, by: pieces.id })).toBeUndefined();
    expect(told(undefined)).toBeUndefined();
    expect(told({ waits: true, ...shapes })).toBeUndefined();
  });
});

describe('what a later worksheet answers anew', () => {
  const batch = { from: proportion.question, by: proportion.id };
  const told = (kept: KeptResults) => {
    const say = speaker('metric');
    const reading = readWorksheet(targetDensity, {}, {}, say);
    const found = answer(targetDensity, reading, say);
    if (!found.ok) throw new Error('no answer');
    return heldElsewhere(targetDensity, reading, found, kept, say);
  };

  test('is told beside the density that it replaces', () => {
    expect(told({ 'mix.planned': { v: 750, ...batch } })).toEqual({
      say: 'Wet density to aim for: what follows takes 750\u00a0kg/m³, from',
      holder: { v: 750, ...batch },
      // It keeps no such thing: the later worksheet answers anew.
      mayTake: false,
    });
    // Nor where it could replace another worksheet's result, which rests on the example as its own does.
    const example = { v: 750, ...batch, example: true } as const;
    expect(told({ 'mix.planned': example })!.mayTake).toBe(false);
    expect(told({ 'mix.planned': { v: 600, ...batch } })).toBeUndefined();
  });

  test('is told beside the dry density too, where gas loss or another cement changes it', () => {
    const planned = { v: 600, ...batch };
    const dry = told({ 'mix.planned': planned, 'part.dryDensity': { v: 459, ...batch } });
    expect(dry!.say).toBe('Oven-dry density to expect: what follows takes 459\u00a0kg/m³, from');
  });
});

/** Two planters and a stone: the stone was sized last, and the sum of all typed where the batch is proportioned. */
describe('a volume typed for the batch is used by the worksheets that follow', () => {
  const say = speaker('us');
  const entries: Entries = { 'proportion.volume': { t: '9.94 + 1.06', u: 'gal', s: 'us' } };
  const last = { v: 0.0376, from: shapes.question, by: shapes.id };
  const kept: KeptResults = {
    'batch.volume': last,
    'batch.net': { ...last, v: 0.0348 },
  };

  test.each<[string, AnyWorksheet]>([
    ['the clock', clock],
    ['the whole batch', batch],
    ['its cost', cost],
    ['its fibres', fibres],
  ])('%s', (_, sheet) => {
    const volume = (more: Entries) =>
      readWorksheet(sheet, { ...entries, ...more }, kept, say).fields.volume as NumberReading;
    expect(volume({})).toMatchObject({ origin: 'kept', from: proportion.question });
    expect(volume({}).value).toBeCloseTo(11 * 0.003785411784, 12);
    const own = volume({ [benchKey(sheet, 'volume')]: { t: '12', u: 'gal', s: 'us' } });
    expect(own.origin).toBe('yours');
    const forms = readWorksheet(sheet, {}, kept, say).fields.volume as NumberReading;
    expect(forms).toMatchObject({ value: last.v, from: shapes.question });
    expect((sheet.fields as Fields).volume).toMatchObject({ borrows: { by: proportion.id } });
    expect(benchKey(proportion, 'volume')).toBe(Object.keys(entries)[0]);
  });

  test('and is named by the worksheets that size pieces', () => {
    const told = (sheet: AnyWorksheet, batch: number, over: KeptResults = kept) => {
      const reading = readWorksheet(sheet, {}, {}, say);
      const found = answer(sheet, reading, say);
      if (!found.ok) throw new Error('no answer');
      const taken = { v: batch, from: proportion.question, by: proportion.id };
      const held = heldElsewhere(sheet, reading, found, { ...over, 'mix.volume': taken }, say);
      return held && [held.say.replaceAll('\u00a0', ' '), held.holder.by];
    };
    const says = (volume: string) => `Foamed mix to make: what follows takes ${volume}, from`;
    expect(told(pieces, 0.04164)).toEqual([says('11.0 gal'), proportion.id]);
    expect(told(shapes, 0.04164)).toEqual([says('11.0 gal'), proportion.id]);
    // Taken by the batch, it is the form's.
    expect(told(pieces, 0.0376)).toEqual([says('9.93 gal'), shapes.id]);
    // What the batch makes is what these pieces ask for, whatever a form held.
    expect(told(pieces, 0.10512, { 'batch.volume': last })).toBeUndefined();
    expect(told(pieces, 0.10512, {})).toBeUndefined();
    const { result } = answer(proportion, readWorksheet(proportion, entries, kept, say), say) as {
      result: ReturnType<typeof proportion.work>;
    };
    expect(proportion.leaves!['mix.volume']!(result, {} as never)).toBeCloseTo(0.04164, 5);
  });
});

test('each slider runs upward between two positive values that include the example', () => {
  const found = sheets.flatMap((sheet) =>
    Object.values(sheet.fields as Fields).flatMap((field) =>
      field.type === 'number' && field.slider ? [field] : [],
    ),
  );
  expect(found.length).toBeGreaterThan(0);
  for (const field of found) {
    const si = (text: string) => {
      const read = parseQuantity(text, field.kind, field.units?.metric);
      if (!read.ok) throw new Error(`${field.label}: '${text}'`);
      return read.value;
    };
    const [from, example, to] = [si(field.slider!.from), si(field.example), si(field.slider!.to)];
    expect(from).toBeGreaterThan(0);
    expect(example).toBeGreaterThanOrEqual(from);
    expect(to).toBeGreaterThanOrEqual(example);
  }
});
