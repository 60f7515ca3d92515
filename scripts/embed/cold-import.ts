/** How long the root takes to load, against decimal.js and zod, which are in it: processor time, the least of many. */
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Suite } from './check';
import { Project } from './project';

/**
 * Node reads the root from one file and a few beside it: it stands at 1.1 to 1.2 with 52 calculations, the whole job and
 * the second opinion. A file for each calculation stood at 1.9.
 */
const MOST = 1.4;
const ROUNDS = 11;
const OURS = fileURLToPath(new URL('../../node_modules', import.meta.url));

const TIMED = (statements: string): string =>
  `const from = process.cpuUsage(); ${statements}; const { user, system } = process.cpuUsage(from); console.log((user + system) / 1000)`;

const importOf = (path: string): string => `await import(${JSON.stringify(path)})`;

export const coldImport: Suite = {
  name: 'cold import',
  async checks() {
    const project = new Project('node', {}, 'cold');
    const milliseconds = (code: string): number =>
      Number(project.node('--input-type=module', '-e', TIMED(code)));
    const alone = [join(OURS, 'decimal.js/decimal.mjs'), join(OURS, 'zod/index.js')].map(importOf).join(';');
    const ours = importOf('flatwork-reckoner');
    return [
      {
        name: `cold import of the root at most ${MOST} times decimal.js and zod alone`,
        run() {
          const [least, leastAlone] = [[], []] as [number[], number[]];
          for (let i = 0; i < ROUNDS; i++) {
            leastAlone.push(milliseconds(alone));
            least.push(milliseconds(ours));
          }
          const [a, b] = [Math.min(...least), Math.min(...leastAlone)];
          const ratio = a / b;
          const said = `${a.toFixed(0)} ms, ${b.toFixed(0)} ms alone: ${ratio.toFixed(2)} times`;
          if (ratio > MOST) throw new Error(said);
          console.log(`                ${said}`);
        },
      },
    ];
  },
};
