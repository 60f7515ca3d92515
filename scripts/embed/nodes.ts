/** Node: as ES modules, as CommonJS, and both in one process, in every version that is served. */
import type { Suite } from './check';
import { Project } from './project';

const VERSIONS = ['20', '22', '24'];

const WAYS: readonly (readonly [what: string, ...args: string[]])[] = [
  ['ES modules', 'modules.mjs'],
  ['CommonJS', 'commonjs.cjs'],
  ['one copy for both', 'one-copy.mjs'],
  ['two copies at once, each taking what the other made', '--conditions=module', 'both.mjs'],
  ['structuredClone, a message port, JSON', 'held.mjs'],
  ['a file for a form, loaded on demand', 'on-demand.mjs'],
];

/** CommonJS must not need Node's own help in loading ES modules, which Node 20 has not. */
const flags = (version: string): string[] => (version === '20' ? [] : ['--no-experimental-require-module']);

export const nodes: readonly Suite[] = VERSIONS.map((version) => ({
  name: `Node ${version}`,
  async checks() {
    const project = new Project('node', { node: version }, `node-${version}`);
    const binary = project.path('node_modules/node/bin/node');
    const exact = project.run(binary, '--version').trim();
    if (!exact.startsWith(`v${version}.`)) throw new Error(`${binary} is ${exact}`);
    return WAYS.map(([what, ...args]) => ({
      name: `Node ${exact}: ${what}`,
      run: () => void project.run(binary, ...flags(version), ...args),
    }));
  },
}));
