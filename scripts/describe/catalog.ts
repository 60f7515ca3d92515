/** The list of calculations, and the modules that load them. */
import { readdirSync, readFileSync } from 'node:fs';
import type { CatalogEntry } from '../../src/catalog/index';
import * as library from '../../src/index';
import type { Calculation } from '../../src/reckoning/calculation';
import type { Declared, Types } from './types';

const SRC = new URL('../../src/', import.meta.url);

/** Trades in the order of a job; one that is not named comes last. */
const ORDER = [
  'concrete',
  'steps',
  'base',
  'forms',
  'grade',
  'joints',
  'steel',
  'mix',
  'weather',
  'pour',
  'finish',
  'job',
];

/** A calculation with its place in the catalog. */
export interface Listed {
  readonly declared: Declared;
  readonly calculation: Calculation<never, never>;
  readonly entry: CatalogEntry;
}

/** `/** Grade: slopes and heights.` names the trade. */
function tradeOf(folder: string): string {
  const [, trade] =
    /^\/\*\* (?:The )?([^:,.]+)/.exec(readFileSync(new URL(`${folder}/index.ts`, SRC), 'utf8')) ?? [];
  if (!trade) throw new Error(`src/${folder}/index.ts does not begin with its trade`);
  return trade.charAt(0).toUpperCase() + trade.slice(1);
}

const place = (folder: string): number => {
  const i = ORDER.indexOf(folder);
  return i === -1 ? ORDER.length : i;
};

/** Every calculation, trade by trade. */
export function entriesOf({ calculations }: Types): Listed[] {
  const all = library as unknown as Record<string, Calculation<never, never>>;
  return [...calculations]
    .sort((a, b) => place(a.folder) - place(b.folder) || (a.file < b.file ? -1 : 1))
    .map((declared) => {
      const calculation = all[declared.name] as Calculation<never, never>;
      const { id, title, version } = calculation;
      const { summary, name } = declared;
      return {
        declared,
        calculation,
        entry: { id, title, summary, trade: tradeOf(declared.folder), name, version },
      };
    });
}

const HEAD = '// Made by `npm run generate`.\n';

/** The module with every calculation. */
export function everyModule(entries: readonly Listed[]): string {
  const lines = entries.map(({ declared }) => `import { ${declared.name} } from '../../${declared.file}';`);
  const names = entries.map(({ declared }) => `  ${declared.name},`);
  return [
    HEAD,
    ...lines.sort(),
    '',
    '/** Every calculation. */',
    'export const every = [',
    ...names,
    '];',
    '',
  ].join('\n');
}

/** The module that loads a calculation and its description when asked for. */
export function loadersModule(entries: readonly Listed[]): string {
  const loaders = entries.flatMap(({ declared, entry }) => [
    `  '${entry.id}': () =>`,
    `    Promise.all([`,
    `      import('../../${declared.file}').then((m) => m.${declared.name} as unknown as AnyCalculation),`,
    `      import('./described/${entry.id}.json').then((m) => m.default as Description),`,
    `    ]),`,
  ]);
  return [
    HEAD,
    `import type { AnyCalculation } from '../all';`,
    `import type { Description } from '../description';`,
    '',
    '/** Load a calculation and its description. */',
    'type Loader = () => Promise<[AnyCalculation, Description]>;',
    '',
    '/** By id. */',
    'export const loaders: { readonly [id: string]: Loader } = {',
    ...loaders,
    '};',
    '',
  ].join('\n');
}

/** Every TypeScript file of the library. */
export const sources = (): string[] =>
  readdirSync(SRC, { recursive: true, encoding: 'utf8' }).filter(
    (file) => file.endsWith('.ts') && !file.startsWith('catalog/'),
  );

/** The text of one. */
export const source = (file: string): string => readFileSync(new URL(file, SRC), 'utf8');
