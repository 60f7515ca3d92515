/** TypeScript: from the oldest that is served to the newest, under every way of finding modules that it has. */
import { copyFileSync, writeFileSync } from 'node:fs';
import type { Check, Suite } from './check';
import { Project } from './project';

const VERSIONS = ['5.4.5', '5.5.4', '5.6.3', '5.7.3', '5.8.3', '5.9.3', '6.0.3', '7.0.2'];

interface Way {
  readonly resolution: string;
  readonly module: string;
  readonly files: readonly string[];
  /** The first version that has it no longer. */
  readonly until?: number;
}

const WAYS: readonly Way[] = [
  { resolution: 'node16', module: 'node16', files: ['use.mts', 'use.cts'] },
  { resolution: 'nodenext', module: 'nodenext', files: ['use.mts', 'use.cts'] },
  { resolution: 'bundler', module: 'esnext', files: ['use.mts'] },
  { resolution: 'node10', module: 'commonjs', files: ['use.ts'], until: 7 },
];

/** Declarations are read too, as by an app that skips no check of its libraries. */
function settings(version: string, { resolution, module, files }: Way): string {
  const compilerOptions = {
    noEmit: true,
    strict: true,
    exactOptionalPropertyTypes: true,
    target: 'es2021',
    lib: ['es2021'],
    types: [],
    module,
    moduleResolution: resolution,
    ...(resolution === 'node10' && version.startsWith('6.') ? { ignoreDeprecations: '6.0' } : {}),
  };
  return JSON.stringify({ compilerOptions, files });
}

/** When time is short, the ways that the oldest lacks least and the newest has most. */
function serves(version: string, { resolution, until }: Way, quick: boolean): boolean {
  const isNew = Number.parseFloat(version) >= 7;
  if (quick) return (isNew ? ['nodenext', 'bundler'] : ['node16', 'node10']).includes(resolution);
  return until === undefined || Number.parseFloat(version) < until;
}

const alias = (version: string): string => `typescript-${version}`;

export const types: Suite = {
  name: 'TypeScript',
  async checks(quick) {
    const versions = quick ? [VERSIONS[0] ?? '', VERSIONS.at(-1) ?? ''] : VERSIONS;
    const project = new Project(
      'types',
      Object.fromEntries(versions.map((version) => [alias(version), `npm:typescript@${version}`])),
    );
    // The same program, as each kind of module that TypeScript tells by a file's name.
    for (const file of ['use.mts', 'use.cts']) copyFileSync(project.path('use.ts'), project.path(file));
    const [oldest = ''] = versions;
    const hover: Check = {
      name: `TypeScript ${oldest}: over a call, an editor shows what the calculation says of itself`,
      run: () => void project.node('hover.cjs', project.path('node_modules', alias(oldest))),
    };
    const compiled = versions.flatMap((version): Check[] =>
      WAYS.filter((way) => serves(version, way, quick)).map((way) => ({
        name: `TypeScript ${version}, ${way.resolution}`,
        run() {
          writeFileSync(project.path('tsconfig.json'), settings(version, way));
          project.node(project.path('node_modules', alias(version), 'bin/tsc'), '-p', '.');
        },
      })),
    );
    return [...compiled, hover];
  },
};
