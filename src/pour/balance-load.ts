/**
 * The last load: how much to call for, when at the latest, and how far off that may be.
 *
 * What was used on what is done goes on over what is left. Used `U` is what the tickets bring less what is in the
 * truck. Where the rest is probed, `N = Ar × tr × U ÷ M` with the volume `M` measured in place; where it is not, its
 * base is taken to run on as it did, `N = Ar × tp × U ÷ (Ad × td)` with planned thicknesses. Called for is `N` less
 * what is on hand.
 *
 * Error model, each within its bound 19 times out of 20 and independent of the others: every area and every measured
 * volume within `a` of its size; a single probe within `h` of the mean depth around it, `n` of them within `h ÷ √(n)`;
 * the mean depth of a rest that is not probed within `h` of what that of the rest done lets expect; the yield of the
 * rest within `y` of that so far. Squares of shares add up. Where probes scatter more than `h` says, twice their
 * standard deviation counts. `npm run balance` makes pours of that kind and counts how many the range holds.
 */

import { Decimal } from '../quantity/decimal';
import * as sharedFaults from '../quantity/faults';
import { constant, ratio } from '../quantity/make';
import { paired } from '../quantity/paired';
import { canonicalValue, type Quantity, quantityOf } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import { alkali } from '../reckoning/cautions';
import { wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE } from '../reckoning/source';
import { total } from '../reckoning/whole';
import * as own from './balance-cautions';
import { type BalanceLoadInput, type BalanceParsed, door } from './balance-input';
import { belowMinimumLoad } from './cautions';
import { type ClockTime, clockTime } from './saw-clock';
import { NRMCA_YIELD } from './sources';

/** Figures of {@link balanceLoad}. */
export interface BalanceLoadFigures {
  /** Used so far. */
  readonly used: Quantity<'volume'>;
  /** Volume in place, by measure, by probes, or as planned. */
  readonly measured: Quantity<'volume'>;
  /** Used above what is measured: waste, spillage, yield. */
  readonly waste: Quantity<'ratio'>;
  /** Measured above what was planned: the base, where it was measured. */
  readonly baseOverrun?: Quantity<'ratio'>;
  /** Used above what was planned. */
  readonly overrun: Quantity<'ratio'>;
  /** For what is left, as best known. */
  readonly needed: Quantity<'volume'>;
  /** On hand: in the truck and on its way. */
  readonly onHand: Quantity<'volume'>;
  /** To call for, as best known; nothing where enough is on hand. */
  readonly expected: Quantity<'volume'>;
  /** To call for at the least. */
  readonly low: Quantity<'volume'>;
  /** To call for at the most. */
  readonly high: Quantity<'volume'>;
  /** How far off the need may be, either way. */
  readonly within: Quantity<'ratio'>;
  /** What to call for: the most, in whole steps of the order. */
  readonly call: Quantity<'volume'>;
  /** Left over of that and of what is on hand, as best known. */
  readonly leftOver: Quantity<'volume'>;
  /** What is best known, rounded down to whole steps. */
  readonly roundedDown: Quantity<'volume'>;
  /** What that may be short by. */
  readonly shortIfDown: Quantity<'volume'>;
  /** The area that then has no concrete. */
  readonly bareIfDown: Quantity<'area'>;
  /** How long what is on hand lasts, where rate and lead time are given. */
  readonly lasts?: Quantity<'time'>;
  /** Time left until the call, where anything is to be called for; below zero where it is late. */
  readonly callIn?: Quantity<'time'>;
  /** The latest call by the clock, where the time of day is given and it is not late. */
  readonly callBy?: ClockTime;
  /** What to do. */
  readonly verdict: 'call' | 'call now' | 'may be enough' | 'enough on hand';
}

type Volume = Quantity<'volume'>;
type Length = Quantity<'length'>;
type Ratio = Quantity<'ratio'>;
type Time = Quantity<'time'>;

