/**
 * Prints every English template that the vectors bring up, a line each: the keys that a language has to have.
 * `npm run phrases`, or `npm run phrases -- file.json` to write them as JSON with empty texts, ready to be filled in.
 */
import { writeFileSync } from 'node:fs';
import { phrases } from '../test/support/phrases';

const all = phrases();
const [file] = process.argv.slice(2);
if (file)
  writeFileSync(file, `${JSON.stringify(Object.fromEntries(all.map((key) => [key, ''])), null, 2)}\n`);
else console.log(all.join('\n'));
