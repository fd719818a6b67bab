import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { TestProject } from 'vitest/node';
import { serve } from '../../scripts/serve.mjs';
import { filesOf, pathOf } from '../../scripts/site/pages.mjs';
import { tested } from '../../scripts/tested.mjs';

declare module 'vitest' {
  interface ProvidedContext {
    /** The built site: its folder, its address with the base path, and the path of every page. */
    site: { folder: string; base: string; url: string; pages: string[] };
  }
}

/** Serves the tested build under its base path, for all browser tests. */
export default async function setup(project: TestProject) {
  const folder = resolve(process.env.TESTED_SITE ?? tested.into);
  const base = process.env.TESTED_BASE ?? tested.base;
  if (!existsSync(join(folder, 'index.html'))) {
    throw new Error(`No built site in ${folder}. Run "npm run browser" or "npm test".`);
  }
  const pages = filesOf(folder)
    .filter((file) => file.endsWith('.html') && !file.startsWith('pagefind/'))
    .map(pathOf);
  const served = await serve({ folder, base });
  project.provide('site', { folder, base, url: served.url, pages });
  return served.close;
}
