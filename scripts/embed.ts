/**
 * Packs the library and builds apps on it, each in a fresh project: `npm run embed`, `-- --quick` for what CI has time
 * for, `-- node types` for some of it. Screenshots stay in the folder that is named at the end.
 */
import { runSuite, type Suite, type Tally } from './embed/check';
import { coldImport } from './embed/cold-import';
import { forms } from './embed/forms';
import { native } from './embed/native';
import { nodes } from './embed/nodes';
import { types } from './embed/types';
import { web } from './embed/web';

const PARTS: Readonly<Record<string, readonly Suite[]>> = {
  node: nodes,
  cold: [coldImport],
  types: [types],
  native: [native],
  web: [web],
  form: [forms],
};

const args = process.argv.slice(2);
const quick = args.includes('--quick');
const wanted = args.filter((arg) => !arg.startsWith('--'));
const unknown = wanted.filter((name) => !Object.hasOwn(PARTS, name));
if (unknown.length > 0)
  throw new Error(`no such part: ${unknown.join(', ')}; there are ${Object.keys(PARTS).join(', ')}`);

const start = performance.now();
const tally: Tally = { passed: 0, failed: 0, notTried: 0 };
for (const [name, suites] of Object.entries(PARTS)) {
  if (wanted.length > 0 && !wanted.includes(name)) continue;
  for (const suite of suites) {
    await runSuite(suite, quick, tally);
    // Whoever sets a time must not lose a failure to it.
    if (quick && tally.failed > 0) process.exit(1);
  }
}
const took = ((performance.now() - start) / 1000).toFixed(0);
const { passed, failed, notTried } = tally;
console.log(
  `\n${passed} passed, ${failed} failed${notTried > 0 ? `, ${notTried} not tried` : ''}, in ${took} s`,
);
process.exitCode = failed > 0 ? 1 : 0;
