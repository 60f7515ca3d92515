/**
 * The formulas of printed steps, read and reckoned again.
 *
 * A formula is `symbol = expression` with `× ÷ + − ( ) √ ² ³ ^ π`, functions such as `ceil`, and symbols. It is read
 * into a tree once, and reckoned in binary numbers where very many slips are tried, or in exact decimals where what a
 * slip would give is told.
 */
import { angleTo, ceilWhole, Decimal, floorWhole, ONE, PI, ROUND_HALF_UP } from '../quantity/decimal';
import { exponential, logarithm, toPower } from '../solve/exponential';

/** An operation on two operands. */
export type Sign = '+' | '−' | '×' | '÷' | '^';

/** A formula as a tree. */
export type Tree =
  | { readonly is: 'number'; readonly text: string }
  | { readonly is: 'symbol'; readonly name: string }
  | { readonly is: 'sign'; readonly sign: Sign; readonly left: Tree; readonly right: Tree }
  | { readonly is: 'call'; readonly name: string; readonly of: readonly Tree[] };

const TOKEN = /\s*(?:(\d+(?:\.\d+)?)|([A-Za-z_][\w′]*)|(.))/uy;

/** Powers set small. */
const RAISED: Readonly<Record<string, string>> = { '²': '2', '³': '3' };

const number = (text: string): Tree => ({ is: 'number', text });
const sign = (s: Sign, left: Tree, right: Tree): Tree => ({ is: 'sign', sign: s, left, right });
const call = (name: string, of: readonly Tree[]): Tree => ({ is: 'call', name, of });

/** What cannot be read, told apart from every tree. */
class Unreadable {}

function tokensOf(text: string): string[] {
  const tokens: string[] = [];
  TOKEN.lastIndex = 0;
  for (let match = TOKEN.exec(text); match; match = TOKEN.exec(text)) tokens.push(match[0].trim());
  return tokens.filter((token) => token !== '');
}

/** Reads by descent: sums of products of powers of what stands alone. */
class Reader {
  private at = 0;

  constructor(private readonly tokens: readonly string[]) {}

  whole(): Tree {
    const tree = this.sum();
    if (this.at < this.tokens.length) throw new Unreadable();
    return tree;
  }

  private take(...wanted: readonly string[]): string | undefined {
    const token = this.tokens[this.at];
    if (token === undefined || !wanted.includes(token)) return undefined;
    this.at += 1;
    return token;
  }

  private sum(): Tree {
    let tree = this.product();
    for (let s = this.take('+', '−', '-'); s; s = this.take('+', '−', '-'))
      tree = sign(s === '+' ? '+' : '−', tree, this.product());
    return tree;
  }

  private product(): Tree {
    let tree = this.power();
    for (let s = this.take('×', '÷'); s; s = this.take('×', '÷')) tree = sign(s as Sign, tree, this.power());
    return tree;
  }

  private power(): Tree {
    let tree = this.alone();
    for (let s = this.take('²', '³', '^'); s; s = this.take('²', '³', '^'))
      tree = sign('^', tree, s === '^' ? this.alone() : number(RAISED[s] as string));
    return tree;
  }

  private alone(): Tree {
    if (this.take('−', '-')) return sign('−', number('0'), this.power());
    if (this.take('√')) return call('sqrt', [this.alone()]);
    if (this.take('(')) return this.closed(this.sum());
    const token = this.tokens[this.at];
    if (token === undefined) throw new Unreadable();
    this.at += 1;
    if (/^\d/.test(token)) return this.unitBehind(number(token));
    if (token === 'π') return { is: 'symbol', name: 'π' };
    if (!/^[A-Za-z_]/.test(token)) throw new Unreadable();
    return this.take('(') ? this.called(token) : { is: 'symbol', name: token };
  }

  /** `360 deg` within a formula: the one number that carries a unit there. */
  private unitBehind(tree: Tree): Tree {
    return this.take('deg') ? sign('÷', sign('×', tree, { is: 'symbol', name: 'π' }), number('180')) : tree;
  }

  private closed(tree: Tree): Tree {
    if (!this.take(')')) throw new Unreadable();
    return tree;
  }

  private called(name: string): Tree {
    const of = [this.sum()];
    while (this.take(',')) of.push(this.sum());
    return this.closed(call(name, of));
  }
}

const read = new Map<string, Tree | undefined>();
/** As many formulas as all calculations have, many times over: beyond that they are read anew. */
const KEPT = 5000;

/** The right side of a formula as a tree; `undefined` where it cannot be read. */
export function treeOf(formula: string): Tree | undefined {
  const known = read.get(formula);
  if (known || read.has(formula)) return known;
  let tree: Tree | undefined;
  try {
    tree = new Reader(tokensOf(formula.slice(formula.indexOf('=') + 1))).whole();
  } catch (error) {
    if (!(error instanceof Unreadable)) throw error;
  }
  if (read.size < KEPT) read.set(formula, tree);
  return tree;
}

/** One way of reckoning. What has no value is not a number. */
export interface Reckoner<T> {
  readonly of: (text: string) => T;
  readonly pi: T;
  readonly sign: (s: Sign, a: T, b: T) => T;
  readonly call: (name: string, of: readonly T[]) => T;
}

const SIGNS: Readonly<Record<Sign, (a: number, b: number) => number>> = {
  '+': (a, b) => a + b,
  '−': (a, b) => a - b,
  '×': (a, b) => a * b,
  '÷': (a, b) => a / b,
  '^': (a, b) => a ** b,
};

