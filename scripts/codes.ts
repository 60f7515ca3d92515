/**
 * Prints the codes of cautions and issues with what they mean, or writes them into docs/codes.md.
 *
 *     npm run codes -- [--write]
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { CODES_START, codeTables } from '../test/support/codes';

const page = new URL('../docs/codes.md', import.meta.url);

if (process.argv.includes('--write')) {
  const [head] = readFileSync(page, 'utf8').split(CODES_START);
  writeFileSync(page, `${head}${CODES_START}\n${codeTables()}\n`);
} else {
  console.log(codeTables());
}
