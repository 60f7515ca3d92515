/** Slips of the pen in a number as it is written. */
import type { SlipCode } from './slip';

/** A number written wrongly. */
export interface Miswritten {
  readonly code: SlipCode;
  readonly text: string;
  readonly weight: number;
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

function* transposed(text: string): Generator<Miswritten> {
  for (let i = 0; i < text.length - 1; i += 1) {
    const j = text[i + 1] === '.' ? i + 2 : i + 1;
    const [a, b] = [text[i], text[j]];
    if (!isDigit(a) || !isDigit(b) || a === b) continue;
    const swapped = text.slice(0, i) + b + text.slice(i + 1, j) + a + text.slice(j + 1);
    yield { code: 'digits-transposed', text: swapped, weight: j === i + 1 ? WEIGHTS.transposed : 1 };
  }
}

function* droppedOrDoubled(text: string): Generator<Miswritten> {
  for (let i = 0; i < text.length; i += 1) {
    if (!isDigit(text[i])) continue;
    const dropped = (text.slice(0, i) + text.slice(i + 1)).replace(/\.$/, '');
    if (/\d/.test(dropped) && text[i] !== text[i + 1])
      yield { code: 'digit-dropped', text: dropped, weight: WEIGHTS.dropped };
    yield { code: 'digit-doubled', text: text.slice(0, i + 1) + text.slice(i), weight: WEIGHTS.doubled };
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
      yield {
        code: 'digit-off',
        text: text.slice(0, i) + digit + text.slice(i + 1),
        weight: weightOf(own, digit),
      };
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
  yield { code: 'point-moved', text: shifted(text, 1), weight: WEIGHTS.point };
  yield { code: 'point-moved', text: shifted(text, -1), weight: WEIGHTS.point };
  yield { code: 'point-moved', text: shifted(shifted(text, 1), 1), weight: WEIGHTS.point / 3 };
  yield { code: 'point-moved', text: shifted(shifted(text, -1), -1), weight: WEIGHTS.point / 3 };
  yield { code: 'point-moved', text: shifted(shifted(shifted(text, 1), 1), 1), weight: WEIGHTS.point / 3 };
  yield { code: 'point-moved', text: shifted(shifted(shifted(text, -1), -1), -1), weight: WEIGHTS.point / 3 };
}

/** One more or less in a place of ten or more of the last, as a carry that was forgotten or taken twice. */
function* carried(text: string): Generator<Miswritten> {
  const places = text.split('.')[1]?.length ?? 0;
  const whole = Number(text.replace('.', ''));
  const digits = text.replace('.', '').replace(/^0+/, '').length;
  for (let k = 0; k <= digits && whole > 0; k += 1) {
    for (const one of [1, -1]) {
      const sum = whole + one * 10 ** k;
      if (sum < 0) continue;
      const padded = String(sum).padStart(places + 1, '0');
      const moved = places ? `${padded.slice(0, -places)}.${padded.slice(-places)}` : padded;
      yield { code: 'carried-wrongly', text: moved, weight: k === 0 ? 0.3 : 0.9 };
    }
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
