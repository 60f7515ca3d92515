/**
 * What to raise or strike off, while the concrete is wet, so that water runs away.
 *
 * Within `zone` of a building every facet must fall away from it by the minimum; along each fall given
 * one spot must lie so much above another; no spot may come nearer to a sill than its clearance, move
 * farther than allowed, or leave less than the least thickness. Spots at a building, a threshold or a
 * drain stay as they are. Beyond the zone the surface must drain too: what the drainage check finds at
 * fault there is made a need, see `correction/search.ts`. Made least is the concrete moved; forms stay
 * where what lies between them can be put right for no more than twice that.
 *
 * Source: geometry; the fall as in IRC 2006 R401.3 as quoted; how long wet concrete may be moved as in
 * the works named in `correction/sources.ts`.
 */
import { Decimal, ZERO } from '../quantity/decimal';
import { type Quantity, type QuantityInput, quantityOf } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import { choice, fields, label, list, maybe, quantity } from '../reckoning/fields';
import { SLAB_THICKNESS } from '../reckoning/ordinary';
import type { Pad } from '../reckoning/pad';
import { CLOSED_FORM } from '../reckoning/source';
import { all, anyOf, filled, given } from '../reckoning/together';
import { say, sentenceOf, type Words } from '../reckoning/words';
import {
  type ConcreteStage,
  type CorrectionStepFigure,
  type CorrectionVerdict,
  heed,
  inOrder,
  type Outcome,
  STAGES,
  sequenceOf,
  verdictOf,
} from './correction/advice';
import { type Looker, lookerAt } from './correction/corrected';
import {
  bindingNames,
  CORRECTED,
  type CorrectionJob,
  jobOf,
  NEAR,
  type ParsedCorrection,
  SPOTS,
} from './correction/job';
import type { Need } from './correction/needs';
import { blockedBy, type Moves } from './correction/program';
import { seek, spotsAtForms } from './correction/search';
import { BLEED_WATER, GRINDING, STRIKE_OFF } from './correction/sources';
import * as faults from './faults';
import * as ordinary from './grade-ordinary';
import { lines as lineFields, type SurfaceLineInput } from './lines';
import { small, toMark } from './marks';
import { IRC_DRAINAGE } from './sources';
import { metersAs, SPOT_KEYS, type SpotsInput, spotFields } from './spots';
import type { SurfaceDrainageFigures } from './surface-figures';

/** A fall that must be there from one spot to another. */
export interface SpotFallInput {
  /** Name of the upper spot. */
  readonly from: string;
  /** Name of the lower spot. */
  readonly to: string;
  /** Least slope down from `from` to `to`. */
  readonly minimum: QuantityInput<'slope'>;
}

/** A sill or threshold above a spot. */
export interface SpotSillInput {
  /** What the sill is called. */
  readonly name: string;
  /** Name of the spot below it. */
  readonly at: string;
  /** Elevation of the sill, on the datum of the spots. */
  readonly elevation: QuantityInput<'length'>;
}

/** How thick the slab is at a spot. */
export interface SpotThicknessInput {
  /** Name of the spot. */
  readonly spot: string;
  /** Thickness there before the correction. */
  readonly thickness: QuantityInput<'length'>;
}

