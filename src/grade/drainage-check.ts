/**
 * Does water run away from the building: between two points, or over a whole surface?
 *
 * Between two points: `slope = (elevation at the building − elevation away from it) ÷ distance`,
 * against the least that is required for the kind of surface. Over a surface of spot elevations:
 * see `surface-check.ts`.
 */
import { constant, slope } from '../quantity/make';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { type Calculation, define } from '../reckoning/calculation';
import { byKey, choice, fields, maybe, type Output, quantity } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import type { Read } from '../reckoning/read';
import type { Result } from '../reckoning/result';
import { PCA_DRAINAGE, type Source } from '../reckoning/source';
import * as cautions from './cautions';
import { limitOf } from './limits';
import { LINE_PLACES } from './lines';
import { small } from './marks';
import { heedOnFoot } from './on-foot';
import * as ordinary from './ordinary';
import { slopeBetween } from './slope';
import { ADA_RAMPS, ADA_WALKS, GIVEN, GRADING_STANDARDS, GUTTER_LEAST, IRC_DRAINAGE } from './sources';
import { ROWS, SPOT_KEYS } from './spots';
import { checkSurface } from './surface-check';
import type { SurfaceDrainageFigures } from './surface-figures';
import { type ParsedSurface, type SurfaceDrainageInput, surfaceFields } from './surface-input';

/** Kinds of surface with a published least slope. */
export type DrainedSurface = 'paved-by-building' | 'ground-by-building' | 'slab-outdoors' | 'walk-across';

/** Input of {@link drainageCheck}. */
export interface DrainageCheckInput {
  /** Elevation of the surface at the building; any datum, the same for both. */
  readonly atBuilding: QuantityInput<'length'>;
  /** Elevation of the surface away from it. */
  readonly away: QuantityInput<'length'>;
  /** Level distance between the two. */
  readonly distance: QuantityInput<'length'>;
  /** What the surface is; decides the least slope where none is given. */
  readonly surface?: DrainedSurface;
  /** The least slope required; goes before that of the surface. */
  readonly minimum?: QuantityInput<'slope'>;
}

/** Figures of {@link drainageCheck}. */
export interface DrainageCheckFigures {
  /** `drains`, `too flat` or `runs to the building`. */
  readonly verdict: 'drains' | 'too flat' | 'runs to the building';
  /** Slope away from the building; negative when it runs back. */
  readonly slope: Quantity<'slope'>;
  /** Fall away from the building; negative when it runs back. */
  readonly fall: Quantity<'length'>;
  /** Least slope required. */
  readonly required: Quantity<'slope'>;
  /** Least fall required over this distance. */
  readonly requiredFall: Quantity<'length'>;
  /** How much lower the far point must be, or the near one higher; left out when it drains. */
  readonly shortfall?: Quantity<'length'>;
}

type Parsed = Read<DrainageCheckInput>;

const SURFACES: readonly DrainedSurface[] = [
  'paved-by-building',
  'ground-by-building',
  'slab-outdoors',
  'walk-across',
];

const USUAL: DrainedSurface = 'paved-by-building';
const LEAST = constant(() => slope('1%'));

/** What the surface is held to, with the source of each limit. */
interface Held {
  readonly least: Quantity<'slope'>;
  readonly source: Source;
}

function heldTo({ minimum, surface }: Parsed, pad: Pad): Held {
  if (minimum) return { least: minimum, source: GIVEN };
  const { least = LEAST(), because, source } = limitOf(surface ?? USUAL, pad.system);
  pad.assume({
    name: 'minimum',
    value: least,
    because,
    override: 'Give minimum, or another surface',
    source,
  });
  return { least, source };
}

/** Steeper than is allowed across, or so steep that what is walked on is a ramp. */
function heedSteep(s: Quantity<'slope'>, use: DrainedSurface, pad: Pad): void {
  const { most, source, mostSource = source } = limitOf(use, pad.system);
  if (most && s.greaterThan(most)) pad.caution(cautions.tooSteep(most, s, mostSource, false));
  heedOnFoot(s, use, pad);
}

function verdictOf(
  s: Quantity<'slope'>,
  { least, source }: Held,
  surface: DrainedSurface | undefined,
  pad: Pad,
): DrainageCheckFigures['verdict'] {
  if (s.sign() < 0) {
    pad.caution(cautions.runsToBuilding(least, s, source));
    return 'runs to the building';
  }
  heedSteep(s, surface ?? USUAL, pad);
  if (s.lessThan(least)) {
    pad.caution(cautions.tooFlat(least, s, source));
    return 'too flat';
  }
  return 'drains';
}