/** Binary strays must not tip a rounding. */
const NUDGE = 1e-9;
const steadyCeil = (n: number): number => Math.ceil(n - NUDGE * Math.max(1, Math.abs(n)));
const steadyFloor = (n: number): number => Math.floor(n + NUDGE * Math.max(1, Math.abs(n)));

const CALLS: Readonly<Record<string, (...of: number[]) => number>> = {
  sqrt: Math.sqrt,
  ceil: steadyCeil,
  floor: steadyFloor,
  min: Math.min,
  max: Math.max,
  abs: Math.abs,
  tan: Math.tan,
  sin: Math.sin,
  cos: Math.cos,
  atan: Math.atan,
  exp: Math.exp,
  ln: Math.log,
  hypot: Math.hypot,
  cents: (n) => Math.sign(n) * (steadyFloor(Math.abs(n) * 100 + 0.5) / 100),
};

const callBinary = (name: string, of: readonly number[]): number => CALLS[name]?.(...of) ?? Number.NaN;

const LITERALS = new Map<string, number>();
/** No more literals than all formulas have. */
const MOST_LITERALS = 1000;

function literal(text: string): number {
  const n = Number(text);
  if (LITERALS.size < MOST_LITERALS) LITERALS.set(text, n);
  return n;
}

/** In binary numbers, for very many at once. */
export const BINARY: Reckoner<number> = {
  of: (text) => LITERALS.get(text) ?? literal(text),
  pi: Math.PI,
  sign: (s, a, b) => SIGNS[s](a, b),
  call: callBinary,
};

const NONE = /*#__PURE__*/ new Decimal(Number.NaN);

/** Powers of whole numbers are products; of others they are good to 24 digits. */
function power(a: Decimal, b: Decimal): Decimal {
  if (b.equals(2)) return a.times(a);
  if (b.equals(3)) return a.times(a).times(a);
  return a.isZero() || a.isNegative() ? NONE : toPower(a, b);
}

const EXACT_SIGNS: Readonly<Record<Sign, (a: Decimal, b: Decimal) => Decimal>> = {
  '+': (a, b) => a.plus(b),
  '−': (a, b) => a.minus(b),
  '×': (a, b) => a.times(b),
  '÷': (a, b) => (b.isZero() ? NONE : a.div(b)),
  '^': power,
};

const EXACT_CALLS: Readonly<Record<string, (a: Decimal, ...more: Decimal[]) => Decimal>> = {
  sqrt: (a) => (a.isNegative() ? NONE : a.sqrt()),
  ceil: ceilWhole,
  floor: floorWhole,
  min: (...of) => of.reduce((least, one) => (one.lessThan(least) ? one : least)),
  max: (...of) => of.reduce((most, one) => (one.greaterThan(most) ? one : most)),
  abs: (a) => a.abs(),
  atan: (a) => angleTo(a, ONE),
  exp: exponential,
  ln: (a) => (a.isZero() || a.isNegative() ? NONE : logarithm(a)),
  hypot: (...of) => of.reduce((sum, one) => sum.plus(one.times(one)), new Decimal(0)).sqrt(),
  cents: (a) => a.toDecimalPlaces(2, ROUND_HALF_UP),
};

/** Functions of angles have no finite value: they are good to 15 digits here. */
function callExact(name: string, of: readonly Decimal[]): Decimal {
  const exact = EXACT_CALLS[name];
  if (exact) return exact(...(of as [Decimal, ...Decimal[]]));
  const binary = callBinary(
    name,
    of.map((one) => one.toNumber()),
  );
  return Number.isFinite(binary) ? new Decimal(binary) : NONE;
}

/** In exact decimals, for what is told. */
export const EXACT: Reckoner<Decimal> = {
  of: (text) => new Decimal(text),
  pi: PI,
  sign: (s, a, b) => EXACT_SIGNS[s](a, b),
  call: callExact,
};

/** What a tree comes to, with a value for each symbol. */
export function reckoned<T>(tree: Tree, value: (symbol: string) => T, by: Reckoner<T>): T {
  switch (tree.is) {
    case 'number':
      return by.of(tree.text);
    case 'symbol':
      return tree.name === 'π' ? by.pi : value(tree.name);
    case 'sign':
      return by.sign(tree.sign, reckoned(tree.left, value, by), reckoned(tree.right, value, by));
    default:
      return by.call(
        tree.name,
        tree.of.map((one) => reckoned(one, value, by)),
      );
  }
}

/** How closely a sign binds. */
const BINDS: Readonly<Record<Sign, number>> = { '+': 1, '−': 1, '×': 2, '÷': 2, '^': 3 };

const binding = (tree: Tree): number => (tree.is === 'sign' ? BINDS[tree.sign] : 4);

/** A tree as it is written. */
export function textOf(tree: Tree): string {
  switch (tree.is) {
    case 'number':
      return tree.text;
    case 'symbol':
      return tree.name;
    case 'call':
      return `${tree.name}(${tree.of.map(textOf).join(', ')})`;
    default: {
      const own = BINDS[tree.sign];
      const within = (part: Tree, least: number): string =>
        binding(part) < least ? `(${textOf(part)})` : textOf(part);
      return `${within(tree.left, own)} ${tree.sign} ${within(tree.right, own + 1)}`;
    }
  }
}
