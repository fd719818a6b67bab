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

/**
 * What the reader has entered. Each field is stored under its own key, so two tabs do not overwrite
 * each other's entries.
 */
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

/**
 * The ids of the worksheets in which the reader has typed or chosen something. A shared entry does
 * not tell in which of its worksheets it was typed.
 */
export const $used = persistentMap<Record<string, string>>(KEYS.used, {});

/** Records that a worksheet was used, or is no longer in use. */
export function use(id: string, used: boolean): void {
  $used.setKey(id, used ? 'yes' : (undefined as never));
}

/** The system of units in force on the whole site. */
export const $units = persistentAtom<System>(KEYS.units, 'metric', {
  encode: (system: System) => system,
  decode: (text: string) => (text === 'us' ? 'us' : 'metric'),
});

/** Switches the whole site to a system of units, including the button in the masthead. */
export function setUnits(units: System): void {
  $units.set(units);
  dispatchEvent(new StorageEvent('storage', { key: KEYS.units, newValue: units }));
}

/** Whether an entry is small enough to be read back from storage. If not, a notice says so. */
export function fitsField(entry: Entry): boolean {
  if (isEntry(entry)) return true;
  notify(
    'not-kept',
    `That is more than one field keeps (${LIMITS.typed} characters), so nothing was changed. Put in less of it.`,
  );
  return false;
}

/**
 * The bench keys that have changed since the results depending on them were last recomputed; see
 * `live/catch-up.ts`. A worksheet on this page recomputes itself, but results of other pages may now
 * be out of date. Each key is stored under a random mark that is never reused. So if two tabs record
 * changes at once, both are kept, and a tab that removes what it has dealt with leaves what another
 * has recorded meanwhile.
 */
export const $behind = persistentMap<Record<string, string>>(KEYS.behind, {});
const mark = (): string => String(Math.random());

/**
 * Set to a new mark whenever a batch changes; cleared when the summary of all batches has been
 * recomputed.
 */
export const $unlearned = persistentAtom<string | undefined>(KEYS.unlearned, undefined);
/** Records that a batch has changed, so that the summary of all batches is out of date. */
export const noteUnlearned = (): void => $unlearned.set(mark());

/** Removes the changed keys recorded under these marks. */
export function dropBehind(marks: Iterable<string>): void {
  for (const one of marks) $behind.setKey(one, undefined as never);
}

/**
 * Records changed keys. Call it after the change itself, so that another tab that hears of it reads
 * the new values.
 */
export function noteBehind(...keys: readonly string[]): void {
  const before = Object.entries($behind.get());
  for (const key of keys) {
    // Under a new mark: another tab may be about to remove the earlier one.
    dropBehind(before.flatMap(([one, noted]) => (noted === key ? [one] : [])));
    $behind.setKey(mark(), key);
  }
}

/**
 * Puts an entry on the bench. An empty one is removed; one too large to be read back is refused.
 */
export function enter(key: string, entry: Entry | undefined): void {
  const empty = !entry || Object.values(entry).every((value) => value === undefined);
  if (!empty && !fitsField(entry)) return;
  $entries.setKey(key, empty ? (undefined as never) : entry);
  noteBehind(key);
}

/** Keeps a result for later worksheets; `undefined` removes it. */
export function keep(key: string, kept: Kept | undefined): void {
  if (JSON.stringify($kept.get()[key]) === JSON.stringify(kept)) return;
  $kept.setKey(key, kept as Kept);
  noteBehind(key);
}

/** Where an earlier version of this handbook stored the changed keys, as one list. */
const LISTED = 'suds.behind';

/**
 * Brings up to date what an earlier version left: its list of changed keys, and a plan without the
 * foam of each load. That foam then waits for the worksheet that keeps the plan, and everything on
 * the bench is marked as changed.
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
 * Replaces all values of a store. It is read first: a store without a listener on this page has not
 * loaded what the browser keeps, and `set` would then remove nothing.
 */
function replace<T>(
  store: { get: () => unknown; set: (values: Record<string, T>) => void },
  values: Record<string, T>,
): void {
  store.get();
  store.set(values);
}

/**
 * Everything on the bench. Entries alone do not determine the kept results, because of two
 * worksheets that keep the same key the last one worked in owns it. So both are saved and restored
 * together.
 */
export interface Bench {
  readonly entries: Entries;
  readonly kept?: KeptResults;
  readonly used?: Readonly<Record<string, string>>;
}

/** The bench as it is now. */
export const onBench = (): Bench => ({
  entries: $entries.get(),
  kept: $kept.get(),
  used: $used.get(),
});

/** Replaces the bench; the system of units stays. */
export function replaceBench({ entries, kept, used }: Bench): void {
  replace($kept, { ...kept });
  replace($used, { ...used });
  replace($entries, { ...entries });
}