const TWO_PERCENT = constant(() => ratio('2%'));
const HALF_INCH = /*#__PURE__*/ paired('length', '1/2 in', '12 mm');
const ONE = constant(() => ratio('1:1'));
const NONE = constant(() => ratio('0%'));
/** More than this goes astray nowhere, ground that gives way included. */
const MOST_WASTE = constant(() => ratio('20%'));

function within(name: 'areaWithin' | 'yieldWithin', { [name]: given }: BalanceParsed, pad: Pad): Ratio {
  if (given) return given;
  pad.assume({
    name,
    value: TWO_PERCENT(),
    because:
      name === 'areaWithin'
        ? 'an area taped on a day of pouring, nineteen times out of twenty'
        : 'moisture and air of the next loads, nineteen times out of twenty',
    override: name === 'areaWithin' ? 'Give areaWithin' : 'Give yieldWithin',
    source: COMMON_PRACTICE,
  });
  return TWO_PERCENT();
}

function probeWithin({ probeWithin: given }: BalanceParsed, pad: Pad): Length {
  if (given) return given;
  pad.assume({
    name: 'probeWithin',
    value: HALF_INCH,
    because: 'a graded base and a reading of it, nineteen times out of twenty',
    override: 'Give probeWithin as uneven as this base is',
    source: COMMON_PRACTICE,
  });
  return HALF_INCH.as(pad.system);
}

function meanOf(what: string, symbol: string, probes: readonly Length[], pad: Pad): Length {
  const sum = total(what, symbol, probes, pad);
  const n = wholeNumber(probes.length);
  return pad.step('mean depth', 't = s ÷ n', { s: sum, n }, sum.over(n));
}

/** Twice the standard deviation of the probes, where there are enough of them to tell. */
function scatterOf(probes: readonly Length[], mean: Length, pad: Pad): Length | undefined {
  if (probes.length < 3) return undefined;
  const squares = probes.map((p) => canonicalValue(p.minus(mean)).pow(2));
  const variance = Decimal.sum(...squares).div(probes.length - 1);
  return quantityOf('length', variance.sqrt().times(2), pad.system);
}

/** How far the mean of probes may be off, as a share of it. */
function meanWithin(probes: readonly Length[], t: Length, h: Length, pad: Pad): Ratio {
  const scatter = scatterOf(probes, t, pad)?.in(h.shownIn ?? h.unit);
  const wide = scatter?.greaterThan(h);
  if (scatter && wide) pad.caution(own.probesScatter(h, scatter));
  const s = scatter && wide ? scatter : h;
  const n = wholeNumber(probes.length);
  const root = ratio(`${new Decimal(probes.length).sqrt().toFixed(40)}:1`);
  return pad.step('mean depth within', 'd = s ÷ (t × √(n))', { s, t, n }, s.over(t.times(root)).in('%'));
}

interface Measured {
  readonly volume: Volume;
  /** How far the depth or the volume may be off, beside the area. */
  readonly off: Ratio;
  /** True where it was measured, and not only planned. */
  readonly real: boolean;
  /** By area and depth. */
  readonly byArea: boolean;
}

/** What is in place. */
function measuredOf({ done, left }: BalanceParsed, td: Length, h: Length, pad: Pad): Measured {
  const { area: A, probes, volume } = done;
  if (volume && probes) refuse('done.volume', sharedFaults.giveOneOf(['volume', 'probes']));
  if (volume) return { volume, off: NONE(), real: true, byArea: false };
  if (!probes) {
    if (left.probes)
      refuse(
        'done.probes',
        sharedFaults.missing('probes', ['a list such as ["4 1/4 in"]', 'a list such as ["105 mm"]']),
      );
    const planned = pad.step('in place, as planned', 'M = A × t', { A, t: td }, A.times(td));
    return { volume: planned, off: h.over(td), real: false, byArea: true };
  }
  const t = meanOf('probes of what is done', 's', probes, pad);
  const off = meanWithin(probes, t, h, pad);
  return { volume: pad.step('in place', 'M = A × t', { A, t }, A.times(t)), off, real: true, byArea: true };
}