/** Input of {@link gradeCorrection}. */
export interface GradeCorrectionInput extends SpotsInput {
  /** Lines of the building; see the drainage check. */
  readonly lines?: readonly SurfaceLineInput[];
  /** Falls that must be there besides those away from a building; none by default. */
  readonly falls?: readonly SpotFallInput[];
  /** Least slope away from a building within `zone`; by default 2%, or 1% where there is no building. */
  readonly minimum?: QuantityInput<'slope'>;
  /** By default 10 ft. */
  readonly zone?: QuantityInput<'length'>;
  /** What may be done; by default `either`, whichever moves less concrete. */
  readonly how?: 'raise' | 'lower' | 'either';
  /**
   * Names of spots that may be moved. By default all but those at a building, a threshold or a drain;
   * one of these is moved only when named here.
   */
  readonly movable?: readonly string[];
  /** The farthest that any spot may be moved; no limit by default. */
  readonly farthest?: QuantityInput<'length'>;
  /** Sills that the surface must stay below by `sillClearance`; none by default. */
  readonly sills?: readonly SpotSillInput[];
  /** How far the surface must stay below sills; by default 1 in. */
  readonly sillClearance?: QuantityInput<'length'>;
  /** Thickness at spots: they are not struck off below `minimumThickness`. */
  readonly thicknesses?: readonly SpotThicknessInput[];
  /** What must be left where the surface is struck off; by default 3-1/2 in where thicknesses are given. */
  readonly minimumThickness?: QuantityInput<'length'>;
  /** How far the concrete has come; by default it is being struck off. */
  readonly stage?: ConcreteStage;
}

/** What to do at one spot. */
export interface SpotMoveFigure {
  /** Name of the spot. */
  readonly spot: string;
  /** Elevation afterward, exact. */
  readonly elevation: Quantity<'length'>;
  /** How far up it goes; left out where it goes down. */
  readonly raise?: Quantity<'length'>;
  /** How far down it goes; left out where it goes up. */
  readonly lower?: Quantity<'length'>;
  /** The move to the nearest 1/16 in or mm. */
  readonly mark: Quantity<'length'>;
  /** Plan area that the spot stands for: a third of the facets around it. */
  readonly area: Quantity<'area'>;
  /** Concrete that is added or struck off there. */
  readonly concrete: Quantity<'volume'>;
  /** Whether the spot lies at the edge, so that the form must be set first. */
  readonly atForm: boolean;
  /** Thickness afterward, where it was given. */
  readonly thickness?: Quantity<'length'>;
}

/** A sill after the correction. */
export interface SillAfterFigure {
  /** Name of the sill. */
  readonly name: string;
  /** How far the corrected surface lies below it; negative when above. */
  readonly clearance: Quantity<'length'>;
}

/** Figures of {@link gradeCorrection}. */
export interface GradeCorrectionFigures {
  /** What is to be done. */
  readonly verdict: CorrectionVerdict;
  /** Spots to be moved, and no others: those struck off first, the farthest move before the others. */
  readonly moves: readonly SpotMoveFigure[];
  /** The work in its order; empty where the verdict is not to do it. */
  readonly steps: readonly CorrectionStepFigure[];
  /** Concrete to be added, in place. */
  readonly concrete: Quantity<'volume'>;
  /** Concrete to be struck off. */
  readonly struckOff: Quantity<'volume'>;
  /** Fresh concrete that is wanted beyond what is struck off. */
  readonly toBring: Quantity<'volume'>;
  /** Each sill after the correction, in the order given. */
  readonly sills: readonly SillAfterFigure[];
  /** What the correction is decided by. */
  readonly binding: readonly Words[];
  /** What stands in the way, where nothing will do: needs, limits, and the spots that are held. */
  readonly blockedBy: readonly Words[];
  /** The check of the corrected surface. */
  readonly after: {
    /** The gravest that is still found. */
    readonly verdict: SurfaceDrainageFigures['verdict'];
    /** How many facets still run to a building within the zone. */
    readonly reverse: Quantity<'count'>;
    /** How many facets still fall less than required. */
    readonly short: Quantity<'count'>;
    /** How many ponds are left, however shallow. */
    readonly pondCount: Quantity<'count'>;
    /** Volume of the ponds left. */
    readonly pondVolume: Quantity<'volume'>;
  };
}

interface Parsed extends ParsedCorrection {
  readonly stage: ConcreteStage | undefined;
}

function stageOf(given: ConcreteStage | undefined, pad: Pad): ConcreteStage {
  if (given) return given;
  pad.assume({
    name: 'stage',
    value: STAGES[0] as string,
    because: 'high spots are pulled off and low ones filled while the concrete is struck off',
    override: 'Give stage',
    source: STRIKE_OFF,
  });
  return STAGES[0] as ConcreteStage;
}

