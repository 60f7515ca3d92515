/**
 * Mutants that change nothing: whatever comes in, the answer is the same. They are drawn by no sample.
 *
 * Each is named by the file, a stretch of its line, what is changed and what to, with the reason why no
 * test can tell. "Only the time differs" is such a reason; "nothing here needs it" is none: that is code
 * to be taken out.
 */
import type { Mutant } from './mutants';

export interface Equivalent {
  readonly file: string;
  /** Part of the line on which the change begins. */
  readonly line: string;
  /** What is changed: the text, or how it begins. */
  readonly from: string;
  readonly to: readonly string[];
  readonly why: string;
}

const TIME = 'Nought times or plus a number is the same reckoned or not: only the time differs.';
const JUST_ON =
  'A tolerance is a power of ten between what rounding makes and what counts: just on it either answer is right.';
const START =
  'The exact search ends at the same least from any corner and proves it; to start at the one found roughly only saves time.';
const WAY =
  'Any edge that leads down will do: which is taken changes the way and the time, not the end, which is proved.';
const BOUND =
  'The bound on the steps is never met: it keeps a search that did not end from running on for ever.';
const SIDES = 'A side is 1 or -1, never 0.';
const PAIRS =
  'To try the pairs first takes time and tells which of several conflicts is named: whichever it is, it is one.';
const ONE_PAST = 'One past the end there is nothing to find.';
const NOUGHT = 'Nought turned about is nought.';
const ON_LEVEL =
  'Sides are settled from the point; on its level a row may count to either, as its kink then lies ahead at nought.';
const ANY_STOP = 'Of rows that are alike in this any will do: the search ends at the same point.';
const KEPT = 'What is kept is what would be reckoned again: only the time differs.';
const EXACTLY = 'Where binary numbers do not tell, sides are compared exactly: only the time differs.';

/** Part of a line, how what is changed begins, and all that it is changed to. */
type Change = readonly [line: string, from: string, ...to: string[]];

/** Why changes of one kind tell nothing, and which they are. */
type Group = readonly [why: string, ...changes: Change[]];

const inFile = (file: string, groups: readonly Group[]): Equivalent[] =>
  groups.flatMap(([why, ...changes]) =>
    changes.map(([line, from, ...to]) => ({ file, line, from, to, why })),
  );