const root = (shares: readonly Ratio[]): Ratio =>
  ratio(
    `${Decimal.sum(...shares.map((s) => canonicalValue(s).pow(2)))
      .sqrt()
      .toFixed(40)}:1`,
  ).in('%');

interface Need {
  readonly needed: Volume;
  readonly within: Ratio;
}

/** What the rest takes, and how far that may be off. */
function needOf(
  input: BalanceParsed,
  U: Volume,
  M: Measured,
  td: Length,
  { a, h, y }: { readonly a: Ratio; readonly h: Length; readonly y: Ratio },
  pad: Pad,
): Need {
  const { done, left } = input;
  const { area: A, thickness, probes } = left;
  if (!probes) {
    const B = done.area;
    const N = A.times(thickness).times(U.over(B.times(td)));
    const needed = pad.step(
      'needed for the rest, its base as it was',
      'N = A × t × U ÷ (B × p)',
      { A, t: thickness, U, B, p: td },
      N,
    );
    const d = pad.step(
      'depth of the rest within',
      'd = h ÷ t',
      { h, t: thickness },
      h.over(thickness).in('%'),
    );
    const r = pad.step('needed within', 'r = √(a² + a² + d² + y²)', { a, d, y }, root([a, a, d, y]));
    return { needed, within: r };
  }
  const t = meanOf('depths of what is left', 's', probes, pad);
  const d = meanWithin(probes, t, h, pad);
  const { volume: V, off: e } = M;
  const N = A.times(t).times(U.over(V));
  const needed = pad.step('needed for the rest', 'N = A × t × U ÷ M', { A, t, U, M: V }, N);
  const r = pad.step('needed within', 'r = √(a² + a² + d² + e² + y²)', { a, d, e, y }, root([a, a, d, e, y]));
  return { needed, within: r };
}

/** Whether the tickets can be right. */
function heedWaste(U: Volume, M: Measured, a: Ratio, y: Ratio, waste: Ratio, pad: Pad): void {
  const off = root([a, M.off, y]);
  const used = U.over(M.volume);
  if (used.times(ONE().plus(off)).lessThan(ONE())) pad.caution(own.usedTooLittle(NONE(), waste));
  else if (used.greaterThan(ONE().plus(MOST_WASTE()).times(ONE().plus(off))))
    pad.caution(own.usedTooMuch(MOST_WASTE(), waste));
}

type Timing = Pick<BalanceLoadFigures, 'lasts' | 'callIn' | 'callBy'>;

/** How long what is on hand lasts, and when the call is due where there is one. */
function timing(
  { placingRate: R, leadTime: l, now }: BalanceParsed,
  H: Volume,
  called: boolean,
  pad: Pad,
): Timing {
  if (!R && !l) {
    if (now) refuse('leadTime', sharedFaults.missing('leadTime', '"60 min"'));
    return {};
  }
  if (!R) return refuse('placingRate', sharedFaults.missing('placingRate', ['"20 yd3/h"', '"15 m3/h"']));
  if (!l) return refuse('leadTime', sharedFaults.missing('leadTime', '"60 min"'));
  const T = pad.step('what is on hand lasts', 'T = H ÷ R', { H, R }, H.over(R).in('min'));
  if (!called) return { lasts: T };
  const callIn = pad.step('until the call', 'c = T − l', { T, l }, T.minus(l));
  return {
    lasts: T,
    callIn,
    ...(now && callIn.sign() >= 0 ? { callBy: clockTime(now.plus(callIn)) } : {}),
  };
}

/** By which share one is above another. */
const above = (one: Volume, other: Volume): Ratio => one.over(other).minus(ONE()).in('%');

