/**
 * Volume of solid steps: straight, wrapped around corners, round or winding.
 *
 * Each step stands on the ground, so the k-th of a straight flight is k risers high: with n risers of
 * height r, treads of depth t and a width w, the treads make `w × t × r × n × (n + 1) ÷ 2`. With a
 * landing of depth d the last tread is the landing itself: `w × r × n × ((n − 1) × t ÷ 2 + d)`.
 *
 * Treads that slope (a wash) rise from each nosing to the back: each gains a wedge `w × s × t² ÷ 2`.
 * Risers that lean back under a nosing of p lose a triangle `p × face ÷ 2` each.
 *
 * A landing of depth d after the k-th riser takes the place of a tread and adds `w × r × k × (d − t)`.
 *
 * Wrapped and round steps are slabs of one riser on top of each other, each a tread larger than the one
 * above it; their sums have closed forms. Winding steps are sectors of a ring.
 *
 * Source: geometry.
 */

import type { LengthInput } from '../outline/outline';
import { Decimal } from '../quantity/decimal';
import * as faults from '../quantity/faults';
import { angle, constant } from '../quantity/make';
import {
  canonicalValue,
  type Quantity,
  type QuantityInput,
  quantityOf,
  systemOfQuantity,
} from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import {
  choice,
  type Field,
  fields,
  kinds,
  list,
  maybe,
  quantity,
  whole,
  wholeNumber,
  word,
} from '../reckoning/fields';
import type { Ordinary } from '../reckoning/ordinary';
import type { Pad } from '../reckoning/pad';
import { CLOSED_FORM, COMMON_PRACTICE } from '../reckoning/source';
import { say } from '../reckoning/words';
import { RISER, SIDE_DROP } from '../steps/ordinary';
import type { StepRules } from '../steps/rules';
import { frostField } from './frost';
import { FLIGHT_WIDTH, LANDING_DEPTH, NOSING, STEP_RADIUS, TREAD, UNDERSIDE, WASH } from './ordinary';
import { timesPi } from './solids';
import { heedFlight } from './step-advice';
import {
  type Around,
  checkSideBySide,
  coresField,
  coresOut,
  type StepCore,
  type StepCoreInput,
} from './step-cores';
import { type WingWall, type WingWallInput, wingVolume, wingWallsField } from './wing-walls';

/** What all steps have. */
export interface StepParts {
  /** How many risers, a plain whole number. */
  readonly risers: number;
  /** Height of each riser, from nosing to nosing. */
  readonly rise: LengthInput;
  /** Boxes inside that are not concrete: an existing footing, a void, a rubble core. */
  readonly cores?: readonly StepCoreInput[];
  /** Walls beside the flight, cast with it. */
  readonly wingWalls?: readonly WingWallInput[];
  /** Whose rules the steps must meet; those of dwellings by default. */
  readonly rules?: StepRules;
  /** How far it is down beside the top, where the ground there is lower than before the first riser. */
  readonly sideDrop?: LengthInput;
  /** How deep the ground freezes, as the local building department says; `0 in` where it does not. */
  readonly frostDepth?: LengthInput;
  /** How deep what the steps stand on is founded below the ground. */
  readonly founded?: LengthInput;
}

/** A landing part of the way up, as wide as the flight. */
export interface MidLandingInput {
  /** After how many risers, counted from the ground. */
  readonly after: number;
  /** Front to back, in place of a tread. */
  readonly depth: LengthInput;
}

/** A straight flight. */
export interface StraightStepsInput extends StepParts {
  /** `straight`, or left out. */
  readonly plan?: 'straight';
  /** Depth of each tread, front to back. */
  readonly tread: LengthInput;
  /** Width of the flight, side to side. */
  readonly width: LengthInput;
  /** Depth of the landing at the top, front to back; left out when the top tread is one like the others. */
  readonly landingDepth?: LengthInput;
  /** Landings part of the way up, in order. */
  readonly landings?: readonly MidLandingInput[];
  /** Slope of the treads, down to the front; level by default. */
  readonly wash?: QuantityInput<'slope'>;
  /** How far each riser leans back from its nosing; upright by default. */
  readonly nosing?: LengthInput;
  /** How many of the two sides are formed: 0 between walls, 1 against a wall, 2 (default) free. */
  readonly openSides?: number;
}

