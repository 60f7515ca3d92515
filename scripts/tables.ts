/** Tables of the docs that are made from the code: printed, or written into their page behind a heading. */
import { readFileSync, writeFileSync } from 'node:fs';

/**
 * @param page - the page in docs/
 * @param start - the text behind which the tables stand, up to the end of the page
 */
export function printOrWrite(page: string, start: string, tables: string): void {
  if (!process.argv.includes('--write')) {
    console.log(tables);
    return;
  }
  const file = new URL(`../docs/${page}`, import.meta.url);
  const [head] = readFileSync(file, 'utf8').split(start);
  writeFileSync(file, `${head}${start}\n\n${tables}\n`);
}
