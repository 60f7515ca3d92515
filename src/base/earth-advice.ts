/** What to watch out for in an excavation and in its fill. */

import { constant, ratio } from '../quantity/make';
import { paired } from '../quantity/paired';
import type { Pad } from '../reckoning/pad';
import * as cautions from './cautions';
import type { Cut, DeepCut, Parsed } from './cut';
import type { Compared } from './cut-sections';
import { END_AREA_TEXT } from './sources';

const EXIT_FROM = /*#__PURE__*/ paired('length', '4 ft', '1.2 m');
/** A round hole that a person has room in is about 2 ft (0.6 m) across; one with less area has that room nowhere. */
const ROOM = /*#__PURE__*/ paired('area', '3.1 ft2', '0.28 m2');
const PROTECT_FROM = /*#__PURE__*/ paired('length', '5 ft', '1.5 m');
const ENGINEER_ABOVE = /*#__PURE__*/ paired('length', '20 ft', '6 m');
const EARTH_FILL = /*#__PURE__*/ paired('length', '8 in', '200 mm');
const GRANULAR_FILL = /*#__PURE__*/ paired('length', '24 in', '600 mm');
const NOTICEABLE = constant(() => ratio('2%'));
/** Steeper than this no slope is protection; this flat it is in any soil but rock that slides. */
const STEEPEST = constant(() => ratio('0.75:1'));
const FLAT_ENOUGH = constant(() => ratio('1.5:1'));

const deepestOf = (cuts: readonly DeepCut[]): DeepCut | undefined => {
  const [first, ...rest] = cuts;
  return first && rest.reduce((most, cut) => (cut.depth.greaterThan(most.depth) ? cut : most), first);
};

/** Cuts from about 5 ft on whose sides are no protection, or are one in some soils only; none of these is wet. */
function heedSides(cuts: readonly DeepCut[], wet: boolean, pad: Pad): void {
  const deep = cuts.filter(({ depth }) => PROTECT_FROM.reachedBy(depth));
  const least = wet ? FLAT_ENOUGH() : STEEPEST();
  const steep = deepestOf(deep.filter(({ sideSlope }) => !sideSlope || sideSlope.lessThan(least)));
  if (steep) {
    const limit = PROTECT_FROM.reachedBy(steep.depth);
    if (limit) pad.caution(cautions.trenchDepth(limit, steep.depth));
    return;
  }
  const slope = deep
    .flatMap(({ sideSlope }) => (sideSlope ? [sideSlope] : []))
    .reduce((flat, s) => (s.lessThan(flat) ? s : flat), FLAT_ENOUGH());
  if (slope.lessThan(FLAT_ENOUGH())) pad.caution(cautions.slopeByClass(FLAT_ENOUGH(), slope));
}

/** Who is in a cut must get out; into a narrow hole nobody goes. Where sides slope, the top tells. */
const hasRoom = ({ top }: Cut): boolean => !top || ROOM.undercutBy(top) === undefined;

function heedDepth(cut: Cut, wet: boolean, pad: Pad): void {
  const { cuts, depthUnknown } = cut;
  const deepest = deepestOf(cuts)?.depth;
  const exit = deepest && hasRoom(cut) && EXIT_FROM.reachedBy(deepest);
  if (deepest && exit) pad.caution(cautions.trenchExit(exit, deepest));
  heedSides(cuts, wet, pad);
  const engineer = deepest && ENGINEER_ABOVE.exceededBy(deepest);
  if (engineer) pad.caution(cautions.engineeredExcavation(engineer, deepest));
  if (depthUnknown) pad.caution(cautions.depthUnknown());
}

function heedRules(prismoids: Compared | undefined, runOuts: Compared | undefined, pad: Pad): void {
  if (prismoids && prismoids.used.sign() > 0) {
    const share = prismoids.other.minus(prismoids.used).abs().over(prismoids.used);
    if (share.greaterThan(NOTICEABLE())) {
      pad.caution(cautions.endAreasDiffer(prismoids.stretches, NOTICEABLE(), share.in('%')));
    }
  }
  if (!runOuts) return;
  pad.assume({
    name: 'runOut',
    value: 'wedge',
    because: 'a cut or a fill that runs out is taken to keep its width, so that end areas are right for it',
    override: 'Give runOut: "pyramid", or the area halfway in middleArea',
    source: END_AREA_TEXT,
  });
  pad.caution(cautions.runsOut(runOuts.stretches, runOuts.other, runOuts.used));
}

function heedFill({ fill, highest, volume }: Cut, shrinks: boolean, pad: Pad): void {
  if (!fill || fill.sign() === 0) return;
  if (volume.sign() > 0 && !shrinks) pad.caution(cautions.fillNeedsShrink);
  const limit = highest && (GRANULAR_FILL.exceededBy(highest) ?? EARTH_FILL.exceededBy(highest));
  if (limit) pad.caution(cautions.deepFill(limit, highest));
  pad.caution(cautions.fillInLifts);
}

export function heed(cut: Cut, { shrink, water }: Parsed, pad: Pad): void {
  const wet = water === true && cut.volume.sign() > 0;
  heedDepth(cut, wet, pad);
  if (wet) pad.caution(cautions.waterInCut);
  heedRules(cut.prismoids, cut.runOuts, pad);
  heedFill(cut, shrink !== undefined, pad);
  if (cut.volume.sign() === 0) return;
  pad.caution(cautions.buriedUtilities);
  pad.caution(cautions.spoilAtEdge());
}
