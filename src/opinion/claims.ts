/**
 * Claimed figures as they are read: what was written, and how finely.
 *
 * `9.3 yd3` says that the figure lies between 9.25 and 9.35; `12' 6-1/2"` is good to a quarter of an inch.
 */

import type { Dimension } from '../quantity/dimensions';
import * as sharedFaults from '../quantity/faults';
import { readMoney } from '../quantity/money';
import {
  isQuantity,
  numberShown,
  type Quantity,
  type QuantityData,
  type QuantityPair,
  unitShown,
} from '../quantity/quantity';
import { isFaulty, readQuantity } from '../quantity/read-quantity';
import { unitOf } from '../quantity/units';
import { pathText, refuse } from '../reckoning/calculation';
import { plainCopy } from '../reckoning/plain';
import { isRecord } from '../reckoning/record';
import { asWritten } from './as-written';
import * as faults from './faults';
import { figureAt, figuresIn, pathOf } from './figure-places';
import { siOf, siOfUnit } from './scale';

/** A quantity of whatever dimension, as text, as data or as one; a plain whole number is a count. */
export type AnyQuantityInput = string | number | QuantityPair | Quantity | QuantityData;

/** One figure as somebody has it. */
export interface Claim {
  /** Path of the figure in the result: `volume`, `loads[0]`. */
  readonly figure: string;
  /** What it is said to be. */
  readonly claimed: AnyQuantityInput;
  /** The step that it was rounded to, where it is coarser than it is written: `0.25 yd3`. */
  readonly rounded?: AnyQuantityInput;
  /** The line as it was written, to be shown again. */
  readonly line?: string;
}

/** Claimed figures: a list, or each under the path of its figure. */
export type Claims = readonly Claim[] | { readonly [figure: string]: AnyQuantityInput };

/** A claim as it was read. */
export interface ReadClaim {
  readonly figure: string;
  readonly path: readonly (string | number)[];
  readonly claimed: Quantity;
  readonly reckoned: Quantity;
  readonly line: string | undefined;
  readonly si: number;
  /** Half of the last place that was written, in SI units. */
  readonly half: number;
  /** Half of the last digit that surely counts: of `1,200` it may be the 2. */
  readonly coarse: number;
  /** Decimal places of the number as it was written. */
  readonly places: number;
  /** Whether it was said what it was rounded to. */
  readonly isRounded: boolean;
}

/** Claims beyond this belong to several checks. */
const MOST = 50;
const LONGEST_LINE = 500;

const FRACTION = /\d ?[/\u2044] ?(\d+)/;
const DECIMALS = /\.(\d+)(?!.*\d)/;
/** Names of units, with the powers that some end in, and what a ratio is told against. */
const NAMES = /[A-Za-z]+[23]?(?:\/[A-Za-z]+[23]?)*|: ?1\s*$/g;

const textOf = (given: unknown): string =>
  typeof given === 'string'
    ? given
    : typeof given === 'object' && given !== null && !isQuantity(given)
      ? String((given as { value?: unknown }).value)
      : '';

/** Decimal places as written, zeros at the end and all. */
function placesOf(given: unknown, q: Quantity): number {
  const text = textOf(given);
  return text === ''
    ? Math.max(0, numberShown(q).decimalPlaces())
    : (DECIMALS.exec(text.replace(NAMES, ' '))?.[1]?.length ?? 0);
}

/** The unit of the last number written: inches of feet and inches. */
function lastUnit(q: Quantity): number {
  const unit = unitShown(q);
  const own = unit.form === 'feet-inches' ? unitOf('length', 'in') : unit;
  return own ? siOfUnit(own) : 1;
}

/** However shortly a figure is written, it says this much: 2 yd3 are no rounding of 2.40. */
const SHORTEST = 0.05;
/** On a tape more is read: 7 in are no rounding of 7-3/8. */
const ON_TAPE = 0.02;
const EIGHTH = 1 / 8;
const TEN = 10;

/** The most that half a last place may be, in SI units. */
function mostOf(q: Quantity): number {
  const size = Math.abs(siOf(q));
  if (size === 0 || q.dimension === 'count' || q.dimension === 'temperature') return Infinity;
  const inches = q.dimension === 'length' && unitShown(q).id === 'in';
  const isShort = inches && size < TEN * lastUnit(q);
  return isShort ? Math.max(lastUnit(q) * EIGHTH, ON_TAPE * size) : SHORTEST * size;
}

/** Half the last place. What is written as 1:48 counts as fine as a hundredth of itself. */
function halfOf(given: unknown, q: Quantity, places: number): number {
  if (unitShown(q).form === 'one-in') return Math.abs(siOf(q)) / 100;
  const bottom = FRACTION.exec(textOf(given))?.[1];
  const half = ((bottom ? 1 / Number(bottom) : 10 ** -places) / 2) * lastUnit(q);
  return bottom && ON_A_TAPE.has(q.dimension)
    ? Math.min(half, Math.max(lastUnit(q) / 16, Math.abs(siOf(q)) / 100), leastOf(q))
    : Math.min(half, mostOf(q));
}

/** Of a quarter of an inch a sixteenth is no rounding, a sixty-fourth is. */
const leastOf = (q: Quantity): number => Math.max(SHORTEST * Math.abs(siOf(q)), lastUnit(q) / 64);

