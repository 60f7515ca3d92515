/**
 * The mutants of a source file: small wrong changes, each of which a test should notice.
 *
 * Operators: conditions made true and false; comparison, arithmetic and logical operators; the methods of
 * the decimals and quantities that stand for them; true and false; words without a blank; array and object
 * literals emptied; blocks emptied; what an arrow function gives; array methods taken out; optional chains.
 * Left out: sentences (text with a blank in it, which is for people), the lists of sources, and types.
 */
import ts from 'typescript';

export interface Mutant {
  /** From the root, with `/`. */
  readonly file: string;
  readonly start: number;
  readonly end: number;
  readonly by: string;
  /** The line of its start, from 1. */
  readonly line: number;
}

type Change = readonly [node: ts.Node, by: string];
type Operator = (node: ts.Node, source: ts.SourceFile) => readonly Change[];

const K = ts.SyntaxKind;

/** What stands in place of each operator. */
const OPERATORS: ReadonlyMap<ts.SyntaxKind, readonly string[]> = new Map([
  [K.PlusToken, ['-']],
  [K.MinusToken, ['+']],
  [K.AsteriskToken, ['/']],
  [K.SlashToken, ['*']],
  [K.PercentToken, ['*']],
  [K.LessThanToken, ['<=', '>=']],
  [K.LessThanEqualsToken, ['<', '>']],
  [K.GreaterThanToken, ['>=', '<=']],
  [K.GreaterThanEqualsToken, ['>', '<']],
  [K.EqualsEqualsEqualsToken, ['!==']],
  [K.ExclamationEqualsEqualsToken, ['===']],
  [K.AmpersandAmpersandToken, ['||']],
  [K.BarBarToken, ['&&']],
  [K.QuestionQuestionToken, ['&&']],
  [K.PlusEqualsToken, ['-=']],
  [K.MinusEqualsToken, ['+=']],
  [K.AsteriskEqualsToken, ['/=']],
  [K.SlashEqualsToken, ['*=']],
]);

/** Methods with an opposite, or a neighbor that is easily taken for them. */
const SWAPS: ReadonlyMap<string, readonly string[]> = new Map([
  ...both('plus', 'minus'),
  ...both('times', 'dividedBy'),
  ...both('min', 'max'),
  ...both('upTo', 'downTo'),
  ...both('ceil', 'floor'),
  ...both('some', 'every'),
  ...both('startsWith', 'endsWith'),
  ...both('isPositive', 'isNegative'),
  ...both('indexOf', 'lastIndexOf'),
  ...both('find', 'findLast'),
  ['div', ['times']],
  ['lessThan', ['lessThanOrEqualTo', 'greaterThanOrEqualTo']],
  ['lessThanOrEqualTo', ['lessThan', 'greaterThan']],
  ['greaterThan', ['greaterThanOrEqualTo', 'lessThanOrEqualTo']],
  ['greaterThanOrEqualTo', ['greaterThan', 'lessThan']],
]);

function both(a: string, b: string): [string, string[]][] {
  return [
    [a, [b]],
    [b, [a]],
  ];
}

/** Methods that give back something of the same kind, so that the call may be taken out. */
const TAKEN_OUT = new Set([
  ...['abs', 'negated', 'neg', 'filter', 'reverse', 'toReversed', 'sort', 'toSorted', 'slice', 'concat'],
  ...['flat', 'trim', 'toLowerCase', 'toUpperCase', 'round'],
]);

const isText = (node: ts.Node): boolean =>
  ts.isStringLiteralLike(node) ||
  ts.isTemplateExpression(node) ||
  (ts.isBinaryExpression(node) &&
    node.operatorToken.kind === K.PlusToken &&
    (isText(node.left) || isText(node.right)));

function operators(node: ts.Node): Change[] {
  if (!ts.isBinaryExpression(node) || isText(node)) return [];
  return (OPERATORS.get(node.operatorToken.kind) ?? []).map((by) => [node.operatorToken, by]);
}

function conditions(node: ts.Node): Change[] {
  if (ts.isIfStatement(node))
    return [
      [node.expression, 'true'],
      [node.expression, 'false'],
    ];
  if (ts.isConditionalExpression(node))
    return [
      [node.condition, 'true'],
      [node.condition, 'false'],
    ];
  if (ts.isWhileStatement(node) || ts.isDoStatement(node)) return [[node.expression, 'false']];
  if (ts.isForStatement(node) && node.condition) return [[node.condition, 'false']];
  return [];
}

function unary(node: ts.Node, source: ts.SourceFile): Change[] {
  if (node.kind === K.TrueKeyword) return [[node, 'false']];
  if (node.kind === K.FalseKeyword) return [[node, 'true']];
  if (!ts.isPrefixUnaryExpression(node)) return [];
  const swapped = node.operator === K.PlusPlusToken ? '--' : node.operator === K.MinusMinusToken ? '++' : '';
  if (swapped) return [[node, `${swapped}${node.operand.getText(source)}`]];
  // The sign of a written number is part of it: `-1` for "none" is as good as any other number below 0.
  return ts.isNumericLiteral(node.operand) ? [] : [[node, `(${node.operand.getText(source)})`]];
}

/** A literal that is a value, not the name of a member, of a module or of a type. */
function isValue(node: ts.Node): boolean {
  const { parent } = node;
  if (ts.isLiteralTypeNode(parent) || ts.isImportDeclaration(parent) || ts.isExportDeclaration(parent))
    return false;
  return !((ts.isPropertyAssignment(parent) || ts.isPropertySignature(parent)) && parent.name === node);
}

