import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { UNSTORED } from '../../src/bench/local-store.ts';
import { forgiving, setDamagedAside } from '../../src/bench/storage.ts';
import { FakeStorage } from './records/fake-storage.ts';

/** A browser's store, as far as this needs one. */
function storeWith(values: Record<string, string>): Storage {
  const map = new Map(Object.entries(values));
  return new Proxy({} as Storage, {
    get: (_, name) =>
      ({
        getItem: (key: string) => map.get(key) ?? null,
        setItem: (key: string, value: string) => void map.set(key, value),
        removeItem: (key: string) => void map.delete(key),
      })[name as 'getItem'],
    ownKeys: () => [...map.keys()],
    getOwnPropertyDescriptor: () => ({ enumerable: true, configurable: true }),
  });
}

const good = '{"t":"0.85","u":"kg","s":"metric"}';
let store: Storage;

beforeEach(() => {
  store = storeWith({
    'suds.bench.1.bucket.tare': good,
    'suds.bench.1.bucket.volume': '{"t":20}',
    'suds.bench.1.foam.method': 'not json',
    'suds.bench.0.old': good,
    'suds.kept.1.foam.density': '{"v":null,"from":"x"}',
    'suds.kept.1.mix.planned': '{"v":600,"from":"What goes into the batch?"}',
    'suds.units': 'us',
    'someone.else': '{',
    // In CALLED, as in every object.
    toString: 'of another site at this address',
  });
});

describe('stored values that cannot be read', () => {
  test('are set aside by name, and the rest stays', () => {
    expect([...setDamagedAside(store)].sort()).toEqual([
      'suds.bench.0.old',
      'suds.bench.1.bucket.volume',
      'suds.bench.1.foam.method',
      'suds.kept.1.foam.density',
    ]);
    expect(
      Object.keys(store)
        .filter((key) => !key.startsWith('suds.aside.'))
        .sort(),
    ).toEqual([
      'someone.else',
      'suds.bench.1.bucket.tare',
      'suds.kept.1.mix.planned',
      'suds.units',
      'toString',
    ]);
  });

  test('stay where they are when a newer version wrote them', () => {
    store.setItem('suds.bench.2.bucket.tare', '{"of":"tomorrow"}');
    expect(setDamagedAside(store)).not.toContain('suds.bench.2.bucket.tare');
    expect(store.getItem('suds.bench.2.bucket.tare')).toBe('{"of":"tomorrow"}');
  });

  test('are kept to be looked at', () => {
    setDamagedAside(store);
    expect(store.getItem('suds.aside.suds.bench.1.foam.method')).toBe('not json');
  });

  test('are set aside when no field is called so: clearing the bench would not find them', () => {
    const names = ['suds.bench.1.__proto__', 'suds.kept.1.constructor'];
    store.setItem(names[0]!, good);
    store.setItem(names[1]!, '{"v":600,"from":"x"}');
    expect(setDamagedAside(store)).toEqual(expect.arrayContaining(names));
    for (const name of names) expect(store.getItem(name)).toBeNull();
  });

  test('are those of the run and its clock too, and sound ones stay', () => {
    const values = {
      'suds.run.1': ['{"id":"x","st', '{"id":"x","step":-1}', 'null', '{"id":"x","step":2}'],
      'suds.clock.1': [
        '{"start":1',
        '{"start":"now"}',
        '{"start":1e12,"stop":null}',
        '{"start":1}',
      ],
      'suds.left.1': ['[{"id":', '{}', 'null', '[]'],
    };
    for (const [key, texts] of Object.entries(values)) {
      const sound = texts.pop()!;
      for (const text of texts) {
        store.setItem(key, text);
        expect(setDamagedAside(store), text).toContain(key);
        expect([store.getItem(key), store.getItem(`suds.aside.${key}`)]).toEqual([null, text]);
      }
      store.setItem(key, sound);
      expect(setDamagedAside(store)).not.toContain(key);
      expect(store.getItem(key)).toBe(sound);
    }
  });

  test('are set aside once', () => {
    setDamagedAside(store);
    expect(setDamagedAside(store)).toEqual([]);
  });
});

