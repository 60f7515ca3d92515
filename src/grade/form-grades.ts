/**
 * The elevation of the form at each stake, and how far to mark it from the stake's top or the ground.
 *
 * Either the surface is given in closed form (see `shapes.ts`), or a plane is sought that passes through
 * the fixed points, keeps to the bounds, has every required fall and is no steeper than its use bears
 * (see `sought-plane.ts`). Where no plane meets all, those in conflict are named.
 *
 * Source: closed forms; the signs of cut and fill as in NAVEDTRA 14081.
 */

import type { PointInput } from '../outline/outline';
import * as sharedFaults from '../quantity/faults';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import { choice, fields, label, list, maybe, quantity } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { CLOSED_FORM, COMMON_PRACTICE } from '../reckoning/source';
import { all, anyOf, given, notBoth } from '../reckoning/together';
import type { Words } from '../reckoning/words';
import * as faults from './faults';
import * as cautions from './form-cautions';
import { type FallFigure, fallFigures, planeFigures } from './form-falls';
import { type FormSquare, squareFigures } from './form-square';
import { type StakeFigure, stakeFigure, sumOf, volumesOf } from './form-stakes';
import * as ordinary from './grade-ordinary';
import { GRADE_USES, type GradeUse, isWalked } from './limits';
import { mostOf } from './plane-most';
import {
  type Elevation,
  type FixedPoint,
  type FixedPointInput,
  type FormSurface,
  type FormSurfaceInput,
  fixedPoint,
  formSurface,
  onPlane,
  type Plane,
  shapeOf,
} from './shapes';
import {
  CONDITIONS,
  type ParsedBound,
  type ParsedFall,
  type ParsedStake,
  SOUGHT_STAKES,
  soughtPlane,
} from './sought-plane';
import { NAVY_GRADES } from './sources';
import { planPoint } from './spots';

/** A stake at the forms. */
export interface StakeInput {
  /** What the stake is called; no two alike. */
  readonly name: string;
  /** How far along the stake stands. */
  readonly x: QuantityInput<'length'>;
  /** How far across the stake stands. */
  readonly y: QuantityInput<'length'>;
  /** Elevation of the stake's top; the mark is measured from there. */
  readonly top?: QuantityInput<'length'>;
  /** Elevation of the ground or base, for cut, fill and the least fill. */
  readonly ground?: QuantityInput<'length'>;
  /** Plan area that the stake stands for, for volumes. */
  readonly area?: QuantityInput<'area'>;
}

/** A fall that is required between two points. */
export interface RequiredFallInput {
  /** What the fall is called where it is not met. */
  readonly name: string;
  /** The upper end. */
  readonly from: PointInput;
  /** The lower end. */
  readonly to: PointInput;
  /** Least slope down from `from` to `to`; no least by default. */
  readonly minimum?: QuantityInput<'slope'>;
  /** Most slope down from `from` to `to`; no most by default. */
  readonly maximum?: QuantityInput<'slope'>;
}

/** A bound on the elevation at a point: below a sill, above a pipe. */
export interface ElevationBoundInput {
  /** What the bound is called where it binds or conflicts. */
  readonly name: string;
  /** How far along the point lies. */
  readonly x: QuantityInput<'length'>;
  /** How far across the point lies. */
  readonly y: QuantityInput<'length'>;
  /** Lowest that the plane may lie there; no least by default. */
  readonly minimum?: QuantityInput<'length'>;
  /** Highest that the plane may lie there; no most by default. */
  readonly maximum?: QuantityInput<'length'>;
}

/** A rectangle of forms, to be squared by its diagonals. */
export interface FormSquareInput {
  /** One side of the forms. */
  readonly length: QuantityInput<'length'>;
  /** The other side, square to it. */
  readonly width: QuantityInput<'length'>;
  /** The two diagonals as measured. */
  readonly measured?: readonly [QuantityInput<'length'>, QuantityInput<'length'>];
  /** How much the diagonals may differ; by default as in the check of squareness. */
  readonly tolerance?: QuantityInput<'length'>;
  /** How far outside the forms the batter boards stand. */
  readonly batterBoards?: QuantityInput<'length'>;
}