/** No less than nothing. */
const some = (v: Volume): Volume => (v.sign() < 0 ? v.minus(v) : v);

function verdictOf(expected: Volume, high: Volume, callIn: Time | undefined): BalanceLoadFigures['verdict'] {
  if (high.sign() <= 0) return 'enough on hand';
  if (expected.sign() <= 0) return 'may be enough';
  return callIn && callIn.sign() < 0 ? 'call now' : 'call';
}

/** A call that comes too late, whether it is certain to be made or not. */
function heedLate(
  { lasts, callIn }: Timing,
  lead: Time | undefined,
  verdict: BalanceLoadFigures['verdict'],
  pad: Pad,
): void {
  if (!lasts || !lead || !callIn || callIn.sign() >= 0) return;
  const late = verdict === 'may be enough' ? own.perhapsLate : own.calledLate;
  pad.caution(late(lasts, lead));
}

function plannedOf({ done, left }: BalanceParsed, pad: Pad): Length {
  if (done.thickness) return done.thickness;
  pad.assume({
    name: 'done.thickness',
    value: { reckoned: left.thickness },
    because: 'planned as the rest is',
    override: 'Give done.thickness',
    source: COMMON_PRACTICE,
  });
  return left.thickness;
}

function usedOf({ tickets, inTruck: k }: BalanceParsed, pad: Pad): Volume {
  const S = total('tickets', 'S', tickets, pad);
  if (!k) return S;
  if (!k.lessThan(S)) refuse('inTruck', sharedFaults.doesNotFit('inTruck', 'tickets'));
  return pad.step('used', 'U = S − k', { S, k }, S.minus(k));
}

/** What is in the truck and on its way. */
function onHandOf(k: Volume, v: Volume, pad: Pad): Volume {
  if (k.sign() === 0 || v.sign() === 0) return k.plus(v);
  return pad.step('on hand', 'H = k + v', { k, v }, k.plus(v));
}

interface Called {
  /** To call for as best known, and at the most. */
  readonly C: Volume;
  readonly G: Volume;
  readonly N: Volume;
}

/** What the steps of the order make of it: the call, and what rounding down risks. */
function inSteps(
  { increment: i, left }: BalanceParsed,
  { C, G, N }: Called,
  pad: Pad,
): Pick<BalanceLoadFigures, 'call' | 'leftOver' | 'roundedDown' | 'shortIfDown' | 'bareIfDown'> {
  const high = some(G);
  const short = G.sign() > 0;
  const Q = pad.step(
    'to call, in whole steps',
    short ? 'Q = ceil(G ÷ i) × i' : 'Q = 0 × i',
    short ? { G, i } : { i },
    high.upTo(i),
  );
  const E = pad.step('left over then', 'E = Q − C', { Q, C }, Q.minus(C));
  const needed = C.sign() > 0;
  const D = pad.step(
    'rounded down',
    needed ? 'D = floor(C ÷ i) × i' : 'D = 0 × i',
    needed ? { C, i } : { i },
    some(C).downTo(i),
  );
  const X = pad.step(
    'short then by up to',
    short ? 'X = G − D' : 'X = 0 × i',
    short ? { G, D } : { i },
    high.minus(D),
  );
  const A = left.area;
  const F = pad.step('area without concrete then', 'F = A × X ÷ N', { A, X, N }, A.times(X.over(N)));
  return { call: Q, leftOver: E, roundedDown: D, shortIfDown: X, bareIfDown: F };
}

