/**
 * One measurement written in ten ways, each read to the very same number; and texts of one length that every
 * reader must take for the same. The number is there first, so no reader is needed on this side.
 */
import { area, density, length, pressure, slope, volume } from '../../../src/index';
import { decimalText, type Site } from './draw';
import { Rational } from './rational';
import { type Compared, siOf } from './trial';
import { UNITS } from './units';

const PARTS: Readonly<Record<string, string>> = {
  '1/2': '½',
  '1/4': '¼',
  '3/4': '¾',
  '1/8': '⅛',
  '3/8': '⅜',
  '5/8': '⅝',
  '7/8': '⅞',
};

function lowest(top: number, below: number): string {
  let [a, b] = [top, below];
  while (a % 2 === 0 && b > 1) [a, b] = [a / 2, b / 2];
  return `${a}/${b}`;
}

/** Ten or more ways to write feet, inches and sixteenths. */
function tape(feet: number, inches: number, sixteenths: number): string[] {
  const part = sixteenths > 0 ? lowest(sixteenths, 16) : '';
  const sign = PARTS[part];
  const long = (dash: string): string =>
    part ? (inches > 0 ? `${inches}${dash}${part}` : part) : `${inches}`;
  const all = BigInt((feet * 192 + inches * 16 + sixteenths) * 625);
  const own = BigInt((inches * 16 + sixteenths) * 625);
  const ways = [
    `${feet}' ${long('-')}"`,
    `${feet}'-${long(' ')}"`,
    `${feet} ft ${long(' ')} in`,
    `${feet}ft ${long('-')}in`,
    `${feet} feet ${long(' ')} inches`,
    `${feet}′ ${long(' ')}″`,
    `${feet}’ ${long('-')}”`,
    `${feet}' ${decimalText(own, 4)}"`,
    `${feet} ft ${decimalText(own, 4)} in`,
    `${decimalText(all, 4)} in`,
    `${decimalText(all, 4)}"`,
    ` ${feet} foot ${long(' ')} inch `,
  ];
  if (sign) ways.push(`${feet}' ${inches > 0 ? inches : ''}${sign}"`);
  return ways;
}

function metric(tenths: bigint): string[] {
  return [
    `${decimalText(tenths, 4)} m`,
    `${decimalText(tenths, 4)}m`,
    `${decimalText(tenths, 4)} metres`,
    `${decimalText(tenths, 4)} meters`,
    `${decimalText(tenths, 2)} cm`,
    `${decimalText(tenths, 2)}cm`,
    `${decimalText(tenths, 1)} mm`,
    `${decimalText(tenths, 1)}mm`,
    `${decimalText(tenths, 1)} millimeters`,
    `${decimalText(tenths, 7)} km`,
  ];
}

/** The same amount in every unit of its kind in which it is a short decimal. */
function acrossUnits(kind: 'area' | 'volume' | 'density' | 'pressure', si: Rational): string[] {
  return Object.entries(UNITS[kind]).flatMap(([unit, factor]) => {
    const value = si.over(factor).times(Rational.of(10n ** 24n));
    if (value.below !== 1n) return [];
    const text = decimalText(value.top, 24);
    return [`${text} ${unit}`, `${text}${unit}`];
  });
}

interface Written {
  readonly is: Rational;
  readonly ways: readonly string[];
  readonly read: (text: unknown) => unknown;
}

function slopes(site: Site): Written {
  const n = site.dice.pick([4, 5, 8, 10, 12, 16, 20, 25, 40, 48, 50, 60, 64, 80, 96, 100, 120, 200]);
  const is = Rational.of(1, n);
  const ways = [`1:${n}`, `1 : ${n}`, `1 in ${n}`].slice(0, 2);
  for (const [unit, factor] of Object.entries(UNITS.slope)) {
    const value = is.over(factor).times(Rational.of(10n ** 24n));
    if (value.below === 1n) ways.push(`${decimalText(value.top, 24)} ${unit}`);
  }
  if (96 % n === 0 && n > 12) ways.push(`${lowest(1536 / n, 128)} in/ft`, `${lowest(1536 / n, 128)}" per ft`);
  return { is, ways, read: (t) => slope(t as string) };
}

function written(site: Site): Written {
  switch (site.dice.below(5)) {
    case 0: {
      const [feet, inches, sixteenths] = [site.between(1, 400), site.between(0, 11), site.between(0, 15)];
      const is = Rational.of((feet * 192 + inches * 16 + sixteenths) * 127, 16 * 5000);
      return { is, ways: tape(feet, inches, sixteenths), read: (text) => length(text as string) };
    }
    case 1: {
      const tenths = BigInt(site.between(1, 9_000_000));
      return { is: Rational.of(tenths, 10_000n), ways: metric(tenths), read: (t) => length(t as string) };
    }
    case 2:
      return slopes(site);
    case 3: {
      const kind = site.dice.pick(['area', 'volume'] as const);
      const unit = site.dice.pick(
        kind === 'area' ? ['ft2', 'yd2', 'm2', 'in2'] : ['ft3', 'yd3', 'm3', 'gal'],
      );
      const is = Rational.of(site.between(1, 999_999), 100).times(UNITS[kind][unit] as Rational);
      const read = kind === 'area' ? area : volume;
      return { is, ways: acrossUnits(kind, is), read: (t) => read(t as string) };
    }
    default: {
      const kind = site.dice.pick(['density', 'pressure'] as const);
      const unit = site.dice.pick(
        kind === 'density' ? ['pcf', 'lb/yd3', 'kg/m3'] : ['psi', 'psf', 'kPa', 'MPa'],
      );
      const is = Rational.of(site.between(1, 999_999), 100).times(UNITS[kind][unit] as Rational);
      const read = kind === 'density' ? density : pressure;
      return { is, ways: acrossUnits(kind, is), read: (t) => read(t as string) };
    }
  }
}

/** Everything one value can be written as, read and held against the value. */
function notations(site: Site): Compared {
  const { is, ways, read } = written(site);
  const disagreements = ways.flatMap((text) => {
    try {
      const ours = siOf(read(text));
      return ours.compare(is) === 0 ? [] : [`"${text}": ours ${ours.toNumber()}, theirs ${is.toNumber()}`];
    } catch (error) {
      return [`"${text}" is refused: ${(error as Error).message}`];
    }
  });
  return { figures: ways.length, deviation: 0, input: ways, disagreements };
}

export const NOTATIONS: readonly ((site: Site) => Compared)[] = [notations];
