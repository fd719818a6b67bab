import { persistentAtom, persistentMap } from '@nanostores/persistent';
import {
  type Entries,
  type Entry,
  isEntry,
  isKept,
  type Kept,
  type KeptResults,
  type System,
} from './entries.ts';
import { localStore } from './local-store.ts';
import { notify } from './notices.ts';
import { LIMITS } from './records/limits.ts';
import { decode, KEYS, openStorage } from './storage.ts';

openStorage();

/** What the reader has entered, one stored value a field, so that two tabs never overwrite each other. */
export const $entries = persistentMap<Record<string, Entry>>(
  KEYS.entries,
  {},
  {
    encode: (entry: Entry) => JSON.stringify(entry),
    decode: (text: string) => decode(text, (x): x is Entry => isEntry(x)) as Entry,
  },
);

/** Results that later worksheets may use. */
export const $kept = persistentMap<Record<string, Kept>>(
  KEYS.kept,
  {},
  {
    encode: (kept: Kept) => JSON.stringify(kept),
    decode: (text: string) => decode(text, isKept) as Kept,
  },
);

/** Worksheets in which the reader has typed or chosen something, by id: a shared reading does not say where. */
export const $used = persistentMap<Record<string, string>>(KEYS.used, {});

/** Notes that a worksheet was used, or is no longer. */
export function use(id: string, used: boolean): void {
  $used.setKey(id, used ? 'yes' : (undefined as never));
}

/** The system of units in force on the whole site. */
export const $units = persistentAtom<System>(KEYS.units, 'metric', {
  encode: (system: System) => system,
  decode: (text: string) => (text === 'us' ? 'us' : 'metric'),
});

/** Turns the whole site to a system of units, the button in the masthead too. */
export function setUnits(units: System): void {
  $units.set(units);
  dispatchEvent(new StorageEvent('storage', { key: KEYS.units, newValue: units }));
}

/** Whether an entry could be read again; one that could not is more than a field keeps, and that is said. */
export function fitsField(entry: Entry): boolean {
  if (isEntry(entry)) return true;
  notify(
    'not-kept',
    `That is more than one field keeps (${LIMITS.typed} characters), so nothing was changed. Put in less of it.`,
  );
  return false;
}

/**
 * The keys of what was entered or kept since all that rests on it was last worked out anew, each under a mark that is
 * never used again: two tabs that note at once keep both, and one that takes off what it has worked out leaves what the
 * other noted meanwhile. A worksheet works itself out where it is shown; one on another page may have left a result
 * that is older now.
 */
export const $behind = persistentMap<Record<string, string>>(KEYS.behind, {});
const mark = (): string => String(Math.random());

/** Set once a batch has changed, until a page has learned from all of them anew; to another mark each time. */
export const $unlearned = persistentAtom<string | undefined>(KEYS.unlearned, undefined);
/** Notes that a batch has changed, and what was learned from all is behind. */
export const noteUnlearned = (): void => $unlearned.set(mark());

/** Takes what was noted under these marks off again. */
export function dropBehind(marks: Iterable<string>): void {
  for (const one of marks) $behind.setKey(one, undefined as never);
}

/** Noted after the change itself: another tab that hears of it works with what has changed already. */
export function noteBehind(...keys: readonly string[]): void {
  const before = Object.entries($behind.get());
  for (const key of keys) {
    // Each change anew, for another tab may just be done with the one before.
    dropBehind(before.flatMap(([one, noted]) => (noted === key ? [one] : [])));
    $behind.setKey(mark(), key);
  }
}

/** Puts an entry on the bench; an empty one is taken off, and one that could not be read again is refused. */
export function enter(key: string, entry: Entry | undefined): void {
  const empty = !entry || Object.values(entry).every((value) => value === undefined);
  if (!empty && !fitsField(entry)) return;
  $entries.setKey(key, empty ? (undefined as never) : entry);
  noteBehind(key);
}

/** Keeps a result for later worksheets, or takes it back. */
export function keep(key: string, kept: Kept | undefined): void {
  if (JSON.stringify($kept.get()[key]) === JSON.stringify(kept)) return;
  $kept.setKey(key, kept as Kept);
  noteBehind(key);
}

/** Where an earlier version of this handbook noted all that was behind, as one list. */
const LISTED = 'suds.behind';

/**
 * Notes what an earlier version left. A plan that was kept before the foam of each load was is behind, with all that lies
 * beside it; the foam of a load waits for the worksheet that has the rest of the plan.
 */
export function noteLate(): void {
  const listed = localStore()?.getItem(LISTED);
  localStore()?.removeItem(LISTED);
  noteBehind(...(listed?.split(' ').filter(Boolean) ?? []));
  const { 'mix.foamVolume': all, 'mix.loadFoam': load } = $kept.get();
  if (!all?.by || load) return;
  keep('mix.loadFoam', { waits: true, from: all.from, by: all.by });
  noteBehind(...Object.keys({ ...$entries.get(), ...$kept.get() }));
}

/**
 * Puts other values into a store in place of those there. It is read first: one that nothing on this
 * page listens to does not know yet what the browser keeps, and would remove nothing.
 */
function replace<T>(
  store: { get: () => unknown; set: (values: Record<string, T>) => void },
  values: Record<string, T>,
): void {
  store.get();
  store.set(values);
}

/**
 * All that lies on the bench. Of two worksheets that keep the same thing the last one changed has it, which
 * readings alone do not tell: what is taken away and put back is both.
 */
export interface Bench {
  readonly entries: Entries;
  readonly kept?: KeptResults;
  readonly used?: Readonly<Record<string, string>>;
}

/** What lies on the bench now. */
export const onBench = (): Bench => ({
  entries: $entries.get(),
  kept: $kept.get(),
  used: $used.get(),
});

/** Puts another bench in place of the one there; the units chosen stay. */
export function replaceBench({ entries, kept, used }: Bench): void {
  replace($kept, { ...kept });
  replace($used, { ...used });
  replace($entries, { ...entries });
}