/** Input of {@link formGrades}. */
export interface FormGradesInput {
  /** The surface, where its shape is settled; otherwise a plane is sought. */
  readonly surface?: FormSurfaceInput;
  /** Points that the sought plane must pass through. */
  readonly fixed?: readonly FixedPointInput[];
  /** Bounds that the sought plane must keep to; not with `surface`. */
  readonly bounds?: readonly ElevationBoundInput[];
  /** Falls to be met by the sought plane, or checked on the surface given. */
  readonly falls?: readonly RequiredFallInput[];
  /** What the surface is used as; decides how steep it may be where `maximum` is not given. */
  readonly use?: GradeUse;
  /** The steepest that the surface may slope in any direction; by default what `use` bears, 5% without one. */
  readonly maximum?: QuantityInput<'slope'>;
  /** `none` where the sought plane may nowhere lie below the ground; by default `allowed`. */
  readonly cut?: 'allowed' | 'none';
  /** Stakes to be marked, and the ground that fill is least over. */
  readonly stakes: readonly StakeInput[];
  /** The rectangle of forms, where its diagonals are wanted. */
  readonly square?: FormSquareInput;
}

/** Figures of {@link formGrades}. */
export interface FormGradesFigures {
  /** `falls not met` where any fall is too flat or too steep; `too steep` where they are met on a plane beyond the most. */
  readonly verdict: 'all falls met' | 'falls not met' | 'too steep';
  /** What to mark at each stake, in the order given. */
  readonly stakes: readonly StakeFigure[];
  /** Each fall checked, in the order given. */
  readonly falls: readonly FallFigure[];
  /** Fall of a plane along x; negative when it rises. Left out for surfaces that are no plane. */
  readonly alongX?: Quantity<'slope'>;
  /** Fall of a plane along y; negative when it rises. Left out for surfaces that are no plane. */
  readonly alongY?: Quantity<'slope'>;
  /** Steepest slope of a plane: the hypotenuse of both. */
  readonly steepest?: Quantity<'slope'>;
  /** Sum of the fills at the stakes. */
  readonly fillHeights: Quantity<'length'>;
  /** Sum of the cuts at the stakes. */
  readonly cutHeights: Quantity<'length'>;
  /** Fill times the area of each stake, where areas are given. */
  readonly fillVolume?: Quantity<'volume'>;
  /** Cut times the area of each stake, where areas are given. */
  readonly cutVolume?: Quantity<'volume'>;
  /** What decides the sought plane: the conditions that bind. */
  readonly binding: readonly Words[];
  /** Diagonal of the rectangle: both must come to this. */
  readonly diagonal?: Quantity<'length'>;
  /** Diagonal between batter-board corners. */
  readonly boardDiagonal?: Quantity<'length'>;
  /** Difference of the diagonals measured. */
  readonly outOfSquare?: Quantity<'length'>;
}

type Slope = Quantity<'slope'>;

interface Parsed {
  readonly surface: FormSurface | undefined;
  readonly fixed: readonly FixedPoint[] | undefined;
  readonly bounds: readonly ParsedBound[] | undefined;
  readonly falls: readonly ParsedFall[] | undefined;
  readonly use: GradeUse | undefined;
  readonly maximum: Slope | undefined;
  readonly cut: 'allowed' | 'none' | undefined;
  readonly stakes: readonly ParsedStake[];
  readonly square: FormSquare | undefined;
}

const STAKE_LIMIT = 1000;
const CONDITION_LIMIT = 60;

function refuseSameStakes(stakes: readonly ParsedStake[]): void {
  const seen = new Set<string>();
  stakes.forEach(({ name }, i) => {
    if (seen.has(name)) refuse(`stakes[${i}].name`, faults.repeatedName(name));
    seen.add(name);
  });
}

interface Settled {
  readonly elevation: Elevation;
  readonly plane?: Plane;
  readonly binding: readonly Words[];
  readonly steeper: boolean;
}

/** The most slope: given, or by use. */
function mostSlope(
  input: Parsed,
  pad: Pad,
): { readonly most: Slope; readonly source: typeof COMMON_PRACTICE } {
  if (input.maximum) return { most: input.maximum, source: CLOSED_FORM };
  const { most, because, source } = mostOf(input.use);
  pad.assume({ name: 'maximum', value: most, because, override: 'Give maximum, or use', source });
  return { most, source };
}

