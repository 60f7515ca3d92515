/**
 * Welded wire mesh over any outline with openings: the second kind of input of `mesh-layout`.
 *
 * Strips are tried both ways and from either edge, and the way that takes the fewest sheets or rolls is kept.
 * Pieces shorter than a sheet are cut from sheets so that cutoffs serve again, by the search of `bar-cutting`.
 * Rolls may also be run in one line: where one ends within a strip the next is lapped on, so that
 * `ceil((R − e) ÷ (s − e))` rolls reach over strips of `R` in all. Lengths are searched for in binary numbers
 * and rounded up to whole cutting steps, so they are exact and at most one step long.
 */

import type { Corner } from '../geometry/polygon';
import { type OutlineInput, outline } from '../outline/outline';
import { type OpeningInput, openings, type Region, ringsFromCorner } from '../outline/region';
import { Decimal } from '../quantity/decimal';
import * as faults from '../quantity/faults';
import { angle, constant } from '../quantity/make';
import { type Paired, paired } from '../quantity/paired';
import { canonicalValue, type Quantity, type QuantityInput } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { choice, type Field, fields, maybe, quantity, wholeNumber } from '../reckoning/fields';
import { beyond, type Limit, withinLimit } from '../reckoning/limits';
import { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE } from '../reckoning/source';
import { systemOfInput } from '../reckoning/system';
import { say } from '../reckoning/words';
import type { CutProblem } from '../solve/stock/fill';
import { firstFitBars } from '../solve/stock/first-fit';
import { solveCutting } from '../solve/stock/search';
import { lengthOf } from './bar-list';
import { metersLike } from './common';
import { listedCorners } from './corners';
import { supportsUnder } from './mat';
import { meshOnGround, rollsSpring } from './mat-cautions';
import { backTo, directionOf, type Spot, spotAt, spotsOf } from './mat-clip';
import { stepsIn, TooManyBars } from './mat-laps';
import { CUT_TO, MESH_EDGE, MESH_LAP, SHEET_LENGTH, SHEET_WIDTH, SUPPORTS_APART, TURN } from './mat-ordinary';
import { type CountedStrips, countStrips, type LaidPiece, layStrips, type StripRule } from './mesh-cover';
import { heedMeshLaps, meshLaps } from './mesh-laps';
import { styleWeight, unknownStyle } from './mesh-style';
import { meshSupportsOf } from './mesh-supports';
import { styleField, type WireStyle } from './wire';

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
  /** From the edges of the slab to the mesh; by default 2 in, or 50 mm. */
  readonly edge?: QuantityInput<'length'>;
  /** Overlap of neighboring strips; by default one square, 6 in or 150 mm where no style is given. */
  readonly sideLap?: QuantityInput<'length'>;
  /** Overlap end to end; by default one square, or the side lap where that is given. */
  readonly endLap?: QuantityInput<'length'>;
  /** Direction of the strips, counterclockwise from x; by default the better of along and across. */
  readonly angle?: QuantityInput<'angle'>;
  /** Pieces are cut to a multiple of this; by default 1 in, or 10 mm. */
  readonly cutTo?: QuantityInput<'length'>;
  /** Style, where the weight is wanted: any designation. */
  readonly style?: string;
  /** Between chairs or blocks, both ways; by default 3 ft, or 0.9 m, or 2 ft, or 0.6 m, under light wire. */
  readonly supports?: QuantityInput<'length'>;
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
  /** Whole sheets or rolls to buy, cutoffs used again. */
  readonly pieces: Quantity<'count'>;
  /** No plan of cutting takes fewer for these strips. */
  readonly leastPieces: Quantity<'count'>;
  /** What each piece laid for itself would take. */
  readonly withoutReuse: Quantity<'count'>;
  /** Strips side by side, from edge to edge of the slab. */
  readonly strips: Quantity<'count'>;
  /** Where one narrow strip is all: how many a sheet is cut into along its length; left out where it is not. */
  readonly stripsPerPiece?: Quantity<'count'>;
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
  /** Chairs or blocks under the mesh. */
  readonly supports: Quantity<'count'>;
  /** Overlap of neighboring strips that was used. */
  readonly sideLap: Quantity<'length'>;
  /** Overlap end to end that was used. */
  readonly endLap: Quantity<'length'>;
}

