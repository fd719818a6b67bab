// Runs the tools the project installed, with the project's own Node.

import { spawn } from 'node:child_process';
import { readFileSync, realpathSync } from 'node:fs';
import { basename, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { ownNode } from './own-node.mjs';

/** The project's folder. */
export const root = fileURLToPath(new URL('..', import.meta.url));

const node = ownNode(root) ?? process.execPath;

/**
 * The script behind a tool's name in node_modules/.bin.
 * @param {string} packageName
 * @param {string} [tool] when the package has more than one
 */
function entry(packageName, tool = basename(packageName)) {
  const folder = join(root, 'node_modules', packageName);
  const { bin } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const file = typeof bin === 'string' ? bin : bin?.[tool];
  if (!file) throw new Error(`${packageName} has no command ${tool}`);
  return join(folder, file);
}

/**
 * Runs a tool to its end. With `quiet` its output is captured and returned; otherwise it is
 * printed.
 * @param {string} packageName
 * @param {readonly string[]} args
 * @param {{ tool?: string, quiet?: boolean, env?: Record<string, string> }} [options]
 * @returns {Promise<{ code: number, output: string }>}
 */
export function run(packageName, args, { tool, quiet = false, env = {} } = {}) {
  return new Promise((resolve, reject) => {
    const child = spawn(node, [entry(packageName, tool), ...args], {
      cwd: root,
      env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1', ...env },
      stdio: quiet ? ['ignore', 'pipe', 'pipe'] : ['ignore', 'inherit', 'inherit'],
    });
    let output = '';
    const keep = (/** @type {Buffer} */ chunk) => {
      output += chunk;
    };
    child.stdout?.on('data', keep);
    child.stderr?.on('data', keep);
    child.on('error', reject);
    child.on('close', (code) => resolve({ code: code ?? 1, output }));
  });
}

/**
 * Whether a script was started directly rather than imported by another.
 * @param {ImportMeta} meta
 */
export const isMain = (meta) =>
  process.argv[1] !== undefined && realpathSync(process.argv[1]) === fileURLToPath(meta.url);
