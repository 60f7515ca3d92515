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
 * Wrapped and round steps are slabs of one riser on top of each other, each a tread larger than the one
 * above it; their sums have closed forms. Winding steps are sectors of a ring.
 *
 * Source: geometry.
 */

import type { LengthInput } from '../geometry/outline';
import { Decimal } from '../quantity/decimal';
import * as faults from '../quantity/faults';
import { angle, constant, length } from '../quantity/make';
import {
  canonicalValue,
  type Quantity,
  type QuantityInput,
  quantityOf,
  systemOfQuantity,
} from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import * as cautions from '../reckoning/cautions';
import {
  choice,
  type Field,
  fields,
  kinds,
  maybe,
  quantity,
  whole,
  wholeNumber,
  word,
} from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { CLOSED_FORM, COMMON_PRACTICE } from '../reckoning/source';
import { timesPi } from './solids';
import { type Around, coresField, coresOut, type StepCore, type StepCoreInput } from './step-cores';

/** What all steps have. */
export interface StepParts {
  /** How many risers, a plain whole number. */
  readonly risers: number;
  /** Height of each riser, from nosing to nosing. */
  readonly rise: LengthInput;
  /** Boxes inside that are not concrete: an existing footing, a void, a rubble core. */
  readonly cores?: readonly StepCoreInput[];
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

/** Round steps: sectors about one centre, the treads outside the top. */
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
}

interface Straight extends Parts {
  readonly plan: 'straight' | undefined;
  readonly tread: Length;
  readonly width: Length;
  readonly landingDepth: Length | undefined;
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
}

const HIGHEST_RISER = constant(() => length('7-3/4 in'));
const LOWEST_RISER = constant(() => length('4 in'));
const NARROWEST_TREAD = constant(() => length('10 in'));
const HANDRAIL_FROM = constant(() => wholeNumber(4));
const ONE = constant(() => wholeNumber(1));
const TWO = constant(() => wholeNumber(2));
const SIX = constant(() => wholeNumber(6));
const FULL = constant(() => angle('360 deg'));

function heed({ risers, rise }: Parts, tread: Length, pad: Pad): void {
  if (rise.greaterThan(HIGHEST_RISER())) pad.caution(cautions.steepRiser(HIGHEST_RISER(), rise));
  if (rise.lessThan(LOWEST_RISER())) pad.caution(cautions.lowRiser(LOWEST_RISER(), rise));
  if (tread.lessThan(NARROWEST_TREAD())) pad.caution(cautions.narrowTread(NARROWEST_TREAD(), tread));
  if (!risers.lessThan(HANDRAIL_FROM())) pad.caution(cautions.handrail(HANDRAIL_FROM(), risers));
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
  const reach = nosing ? t.plus(nosing) : t;
  if (!reach.times(s).lessThan(r)) refuse('wash', faults.doesNotFit('the rise of a tread', 'rise'));
  const d = landingDepth ?? t;
  const squares = t.times(t).times(n.minus(ONE())).plus(d.times(d));
  const added = pad.step(
    'added by the wash',
    'W = w × s × ((n − 1) × t² + d²) ÷ 2',
    { w, s, n, t, d },
    w.times(s).times(squares).over(TWO()),
  );
  return pad.step('volume with the wash', 'U = V + W', { V, W: added }, V.plus(added));
}

/** Height of the risers above the first: less by what the tread before them rises. */
const upperFace = ({ rise: r, tread: t, wash: s }: Straight): Length => (s ? r.minus(t.times(s)) : r);

