import { once } from 'node:events';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Served, serve, serveOnFreePort } from '../../scripts/serve.mjs';

const folder = mkdtempSync(join(tmpdir(), 'served-'));
let site: Served;
beforeAll(async () => {
  writeFileSync(join(folder, 'index.html'), 'Home');
  site = await serve({ folder, base: '/slurry/' });
});
afterAll(async () => {
  await site.close();
  rmSync(folder, { recursive: true });
});

/** The status a raw request line gets: a client would not send these. */
async function statusOf(target: string): Promise<number> {
  const socket = connect(site.port, '127.0.0.1');
  socket.write(`GET ${target} HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n`);
  let text = '';
  socket.on('data', (chunk) => {
    text += chunk;
  });
  await once(socket, 'close');
  return Number(text.split(' ')[1]);
}

test.each([
  ['//', 400],
  ['http://:99999/', 400],
  ['//[/slurry/', 400],
  ['/slurry/%', 404],
  ['/slurry/%00', 404],
  ['/slurry/%2e%2e/%2e%2e/etc/passwd', 404],
])('asked for %s, the server answers and goes on', async (target, status) => {
  expect(await statusOf(target)).toBe(status);
  expect(await statusOf('/slurry/')).toBe(200);
});

test('past the last port there is none to try', async () => {
  const taken = await serve({ folder, port: 65_535 }).catch(() => undefined);
  await expect(serveOnFreePort({ folder, port: 65_535 })).rejects.toThrow(
    'No port is free from 65535 to 65535.',
  );
  await taken?.close();
});