/** Steps that go around one or two corners: treads at the front and at the sides. */
export interface WrappedStepsInput extends StepParts {
  /** Always `wrapped`. */
  readonly plan: 'wrapped';
  /** Depth of each tread, at the front and at the sides. */
  readonly tread: LengthInput;
  /** Side to side at the top. */
  readonly topWidth: LengthInput;
  /** Front to back at the top. */
  readonly topDepth: LengthInput;
  /** Whether there are treads at one side, the other being against a wall, or at both. */
  readonly sides: 'one' | 'both';
}

/** Round steps: sectors about one center, the treads outside the top. */
export interface RoundStepsInput extends StepParts {
  /** Always `round`. */
  readonly plan: 'round';
  /** Depth of each tread. */
  readonly tread: LengthInput;
  /** Radius of the top, to its nosing. */
  readonly topRadius: LengthInput;
  /** Radius of what they stand around, such as a round wall; none by default. */
  readonly innerRadius?: LengthInput;
  /** How far they turn, `180 deg` against a straight wall. */
  readonly turn: QuantityInput<'angle'>;
}

/** A winding flight: each tread a sector of a ring, turned on from the one before. */
export interface WindingStepsInput extends StepParts {
  /** Always `winding`. */
  readonly plan: 'winding';
  /** Radius of the inner side. */
  readonly innerRadius: LengthInput;
  /** Radius of the outer side. */
  readonly outerRadius: LengthInput;
  /** How far each tread turns. */
  readonly turnEach: QuantityInput<'angle'>;
}

/** Input of {@link stepVolume}: straight unless `plan` says otherwise. */
export type StepVolumeInput = StraightStepsInput | WrappedStepsInput | RoundStepsInput | WindingStepsInput;

/** Figures of {@link stepVolume}. */
export interface StepVolumeFigures {
  /** Concrete in place. */
  readonly volume: Quantity<'volume'>;
  /** From the ground to the top nosing. */
  readonly totalRise: Quantity<'length'>;
  /** From the front of the first riser to the back; along the middle of a winding flight. */
  readonly totalRun: Quantity<'length'>;
  /** Ground that the flight covers. */
  readonly footprint: Quantity<'area'>;
  /** Risers and open sides to form. */
  readonly formedArea: Quantity<'area'>;
  /** What the cores take out. */
  readonly coreVolume?: Quantity<'volume'>;
  /** Part of the volume in wing walls. */
  readonly wingVolume?: Quantity<'volume'>;
  /** Least concrete over or before a core of a straight flight. */
  readonly leastCover?: Quantity<'length'>;
}

type Length = Quantity<'length'>;
type Area = Quantity<'area'>;
type Volume = Quantity<'volume'>;
type Count = Quantity<'count'>;
type Angle = Quantity<'angle'>;

interface Parts {
  readonly risers: Count;
  readonly rise: Length;
  readonly cores: readonly StepCore[] | undefined;
  readonly wingWalls: readonly WingWall[] | undefined;
  readonly rules: StepRules | undefined;
  readonly sideDrop: Length | undefined;
  readonly frostDepth: Length | undefined;
  readonly founded: Length | undefined;
}

interface MidLanding {
  readonly after: Count;
  readonly depth: Length;
}

interface Straight extends Parts {
  readonly plan: 'straight' | undefined;
  readonly tread: Length;
  readonly width: Length;
  readonly landingDepth: Length | undefined;
  readonly landings: readonly MidLanding[] | undefined;
  readonly wash: Quantity<'slope'> | undefined;
  readonly nosing: Length | undefined;
  readonly openSides: Count | undefined;
}

interface Wrapped extends Parts {
  readonly plan: 'wrapped';
  readonly tread: Length;
  readonly topWidth: Length;
  readonly topDepth: Length;
  readonly sides: 'one' | 'both';
}

interface Round extends Parts {
  readonly plan: 'round';
  readonly tread: Length;
  readonly topRadius: Length;
  readonly innerRadius: Length | undefined;
  readonly turn: Angle;
}

interface Winding extends Parts {
  readonly plan: 'winding';
  readonly innerRadius: Length;
  readonly outerRadius: Length;
  readonly turnEach: Angle;
}

type Parsed = Straight | Wrapped | Round | Winding;