/** A piece of mesh in its place: plain meters, for drawing and for checking. */
export interface MeshPlace {
  /** Four corners, in order. */
  readonly corners: readonly {
    /** Along x, in meters, as the outline lies. */
    readonly x: number;
    /** Along y, in meters, as the outline lies. */
    readonly y: number;
  }[];
  /** Along the strip, in meters. */
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
  readonly supports: Length | undefined;
}

/** Sheets or rolls, whole or cut, of one direction. */
export const PIECE_LIMIT: Limit = { of: 'the mesh in pieces', most: 100_000 };
export const SUPPORT_LIMIT: Limit = { of: 'the mesh in supports', most: 100_000 };
export const CORNER_LIMIT: Limit = { of: 'the outline with its openings in corners', most: 10_000 };
/** Lengths of piece that one list tells apart. */
export const LENGTH_LIMIT: Limit = { of: 'the mesh in pieces of different lengths', most: 6000 };
/** Above this many distinct lengths cutoffs are used first-fit. */
const SEARCHED_LENGTHS = 60;
const EDGE = /*#__PURE__*/ paired('length', '2 in', '50 mm');
/** Search for cutoffs used again: a tenth of a second, and less in most lists. */
const EFFORT = 3e7;
const CUT_STEP = /*#__PURE__*/ paired('length', '1 in', '10 mm');
const FARTHEST = constant(() => new Decimal(100_000));

const meters = (q: Length): number => canonicalValue(q).toNumber();

interface Ground {
  readonly rule: Omit<StripRule, 'degrees' | 'fromFar'>;
  /** Where the first corner stands, from which the rings are measured. */
  readonly origin: Corner;
  readonly side: Length;
  readonly end: Length;
  readonly step: Length;
}

function usual(name: 'edge' | 'cutTo', value: Paired<'length'>, because: string, pad: Pad): Length {
  pad.assume({ name, value, because, override: say`Give ${{ name }}`, source: COMMON_PRACTICE });
  return value.as(pad.system);
}

function groundOf(input: ParsedMeshRegion, pad: Pad): Ground {
  withinLimit(CORNER_LIMIT, listedCorners(input), 'outline');
  const { rings, origin } = ringsFromCorner(input);
  if (rings.outer.some(({ x, y }) => x.abs().greaterThan(FARTHEST()) || y.abs().greaterThan(FARTHEST()))) {
    refuse('outline', faults.outOfRange('the outline'));
  }
  const corners = rings.openings.reduce((n, ring) => n + ring.length, rings.outer.length);
  withinLimit(CORNER_LIMIT, corners, 'outline');
  const { side, end } = meshLaps(input, pad);
  const edge = input.edge ?? usual('edge', EDGE, 'mesh is kept back from the forms', pad);
  const step = input.cutTo ?? usual('cutTo', CUT_STEP, 'mesh is not cut closer than this', pad);
  const each = meters(step);
  const piece = stepsIn(meters(input.pieceLength), each);
  const endLap = Math.ceil(meters(end) / each - 1e-6);
  if (piece <= endLap) refuse('cutTo', faults.doesNotFit('the end lap in cutting steps', 'pieceLength'));
  const rule = {
    rings: spotsOf(rings),
    edge: meters(edge),
    step: each,
    piece,
    width: meters(input.pieceWidth),
    sideLap: meters(side),
    endLap,
    limit: PIECE_LIMIT.most,
  };
  return { rule, origin, step, side, end };
}

/** Pieces laid, and what is bought for them. */
interface Bought {
  readonly strips: CountedStrips;
  readonly counts: readonly (readonly [steps: number, count: number])[];
  readonly pieces: number;
  readonly least: number;
}

