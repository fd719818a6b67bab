// Runs Astro's build, and treats its warnings as errors.

import { run } from '../tools.mjs';

/**
 * Warnings that are no fault of ours, each with the reason.
 * @type {readonly RegExp[]}
 */
const expected = [
  // Style attributes are allowed on purpose (plots are drawn with them); Astro notes it.
  /style-src-attr/,
  // Astro's own directive in a chapter's module, which the bundler does not know.
  /\[MODULE_LEVEL_DIRECTIVE\].*"use astro:/,
];

// Colour codes begin with the escape character, which a pattern may not hold literally.
const colour = new RegExp(`${String.fromCharCode(27)}\\[[0-9;]*m`, 'g');
/** Lines of a stack trace outside the project's own files. */
const inOthersCode = /^\s+at .*(node:|node_modules\/|\/\.prerender\/|<anonymous>)/;
const warning = /\[WARN\]|\[ERROR\]/;

/**
 * Builds the pages into a folder. Throws with Astro's own words when it fails or warns: it only
 * warns about a reference to an entry that does not exist, which would reach readers as a gap.
 * @param {string} outDir
 * @param {Record<string, string>} env
 */
export async function renderPages(outDir, env) {
  const { code, output } = await run('astro', ['build', '--outDir', outDir], { quiet: true, env });
  const said = output
    .replace(colour, '')
    .split('\n')
    .filter((line) => !inOthersCode.test(line))
    .join('\n');
  if (code !== 0) throw new Error(`Astro could not build the pages.\n${faultsIn(said)}`);
  const warnings = said
    .split('\n')
    .filter((line) => warning.test(line) && !expected.some((known) => known.test(line)));
  if (warnings.length > 0) {
    throw new Error(`Astro warned, which counts as an error here.\n${warnings.join('\n')}`);
  }
}

/**
 * The end of Astro's output, from its first complaint if there is one.
 * @param {string} said
 */
function faultsIn(said) {
  const lines = said.trimEnd().split('\n');
  const first = lines.findIndex((line) => /error|✗|✖|Caused by/i.test(line));
  return lines.slice(Math.max(first - 1, lines.length - 60, 0)).join('\n');
}