export const EQUIVALENT: readonly Equivalent[] = [
  ...inFile('src/quantity/decimal.ts', [
    [
      'The root is as good by the long way: where the quick one begins only the time differs.',
      ['  if (!(seed > 1e-100', '>', '>='],
      ['  return lacks === 0', 'lacks === 0', 'false'],
    ],
  ]),
  ...inFile('src/quantity/exact.ts', [
    [
      'A unit asks for a divisor in the middle of neither way: both find the same remainder.',
      ['  if (divisor < MIDDLE)', '<', '<='],
    ],
  ]),
  ...inFile('src/solve/arithmetic.ts', [
    [
      TIME,
      ['const product =', 'a.isZero()', 'false'],
      ['const product =', 'b.isZero()', 'false'],
      ['  plus: (a, b) => (a.isZero()', 'a.isZero()', 'false'],
      ['  plus: (a, b) => (a.isZero()', 'b.isZero()', 'false'],
      ['  less: (a, b, c) => (b.isZero()', 'b.isZero()', 'false'],
      ['  less: (a, b, c) => (b.isZero()', '||', '&&'],
      ['  over: (a, b) => (a.isZero()', 'a.isZero()', 'false'],
    ],
    [
      JUST_ON,
      ['sign: (a) => (a > BINARY_STRAY', '>', '>='],
      ['sign: (a) => (a > BINARY_STRAY', '<', '<='],
      ['a.e < -STRAY', '<', '<='],
    ],
  ]),
  ...inFile('src/solve/conflict.ts', [
    [JUST_ON, ['> BROKEN', '>', '>=']],
    [BOUND, ['?.heavy ?? rows.keys()', '?.', '.']],
    [
      'All rows conflict where some of them do; one after the other is left out of either.',
      ['?.heavy ?? rows.keys()', '??', '&&'],
    ],
    [
      PAIRS,
      ['const tried = rows.length <= PAIRS_TRIED', 'rows.length', 'true'],
      ['const tried = rows.length <= PAIRS_TRIED', '<=', '<'],
    ],
    [ONE_PAST, ['for (let i = 0; i < tried; i += 1) {', '<', '<=']],
  ]),
  ...inFile('src/solve/equations.ts', [
    [
      'Of weights of one size any serves to take an unknown out by.',
      ['sum.order(here, size) > 0', '>', '>='],
    ],
    [NOUGHT, ['sum.order(a, sum.zero) < 0', '<', '<=']],
    [
      'What is left at the pivot is a stray of the last digit, which nothing counts.',
      ['k === pivot ? sum.zero', 'k === pivot', 'false'],
    ],
    [
      'As many as there are unknowns decide all: the rest hang on them and are passed over, only later.',
      ['if (kept.length === unknowns) break;', 'kept.length', 'false'],
    ],
  ]),
  ...inFile('src/solve/kinks.ts', [
    [
      START,
      ['const size = sum.order(w, sum.zero) < 0', 'sum.order(w, sum.zero) < 0', 'false'],
      ['const size = sum.order(w, sum.zero) < 0', '<', '<=', '>='],
      ['sum.order(size, most) > 0) [best, most] = [j, size]', '&&', '||'],
      ['sum.order(size, most) > 0) [best, most] = [j, size]', '>', '>=', '<='],
      ['  rough.run(STEPS * (unknowns + rows.length))', '*', '/'],
      ['  rough.run(STEPS * (unknowns + rows.length))', '+', '-'],
      ['gather(wanted', '{', '{}'],
      ['for (const row of wanted) {', '{', '{}'],
      ['for (const j of open) {', '{', '{}'],
      ['const size = sum.order(w, sum.zero) < 0', 'sum.order(w, sum.zero) < 0', 'true'],
      ['sum.order(size, most) > 0) [best, most] = [j, size]', 'sum.sign(size) > 0 &&', 'false'],
      ['if (best === -1) continue;', 'best === -1', 'true', 'false'],
      ['if (best === -1) continue;', '===', '!=='],
    ],
    [
      SIDES,
      ['const up = (this.sides[row] as Side) > 0', '>', '>='],
      ['(this.sides[row] as Side) > 0 ? [...above]', '>', '>='],
      ['const heading = sum.sign(rise) * way', '*', '/'],
      ['const at = way > 0 ?', '>', '>='],
    ],
    [
      TIME,
      ['if (sum.order(e, sum.zero) === 0) continue;', 'sum.order(e', 'false'],
      ['if (sum.order(c, sum.zero) === 0) return;', 'sum.order(c', 'false'],
    ],
    [
      WAY,
      ['return this.signOf(a.map((c, p) => this.sum.less(c, b[p]', 'this.sum.less', 'undefined'],
      ['return this.signOf(a.map((c, p) => this.sum.less(c, b[p]', '<', '<=', '>='],
      ['if (better) best = { j, way, rate };', 'better', 'true'],
      ['lessThan(a: readonly T[]', '{', '{}'],
      ['const better = first', 'first', 'true', 'false'],
      ['sum.order(a.at, b.at) || a.row - b.row', '-', '+'],
      ['this.step(k > steps / 2)', '>', '<='],
    ],
    [
      BOUND,
      ['? !best || (this.meeting[j] as number) <', '!best', '(best)'],
      ['? !best || (this.meeting[j] as number) <', '<', '<=', '>='],
      ['for (let k = 0; k < steps; k += 1) if', '+=', '-='],
      ['for (let k = 0; k < steps; k += 1) if', '<', '<='],
      ['this.step(k > steps / 2)', '>', '>='],
      ['this.step(k > steps / 2)', '/', '*'],
      ['    return false;', 'false', 'true'],
      ['? !best || (this.meeting[j] as number) <', '||', '&&'],
      ['if (!exact.run(STEPS *', '*', '/'],
    ],
    ['Nought in place of nought is the same.', ['at: sum.order(at, sum.zero) < 0', '<', '<=']],
    [
      'The sides are settled anew at the end of the step; on its level a row may count to either, as its kink then lies ahead at nought.',
      ['this.sides[row] = -(this.sides[row] as Side) as Side;', '-(this', '((this.sides[row] as Side))'],
    ],
    [
      'No cost is less than nothing, so no edge leads down for ever; it ends a search that strays have misled.',
      ['if (entering === undefined) return false;', 'false', 'true'],
      ['if (entering === undefined) return false;', 'entering === undefined', 'false'],
    ],
    ['Nought costs nothing on either side.', ['(over < 0 ? below : above)', '<', '<=']],
    [
      ON_LEVEL,
      ['this.sides = [...start.sides];', '[...start.sides]', '[]'],
      ['sides: all.map((): Side => 1) });', '1', 'undefined'],
      ['const sides = all.map((): Side => 1);', '1', 'undefined'],
    ],
    ['There is a row wherever there is an unknown: its pin.', ['this.places = rows[0]?.below', '?.', '.']],
    [
      'A row that meets here lies on its level and rises along its own edge only: to look at it takes time and changes nothing.',
      ['if (this.among[row]) continue;', 'this.among[row]', 'false'],
    ],
    [
      'It keeps strays of rounding from the order of the kinks, which lie at nought or ahead.',
      ['at: sum.order(at, sum.zero) < 0', 'sum.order(at', 'false'],
    ],
    [NOUGHT, ['weight: sum.sign(rise) < 0', '<', '<=']],
    [
      'To stop at the first kink in place of the last that leads down takes more steps to the same end.',
      ['if (this.signOf(rate) >= 0) {', 'this.signOf(rate) >= 0', 'true'],
    ],
    [
      'A pin costs nothing and only has a seat: what it measures tells where the exact search starts, not where it ends.',
      ['return { at: [i], weights: [ONE], level: NIL', '[i]', '[]'],
    ],
  ]),
  ...inFile('src/solve/smallest.ts', [
    [JUST_ON, ['if (rise >= -STRAY) return;', '>=', '>']],
    [
      BOUND,
      ['  return [...meeting];', '[...meeting]', '[]'],
      ['for (let tries = 0; tries < most; tries += 1) {', '<', '<='],
      ['for (let tries = 0; tries < most; tries += 1) {', '+=', '-='],
    ],
    [
      ANY_STOP,
      ['if (room < far) [far, by] = [room, k];', '<', '<='],
      ['if (against > most) [most, at] = [against, k];', '>', '>='],
    ],
    [
      'With no row to let go the same rows meet at every further step: only the time differs.',
      ['if (loose === -1) return held;', 'loose === -1', 'false'],
    ],
    [
      'Where only one point is as good the search comes to it: only the time differs.',
      ['if (least.only) return least.values;', 'least.only', 'false'],
    ],
  ]),
  ...inFile('src/geometry/cells.ts', [
    [
      JUST_ON,
      ['if (twice <= NO_AREA * size)', '<=', '<'],
      ['return Math.abs(circle) <= ON_CIRCLE', '<=', '<'],
    ],
    [ONE_PAST, ['for (let e = 0; e < inner.length; e += 1) {', '<', '<=']],
  ]),
  ...inFile('src/outline/curved.ts', [[KEPT, ['if (known) return known;', 'known', 'false']]]),
  ...inFile('src/geometry/arc.ts', [
    [
      SIDES,
      ['const angle = Decimal.atan2(c.times(sign)', 'times', 'dividedBy'],
      ['const middle = Decimal.atan2(ux.times(-side)', 'times', 'dividedBy'],
    ],
  ]),
  ...inFile('src/geometry/crossings.ts', [
    [KEPT, ['if (known) return known;', 'known', 'false']],
    [
      EXACTLY,
      ['return cross > bound ? 1', 'cross > bound', 'false'],
      ['return cross > bound ? 1', 'cross < -bound', 'false'],
    ],
    [
      JUST_ON,
      ['return cross > bound ? 1', '>', '>='],
      ['return cross > bound ? 1', '<', '<='],
      ['(b.from[j] as number) > (a.to[i] as number)', '>', '>='],
    ],
  ]),
  ...inFile('src/geometry/polygon.ts', [
    [
      JUST_ON,
      ['at < (from[i] as number) || at > (to[i]', '<', '<='],
      ['at < (from[i] as number) || at > (to[i]', '>', '>='],
    ],
    [
      'Of an end on the line of the other side the quotient may be endless: then the sides meet in that end.',
      ['if (s1 * s2 < 0 && s3 * s4 < 0) return true;', '*', '/'],
    ],
    [
      'Rings that are far apart share no point, as the look at their sides finds too: only the time differs.',
      ['if (ringsFarApart(a, b)) return false;', 'ringsFarApart(a, b)', 'false'],
    ],
  ]),
  ...inFile('src/geometry/tin.ts', [
    ['The library turns all its triangles one way.', ['turn = cross > 0 ? 1 : -1;', 'cross > 0', 'false']],
  ]),
  ...inFile('src/outline/measure.ts', [
    [
      'A symbol without a value is as good as none: no number is put in.',
      ['...(q ? { q } : {})', 'q', 'true'],
    ],
    [
      'A perimeter that is undefined and one that is left out read the same.',
      ['...(perimeter ? { perimeter } : {})', 'perimeter', 'true'],
    ],
  ]),
  ...['src/grade/runs.ts', 'src/grade/flow-path.ts'].flatMap((file) =>
    inFile(file, [
      ['The number of a pond is that of one there is.', ['(ponds.ponds[pond]?.spill ?? v)', '?.', '.']],
    ]),
  ),
];

const lineAt = (text: string, at: number): string =>
  text.slice(text.lastIndexOf('\n', at - 1) + 1, `${text}\n`.indexOf('\n', at));

const isNamed = (text: string, { file, start, end, by }: Mutant, same: Equivalent): boolean =>
  file === same.file &&
  same.to.includes(by) &&
  text.slice(start, end).startsWith(same.from) &&
  lineAt(text, start).includes(same.line);

/** The entry that says that a mutant changes nothing. */
export const equivalentOf = (text: string, mutant: Mutant): Equivalent | undefined =>
  EQUIVALENT.find((same) => isNamed(text, mutant, same));
