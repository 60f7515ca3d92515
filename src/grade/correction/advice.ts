/**
 * What to make of a correction: the verdict, the order of doing, and what to watch out for.
 *
 * High spots are struck off before low ones are filled, so that what comes off is at hand; forms are set
 * first, since the straightedge rides on them. Concrete is moved until bleed water shows and no later.
 */

import { paired } from '../../quantity/paired';
import type { Quantity } from '../../quantity/quantity';
import type { System } from '../../quantity/units';
import * as shared from '../../reckoning/cautions';
import type { Pad } from '../../reckoning/pad';
import type { Words } from '../../reckoning/words';
import * as ownCautions from '../cautions';
import { distanceTo, piecesOf } from '../lines';
import { metersAs } from '../spots';
import type { SurfaceDrainageFigures } from '../surface-figures';
import * as cautions from './cautions';
import { type CorrectionJob, NEAR, SILL_CLEARANCE } from './job';
import type { Moves } from './program';

type Length = Quantity<'length'>;

/** How far the concrete has come. */
export type ConcreteStage = 'striking-off' | 'bull-floated' | 'bleeding' | 'set';

/** Every stage, for fields. */
export const STAGES: readonly ConcreteStage[] = ['striking-off', 'bull-floated', 'bleeding', 'set'];

/** What is to be done, in a few words. */
export type CorrectionVerdict =
  | 'nothing to correct'
  | 'correct these spots'
  | 'wait for the bleed water'
  | 'grind these spots'
  | 'too late to move'
  | 'only by raising at the building'
  | 'still does not drain'
  | 'cannot be corrected';

/** What the correction came to. */
export interface Outcome {
  readonly moves: Moves;
  /** What stands in the way, where nothing will do. */
  readonly blocks: readonly Words[];
  readonly after: SurfaceDrainageFigures;
}

const QUARTER = /*#__PURE__*/ paired('length', '1/4 in', '6 mm');
const WHERE = 3;

/** Struck off or ground more than that, it counts. */
const isMuch = (move: Length): boolean => QUARTER.exceededBy(move.abs()) !== undefined;

const passes = (job: CorrectionJob, moves: Moves, which: (v: number, move: Length) => boolean) =>
  [...moves].flatMap(([v, meters]) => {
    const unit = job.survey.system === 'metric' ? 'mm' : 'in';
    const move = metersAs(meters, job.survey.system).in(unit);
    return which(v, move) ? [{ v, name: job.survey.name(v), move }] : [];
  });

const farthestOf = (moved: readonly { readonly move: Length }[]): Length =>
  moved.map(({ move }) => move.abs()).reduce((a, b) => (b.greaterThan(a) ? b : a));

const namesOf = (moved: readonly { readonly name: string }[]): string[] =>
  moved.map(({ name }) => name).sort();

/** Whether what is wrong with set concrete can be ground off. */
const canGrind = (job: CorrectionJob, moves: Moves): boolean =>
  passes(job, moves, (_, move) => move.sign() > 0 || isMuch(move)).length === 0;

const raisedAtBuilding = (job: CorrectionJob, moves: Moves) =>
  passes(job, moves, (v, move) => move.sign() > 0 && job.atWall.has(v));

/** The verdict. */
export function verdictOf(job: CorrectionJob, outcome: Outcome, stage: ConcreteStage): CorrectionVerdict {
  if (outcome.blocks.length > 0) return 'cannot be corrected';
  const { moves, after } = outcome;
  if (after.verdict !== 'drains') return 'still does not drain';
  if (moves.size === 0) return 'nothing to correct';
  if (raisedAtBuilding(job, moves).length > 0) return 'only by raising at the building';
  if (stage === 'bleeding') return 'wait for the bleed water';
  if (stage === 'set') return canGrind(job, moves) ? 'grind these spots' : 'too late to move';
  return 'correct these spots';
}

function heedStage(job: CorrectionJob, moves: Moves, stage: ConcreteStage, pad: Pad): void {
  if (stage === 'bull-floated') pad.caution(cautions.afterBullFloat);
  if (stage === 'bleeding') pad.caution(cautions.bleedWater);
  if (stage === 'set') {
    const all = passes(job, moves, () => true);
    const limit = QUARTER.as(job.survey.system);
    const caution = canGrind(job, moves) ? cautions.grinding : cautions.concreteSet;
    pad.caution(caution(limit, farthestOf(all)));
  }
}

function heedBuilding(job: CorrectionJob, moves: Moves, pad: Pad): void {
  const raised = raisedAtBuilding(job, moves);
  const lines = new Set(raised.map(({ v }) => job.atWall.get(v) as string));
  for (const line of lines) {
    const there = raised.filter(({ v }) => job.atWall.get(v) === line);
    pad.caution(cautions.buildingRaised(namesOf(there), line, farthestOf(there)));
  }
}

function heedThickness(job: CorrectionJob, moves: Moves, pad: Pad): void {
  const blind = passes(job, moves, (v, move) => move.sign() < 0 && isMuch(move) && !job.thickness.has(v));
  const limit = QUARTER.as(job.survey.system);
  if (blind.length > 0) pad.caution(cautions.thicknessUnknown(namesOf(blind), limit, farthestOf(blind)));
}

