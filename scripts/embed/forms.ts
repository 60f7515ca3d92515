/**
 * Forms that an ordinary form library makes of the catalog's schemas: for six calculations the input of a check vector
 * is filled in, submitted and compared; then one field is spoilt, and the sentence about it must stand at that field.
 * Nothing here knows any calculation.
 */
import assert from 'node:assert/strict';
import { mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';
import { onPage } from './browser';
import type { Check, Suite } from './check';
import { fieldId, fillForm, textFields } from './fill-form';
import { KEPT, Project } from './project';

const IDS = ['slope', 'bag-count', 'concrete-order', 'base-tonnage', 'slab-volume', 'footing-volume'];

/** The form library's validator compiles its schemas with `Function`, which a strict policy does not allow. */
const POLICY =
  "default-src 'none'; script-src 'self' 'unsafe-eval'; style-src 'self' 'unsafe-inline'; img-src 'self'; connect-src 'self'";

/** An input of this many letters has groups and lists, and is still filled in within seconds. */
const USUAL_LENGTH = 260;

const VECTORS = fileURLToPath(new URL('../../vectors', import.meta.url));

interface Vector {
  readonly input: Readonly<Record<string, unknown>>;
  readonly expect: { readonly error?: unknown };
}

/** The input of the vector of a usual length. */
function inputFor(id: string): Vector['input'] {
  const offUsual = (input: unknown): number => Math.abs(JSON.stringify(input).length - USUAL_LENGTH);
  const inputs = readdirSync(join(VECTORS, id))
    .flatMap((file) => JSON.parse(readFileSync(join(VECTORS, id, file), 'utf8')) as Vector | Vector[])
    .filter(({ expect }) => expect.error === undefined)
    .map(({ input }) => input);
  const [first] = inputs.sort((a, b) => offUsual(a) - offUsual(b));
  if (!first) throw new Error(`no vector of ${id}`);
  return first;
}

interface Submitted {
  readonly filled: unknown;
  readonly ok: boolean;
  readonly issues: readonly { readonly path: string; readonly sentence: string }[];
}

async function submit(page: Page): Promise<Submitted | undefined> {
  await page.evaluate(() => Object.assign(globalThis, { submitted: undefined }));
  await page.locator('button[type=submit]').click();
  const text = await page.evaluate(() =>
    JSON.stringify((globalThis as unknown as { submitted?: Submitted }).submitted),
  );
  return text === undefined ? undefined : (JSON.parse(text) as Submitted);
}

const FOLDER = join(KEPT, 'screenshots');

async function fillAndSubmit(page: Page, id: string): Promise<void> {
  await page.waitForSelector('form');
  const input = inputFor(id);
  const schema = await page.evaluate(() => (globalThis as unknown as { schema: object }).schema);
  await fillForm(page, schema, input);
  await page.screenshot({ path: join(FOLDER, `${id}-filled.png`), fullPage: true });
  const submitted = await submit(page);
  if (!submitted) throw new Error(`not submitted: ${await page.locator('.error-detail').allTextContents()}`);
  for (const [key, value] of Object.entries(input)) {
    assert.deepEqual((submitted.filled as typeof input)[key], value, `${key} is not what was filled in`);
  }
  assert.deepEqual(submitted.issues, []);
  await page.waitForFunction(() => document.querySelector('#sheet')?.textContent !== '');
  await page.screenshot({ path: join(FOLDER, `${id}-sheet.png`), fullPage: true });
}

/** Spoil one field that takes text after the other, until one is refused by what it says. */
async function spoilOne(page: Page, id: string): Promise<void> {
  for (const path of textFields(inputFor(id))) {
    const field = page.locator(`#${fieldId(path)}`);
    if ((await field.count()) !== 1 || (await field.getAttribute('type')) !== 'text') continue;
    const before = await field.inputValue();
    await field.fill('4 pigs');
    await submit(page);
    const said = page.locator(`#${fieldId(path)}__error`);
    await said.waitFor({ timeout: 1000 }).catch(() => undefined);
    if ((await said.count()) > 0) {
      await page.screenshot({ path: join(FOLDER, `${id}-error.png`), fullPage: true });
      return;
    }
    await field.fill(before);
  }
  throw new Error('no field says what is wrong with it');
}

export const forms: Suite = {
  name: 'forms',
  async checks(quick) {
    const project = new Project('form', {
      '@rjsf/core': '6.11.1',
      '@rjsf/utils': '6.11.1',
      '@rjsf/validator-ajv8': '6.11.1',
      ajv: '^8.20.0',
      react: '^19.0.0',
      'react-dom': '^19.0.0',
      vite: '8.3.8',
    });
    mkdirSync(FOLDER, { recursive: true });
    project.node('node_modules/vite/bin/vite.js', 'build', '--logLevel', 'error');
    const formOf = (id: string): Check => ({
      name: `a form for ${id}: filled in, submitted, and an error at its field`,
      run: () =>
        onPage(project.path('dist'), { page: `index.html?id=${id}`, policy: POLICY }, async (page) => {
          page.setDefaultTimeout(5000);
          await fillAndSubmit(page, id);
          await spoilOne(page, id);
        }),
    });
    console.log(`screenshots are kept in ${FOLDER}`);
    return (quick ? IDS.slice(-2) : IDS).map(formOf);
  },
};
