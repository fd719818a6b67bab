// Puts a finished build in place of the last one.

import { existsSync, renameSync, rmSync } from 'node:fs';

/**
 * Both moves are renames within one disk, so no reader meets half a site; if the second fails the
 * last good build is put back.
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