function buy(strips: CountedStrips, { piece, endLap }: Ground['rule'], form: 'sheets' | 'rolls'): Bought {
  withinLimit(LENGTH_LIMIT, strips.counts.size, 'cutTo');
  const counts = [...strips.counts].sort((a, b) => b[0] - a[0]);
  const cut = cutFrom(counts, piece);
  const sheets = (lengths: number): number => Math.ceil(lengths / strips.outOfWidth);
  if (form === 'sheets') return { strips, counts, pieces: sheets(cut.pieces), least: sheets(cut.least) };
  const reach = strips.inOneLine;
  const inLine = reach > piece ? Math.ceil((reach - endLap) / (piece - endLap)) : 1;
  return { strips, counts, pieces: Math.min(cut.pieces, inLine), least: Math.ceil(reach / piece) };
}

/** The fewest pieces that these lengths are cut from, and a number that no plan goes below. */
function cutFrom(counts: Bought['counts'], piece: number): { pieces: number; least: number } {
  const problem: CutProblem = {
    weights: counts.map(([steps]) => steps),
    demand: counts.map(([, count]) => count),
    capacities: [piece],
    costs: [1],
  };
  if (counts.length > SEARCHED_LENGTHS) {
    const least = Math.ceil(counts.reduce((s, [steps, count]) => s + steps * count, 0) / piece);
    return { pieces: firstFitBars(counts, piece), least };
  }
  const { plan, bound } = solveCutting(problem, EFFORT);
  return { pieces: plan.cost, least: bound };
}

/** What is kept low, in this order; a text at the end settles what is equal so far. */
type Score = readonly [
  bought: number,
  laid: number,
  length: number,
  strips: number,
  least: number,
  list: string,
];

const scoreOf = ({ pieces, strips, counts, least }: Bought): Score => [
  pieces,
  strips.pieces,
  counts.reduce((sum, [steps, n]) => sum + steps * n, 0),
  strips.strips,
  least,
  counts.map(([steps, n]) => `${steps}:${n}`).join(),
];

function better(a: Bought, b: Bought): boolean {
  const [one, other] = [scoreOf(a), scoreOf(b)];
  const at = one.findIndex((value, i) => value !== other[i]);
  return at >= 0 && (one[at] as number | string) < (other[at] as number | string);
}

/** Strips in one direction, from the edge that takes fewer. */
function lay({ rule }: Ground, degrees: number, form: 'sheets' | 'rolls'): Bought {
  try {
    const [near, far] = [false, true].map((fromFar) => {
      const strips = countStrips({ ...rule, degrees, fromFar });
      if (strips.pieces === 0)
        return refuse('edge', faults.doesNotFit('twice the edge distance', 'the slab'));
      return buy(strips, rule, form);
    }) as [Bought, Bought];
    return better(far, near) ? far : near;
  } catch (error) {
    if (error instanceof TooManyBars) return beyond(error.limit ?? PIECE_LIMIT, 'pieceLength');
    throw error;
  }
}

interface Choice {
  readonly best: Bought;
  readonly other?: Bought;
}

function choose({ form, angle: given }: ParsedMeshRegion, ground: Ground): Choice {
  if (given) return { best: lay(ground, given.toNumber('deg'), form) };
  const [along, across] = [lay(ground, 0, form), lay(ground, 90, form)];
  return better(across, along) ? { best: across, other: along } : { best: along, other: across };
}

/** Mesh in its place, with the rings that it lies in. */
export interface MeshSheet {
  readonly places: MeshPlace[];
  readonly rings: readonly (readonly Spot[])[];
  readonly sideLap: Length;
  readonly endLap: Length;
}

/** Where the pieces of mesh lie. */
export function meshPlacesOf(input: ParsedMeshRegion): MeshSheet {
  const ground = groundOf(input, new Pad(systemOfInput(input).system));
  const { degrees, fromFar } = choose(input, ground).best.strips;
  const direction = directionOf(degrees);
  const back = backTo(ground.origin);
  const pieces = layStrips({ ...ground.rule, degrees, fromFar });
  const places = pieces.map(({ from, steps, low, high }: LaidPiece): MeshPlace => {
    const long = steps * ground.rule.step;
    const corner = (u: number, v: number): Spot => spotAt(direction, u, v);
    return {
      corners: back([
        corner(from, low),
        corner(from + long, low),
        corner(from + long, high),
        corner(from, high),
      ]) as [Spot, Spot, Spot, Spot],
      length: long,
    };
  });
  return { places, rings: ground.rule.rings.map(back), sideLap: ground.side, endLap: ground.end };
}

