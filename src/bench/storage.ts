import { setPersistentEngine, windowPersistentEvents } from '@nanostores/persistent';
import { arrived } from './arrived.ts';
import { isEntry, isKept, NAME } from './entries.ts';
import { localStore, markUnstored, UNSTORED } from './local-store.ts';
import { BENCH_VERSION, bringUp } from './migrate-bench.ts';
import { notify } from './notices.ts';
import { isBegun, isClock } from './shapes.ts';

/**
 * Storage keys carry the version of what they hold: that of the bench, or one of their own. Four
 * carry none: `behind` and `unlearned`, which are emptied as soon as the results are recomputed;
 * `units`, one of two words; and `aside`, which is followed by the key under which the value was
 * found, with its version.
 */
export const KEYS = {
  entries: `suds.bench.${BENCH_VERSION}.`,
  kept: `suds.kept.${BENCH_VERSION}.`,
  used: `suds.used.${BENCH_VERSION}.`,
  ticks: 'suds.ticks.1.',
  clock: 'suds.clock.1',
  run: 'suds.run.1',
  left: 'suds.left.1',
  learned: 'suds.learned.1',
  aside: 'suds.aside.',
  behind: 'suds.behind.',
  unlearned: 'suds.unlearned',
  units: 'suds.units',
} as const;

const CHECKS: Readonly<Record<string, (x: unknown) => boolean>> = {
  [KEYS.entries]: (x) => isEntry(x),
  [KEYS.kept]: isKept,
  [KEYS.run]: isBegun,
  [KEYS.left]: Array.isArray,
  [KEYS.clock]: isClock,
};
/** What messages call a value that has no field of its own. */
const CALLED: Readonly<Record<string, string>> = {
  [KEYS.run]: 'how far the batch at the bench had come',
  [KEYS.left]: 'the batches stopped for it',
  [KEYS.clock]: 'the foam clock',
};

/** Reads one stored value; undefined when it is damaged or of another version. */
export function decode<T>(text: string, fits: (x: unknown) => x is T): T | undefined {
  try {
    const value: unknown = JSON.parse(text);
    return fits(value) ? value : undefined;
  } catch {
    return undefined;
  }
}

/**
 * Whether a key belongs to a later version of the site, which an older copy may meet in the same
 * browser. Such a value stays where it is.
 */
const isNewer = (key: string) =>
  Number(/^suds\.(?:bench|kept)\.(\d+)\./.exec(key)?.[1]) > BENCH_VERSION;

/**
 * Moves every stored value that this version cannot read to an `aside` key, so that one damaged
 * value does not stop the rest from opening. Returns the keys they had.
 */
export function setDamagedAside(store = localStore()): readonly string[] {
  if (!store) return [];
  const ours = Object.keys(store).filter(
    (key) => Object.hasOwn(CALLED, key) || (/^suds\.(bench|kept)\./.test(key) && !isNewer(key)),
  );
  const damaged = ours.filter((key) => {
    const prefix = Object.keys(CHECKS).find((prefix) => key.startsWith(prefix));
    if (!prefix || !(Object.hasOwn(CALLED, key) || NAME.test(key.slice(prefix.length))))
      return true;
    try {
      return !CHECKS[prefix]!(JSON.parse(store.getItem(key) ?? ''));
    } catch {
      return true;
    }
  });
  for (const key of damaged) {
    const text = store.getItem(key) ?? '';
    store.removeItem(key);
    try {
      store.setItem(KEYS.aside + key, text);
    } catch {
      // A full store: the damaged value is lost, the rest still opens.
    }
  }
  return damaged;
}

/**
 * Keys whose loss is not reported here: the summary of the batches is recomputed, and a run reports
 * its own (`RunBatch.tsx`).
 */
const UNTOLD: readonly string[] = [KEYS.learned, KEYS.unlearned, KEYS.run, KEYS.left];

/**
 * A store that keeps a value in memory if the browser refuses it (its storage is full or off), and
 * says so once.
 */
export function forgiving(store: Storage | undefined): Storage {
  const held = new Map<string, string>();
  const told = new Set<string>();
  const isReading = (key: string) => key.startsWith(KEYS.entries);
  const bodyHas = (mark: string) => globalThis.document?.body.hasAttribute(mark);
  // During a run the bench holds only copies: the readings are in the record of the batch.
  const mark = (key: string) => {
    if (isReading(key) && !bodyHas('data-running'))
      markUnstored(UNSTORED, [...held.keys()].some(isReading));
  };
  const tell = (key: string) => {
    const clock = key === KEYS.clock;
    const id = clock ? 'clock-not-stored' : 'not-stored';
    if (UNTOLD.includes(key) || (!clock && bodyHas('data-running'))) return;
    // Readings are reported again if the earlier ones have been saved as a batch since.
    if (told.has(id) && (!isReading(key) || bodyHas(UNSTORED))) return;
    told.add(id);
    notify(
      id,
      `This browser refused to store ${clock ? 'the foam clock' : 'your readings'} (its space is full or storage is off). ${clock ? 'It counts on this page until you leave it; no other page has it.' : `They stay on this page until you leave it; no other page has them, nor what stood in their place. “Save batch” may still keep them, or hands them to you as a file.`}`,
    );
  };
  return new Proxy({} as Storage, {
    set(_, name, value) {
      const key = String(name);
      try {
        if (!store) throw new Error('storage is off');
        try {
          store.setItem(key, String(value));
        } catch {
          // The older value must not pass for the present one on the next page; removing it may
          // also make room.
          store.removeItem(key);
          store.setItem(key, String(value));
        }
        held.delete(key);
      } catch {
        held.set(key, String(value));
        tell(key);
      }
      mark(key);
      return true;
    },
    deleteProperty(_, name) {
      held.delete(String(name));
      store?.removeItem(String(name));
      mark(String(name));
      return true;
    },
    get: (_, name) => held.get(String(name)) ?? store?.getItem(String(name)) ?? undefined,
    has: (_, name) => held.has(String(name)) || (store?.getItem(String(name)) ?? null) !== null,
    ownKeys: () => [...new Set([...Object.keys(store ?? {}), ...held.keys()])],
    getOwnPropertyDescriptor: () => ({ enumerable: true, configurable: true }),
  });
}

/** Prepares the reader's store once, before any bench store reads it. */
export function openStorage(): void {
  // A page that is built has no reader.
  if (typeof window === 'undefined') return;
  const store = localStore();
  // The first version has nothing to migrate, so its pages need not fetch the code for it.
  if (BENCH_VERSION > 1 && store) bringUp(store);
  const damaged = setDamagedAside(store);
  const tell = () =>
    notify(
      'set-aside',
      `${damaged.length === 1 ? 'One stored reading' : `${damaged.length} stored readings`} could not be read and ${damaged.length === 1 ? 'was' : 'were'} set aside (${damaged.map(shortName).join(', ')}). Everything else is as you left it.`,
      [
        {
          label: 'Take out what was set aside',
          run: () => arrived(import('./take-aside.ts')).then(({ takeAside }) => takeAside(), tell),
        },
      ],
    );
  if (damaged.length > 0) tell();
  setPersistentEngine(forgiving(store), windowPersistentEvents);
}

const shortName = (key: string) => CALLED[key] ?? key.replace(/^suds\.(bench|kept)\.(\d+\.)?/, '');