function literals(node: ts.Node): Change[] {
  if (ts.isStringLiteral(node) && isValue(node) && node.text !== '' && !/\s/.test(node.text))
    return [[node, "''"]];
  if (ts.isArrayLiteralExpression(node) && node.elements.length > 0 && !isTarget(node)) return [[node, '[]']];
  if (ts.isObjectLiteralExpression(node) && node.properties.length > 0 && !isTarget(node))
    return [[node, '({})']];
  return [];
}

/** A list on the left of an assignment takes apart, it makes nothing. */
const isTarget = (node: ts.Node): boolean =>
  ts.isBinaryExpression(node.parent) &&
  node.parent.operatorToken.kind === K.EqualsToken &&
  node.parent.left === node;

function bodies(node: ts.Node): Change[] {
  if (ts.isBlock(node) && node.statements.length > 0) return [[node, '{}']];
  if (ts.isArrowFunction(node) && !ts.isBlock(node.body)) return [[node.body, 'undefined']];
  return [];
}

function methods(node: ts.Node, source: ts.SourceFile): Change[] {
  if (!ts.isCallExpression(node) || !ts.isPropertyAccessExpression(node.expression)) return [];
  const { name, expression } = node.expression;
  const swaps = (SWAPS.get(name.text) ?? []).map((by): Change => [name, by]);
  return TAKEN_OUT.has(name.text) && !isMath(expression, source)
    ? [...swaps, [node, `(${expression.getText(source)})`]]
    : swaps;
}

const isMath = (node: ts.Node, source: ts.SourceFile): boolean => node.getText(source) === 'Math';

function chains(node: ts.Node): Change[] {
  const dot =
    ts.isPropertyAccessExpression(node) || ts.isElementAccessExpression(node) || ts.isCallExpression(node)
      ? node.questionDotToken
      : undefined;
  return dot ? [[dot, ts.isPropertyAccessExpression(node) ? '.' : '']] : [];
}

const ALL: readonly Operator[] = [operators, conditions, unary, literals, bodies, methods, chains];

const isType = (node: ts.Node): boolean =>
  ts.isTypeNode(node) || ts.isInterfaceDeclaration(node) || ts.isTypeAliasDeclaration(node);

/** Every mutant of a file, in the order of the text. */
export function mutantsOf(file: string, text: string): Mutant[] {
  if (/(^|\/)[a-z-]*sources?\.ts$/.test(file)) return [];
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true);
  const found: Mutant[] = [];
  const visit = (node: ts.Node): void => {
    if (isType(node) || ts.isImportDeclaration(node)) return;
    for (const operator of ALL)
      for (const [part, by] of operator(node, source)) {
        const start = part.getStart(source);
        if (text.slice(start, part.end) === by) continue;
        const line = source.getLineAndCharacterOfPosition(start).line + 1;
        found.push({ file, start, end: part.end, by, line });
      }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found.sort((a, b) => a.start - b.start || a.end - b.end);
}

export const mutated = (text: string, { start, end, by }: Mutant): string =>
  text.slice(0, start) + by + text.slice(end);

/** A stretch of code that runs as a whole or not at all, and its number. */
export interface Stretch {
  readonly start: number;
  readonly end: number;
  readonly mark: number;
}

/** The parts of a node that may be passed by, blocks apart. */
function partsOf(node: ts.Node): { expressions: ts.Node[]; statements: (ts.Statement | undefined)[] } {
  if (ts.isArrowFunction(node) && !ts.isBlock(node.body)) return { expressions: [node.body], statements: [] };
  if (ts.isConditionalExpression(node))
    return { expressions: [node.whenTrue, node.whenFalse], statements: [] };
  if (ts.isIfStatement(node))
    return { expressions: [], statements: [node.thenStatement, node.elseStatement] };
  return { expressions: [], statements: ts.isIterationStatement(node, false) ? [node.statement] : [] };
}

/** The text with a count of every stretch that can be passed by: bodies, branches, both sides of `? :`. */
export function marked(
  file: string,
  text: string,
  first: number,
): { readonly text: string; readonly stretches: readonly Stretch[] } {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true);
  const inserts: { at: number; order: number; text: string }[] = [];
  const stretches: Stretch[] = [];
  const wrap = (node: ts.Node, open: (mark: number) => string, close: string): void => {
    const [start, end, mark] = [node.getStart(source), node.end, first + stretches.length];
    stretches.push({ start, end, mark });
    inserts.push({ at: start, order: stretches.length, text: open(mark) });
    inserts.push({ at: end, order: -stretches.length, text: close });
  };
  const expression = (node: ts.Node): void => wrap(node, (mark) => `(__mark(${mark}), `, ')');
  const branch = (node: ts.Statement | undefined): void => {
    if (node && !ts.isBlock(node)) wrap(node, (mark) => `{__mark(${mark}); `, '}');
  };
  const block = (node: ts.Block): void => {
    const [start, mark] = [node.getStart(source), first + stretches.length];
    stretches.push({ start, end: node.end, mark });
    inserts.push({ at: start + 1, order: stretches.length, text: `__mark(${mark});` });
  };
  const visit = (node: ts.Node): void => {
    if (isType(node)) return;
    if (ts.isBlock(node)) block(node);
    const { expressions, statements } = partsOf(node);
    for (const part of expressions) expression(part);
    for (const part of statements) branch(part);
    ts.forEachChild(node, visit);
  };
  visit(source);
  // What closes comes before what opens at the same place, the inner first.
  inserts.sort((a, b) => a.at - b.at || a.order - b.order);
  let [out, from] = ['', 0];
  for (const insert of inserts) {
    out += text.slice(from, insert.at) + insert.text;
    from = insert.at;
  }
  return { text: out + text.slice(from), stretches };
}
