/** Random measurements that are held as exact fractions first and written as people write them second. */
import type { Chance } from '../relations/random';
import { Rational } from './rational';
import { type Kind, UNITS } from './units';

/** A measurement as it goes into an input, and what it is. */
export interface Measure {
  readonly put: string | { readonly value: string; readonly unit: string };
  /** In SI; slopes and ratios as plain numbers, angles in degrees. */
  readonly is: Rational;
}

/** How sizes are drawn: ordinary ones, or far smaller or larger than any job. */
export type Size = 'ordinary' | 'tiny' | 'huge';

/** A decimal with so many places, as text. */
export function decimalText(n: bigint, places: number): string {
  const digits = (n < 0n ? -n : n).toString().padStart(places + 1, '0');
  const [a, b] = [digits.slice(0, digits.length - places), digits.slice(digits.length - places)];
  const trimmed = b.replace(/0+$/, '');
  return `${n < 0n ? '-' : ''}${a}${trimmed ? `.${trimmed}` : ''}`;
}

/** Feet, inches and sixteenths. */
function feetAndInches(sixteenths: number, style: number): string {
  const feet = Math.floor(sixteenths / 192);
  const inches = Math.floor((sixteenths % 192) / 16);
  let [top, below] = [sixteenths % 16, 16];
  while (top > 0 && top % 2 === 0) [top, below] = [top / 2, below / 2];
  const [f, i] = style === 0 ? ["'", '"'] : [' ft', ' in'];
  const dash = style === 0 ? '-' : ' ';
  const part = top > 0 ? `${inches > 0 ? `${inches}${dash}` : ''}${top}/${below}${i}` : `${inches}${i}`;
  if (feet === 0) return part;
  return inches === 0 && top === 0 ? `${feet}${f}` : `${feet}${f} ${part}`;
}

/** One job: its units, its sizes, and what chance gives it. */
export class Site {
  readonly metric: boolean;
  readonly size: Size;

  constructor(
    readonly dice: Chance,
    size?: Size,
  ) {
    const n = dice.below(20);
    this.size = size ?? (n === 0 ? 'tiny' : n === 1 ? 'huge' : 'ordinary');
    this.metric = dice.below(2) === 0;
  }

  /** Yes or no. */
  maybe(): boolean {
    return this.dice.below(2) === 0;
  }

  between(least: number, most: number): number {
    return least + this.dice.below(most - least + 1);
  }

  /** Meters from one to another; at tiny and huge sizes a hundredth and a thousandfold of that. */
  length(from: number, to: number): Measure {
    const scale = { ordinary: 1, tiny: 0.01, huge: 1000 }[this.size];
    return this.plainLength(from * scale, to * scale);
  }

  /** Meters from one to another, whatever the size of the job. */
  plainLength(from: number, to: number): Measure {
    const meters = from + this.dice.next() * (to - from);
    // Now and then a job has both.
    const metric = this.dice.below(12) === 0 ? !this.metric : this.metric;
    return metric ? this.metricLength(meters) : this.customaryLength(meters);
  }

  private metricLength(meters: number): Measure {
    const tenths = BigInt(Math.max(1, Math.round(meters * 10_000)));
    const is = Rational.of(tenths, 10_000n);
    const forms = [
      [decimalText(tenths, 4), 'm'],
      [decimalText(tenths, 1), 'mm'],
      [decimalText(tenths, 2), 'cm'],
    ] as const;
    const [value, unit] = this.dice.pick(forms);
    return { put: this.pair(value, unit), is };
  }

  private customaryLength(meters: number): Measure {
    const inches = meters / 0.0254;
    if (inches < 0.25) {
      const n = BigInt(Math.max(1, Math.round(inches * 10_000)));
      return {
        put: this.pair(decimalText(n, 4), 'in'),
        is: Rational.of(n, 10_000n).times(Rational.of(127, 5000)),
      };
    }
    const sixteenths = Math.max(1, Math.round(inches * 16));
    const style = this.dice.below(4);
    if (style < 2)
      return { put: feetAndInches(sixteenths, style), is: Rational.of(sixteenths * 127, 16 * 5000) };
    const hundredths = BigInt(Math.max(1, Math.round(style === 2 ? inches * 100 : (inches / 12) * 100)));
    const unit = style === 2 ? 'in' : 'ft';
    return {
      put: this.pair(decimalText(hundredths, 2), unit),
      is: Rational.of(hundredths, 100n).times(UNITS.length[unit] as Rational),
    };
  }

  private pair(value: string, unit: string): Measure['put'] {
    return this.dice.below(4) === 0 ? { value, unit } : `${value} ${unit}`;
  }

  /** A value in one of two units by the system of the job, from one number to another of the first. */
  of(kind: Kind, customary: string, metric: string, from: number, to: number, places = 2): Measure {
    const unit = this.metric ? metric : customary;
    const factor = (UNITS[kind][customary] as Rational).over(UNITS[kind][unit] as Rational).toNumber();
    const scale = 10 ** places;
    const n = BigInt(
      Math.max(
        1,
        Math.round((from + this.dice.next() * (to - from)) * (unit === metric ? factor : 1) * scale),
      ),
    );
    return {
      put: this.pair(decimalText(n, places), unit),
      is: Rational.of(n, BigInt(scale)).times(UNITS[kind][unit] as Rational),
    };
  }

  /** A share in percent, written so. */
  percent(from: number, to: number): Measure {
    const n = BigInt(this.between(from * 100, to * 100));
    return { put: `${decimalText(n, 2)}%`, is: Rational.of(n, 10_000n) };
  }

  /** So many to one. */
  toOne(from: number, to: number): Measure {
    const n = BigInt(this.between(Math.round(from * 100), Math.round(to * 100)));
    return { put: `${decimalText(n, 2)}:1`, is: Rational.of(n, 100n) };
  }

  slope(from: number, to: number): Measure {
    const ways = ['%', 'in/ft', 'mm/m'];
    const unit = this.dice.pick(ways);
    const factor = UNITS.slope[unit] as Rational;
    const value = (from + this.dice.next() * (to - from)) / 100 / factor.toNumber();
    const n = BigInt(Math.round(value * 1000));
    return { put: this.pair(decimalText(n, 3), unit), is: Rational.of(n, 1000n).times(factor) };
  }

  degrees(from: number, to: number): Measure {
    const n = BigInt(this.between(from * 100, to * 100));
    return { put: `${decimalText(n, 2)} deg`, is: Rational.of(n, 100n) };
  }
}