/** What each plan comes to, before cores. */
interface Flight {
  readonly volume: Volume;
  readonly run: Length;
  readonly footprint: Area;
  readonly formed: Area;
  /** Depth of a tread, to be checked. */
  readonly tread: Length;
  readonly around?: Around;
  /** Side to side at the back, where cores stand beside each other. */
  readonly across?: Length;
}

const ONE = constant(() => wholeNumber(1));
const TWO = constant(() => wholeNumber(2));
const SIX = constant(() => wholeNumber(6));
const FULL = constant(() => angle('360 deg'));

/** Depth of the tread behind each riser, from the ground up; the last is the top. */
function treadsOf({ risers, tread, landingDepth, landings = [] }: Straight): Length[] {
  const n = canonicalValue(risers).toNumber();
  const treads = Array.from({ length: n }, () => tread);
  if (landingDepth) treads[n - 1] = landingDepth;
  (landings ?? []).forEach(({ after, depth }, i) => {
    const k = canonicalValue(after).toNumber();
    const before = landings?.[i - 1]?.after;
    if (k >= n) refuse(`landings[${i}].after`, faults.doesNotFit('after', 'the number of risers'));
    if (before && !after.greaterThan(before))
      refuse(`landings[${i}].after`, faults.outOfOrder('after', 'the landing before it'));
    treads[k - 1] = depth;
  });
  return treads;
}

/** What landings part of the way up add to a flight of equal treads. */
function withMidLandings(V: Volume, { rise: r, tread: t, width: w, landings }: Straight, pad: Pad): Volume {
  return (landings ?? []).reduce(
    (sum, { after: k, depth: d }, i) =>
      pad.step(
        say`volume with landing ${{ n: i + 1 }} after k risers`,
        'U = V + w × r × k × (d − t)',
        { V: sum, w, r, k, d, t },
        sum.plus(w.times(r.times(k)).times(d.minus(t))),
      ),
    V,
  );
}

/** The run with landings part of the way up. */
function runWithLandings(L: Length, { tread: t, landings }: Straight, pad: Pad): Length {
  return (landings ?? []).reduce(
    (sum, { depth: d }, i) =>
      pad.step(
        say`run with landing ${{ n: i + 1 }}`,
        'R = L + d − t',
        { L: sum, d, t },
        sum.plus(d).minus(t),
      ),
    L,
  );
}

function plainFlight({ risers: n, rise: r, tread: t, width: w }: Straight, pad: Pad): Volume {
  const steps = n.times(n.plus(ONE())).over(TWO());
  pad.assume({
    name: 'landingDepth',
    value: 'none',
    because: 'the top tread is one like the others',
    override: 'Give landingDepth when the top is a landing',
    source: COMMON_PRACTICE,
  });
  return pad.step(
    'volume',
    'V = w × t × r × n × (n + 1) ÷ 2',
    { w, t, r, n },
    w.times(t).times(r.times(steps)),
  );
}

function withLanding({ risers: n, rise: r, tread: t, width: w }: Straight, d: Length, pad: Pad): Volume {
  const side = t.times(n.minus(ONE())).over(TWO()).plus(d);
  return pad.step(
    'volume',
    'V = w × r × n × ((n − 1) × t ÷ 2 + d)',
    { w, r, n, t, d },
    w.times(r.times(n)).times(side),
  );
}

/** What the wash adds: a wedge on each tread, and on the landing. */
function washed(V: Volume, input: Straight, pad: Pad): Volume {
  const { risers: n, rise: r, tread: t, width: w, landingDepth, nosing, wash: s } = input;
  if (!s) return V;
  const deepest = treadsOf(input)
    .slice(0, -1)
    .reduce((most, d) => (d.greaterThan(most) ? d : most), t);
  const reach = nosing ? deepest.plus(nosing) : deepest;
  if (!reach.times(s).lessThan(r)) refuse('wash', faults.doesNotFit('the rise of a tread', 'rise'));
  const d = landingDepth ?? t;
  const mid = input.landings ?? [];
  const squares = t
    .times(t)
    .times(n.minus(wholeNumber(1 + mid.length)))
    .plus(d.times(d));
  const all = mid.reduce((sum, { depth }) => sum.plus(depth.times(depth)), squares);
  const terms = mid.map((_, i) => ` + d${i + 1}²`).join('');
  const added = pad.step(
    'added by the wash',
    `W = w × s × ((n − ${1 + mid.length}) × t² + d²${terms}) ÷ 2`,
    {
      w,
      s,
      n,
      t,
      d,
      ...numbered(
        'd',
        mid.map(({ depth }) => depth),
      ),
    },
    w.times(s).times(all).over(TWO()),
  );
  return pad.step('volume with the wash', 'U = V + W', { V, W: added }, V.plus(added));
}

