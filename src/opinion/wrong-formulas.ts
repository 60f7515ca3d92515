/** What may be wrong in the formula of a step: one thing in it left out, taken twice, or taken for another. */
import { ZERO } from '../quantity/decimal';
import { canonicalValue, numberShown, unitShown } from '../quantity/quantity';
import type { Words } from '../reckoning/words';
import { type Sign, type Tree, textOf, treeOf } from './formula';
import type { Node } from './graph';
import { FOOT, siOfAmount, siOfUnit } from './scale';
import type { SlipCode } from './slip';

/** A formula with one thing wrong. */
export interface Wrong {
  readonly code: SlipCode;
  readonly weight: number;
  readonly tree: Tree;
  /** The part that is left out, taken twice, or wrongly put in. */
  readonly part?: Tree;
  /** The sign before it. */
  readonly by?: Sign;
  /** What stands before it. */
  readonly left?: Tree;
  /** How it goes wrong, where the code alone does not say. */
  readonly how?: string;
}

export const ONE: Tree = { is: 'number', text: '1' };

type Sum = Extract<Tree, { is: 'sign' }>;

const sign = (s: Sign, left: Tree, right: Tree): Tree => ({ is: 'sign', sign: s, left, right });
const TWO: Tree = { is: 'number', text: '2' };
const FOUR: Tree = { is: 'number', text: '4' };

const isNumber = (tree: Tree, text?: string): boolean =>
  tree.is === 'number' && (text === undefined || tree.text === text);

/** True where a part is a share, as an allowance is. */
type IsShare = (tree: Tree) => boolean;

/** `1 + a`: a share put on, or taken off. */
const isFactor = ({ left, right }: Sum, isShare: IsShare): boolean => isNumber(left, '1') && isShare(right);

function* factorSlips(tree: Sum): Generator<Wrong> {
  const { left, right } = tree;
  yield { code: 'allowance-missed', weight: 22, tree: left };
  yield { code: 'allowance-as-factor', weight: 6, tree: right };
  yield { code: 'allowance-twice', weight: 8, tree: sign(tree.sign, left, sign('×', TWO, right)) };
  yield { code: 'allowance-twice', weight: 7, tree: sign('^', tree, TWO) };
  const other: Sign = tree.sign === '+' ? '−' : '+';
  yield { code: 'allowance-turned', weight: 5, tree: sign(other, left, right) };
  yield { code: 'markup-for-margin', weight: 6, tree: sign('÷', ONE, sign(other, left, right)) };
  yield { code: 'allowance-as-factor', weight: 2, tree: sign(tree.sign, left, sign('+', ONE, right)) };
}

function* sumSlips(tree: Sum, isShare: IsShare): Generator<Wrong> {
  const { left, right } = tree;
  if (isFactor(tree, isShare)) {
    yield* factorSlips(tree);
    return;
  }
  const bars = isNumber(right, '1') ? 'spaces-for-bars' : 'term-left-out';
  yield {
    code: bars,
    weight: bars === 'term-left-out' ? 6 : 18,
    tree: left,
    part: right,
    by: tree.sign,
    left,
  };
  if (tree.sign === '+') yield { code: 'term-left-out', weight: 6, tree: right, part: left };
  if (tree.sign === '+')
    yield { code: 'term-twice', weight: 3, tree: sign('+', sign('+', left, left), right), part: left };
  yield {
    code: 'term-twice',
    weight: 3,
    tree: sign(tree.sign, sign(tree.sign, left, right), right),
    part: right,
    by: tree.sign,
  };
  // Where nothing is subtracted at all, nobody has a minus in mind.
  yield {
    code: 'added-for-subtracted',
    weight: tree.sign === '+' ? 1.5 : 4,
    tree: sign(tree.sign === '+' ? '−' : '+', left, right),
  };
}

const PARTS: readonly string[] = ['2', '3', '4'];

