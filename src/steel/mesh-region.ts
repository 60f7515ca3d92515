/**
 * Welded wire mesh over any outline with openings: the second kind of input of `mesh-layout`.
 *
 * Strips are tried both ways and the way that takes the fewest sheets or rolls is kept. Pieces shorter
 * than a sheet are cut from sheets so that offcuts serve again, by the search of `bar-cutting`. Lengths are
 * searched for in binary numbers and rounded up to whole cutting steps, so they are exact and at most one step long.
 */
import { type OutlineInput, outline } from '../geometry/outline';
import { type OpeningInput, openings, type Region, ringsOf } from '../geometry/region';
import { Decimal } from '../quantity/decimal';
import * as faults from '../quantity/faults';
import { angle, constant, length } from '../quantity/make';
import { canonicalValue, type Quantity, type QuantityInput, systemOfQuantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import * as cautions from '../reckoning/cautions';
import { choice, type Field, fields, maybe, quantity, text, wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE } from '../reckoning/source';
import { metresLike } from './common';
import type { CutProblem } from './cut-fill';
import { firstFitPlan, solveCutting } from './cut-search';
import { directionOf, type Spot, spotAt, spotsOf } from './mat-clip';
import { stepsIn, TooManyBars } from './mat-laps';
import { type LaidStrips, layStrips, type StripRule } from './mesh-cover';
import { meshLaps } from './mesh-laps';
import { styleWeight, unknownStyle } from './mesh-style';
import { readStyle, type WireStyle } from './wire';

/** Input of `meshLayout` for any outline. */
export interface MeshRegionInput {
  /** Outer edge of the slab. */
  readonly outline: OutlineInput;
  /** Holes in the slab, which need no mesh; none by default. */
  readonly openings?: readonly OpeningInput[];
  /** Whether the mesh comes in sheets or rolls. */
  readonly form: 'sheets' | 'rolls';
  /** Length of a sheet or a roll; strips run along it. */
  readonly pieceLength: QuantityInput<'length'>;
  /** Width of a sheet or a roll. */
  readonly pieceWidth: QuantityInput<'length'>;
  /** From the edges of the slab to the mesh; by default 2 in. */
  readonly edge?: QuantityInput<'length'>;
  /** Overlap of neighbouring strips; by default 6 in. */
  readonly sideLap?: QuantityInput<'length'>;
  /** Overlap end to end; by default the side lap. */
  readonly endLap?: QuantityInput<'length'>;
  /** Direction of the strips, anticlockwise from x; by default the better of along and across. */
  readonly angle?: QuantityInput<'angle'>;
  /** Pieces are cut to a multiple of this; by default 1 in, or 10 mm. */
  readonly cutTo?: QuantityInput<'length'>;
  /** Style, where the weight is wanted: any designation. */
  readonly style?: string;
}

/** Pieces of one length. */
export interface MeshPieces {
  /** Length of each, along the strip. */
  readonly length: Quantity<'length'>;
  /** How many. */
  readonly count: Quantity<'count'>;
}

/** Figures of `meshLayout` for any outline. */
export interface MeshRegionFigures {
  /** Whole sheets or rolls to buy, offcuts used again. */
  readonly pieces: Quantity<'count'>;
  /** No plan of cutting takes fewer for these strips. */
  readonly leastPieces: Quantity<'count'>;
  /** What each piece laid for itself would take. */
  readonly withoutReuse: Quantity<'count'>;
  /** Strips side by side, from edge to edge of the slab. */
  readonly strips: Quantity<'count'>;
  /** Direction of the strips. */
  readonly direction: Quantity<'angle'>;
  /** What the other way would take; left out where the direction was given. */
  readonly otherWay?: Quantity<'count'>;
  /** What is laid, longest first. */
  readonly laid: readonly MeshPieces[];
  /** All pieces as laid, end to end, laps included. */
  readonly laidLength: Quantity<'length'>;
  /** Whole sheets or rolls bought, by area. */
  readonly areaBought: Quantity<'area'>;
  /** Area of one sheet or roll. */
  readonly pieceArea: Quantity<'area'>;
  /** Weight of what is bought, where a style is given. */
  readonly weight?: Quantity<'mass'>;
}

/** A piece of mesh in its place: plain metres, for drawing and for checking. */
export interface MeshPlace {
  /** Four corners, in order. */
  readonly corners: readonly {
    /** Along x, in metres, as the outline lies. */
    readonly x: number;
    /** Along y, in metres, as the outline lies. */
    readonly y: number;
  }[];
  /** Along the strip, in metres. */
  readonly length: number;
}

type Length = Quantity<'length'>;
type Count = Quantity<'count'>;

/** The input, read. */
export interface ParsedMeshRegion extends Region {
  readonly form: 'sheets' | 'rolls';
  readonly pieceLength: Length;
  readonly pieceWidth: Length;
  readonly edge: Length | undefined;
  readonly sideLap: Length | undefined;
  readonly endLap: Length | undefined;
  readonly angle: Quantity<'angle'> | undefined;
  readonly cutTo: Length | undefined;
  readonly style: WireStyle | undefined;
}

const PIECE_LIMIT = 100_000;
/** Above this many distinct lengths offcuts are used first-fit. */
const SEARCHED_LENGTHS = 60;
const EDGE = constant(() => length('2 in'));
const INCH = constant(() => length('1 in'));
const CENTIMETRE = constant(() => length('10 mm'));
const FARTHEST = constant(() => new Decimal(100_000));

const metres = (q: Length): number => canonicalValue(q).toNumber();

interface Ground {
  readonly rule: Omit<StripRule, 'degrees'>;
  readonly step: Length;
}

function usual(name: 'edge' | 'cutTo', value: Length, because: string, pad: Pad): Length {
  pad.assume({ name, value: value.format(), because, override: `Give ${name}`, source: COMMON_PRACTICE });
  return value;
}

function groundOf(input: ParsedMeshRegion, pad: Pad): Ground {
  const rings = ringsOf(input);
  if (rings.outer.some(({ x, y }) => x.abs().greaterThan(FARTHEST()) || y.abs().greaterThan(FARTHEST()))) {
    refuse('outline', faults.outOfRange('the outline'));
  }
  const { side, end } = meshLaps(input, pad);
  const edge = input.edge ?? usual('edge', EDGE(), 'mesh is kept back from the forms', pad);
  const fine = systemOfQuantity(input.pieceLength) === 'metric' ? CENTIMETRE() : INCH();
  const step = input.cutTo ?? usual('cutTo', fine, 'mesh is not cut closer than this', pad);
  const each = metres(step);
  const piece = stepsIn(metres(input.pieceLength), each);
  const endLap = Math.ceil(metres(end) / each - 1e-6);
  if (piece <= endLap) refuse('cutTo', faults.doesNotFit('the end lap in cutting steps', 'pieceLength'));
  const rule = {
    rings: spotsOf(rings),
    edge: metres(edge),
    step: each,
    piece,
    width: metres(input.pieceWidth),
    sideLap: metres(side),
    endLap,
    limit: PIECE_LIMIT,
  };
  return { rule, step };
}

/** Pieces laid, and what is bought for them. */
interface Bought {
  readonly strips: LaidStrips;
  readonly counts: readonly (readonly [steps: number, count: number])[];
  readonly pieces: number;
  readonly least: number;
}

function buy(strips: LaidStrips, piece: number): Bought {
  const byLength = new Map<number, number>();
  for (const { steps } of strips.pieces) byLength.set(steps, (byLength.get(steps) ?? 0) + 1);
  const counts = [...byLength].sort((a, b) => b[0] - a[0]);
  const problem: CutProblem = {
    weights: counts.map(([steps]) => steps),
    demand: counts.map(([, count]) => count),
    capacities: [piece],
    costs: [1],
  };
  if (counts.length > SEARCHED_LENGTHS) {
    const least = Math.ceil(counts.reduce((s, [steps, count]) => s + steps * count, 0) / piece);
    return { strips, counts, pieces: firstFitPlan(problem, problem.demand).cost, least };
  }
  const { plan, bound } = solveCutting(problem);
  return { strips, counts, pieces: plan.cost, least: bound };
}

function lay({ rule }: Ground, degrees: number): Bought {
  try {
    const strips = layStrips({ ...rule, degrees });
    if (strips.pieces.length === 0)
      return refuse('edge', faults.doesNotFit('twice the edge distance', 'the slab'));
    return buy(strips, rule.piece);
  } catch (error) {
    if (error instanceof TooManyBars)
      return refuse('pieceLength', faults.tooMany('the mesh in pieces', PIECE_LIMIT));
    throw error;
  }
}

interface Choice {
  readonly best: Bought;
  readonly other?: Bought;
}

function choose(input: ParsedMeshRegion, ground: Ground): Choice {
  if (input.angle) return { best: lay(ground, input.angle.toNumber('deg')) };
  const [along, across] = [lay(ground, 0), lay(ground, 90)];
  return across.pieces < along.pieces ? { best: across, other: along } : { best: along, other: across };
}

/** Mesh in its place, with the rings that it lies in. */
export interface MeshSheet {
  readonly places: MeshPlace[];
  readonly rings: readonly (readonly Spot[])[];
}

/** Where the pieces of mesh lie. */
export function meshPlacesOf(input: ParsedMeshRegion, pad: Pad): MeshSheet {
  const ground = groundOf(input, pad);
  const { strips } = choose(input, ground).best;
  const direction = directionOf(strips.degrees);
  const places = strips.pieces.map(({ from, steps, low, high }): MeshPlace => {
    const long = steps * ground.rule.step;
    const corner = (u: number, v: number): Spot => spotAt(direction, u, v);
    return {
      corners: [corner(from, low), corner(from + long, low), corner(from + long, high), corner(from, high)],
      length: long,
    };
  });
  return { places, rings: ground.rule.rings };
}

/** Reckon mesh over any outline. */
export function reckonMeshRegion(input: ParsedMeshRegion, pad: Pad): MeshRegionFigures {
  const ground = groundOf(input, pad);
  const { best, other } = choose(input, ground);
  const { step } = ground;
  const laid = best.counts.map(([steps, count]) => ({
    length: step.times(wholeNumber(steps)),
    count: wholeNumber(count),
  }));
  const laidLength = laid.reduce(
    (sum, { length: l, count }) => sum.plus(l.times(count)),
    metresLike(new Decimal(0), input.pieceLength),
  );
  const p: Count = wholeNumber(best.pieces);
  const { pieceLength: s, pieceWidth: w } = input;
  const pieceArea = pad.step('area of a piece', 'a = s × w', { s, w }, s.times(w));
  const B = pad.step('area bought', 'B = p × a', { p, a: pieceArea }, pieceArea.times(p));
  const u = input.style ? styleWeight(input.style, pad) : undefined;
  const weight = u ? pad.step('weight', 'M = B × u', { B, u }, B.times(u)) : undefined;
  pad.caution(cautions.meshOnGround);
  return {
    pieces: p,
    leastPieces: wholeNumber(best.least),
    withoutReuse: wholeNumber(best.strips.pieces.length),
    strips: wholeNumber(best.strips.strips),
    direction: angleOf(best.strips.degrees, input.angle),
    ...(other ? { otherWay: wholeNumber(other.pieces) } : {}),
    laid,
    laidLength,
    areaBought: B,
    pieceArea,
    ...(weight ? { weight } : {}),
  };
}

const angleOf = (degrees: number, given: Quantity<'angle'> | undefined): Quantity<'angle'> =>
  given ?? angle(`${degrees} deg`);

/** The schema of the input. */
export const meshRegionInput = (): Field<ParsedMeshRegion> =>
  fields({
    outline: outline(),
    openings: maybe(openings()),
    form: choice('form', ['sheets', 'rolls'] as const),
    pieceLength: quantity('length', 'pieceLength'),
    pieceWidth: quantity('length', 'pieceWidth'),
    edge: maybe(quantity('length', 'edge', 'not-negative')),
    sideLap: maybe(quantity('length', 'sideLap', 'not-negative')),
    endLap: maybe(quantity('length', 'endLap', 'not-negative')),
    angle: maybe(quantity('angle', 'angle', 'any')),
    cutTo: maybe(quantity('length', 'cutTo')),
    style: maybe(text('style', readStyle, unknownStyle)),
  });