const numbered = (name: string, values: readonly Length[]): Record<string, Length> =>
  Object.fromEntries(values.map((value, i) => [`${name}${i + 1}`, value]));

/** Height of the risers that stand on landings part of the way up. */
const landingFaces = ({ rise: r, wash: s, landings }: Straight): Length[] =>
  (landings ?? []).map(({ depth }) => (s ? r.minus(depth.times(s)) : r));

/** Height of the risers above the first: less by what the tread before them rises. */
const upperFace = ({ rise: r, tread: t, wash: s }: Straight): Length => (s ? r.minus(t.times(s)) : r);

/** What leaning risers take away: a triangle each. */
function undercut(V: Volume, input: Straight, pad: Pad): Volume {
  const { risers: n, rise: r, tread: t, width: w, nosing: p } = input;
  if (!p) return V;
  if (!p.lessThan(t)) refuse('nosing', faults.doesNotFit('nosing', 'tread'));
  const u = upperFace(input);
  const mid = landingFaces(input);
  const plain = r.plus(u.times(n.minus(wholeNumber(1 + mid.length))));
  const faces = mid.reduce((sum, face) => sum.plus(face), plain);
  const terms = mid.map((_, i) => ` + u${i + 1}`).join('');
  const less = pad.step(
    'taken away under the nosings',
    `N = w × p × (r + (n − ${1 + mid.length}) × u${terms}) ÷ 2`,
    { w, p, r, n, u, ...numbered('u', mid) },
    w.times(p).times(faces).over(TWO()),
  );
  return pad.step('volume with the nosings', 'U = V − N', { V, N: less }, V.minus(less));
}

const hypot = (a: Length, b: Length): Length =>
  quantityOf('length', Decimal.hypot(canonicalValue(a), canonicalValue(b)), systemOfQuantity(a));

function openSides({ openSides: given }: Straight, pad: Pad): Count {
  if (given) return given;
  pad.assume({
    name: 'openSides',
    value: '2 sides',
    because: 'both sides are formed',
    override: 'Give openSides: 0 between walls, 1 against a wall',
    source: COMMON_PRACTICE,
  });
  return TWO();
}

/** Risers along their slope, and the open sides. */
function straightFaces(V: Volume, input: Straight, pad: Pad): Area {
  const { risers: n, rise: r, width: w, nosing } = input;
  const o = openSides(input, pad);
  const p = nosing ?? r.minus(r);
  // The tread before a riser goes on rising under its nosing.
  const less = (face: Length): Length => (input.wash ? face.minus(p.times(input.wash)) : face);
  const u = input.wash ? less(upperFace(input)) : r;
  const mid = landingFaces(input).map(less);
  const [a, b] = [hypot(r, p), hypot(u, p)];
  const plain = a.plus(b.times(n.minus(wholeNumber(1 + mid.length))));
  const slopes = mid.reduce((sum, face) => sum.plus(hypot(face, p)), plain);
  const terms = mid.map((_, i) => ` + √(u${i + 1}² + p²)`).join('');
  return pad.step(
    'faces to form',
    `F = w × (√(r² + p²) + (n − ${1 + mid.length}) × √(u² + p²)${terms}) + o × V ÷ w`,
    { w, r, p, n, u, o, V, ...numbered('u', mid) },
    w.times(slopes).plus(V.over(w).times(o)),
  );
}

function straight(input: Straight, pad: Pad): Flight {
  const { risers: n, rise, tread: t, width: w, landingDepth: d, nosing } = input;
  const treads = treadsOf(input);
  const equal = d
    ? pad.step('total run', 'L = (n − 1) × t + d', { n, t, d }, t.times(n.minus(ONE())).plus(d))
    : pad.step('total run', 'L = n × t', { n, t }, t.times(n));
  const run = runWithLandings(equal, input, pad);
  const flight = d ? withLanding(input, d, pad) : plainFlight(input, pad);
  const plain = withMidLandings(flight, input, pad);
  const volume = undercut(washed(plain, input, pad), input, pad);
  const footprint = pad.step('footprint', 'A = L × w', { L: run, w }, run.times(w));
  const formed = straightFaces(volume, input, pad);
  const around = { rise, treads, run, width: w, nosing };
  return { volume, run, footprint, formed, tread: t, around, across: w };
}