function reckon(input: Parsed, pad: Pad): DrainageCheckFigures {
  const { atBuilding: e, away: a, distance: d } = input;
  const held = heldTo(input, pad);
  const m = held.least;
  const f = pad.step('fall', 'f = e − a', { e, a }, small(e.minus(a)));
  const s = pad.step('slope', 's = f ÷ d', { f, d }, slopeBetween(f, d));
  const r = pad.step('required fall', 'r = m × d', { m, d }, small(m.times(d)));
  const verdict = verdictOf(s, held, input.surface, pad);
  const short =
    verdict === 'drains' ? {} : { shortfall: pad.step('shortfall', 'h = r − f', { r, f }, r.minus(f)) };
  return { verdict, slope: s, fall: f, required: m, requiredFall: r, ...short };
}

/** Does water run away from a building? Two kinds of input, told apart by whether spots are given. */
export interface DrainageCheck
  extends Calculation<
    DrainageCheckInput | SurfaceDrainageInput,
    DrainageCheckFigures | SurfaceDrainageFigures
  > {
  /** Between two points. */
  (input: DrainageCheckInput): Result<DrainageCheckFigures>;
  /** Over a surface of spot elevations. */
  (input: SurfaceDrainageInput): Result<SurfaceDrainageFigures>;
}

type EitherInput = Parsed | ParsedSurface;

const isSurface = (input: EitherInput): input is ParsedSurface => !('distance' in input);

const door = () =>
  byKey(
    SPOT_KEYS,
    surfaceFields(),
    fields({
      atBuilding: quantity('length', 'atBuilding', 'any', ordinary.ELEVATION),
      away: quantity('length', 'away', 'any', ordinary.ELEVATION),
      distance: quantity('length', 'distance', 'positive', ordinary.FALL_DISTANCE),
      surface: maybe(choice('surface', SURFACES)),
      minimum: maybe(quantity('slope', 'minimum', 'not-negative', ordinary.LEAST_FALL)),
    }),
  );

/**
 * Does water run away from the building, between two points or over a surface of spot elevations?
 *
 * @param input - two elevations and the level distance; or spots in plan with the lines of buildings,
 * curbs and drains. The surface or the least slope may be given with either
 * @returns a verdict with slope, fall and shortfall; for a surface the facets at fault, valleys with the
 * fall along each, the area that falls back toward a building and what becomes of its water, ponds with
 * depth, outline and volume, low spots, the longest way of water, and what reaches a building
 * @throws {InputError} for quantities that cannot be read, a distance that is not greater than zero, a
 * minimum that is negative; `few-spots`, `collinear-spots`, `conflicting-spots`, `no-datum`,
 * `unknown-name`, `repeated-name`, `outside-surface`, each with the names of the spots
 * @source least slopes: IRC 2006 R401.3 as quoted; the Portland Cement Association as cited in
 * Concrete Construction; least fall along valleys: the Texas Department of Transportation for gutters, and
 * grading standards as quoted for swales
 * @example
 * ```ts
 * import { drainageCheck } from 'flatwork-reckoner';
 *
 * const { figures } = drainageCheck({ atBuilding: '100 ft', away: '99.9 ft', distance: '12 ft' });
 * figures.verdict; // 'too flat'
 * figures.shortfall?.format(); // '1.68 in'
 *
 * const yard = drainageCheck({
 *   table: {
 *     unit: 'ft',
 *     rows: [
 *       [0, 0, 100],
 *       [12, 0, 100],
 *       [0, 12, 99.75],
 *       [12, 12, 99.75],
 *       [6, 6, 99.875],
 *     ],
 *   },
 *   lines: [{ kind: 'building', name: 'bakery', along: ['row 1', 'row 2'] }],
 * });
 * yard.figures.verdict; // 'drains'
 * yard.figures.longestPath.leavesOver; // 'open edge'
 * ```
 */
export const drainageCheck: DrainageCheck = /*#__PURE__*/ define<
  DrainageCheckInput | SurfaceDrainageInput,
  Output<ReturnType<typeof door>>,
  DrainageCheckFigures | SurfaceDrainageFigures
>({
  id: 'drainage-check',
  title: 'Drainage away from a building',
  version: 1,
  sources: [IRC_DRAINAGE, PCA_DRAINAGE, ADA_WALKS, ADA_RAMPS, GUTTER_LEAST, GRADING_STANDARDS],
  limits: [ROWS, LINE_PLACES],
  input: door,
  reckon: (input, pad) => (isSurface(input) ? checkSurface(input, pad) : reckon(input, pad)),
}) as DrainageCheck;
