import { LIMITS } from './limits.ts';

type Loose = Readonly<Record<string, unknown>>;

/**
 * A record truncated to its limits, and, untruncated, the parts that exceeded them: those that grow
 * while it is written.
 */
export function withinLimits(record: Loose): { readonly within: Loose; readonly over: Loose } {
  const over: Record<string, unknown> = {};
  const within: Record<string, unknown> = { ...record };
  for (const part of ['notes', 'photos', 'corrections'] as const) {
    const held = record[part];
    if (!(typeof held === 'string' || Array.isArray(held)) || held.length <= LIMITS[part]) continue;
    over[part] = held;
    within[part] = held.slice(0, LIMITS[part]);
  }
  return { within, over };
}