/** Steps are a way out where people walk who can take them, and none for wheels. */
const onFoot = ({ use }: Parsed): boolean => !use || (use !== 'garage-floor' && isWalked(use));

/** A surface given is held to a most only where one is given, or a use that has one. */
function givenSurface(input: Parsed, surface: FormSurface, pad: Pad): Settled {
  if (input.fixed || input.bounds || input.cut) {
    refuse('', sharedFaults.giveOneOf(['surface', 'fixed points, bounds and cut of a plane to be sought']));
  }
  const shape = shapeOf(surface);
  if (!shape.plane || !(input.maximum ?? input.use)) return { ...shape, binding: [], steeper: false };
  const { most, source } = mostSlope(input, pad);
  const { steepest } = planeFigures(shape.plane, pad.system);
  const steeper = steepest.greaterThan(most);
  if (steeper) pad.caution(cautions.steepForms(most, steepest, [], source, onFoot(input)));
  return { ...shape, binding: [], steeper };
}

function sought(input: Parsed, pad: Pad): Settled {
  const { fixed = [], bounds = [], falls = [], stakes, cut } = input;
  if (!cut) {
    pad.assume({
      name: 'cut',
      value: 'allowed',
      because: 'the forms may lie below the ground as it is',
      override: 'Give cut: none',
      source: COMMON_PRACTICE,
    });
  }
  const { most, source } = mostSlope(input, pad);
  const { plane, binding, steeper } = soughtPlane({
    fixed,
    bounds,
    falls,
    stakes,
    noCut: cut === 'none',
    most,
  });
  const { steepest } = planeFigures(plane, pad.system);
  const because = binding.filter(({ says }) => !says.startsWith('level along'));
  if (steeper) pad.caution(cautions.steepForms(most, steepest, because, source, onFoot(input)));
  return { elevation: onPlane(plane), plane, binding, steeper };
}

/** The deepest fill, where it is deeper than a slab may stand on without approval. */
function heedFill(stakes: readonly StakeFigure[], pad: Pad): void {
  const deep = stakes.flatMap(({ name, fill }) => {
    const limit = fill && cautions.FILL.exceededBy(fill);
    return fill && limit ? [{ name, fill, limit }] : [];
  });
  const worst = deep.reduce<(typeof deep)[number] | undefined>(
    (most, s) => (most && !s.fill.greaterThan(most.fill) ? most : s),
    undefined,
  );
  if (worst) pad.caution(cautions.deepFill(worst.limit, worst.fill, worst.name));
}

/** Falls that are all met say nothing of a plane that may not be built. */
function verdictOf(falls: readonly FallFigure[], steeper: boolean): FormGradesFigures['verdict'] {
  if (falls.some(({ verdict }) => verdict !== 'met')) return 'falls not met';
  return steeper ? 'too steep' : 'all falls met';
}

function reckon(input: Parsed, pad: Pad): FormGradesFigures {
  refuseSameStakes(input.stakes);
  const system = pad.system;
  const { elevation, plane, binding, steeper } = input.surface
    ? givenSurface(input, input.surface, pad)
    : sought(input, pad);
  const stakes = input.stakes.map((stake) => stakeFigure(stake, elevation, system, pad));
  const falls = fallFigures(input.falls ?? [], elevation, system, pad);
  heedFill(stakes, pad);
  return {
    verdict: verdictOf(falls, steeper),
    stakes,
    falls,
    ...(plane ? planeFigures(plane, system, pad) : {}),
    fillHeights: sumOf(stakes, 'fill', system),
    cutHeights: sumOf(stakes, 'cut', system),
    ...volumesOf(input.stakes, stakes, system),
    binding,
    ...(input.square ? squareFigures(input.square, pad) : {}),
  };
}

