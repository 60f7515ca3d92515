/** Strength by maturity, read between broken cylinders, and when a strength is reached. */

import { canonicalValue, newQuantity, type Quantity, unitShown } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import type { Pad } from '../reckoning/pad';
import { ageFactor } from './arrhenius';
import { ABSOLUTE_ZERO, above, type Temperature } from './degrees';
import * as faults from './faults';
import type { Interval, Method } from './maturity-index';
import type { MaturityParsed } from './maturity-input';

type Time = Quantity<'time'>;
type Strength = Quantity<'pressure'>;
type TemperatureTime = Quantity<'temperature-time'>;

/** When the strength that is waited for is there. */
export interface WantedStrength {
  /** How long after placing it was reached; left out where it was not. */
  readonly reachedAt?: Quantity<'time'>;
  /** How much longer it takes, should the concrete stay as warm as it was last. */
  readonly moreTime?: Quantity<'time'>;
}

/** One number for how far a specimen or the slab has come: its maturity or its equivalent age. */
export type Index = TemperatureTime | Time;

interface Point {
  readonly index: Index;
  readonly strength: Strength;
}

export function pointsOf({ calibration }: MaturityParsed): readonly Point[] | undefined {
  if (!calibration) return undefined;
  const byAge = calibration[0]?.age !== undefined;
  const points = calibration.map(({ maturity, age, strength }, i) => {
    const at = `calibration[${i}]`;
    if ((maturity === undefined) === (age === undefined)) refuse(at, faults.oneIndex());
    const index = byAge ? age : maturity;
    return index ? { index, strength } : refuse(at, faults.oneIndex());
  });
  points.forEach(({ index, strength }, i) => {
    const before = points[i - 1];
    if (!before) return;
    const grows = compare(index, before.index) > 0 && strength.greaterThan(before.strength);
    if (!grows) refuse(`calibration[${i}]`, faults.calibrationOrder(i + 1));
  });
  return points;
}

const compare = (a: Index, b: Index): number => canonicalValue(a).comparedTo(canonicalValue(b));

/** Straight between two points: `y = y1 + (y2 − y1) × (x − x1) ÷ (x2 − x1)`. */
function between<
  X extends 'pressure' | 'time' | 'temperature-time',
  Y extends 'pressure' | 'time' | 'temperature-time',
>(
  what: string,
  [x1, y1]: readonly [Quantity<X>, Quantity<Y>],
  [x2, y2]: readonly [Quantity<X>, Quantity<Y>],
  x: Quantity<X>,
  pad: Pad,
): Quantity<Y> {
  const far = canonicalValue(x)
    .minus(canonicalValue(x1))
    .div(canonicalValue(x2).minus(canonicalValue(x1)));
  const y = canonicalValue(y1).plus(canonicalValue(y2).minus(canonicalValue(y1)).times(far));
  return pad.step(
    what,
    'y = c + (d − c) × (x − a) ÷ (b − a)',
    { a: x1, b: x2, c: y1, d: y2, x },
    newQuantity(y1.dimension, y, unitShown(y1)) as Quantity<Y>,
  );
}

const pairAround = <T>(points: readonly T[], beyond: (point: T) => boolean): readonly [T, T] | undefined => {
  const i = points.findIndex(beyond);
  return i > 0 ? [points[i - 1] as T, points[i] as T] : undefined;
};

export function strengthAt(points: readonly Point[], index: Index, pad: Pad): Strength | undefined {
  const around = pairAround(points, (p) => compare(p.index, index) >= 0);
  if (around) {
    const [a, b] = around;
    const x = index as Quantity<'time'>;
    return between(
      'strength by the calibration',
      [a.index as Quantity<'time'>, a.strength],
      [b.index as Quantity<'time'>, b.strength],
      x,
      pad,
    );
  }
  const first = points[0] as Point;
  return compare(first.index, index) === 0 ? first.strength : undefined;
}

/** The maturity or the equivalent age at which a strength is there. */
export function indexFor(points: readonly Point[], wanted: Strength, pad: Pad): Index | undefined {
  const around = pairAround(points, ({ strength }) => !strength.lessThan(wanted));
  if (!around) return points[0]?.strength.equals(wanted) ? points[0].index : undefined;
  const [a, b] = around;
  return between(
    'what it takes',
    [a.strength, a.index as Quantity<'time'>],
    [b.strength, b.index as Quantity<'time'>],
    wanted,
    pad,
  );
}

/** When a maturity or an equivalent age was reached, or how much longer it takes. */
export function whenReached(
  needed: Index,
  intervals: readonly Interval[],
  method: Method,
  pad: Pad,
): WantedStrength {
  const byAge = needed.dimension === 'time';
  const part = (one: Interval): Index => (byAge ? one.ages : one.adds);
  let so: Index | undefined;
  for (const one of intervals) {
    const before = so ?? ((part(one) as Time).minus(part(one) as Time) as Index);
    const after: Index = (before as Time).plus(part(one) as Time);
    if (compare(after, needed) >= 0) {
      const reachedAt = between(
        'when it was reached',
        [before as Time, one.from.at],
        [after as Time, one.to.at],
        needed as Time,
        pad,
      );
      return { reachedAt };
    }
    so = after;
  }
  const last = (intervals.at(-1) as Interval).to.temperature;
  const lacking = pad.step(
    'what it lacks',
    'l = w − m',
    { w: needed, m: so as Index },
    (needed as Time).minus(so as Time),
  ) as Index;
  return { ...moreTime(lacking, last, method, pad) };
}

function moreTime(lacking: Index, T: Temperature, method: Method, pad: Pad): { moreTime?: Time } {
  const { datum: z, activation: q, reference: s } = method;
  if (lacking.dimension === 'time') {
    const g = ageFactor(T, s, q, pad);
    return {
      moreTime: pad.step(
        'more time, as warm as it was last',
        'k = l ÷ exp(q ÷ (s − o) − q ÷ (T − o))',
        { l: lacking, q, s, o: ABSOLUTE_ZERO.as(pad.system), T },
        (lacking as Time).over(g),
      ),
    };
  }
  const D = above(z, T);
  if (D.sign() <= 0) return {};
  return {
    moreTime: pad.step(
      'more time, as warm as it was last',
      'k = l ÷ (T − z)',
      { l: lacking, T, z },
      (lacking as TemperatureTime).over(D),
    ),
  };
}
