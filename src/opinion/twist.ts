/** A number as it was twisted when it was written down. */
import { Decimal, floorWhole, ROUND_HALF_UP } from '../quantity/decimal';
import { STRAY } from './scale';
import type { Twist } from './slip';

const ratios = new WeakMap<readonly string[], number>();

/** Each is asked for in very many trials. */
function ratioOf(times: readonly [string, string]): number {
  const known = ratios.get(times);
  if (known !== undefined) return known;
  const ratio = Number(times[0]) / Number(times[1]);
  ratios.set(times, ratio);
  return ratio;
}

/** A number without sign as it is written with so many places. */
function textOf(n: number, places: number): string {
  if (places >= 0) return n.toFixed(places);
  const step = 10 ** -places;
  return (Math.round(n / step) * step).toFixed(0);
}

/** The same exactly; with less than no places in whole tens, hundreds and so on. */
export function exactText(n: Decimal, places: number): string {
  if (places >= 0) return n.toFixed(places, ROUND_HALF_UP);
  const step = new Decimal(10 ** -places);
  return n.div(step).toDecimalPlaces(0, ROUND_HALF_UP).times(step).toFixed(0);
}

/** In binary numbers, where very many are tried. */
export function twisted(si: number, { unit, times, digits, down, more }: Twist): number {
  if (more !== undefined) return si + more;
  if (times) return si * ratioOf(times);
  if (down !== undefined) return Math.floor(si / down + STRAY) * down;
  if (!digits) return si;
  const instead = digits.slip(textOf(Math.abs(si / unit), digits.places));
  return instead === undefined ? Number.NaN : Math.sign(si) * Number(instead) * unit;
}

/** Exactly, where what it gives is told. */
export function twistedExactly(si: Decimal, { unit, times, digits, down, more }: Twist): Decimal {
  if (more !== undefined) return si.plus(more);
  if (times) return si.times(times[0]).div(times[1]);
  if (down !== undefined) return floorWhole(si.div(down)).times(down);
  if (!digits) return si;
  const instead = digits.slip(exactText(si.div(unit).abs(), digits.places));
  if (instead === undefined) return new Decimal(Number.NaN);
  return new Decimal(instead).times(unit).times(si.isNegative() ? -1 : 1);
}
