/**
 * Does water run away from the building over a whole surface?
 *
 * Each facet between three spots is a plane; its fall along x and y follows from the three by
 * Cramer's rule, and its slope is the hypotenuse of both. Where any of it lies within `zone` of a
 * building, the part of the fall that leads straight away from the nearest wall must reach the minimum;
 * beyond, the slope itself must reach `minimumBeyond`. A facet that falls back may do so where a
 * valley that falls, or a drain, lies between it and the building and none of its water gets past. Valleys must fall by
 * themselves, see `valleys.ts`. Ponds fill to the spot they spill over; their volume is
 * the sum over facets of the prisms under water, in closed form.
 *
 * Elevations, slopes, depths and volumes are exact. Which way water runs is searched in binary
 * numbers: a fall below 0.000 000 001 counts as none, and shares and paths carry that error.
 */

import type { Quantity } from '../quantity/quantity';
import { wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { say } from '../reckoning/words';
import { facetFigure, facetList, LISTED, sixFigures } from './facet-figures';
import { readSite } from './held';
import { judge } from './judged';
import { small } from './marks';
import { pondFigure, pondsFound, volumeSum } from './pond-figures';
import type { SurfaceDrainageFigures } from './surface-figures';
import { heed } from './surface-heed';
import type { ParsedSurface } from './surface-input';
import { backFigures, valleyFigure, worstValleys } from './valley-figures';
import { isFlat } from './valleys';
import { inflowFigures, longestPath, lowSpots, reachFigures, sillFigures } from './water-figures';

type Length = Quantity<'length'>;

function verdictOf(
  figures: Omit<SurfaceDrainageFigures, 'verdict'>,
  pondDepth: Length,
  shut: boolean,
): SurfaceDrainageFigures['verdict'] {
  const inflow = figures.inflows.some(({ reaches }) => reaches !== undefined);
  if (figures.reverse.sign() > 0 || figures.reaches.length > 0 || inflow) return 'runs to the building';
  if (shut || figures.ponds.some(({ depth }) => depth.greaterThan(pondDepth))) return 'ponding';
  return figures.short.sign() > 0 || figures.flatValleys.sign() > 0 ? 'too flat' : 'drains';
}

function work({ facetList: list, ponds, worstValley }: SurfaceDrainageFigures, pad: Pad): void {
  const worst = list[0];
  if (worst) {
    const { alongX: X, alongY: Y, slope: S } = worst;
    pad.step(say`slope of the facet ${{ spots: worst.spots }}`, 'S = hypot(X, Y)', { X, Y }, S);
  }
  if (worstValley) {
    const { from, to, fall: s, length: l } = worstValley;
    pad.step(
      say`fall along the valley from ${{ from }} to ${{ to }}`,
      'f = s × l',
      { s, l },
      small(s.times(l)),
    );
  }
  const pond = ponds[0];
  if (pond) {
    const { level: l, depth: d } = pond;
    pad.step(say`elevation of the low spot ${{ spot: pond.lowest }}`, 'z = l − d', { l, d }, l.minus(d));
  }
}

/** Check a surface. */
export function checkSurface(input: ParsedSurface, pad: Pad): SurfaceDrainageFigures {
  const { site, held } = readSite(input, pad);
  const { survey, terrain } = site;
  const judged = judge(site, held);
  const ponds = pondsFound(site);
  const listed = ponds.slice(0, LISTED).map((pond) => pondFigure(site, pond));
  const valleyList = worstValleys(site, judged.valleys)
    .slice(0, LISTED)
    .map((valley) => valleyFigure(site, valley, held));
  const back = backFigures(site, judged);
  const parts = {
    spots: wholeNumber(survey.count),
    facets: wholeNumber(terrain.tin.facets),
    required: held.minimum,
    requiredBeyond: held.beyond,
    steepest: facetFigure(site, judged.steepest, 'drains').slope,
    flattest: facetFigure(site, judged.flattest, 'drains').slope,
    reverse: wholeNumber(judged.reverse.length),
    short: wholeNumber(judged.short.length),
    facetList: facetList(site, judged),
    valleys: wholeNumber(judged.valleys.length),
    flatValleys: wholeNumber(judged.valleys.filter(isFlat).length),
    ...(valleyList[0] ? { worstValley: valleyList[0] } : {}),
    valleyList,
    areaBack: back.reduce((sum, { area }) => sum.plus(area), sixFigures(0, survey.system)),
    fallsBack: back,
    pondCount: wholeNumber(ponds.length),
    ponds: listed,
    pondVolume: volumeSum(listed, survey.system),
    lowSpots: lowSpots(site, ponds),
    longestPath: longestPath(site),
    reaches: judged.reach ? reachFigures(site, judged.reach) : [],
    sills: sillFigures(site, input.sills ?? [], pad),
    inflows: inflowFigures(site, input.inflows ?? []),
  };
  const figures: SurfaceDrainageFigures = {
    verdict: verdictOf(parts, held.pondDepth, site.sides.shut),
    ...parts,
  };
  work(figures, pad);
  heed(figures, site, judged, held, pad);
  return figures;
}
