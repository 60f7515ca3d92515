/**
 * Prints the limits of every calculation, or writes them into docs/limits.md.
 *
 *     npm run limits -- [--write]
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { limitTables, TABLES_START } from '../test/support/limits';

const page = new URL('../docs/limits.md', import.meta.url);

if (process.argv.includes('--write')) {
  const [head] = readFileSync(page, 'utf8').split(TABLES_START);
  writeFileSync(page, `${head}${TABLES_START}\n\n${limitTables()}\n`);
} else {
  console.log(limitTables());
}