interface Sought {
  readonly outcome: Outcome;
  readonly needs: readonly Need[];
}

const NONE: Moves = new Map();

/** The moves, or what stands in their way. @throws {InputError} `no-solution` where what is asked contradicts itself */
function sought(job: CorrectionJob, looker: Looker, input: Parsed): Sought {
  const found = seek({
    job,
    looker,
    base: job.needs,
    whole: (input.lines?.length ?? 0) > 0,
    forms: input.movable ? new Set() : spotsAtForms(job.site),
  });
  if (found) {
    const after = looker.check(found.moves).figures;
    return { outcome: { moves: found.moves, blocks: [], after }, needs: found.needs };
  }
  const { names, contradiction } = blockedBy(job, job.needs);
  if (contradiction) return refuse('', faults.noSolution(names.map(sentenceOf)));
  return { outcome: { moves: NONE, blocks: names, after: looker.check(NONE).figures }, needs: job.needs };
}

function volumeAs(value: Decimal, job: CorrectionJob): Quantity<'volume'> {
  const volume = quantityOf('volume', value, job.survey.system);
  return job.survey.system === 'metric' ? volume : volume.in('ft3');
}

function moveFigure(
  job: CorrectionJob,
  v: number,
  moves: Moves,
  atForms: ReadonlySet<number>,
  pad: Pad,
): SpotMoveFigure {
  const { survey } = job;
  const spot = survey.name(v);
  const move = moves.get(v) ?? ZERO;
  const z = metersAs(survey.exact(v).z, survey.system);
  const m = small(metersAs(move, survey.system));
  const elevation = pad.step(say`elevation of ${{ spot }} afterward`, 'w = z + m', { z, m }, z.plus(m));
  const a = m.abs();
  const concrete = volumeAs((job.shares[v] as Decimal).times(move.abs()), job);
  const before = job.thickness.get(v);
  return {
    spot,
    elevation,
    [move.isNegative() ? 'lower' : 'raise']: a,
    mark: toMark(a),
    area: quantityOf('area', job.shares[v] as Decimal, survey.system),
    concrete,
    atForm: atForms.has(v) && !job.atWall.has(v),
    ...(before ? { thickness: small(before.plus(m)) } : {}),
  };
}

function sillsAfter(job: CorrectionJob, input: Parsed, moves: Moves): SillAfterFigure[] {
  return (input.sills ?? []).map(({ name, at, elevation }, i) => {
    const v = job.find(at, `sills[${i}].at`);
    const surface = metersAs(job.survey.exact(v).z.plus(moves.get(v) ?? ZERO), job.survey.system);
    return { name, clearance: small(elevation.minus(surface)) };
  });
}

function reckon(input: Parsed, pad: Pad): GradeCorrectionFigures {
  const job = jobOf(input, pad);
  const stage = stageOf(input.stage, pad);
  const looker = lookerAt(job.site, job.survey, job.asked, NEAR().toNumber('m'));
  const { outcome, needs } = sought(job, looker, input);
  const { moves, blocks, after } = outcome;
  const atForms = spotsAtForms(job.site);
  const total = (sign: 1 | -1): Decimal =>
    [...moves].reduce(
      (sum, [v, move]) =>
        move.isNegative() === sign < 0 ? sum.plus((job.shares[v] as Decimal).times(move.abs())) : sum,
      ZERO,
    );
  const [added, off] = [total(1), total(-1)];
  const sills = sillsAfter(job, input, moves);
  heed(job, outcome, stage, sills, pad);
  const verdict = verdictOf(job, outcome, stage);
  const { reverse, short, pondCount, pondVolume } = after;
  return {
    verdict,
    moves: inOrder(job, moves).map((v) => moveFigure(job, v, moves, atForms, pad)),
    steps: sequenceOf(job, moves, atForms, verdict),
    concrete: volumeAs(added, job),
    struckOff: volumeAs(off, job),
    toBring: volumeAs(Decimal.max(added.minus(off), 0), job),
    sills,
    binding: bindingNames(job, needs, moves),
    blockedBy: blocks,
    after: { verdict: after.verdict, reverse, short, pondCount, pondVolume },
  };
}

