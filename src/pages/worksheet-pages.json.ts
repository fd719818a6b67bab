import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { inOrder, readChapters } from '../components/chapters.ts';

/** The chapter that repeats worksheets of the others, in the order of one batch. */
const REPEATS = 'first-batch/';

/**
 * The page that explains each worksheet, by its id: for a page that waits for another worksheet's
 * answer (`islands/parts/Way.tsx`).
 */
export const GET = async () => {
  const found = inOrder(await readChapters()).flatMap(({ entry, path }) => {
    const text = readFileSync(join(process.cwd(), entry.filePath!), 'utf8');
    return [...text.matchAll(/<Worksheet\s[^>]*?\bid="([^"]+)"/g)].map(([, id]) => [id!, path]);
  });
  const explained = found.filter(([, path]) => path !== REPEATS);
  return Response.json({ ...Object.fromEntries(found), ...Object.fromEntries(explained) });
};
