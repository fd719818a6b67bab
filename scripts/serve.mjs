// Serves a built site as a plain static host does, for `npm start` and for the browser tests.

import { existsSync, readFileSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { join, normalize, sep } from 'node:path';
import compression from 'compression';
import sirv from 'sirv';

/** Types missing from sirv's own table. */
const types = [
  [/\.webmanifest$/, 'application/manifest+json'],
  [/\.m?js$/, 'text/javascript;charset=utf-8'],
  [/\.css$/, 'text/css;charset=utf-8'],
  [/\.(pf_\w+|pagefind)$/, 'application/octet-stream'],
];

/**
 * @typedef {object} Served
 * @property {string} url            where the site is, with the base path and a slash at the end
 * @property {number} port
 * @property {() => Promise<void>} close  stops serving and drops open connections
 */

/**
 * Serves a folder. Files are read again for every request, so a build that replaces the folder is
 * served at once.
 * @param {{ folder: string, base?: string, port?: number, host?: string }} options
 *   base: path with slashes at both ends; port 0: any free one; host: loopback if not given
 * @returns {Promise<Served>}
 */
export async function serve({ folder, base = '/', port = 0, host = '127.0.0.1' }) {
  const files = sirv(folder, {
    dev: true,
    etag: true,
    setHeaders(response, path) {
      const type = types.find(([pattern]) => /** @type {RegExp} */ (pattern).test(path))?.[1];
      if (type) response.setHeader('Content-Type', /** @type {string} */ (type));
      response.setHeader('X-Content-Type-Options', 'nosniff');
      // Files with a hash in their name never change; everything else is requested again each time.
      const hashed = path.startsWith('/_astro/');
      response.setHeader(
        'Cache-Control',
        hashed ? 'public,max-age=31536000,immutable' : 'no-cache',
      );
    },
  });

  // Compressed, as by any static host, and as the budgets are counted.
  const compress = compression();

  const server = createServer((request, response) => {
    // A raw socket may ask for something that is not a URL; that must not stop the server.
    const asked = URL.parse(request.url ?? '/', 'http://local.invalid');
    if (!asked) {
      response.writeHead(400);
      return response.end();
    }
    const { pathname, search } = asked;
    const redirect = (/** @type {string} */ to) => {
      response.writeHead(308, { Location: to + search });
      response.end();
    };
    if (request.method !== 'GET' && request.method !== 'HEAD') {
      response.writeHead(405, { Allow: 'GET, HEAD' });
      return response.end();
    }
    if (`${pathname}/` === base) return redirect(base);
    if (!pathname.startsWith(base)) {
      // Outside the base path there is no site, only a hint where it is.
      response.writeHead(404, { 'Content-Type': 'text/plain;charset=utf-8' });
      return response.end(`Nothing here. The site is at ${base}\n`);
    }
    const inside = `/${pathname.slice(base.length)}`;
    if (isFolder(folder, inside)) return redirect(`${pathname}/`);
    request.url = inside + search;
    compress(request, response, () => files(request, response, () => notFound(folder, response)));
  });

  await new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, host, () => resolve(undefined));
  });
  const address = /** @type {import('node:net').AddressInfo} */ (server.address());
  const shown = host === '0.0.0.0' || host === '::' ? 'localhost' : host;
  return {
    url: `http://${shown.includes(':') ? `[${shown}]` : shown}:${address.port}${base}`,
    port: address.port,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

/**
 * Whether a path without a trailing slash names a folder; relative links would then break.
 * @param {string} folder
 * @param {string} path
 */
function isFolder(folder, path) {
  if (path.endsWith('/')) return false;
  let plain;
  try {
    plain = decodeURIComponent(path);
  } catch {
    return false;
  }
  const file = normalize(join(folder, plain));
  return (
    file.startsWith(normalize(folder) + sep) && existsSync(file) && statSync(file).isDirectory()
  );
}

/**
 * @param {string} folder
 * @param {import('node:http').ServerResponse} response
 */
function notFound(folder, response) {
  const page = join(folder, '404.html');
  response.writeHead(404, {
    'Content-Type': 'text/html;charset=utf-8',
    'Cache-Control': 'no-cache',
  });
  response.end(existsSync(page) ? readFileSync(page) : 'Nothing here.');
}

/**
 * Serves on the first free port from a given one upwards.
 * @param {{ folder: string, base?: string, port: number, host?: string }} options
 * @returns {Promise<Served>}
 */
export async function serveOnFreePort({ port, ...options }) {
  const last = Math.min(port + 99, 65_535);
  for (let tried = port; tried <= last; tried += 1) {
    try {
      return await serve({ ...options, port: tried });
    } catch (error) {
      if (/** @type {NodeJS.ErrnoException} */ (error).code !== 'EADDRINUSE') throw error;
    }
  }
  throw new Error(`No port is free from ${port} to ${last}.`);
}
