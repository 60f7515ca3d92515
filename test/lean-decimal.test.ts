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