export const isProduct = (tree: Tree): boolean =>
  tree.is === 'sign' && (tree.sign === '×' || tree.sign === '÷');

/** What is rounded to the cent, where that is done to all of it. */
export const beforeCents = (tree: Tree): Tree =>
  tree.is === 'call' && tree.name === 'cents' ? (tree.of[0] as Tree) : tree;

/** A third for a quarter: another of the small parts that things are divided into. */
function* otherNumbers({ sign: by, left, right }: Sum): Generator<Wrong> {
  if (by !== '÷' || right.is !== 'number' || !PARTS.includes(right.text)) return;
  for (const text of PARTS)
    if (text !== right.text)
      yield { code: 'other-number', weight: 1.5, tree: sign('÷', left, { is: 'number', text }), part: right };
}

function* productSlips(tree: Sum, isShare: IsShare): Generator<Wrong> {
  const { left, right } = tree;
  const code = isNumber(right) ? 'number-left-out' : 'factor-left-out';
  yield { code, weight: code === 'number-left-out' ? 6.5 : 6, tree: left, part: right, by: tree.sign };
  if (tree.sign === '×')
    yield {
      code: isNumber(left) ? 'number-left-out' : 'factor-left-out',
      weight: 4,
      tree: right,
      part: left,
    };
  yield* otherNumbers(tree);
  yield {
    code: 'factor-twice',
    weight: isNumber(right) ? 1.5 : 2.5,
    tree: sign(tree.sign, tree, right),
    part: right,
    by: tree.sign,
  };
  // The first of a product is the left of it alone.
  if (tree.sign === '×' && !isNumber(left) && !isProduct(left))
    yield { code: 'factor-twice', weight: 2.5, tree: sign('×', left, tree), part: left };
  const turned = right.is === 'sign' && isFactor(right, isShare);
  yield {
    code: turned ? 'allowance-turned' : 'multiplied-for-divided',
    weight: 5,
    tree: sign(tree.sign === '×' ? '÷' : '×', left, right),
  };
  if (tree.sign === '÷') yield { code: 'multiplied-for-divided', weight: 3, tree: sign('÷', right, left) };
}

const SQUARE_FOR_CUBE = 'the square was taken for the cube';
const CUBE_FOR_SQUARE = 'the cube was taken for the square';

/** One of the unit of a symbol: what a lower power lacks was one of its unit in a notebook. */
const oneOf = (name: string): Tree => ({ is: 'symbol', name: `1 ${name}` });

/** A square or a cube not taken, or one for the other. */
function* powerSlips({ left, right }: Sum): Generator<Wrong> {
  const power = right.is === 'number' ? right.text : '';
  if (left.is !== 'symbol' || (power !== '2' && power !== '3')) {
    yield { code: 'power-left-out', weight: 6, tree: left };
    return;
  }
  const [one, other] = [oneOf(left.name), { is: 'number', text: power === '2' ? '3' : '2' } as const];
  const alone = sign('×', left, one);
  const raised = sign('^', left, other);
  if (power === '2') {
    yield { code: 'power-left-out', weight: 6, tree: alone };
    yield { code: 'power-left-out', weight: 1, tree: sign('÷', raised, one), how: CUBE_FOR_SQUARE };
  } else {
    yield { code: 'power-left-out', weight: 5, tree: sign('×', raised, one), how: SQUARE_FOR_CUBE };
    yield { code: 'power-left-out', weight: 3, tree: sign('×', alone, one) };
  }
}

function* signSlips(tree: Sum, isShare: IsShare): Generator<Wrong> {
  if (tree.sign === '^') yield* powerSlips(tree);
  else if (tree.sign === '+' || tree.sign === '−') yield* sumSlips(tree, isShare);
  else yield* productSlips(tree, isShare);
}

