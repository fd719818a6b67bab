import { isRecord } from './entries.ts';

type Loose = Readonly<Record<string, unknown>>;

/** A bench as some version stored it: entries and results by bench key, used worksheets by id. */
export interface Laid {
  readonly bench: Loose;
  readonly kept: Loose;
  readonly used?: Loose;
}

export type Step = (laid: Laid) => Laid;

/**
 * One step for each past version, to the next one. A batch holds a bench too, so the matching step
 * of `records/migrate.ts` calls it.
 */
export const STEPS: readonly Step[] = [];

/** The version of the bench, in its storage keys and in links: the number of steps plus one. */
export const BENCH_VERSION = 1;

/** Migrates a bench of an earlier version to this one. */
export const upToDate = (laid: Laid, from: number, steps = STEPS): Laid =>
  steps.slice(from - 1).reduce((older, step) => step(older), laid);

/**
 * Migrates what earlier versions stored, before anything is read. What cannot be read stays as it
 * is. So does all that a version stored if a step fails on it: it is then set aside.
 */
export function bringUp(store: Storage, steps = STEPS): void {
  // The latest version first, so that an older one never overwrites its values.
  for (const from of [...steps.keys()].reverse()) {
    const start = (part: string, version = from + 1) => `suds.${part}.${version}.`;
    const old: string[] = [];
    const found = (part: string) =>
      Object.fromEntries(
        Object.keys(store)
          .filter((key) => key.startsWith(start(part)))
          .map((key) => {
            old.push(key);
            return [key.slice(start(part).length), parsed(store.getItem(key) ?? '')];
          }),
      );
    const laid = { bench: found('bench'), kept: found('kept'), used: found('used') };
    let migrated: Laid;
    try {
      migrated = upToDate(laid, from + 1, steps);
    } catch (error) {
      globalThis.reportError?.(error);
      continue;
    }
    for (const key of old) store.removeItem(key);
    for (const [part, values] of Object.entries(migrated))
      for (const [name, value] of Object.entries(values))
        try {
          const key = start(part, steps.length + 1) + name;
          if (store.getItem(key) === null)
            store.setItem(key, typeof value === 'string' ? value : JSON.stringify(value));
        } catch {
          // Storage is full: this value is lost, the rest still opens.
        }
  }
}

function parsed(text: string): unknown {
  try {
    const value = JSON.parse(text);
    return typeof value === 'string' ? text : value;
  } catch {
    return text;
  }
}

/** New names by their old ones; options of a choice under the choice's new key. */
interface Renamed {
  readonly keys?: Readonly<Record<string, string>>;
  readonly options?: Readonly<Record<string, Readonly<Record<string, string>>>>;
  readonly sheets?: Readonly<Record<string, string>>;
}

/** A step that renames fields and results, options of choices, and worksheets. */
export function renaming({ keys = {}, options = {}, sheets = {} }: Renamed): Step {
  const named = (
    values: Loose,
    names: Readonly<Record<string, string>>,
    put = (value: unknown, _name: string): unknown => value,
  ) =>
    Object.fromEntries(
      Object.entries(values ?? {}).map(([old, value]) => {
        const name = renamed(names, old) ?? old;
        return [name, put(value, name)];
      }),
    );
  return ({ bench, kept, used, ...record }) => ({
    ...record,
    bench: named(bench, keys, (entry, key) => changed(entry, 't', options[key])),
    kept: named(kept, keys, (result) => changed(result, 'by', sheets)),
    ...(used && { used: named(used, sheets) }),
  });
}

function changed(value: unknown, part: string, names: Readonly<Record<string, string>> = {}) {
  if (!isRecord(value)) return value;
  const found = renamed(names, String(value[part]));
  return found ? { ...value, [part]: found } : value;
}

/** Only its own names: every object has a `toString`. */
const renamed = (names: Readonly<Record<string, string>>, old: string) =>
  Object.hasOwn(names, old) ? names[old] : undefined;