function reckon(input: BalanceParsed, pad: Pad): BalanceLoadFigures {
  const { increment: i, minimumLoad, done, left, inTruck, onTheWay } = input;
  const a = within('areaWithin', input, pad);
  const y = within('yieldWithin', input, pad);
  const h = probeWithin(input, pad);
  const inUnit = (v: Volume): Volume => v.in(i.shownIn ?? i.unit);
  const U = usedOf(input, pad);
  const td = plannedOf(input, pad);
  const M = measuredOf(input, td, h, pad);
  const P = done.area.times(td);
  const waste = pad.step(
    'used above what is in place',
    'w = U ÷ M − 1',
    { U, M: M.volume },
    above(U, M.volume),
  );
  const planned = { B: done.area, p: td };
  const overrun = M.real
    ? pad.step('used above what was planned', 'o = U ÷ (B × p) − 1', { U, ...planned }, above(U, P))
    : waste;
  const { volume: placed } = M;
  const base = M.real
    ? pad.step(
        'in place above what was planned',
        'b = M ÷ (B × p) − 1',
        { M: placed, ...planned },
        above(placed, P),
      )
    : undefined;
  const { needed, within: r } = needOf(input, U, M, td, { a, h, y }, pad);
  const N = inUnit(needed);
  const none = N.minus(N);
  const H = onHandOf(inUnit(inTruck ?? none), inUnit(onTheWay ?? none), pad);
  const expected = pad.step('to call for', 'C = N − H', { N, H }, N.minus(H));
  const L = pad.step('at the least', 'L = N × (1 − r) − H', { N, r, H }, N.minus(N.times(r)).minus(H));
  const G = pad.step('at the most', 'G = N × (1 + r) − H', { N, r, H }, N.plus(N.times(r)).minus(H));
  const [low, high] = [some(L), some(G)];
  const steps = inSteps(input, { C: expected, G, N }, pad);
  const { call } = steps;
  const when = timing(input, H, call.sign() > 0, pad);
  const verdict = verdictOf(expected, G, when.callIn);
  heedWaste(U, M, a, y, waste, pad);
  const spread = high.minus(low);
  if (!left.probes && spread.greaterThan(i)) pad.caution(own.restNotProbed(i, spread));
  heedLate(when, input.leadTime, verdict, pad);
  if (minimumLoad && call.sign() > 0 && call.lessThan(minimumLoad))
    pad.caution(belowMinimumLoad(minimumLoad, call));
  pad.caution(alkali);
  return {
    used: U,
    measured: M.volume,
    waste,
    ...(base ? { baseOverrun: base } : {}),
    overrun,
    needed: N,
    onHand: H,
    expected: some(expected),
    low,
    high,
    within: r,
    ...steps,
    ...when,
    verdict,
  };
}

/**
 * The last load: how much to call for, with low and high, when at the latest, and what rounding down risks.
 *
 * @param input - tickets; what is done with its probes or volume; what is left; steps of the order, and rate and lead
 * time where the time of the call is wanted
 * @returns overrun so far, what to call for from low to high, what the step of the order does, the latest call
 * @throws {InputError} `missing`; `give-one-of` volume and probes of what is done; `does-not-fit` for more in the truck
 * than on the tickets; quantities that cannot be read or are not greater than zero
 * @source proportion; the error model is in the docs; National Ready Mixed Concrete Association, CIP 8, on measuring
 * what is left
 * @example
 * ```ts
 * import { balanceLoad } from 'flatwork-reckoner';
 *
 * const { figures } = balanceLoad({
 *   tickets: ['10 yd3', '10 yd3'],
 *   done: { area: '1440 ft2', probes: ['4 1/4 in', '4 in', '4 1/2 in', '4 1/4 in'] },
 *   left: { area: '360 ft2', thickness: '4 in', probes: ['4 1/4 in', '4 1/2 in', '4 in', '4 1/4 in'] },
 *   increment: '0.25 yd3',
 * });
 * figures.waste.format(); // '5.88%'
 * figures.expected.format(); // '5.00 yd3'
 * figures.call.format(); // '5.50 yd3'
 * ```
 */
export const balanceLoad: Calculation<BalanceLoadInput, BalanceLoadFigures> = /*#__PURE__*/ define({
  id: 'balance-load',
  title: 'The last load',
  version: 1,
  sources: [NRMCA_YIELD],
  input: door,
  reckon,
});