/** The sides of `L² + W²`. */
function squaresIn(tree: Tree | undefined): readonly Tree[] {
  const isSquare = (one: Tree): one is Sum =>
    one.is === 'sign' && one.sign === '^' && isNumber(one.right, '2');
  return tree?.is === 'sign' && tree.sign === '+' && isSquare(tree.left) && isSquare(tree.right)
    ? [tree.left.left, tree.right.left]
    : [];
}

type Call = Extract<Tree, { is: 'call' }>;

const OTHER_WAY: Readonly<Record<string, readonly [SlipCode, string, number]>> = {
  ceil: ['rounded-down', 'floor', 12],
  floor: ['rounded-down', 'ceil', 6],
  max: ['greater-for-lesser', 'min', 4],
  min: ['greater-for-lesser', 'max', 4],
};

function* callSlips(tree: Call): Generator<Wrong> {
  const { name, of } = tree;
  const other = OTHER_WAY[name];
  if (other) yield { code: other[0], weight: other[2], tree: { ...tree, name: other[1] } };
  if (name === 'ceil' || name === 'floor') yield { code: 'not-rounded', weight: 5, tree: of[0] as Tree };
  const sides = name === 'hypot' ? of : squaresIn(of[0]);
  const [first, ...more] = sides;
  if (first)
    yield { code: 'power-left-out', weight: 4, tree: more.reduce((sum, one) => sign('+', sum, one), first) };
  if (name === 'sqrt') yield { code: 'power-left-out', weight: 4, tree: of[0] as Tree };
  if ((name === 'min' || name === 'max') && of.length > 1)
    for (const one of of) yield { code: 'greater-for-lesser', weight: 2, tree: one };
}

const MOST_TREES = 120;

/** Every way in which one thing in a formula may be wrong. */
function* wrongTrees(tree: Tree, isShare: IsShare): Generator<Wrong> {
  if (tree.is === 'sign') {
    yield* signSlips(tree, isShare);
    for (const one of wrongTrees(tree.left, isShare)) yield { ...one, tree: { ...tree, left: one.tree } };
    for (const one of wrongTrees(tree.right, isShare)) yield { ...one, tree: { ...tree, right: one.tree } };
  }
  if (tree.is !== 'call') return;
  yield* callSlips(tree);
  for (const [i, inner] of tree.of.entries())
    for (const one of wrongTrees(inner, isShare))
      yield { ...one, tree: { ...tree, of: tree.of.map((own, j) => (j === i ? one.tree : own)) } };
}

const roundShape = (tree: Tree): boolean =>
  tree.is === 'symbol'
    ? tree.name === 'π'
    : tree.is === 'sign' && (roundShape(tree.left) || roundShape(tree.right));

/** `π × d² ÷ 4` without its quarter is a circle whose diameter was taken for its radius. */
const named = (one: Wrong, whole: Tree): Wrong =>
  one.code === 'number-left-out' && roundShape(whole)
    ? { ...one, code: 'diameter-for-radius', weight: 18 }
    : one;

export const isLengthIn =
  ({ bySymbol }: Node) =>
  (tree: Tree): tree is Extract<Tree, { is: 'symbol' }> =>
    tree.is === 'symbol' && bySymbol.get(tree.name)?.quantity.dimension === 'length';

/** One of a unit that a value is told in, so that only its number is left: nobody forgets what nobody writes. */
const isUnitOnly = ({ bySymbol }: Node, part: Tree | undefined): boolean => {
  const one = part?.is === 'symbol' ? bySymbol.get(part.name) : undefined;
  return (
    one !== undefined && !one.given && one.from === undefined && numberShown(one.quantity).equals(ONE_OF)
  );
};
const ONE_OF = 1;