/** Reckon mesh over any outline. */
export function reckonMeshRegion(input: ParsedMeshRegion, pad: Pad): MeshRegionFigures {
  const ground = groundOf(input, pad);
  const { best, other } = choose(input, ground);
  const { step } = ground;
  const laid = best.counts.map(([steps, count]) => ({
    length: lengthOf(steps, step),
    count: wholeNumber(count),
  }));
  const laidLength = laid.reduce(
    (sum, { length: l, count }) => sum.plus(l.times(count)),
    metersLike(new Decimal(0), input.pieceLength),
  );
  const p: Count = wholeNumber(best.pieces);
  const { pieceLength: s, pieceWidth: w } = input;
  const pieceArea = pad.step('area of a piece', 'a = s × w', { s, w }, s.times(w));
  const B = pad.step('area bought', 'B = p × a', { p, a: pieceArea }, pieceArea.times(p));
  const isRipped = input.form === 'sheets' && best.strips.outOfWidth > 1 && best.strips.pieces > 1;
  const u = input.style ? styleWeight(input.style, pad) : undefined;
  const weight = u ? pad.step('weight', 'M = B × u', { B, u }, B.times(u)) : undefined;
  const supports = supportsUnderMesh(input, ground, pad);
  heedMeshLaps(input, { side: best.strips.strips > 1, end: best.strips.pieces > best.strips.strips }, pad);
  pad.caution(meshOnGround);
  if (input.form === 'rolls') pad.caution(rollsSpring);
  return {
    pieces: p,
    leastPieces: wholeNumber(best.least),
    withoutReuse: wholeNumber(best.strips.pieces),
    strips: wholeNumber(best.strips.strips),
    ...(isRipped ? { stripsPerPiece: wholeNumber(best.strips.outOfWidth) } : {}),
    direction: angleOf(best.strips.degrees, input.angle),
    ...(other ? { otherWay: wholeNumber(other.pieces) } : {}),
    laid,
    laidLength,
    areaBought: B,
    pieceArea,
    ...(weight ? { weight } : {}),
    supports,
    sideLap: ground.side,
    endLap: ground.end,
  };
}

/** Chairs or blocks in rows under all of the mesh. */
function supportsUnderMesh(input: ParsedMeshRegion, { rule }: Ground, pad: Pad): Count {
  const apart = meshSupportsOf(input.supports, input.style, input.pieceLength, pad);
  const { rings, edge } = rule;
  try {
    return wholeNumber(supportsUnder({ rings, cover: edge, limit: SUPPORT_LIMIT.most }, meters(apart)));
  } catch (error) {
    if (error instanceof TooManyBars) return beyond(error.limit ?? SUPPORT_LIMIT, 'supports');
    throw error;
  }
}

const angleOf = (degrees: number, given: Quantity<'angle'> | undefined): Quantity<'angle'> =>
  given ?? angle(`${degrees} deg`);

/** The schema of the input. */
export const meshRegionInput = (): Field<ParsedMeshRegion> =>
  fields({
    outline: outline(),
    openings: maybe(openings()),
    form: choice('form', ['sheets', 'rolls'] as const),
    pieceLength: quantity('length', 'pieceLength', 'positive', SHEET_LENGTH),
    pieceWidth: quantity('length', 'pieceWidth', 'positive', SHEET_WIDTH),
    edge: maybe(quantity('length', 'edge', 'not-negative', MESH_EDGE)),
    sideLap: maybe(quantity('length', 'sideLap', 'not-negative', MESH_LAP)),
    endLap: maybe(quantity('length', 'endLap', 'not-negative', MESH_LAP)),
    angle: maybe(quantity('angle', 'angle', 'any', TURN)),
    cutTo: maybe(quantity('length', 'cutTo', 'positive', CUT_TO)),
    style: maybe(styleField(unknownStyle)),
    supports: maybe(quantity('length', 'supports', 'positive', SUPPORTS_APART)),
  });
