/** The browser that plans are looked at in. */
import { existsSync, readdirSync } from 'node:fs';
import { homedir } from 'node:os';
import { join } from 'node:path';
import { type Browser, chromium } from 'playwright-core';

const INSTALLED = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];

/** What Playwright has installed for itself. */
function fetched(): string[] {
  const cache = process.env['PLAYWRIGHT_BROWSERS_PATH'] ?? join(homedir(), '.cache', 'ms-playwright');
  if (!existsSync(cache)) return [];
  return readdirSync(cache)
    .filter((name) => name.startsWith('chromium-'))
    .flatMap((name) =>
      ['chrome-linux', 'chrome-linux64'].map((folder) => join(cache, name, folder, 'chrome')),
    );
}

const found = [...INSTALLED, ...fetched()].find((path) => existsSync(path));

/** True where there is no browser; in CI that is a failure, not a reason to skip. */
export const NO_BROWSER = !found && !process.env['CI'];

if (NO_BROWSER)
  console.warn('No Chromium on this machine: plans are not looked at in a browser. Install chromium.');

/** A browser may take this long to start on a busy machine, in milliseconds. */
export const START = 60_000;

export const startBrowser = (): Promise<Browser> =>
  chromium.launch({
    executablePath: found ?? '',
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  });
