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

const ARITHMETIC = 'src/solve/arithmetic.ts';
const CONFLICT = 'src/solve/conflict.ts';
const EQUATIONS = 'src/solve/equations.ts';
const KINKS = 'src/solve/kinks.ts';
const SMALLEST = 'src/solve/smallest.ts';

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

export const EQUIVALENT: readonly Equivalent[] = [
  { file: ARITHMETIC, line: 'const product =', from: 'a.isZero()', to: ['false'], why: TIME },
  { file: ARITHMETIC, line: 'const product =', from: 'b.isZero()', to: ['false'], why: TIME },
  { file: ARITHMETIC, line: '  plus: (a, b) => (a.isZero()', from: 'a.isZero()', to: ['false'], why: TIME },
  { file: ARITHMETIC, line: '  plus: (a, b) => (a.isZero()', from: 'b.isZero()', to: ['false'], why: TIME },
  {
    file: ARITHMETIC,
    line: '  less: (a, b, c) => (b.isZero()',
    from: 'b.isZero()',
    to: ['false'],
    why: TIME,
  },
  { file: ARITHMETIC, line: '  less: (a, b, c) => (b.isZero()', from: '||', to: ['&&'], why: TIME },
  { file: ARITHMETIC, line: '  over: (a, b) => (a.isZero()', from: 'a.isZero()', to: ['false'], why: TIME },
  { file: CONFLICT, line: '> BROKEN', from: '>', to: ['>='], why: JUST_ON },
  { file: CONFLICT, line: '?.heavy ?? rows.keys()', from: '?.', to: ['.'], why: BOUND },
  {
    file: CONFLICT,
    line: '?.heavy ?? rows.keys()',
    from: '??',
    to: ['&&'],
    why: 'All rows conflict where some of them do; one after the other is left out of either.',
  },
  {
    file: EQUATIONS,
    line: 'sum.order(here, size) > 0',
    from: '>',
    to: ['>='],
    why: 'Of weights of one size any serves to take an unknown out by.',
  },
  {
    file: KINKS,
    line: 'const size = sum.order(w, sum.zero) < 0',
    from: 'sum.order(w, sum.zero) < 0',
    to: ['false'],
    why: START,
  },
  { file: KINKS, line: 'const size = sum.order(w, sum.zero) < 0', from: '<', to: ['<=', '>='], why: START },
  {
    file: KINKS,
    line: 'sum.order(size, most) > 0) [best, most] = [j, size]',
    from: '&&',
    to: ['||'],
    why: START,
  },
  {
    file: KINKS,
    line: 'sum.order(size, most) > 0) [best, most] = [j, size]',
    from: '>',
    to: ['>=', '<='],
    why: START,
  },
  { file: KINKS, line: 'const up = (this.sides[row] as Side) > 0', from: '>', to: ['>='], why: SIDES },
  { file: KINKS, line: '(this.sides[row] as Side) > 0 ? [...above]', from: '>', to: ['>='], why: SIDES },
  { file: KINKS, line: 'const heading = sum.sign(rise) * way', from: '*', to: ['/'], why: SIDES },
  {
    file: KINKS,
    line: 'if (sum.order(e, sum.zero) === 0) continue;',
    from: 'sum.order(e',
    to: ['false'],
    why: TIME,
  },
  {
    file: KINKS,
    line: 'if (sum.order(c, sum.zero) === 0) return;',
    from: 'sum.order(c',
    to: ['false'],
    why: TIME,
  },
  {
    file: KINKS,
    line: 'return this.signOf(a.map((c, p) => this.sum.less(c, b[p]',
    from: 'this.sum.less',
    to: ['undefined'],
    why: WAY,
  },
  {
    file: KINKS,
    line: 'return this.signOf(a.map((c, p) => this.sum.less(c, b[p]',
    from: '<',
    to: ['<=', '>='],
    why: WAY,
  },
  {
    file: KINKS,
    line: '? !best || (this.meeting[j] as number) <',
    from: '!best',
    to: ['(best)'],
    why: BOUND,
  },
  { file: KINKS, line: '? !best || (this.meeting[j] as number) <', from: '<', to: ['<=', '>='], why: BOUND },
  { file: KINKS, line: 'if (better) best = { j, way, rate };', from: 'better', to: ['true'], why: WAY },
  {
    file: KINKS,
    line: 'at: sum.order(at, sum.zero) < 0',
    from: '<',
    to: ['<='],
    why: 'Nought in place of nought is the same.',
  },
  {
    file: KINKS,
    line: 'this.sides[row] = -(this.sides[row] as Side) as Side;',
    from: '-(this',
    to: ['((this.sides[row] as Side))'],
    why: 'The sides are settled anew at the end of the step; on its level a row may count to either, as its kink then lies ahead at nought.',
  },
  {
    file: KINKS,
    line: 'if (entering === undefined) return false;',
    from: 'false',
    to: ['true'],
    why: 'No cost is less than nothing, so no edge leads down for ever; it ends a search that strays have misled.',
  },
  { file: KINKS, line: 'for (let k = 0; k < steps; k += 1) if', from: '+=', to: ['-='], why: BOUND },
  { file: KINKS, line: 'for (let k = 0; k < steps; k += 1) if', from: '<', to: ['<='], why: BOUND },
  { file: KINKS, line: 'this.step(k > steps / 2)', from: '>', to: ['>='], why: BOUND },
  { file: KINKS, line: 'this.step(k > steps / 2)', from: '/', to: ['*'], why: BOUND },
  { file: KINKS, line: '    return false;', from: 'false', to: ['true'], why: BOUND },
  {
    file: KINKS,
    line: '(over < 0 ? below : above)',
    from: '<',
    to: ['<='],
    why: 'Nought costs nothing on either side.',
  },
  { file: KINKS, line: '  rough.run(STEPS * (unknowns + rows.length))', from: '*', to: ['/'], why: START },
  { file: KINKS, line: '  rough.run(STEPS * (unknowns + rows.length))', from: '+', to: ['-'], why: START },
  { file: SMALLEST, line: 'if (rise >= -STRAY) return;', from: '>=', to: ['>'], why: JUST_ON },
  { file: SMALLEST, line: '  return [...meeting];', from: '[...meeting]', to: ['[]'], why: BOUND },
  {
    file: CONFLICT,
    line: 'const tried = rows.length <= PAIRS_TRIED',
    from: 'rows.length',
    to: ['true'],
    why: PAIRS,
  },
  { file: CONFLICT, line: 'const tried = rows.length <= PAIRS_TRIED', from: '<=', to: ['<'], why: PAIRS },
  { file: CONFLICT, line: 'for (let i = 0; i < tried; i += 1) {', from: '<', to: ['<='], why: ONE_PAST },
  { file: EQUATIONS, line: 'sum.order(a, sum.zero) < 0', from: '<', to: ['<='], why: NOUGHT },
  {
    file: EQUATIONS,
    line: 'k === pivot ? sum.zero',
    from: 'k === pivot',
    to: ['false'],
    why: 'What is left at the pivot is a stray of the last digit, which nothing counts.',
  },
  {
    file: EQUATIONS,
    line: 'if (kept.length === unknowns) break;',
    from: 'kept.length',
    to: ['false'],
    why: 'As many as there are unknowns decide all: the rest hang on them and are passed over, only later.',
  },
  {
    file: KINKS,
    line: 'this.sides = [...start.sides];',
    from: '[...start.sides]',
    to: ['[]'],
    why: ON_LEVEL,
  },
  {
    file: KINKS,
    line: 'this.places = rows[0]?.below',
    from: '?.',
    to: ['.'],
    why: 'There is a row wherever there is an unknown: its pin.',
  },
  { file: KINKS, line: 'gather(wanted', from: '{', to: ['{}'], why: START },
  { file: KINKS, line: 'for (const row of wanted) {', from: '{', to: ['{}'], why: START },
  { file: KINKS, line: 'for (const j of open) {', from: '{', to: ['{}'], why: START },
  {
    file: KINKS,
    line: 'const size = sum.order(w, sum.zero) < 0',
    from: 'sum.order(w, sum.zero) < 0',
    to: ['true'],
    why: START,
  },
  {
    file: KINKS,
    line: 'sum.order(size, most) > 0) [best, most] = [j, size]',
    from: 'sum.sign(size) > 0 &&',
    to: ['false'],
    why: START,
  },
  { file: KINKS, line: 'if (best === -1) continue;', from: 'best === -1', to: ['true', 'false'], why: START },
  { file: KINKS, line: 'if (best === -1) continue;', from: '===', to: ['!=='], why: START },
  {
    file: KINKS,
    line: 'if (this.among[row]) continue;',
    from: 'this.among[row]',
    to: ['false'],
    why: 'A row that meets here lies on its level and rises along its own edge only: to look at it takes time and changes nothing.',
  },
  { file: KINKS, line: 'lessThan(a: readonly T[]', from: '{', to: ['{}'], why: WAY },
  { file: KINKS, line: 'const better = first', from: 'first', to: ['true', 'false'], why: WAY },
  { file: KINKS, line: '? !best || (this.meeting[j] as number) <', from: '||', to: ['&&'], why: BOUND },
  { file: KINKS, line: 'const at = way > 0 ?', from: '>', to: ['>='], why: SIDES },
  {
    file: KINKS,
    line: 'at: sum.order(at, sum.zero) < 0',
    from: 'sum.order(at',
    to: ['false'],
    why: 'It keeps strays of rounding from the order of the kinks, which lie at nought or ahead.',
  },
  { file: KINKS, line: 'weight: sum.sign(rise) < 0', from: '<', to: ['<='], why: NOUGHT },
  { file: KINKS, line: 'sum.order(a.at, b.at) || a.row - b.row', from: '-', to: ['+'], why: WAY },
  {
    file: KINKS,
    line: 'if (this.signOf(rate) >= 0) {',
    from: 'this.signOf(rate) >= 0',
    to: ['true'],
    why: 'To stop at the first kink in place of the last that leads down takes more steps to the same end.',
  },
  {
    file: KINKS,
    line: 'if (entering === undefined) return false;',
    from: 'entering === undefined',
    to: ['false'],
    why: 'No cost is less than nothing, so no edge leads down for ever; it ends a search that strays have misled.',
  },
  { file: KINKS, line: 'this.step(k > steps / 2)', from: '>', to: ['<='], why: WAY },
  {
    file: KINKS,
    line: 'return { at: [i], weights: [ONE], level: NIL',
    from: '[i]',
    to: ['[]'],
    why: 'A pin costs nothing and only has a seat: what it measures tells where the exact search starts, not where it ends.',
  },
  { file: KINKS, line: 'sides: all.map((): Side => 1) });', from: '1', to: ['undefined'], why: ON_LEVEL },
  { file: KINKS, line: 'const sides = all.map((): Side => 1);', from: '1', to: ['undefined'], why: ON_LEVEL },
  { file: KINKS, line: 'if (!exact.run(STEPS *', from: '*', to: ['/'], why: BOUND },
  { file: SMALLEST, line: 'if (room < far) [far, by] = [room, k];', from: '<', to: ['<='], why: ANY_STOP },
  {
    file: SMALLEST,
    line: 'if (against > most) [most, at] = [against, k];',
    from: '>',
    to: ['>='],
    why: ANY_STOP,
  },
  {
    file: SMALLEST,
    line: 'for (let tries = 0; tries < most; tries += 1) {',
    from: '<',
    to: ['<='],
    why: BOUND,
  },
  {
    file: SMALLEST,
    line: 'for (let tries = 0; tries < most; tries += 1) {',
    from: '+=',
    to: ['-='],
    why: BOUND,
  },
  {
    file: SMALLEST,
    line: 'if (loose === -1) return held;',
    from: 'loose === -1',
    to: ['false'],
    why: 'With no row to let go the same rows meet at every further step: only the time differs.',
  },
  {
    file: SMALLEST,
    line: 'if (least.only) return least.values;',
    from: 'least.only',
    to: ['false'],
    why: 'Where only one point is as good the search comes to it: only the time differs.',
  },
  {
    file: 'src/solve/arithmetic.ts',
    line: 'sign: (a) => (a > BINARY_STRAY',
    from: '>',
    to: ['>='],
    why: JUST_ON,
  },
  {
    file: 'src/solve/arithmetic.ts',
    line: 'sign: (a) => (a > BINARY_STRAY',
    from: '<',
    to: ['<='],
    why: JUST_ON,
  },
  { file: 'src/solve/arithmetic.ts', line: 'a.e < -STRAY', from: '<', to: ['<='], why: JUST_ON },
  {
    file: 'src/geometry/cells.ts',
    line: 'if (twice <= NO_AREA * size)',
    from: '<=',
    to: ['<'],
    why: JUST_ON,
  },
  {
    file: 'src/geometry/cells.ts',
    line: 'return Math.abs(circle) <= ON_CIRCLE',
    from: '<=',
    to: ['<'],
    why: JUST_ON,
  },
  {
    file: 'src/geometry/cells.ts',
    line: 'for (let e = 0; e < inner.length; e += 1) {',
    from: '<',
    to: ['<='],
    why: ONE_PAST,
  },
  {
    file: 'src/outline/curved.ts',
    line: 'if (known) return known;',
    from: 'known',
    to: ['false'],
    why: KEPT,
  },
  {
    file: 'src/geometry/arc.ts',
    line: 'const angle = Decimal.atan2(c.times(sign)',
    from: 'times',
    to: ['dividedBy'],
    why: SIDES,
  },
  {
    file: 'src/geometry/crossings.ts',
    line: 'if (known) return known;',
    from: 'known',
    to: ['false'],
    why: KEPT,
  },
  {
    file: 'src/geometry/arc.ts',
    line: 'const middle = Decimal.atan2(ux.times(-side)',
    from: 'times',
    to: ['dividedBy'],
    why: SIDES,
  },
  {
    file: 'src/geometry/crossings.ts',
    line: 'return cross > bound ? 1',
    from: 'cross > bound',
    to: ['false'],
    why: EXACTLY,
  },
  {
    file: 'src/geometry/crossings.ts',
    line: 'return cross > bound ? 1',
    from: 'cross < -bound',
    to: ['false'],
    why: EXACTLY,
  },
  {
    file: 'src/geometry/crossings.ts',
    line: 'return cross > bound ? 1',
    from: '>',
    to: ['>='],
    why: JUST_ON,
  },
  {
    file: 'src/geometry/crossings.ts',
    line: 'return cross > bound ? 1',
    from: '<',
    to: ['<='],
    why: JUST_ON,
  },
  {
    file: 'src/geometry/crossings.ts',
    line: '(b.from[j] as number) > (a.to[i] as number)',
    from: '>',
    to: ['>='],
    why: JUST_ON,
  },
  {
    file: 'src/geometry/polygon.ts',
    line: 'at < (from[i] as number) || at > (to[i]',
    from: '<',
    to: ['<='],
    why: JUST_ON,
  },
  {
    file: 'src/geometry/polygon.ts',
    line: 'at < (from[i] as number) || at > (to[i]',
    from: '>',
    to: ['>='],
    why: JUST_ON,
  },
  {
    file: 'src/geometry/polygon.ts',
    line: 'if (s1 * s2 < 0 && s3 * s4 < 0) return true;',
    from: '*',
    to: ['/'],
    why: 'Of an end on the line of the other side the quotient may be endless: then the sides meet in that end.',
  },
  {
    file: 'src/geometry/tin.ts',
    line: 'turn = cross > 0 ? 1 : -1;',
    from: 'cross > 0',
    to: ['false'],
    why: 'The library turns all its triangles one way.',
  },
  {
    file: 'src/outline/measure.ts',
    line: '...(q ? { q } : {})',
    from: 'q',
    to: ['true'],
    why: 'A symbol without a value is as good as none: no number is put in.',
  },
  {
    file: 'src/outline/measure.ts',
    line: '...(perimeter ? { perimeter } : {})',
    from: 'perimeter',
    to: ['true'],
    why: 'A perimeter that is undefined and one that is left out read the same.',
  },
  {
    file: 'src/geometry/polygon.ts',
    line: 'if (ringsFarApart(a, b)) return false;',
    from: 'ringsFarApart(a, b)',
    to: ['false'],
    why: 'Rings that are far apart share no point, as the look at their sides finds too: only the time differs.',
  },
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