describe.each(['is full', 'is off'])('when the store %s', (why) => {
  const tare = 'suds.bench.1.bucket.tare';
  const marks: boolean[] = [];
  let asked: boolean;
  let refuses: boolean;
  let engine: Record<string, string>;
  const place = vi.fn(() => null);
  beforeEach(() => {
    marks.length = 0;
    place.mockClear();
    refuses = true;
    vi.stubGlobal('document', {
      getElementById: place,
      body: {
        toggleAttribute: (_: string, on: boolean) => marks.push(on),
        hasAttribute: (mark: string) => mark === UNSTORED && marks.at(-1),
      },
    });
    const asks = (on: boolean) => (what: string) => {
      if (what === 'beforeunload') asked = on;
    };
    vi.stubGlobal('addEventListener', asks(true));
    vi.stubGlobal('removeEventListener', asks(false));
    const set = store.setItem;
    const full = new Proxy(store, {
      get: (target, name) =>
        name === 'setItem'
          ? (key: string, value: string) => {
              if (refuses) throw new DOMException('', 'QuotaExceededError');
              set(key, value);
            }
          : Reflect.get(target, name),
    });
    const given = why === 'is full' ? full : undefined;
    engine = forgiving(given) as unknown as Record<string, string>;
  });
  afterEach(() => {
    vi.unstubAllGlobals();
  });

  test('what is typed stays in the page, and the page is marked and not left without a question', () => {
    engine[tare] = 'new';
    expect(asked).toBe(true);
    expect(engine[tare]).toBe('new');
    expect(tare in engine).toBe(true);
    const keys: string[] = [];
    for (const key in engine) keys.push(key);
    expect(keys.filter((key) => key === tare)).toEqual([tare]);
    expect(marks.at(-1)).toBe(true);
    delete engine[tare];
    expect(tare in engine).toBe(false);
    expect(asked).toBe(false);
    expect(marks.at(-1)).toBe(false);
  });

  test('it is said once, and not of what is no loss or told elsewhere', () => {
    engine['suds.learned.1'] = '{}';
    engine['suds.run.1'] = '{}';
    expect(place).not.toHaveBeenCalled();
    engine[tare] = '1';
    engine[tare] = '2';
    expect(place).toHaveBeenCalledTimes(1);
  });

  test('it is said again of what is typed after the rest was saved as a batch', () => {
    engine[tare] = '1';
    marks.push(false);
    engine[tare] = '2';
    engine[tare] = '3';
    expect(place).toHaveBeenCalledTimes(2);
  });

  test('what is said of a clock is not said of readings, and that once too', () => {
    for (const key of ['suds.clock.1', tare, 'suds.clock.1', tare]) engine[key] = '1';
    expect(place).toHaveBeenCalledTimes(2);
  });

  test('what there is room for again is stored', () => {
    engine[tare] = 'new';
    refuses = false;
    engine[tare] = 'newer';
    expect(engine[tare]).toBe('newer');
    expect(marks.at(-1)).toBe(why === 'is off');
    expect(store.getItem(tare)).toBe(why === 'is off' ? good : 'newer');
  });
});

describe('when the store has no room for a longer value', () => {
  const tare = 'suds.bench.1.bucket.tare';
  /** As in a browser that wants room for both at once. */
  class Both extends FakeStorage {
    override setItem(key: string, text: string): void {
      if (this.getItem(key) !== null) throw new DOMException('full', 'QuotaExceededError');
      super.setItem(key, text);
    }
  }
  const full = new Both();
  const page = () => forgiving(full as unknown as Storage) as unknown as Record<string, string>;
  const typed = (t: string) => JSON.stringify({ t, u: 'kg', s: 'metric' });
  beforeEach(() => {
    for (const key of Object.keys(full)) full.removeItem(key);
    full.hold(Number.POSITIVE_INFINITY);
    full.setItem(tare, typed('9'));
    full.setItem('suds.behind.1', 'a');
    full.hold(typed('9').length + 'a'.length);
  });

  test('the next page does not have the older one in its place', () => {
    const here = page();
    here[tare] = typed('13.44');
    expect(here[tare]).toBe(typed('13.44'));
    expect(tare in page()).toBe(false);
  });

  test('the room of the older one is used', () => {
    const here = page();
    here[tare] = typed('8');
    expect(page()[tare]).toBe(typed('8'));
  });

  test('what is behind already stays so', () => {
    const here = page();
    here['suds.behind.2'] = 'bc';
    expect(here['suds.behind.2']).toBe('bc');
    expect(page()['suds.behind.1']).toBe('a');
    expect('suds.behind.2' in page()).toBe(false);
  });
});