/** `n (n − 1) ÷ 2` and `n (n − 1) (2 n − 1) ÷ 6`: sums of j and of j² for j below n. */
function sums(n: Count): [first: Quantity<'ratio'>, second: Quantity<'ratio'>] {
  const pairs = n.times(n.minus(ONE()));
  return [pairs.over(TWO()), pairs.times(n.times(TWO()).minus(ONE())).over(SIX())];
}

function wrapped(input: Wrapped, pad: Pad): Flight {
  const { risers: n, rise: r, tread: t, topWidth: w, topDepth: D, sides } = input;
  const c = sides === 'both' ? TWO() : ONE();
  const [first, second] = sums(n);
  const plans = D.times(w)
    .times(n)
    .plus(D.times(c).plus(w).times(t.times(first)))
    .plus(t.times(t).times(second.times(c)));
  const volume = pad.step(
    'volume',
    'V = r × (n × D × w + (c × D + w) × t × n × (n − 1) ÷ 2 + c × t² × n × (n − 1) × (2 × n − 1) ÷ 6)',
    { r, n, D, w, c, t },
    plans.times(r),
  );
  const spread = t.times(n.minus(ONE()));
  const run = pad.step('total run', 'L = D + (n − 1) × t', { D, n, t }, D.plus(spread));
  const footprint = pad.step(
    'footprint',
    'A = L × (w + c × (n − 1) × t)',
    { L: run, w, c, n, t },
    run.times(w.plus(spread.times(c))),
  );
  const faces = w
    .plus(D.times(c))
    .times(n)
    .plus(t.times(n.times(n.minus(ONE()))).times(c));
  const formed = pad.step(
    'risers to form',
    'F = r × (n × (w + c × D) + c × t × n × (n − 1))',
    { r, n, w, c, D, t },
    r.times(faces),
  );
  return { volume, run, footprint, formed, tread: t, across: w.plus(spread.times(c)) };
}

function shareOfTurn(turn: Angle, all: Angle, path: string, pad: Pad): Quantity<'ratio'> {
  const F = FULL();
  if (all.greaterThan(F)) refuse(path, faults.doesNotFit('the turn in all', '360 deg'));
  return pad.step('share of a full turn', 'f = a ÷ F', { a: turn, F }, turn.over(F));
}

function round(input: Round, pad: Pad): Flight {
  const { risers: n, rise: r, tread: t, topRadius: R, innerRadius } = input;
  const q = innerRadius ?? R.minus(R);
  if (!q.lessThan(R)) refuse('innerRadius', faults.doesNotFit('innerRadius', 'topRadius'));
  const f = shareOfTurn(input.turn, input.turn, 'turn', pad);
  const [first, second] = sums(n);
  const squares = R.times(R)
    .minus(q.times(q))
    .times(n)
    .plus(R.times(t).times(first.times(TWO())))
    .plus(t.times(t).times(second));
  const volume = pad.step(
    'volume',
    'V = π × f × r × (n × (R² − q²) + R × t × n × (n − 1) + t² × n × (n − 1) × (2 × n − 1) ÷ 6)',
    { f, r, n, R, q, t },
    timesPi(r.times(squares).times(f)),
  );
  const o = pad.step(
    'radius of the lowest nosing',
    'o = R + (n − 1) × t',
    { R, n, t },
    R.plus(t.times(n.minus(ONE()))),
  );
  const footprint = pad.step(
    'footprint',
    'A = π × f × (o² − q²)',
    { f, o, q },
    timesPi(o.times(o).minus(q.times(q)).times(f)),
  );
  const arcs = R.times(n).plus(t.times(first));
  const formed = pad.step(
    'risers to form',
    'F = 2 × π × f × r × (n × R + t × n × (n − 1) ÷ 2)',
    { f, r, n, R, t },
    timesPi(r.times(arcs).times(f).times(TWO())),
  );
  return { volume, run: o.minus(q), footprint, formed, tread: t };
}

