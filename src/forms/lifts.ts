/**
 * Lifts in forms whose maker says how high they may be filled while the concrete is fluid, as insulated forms are.
 *
 * At a rise `R` what was placed within the time `s` that it takes to stiffen stands fluid above the rest, `f = R × s`.
 * The maker's most, `m`, allows a rise of `m ÷ s`, and a wall of height `h` takes `n = ceil(h ÷ m)` rounds.
 */
import type { Quantity } from '../quantity/quantity';
import type { Pad } from '../reckoning/pad';
import { wholeUnits } from '../reckoning/whole';
import * as cautions from './cautions';

type Length = Quantity<'length'>;
type Speed = Quantity<'speed'>;

/** Lifts of a placement. */
export interface Lifts {
  /** How high concrete stands that has not stiffened yet, at the rise told. */
  readonly fluidHeight?: Quantity<'length'>;
  /** The fastest rise that the maker's most allows. */
  readonly fastestByLift?: Quantity<'speed'>;
  /** Rounds in which the height is placed. */
  readonly lifts?: Quantity<'count'>;
}

/** What is asked of the lifts. */
export interface LiftRule {
  readonly height: Length;
  readonly stiffensIn: Quantity<'time'> | undefined;
  readonly mostLift: Length | undefined;
}

/** Lifts by rise and stiffening, and whether the forms bear the rise. */
export function liftsOf({ height: h, stiffensIn: s, mostLift: m }: LiftRule, R: Speed, pad: Pad): Lifts {
  if (!s || !m) return {};
  const [small, fast] = pad.system === 'metric' ? (['m', 'm/h'] as const) : (['ft', 'ft/h'] as const);
  const f = pad.step('height still fluid', 'f = R × s', { R, s }, R.times(s).in(small));
  const V = pad.step('fastest rise by the most of a lift', 'V = m ÷ s', { m, s }, m.over(s).in(fast));
  if (f.greaterThan(m)) pad.caution(cautions.fluidTooHigh(m, f, V));
  return { fluidHeight: f, fastestByLift: V, lifts: wholeUnits('lifts', h, m, 'mostLift', pad) };
}
