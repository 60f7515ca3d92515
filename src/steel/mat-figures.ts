/** A mat as it comes out: lines, spacings, crossings, ties, laps and supports. */

import { Decimal } from '../quantity/decimal';
import { constant } from '../quantity/make';
import { type Paired, paired, sameInBoth } from '../quantity/paired';
import { canonicalValue, type Quantity } from '../quantity/quantity';
import { wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { type AnyBarSize, diameterOf } from './bars';
import { metersLike } from './common';
import { type LineRule, type PlacedLines, supportsUnder } from './mat';
import { closeBars } from './mat-cautions';
import { bounded, type Ground, type Laid } from './mat-ground';
import type { MatFigures, MatLines } from './rebar-types';

type Length = Quantity<'length'>;
type Count = Quantity<'count'>;

const FOOT = /*#__PURE__*/ paired('length', '1 ft', '300 mm');
const CLEAR = /*#__PURE__*/ paired('length', '1 in', '25 mm');
const ONE = constant(() => wholeNumber(1));

const meters = (q: Length): number => canonicalValue(q).toNumber();

/** Exact where the direction is along an axis, else to a millionth of a meter. */
function evenSpacingOf(placed: PlacedLines, degrees: number, { rings, cover }: Ground): Length {
  const gaps = placed.lines - 1;
  if (gaps <= 0) return metersLike(new Decimal(0), cover);
  if (!Number.isInteger(degrees / 90)) return metersLike(new Decimal(placed.evenSpacing.toFixed(6)), cover);
  const across = rings.outer.map(({ x, y }) => (Number.isInteger(degrees / 180) ? y : x));
  const field = Decimal.max(...across)
    .minus(Decimal.min(...across))
    .minus(canonicalValue(cover).times(2));
  return metersLike(field.div(gaps), cover);
}

/** Lines at a spacing, along an axis, where the distance that they spread over is exact. */
function noteLines(even: Length, lines: Count, spacing: Length | undefined, rule: LineRule, pad: Pad): void {
  if (!spacing || !Number.isInteger(rule.degrees / 90)) return;
  const w = even.times(lines.minus(ONE()));
  const what = 'lines over a distance w less the covers';
  pad.step(what, 'n = ceil(w ÷ s) + 1', { w, s: spacing }, lines);
  if (lines.greaterThan(ONE())) pad.step('spaced evenly', 'e = w ÷ (n − 1)', { w, n: lines }, even);
}

interface Way {
  readonly placed: PlacedLines;
  readonly rule: LineRule;
  readonly bar: AnyBarSize;
  readonly spacing: Length | undefined;
}

/** What lies between two bars, and how thick they are. */
export interface Gap {
  readonly clear: Length;
  readonly d: Length;
}

/** The stone must pass between two bars; nothing that is named 1 in or 25 mm is too close. */
export function checkClear(gaps: readonly Gap[], pad: Pad): void {
  const close = gaps.filter(({ clear, d }) => leastClear(d).undercutBy(clear));
  const [worst] = [...close].sort((a, b) => a.clear.compareTo(b.clear));
  if (worst) pad.caution(closeBars(leastClear(worst.d).like(worst.clear), worst.clear));
}

const leastClear = (d: Length): Paired<'length'> =>
  d.greaterThan(CLEAR.as('customary')) ? sameInBoth(d) : CLEAR;

function linesFigure({ placed, rule, bar, spacing }: Way, ground: Ground, pad: Pad): MatLines {
  const even = evenSpacingOf(placed, rule.degrees, ground);
  const lines = wholeNumber(placed.lines);
  noteLines(even, lines, spacing, rule, pad);
  const clear = placed.lines > 1 ? even.minus(diameterOf(bar)) : even;
  return { lines, evenSpacing: even, clearSpacing: clear };
}

/** Where every line crosses every other, as over a rectangle, the product tells it. */
function crossingsOf(i: Count, m: Count, n: Count, pad: Pad): Count {
  if (canonicalValue(m).times(canonicalValue(n)).equals(canonicalValue(i)))
    pad.step('crossings', 'i = m × n', { m, n }, i);
  return i;
}

/** Every crossing at a foot or more both ways, every other one below. */
function tiesOf(crossings: Count, along: MatLines, across: MatLines, pad: Pad): Count {
  const foot = FOOT.like(along.evenSpacing);
  const wide = !along.evenSpacing.lessThan(foot) && !across.evenSpacing.lessThan(foot);
  if (wide) return crossings;
  const t = wholeNumber(Math.ceil(crossings.toNumber('each') / 2));
  return pad.step('ties, at every other crossing', 't = ceil(i ÷ 2)', { i: crossings }, t);
}

/** A mat as it comes out. */
export function matFigures({ mat, rule, placed }: Laid, apart: Length, ground: Ground, pad: Pad): MatFigures {
  const along = linesFigure(
    { placed: placed.along, rule: rule.along, bar: mat.bar, spacing: mat.spacing },
    ground,
    pad,
  );
  const across = linesFigure(
    {
      placed: placed.across,
      rule: rule.across,
      bar: mat.barAcross ?? mat.bar,
      spacing: mat.linesAcross ? undefined : (mat.spacingAcross ?? mat.spacing),
    },
    ground,
    pad,
  );
  const crossings = crossingsOf(wholeNumber(placed.crossings), along.lines, across.lines, pad);
  const supports = bounded('supports', () =>
    supportsUnder(rule, meters(apart), [rule.along.degrees, rule.across.degrees]),
  );
  return {
    layer: mat.layer,
    along,
    across,
    crossings,
    ties: tiesOf(crossings, along, across, pad),
    laps: wholeNumber(placed.laps),
    lapsInLine: wholeNumber(placed.lapsInLine),
    supports: wholeNumber(supports),
  };
}
