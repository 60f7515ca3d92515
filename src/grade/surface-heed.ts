/** What to watch out for on a surface that was checked. */
import { constant, slope } from '../quantity/make';
import { paired } from '../quantity/paired';
import type { Pad } from '../reckoning/pad';
import * as cautions from './cautions';
import { facetFigure } from './facet-figures';
import type { Held } from './held';
import type { Judged } from './judged';
import { isAccessible, isGround } from './limits';
import { small } from './marks';
import { heedOnFoot } from './on-foot';
import { GIVEN, GRADING_STANDARDS } from './sources';
import { metersAs } from './spots';
import type { SurfaceDrainageFigures, ValleyFigure } from './surface-figures';
import type { Site } from './terrain';
import { found } from './water-figures';

/** What gutters are better given than the least. */
const GOOD_GUTTER = constant(() => slope('1%'));

const RAMP_RISE = /*#__PURE__*/ paired('length', '30 in', '760 mm');

const HANDRAIL_RISE = /*#__PURE__*/ paired('length', '6 in', '150 mm');

function heedWater(figures: SurfaceDrainageFigures, held: Held, pad: Pad): void {
  for (const { line, from } of figures.reaches) {
    pad.caution(cautions.waterReaches(line, from[0] ?? 'the surface'));
  }
  for (const { reaches, name } of figures.inflows) {
    if (reaches !== undefined) pad.caution(cautions.waterReaches(reaches, name));
  }
  const pond = figures.ponds.find(({ depth }) => depth.greaterThan(held.pondDepth));
  if (pond) pad.caution(cautions.ponding(held.pondDepth, pond.depth, held.sources.pondDepth));
}

const whereOf = ({ from, to, curb }: ValleyFigure): string =>
  `${curb === undefined ? '' : `along ${curb} `}from ${from} to ${to}`;

/** A valley too flat; or one that falls enough, but less than gutters are better given. */
function heedValleys({ verdict, valleyList: list }: SurfaceDrainageFigures, held: Held, pad: Pad): void {
  const worst = list[0];
  if (!worst) return;
  const bySwale = worst.required === held.swale && held.swale !== held.valley;
  const source = bySwale ? held.sources.swale : held.sources.valley;
  if (worst.verdict === 'too flat') {
    pad.caution(cautions.flatValley(whereOf(worst), worst.required, worst.fall, source));
    return;
  }
  const flattest = list.reduce((a, b) => (b.fall.lessThan(a.fall) ? b : a));
  const good = GOOD_GUTTER();
  // Where something graver is wrong, a gutter that might be better is not worth reading.
  if (verdict !== 'drains' || source === GIVEN || isGround(held.use)) return;
  if (!flattest.fall.lessThan(good)) return;
  pad.caution(cautions.nearlyLevelValley(whereOf(flattest), good, flattest.fall, GRADING_STANDARDS));
}

const byLack = (list: readonly number[], lack: Float64Array): number | undefined =>
  list.reduce<number | undefined>(
    (worst, t) => (worst === undefined || (lack[t] as number) > (lack[worst] as number) ? t : worst),
    undefined,
  );

function heedSlopes(site: Site, judged: Judged, held: Held, pad: Pad): void {
  const reverse = byLack(judged.reverse, judged.lack);
  if (reverse !== undefined) {
    const { away } = facetFigure(site, reverse, 'runs to the building');
    if (away) pad.caution(cautions.runsToBuilding(held.minimum, away, held.sources.minimum));
  }
  const short = byLack(judged.short, judged.lack);
  if (short !== undefined) {
    const { away, slope: whole } = facetFigure(site, short, 'too flat');
    const near = judged.zoned[short] === 1;
    const limit = near || site.walls.length === 0 ? 'minimum' : 'beyond';
    pad.caution(cautions.tooFlat(held[limit], near && away ? away : whole, held.sources[limit]));
  }
  const [steep] = judged.steep;
  if (steep !== undefined && held.maximum) {
    const { slope: whole } = facetFigure(site, judged.steepest, 'too steep');
    pad.caution(cautions.tooSteep(held.maximum, whole, held.sources.maximum, isAccessible(held.use)));
  }
  // Where the plans say how steep it may be, they have said it.
  if (held.sources.maximum !== GIVEN)
    heedOnFoot(facetFigure(site, judged.steepest, 'drains').slope, held.use, pad);
}

/** What falls back and is not met by a stop already: caught, standing on the way or running off. */
function heedBack(figures: SurfaceDrainageFigures, pad: Pad): void {
  if (figures.reverse.sign() > 0 || figures.reaches.length > 0) return;
  for (const { line, area, standing, caught } of figures.fallsBack) {
    const end = caught.sign() > 0 ? 'caught' : 'leaves';
    pad.caution(cautions.fallsBack(area, line, standing.sign() > 0 ? 'stands' : end));
  }
}

/** A ramp is one run unless its landings are checked apart. */
function heedRamp(site: Site, held: Held, pad: Pad): void {
  if (held.use !== 'accessible-ramp') return;
  const { tin } = site.terrain;
  const heights = [...new Set(tin.corner)].map((v) => tin.z[v] as number);
  const lowest = heights.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
  const highest = heights.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
  const rise = small(metersAs(found(highest - lowest), site.survey.system));
  const long = RAMP_RISE.exceededBy(rise);
  if (long) pad.caution(cautions.longRamp(long, rise, 'stop'));
  const railed = HANDRAIL_RISE.exceededBy(rise);
  if (railed) pad.caution(cautions.rampHandrails(railed, rise));
}

export function heed(
  figures: SurfaceDrainageFigures,
  site: Site,
  judged: Judged,
  held: Held,
  pad: Pad,
): void {
  heedSlopes(site, judged, held, pad);
  heedValleys(figures, held, pad);
  heedBack(figures, pad);
  heedRamp(site, held, pad);
  heedWater(figures, held, pad);
  if (site.walls.length === 0) pad.caution(cautions.noBuildingLine);
  for (const { name } of site.missed) pad.caution(cautions.lineOffSurface(name));
  if (site.sides.shut) pad.caution(cautions.noOutlet);
}
