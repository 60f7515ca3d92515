/**
 * Evaluates printed steps of working apart from the library: every quantity becomes its SI number, and
 * mathjs, a general-purpose library, reckons the rest. Expressions that differ by their numbers only are
 * parsed once, so that millions can be evaluated.
 */
import { all, create, type EvalFunction, type FactoryFunctionMap, parse } from 'mathjs';
import type { Step } from '../../../src/index';
import { stepText } from '../../../src/report/view';
import { inSigns } from '../working';
import { UNITS } from './units';

const FACTORS = new Map<string, number>([
  ['ft/in', 1],
  ...Object.values(UNITS).flatMap((units) =>
    units.filter(({ name }) => !/^(1:n|:1)$/.test(name)).map(({ name, si }) => [name, si] as const),
  ),
]);

const NAMES = [...FACTORS.keys()]
  .sort((x, y) => y.length - x.length)
  .map((name) => name.replace('/', '\\/'))
  .join('|');

/** A quantity in any printed form, a slope of 1:n, a ratio of n:1, an amount of money, or a bare number. */
const TOKEN = new RegExp(
  `(?:(\\d+) ft )?(?:(\\d+)(?: |-(?=\\d+\\/)))?(\\d+(?:\\.\\d+)?)(?:\\/(\\d+))? ?(${NAMES}|[A-Z]{3})(?![A-Za-z0-9/])` +
    `|(?<![\\d.])1:(\\d+(?:\\.\\d+)?)|(\\d+(?:\\.\\d+)?):1(?![\\d.])|(?<![\\w.])(\\d+(?:\\.\\d+)?)`,
  'g',
);

interface Numbers {
  readonly skeleton: string;
  readonly values: readonly number[];
  /** Half of the last printed place of each, in the same units: what rounding may have taken. */
  readonly rooms: readonly number[];
}

const lastPlace = (number: string): number => 0.5 * 10 ** -(/\.(\d+)/.exec(number)?.[1]?.length ?? 0);

/** Digits that are printed of a number that has more. */
const DIGITS = 10;

const significant = (number: string): number => number.replace('.', '').replace(/^0+/, '').length;

/** What rounding to ten digits may have taken of a number. */
const room = (number: string): number => (significant(number) < DIGITS - 2 ? 0 : lastPlace(number));

function taken(text: string): Numbers {
  const values: number[] = [];
  const rooms: number[] = [];
  const put = (value: number, off: number): string => {
    values.push(value);
    rooms.push(off);
    return `n${values.length - 1}`;
  };
  const numbers = text.replace(TOKEN, (...found: (string | undefined)[]) => {
    const [, feet, whole, top = '', bottom, unit, n, ratio, bare] = found;
    if (n !== undefined) return put(1 / Number(n), room(n) / Number(n) ** 2);
    const plain = ratio ?? bare;
    if (plain !== undefined) return put(Number(plain), room(plain));
    const factor = FACTORS.get(unit ?? '') ?? 1;
    const number = Number(whole ?? 0) + Number(top) / Number(bottom ?? 1);
    return put(Number(feet ?? 0) * 0.3048 + number * factor, room(top) * factor);
  });
  const skeleton = inSigns(numbers);
  return { skeleton, values, rooms };
}

const CACHED = 4000;
const LONGEST_KEPT = 400;
const compiled = new Map<string, EvalFunction>();

function compile(skeleton: string): EvalFunction {
  const known = compiled.get(skeleton);
  if (known) return known;
  const made = parse(skeleton).compile();
  if (compiled.size < CACHED && skeleton.length < LONGEST_KEPT) compiled.set(skeleton, made);
  return made;
}

function value({ skeleton, values }: Numbers, changed = -1, by = 0): number {
  const scope = new Map<string, unknown>(values.map((v, i) => [`n${i}`, i === changed ? v + by : v]));
  const found = compile(skeleton).evaluate(scope as never) as unknown;
  return typeof found === 'number' ? found : Number.NaN;
}

/** The same library with 64 digits, for steps in which nearly equal numbers are taken from each other. */
const fine = create(all as FactoryFunctionMap, { number: 'BigNumber', precision: 64 });

function fineValue({ skeleton, values }: Numbers): number {
  const scope = new Map<string, unknown>(values.map((v, i) => [`n${i}`, fine.bignumber(String(v))]));
  return Number(String(fine.evaluate(skeleton, scope as never)));
}

/** The value of a printed expression, in SI units. */
const evaluatedFast = (text: string): number => value(taken(text));

/** Half of the last place that is printed, or of the 1/16 in that feet and inches are shown to. */
function roomOf(gives: string): number {
  if (/ in$/.test(gives) && (/ ft /.test(gives) || /\d\/\d+ in$/.test(gives) || /^-?\d+ in$/.test(gives)))
    return 0.0254 / 32;
  if (/ft$/.test(gives) && /^-?\d+ ft$/.test(gives)) return 0.0254 / 32;
  const number = /\d+(?:\.\d+)?/.exec(gives)?.[0] ?? '0';
  const one = Math.abs(evaluatedFast(gives.replace(/\d+(?:\.\d+)?/, '1')));
  return one * lastPlace(number);
}

/** How far the outcome may move because the numbers put in are printed to ten digits. */
function moved(put: Numbers, found: number): number {
  // The other library takes what is within 1e-12 of a whole number for that number.
  const tips = /ceil|floor/.test(put.skeleton);
  return put.rooms.reduce((sum, room, i) => {
    const off = tips ? Math.max(room, 1e-11 * Math.abs(put.values[i] as number)) : room;
    if (off === 0) return sum;
    return sum + Math.max(...[off, -off].map((by) => Math.abs(value(put, i, by) - found)));
  }, 0);
}

/** What is untrue about a printed step, or nothing. */
export function stepObjection(step: Step): string | undefined {
  const { what, put, gives } = stepText(step);
  const numbers = taken(put);
  const found = value(numbers);
  if (!Number.isFinite(found)) return `${what}: ${put} comes to ${found}`;
  const off = difference(numbers, found, gives) && difference(numbers, fineValue(numbers), gives);
  return off === undefined ? undefined : `${what}: ${put} = ${off}, not ${gives}`;
}

/** What a step comes to, where that is not what it gives. */
function difference(numbers: Numbers, found: number, gives: string): number | undefined {
  const oneIn = /^(-?)1:(\d+(?:\.\d+)?)$/.exec(gives);
  const given = evaluatedFast(gives);
  const [a, b, place] = oneIn
    ? [1 / Math.abs(found), Number(oneIn[2]), lastPlace(oneIn[2] as string)]
    : [found, given, roomOf(gives)];
  const off = Math.abs(a - b) - place * (1 + 1e-6) - Math.abs(b) * 1e-9;
  if (off <= 0 || off <= (oneIn ? b * b : 1) * moved(numbers, found)) return undefined;
  return found;
}
