/** Exact fractions of whole numbers, and roots, π and angles to 50 digits: nothing of the library's own. */

const gcd = (a: bigint, b: bigint): bigint => {
  let [x, y] = [a < 0n ? -a : a, b];
  while (y !== 0n) [x, y] = [y, x % y];
  return x;
};

/** A fraction in lowest terms, the part below the line above zero. */
export class Rational {
  private constructor(
    readonly top: bigint,
    readonly below: bigint,
  ) {}

  /** `top ÷ below`. */
  static of(top: bigint | number, below: bigint | number = 1n): Rational {
    const [n, d] = [BigInt(top), BigInt(below)];
    if (d === 0n) throw new RangeError('nothing is divided by zero');
    const common = gcd(n, d < 0n ? -d : d) || 1n;
    return d < 0n ? new Rational(-n / common, -d / common) : new Rational(n / common, d / common);
  }

  /** A decimal written out, with an exponent or without. */
  static parse(text: string): Rational {
    const [, sign = '', whole = '', part = '', exponent = '0'] =
      /^([+-]?)(\d*)\.?(\d*)(?:e([+-]?\d+))?$/.exec(text) ?? [];
    if (whole + part === '') throw new RangeError(`not a decimal: ${text}`);
    const n = BigInt(whole + part) * (sign === '-' ? -1n : 1n);
    const power = Number(exponent) - part.length;
    return power < 0 ? Rational.of(n, 10n ** BigInt(-power)) : Rational.of(n * 10n ** BigInt(power));
  }

  plus(other: Rational): Rational {
    return Rational.of(this.top * other.below + other.top * this.below, this.below * other.below);
  }

  minus(other: Rational): Rational {
    return Rational.of(this.top * other.below - other.top * this.below, this.below * other.below);
  }

  times(other: Rational | number): Rational {
    if (typeof other === 'number') return Rational.of(this.top * BigInt(other), this.below);
    return Rational.of(this.top * other.top, this.below * other.below);
  }

  over(other: Rational | number): Rational {
    if (typeof other === 'number') return Rational.of(this.top, this.below * BigInt(other));
    return Rational.of(this.top * other.below, this.below * other.top);
  }

  squared(): Rational {
    return this.times(this);
  }

  abs(): Rational {
    return this.top < 0n ? new Rational(-this.top, this.below) : this;
  }

  sign(): number {
    return this.top > 0n ? 1 : this.top < 0n ? -1 : 0;
  }

  /** Below zero where this is the lesser. */
  compare(other: Rational): number {
    const difference = this.top * other.below - other.top * this.below;
    return difference > 0n ? 1 : difference < 0n ? -1 : 0;
  }

  lessThan(other: Rational): boolean {
    return this.compare(other) < 0;
  }

  /** The whole number at or below it. */
  floor(): bigint {
    const q = this.top / this.below;
    return this.top < 0n && q * this.below !== this.top ? q - 1n : q;
  }

  /** The whole number at or above it. */
  ceil(): bigint {
    return -new Rational(-this.top, this.below).floor();
  }

  toNumber(): number {
    const [a, b] = [Number(this.top), Number(this.below)];
    if (Number.isFinite(a) && Number.isFinite(b)) return a / b;
    const over = this.below.toString(2).length - 200;
    return over > 0 ? Number(this.top >> BigInt(over)) / Number(this.below >> BigInt(over)) : a / b;
  }

  /** Cut to 60 decimal places, so that long sums of roots and sines stay short. */
  cut(): Rational {
    return Rational.of((this.top * CUT) / this.below, CUT);
  }
}

const CUT = 10n ** 60n;
/** Terms below this are dropped from series. */
const HAIR = Rational.of(1n, 10n ** 62n);

export const ZERO = Rational.of(0);
export const ONE = Rational.of(1);
export const whole = (n: number | bigint): Rational => Rational.of(n);
export const sum = (parts: readonly Rational[]): Rational => parts.reduce((a, b) => a.plus(b), ZERO);
export const most = (a: Rational, b: Rational): Rational => (a.lessThan(b) ? b : a);
export const least = (a: Rational, b: Rational): Rational => (b.lessThan(a) ? b : a);

function rootOf(n: bigint): bigint {
  if (n < 2n) return n;
  let x = 1n << BigInt((n.toString(2).length + 1) >> 1);
  for (;;) {
    const y = (x + n / x) >> 1n;
    if (y >= x) return x;
    x = y;
  }
}

/** The square root, to 60 places or better. */
export function root(a: Rational): Rational {
  const scale = 10n ** 130n;
  return Rational.of(rootOf((a.top * scale) / a.below), 10n ** 65n);
}

/** Sum of a series whose terms fall. */
function series(first: Rational, next: (term: Rational, n: number) => Rational): Rational {
  let [total, term] = [ZERO, first.cut()];
  for (let n = 1; HAIR.lessThan(term.abs()); n += 1) {
    total = total.plus(term);
    term = next(term, n).cut();
  }
  return total;
}

function smallArcTangent(x: Rational): Rational {
  const square = x.squared().cut();
  let power = x.cut();
  let total = ZERO;
  for (let n = 1; HAIR.lessThan(power.abs()); n += 2) {
    total = n % 4 === 1 ? total.plus(power.over(n)) : total.minus(power.over(n));
    power = power.times(square).cut();
  }
  return total.cut();
}

/** π by the formula of Machin, `16 atan(1/5) − 4 atan(1/239)`. */
export const PI = smallArcTangent(Rational.of(1, 5))
  .times(16)
  .minus(smallArcTangent(Rational.of(1, 239)).times(4))
  .cut();

export function sine(a: Rational): Rational {
  const square = a.squared().cut();
  return series(a, (term, n) => term.times(square).over(-2 * n * (2 * n + 1)));
}

function cosine(a: Rational): Rational {
  const square = a.squared().cut();
  return series(ONE, (term, n) => term.times(square).over(-2 * n * (2 * n - 1)));
}

export const tangent = (a: Rational): Rational => sine(a).over(cosine(a)).cut();

/** The arc tangent, halved until the series falls fast. */
export function arcTangent(x: Rational): Rational {
  if (x.abs().lessThan(Rational.of(1, 8))) return smallArcTangent(x);
  const half = x.over(ONE.plus(root(ONE.plus(x.squared())))).cut();
  return arcTangent(half).times(2);
}

export const radians = (degrees: Rational): Rational => degrees.times(PI).over(180).cut();
export const degrees = (a: Rational): Rational => a.times(180).over(PI).cut();