/** A factor that is left out was one of its unit in a notebook, of a length one foot or one meter. */
function withoutFactor(one: Wrong, tree: Tree, { bySymbol }: Node): Wrong {
  if (one.code !== 'factor-left-out' || one.by === '÷' || one.part?.is !== 'symbol') return one;
  const { name } = one.part;
  const q = bySymbol.get(name)?.quantity;
  // What is divided by as well is a step: bars at one foot, or whole yards, are of another size, and no factor less.
  const times = textOf(tree)
    .split(/[^\w′]+/)
    .filter((symbol) => symbol === name).length;
  if (!q || times > 1 || q.dimension === 'ratio' || q.dimension === 'count') return one;
  const unit = unitShown(q);
  const isLength = q.dimension === 'length';
  if (!isLength && (unit.form || unit.offset)) return one;
  const si = isLength ? (unit.system === 'metric' ? 1 : FOOT) : siOfUnit(unit);
  return { ...one, tree: replaced(tree, name, { is: 'number', text: String(si) }) };
}

/** The ones of units in a formula, as amounts. */
function withUnits(one: Wrong, { takes }: Node): Wrong {
  if (one.code !== 'power-left-out') return one;
  const tree = takes.reduce((own, { symbol, quantity: q }) => {
    const unit = unitShown(q);
    const plain = unit.form || unit.offset || q.dimension === 'count';
    const si = plain ? (unit.form === 'feet-inches' ? FOOT : 1) : siOfUnit(unit);
    return replaced(own, `1 ${symbol}`, { is: 'number', text: String(si) });
  }, one.tree);
  return { ...one, tree };
}

const ONE_ROOT = 'one of two roots was not taken';

/** A length whose last root was not taken: its number is squared, and its unit stays. */
function* rootSlips({ step: { gives } }: Node, tree: Tree): Generator<Wrong> {
  if (tree.is !== 'call' || tree.name !== 'sqrt' || gives.dimension !== 'length') return;
  const unit = unitShown(gives);
  const one = unit.form ? FOOT : siOfUnit(unit);
  const n = siOfAmount(canonicalValue(gives), gives.dimension) / one;
  const [inner] = tree.of;
  const how = inner?.is === 'call' && inner.name === 'sqrt' ? { how: ONE_ROOT } : {};
  yield { code: 'power-left-out', weight: 4, tree: { is: 'number', text: String(n * n * one) }, ...how };
}

/** How common it is to reckon one of several that are alike. */
const ALIKE_LEFT = 8;

/** A count of the input that is left out: one pad for five. */
function ofAlike(one: Wrong, { bySymbol }: Node): Wrong {
  if (one.code !== 'factor-left-out' || one.by === '÷' || one.part?.is !== 'symbol') return one;
  const taken = bySymbol.get(one.part.name);
  return taken?.given && taken.quantity.dimension === 'count'
    ? { ...one, weight: Math.max(one.weight, ALIKE_LEFT) }
    : one;
}

/** Terms of a sum. */
function termsOf(tree: Tree): readonly Tree[] {
  return tree.is === 'sign' && tree.sign === '+' ? [...termsOf(tree.left), tree.right] : [tree];
}

/** A list of more is no two ways. */
const MOST_TERMS = 8;
const ONE_WAY = 4;

/** Half of a sum of products left out, as the bars that run one way. */
function* halfSlips(tree: Tree): Generator<Wrong> {
  const terms = termsOf(tree);
  if (terms.length < 4 || terms.length > MOST_TERMS || !terms.every(isProduct)) return;
  const summed = (some: readonly Tree[]): Tree =>
    some.slice(1).reduce((sum, one) => sign('+', sum, one), some[0] as Tree);
  for (let at = 2; at <= terms.length - 2; at += 1) {
    const [some, more] = [summed(terms.slice(0, at)), summed(terms.slice(at))];
    yield { code: 'term-left-out', weight: ONE_WAY, tree: some, part: more, by: '+' };
    yield { code: 'term-left-out', weight: ONE_WAY, tree: more, part: some };
  }
}

