import {
  type Entries,
  isEntry,
  isKept,
  isRecord,
  type KeptResults,
  NAME,
  type System,
} from './entries.ts';
import { BENCH_VERSION, STEPS, upToDate } from './migrate-bench.ts';
import { LIMITS } from './records/limits.ts';
import type { Bench } from './store.ts';

/** The fragment of a link that carries a batch: `#batch=<version>.<entries>`. */
const FRAGMENT = /^#?batch=(\d+)\.([\w-]*)$/;
const LONGEST_LINK = 20_000;

export type Carried =
  | {
      readonly ok: true;
      readonly entries: Entries;
      readonly kept: KeptResults;
      readonly units: System;
    }
  | { readonly ok: false; readonly why: string };

/**
 * The fragment that carries these entries to another device; undefined if it would be refused
 * there.
 */
export function toFragment({ entries, kept = {} }: Bench, units: System): string | undefined {
  const bytes = new TextEncoder().encode(JSON.stringify({ units, entries, kept }));
  const base64 = btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''));
  const fragment = `#batch=${BENCH_VERSION}.${base64.replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '')}`;
  const fits =
    fragment.length <= LONGEST_LINK && Object.keys(entries).length <= LIMITS.benchEntries;
  return fits ? fragment : undefined;
}

/** Reads a fragment. Undefined if it carries no batch; a sentence if it carries an invalid one. */
export function fromFragment(fragment: string, steps = STEPS): Carried | undefined {
  if (!/^#?batch=/.test(fragment)) return undefined;
  if (fragment.length > LONGEST_LINK) return refuse('it is longer than a batch can be');
  const match = FRAGMENT.exec(fragment);
  if (!match) return refuse('it was cut short or altered on the way');
  const [, version, body] = match;
  const from = Number(version);
  if (from < 1 || from > steps.length + 1)
    return refuse(`it was made by another version (${version}) of this handbook`);
  try {
    const bytes = Uint8Array.from(atob(body!.replaceAll('-', '+').replaceAll('_', '/')), (char) =>
      char.charCodeAt(0),
    );
    const batch: unknown = JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
    const carried = (batch ?? {}) as Record<string, unknown>;
    const { entries: laid, kept: left = {}, units } = carried;
    if (!isRecord(laid) || !isRecord(left)) return refuse('it holds no batch');
    const { bench: entries, kept } = upToDate({ bench: laid, kept: left }, from, steps);
    const list = Object.entries(entries);
    if (list.length > LIMITS.benchEntries) return refuse('it holds more readings than a batch has');
    const results = Object.entries(kept);
    if (results.length > LIMITS.benchEntries)
      return refuse('it holds more results than a batch has');
    const bad =
      list.find(([key, entry]) => !NAME.test(key) || !isEntry(entry)) ??
      results.find(([key, result]) => !NAME.test(key) || !isKept(result));
    if (bad) return refuse(`its reading '${bad[0].slice(0, 40)}' cannot be read`);
    return {
      ok: true,
      entries: entries as Entries,
      kept: kept as KeptResults,
      units: units === 'us' ? 'us' : 'metric',
    };
  } catch {
    return refuse('it was cut short or altered on the way');
  }
}

const refuse = (reason: string): Carried => ({
  ok: false,
  why: `The batch in this link was not used: ${reason}. Your bench is as it was.`,
});