/**
 * Form elevations at stakes, for a surface given or for the plane with the least fill.
 *
 * @param input - stakes, and a surface; or fixed points, bounds and falls that a plane must meet
 * @returns for each stake the elevation, the mark from its top, cut and fill; the falls checked
 * @throws {InputError} `conflicting-grades` with the names of the conditions that no plane meets
 * together; `no-datum` where nothing has an elevation; `collinear-spots` for three fixed points on a line or a quad that is bent inwards;
 * `repeated-name`, `repeated-point`, `too-many`; quantities that cannot be read
 * @source closed forms; cut and fill signs as in NAVEDTRA 14081
 * @example
 * ```ts
 * import { formGrades } from 'flatwork-reckoner';
 *
 * const { figures } = formGrades({
 *   fixed: [{ name: 'threshold', x: '0 ft', y: '0 ft', elevation: '100 ft' }],
 *   falls: [
 *     { name: 'away', from: { x: '0 ft', y: '0 ft' }, to: { x: '0 ft', y: '10 ft' }, minimum: '2%' },
 *   ],
 *   stakes: [{ name: 'A', x: '0 ft', y: '12 ft', top: '100 ft 6 in' }],
 * });
 * figures.stakes[0]?.elevation.format(); // '99.76 ft'
 * figures.stakes[0]?.mark?.format(); // '8.875 in'
 * ```
 */
export const formGrades: Calculation<FormGradesInput, FormGradesFigures> = /*#__PURE__*/ define({
  id: 'form-grades',
  title: 'Form grades at stakes',
  version: 2,
  sources: [CLOSED_FORM, NAVY_GRADES],
  limits: [CONDITIONS, SOUGHT_STAKES],
  input: () =>
    fields(
      {
        surface: formSurface(),
        fixed: maybe(list(fixedPoint(), 1, CONDITION_LIMIT)),
        bounds: maybe(
          list(
            fields({
              name: label('name'),
              x: quantity('length', 'x', 'any', ordinary.PLACE),
              y: quantity('length', 'y', 'any', ordinary.PLACE),
              minimum: maybe(quantity('length', 'minimum', 'any', ordinary.ELEVATION)),
              maximum: maybe(quantity('length', 'maximum', 'any', ordinary.ELEVATION)),
            }),
            1,
            CONDITION_LIMIT,
          ),
        ),
        falls: maybe(
          list(
            fields({
              name: label('name'),
              from: planPoint(),
              to: planPoint(),
              minimum: maybe(quantity('slope', 'minimum', 'any', ordinary.PLANE_SLOPE)),
              maximum: maybe(quantity('slope', 'maximum', 'any', ordinary.PLANE_SLOPE)),
            }),
            1,
            CONDITION_LIMIT,
          ),
        ),
        use: maybe(choice('use', GRADE_USES)),
        maximum: maybe(quantity('slope', 'maximum', 'positive', ordinary.PLANE_SLOPE)),
        cut: maybe(choice('cut', ['allowed', 'none'] as const)),
        stakes: list(
          fields({
            name: label('name'),
            x: quantity('length', 'x', 'any', ordinary.PLACE),
            y: quantity('length', 'y', 'any', ordinary.PLACE),
            top: maybe(quantity('length', 'top', 'any', ordinary.ELEVATION)),
            ground: maybe(quantity('length', 'ground', 'any', ordinary.ELEVATION)),
            area: maybe(quantity('area', 'area', 'positive', ordinary.STAKE_AREA)),
          }),
          1,
          STAKE_LIMIT,
        ),
        square: maybe(
          fields({
            length: quantity('length', 'length', 'positive', ordinary.FORM_SIDE),
            width: quantity('length', 'width', 'positive', ordinary.FORM_SIDE),
            measured: maybe(list(quantity('length', 'each diagonal', 'positive', ordinary.FORM_SIDE), 2, 2)),
            tolerance: maybe(quantity('length', 'tolerance', 'positive', ordinary.SQUARE_TOLERANCE)),
            batterBoards: maybe(quantity('length', 'batterBoards', 'positive', ordinary.BATTER_BOARDS)),
          }),
        ),
      },
      all(
        anyOf(...['surface', 'fixed', 'bounds', 'falls'].map((name) => given(name))),
        ...['fixed', 'bounds', 'cut'].map((name) => notBoth('surface', name)),
      ),
    ),
  reckon,
});
