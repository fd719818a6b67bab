// Builds the site and serves it on this machine.
//
//   npm start                          http://localhost:4321/, or the next free port
//   HOST=0.0.0.0 npm start             also for other devices on the network
//   PORT=8080 BASE_PATH=/slurry/ npm start

import { networkInterfaces } from 'node:os';
import { buildSite, tidyBase } from './build.mjs';
import { serveOnFreePort } from './serve.mjs';

// An empty HOST counts as not set.
const host = process.env.HOST || '127.0.0.1';
const port = Number(process.env.PORT || 4321);

try {
  const base = tidyBase(process.env.BASE_PATH ?? '/');
  if (!Number.isInteger(port) || port < 0 || port > 65_535) {
    throw new Error(`PORT must be a whole number from 0 to 65535, not "${process.env.PORT}".`);
  }
  const folder = await buildSite({ base });
  const served = await serveOnFreePort({ folder, base, port, host });
  console.log(`\nThe handbook is at  ${served.url}`);
  if (host === '0.0.0.0' || host === '::') {
    for (const address of Object.values(networkInterfaces()).flat()) {
      if (address && !address.internal && address.family === 'IPv4') {
        console.log(`From other devices  http://${address.address}:${served.port}${base}`);
      }
    }
  }
  console.log('Press Ctrl+C to stop.');

  const stop = async () => {
    await served.close();
    process.exit(0);
  };
  process.once('SIGINT', stop);
  process.once('SIGTERM', stop);
} catch (error) {
  console.error(`\n${/** @type {Error} */ (error).message}\n`);
  console.error('If there was a good build, it is still in dist.');
  process.exitCode = 1;
}
