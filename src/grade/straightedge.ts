/**
 * The gap under a straightedge, from readings along a line.
 *
 * The straightedge is laid along the readings at every place where it starts on one. It rests on the
 * two that stand highest, so the gap at a reading is the height of the line that bridges the
 * readings under it (their upper hull) above that reading. Over a bump it rocks: laid on blocks alike at both ends, it
 * tells how far the bump stands above the line between them.
 *
 * What gap is allowed belongs to the length of the edge: tolerances are published for 5, 10 and 12 ft (1.5,
 * 3 and 4 m) and for 2 m, and are not to be scaled to other lengths. For another edge the job must say what is allowed.
 */

import { Decimal } from '../quantity/decimal';
import * as faults from '../quantity/faults';
import { type Paired, paired } from '../quantity/paired';
import { canonicalValue, type Quantity, type QuantityInput, systemOfQuantity } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import { fields, list, maybe, quantity, wholeNumber } from '../reckoning/fields';
import { type Limit, withinLimit } from '../reckoning/limits';
import type { Pad } from '../reckoning/pad';
import { CLOSED_FORM, type Source } from '../reckoning/source';
import { say } from '../reckoning/words';
import * as cautions from './cautions';
import { noTolerance } from './faults';
import { small } from './marks';
import * as ordinary from './ordinary';
import { GIVEN, TEN_FOOT_EDGE, TWELVE_FOOT_EDGE, TWO_METER_EDGE, UFGS_FLATNESS } from './sources';
import { metersAs } from './spots';