function heedThin(job: CorrectionJob, pad: Pad): void {
  const least = job.leastThickness;
  if (!least) return;
  const thin = [...job.thickness].flatMap(([v, t]) =>
    t.lessThan(least) ? [{ name: job.survey.name(v), t }] : [],
  );
  if (thin.length === 0) return;
  const worst = thin.map(({ t }) => t).reduce((a, b) => (b.lessThan(a) ? b : a));
  pad.caution(cautions.thinAlready(namesOf(thin), least, worst));
}

/** The edge at a walk or a drive is where a lip would be left. */
function heedEdges(job: CorrectionJob, moves: Moves, pad: Pad): void {
  const { lines } = job.site;
  const near = NEAR().toNumber('m');
  piecesOf(lines).forEach((piece, i, all) => {
    const line = lines[piece.line];
    if (!line || (line.kind !== 'walk' && line.kind !== 'driveway')) return;
    if (all.findIndex((other) => other.line === piece.line) !== i) return;
    const pieces = all.filter((other) => other.line === piece.line);
    const moved = passes(job, moves, (v, move) => {
      const [x, y] = [job.survey.x[v] as number, job.survey.y[v] as number];
      return isMuch(move) && pieces.some((p) => distanceTo(p, x, y) <= near);
    });
    if (moved.length > 0) pad.caution(cautions.edgeMoved(namesOf(moved), line.name, farthestOf(moved)));
  });
}

/** Where a surface still does not drain. */
function faultsOf({ facetList, ponds, reaches }: SurfaceDrainageFigures): string[] {
  const facets = facetList
    .filter(({ verdict }) => verdict !== 'drains' && verdict !== 'too steep')
    .map(({ spots, verdict }) => `${spots.join(', ')} ${verdict === 'too flat' ? 'too flat' : 'runs back'}`);
  const wet = ponds.map(({ lowest }) => `water stands at ${lowest}`);
  const walls = reaches.map(({ line }) => `water reaches ${line}`);
  return [...walls, ...wet, ...facets].slice(0, WHERE);
}

function heedSills(sills: readonly { readonly clearance: Length }[], system: System, pad: Pad): void {
  const low = sills.flatMap(({ clearance }) => (SILL_CLEARANCE.undercutBy(clearance) ? [clearance] : []));
  const least = low[0] && low.reduce((a, b) => (b.lessThan(a) ? b : a));
  if (least) pad.caution(ownCautions.lowThreshold(SILL_CLEARANCE.as(system), least));
}

/** Say what is to be heeded. */
export function heed(
  job: CorrectionJob,
  outcome: Outcome,
  stage: ConcreteStage,
  sills: readonly { readonly clearance: Length }[],
  pad: Pad,
): void {
  const { moves, blocks, after } = outcome;
  if (blocks.length > 0) pad.caution(cautions.blocked(blocks));
  else if (after.verdict !== 'drains') pad.caution(cautions.stillNotDrained(after.verdict, faultsOf(after)));
  heedSills(sills, job.survey.system, pad);
  heedThin(job, pad);
  if (moves.size === 0) return;
  heedBuilding(job, moves, pad);
  heedStage(job, moves, stage, pad);
  if (stage === 'set') return;
  heedThickness(job, moves, pad);
  heedEdges(job, moves, pad);
  pad.caution(shared.alkali);
}

/** One step of the work. */
export interface CorrectionStepFigure {
  /** What is done. */
  readonly do: 'set the forms' | 'strike off' | 'fill' | 'grind' | 'straightedge and check again';
  /** At which spots, the farthest move first. */
  readonly spots: readonly string[];
}

/** The moves in the order of doing: what comes off before what goes on, the farthest first. */
export function inOrder(job: CorrectionJob, moves: Moves): readonly number[] {
  return [...moves]
    .sort(
      ([a, p], [b, q]) =>
        Number(q.isNegative()) - Number(p.isNegative()) ||
        q.abs().comparedTo(p.abs()) ||
        (job.survey.name(a) < job.survey.name(b) ? -1 : 1),
    )
    .map(([v]) => v);
}

/** The steps of the work; none where the verdict is not to do it. */
export function sequenceOf(
  job: CorrectionJob,
  moves: Moves,
  atForms: ReadonlySet<number>,
  verdict: CorrectionVerdict,
): CorrectionStepFigure[] {
  const order = inOrder(job, moves);
  const named = (list: readonly number[]): string[] => list.map((v) => job.survey.name(v));
  const again: CorrectionStepFigure = { do: 'straightedge and check again', spots: named(order) };
  if (verdict === 'grind these spots') return [{ do: 'grind', spots: named(order) }, again];
  if (verdict !== 'correct these spots') return [];
  const down = (v: number): boolean => moves.get(v)?.isNegative() === true;
  const steps: CorrectionStepFigure[] = [
    { do: 'set the forms', spots: named(order.filter((v) => atForms.has(v) && !job.atWall.has(v))) },
    { do: 'strike off', spots: named(order.filter(down)) },
    { do: 'fill', spots: named(order.filter((v) => !down(v))) },
    again,
  ];
  return steps.filter(({ spots }) => spots.length > 0);
}
