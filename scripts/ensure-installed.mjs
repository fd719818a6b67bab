// Installs what the project needs if it is missing or differs from the lock file. npm runs this
// before each script of the project, on whatever Node the machine has. It must work with nothing
// installed, so it uses the standard library only.

import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { ownNode } from './own-node.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));

/** @typedef {{ version?: string, integrity?: string, optional?: boolean, devOptional?: boolean }} Locked */

/**
 * The packages of a lock file, without the project's own entry.
 * @param {string} file
 * @returns {Map<string, Locked>}
 */
function lockedPackages(file) {
  const { packages = {} } = JSON.parse(readFileSync(file, 'utf8'));
  return new Map(Object.entries(packages).filter(([path]) => path !== ''));
}

/**
 * Why an install is needed, or nothing. npm writes what it installed to
 * node_modules/.package-lock.json as its last act. Comparing the two therefore also finds an
 * install that was cut short, and leaves alone a package somebody is just adding with `npm
 * install`.
 * @returns {string | undefined}
 */
function whyInstall() {
  const done = join(root, 'node_modules/.package-lock.json');
  if (!existsSync(done)) return 'the packages are not installed yet';
  if (!ownNode(root)) return "the project's Node is missing";
  const wanted = lockedPackages(join(root, 'package-lock.json'));
  const present = lockedPackages(done);
  for (const [path, lock] of wanted) {
    const got = present.get(path);
    // Optional packages are for other systems; npm leaves them out.
    if (!got && (lock.optional || lock.devOptional)) continue;
    if (!got) return `${path} is missing`;
    if (got.version !== lock.version || got.integrity !== lock.integrity) {
      return `${path} is not the version in package-lock.json`;
    }
  }
  for (const path of present.keys()) if (!wanted.has(path)) return `${path} is no longer wanted`;
  return undefined;
}

function install() {
  const why = whyInstall();
  if (!why) return;
  console.log(`Installing the packages (${why}). This happens once and takes a minute or two.`);
  const npm = process.env.npm_execpath;
  const [command, first] = npm ? [process.execPath, [npm]] : ['npm', []];
  const done = spawnSync(command, [...first, 'ci', '--loglevel=error', '--no-progress'], {
    cwd: root,
    encoding: 'utf8',
    shell: !npm && process.platform === 'win32',
    // npm passes its settings down in npm_* variables; a nested npm must not take them for its own.
    env: Object.fromEntries(
      Object.entries(process.env).filter(
        ([name]) => !/^npm_(lifecycle|package|command)/i.test(name),
      ),
    ),
  });
  const missing = done.status === 0 ? whyInstall() : undefined;
  if (done.status === 0 && !missing) return;

  const output = `${done.error?.message ?? ''}${done.stderr ?? ''}`.trim();
  const offline = /ENOTFOUND|EAI_AGAIN|ECONNREFUSED|ETIMEDOUT|ENETUNREACH/.test(output);
  if (output && !offline) console.error(`\n${output}\n`);
  console.error(
    missing
      ? `The packages were installed, yet ${missing}. Does your npm forbid install scripts (ignore-scripts)? Allow them and run the command again.`
      : offline
        ? 'The packages could not be fetched: the npm registry cannot be reached. Connect to the network and run the command again; after that it works offline.'
        : 'The packages could not be installed; npm says why above. Put that right and run the command again.',
  );
  process.exit(1);
}

install();