/** Counts that stand in a formula and no step gave: treads, spaces, bars. */
const isCountIn =
  ({ bySymbol }: Node) =>
  (name: string): boolean => {
    const one = bySymbol.get(name);
    return one?.quantity.dimension === 'count' && !one.given && one.from === undefined;
  };

/** A longer formula is a list of rows. */
const FEW_VALUES = 6;

function* countSlips(node: Node, tree: Tree): Generator<Wrong> {
  const isCount = isCountIn(node);
  if (node.takes.length > FEW_VALUES) return;
  for (const { symbol } of node.takes)
    if (isCount(symbol))
      for (const by of ['+', '−'] as const) {
        const part: Tree = { is: 'symbol', name: symbol };
        yield { code: 'one-off-count', weight: 5, tree: replaced(tree, symbol, sign(by, part, ONE)), part };
      }
}

/** A formula with another part for a symbol. */
export function replaced(tree: Tree, name: string, instead: Tree): Tree {
  switch (tree.is) {
    case 'symbol':
      return tree.name === name ? instead : tree;
    case 'sign':
      return {
        ...tree,
        left: replaced(tree.left, name, instead),
        right: replaced(tree.right, name, instead),
      };
    case 'call':
      return { ...tree, of: tree.of.map((one) => replaced(one, name, instead)) };
    default:
      return tree;
  }
}

/** `L × W − l × w` as two rectangles of its full sides: the corner where they meet is counted with both. */
function* cornerSlips(node: Node, tree: Tree): Generator<Wrong> {
  if (tree.is !== 'sign' || tree.sign !== '−' || node.step.gives.dimension !== 'area') return;
  const [whole, notch] = [tree.left, tree.right];
  if (whole.is !== 'sign' || notch.is !== 'sign' || whole.sign !== '×' || notch.sign !== '×') return;
  const isLength = isLengthIn(node);
  if (![whole.left, whole.right, notch.left, notch.right].every(isLength)) return;
  const long = sign('×', whole.left, sign('−', whole.right, notch.right));
  const broad = sign('×', sign('−', whole.left, notch.left), whole.right);
  yield { code: 'corner-twice', weight: 6, tree: sign('+', long, broad) };
}

const ENDS = 'the mean of both ends was taken, without the middle';
const MIDDLE = 'the one in the middle was taken for the mean of all';

/**
 * Two of the four strips around a rectangle, `(b − 2 × w) × w`, with the corners that the others have already; a margin on
 * the price, `× g ÷ (1 − g)`, as the share of the cost that a markup is.
 */
const REWRITTEN: readonly (readonly [of: RegExp, as: string, SlipCode, weight: number, how?: string])[] = [
  [/\((\w+) − 2 × (\w+)\) × \2\b/, '$1 × $2', 'corner-twice', 8],
  [/( × (\w+)) ÷ \(1 − \2\)/, '$1', 'markup-for-margin', 24],
  // By the ends, or by the middle, alone.
  [/\((\w+) \+ 4 × (\w+) \+ (\w+)\) ÷ 6/, '($1 + $3) ÷ 2', 'mean-of-ends', 8, ENDS],
  [/\((\w+) \+ 4 × (\w+) \+ (\w+)\) ÷ 6/, '$2', 'mean-of-ends', 3, MIDDLE],
  [/\((\w+) \+ 4 × (\w+) \+ (\w+)\) ÷ 3/, '($1 + $3)', 'mean-of-ends', 8, ENDS],
];

function* rewritten(tree: Tree): Generator<Wrong> {
  const text = textOf(tree);
  for (const [of, as, code, weight, how] of REWRITTEN) {
    const other = of.test(text) && treeOf(`x = ${text.replace(of, as)}`);
    if (other) yield { code, weight, tree: other, ...(how === undefined ? {} : { how }) };
  }
}

