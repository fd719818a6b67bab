import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { satteri } from '@astrojs/markdown-satteri';
import mdx from '@astrojs/mdx';
import sitemap from '@astrojs/sitemap';
import { defineConfig } from 'astro/config';
import { lightScripts } from './src/components/live/light-scripts.mjs';
import { withoutBuilt } from './src/components/live/without-built.mjs';
import { baseLinks } from './src/components/markdown/base-links.mjs';
import { mathML } from './src/components/markdown/math.mjs';
import { turningPairs } from './src/components/markdown/pairs.mjs';
import { scrollingTables } from './src/components/markdown/tables.mjs';

// It stands in the page itself, since the page waits for it; the policy lets in this very text alone.
const boot = readFileSync(new URL('./src/components/site/boot.js', import.meta.url), 'utf8').trim();
const bootHash = /** @type {const} */ (
  `sha256-${createHash('sha256').update(boot).digest('base64')}`
);

const base = process.env.BASE_PATH ?? '/';

export default defineConfig({
  site: process.env.SITE_URL ?? 'http://localhost:4321',
  base,
  trailingSlash: 'always',
  // Astro's own way of compressing eats the space where a line ends between two inline elements.
  compressHTML: true,
  outDir: process.env.OUT_DIR ?? './dist',
  markdown: {
    syntaxHighlight: false,
    processor: satteri({
      features: {
        // One dollar is money. `directive` stays off: it eats 1:2:3.
        math: { singleDollarTextMath: false },
        headingAttributes: true,
        subscript: true,
        superscript: true,
        definitionList: true,
        smartPunctuation: { quotes: false },
      },
      hastPlugins: [mathML(), scrollingTables(), turningPairs(), baseLinks(base)],
    }),
  },
  integrations: [mdx(), sitemap()],
  vite: {
    plugins: [lightScripts(), withoutBuilt()],
    oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  },
  security: {
    csp: {
      directives: [
        "default-src 'self'",
        "img-src 'self' data:",
        "font-src 'self'",
        "worker-src 'self' blob:",
        "manifest-src 'self'",
        "base-uri 'self'",
        "form-action 'none'",
        "object-src 'none'",
      ],
      scriptDirective: { hashes: [bootHash], resources: ["'self'", "'wasm-unsafe-eval'"] },
      styleDirective: {
        resources: ["'self'", { resource: "'unsafe-inline'", kind: 'attribute' }],
      },
    },
  },
  devToolbar: { enabled: false },
});