function winding(input: Winding, pad: Pad): Flight {
  const { risers: n, rise: r, innerRadius: q, outerRadius: o, turnEach } = input;
  if (!q.lessThan(o)) refuse('innerRadius', faults.doesNotFit('innerRadius', 'outerRadius'));
  const f = shareOfTurn(turnEach, turnEach.times(n), 'turnEach', pad);
  const steps = n.times(n.plus(ONE())).over(TWO());
  const A = pad.step(
    'one tread',
    'A = π × f × (o² − q²)',
    { f, o, q },
    timesPi(o.times(o).minus(q.times(q)).times(f)),
  );
  const volume = pad.step('volume', 'V = A × r × n × (n + 1) ÷ 2', { A, r, n }, A.times(r.times(steps)));
  const footprint = pad.step('footprint', 'B = n × A', { n, A }, A.times(n));
  const t = pad.step(
    'tread along the middle',
    't = π × f × (o + q)',
    { f, o, q },
    timesPi(o.plus(q)).times(f),
  );
  const run = pad.step('run along the middle', 'L = n × t', { n, t }, t.times(n));
  const formed = pad.step(
    'risers and both curved sides to form',
    'F = n × r × (o − q) + r × n × (n + 1) × t',
    { n, r, o, q, t },
    r.times(o.minus(q)).times(n).plus(r.times(steps).times(t).times(TWO())),
  );
  return { volume, run, footprint, formed, tread: t };
}

function flightOf(input: Parsed, pad: Pad): Flight {
  switch (input.plan) {
    case 'wrapped':
      return wrapped(input, pad);
    case 'round':
      return round(input, pad);
    case 'winding':
      return winding(input, pad);
    default:
      return straight(input, pad);
  }
}

/** Risers between landings. */
function flightsOf(input: Parsed): Count[] {
  const landings = input.plan === undefined || input.plan === 'straight' ? (input.landings ?? []) : [];
  const ends = [...landings.map(({ after }) => after), input.risers];
  return ends.map((end, i) => (i === 0 ? end : end.minus(ends[i - 1] as Count)));
}

const REACH_INCHES = 36;

/** How far it is down within a pace of the top edge: beside steps only as far as they fall there. */
function dropBeside(input: Parsed, totalRise: Length): Length | undefined {
  if (input.sideDrop) return input.sideDrop;
  if (input.plan === 'wrapped' || input.plan === 'round') {
    const reached = Math.ceil(REACH_INCHES / input.tread.toNumber('in'));
    const fall = input.rise.times(wholeNumber(reached));
    return fall.lessThan(totalRise) ? fall : totalRise;
  }
  if (input.plan === 'winding') return totalRise;
  return input.openSides?.sign() === 0 ? undefined : totalRise;
}

function heed(input: Parsed, tread: Length, totalRise: Length, pad: Pad): void {
  const straight = input.plan === undefined || input.plan === 'straight' ? input : undefined;
  const landings = [
    ...(straight?.landings ?? []).map(({ depth }) => depth),
    ...(straight?.landingDepth ? [straight.landingDepth] : []),
  ];
  const { rise, frostDepth, founded } = input;
  const rules = input.rules ?? 'dwelling';
  const drop = dropBeside(input, totalRise);
  heedFlight(
    { rules, rise, tread, flights: flightsOf(input), totalRise, drop, landings, frostDepth, founded },
    pad,
  );
}

/** The flight without its cores. */
function lessCores(
  input: Parsed,
  flight: Flight,
  totalRise: Length,
  pad: Pad,
): Pick<StepVolumeFigures, 'volume' | 'coreVolume' | 'leastCover'> {
  const { cores } = input;
  if (!cores?.length) return { volume: flight.volume };
  cores.forEach(({ height }, i) => {
    if (!height.lessThan(totalRise))
      refuse(`cores[${i}].height`, faults.doesNotFit('height', 'the total rise'));
  });
  checkSideBySide(cores, flight.across);
  const { net, core, cover } = coresOut(flight.volume, cores, flight.around, pad);
  return { volume: net, coreVolume: core, ...(cover ? { leastCover: cover } : {}) };
}

function withWings(
  V: Volume,
  walls: readonly WingWall[] | undefined,
  pad: Pad,
): Pick<StepVolumeFigures, 'volume' | 'wingVolume'> {
  if (!walls?.length) return { volume: V };
  const W = wingVolume(walls, pad);
  return { volume: pad.step('volume with the wing walls', 'U = V + W', { V, W }, V.plus(W)), wingVolume: W };
}

