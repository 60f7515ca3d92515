/** Slips of the pen in a number as it is written. */
import type { SlipCode } from './slip';

/** A number written wrongly. */
export interface Miswritten {
  readonly code: SlipCode;
  readonly text: string;
  readonly weight: number;
  /** The same done to another number, where it has such digits. */
  readonly again: (text: string) => string | undefined;
}

/** Digits that are read for each other. */
const ALIKE: ReadonlySet<string> = /*#__PURE__*/ new Set(
  '17 71 38 83 56 65 60 06 49 94 39 93 08 80 27 72'.split(' '),
);

export const WEIGHTS = {
  transposed: 4,
  dropped: 1.5,
  doubled: 0.8,
  alike: 0.5,
  near: 0.25,
  other: 0.08,
  point: 4,
} as const;

const isDigit = (char: string | undefined): boolean => char !== undefined && char >= '0' && char <= '9';

/** The next digit, over a point. */
const nextDigit = (text: string, i: number): number => (text[i + 1] === '.' ? i + 2 : i + 1);

function swapped(text: string, i: number): string | undefined {
  const j = nextDigit(text, i);
  const [a, b] = [text[i], text[j]];
  if (!isDigit(a) || !isDigit(b) || a === b) return undefined;
  // Nobody writes 0100 for 1000.
  if (i === 0 && b === '0' && j === 1 && text.length > 1 && text[2] !== '.') return undefined;
  return `${text.slice(0, i)}${b}${text.slice(i + 1, j)}${a}${text.slice(j + 1)}`;
}

function* transposed(text: string): Generator<Miswritten> {
  for (let i = 0; i < text.length - 1; i += 1) {
    const again = (other: string): string | undefined => swapped(other, i);
    const to = again(text);
    if (to === undefined) continue;
    const weight = nextDigit(text, i) === i + 1 ? WEIGHTS.transposed : 1;
    yield { code: 'digits-transposed', text: to, weight, again };
  }
}

function without(text: string, i: number): string | undefined {
  const rest = (text.slice(0, i) + text.slice(i + 1)).replace(/\.$/, '');
  return isDigit(text[i]) && /\d/.test(rest) ? rest : undefined;
}

/** A zero more at the end of a whole number is a point in the wrong place. */
const isLastZero = (text: string, i: number): boolean =>
  text[i] === '0' && i === text.length - 1 && !text.includes('.');

const doubledAt = (text: string, i: number): string | undefined =>
  isDigit(text[i]) && !isLastZero(text, i) ? text.slice(0, i + 1) + text.slice(i) : undefined;

function* droppedOrDoubled(text: string): Generator<Miswritten> {
  for (let i = 0; i < text.length; i += 1) {
    const drop = (other: string): string | undefined => without(other, i);
    const dropped = drop(text);
    if (dropped !== undefined && text[i] !== text[i + 1])
      yield { code: 'digit-dropped', text: dropped, weight: WEIGHTS.dropped, again: drop };
    const twice = (other: string): string | undefined => doubledAt(other, i);
    const doubled = twice(text);
    if (doubled !== undefined)
      yield { code: 'digit-doubled', text: doubled, weight: WEIGHTS.doubled, again: twice };
  }
}

function weightOf(a: string, b: string): number {
  if (ALIKE.has(a + b)) return WEIGHTS.alike;
  return Math.abs(Number(a) - Number(b)) === 1 ? WEIGHTS.near : WEIGHTS.other;
}

function* oneOff(text: string): Generator<Miswritten> {
  for (let i = 0; i < text.length; i += 1) {
    const own = text[i] as string;
    if (!isDigit(own)) continue;
    for (const digit of '0123456789') {
      if (digit === own) continue;
      const again = (other: string): string | undefined =>
        other[i] === own ? other.slice(0, i) + digit + other.slice(i + 1) : undefined;
      yield { code: 'digit-off', text: again(text) as string, weight: weightOf(own, digit), again };
    }
  }
}

/** The text of a number ten times as large, or a tenth: the point alone is moved. */
function shifted(text: string, by: 1 | -1): string {
  const [whole = '', decimals = ''] = text.split('.');
  const at = whole.length + by;
  const digits =
    (at <= 0 ? '0'.repeat(1 - at) : '') +
    whole +
    decimals +
    '0'.repeat(Math.max(0, at - whole.length - decimals.length));
  const point = Math.max(1, at);
  const rest = digits.slice(point);
  return digits.slice(0, point) + (rest ? `.${rest}` : '');
}

function* pointMoved(text: string): Generator<Miswritten> {
  for (const by of [1, -1, 2, -2, 3, -3]) {
    const again = (other: string): string => {
      let moved = other;
      for (let n = 0; n < Math.abs(by); n += 1) moved = shifted(moved, by > 0 ? 1 : -1);
      return moved;
    };
    const weight = Math.abs(by) === 1 ? WEIGHTS.point : WEIGHTS.point / 3;
    yield { code: 'point-moved', text: again(text), weight, again };
  }
}

/** One more or less of so many of the last place. */
function withCarry(text: string, carry: number): string | undefined {
  const places = text.split('.')[1]?.length ?? 0;
  const sum = Number(text.replace('.', '')) + carry;
  if (sum < 0) return undefined;
  const padded = String(sum).padStart(places + 1, '0');
  return places ? `${padded.slice(0, -places)}.${padded.slice(-places)}` : padded;
}

/** One more or less in a place of ten or more of the last, as a carry that was forgotten or taken twice. */
function* carried(text: string): Generator<Miswritten> {
  const whole = Number(text.replace('.', ''));
  const digits = text.replace('.', '').replace(/^0+/, '').length;
  for (let k = 0; k <= digits && whole > 0; k += 1)
    for (const one of [1, -1]) {
      const again = (other: string): string | undefined => withCarry(other, one * 10 ** k);
      const to = again(text);
      if (to !== undefined) yield { code: 'carried-wrongly', text: to, weight: k === 0 ? 0.3 : 0.9, again };
    }
}

const WRITTEN = /^\d{1,12}(?:\.\d{1,8})?$/;

/**
 * A number as it may be miswritten.
 *
 * @param text - digits with a point or none
 * @param outcome - true for what was reckoned, in which a carry may be wrong
 */
export function* miswritten(text: string, outcome: boolean): Generator<Miswritten> {
  if (!WRITTEN.test(text)) return;
  yield* transposed(text);
  yield* droppedOrDoubled(text);
  yield* oneOff(text);
  yield* pointMoved(text);
  if (outcome) yield* carried(text);
}