/**
 * What to raise and what to strike off so that water runs away, with the least concrete moved.
 *
 * @param input - spots as read, the lines of the building or the falls wanted, and what may be moved
 * @returns moves by spot in the order of doing, concrete, thickness and clearance afterward, what stands
 * in the way where nothing will do, and the check of the result
 * @throws {InputError} `no-solution` where what is asked for contradicts itself, whatever is moved;
 * `give-one-of` where neither a building nor a fall is given; `too-many` above 50 spots in all; and as the
 * drainage check
 * @source closed form; 2% as in IRC 2006 R401.3 as quoted; stages of wet concrete as quoted from the trade press
 * @example
 * ```ts
 * import { gradeCorrection } from 'flatwork-reckoner';
 *
 * const { figures } = gradeCorrection({
 *   spots: [
 *     { name: 'A', x: '0 ft', y: '0 ft', elevation: '100 ft' },
 *     { name: 'B', x: '10 ft', y: '0 ft', elevation: '99.9 ft' },
 *     { name: 'C', x: '0 ft', y: '10 ft', elevation: '99.8 ft' },
 *     { name: 'D', x: '10 ft', y: '10 ft', elevation: '99.8 ft' },
 *   ],
 *   lines: [{ kind: 'building', name: 'wall', along: ['A', 'B'] }],
 * });
 * figures.moves[0]?.spot; // 'D'
 * figures.moves[0]?.lower?.format(); // '1.2 in'
 * figures.struckOff.format(); // '2.5 ft3'
 * ```
 */
export const gradeCorrection: Calculation<GradeCorrectionInput, GradeCorrectionFigures> =
  /*#__PURE__*/ define({
    id: 'grade-correction',
    title: 'Correction of grades while placing',
    version: 2,
    sources: [CLOSED_FORM, IRC_DRAINAGE, STRIKE_OFF, BLEED_WATER, GRINDING],
    limits: [CORRECTED],
    input: () =>
      fields(
        {
          ...spotFields(),
          lines: maybe(lineFields()),
          falls: maybe(
            list(
              fields({
                from: label('from'),
                to: label('to'),
                minimum: quantity('slope', 'minimum', 'any', ordinary.PLANE_SLOPE),
              }),
              1,
              SPOTS,
            ),
          ),
          minimum: maybe(quantity('slope', 'minimum', 'not-negative', ordinary.PLANE_SLOPE)),
          zone: maybe(quantity('length', 'zone', 'positive', ordinary.ZONE)),
          how: maybe(choice('how', ['raise', 'lower', 'either'] as const)),
          movable: maybe(list(label('each spot'), 1, SPOTS)),
          farthest: maybe(quantity('length', 'farthest', 'positive', ordinary.MOVE)),
          sills: maybe(
            list(
              fields({
                name: label('name'),
                at: label('at'),
                elevation: quantity('length', 'elevation', 'any', ordinary.ELEVATION),
              }),
              1,
              SPOTS,
            ),
          ),
          sillClearance: maybe(quantity('length', 'sillClearance', 'not-negative', ordinary.SILL_CLEARANCE)),
          thicknesses: maybe(
            list(
              fields({
                spot: label('spot'),
                thickness: quantity('length', 'thickness', 'positive', SLAB_THICKNESS),
              }),
              1,
              SPOTS,
            ),
          ),
          minimumThickness: maybe(quantity('length', 'minimumThickness', 'positive', SLAB_THICKNESS)),
          stage: maybe(choice('stage', STAGES)),
        },
        all(anyOf(filled('lines'), given('falls')), anyOf(...SPOT_KEYS.map((name) => given(name)))),
      ),
    reckon,
  });
