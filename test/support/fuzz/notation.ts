/** Writing a quantity as people, forms and files do: many spellings, both unit systems, text and pairs. */
import type { Chance } from '../relations/random';
import { fromSi, type Measured, UNITS, type UnitNote } from './units';

/** A binary number without an exponent, to some digits. */
export function plainText(n: number, digits = 12): string {
  if (!Number.isFinite(n)) return String(n);
  const text = n.toPrecision(digits);
  if (!text.includes('e')) return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
  const [, sign = '', whole = '0', decimals = '', power = '0'] =
    /^(-?)(\d)(?:\.(\d+))?e([+-]\d+)$/.exec(text) ?? [];
  const all = whole + decimals;
  const point = 1 + Number(power);
  const written =
    point <= 0 ? `0.${'0'.repeat(-point)}${all}` : all.padEnd(point, '0').slice(0, point) + tail(all, point);
  return sign + (written.includes('.') ? written.replace(/\.?0+$/, '') : written);
}

const tail = (all: string, point: number): string => (all.length > point ? `.${all.slice(point)}` : '');

const grouped = (digits: string): string => digits.replace(/\B(?=(\d{3})+(?!\d))/g, ',');

const SIGNS: Readonly<Record<string, string>> = {
  '1/2': '½',
  '1/4': '¼',
  '3/4': '¾',
  '1/8': '⅛',
  '3/8': '⅜',
  '5/8': '⅝',
  '7/8': '⅞',
};

function fraction(sixteenths: number): string {
  let [top, bottom] = [sixteenths, 16];
  while (top % 2 === 0 && top > 0) [top, bottom] = [top / 2, bottom / 2];
  return `${top}/${bottom}`;
}

/** Feet and inches to the sixteenth, in one of the spellings of the trade. */
function feetInches(meters: number, dice: Chance): string {
  const all = Math.round((Math.abs(meters) / 0.0254) * 16);
  const sign = meters < 0 && all > 0 ? '-' : '';
  const [feet, rest] = [Math.floor(all / 192), all % 192];
  const [inches, sixteenths] = [Math.floor(rest / 16), rest % 16];
  const part = sixteenths > 0 ? fraction(sixteenths) : '';
  const glued = dice.pick(['-', ' ']);
  const small = SIGNS[part];
  const mixed = (): string => {
    if (!part) return String(inches);
    if (inches === 0) return part;
    return small && dice.below(4) === 0 ? `${inches}${small}` : `${inches}${glued}${part}`;
  };
  const [f, i] = dice.pick([
    [' ft ', ' in'],
    ["' ", '"'],
    ["'-", '"'],
    [' feet ', ' inches'],
    ['ft ', 'in'],
    ['′ ', '″'],
    [' ft. ', ' in.'],
  ] as const);
  const feetText = feet > 999 && dice.below(2) === 0 ? grouped(String(feet)) : String(feet);
  if (rest === 0) return `${sign}${feetText}${f.replace(/[- ]+$/, '')}`;
  return sign + (feet > 0 ? `${feetText}${f}` : '') + mixed() + i;
}

/** A number with its unit as one types it. */
function withUnit(number: string, unit: UnitNote, dice: Chance): string {
  if (unit.name === '1:n') return number.startsWith('-') ? `-1:${number.slice(1)}` : `1:${number}`;
  if (unit.name === ':1') return `${number}:1`;
  const name = dice.below(3) === 0 ? dice.pick(unit.spellings) : unit.name;
  return `${number}${dice.pick([' ', ' ', ' ', '', '  '])}${name}`;
}

function oneIn(si: number, dice: Chance): string | undefined {
  if (si === 0) return dice.pick(['level', '0%']);
  const n = 1 / si;
  return Math.abs(n) < 1e12 ? `${n < 0 ? '-' : ''}1:${plainText(Math.abs(n), 4)}` : undefined;
}

/** How a job writes: one system mostly, with so many digits. */
export interface Hand {
  readonly system: 'customary' | 'metric';
  readonly digits: number;
}

export const someHand = (dice: Chance): Hand => ({
  system: dice.below(3) === 0 ? 'metric' : 'customary',
  digits: dice.pick([3, 4, 4, 5, 6, 9, 15]),
});

/** A quantity of so many SI units, written by that hand: text, or `{ value, unit }`. */
export function written(d: Measured, si: number, hand: Hand, dice: Chance): unknown {
  const system = dice.below(20) === 0 ? dice.pick(['customary', 'metric'] as const) : hand.system;
  const fit = UNITS[d].filter((u) => u.system === 'both' || u.system === system);
  if (d === 'length' && system === 'customary' && Math.abs(si) < 1e7 && dice.below(2) === 0)
    return feetInches(si, dice);
  // A unit in which the number is handy, mostly.
  const handy = fit.filter((u) => {
    const n = Math.abs(fromSi(d, u, si));
    return n === 0 || (n >= 0.05 && n < 5000);
  });
  const unit = dice.pick(handy.length > 0 && dice.below(10) > 0 ? handy : fit);
  if (unit.name === '1:n') return oneIn(si, dice) ?? `${plainText(si * 100, 4)}%`;
  const number = plainText(fromSi(d, unit, si), hand.digits);
  if (dice.below(8) > 0) return withUnit(number, unit, dice);
  const value = dice.below(2) === 0 ? number : Number(number);
  return { value, unit: unit.name };
}
