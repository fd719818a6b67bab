import { notify } from './notices.ts';

/**
 * Says that a script of this page failed to load. A browser retries a failed module only on a fresh
 * load of the page.
 */
export function tellLost(id: string, so: string, again = () => location.reload()): void {
  notify(id, `Part of this page has not arrived: ${so}.`, [
    { label: 'Load the page again', run: again },
  ]);
}

/** A script fetched on demand. If it fails to load, a notice says so and the error is thrown on. */
export const arrived = <T>(coming: Promise<T>): Promise<T> =>
  coming.catch((error: unknown) => {
    tellLost('lost', 'what you asked for is not done');
    throw error;
  });
