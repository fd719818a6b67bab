// Uses the standard library only, because it runs before anything is installed.

import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * The executable of the Node installed with a project, if there is one. Its package says where: on
 * Windows the installer puts it at bin/node.exe, says so there, and leaves a file at bin/node that
 * is not a program.
 * @param {string} root the project's folder
 * @returns {string | undefined}
 */
export function ownNode(root) {
  const folder = join(root, 'node_modules/node');
  const about = join(folder, 'package.json');
  if (!existsSync(about)) return undefined;
  const program = join(folder, JSON.parse(readFileSync(about, 'utf8')).bin.node);
  return existsSync(program) ? program : undefined;
}