/** A half is also written for four eighths: on what is small beside an inch it says no more than those. */
const ON_A_TAPE: ReadonlySet<Dimension> = /*#__PURE__*/ new Set(['length', 'slope']);

const WHOLE = /^\s*[\d,]*?\d(0+)(?![\d.,]|\s*-?\d|\s*[/\u2044])/;

/** Half of the last digit that is no zero at the end of a whole number. */
function coarseOf(given: unknown, q: Quantity, half: number): number {
  const zeros = WHOLE.exec(textOf(given))?.[1]?.length ?? 0;
  return q.dimension === 'count' || q.dimension === 'money' ? half : half * 10 ** zeros;
}

/** `8-9 yd3`, `8 to 9 yd3`: two numbers and what stands behind each. A mixed number goes on with a bar: `8-1/2 yd3`. */
const RANGE =
  /^\s*(\d[\d,]*\.?\d*)\s*(?:([a-z%][\w/%]*)\s*)?(?:-|–|\bto\b|\bor\b)\s*(\d[\d,]*\.?\d*)(?![\d,.]|\s*[/\u2044])\s*([a-z%][\w/%]*)?\s*$/i;
/** No range is longer. */
const LONGEST_RANGE = 60;

/** A range is not one figure: it is said what to give for it. */
function refuseRange(given: unknown, path: string): void {
  if (typeof given !== 'string' || given.length > LONGEST_RANGE) return;
  const [, from, own, to, unit] = RANGE.exec(given) ?? [];
  // Feet and inches may be written with a dash between them.
  if (from === undefined || to === undefined || (own !== undefined && own !== unit)) return;
  const [low, high] = [from, to].map((text) => Number(text.replaceAll(',', ''))) as [number, number];
  if (low >= high) return;
  const told = (n: number): string => `${Number(n.toPrecision(12))} ${unit ?? ''}`.trim();
  refuse(path, faults.isRange(told(low), told(high), told((low + high) / 2), told(high - low)));
}

function readAs(given: unknown, like: Quantity, path: string): Quantity {
  refuseRange(given, path);
  const what = 'the claim';
  const d = like.dimension;
  const told = asWritten(given, like);
  const q = d === 'money' ? readMoney(told, what) : readQuantity(told, d, what);
  return isFaulty(q) ? refuse(path, q) : q;
}

interface Given {
  readonly figure: unknown;
  readonly claimed: unknown;
  readonly rounded?: unknown;
  readonly line?: unknown;
  readonly at: string;
}

const CLAIM_KEYS = ['figure', 'claimed', 'rounded', 'line'];

function listed(one: unknown, i: number): Given {
  const at = `claims[${i}]`;
  if (!isRecord(one)) return refuse(at, sharedFaults.wrongType('it', 'an object with figure and claimed'));
  const unknown = Object.keys(one).find((key) => !CLAIM_KEYS.includes(key));
  if (unknown !== undefined) refuse(at, sharedFaults.unknownKey(unknown, CLAIM_KEYS));
  return { figure: one['figure'], claimed: one['claimed'], rounded: one['rounded'], line: one['line'], at };
}

function givenOf(plain: unknown): Given[] {
  if (Array.isArray(plain)) return plain.map(listed);
  if (!isRecord(plain) || isQuantity(plain))
    return refuse('claims', sharedFaults.wrongType('it', 'a list, or figures with what is claimed of each'));
  return Object.entries(plain).map(([figure, claimed]) => ({
    figure,
    claimed,
    at: pathText(['claims', figure]),
  }));
}

function readOne({ figure, claimed, rounded, line, at }: Given, figures: object): ReadClaim {
  const known = (): string[] => figuresIn(figures).map((one) => one.at);
  const path = typeof figure === 'string' ? pathOf(figure) : undefined;
  const reckoned = path && figureAt(figures, path);
  if (!path || !reckoned)
    return refuse(
      at,
      faults.noSuchFigure(typeof figure === 'string' ? sharedFaults.quoted(figure) : 'this', known()),
    );
  if (line !== undefined && (typeof line !== 'string' || line.length > LONGEST_LINE))
    return refuse(at, sharedFaults.wrongType('line', 'text of at most 500 characters'));
  const q = readAs(claimed, reckoned, at);
  if (q.dimension === 'money') sameCurrency(q, reckoned, at);
  const step = rounded === undefined ? undefined : siOf(readAs(rounded, reckoned, at));
  const places = placesOf(claimed, q);
  const half = step === undefined ? halfOf(claimed, q, places) : Math.abs(step) / 2;
  const coarse = step === undefined ? coarseOf(claimed, q, half) : half;
  const as = { si: siOf(q), half, coarse, places, isRounded: step !== undefined };
  return { figure: figure as string, path, claimed: q, reckoned, line, ...as };
}

function sameCurrency(q: Quantity, reckoned: Quantity, at: string): void {
  if (q.unit !== reckoned.unit) refuse(at, sharedFaults.currencyMismatch(q.unit, reckoned.unit));
}

/**
 * Read what is claimed of the figures of a result.
 *
 * @throws {InputError} for what cannot be read, and for figures that the result does not have
 */
export function readClaims(claims: unknown, figures: object): ReadClaim[] {
  const given = givenOf(plainCopy(claims));
  if (given.length === 0) refuse('claims', faults.noClaims());
  if (given.length > MOST) refuse('claims', sharedFaults.tooMany('claims', MOST));
  return given.map((one) => readOne(one, figures));
}
