/** Lengths as they stand on a plan: to the mark that a tape has. */
import { ROUND_HALF_UP } from '../quantity/decimal';
import { canonicalValue, type Quantity } from '../quantity/quantity';
import type { System } from '../quantity/units';

type Length = Quantity<'length'>;

/** Shorter than this, in meters, a length is told in millimeters. */
const IN_METERS = 1;
/** Up to this, in meters, a size is told in the small unit: bars at 18 in, not at 1 ft 6 in. */
const SIZES = 2;
/** Below this, in meters, tenths of a millimeter count. */
const FINE = 0.01;
const INCH = '0.0254';

const short = (q: Length, most: number): boolean => Math.abs(q.toNumber('m')) < most;

/** Trailing zeros after the point say nothing. */
const bare = (text: string): string => text.replace(/\.0+(?= )|(\.\d*?[1-9])0+(?= )/, '$1');

/** To lay out from: `9 ft 4-1/2 in`, `2.845 m`, `300 mm`. */
export function lengthText(q: Length, system: System): string {
  if (system === 'customary') return q.format('ft-in', { denominator: 16 });
  const mm = canonicalValue(q).times(1000).toDecimalPlaces(0, ROUND_HALF_UP).abs();
  return mm.lessThan(IN_METERS * 1000) ? q.format('mm', { places: 0 }) : bare(q.format('m', { places: 3 }));
}

/** As specified: `18 in`, `1-1/4 in`, `450 mm`. */
export function sizeText(q: Length, system: System): string {
  if (!short(q, SIZES)) return lengthText(q, system);
  if (system === 'metric') return bare(q.format('mm', { places: short(q, FINE) ? 1 : 0 }));
  const parts = canonicalValue(q).times(16).div(INCH).toDecimalPlaces(0, ROUND_HALF_UP);
  const whole = parts.divToInt(16);
  const rest = fraction(parts.minus(whole.times(16)).abs().toNumber());
  return `${[whole.isZero() && rest ? '' : whole.toFixed(), rest].filter(Boolean).join('-')} in`;
}

function fraction(sixteenths: number): string {
  if (sixteenths === 0) return '';
  let [top, bottom] = [sixteenths, 16];
  while (top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  return `${top}/${bottom}`;
}
