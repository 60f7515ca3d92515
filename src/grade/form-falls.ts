/** The falls of a surface of forms, checked, and the slopes of a plane. */
import { Decimal } from '../quantity/decimal';
import * as faults from '../quantity/faults';
import { canonicalValue, type Quantity, quantityOf, systemOfQuantity } from '../quantity/quantity';
import type { System } from '../quantity/units';
import { refuse } from '../reckoning/calculation';
import type { Pad } from '../reckoning/pad';
import { say } from '../reckoning/words';
import * as cautions from './form-cautions';
import type { Elevation, Plane } from './shapes';
import { slopeBetween } from './slope';
import type { ParsedFall, ParsedPoint } from './sought-plane';
import { metersAs } from './spots';

type Length = Quantity<'length'>;
type Slope = Quantity<'slope'>;

/** A fall, checked. */
export interface FallFigure {
  /** Name of the fall. */
  readonly name: string;
  /** Slope from the upper end to the lower; negative when it rises. */
  readonly slope: Quantity<'slope'>;
  /** The slope against the least and the most asked for. */
  readonly verdict: 'met' | 'too flat' | 'too steep';
}

/** Strays of the elimination would make a level fall a hair less than level. */
const STEADY = 30;
const INCHES_PER_FOOT = 12;

function verdictOf(
  { name, minimum: least, maximum: most }: ParsedFall,
  slope: Slope,
  pad: Pad,
): FallFigure['verdict'] {
  const flat = least && slope.lessThan(least) ? least : undefined;
  const steep = most && slope.greaterThan(most) ? most : undefined;
  const passed = flat ?? steep;
  if (passed) pad.caution(cautions.fallNotMet(name, passed, slope));
  if (flat) return 'too flat';
  return steep ? 'too steep' : 'met';
}

/** Check every fall on a surface. */
export function fallFigures(
  falls: readonly ParsedFall[],
  elevation: Elevation,
  system: System,
  pad: Pad,
): FallFigure[] {
  const at = (p: ParsedPoint): Length =>
    metersAs(elevation(canonicalValue(p.x), canonicalValue(p.y)), system);
  return falls.map((fall, i) => {
    const { name, from, to } = fall;
    const [dx, dy] = [to.x.minus(from.x), to.y.minus(from.y)];
    const long = Decimal.hypot(canonicalValue(dx), canonicalValue(dy));
    if (long.isZero()) refuse(`falls[${i}].to`, faults.repeatedPoint(1));
    const [u, v, d] = [at(from), at(to), metersAs(long, system)];
    const raw = slopeBetween(u.minus(v), d);
    const steady = quantityOf('slope', canonicalValue(raw).toDecimalPlaces(STEADY), systemOfQuantity(d));
    const slope = pad.step(say`fall along ${{ name }}`, 's = (u − v) ÷ d', { u, v, d }, steady.in('%'));
    return { name, slope, verdict: verdictOf(fall, slope, pad) };
  });
}

const perRun = (fall: Decimal, system: System): Slope =>
  quantityOf('slope', fall.times(INCHES_PER_FOOT).toDecimalPlaces(STEADY), system).in('%');

/** Fall along x and y of a plane, and its steepest. */
export function planeFigures(
  { p, q }: Plane,
  system: System,
  pad?: Pad,
): { readonly alongX: Slope; readonly alongY: Slope; readonly steepest: Slope } {
  const [X, Y] = [perRun(p, system), perRun(q, system)];
  const steepest = perRun(Decimal.hypot(p, q), system);
  pad?.step('steepest slope', 'S = hypot(X, Y)', { X, Y }, steepest);
  return { alongX: X, alongY: Y, steepest };
}
