// Replaces the last build by a finished one.

import { existsSync, renameSync, rmSync } from 'node:fs';

/**
 * Both moves are renames on one disk, so no reader gets half a site. If the second fails, the last
 * good build is restored.
 * @param {string} next
 * @param {string} place
 */
export function swap(next, place) {
  const last = `${next}-replaced`;
  rmSync(last, { recursive: true, force: true });
  if (existsSync(place)) renameSync(place, last);
  try {
    renameSync(next, place);
  } catch (error) {
    if (existsSync(last)) renameSync(last, place);
    throw error;
  }
  rmSync(last, { recursive: true, force: true });
}