/** What leaning risers take away: a triangle each. */
function undercut(V: Volume, input: Straight, pad: Pad): Volume {
  const { risers: n, rise: r, tread: t, width: w, nosing: p } = input;
  if (!p) return V;
  if (!p.lessThan(t)) refuse('nosing', faults.doesNotFit('nosing', 'tread'));
  const u = upperFace(input);
  const faces = r.plus(u.times(n.minus(ONE())));
  const less = pad.step(
    'taken away under the nosings',
    'N = w × p × (r + (n − 1) × u) ÷ 2',
    { w, p, r, n, u },
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
  const u = input.wash ? upperFace(input).minus(p.times(input.wash)) : r;
  const [a, b] = [hypot(r, p), hypot(u, p)];
  return pad.step(
    'faces to form',
    'F = w × (√(r² + p²) + (n − 1) × √(u² + p²)) + o × V ÷ w',
    { w, r, p, n, u, o, V },
    w.times(a.plus(b.times(n.minus(ONE())))).plus(V.over(w).times(o)),
  );
}

function straight(input: Straight, pad: Pad): Flight {
  const { risers: n, rise, tread: t, width: w, landingDepth: d, nosing } = input;
  const run = d
    ? pad.step('total run', 'L = (n − 1) × t + d', { n, t, d }, t.times(n.minus(ONE())).plus(d))
    : pad.step('total run', 'L = n × t', { n, t }, t.times(n));
  const plain = d ? withLanding(input, d, pad) : plainFlight(input, pad);
  const volume = undercut(washed(plain, input, pad), input, pad);
  const footprint = pad.step('footprint', 'A = L × w', { L: run, w }, run.times(w));
  const formed = straightFaces(volume, input, pad);
  const around = { risers: n, rise, tread: t, width: w, run, nosing };
  return { volume, run, footprint, formed, tread: t, around };
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
  return { volume, run, footprint, formed, tread: t };
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

function reckon(input: Parsed, pad: Pad): StepVolumeFigures {
  const { risers: n, rise: r, cores } = input;
  const totalRise = pad.step('total rise', 'R = n × r', { n, r }, r.times(n));
  const flight = flightOf(input, pad);
  const shape = { totalRise, totalRun: flight.run, footprint: flight.footprint, formedArea: flight.formed };
  heed(input, flight.tread, pad);
  if (!cores?.length) return { volume: flight.volume, ...shape };
  cores.forEach(({ height }, i) => {
    if (!height.lessThan(totalRise))
      refuse(`cores[${i}].height`, faults.doesNotFit('height', 'the total rise'));
  });
  const { net, core, cover } = coresOut(flight.volume, cores, flight.around, pad);
  return { volume: net, ...shape, coreVolume: core, ...(cover ? { leastCover: cover } : {}) };
}

function door(): Field<Parsed> {
  const l = (what: string): Field<Length> => quantity('length', what);
  const parts = {
    risers: whole('risers', 1, 200),
    rise: l('rise'),
    cores: maybe(coresField()),
  };
  const straightField = fields({
    plan: maybe(word('straight')),
    ...parts,
    tread: l('tread'),
    width: l('width'),
    landingDepth: maybe(l('landingDepth')),
    wash: maybe(quantity('slope', 'wash', 'not-negative')),
    nosing: maybe(quantity('length', 'nosing', 'not-negative')),
    openSides: maybe(whole('openSides', 0, 2)),
  });
  return kinds<Parsed>(
    'plan',
    [
      straightField,
      fields({
        plan: word('wrapped'),
        ...parts,
        tread: l('tread'),
        topWidth: l('topWidth'),
        topDepth: l('topDepth'),
        sides: choice<'one' | 'both'>('sides', ['one', 'both']),
      }),
      fields({
        plan: word('round'),
        ...parts,
        tread: l('tread'),
        topRadius: l('topRadius'),
        innerRadius: maybe(quantity('length', 'innerRadius', 'not-negative')),
        turn: quantity('angle', 'turn'),
      }),
      fields({
        plan: word('winding'),
        ...parts,
        innerRadius: quantity('length', 'innerRadius', 'not-negative'),
        outerRadius: l('outerRadius'),
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
 * cores inside
 * @returns volume, total rise and run, footprint, faces to form; with cores, what they take out and the
 * least concrete around them
 * @throws {InputError} for a number of risers that is not whole, and for lengths that cannot be read
 * or are not greater than zero; `does-not-fit` for a core, a nosing or a turn that the flight has no
 * room for
 * @source closed form; cautions from IRC 2018 R311.7.5 as summarised by Jefferson County, Colorado
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
