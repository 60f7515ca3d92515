/** What bundles carry of the decimal library: what is called, by whatever is called, and no more. */
import { expect, it } from 'vitest';
import { leanDecimal } from '../scripts/lean-decimal';

const LIBRARY = `
var P = {};
P.absolute = P.abs = function () { return helper(this); };
P.sinh = function () { return other(this).abs(); }; // P.abs and helper are named here
P.times = P.mul = function (y) { return y; };
P.toString = function () { return ''; };
function helper(x) { return x.times(2); }
function other(x) { return x; }
function clone() {
  function Decimal() {}
  Decimal.sinh = sinh;
  Decimal.abs = abs;
  return Decimal;
}
function abs(x) { return new this(x).abs(); }
function sinh(x) { return new this(x).sinh(); }
export var Decimal = clone();
`;

it.each([
  ['value.abs()', ['absolute', 'helper', 'times', 'toString', 'function abs', 'Decimal.abs']],
  ['Math.sinh(1)', ['toString']],
  ['Math.abs(1) + value.sinh()', ['sinh', 'other', 'absolute', 'helper', 'times', 'toString']],
  ['value.mul(value)', ['times', 'toString']],
])('keeps for %s what it needs', (user, kept) => {
  const lean = leanDecimal(LIBRARY, [user]);
  for (const name of ['absolute', 'P.sinh', 'times', 'toString', 'function helper', 'function other'])
    expect([name, lean.includes(name)]).toEqual([name, kept.some((k) => name.endsWith(k))]);
  expect(lean).toContain('function clone');
});

it('heeds neither examples in comments nor what is of binary numbers', () => {
  const lean = leanDecimal(LIBRARY, ['/**\n * value.abs(); // example\n */\n// value.abs()\nMath.abs(1);']);
  for (const name of ['absolute', 'function helper', 'function abs'])
    expect([name, lean.includes(name)]).toEqual([name, false]);
});

it('leaves out what is never called though another has its name', () => {
  const written = { owners: ['P', 'Decimal'], never: ['abs'] };
  expect(leanDecimal(LIBRARY, ['map.abs(1)'], written)).not.toContain('P.absolute');
  expect(leanDecimal(LIBRARY, ['map.abs(1)'])).toContain('P.absolute');
});

it('leaves out methods of classes that nobody calls, and keeps what loops call', () => {
  const tree = `
class Tree {
  constructor() { this.clear(); }
  add(x) { return this.splay(x); }
  splay(x) { return x; }
  union(x) { return this.merge(x); }
  merge(x) { return x; }
  clear() {}
  next() { return {}; }
}
export { Tree };
`;
  const lean = leanDecimal(tree, ['tree.add(1)'], { owners: [] });
  for (const name of ['add', 'splay', 'clear', 'next', 'union', 'merge'])
    expect([name, new RegExp(`^ *${name}\\(`, 'm').test(lean)]).toEqual([
      name,
      !['union', 'merge'].includes(name),
    ]);
});
