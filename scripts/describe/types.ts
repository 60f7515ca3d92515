/** The declared types of the library, as the compiler reads them: every calculation with its input and figures. */
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

/** A calculation as it is declared. */
export interface Declared {
  /** Name of the constant. */
  readonly name: string;
  /** Folder of its trade. */
  readonly folder: string;
  /** Its file below `src`, without `.ts`. */
  readonly file: string;
  /** First paragraph of its docstring. */
  readonly summary: string;
  readonly input: ts.Type;
  readonly figures: ts.Type;
}

/** The types of the library. */
export interface Types {
  readonly checker: ts.TypeChecker;
  readonly calculations: readonly Declared[];
  /** The files of the library. */
  readonly files: readonly ts.SourceFile[];
}

const ROOT = fileURLToPath(new URL('../../', import.meta.url));

const LINK = /\{@link\s+([^}|\s]+)(?:\s*\|?\s*([^}]*))?\}/g;

/** A docstring on one line, links as the names they show. */
export const plain = (text: string): string =>
  text
    .replace(LINK, (_, name, shown) => shown?.trim() || name)
    .replace(/\s+/g, ' ')
    .trim();

/** What stands above a declaration. */
export const docOf = (symbol: ts.Symbol | undefined, checker: ts.TypeChecker): string =>
  symbol ? ts.displayPartsToString(symbol.getDocumentationComment(checker)) : '';

/** The text of a tag above a declaration, `@label`. */
export const tagOf = (symbol: ts.Symbol | undefined, name: string): string | undefined => {
  const tag = symbol?.getJsDocTags().find((t) => t.name === name);
  return tag && plain(ts.displayPartsToString(tag.text));
};

const memberType = (type: ts.Type, name: string, checker: ts.TypeChecker): ts.Type | undefined => {
  const member = type.getProperty(name);
  return member && checker.getTypeOfSymbol(member);
};

/** What an attempt takes and gives. */
function doorOf(type: ts.Type, checker: ts.TypeChecker): { input: ts.Type; figures: ts.Type } | undefined {
  const [call] = memberType(type, 'attempt', checker)?.getCallSignatures() ?? [];
  const parameter = call?.getParameters()[0];
  if (!call || !parameter || !type.getProperty('inputSchema')) return undefined;
  const outcome = call.getReturnType();
  const gone = (outcome.isUnion() ? outcome.types : []).find((t) => t.getProperty('result'));
  const result = gone && memberType(gone, 'result', checker);
  const figures = result && memberType(result, 'figures', checker);
  return figures && { input: checker.getTypeOfSymbol(parameter), figures };
}

function declaredIn(symbol: ts.Symbol, checker: ts.TypeChecker): Declared | undefined {
  const target = symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;
  if (!(target.flags & ts.SymbolFlags.Variable)) return undefined;
  const door = doorOf(checker.getTypeOfSymbol(target), checker);
  const file = target.valueDeclaration?.getSourceFile().fileName.slice(`${ROOT}src/`.length, -'.ts'.length);
  if (!door || !file) return undefined;
  const [first = ''] = docOf(target, checker).split(/\n\s*\n/);
  return { name: target.name, folder: file.split('/')[0] ?? '', file, summary: plain(first), ...door };
}

/** Read the types of the library. */
export function readTypes(): Types {
  const { config } = ts.readConfigFile(`${ROOT}tsconfig.json`, ts.sys.readFile);
  const { options } = ts.parseJsonConfigFileContent(config, ts.sys, ROOT);
  const program = ts.createProgram([`${ROOT}src/index.ts`], options);
  const checker = program.getTypeChecker();
  const root = program.getSourceFile(`${ROOT}src/index.ts`);
  const index = root && checker.getSymbolAtLocation(root);
  const symbols = index ? checker.getExportsOfModule(index) : [];
  return {
    checker,
    calculations: symbols.flatMap((symbol) => declaredIn(symbol, checker) ?? []),
    files: program.getSourceFiles().filter(({ fileName }) => fileName.startsWith(`${ROOT}src/`)),
  };
}