/** Input of {@link straightedge}. */
export interface StraightedgeInput {
  /** Elevations of the surface along a line, evenly spaced. */
  readonly readings: readonly QuantityInput<'length'>[];
  /** Distance between neighboring readings. */
  readonly spacing: QuantityInput<'length'>;
  /** Length of the straightedge; by default 5 ft, or 1.5 m where the readings are metric. */
  readonly edge?: QuantityInput<'length'>;
  /**
   * The widest gap allowed; by default 1/4 in (6 mm) for edges of 5, 10 and 12 ft or 1.5, 3 and 4 m, and 5 mm for one
   * of 2 m. For an edge of any other length it must be given.
   */
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
  /** How far the highest bump stands above the ends of the edge, that rocks on it; left out where none does. */
  readonly bump?: Quantity<'length'>;
  /** Number of the reading where that is, from 1. */
  readonly bumpAt?: Quantity<'count'>;
  /** The widest gap and the highest bump against what is allowed. */
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

/** A length of edge for which a tolerance is published, as each unit system names it. */
interface Tolerance {
  readonly edge: Paired<'length'>;
  /** The widest gap under it. */
  readonly allowed: Paired<'length'>;
  /** What it is published for. */
  readonly use: string;
  readonly source: Source;
}

const ALLOWED = /*#__PURE__*/ paired('length', '1/4 in', '6 mm');
const TOLERANCES: readonly Tolerance[] = [
  {
    edge: /*#__PURE__*/ paired('length', '5 ft', '1.5 m'),
    allowed: ALLOWED,
    use: 'walks',
    source: UFGS_FLATNESS,
  },
  {
    edge: /*#__PURE__*/ paired('length', '10 ft', '3 m'),
    allowed: ALLOWED,
    use: 'ramps and walks',
    source: TEN_FOOT_EDGE,
  },
  {
    edge: /*#__PURE__*/ paired('length', '12 ft', '4 m'),
    allowed: ALLOWED,
    use: 'roads and parking',
    source: TWELVE_FOOT_EDGE,
  },
  {
    edge: /*#__PURE__*/ paired('length', '6 ft 6-3/4 in', '2 m'),
    allowed: /*#__PURE__*/ paired('length', '3/16 in', '5 mm'),
    use: 'floors of the class SR2',
    source: TWO_METER_EDGE,
  },
];
const READING_LIMIT = 2000;
const READINGS_UNDER: Limit = { of: 'the edge in readings under it', most: 200 };

/** The readings as whole numbers of one small unit, in which nothing is rounded. */
function wholeReadings(readings: readonly Decimal[]): bigint[] {
  const places = Math.max(...readings.map((z) => z.decimalPlaces()));
  return readings.map((z) => BigInt(z.toFixed(places).replace('.', '')));
}

/** Corners of the upper hull of the readings from `from` to `to`. */
function bridge(z: readonly bigint[], from: number, to: number): number[] {
  const hull: number[] = [];
  for (let i = from; i <= to; i += 1) {
    const end = z[i] as bigint;
    while (hull.length > 1) {
      const [a, b] = [hull[hull.length - 2] as number, hull[hull.length - 1] as number];
      const start = z[a] as bigint;
      if (((z[b] as bigint) - start) * BigInt(i - a) > (end - start) * BigInt(b - a)) break;
      hull.pop();
    }
    hull.push(i);
  }
  return hull;
}

/** A gap as a fraction: `gap ÷ long`. */
interface Gap {
  readonly at: number;
  readonly gap: bigint;
  readonly long: bigint;
  /** The readings that the edge rests on there. */
  readonly rests: readonly [number, number];
}

const NO_GAP: Gap = { at: 0, gap: 0n, long: 1n, rests: [0, 0] };

/** The wider of a gap and those between two readings that the edge rests on. */
function wider(z: readonly bigint[], a: number, b: number, before: Gap): Gap {
  let best = before;
  const [za, zb, long] = [z[a] as bigint, z[b] as bigint, BigInt(b - a)];
  for (let i = a + 1; i < b; i += 1) {
    const gap = (za - (z[i] as bigint)) * long + (zb - za) * BigInt(i - a);
    if (gap * best.long > best.gap * long) best = { at: i, gap, long, rests: [a, b] };
  }
  return best;
}

/**
 * The widest gap under an edge that is laid everywhere.
 *
 * Edges that lie beside each other rest on much the same readings: each two are looked between once.
 */
function widest(readings: readonly Decimal[], reach: number): Gap {
  const z = wholeReadings(readings);
  const looked = new Set<number>();
  let best = NO_GAP;
  for (let from = 0; from === 0 || from + reach < z.length; from += 1) {
    const hull = bridge(z, from, Math.min(from + reach, z.length - 1));
    for (let k = 1; k < hull.length; k += 1) {
      const [a, b] = [hull[k - 1] as number, hull[k] as number];
      if (b - a < 2 || looked.has(a * z.length + b)) continue;
      looked.add(a * z.length + b);
      best = wider(z, a, b, best);
    }
  }
  return best;
}

/** The highest bump between the ends of an edge that is laid everywhere: how far it stands over the line between them. */
function highest(readings: readonly Decimal[], reach: number): Gap {
  const z = wholeReadings(readings).map((each) => -each);
  let best = NO_GAP;
  for (let from = 0; from === 0 || from + reach < z.length; from += 1) {
    best = wider(z, from, Math.min(from + reach, z.length - 1), best);
  }
  return best;
}

/** The gap at a place under an edge that rests on two readings. */
function gapAt(z: readonly Decimal[], { at, rests: [a, b] }: Gap): Decimal {
  if (a === b) return new Decimal(0);
  const [za, zb] = [z[a] as Decimal, z[b] as Decimal];
  const above = zb
    .minus(za)
    .times(at - a)
    .div(b - a);
  return za.plus(above).minus(z[at] as Decimal);
}

const isEdge = (a: Length, { edge }: Tolerance): boolean =>
  a.compareTo(edge.as('customary')) === 0 || a.compareTo(edge.as('metric')) === 0;

/** The gap allowed under this edge, and who says so. */
function allowedUnder({ allowed }: Parsed, edge: Length, pad: Pad): [Length, Source] {
  if (allowed) return [allowed, GIVEN];
  const found = TOLERANCES.find((one) => isEdge(edge, one));
  if (!found) return refuse('allowed', noTolerance(edge.format()));
  pad.assume({
    name: 'allowed',
    value: found.allowed,
    because: say`${{ gap: found.allowed }} in ${{ edge: found.edge }} for ${{ use: found.use }}`,
    override: 'Give allowed',
    source: found.source,
  });
  return [found.allowed.as(pad.system), found.source];
}

function edgeOf({ edge }: Parsed, pad: Pad): Length {
  if (edge) return edge;
  const usual = (TOLERANCES[0] as Tolerance).edge;
  pad.assume({
    name: 'edge',
    value: usual,
    because: say`walks are checked over ${{ edge: usual }}`,
    override: 'Give edge',
    source: UFGS_FLATNESS,
  });
  return usual.as(pad.system);
}

function reckon(input: Parsed, pad: Pad): StraightedgeFigures {
  const edge = edgeOf(input, pad);
  const [allowed, source] = allowedUnder(input, edge, pad);
  const steps = edge.over(input.spacing).toNumber(':1');
  if (steps < 2) refuse('spacing', faults.doesNotFit('spacing', 'half of edge'));
  withinLimit(READINGS_UNDER, Math.floor(steps), 'spacing');
  const z = input.readings.map(canonicalValue);
  const reach = Math.floor(steps + 1e-9);
  const best = widest(z, reach);
  const system = systemOfQuantity(input.readings[0] as Length);
  const [h, l] = [metersAs(Decimal.max(...z), system), metersAs(Decimal.min(...z), system)];
  const outOfLevel = pad.step('highest less lowest reading', 'd = h − l', { h, l }, small(h.minus(l)));
  const gap = small(metersAs(gapAt(z, best), system));
  const proud = highest(z, reach);
  const bump = small(metersAs(gapAt(z, proud).neg(), system));
  const [isWide, isHigh] = [gap, bump].map((each) => each.greaterThan(allowed));
  if (isWide) pad.caution(cautions.notFlat(allowed, gap, source));
  else if (isHigh) pad.caution(cautions.rocks(allowed, bump, source));
  return {
    gap,
    at: wholeNumber(best.at + 1),
    allowed,
    ...(bump.sign() > 0 ? { bump, bumpAt: wholeNumber(proud.at + 1) } : {}),
    verdict: isWide || isHigh ? 'not flat enough' : 'flat enough',
    outOfLevel,
  };
}

/**
 * The widest gap under a straightedge, from evenly spaced readings along a line.
 *
 * @param input - readings, their spacing, the length of the straightedge and the gap allowed
 * @returns the widest gap and where it is, and how far the line is out of level
 * @throws {InputError} `does-not-fit` where the spacing is more than half the straightedge;
 * `too-few` below three readings; `too-many`; `no-tolerance` where nothing is published for such an edge and
 * `allowed` is not given
 * @source closed form; 1/4 in in 5 ft as UFGS 03300N has it for walks, in 10 ft as ACI 117 is quoted, in
 * 12 ft (4 m) as UFGS 02753 has it for roads and parking
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
  sources: [CLOSED_FORM, UFGS_FLATNESS, TEN_FOOT_EDGE, TWELVE_FOOT_EDGE, TWO_METER_EDGE],
  limits: [READINGS_UNDER],
  input: () =>
    fields({
      readings: list(quantity('length', 'each reading', 'any', ordinary.GAP_READ), 3, READING_LIMIT),
      spacing: quantity('length', 'spacing', 'positive', ordinary.READING_SPACING),
      edge: maybe(quantity('length', 'edge', 'positive', ordinary.EDGE)),
      allowed: maybe(quantity('length', 'allowed', 'not-negative', ordinary.GAP)),
    }),
  reckon,
});
