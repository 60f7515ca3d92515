/**
 * The web: an app that is bundled, and a page without a bundler, both under a policy that allows no script but files
 * of the own server, no `eval` and no style in attributes; a worker; what apps keep results in.
 */
import { copyFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { onPage } from './browser';
import type { Check, Suite } from './check';
import { Project } from './project';

const ONE_FILE = 'flatwork-reckoner.js';

const STRICT =
  "default-src 'none'; script-src 'self'; worker-src 'self'; style-src 'self'; img-src 'self'; connect-src 'self'; base-uri 'none'; form-action 'none'";

/** What the page has tried, by name: `ok`, or what went wrong. */
const outcomes = async (page: Page): Promise<Readonly<Record<string, string>>> => {
  await page.waitForFunction(() => 'outcomes' in globalThis, undefined, { timeout: 30_000 });
  return page.evaluate(() => (globalThis as unknown as { outcomes: Record<string, string> }).outcomes);
};

const PAGES: readonly (readonly [what: string, page: string])[] = [
  ['an app bundled by Vite', 'index.html'],
  ['a page with the one file and no bundler', 'one-file.html'],
];

export const web: Suite = {
  name: 'the web',
  async checks() {
    const project = new Project('web', {
      react: '^19.0.0',
      'react-dom': '^19.0.0',
      vite: '8.3.8',
      vue: '^3.5.0',
    });
    const folder = project.path('dist');
    const opened = (what: string, page: string): Check => ({
      name: `${what} in Chromium under a strict content policy`,
      async run() {
        const found = await onPage(folder, { page, policy: STRICT }, outcomes);
        const tried = Object.entries(found);
        const wrong = tried.filter(([, said]) => said !== 'ok');
        if (wrong.length > 0 || tried.length === 0)
          throw new Error(wrong.map((pair) => pair.join(': ')).join('\n'));
        console.log(`                ${Object.keys(found).join(', ')}`);
      },
    });
    return [
      {
        name: 'Vite builds an app and its worker',
        run() {
          project.node('node_modules/vite/bin/vite.js', 'build', '--logLevel', 'warn');
          copyFileSync(
            project.path(`node_modules/flatwork-reckoner/dist/browser/${ONE_FILE}`),
            join(folder, ONE_FILE),
          );
          for (const file of ['one-file.js', 'trials.js'])
            copyFileSync(project.path(file), join(folder, file));
        },
      },
      ...PAGES.map(([what, page]) => opened(what, page)),
    ];
  },
};
