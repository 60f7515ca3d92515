/**
 * The gap under a straightedge, from readings along a line.
 *
 * The straightedge is laid along the readings at every place where it starts on one. It rests on the
 * two that stand highest, so the gap at a reading is the height of the line that bridges the
 * readings under it (their upper hull) above that reading.
 */
import { Decimal } from '../quantity/decimal';
import * as faults from '../quantity/faults';
import { constant, length } from '../quantity/make';
import { canonicalValue, type Quantity, type QuantityInput, systemOfQuantity } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import * as cautions from '../reckoning/cautions';
import { fields, list, maybe, quantity, wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { CLOSED_FORM, UFGS_FLATNESS } from '../reckoning/source';
import { small } from './marks';
import { metresAs } from './spots';

/** Input of {@link straightedge}. */
export interface StraightedgeInput {
  /** Elevations of the surface along a line, evenly spaced. */
  readonly readings: readonly QuantityInput<'length'>[];
  /** Distance between neighbouring readings. */
  readonly spacing: QuantityInput<'length'>;
  /** Length of the straightedge; by default 5 ft. */
  readonly edge?: QuantityInput<'length'>;
  /** The widest gap allowed; by default 1/4 in. */
  readonly allowed?: QuantityInput<'length'>;
}

/** Figures of {@link straightedge}. */
export interface StraightedgeFigures {
  /** The widest gap. */
  readonly gap: Quantity<'length'>;
  /** Number of the reading where it is, from 1. */
  readonly at: Quantity<'count'>;
  /** The widest gap allowed, as given or by default. */
  readonly allowed: Quantity<'length'>;
  /** The widest gap against the one allowed. */
  readonly verdict: 'flat enough' | 'not flat enough';
  /** Highest reading less the lowest: how far the line is out of level. */
  readonly outOfLevel: Quantity<'length'>;
}

type Length = Quantity<'length'>;

interface Parsed {
  readonly readings: readonly Length[];
  readonly spacing: Length;
  readonly edge: Length | undefined;
  readonly allowed: Length | undefined;
}

const EDGE = constant(() => length('5 ft'));
const ALLOWED = constant(() => length('1/4 in'));
const READING_LIMIT = 2000;
const STEP_LIMIT = 200;

/** Corners of the upper hull of the readings from `from` to `to`. */
function bridge(z: readonly Decimal[], from: number, to: number): number[] {
  const hull: number[] = [];
  for (let i = from; i <= to; i += 1) {
    while (hull.length > 1) {
      const [a, b] = [hull[hull.length - 2] as number, hull[hull.length - 1] as number];
      const rise = (z[b] as Decimal).minus(z[a] as Decimal).times(i - a);
      if (rise.greaterThan((z[i] as Decimal).minus(z[a] as Decimal).times(b - a))) break;
      hull.pop();
    }
    hull.push(i);
  }
  return hull;
}

interface Gap {
  readonly at: number;
  readonly gap: Decimal;
}

function widest(z: readonly Decimal[], hull: readonly number[], before: Gap): Gap {
  let best = before;
  for (let k = 1; k < hull.length; k += 1) {
    const [a, b] = [hull[k - 1] as number, hull[k] as number];
    const [za, zb] = [z[a] as Decimal, z[b] as Decimal];
    for (let i = a + 1; i < b; i += 1) {
      const gap = za
        .plus(
          zb
            .minus(za)
            .times(i - a)
            .div(b - a),
        )
        .minus(z[i] as Decimal);
      if (gap.greaterThan(best.gap)) best = { at: i, gap };
    }
  }
  return best;
}

function reckon(input: Parsed, pad: Pad): StraightedgeFigures {
  const edge = input.edge ?? EDGE();
  const allowed = input.allowed ?? ALLOWED();
  if (!input.edge) {
    pad.assume({
      name: 'edge',
      value: EDGE().format(),
      because: 'walks are checked over 5 ft',
      override: 'Give edge',
      source: UFGS_FLATNESS,
    });
  }
  if (!input.allowed) {
    pad.assume({
      name: 'allowed',
      value: ALLOWED().format(),
      because: '1/4 in in 5 ft for walks',
      override: 'Give allowed',
      source: UFGS_FLATNESS,
    });
  }
  const steps = edge.over(input.spacing).toNumber(':1');
  if (steps < 2) refuse('spacing', faults.doesNotFit('spacing', 'half of edge'));
  if (steps >= STEP_LIMIT + 1) refuse('spacing', faults.tooMany('readings under the edge', STEP_LIMIT));
  const z = input.readings.map(canonicalValue);
  const reach = Math.floor(steps + 1e-9);
  let best: Gap = { at: 0, gap: new Decimal(0) };
  for (let from = 0; from === 0 || from + reach < z.length; from += 1) {
    best = widest(z, bridge(z, from, Math.min(from + reach, z.length - 1)), best);
  }
  const system = systemOfQuantity(input.readings[0] as Length);
  const [h, l] = [metresAs(Decimal.max(...z), system), metresAs(Decimal.min(...z), system)];
  const outOfLevel = pad.step('highest less lowest reading', 'd = h − l', { h, l }, small(h.minus(l)));
  const gap = small(metresAs(best.gap, system));
  const verdict = gap.greaterThan(allowed) ? 'not flat enough' : 'flat enough';
  if (gap.greaterThan(allowed)) pad.caution(cautions.notFlat(allowed, gap));
  return { gap, at: wholeNumber(best.at + 1), allowed, verdict, outOfLevel };
}

/**
 * The widest gap under a straightedge, from evenly spaced readings along a line.
 *
 * @param input - readings, their spacing, the length of the straightedge and the gap allowed
 * @returns the widest gap and where it is, and how far the line is out of level
 * @throws {InputError} `does-not-fit` where the spacing is more than half the straightedge;
 * `too-few` below three readings; `too-many`
 * @source closed form; 1/4 in in 5 ft as UFGS 03300N has it for walks
 * @example
 * ```ts
 * import { straightedge } from 'flatwork-reckoner';
 *
 * const { figures } = straightedge({
 *   readings: ['0 in', '-1/8 in', '-3/8 in', '-1/8 in', '0 in', '0 in'],
 *   spacing: '1 ft',
 * });
 * figures.gap.format(); // '0.375 in'
 * figures.verdict; // 'not flat enough'
 * ```
 */
export const straightedge: Calculation<StraightedgeInput, StraightedgeFigures> = /*#__PURE__*/ define({
  id: 'straightedge',
  title: 'Gap under a straightedge',
  version: 1,
  sources: [CLOSED_FORM, UFGS_FLATNESS],
  input: () =>
    fields({
      readings: list(quantity('length', 'each reading', 'any'), 3, READING_LIMIT),
      spacing: quantity('length', 'spacing'),
      edge: maybe(quantity('length', 'edge')),
      allowed: maybe(quantity('length', 'allowed', 'not-negative')),
    }),
  reckon,
});
