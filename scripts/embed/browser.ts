/** A browser, and a server of a folder with a strict content security policy. */
import { existsSync, readFileSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';
import { type Browser, chromium, type Page } from 'playwright-core';

const CHROMIUM = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'].find(
  existsSync,
);

const KINDS: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
};

interface Served {
  readonly url: string;
  close(): void;
}

/** Serve a folder with this policy. */
async function serve(folder: string, policy: string): Promise<Served> {
  const server = createServer(({ url = '/' }, response) => {
    const file = join(folder, normalize(new URL(url, 'http://x').pathname));
    if (!existsSync(file) || !statSync(file).isFile()) {
      response.writeHead(404).end();
      return;
    }
    const kind = KINDS[extname(file)] ?? 'application/octet-stream';
    response
      .writeHead(200, { 'content-type': kind, 'content-security-policy': policy })
      .end(readFileSync(file));
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  const { port } = server.address() as AddressInfo;
  return { url: `http://127.0.0.1:${port}`, close: () => server.close() };
}

/** Open a page of a folder and do something with it; what the page complains of is thrown. */
export async function onPage<T>(
  folder: string,
  { page: name, policy }: { readonly page: string; readonly policy: string },
  use: (page: Page) => Promise<T>,
): Promise<T> {
  const served = await serve(folder, policy);
  let browser: Browser | undefined;
  try {
    browser = await chromium.launch({ executablePath: CHROMIUM ?? '', args: ['--no-sandbox'] });
    const page = await browser.newPage({ viewport: { width: 900, height: 1000 } });
    const complaints: string[] = [];
    page.on('pageerror', (error) => complaints.push(error.message));
    page.on('console', (said) => said.type() === 'error' && complaints.push(said.text()));
    await page.goto(`${served.url}/${name}`);
    const made = await use(page);
    if (complaints.length > 0) throw new Error(complaints.join('\n'));
    return made;
  } finally {
    await browser?.close();
    served.close();
  }
}