function reckon(input: Parsed, pad: Pad): StepVolumeFigures {
  const { risers: n, rise: r } = input;
  const totalRise = pad.step('total rise', 'R = n × r', { n, r }, r.times(n));
  const flight = flightOf(input, pad);
  heed(input, flight.tread, totalRise, pad);
  const { volume: net, ...cores } = lessCores(input, flight, totalRise, pad);
  return {
    ...withWings(net, input.wingWalls, pad),
    totalRise,
    totalRun: flight.run,
    footprint: flight.footprint,
    formedArea: flight.formed,
    ...cores,
  };
}

function door(): Field<Parsed> {
  const l = (what: string, ordinary: Ordinary): Field<Length> =>
    quantity('length', what, 'positive', ordinary);
  const inner = quantity('length', 'innerRadius', 'not-negative', STEP_RADIUS);
  const parts = {
    risers: whole('risers', 1, 200),
    rise: l('rise', RISER),
    cores: maybe(coresField()),
    wingWalls: maybe(wingWallsField()),
    rules: maybe(choice<StepRules>('rules', ['dwelling', 'accessible', 'public'])),
    sideDrop: maybe(quantity('length', 'sideDrop', 'not-negative', SIDE_DROP)),
    frostDepth: frostField(),
    founded: maybe(quantity('length', 'founded', 'not-negative', UNDERSIDE)),
  };
  const landing = fields({ after: whole('after', 1, 199), depth: l('depth', LANDING_DEPTH) });
  const straightField = fields({
    plan: maybe(word('straight')),
    ...parts,
    tread: l('tread', TREAD),
    width: l('width', FLIGHT_WIDTH),
    landingDepth: maybe(l('landingDepth', LANDING_DEPTH)),
    landings: maybe(list(landing, 0, 50)),
    wash: maybe(quantity('slope', 'wash', 'not-negative', WASH)),
    nosing: maybe(quantity('length', 'nosing', 'not-negative', NOSING)),
    openSides: maybe(whole('openSides', 0, 2)),
  });
  return kinds<Parsed>(
    'plan',
    [
      straightField,
      fields({
        plan: word('wrapped'),
        ...parts,
        tread: l('tread', TREAD),
        topWidth: l('topWidth', FLIGHT_WIDTH),
        topDepth: l('topDepth', LANDING_DEPTH),
        sides: choice<'one' | 'both'>('sides', ['one', 'both']),
      }),
      fields({
        plan: word('round'),
        ...parts,
        tread: l('tread', TREAD),
        topRadius: l('topRadius', STEP_RADIUS),
        innerRadius: maybe(inner),
        turn: quantity('angle', 'turn'),
      }),
      fields({
        plan: word('winding'),
        ...parts,
        innerRadius: inner,
        outerRadius: l('outerRadius', STEP_RADIUS),
        turnEach: quantity('angle', 'turnEach'),
      }),
    ],
    straightField,
  );
}

/**
 * Volume of solid steps.
 *
 * @param input - risers, rise and the plan: straight (as when none is said), wrapped, round or winding;
 * cores inside, landings part of the way up, wing walls; whose rules hold, frost, and a drop beside the top
 * @returns volume, total rise and run, footprint, faces to form (of the flight alone); with cores, what they
 * take out and the least concrete around them
 * @throws {InputError} for a number of risers that is not whole, and for lengths that cannot be read
 * or are not greater than zero; `does-not-fit` for a core, a nosing or a turn that the flight has no
 * room for, and for cores that overlap; `out-of-order` landings
 * @source closed form; cautions from the rules that `stepLayout` goes by
 * @example
 * ```ts
 * import { stepVolume } from 'flatwork-reckoner';
 *
 * const { figures } = stepVolume({
 *   risers: 2,
 *   rise: '7 in',
 *   tread: '11 in',
 *   width: '6 ft',
 *   landingDepth: '4 ft',
 * });
 * figures.volume.format('ft3'); // '31.21 ft3'
 * ```
 */
export const stepVolume: Calculation<StepVolumeInput, StepVolumeFigures> = /*#__PURE__*/ define({
  id: 'step-volume',
  title: 'Volume of solid steps',
  version: 1,
  sources: [CLOSED_FORM],
  input: door,
  reckon,
});