/** A markup taken as a margin: what is put on for a share of the cost, as a share of the price. */
function* asMargin({ step }: Node, tree: Tree, isShare: IsShare): Generator<Wrong> {
  const own = beforeCents(tree);
  if (step.gives.dimension !== 'money' || own.is !== 'sign' || own.sign !== '×' || !isShare(own.right))
    return;
  const { left, right } = own;
  yield {
    code: 'markup-for-margin',
    weight: 12,
    tree: sign('÷', sign('×', left, right), sign('−', ONE, right)),
  };
}

const FOR_PANELS = 'a joint was counted for every panel, one more in each direction';
const ENDS_TOO = 'the edges were counted as joints too, two more in each direction';

/** How common it is to count joints as the spaces between them. */
const PANELS_COUNTED = 9;

/** `C = c1 + c2 + c3` over all joints, with one or two more of each length, as of so many spaces or lines. */
function* jointSlips({ step, takes }: Node, tree: Tree): Generator<Wrong> {
  if (!/\bjoints in all\b/.test(step.says) || !/^\w+ = \w+( \+ \w+)*$/.test(step.formula)) return;
  const each = new Map(takes.map(({ si, symbol }) => [si, symbol] as const));
  if (each.size > DIRECTIONS) return;
  const more = (whole: Tree): Tree =>
    [...each.values()].reduce<Tree>((sum, name) => sign('+', sum, { is: 'symbol', name }), whole);
  yield { code: 'spaces-for-bars', weight: PANELS_COUNTED, tree: more(tree), how: FOR_PANELS };
  yield { code: 'spaces-for-bars', weight: PANELS_COUNTED / 2, tree: more(more(tree)), how: ENDS_TOO };
}
/** Joints of more lengths run in no grid. */
const DIRECTIONS = 2;

/** A temperature that is left out was nothing on its own scale: 0 degC of a datum. */
function withoutDegrees(one: Wrong, tree: Tree, { bySymbol }: Node): Wrong {
  if (one.code !== 'term-left-out' || one.by !== '−' || one.part?.is !== 'symbol') return one;
  const { name } = one.part;
  const q = bySymbol.get(name)?.quantity;
  if (q?.dimension !== 'temperature') return one;
  const zero = siOfAmount(unitShown(q).offset ?? ZERO, 'temperature');
  return { ...one, tree: replaced(tree, name, { is: 'number', text: String(zero) }) };
}

/** All that may be wrong with the formula of a step. */
export function wrongsOf(node: Node): Wrong[] {
  const { tree } = node;
  if (!tree) return [];
  const shares = new Set(
    node.takes.filter(({ quantity }) => quantity.dimension === 'ratio').map(({ symbol }) => symbol),
  );
  const isShare: IsShare = (part) => part.is === 'symbol' && shares.has(part.name);
  const round = roundShape(tree);
  const found: Wrong[] = [
    // With four for π a circle is the square around it, and its girth that of the square.
    ...(round ? [{ code: 'circle-as-square', weight: 8, tree: replaced(tree, 'π', FOUR) } as const] : []),
    ...cornerSlips(node, tree),
    ...rewritten(tree),
    ...asMargin(node, tree, isShare),
    ...countSlips(node, tree),
    ...jointSlips(node, tree),
    ...rootSlips(node, tree),
    ...halfSlips(tree),
  ];
  for (const one of wrongTrees(tree, isShare)) {
    if (found.length >= MOST_TREES) break;
    if (isUnitOnly(node, one.part) || (round && one.code === 'other-number')) continue;
    const told = withUnits(
      withoutDegrees(ofAlike(withoutFactor(named(one, tree), tree, node), node), tree, node),
      node,
    );
    const { code, weight } = told;
    const isRare = code === 'markup-for-margin' && node.step.gives.dimension !== 'money';
    found.push(isRare ? { ...told, weight: weight / 2 } : told);
  }
  return found;
}

/** A step by its name. */
export const placeOf = ({ step }: Node): Words => ({
  says: step.says,
  ...(step.params ? { params: step.params } : {}),
});
