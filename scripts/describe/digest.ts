/**
 * A digest of what the generated files are made from, so that a test tells at once whether they are up to date: the
 * compiler takes longer to read all types than the whole test may.
 */
import { createHash } from 'node:crypto';
import ts from 'typescript';
import * as library from '../../src/index';
import { source, sources } from './catalog';

const hash = (text: string): string => createHash('sha256').update(text).digest('hex').slice(0, 16);

const isDescribed = (node: ts.Node): boolean =>
  ts.isInterfaceDeclaration(node) || ts.isTypeAliasDeclaration(node);

/** A calculation: of it, its docstring is told. */
const isCalculation = (node: ts.Node, text: string): boolean =>
  ts.isVariableStatement(node) && /\bdefine\b/.test(text);

/** Types as they are written, with their docstrings, of one file, and the docstrings of calculations. */
function typesIn(file: string): string[] {
  const text = source(file);
  const tree = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, false);
  return tree.statements
    .flatMap((node) => {
      const own = text.slice(node.pos, node.end);
      if (!own.includes('export ')) return [];
      if (isDescribed(node)) return [own];
      return isCalculation(node, own) ? [text.slice(node.pos, node.getStart(tree))] : [];
    })
    .map((own) => own.replace(/\s+/g, ' ').trim());
}

interface Described {
  readonly id: string;
  readonly title: string;
  readonly version: number;
  readonly inputSchema: unknown;
}

const calculations = (): Described[] =>
  (Object.values(library) as unknown[]).flatMap((value) =>
    typeof value === 'function' && 'inputSchema' in value ? [value as unknown as Described] : [],
  );

/** What the types say, and what each calculation says of itself. */
export function digest(): { readonly [of: string]: string } {
  const types = sources().sort().flatMap(typesIn);
  const own = calculations().map(
    ({ id, title, version, inputSchema }) =>
      [id, hash(JSON.stringify([title, version, inputSchema]))] as const,
  );
  return { types: hash(types.join('\n')), ...Object.fromEntries(own.sort(([a], [b]) => (a < b ? -1 : 1))) };
}
