/**
 * The decimal library as far as this one uses it: its methods hang on one object, which keeps a bundler from leaving
 * out those that nobody calls (hyperbolic functions, other bases, random numbers).
 *
 * A method is left out where its name stands behind a point neither anywhere in `src/` nor in what is kept of the
 * decimal library itself; so a new use of one brings it back by itself.
 */
import ts from 'typescript';

/** A part of the text that may be left out: what calls for it, and what it is. */
interface Part {
  readonly start: number;
  readonly end: number;
  /** Names behind a point that reach it. */
  readonly names: readonly string[];
}

/** Called without being named, the last by loops. */
const BY_THE_LANGUAGE = ['toString', 'valueOf', 'toJSON', 'constructor', 'prototype', 'next', 'return'];

/** Names behind a point, but for those of binary numbers: `Math.cosh` is no decimal's. */
const calledIn = (text: string): Set<string> =>
  new Set(
    [...text.matchAll(/(\w*)\s*\.\s*(\w+)/g)].flatMap(([, of, name]) => (of === 'Math' ? [] : [name ?? ''])),
  );

/** The names that are given one value: `P.cosine = P.cos = …` has two. */
function namesGiven(node: ts.Expression, owner: string): string[] {
  if (!ts.isBinaryExpression(node) || node.operatorToken.kind !== ts.SyntaxKind.EqualsToken) return [];
  const { left, right } = node;
  if (!ts.isPropertyAccessExpression(left) || left.expression.getText() !== owner) return [];
  return [left.name.text, ...namesGiven(right, owner)];
}

/** Methods of the one object, of each constructor, and of classes. */
function partsOf(tree: ts.SourceFile, owners: readonly string[]): Part[] {
  const parts: Part[] = [];
  const look = (node: ts.Node): void => {
    if (ts.isExpressionStatement(node)) {
      const names = owners.flatMap((owner) => namesGiven(node.expression, owner));
      if (names.length > 0) {
        parts.push({ start: node.getStart(), end: node.getEnd(), names });
        return;
      }
    }
    if (ts.isFunctionDeclaration(node) && node.name?.text !== 'clone') {
      // `function cosh(x) { return new this(x).cosh(); }` goes with what it is called by.
      parts.push({ start: node.getStart(), end: node.getEnd(), names: [`function ${node.name?.text}`] });
      return;
    }
    if (ts.isMethodDeclaration(node) && ts.isIdentifier(node.name)) {
      parts.push({ start: node.getStart(), end: node.getEnd(), names: [node.name.text] });
      return;
    }
    ts.forEachChild(node, look);
  };
  look(tree);
  return parts;
}

const withNothingIn = (text: string, parts: readonly Part[]): string =>
  parts.reduceRight((rest, { start, end }) => rest.slice(0, start) + rest.slice(end), text);

/** Functions that a text takes by name alone: `Math.log` takes none. */
const functionsIn = (text: string): string[] =>
  (text.match(/(?<![.\w$])[A-Za-z_$][\w$]*/g) ?? []).map((name) => `function ${name}`);

/** How a library is written. */
interface Written {
  /** What its methods hang on: its one object, and the constructor. */
  readonly owners: readonly string[];
  /** Methods that share their name with those of others and are never called. */
  readonly never?: readonly string[];
}

const DECIMAL: Written = { owners: ['P', 'Decimal'] };

/** The examples in comments call much that the code does not. */
const withoutComments = (text: string): string =>
  text
    .split('\n')
    .filter((line) => !/^\s*(\/\/|\/?\*)/.test(line))
    .join('\n');

/**
 * @param source - the decimal library, or one that is written as it is; one module
 * @param users - the sources that use it
 * @param written - how it is written
 */
export function leanDecimal(source: string, users: readonly string[], written: Written = DECIMAL): string {
  // Its comments name everything.
  const text = ts.transpile(source, { target: ts.ScriptTarget.ESNext, removeComments: true });
  const parts = partsOf(
    ts.createSourceFile('decimal.mjs', text, ts.ScriptTarget.Latest, true),
    written.owners,
  );
  const wanted = new Set([
    ...BY_THE_LANGUAGE,
    ...users.flatMap((user) => [...calledIn(withoutComments(user))]),
  ]);
  const take = (kept: string): void => {
    for (const name of [...calledIn(kept), ...functionsIn(kept)]) wanted.add(name);
  };
  // What is called for from outside the parts, then from each part that is kept.
  take(withNothingIn(text, parts));
  const { never = [] } = written;
  let left = parts;
  for (;;) {
    const found = left.filter(({ names }) => names.some((name) => wanted.has(name) && !never.includes(name)));
    if (found.length === 0) return withNothingIn(text, left);
    for (const { start, end } of found) take(text.slice(start, end));
    left = left.filter((part) => !found.includes(part));
  }
}
