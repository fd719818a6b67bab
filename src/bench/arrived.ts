import { notify } from './notices.ts';

/** Says that a script of this page has not arrived: a browser asks for one that failed only on a page loaded anew. */
export function tellLost(id: string, so: string, again = () => location.reload()): void {
  notify(id, `Part of this page has not arrived: ${so}.`, [
    { label: 'Load the page again', run: again },
  ]);
}

/** A script that is fetched once it is asked for. Where it does not arrive that is said, and nothing goes on. */
export const arrived = <T>(coming: Promise<T>): Promise<T> =>
  coming.catch((error: unknown) => {
    tellLost('lost', 'what you asked for is not done');
    throw error;
  });
