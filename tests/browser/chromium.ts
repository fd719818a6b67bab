import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import sparticuz from '@sparticuz/chromium';
import { type Browser, chromium } from 'playwright-core';

const installed = ['google-chrome-stable', 'google-chrome', 'chromium', 'chromium-browser'];

/** A browser on this machine, or nothing. */
function onThisMachine(): string | undefined {
  for (const name of installed) {
    try {
      return execFileSync('which', [name], { encoding: 'utf8', stdio: 'pipe' }).trim();
    } catch {
      // Not installed under this name.
    }
  }
  return undefined;
}

/** The browser to test with: the one asked for, an installed one, or the one npm brought. */
export async function browserPath(): Promise<string> {
  const asked = process.env.CHROME_PATH;
  if (asked && !existsSync(asked)) throw new Error(`CHROME_PATH names no file: ${asked}`);
  return asked ?? onThisMachine() ?? (await sparticuz.executablePath());
}

/** Tests run as root in a container, open only our own pages, and need no graphics card. */
export const FLAGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-dev-shm-usage',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-domain-reliability',
  '--disable-sync',
  '--no-first-run',
  '--no-pings',
  '--font-render-hinting=none',
];

/** Starts a browser to test with. */
export const startBrowser = async (): Promise<Browser> =>
  chromium.launch({ executablePath: await browserPath(), args: FLAGS });
