/** Ponds in figures: prisms under water facet by facet, in closed form. */

import { Decimal } from '../quantity/decimal';
import { type Quantity, quantityOf } from '../quantity/quantity';
import type { System } from '../quantity/units';
import { areaAs, cornersOf, doubleAreaOf } from './facet-figures';
import type { PlacedLine } from './lines';
import { small } from './marks';
import { type FoundPond, type ShorePoint, shoreOf } from './ponds';
import { type ExactSpot, metersAs } from './spots';
import type { PlanPointFigure, PondFigure } from './surface-figures';
import { OUTLINE_LIMIT } from './surface-input';
import type { Site } from './terrain';

/** Ponds shallower than this, in meters, come from binary rounding. */
const NO_DEPTH = 1e-7;

/** Water over one facet: its plan area and volume, in closed form. */
export function wetPart(
  spots: readonly [ExactSpot, ExactSpot, ExactSpot],
  level: Decimal,
): { readonly area: Decimal; readonly volume: Decimal } {
  const whole = doubleAreaOf(spots).div(2);
  const depths = spots.map(({ z }) => level.minus(z)).sort((a, b) => b.comparedTo(a)) as [
    Decimal,
    Decimal,
    Decimal,
  ];
  const [deep, mid, shallow] = depths;
  if (!shallow.isNegative()) return { area: whole, volume: whole.times(deep.plus(mid).plus(shallow)).div(3) };
  if (deep.lessThanOrEqualTo(0)) return { area: new Decimal(0), volume: new Decimal(0) };
  if (mid.lessThanOrEqualTo(0)) {
    // One spot under water: the wet corner is a smaller pyramid.
    const share = deep.times(deep).div(deep.minus(mid).times(deep.minus(shallow)));
    return { area: whole.times(share), volume: whole.times(share).times(deep).div(3) };
  }
  // One spot above water: all of it, less the dry corner.
  const share = shallow.times(shallow).div(deep.minus(shallow).times(mid.minus(shallow)));
  const sum = deep.plus(mid).plus(shallow).minus(share.times(shallow));
  return { area: whole.times(new Decimal(1).minus(share)), volume: whole.times(sum).div(3) };
}

const volumeAs = (value: Decimal, system: System): Quantity<'volume'> => {
  const volume = quantityOf('volume', value, system);
  return system === 'metric' ? volume : volume.in('ft3');
};

function shorePoint(site: Site, point: ShorePoint, level: Decimal): PlanPointFigure {
  const { survey } = site;
  const a = survey.exact(point[0]);
  if (point.length === 1) return { x: metersAs(a.x, survey.system), y: metersAs(a.y, survey.system) };
  const b = survey.exact(point[1]);
  const share = (from: Decimal, to: Decimal): Decimal =>
    from.plus(to.minus(from).times(a.z.minus(level)).div(a.z.minus(b.z)));
  return {
    x: metersAs(share(a.x, b.x), survey.system),
    y: metersAs(share(a.y, b.y), survey.system),
  };
}

export function pondFigure(site: Site, pond: FoundPond): PondFigure {
  const { survey, terrain, sides, lines } = site;
  const level = survey.exact(pond.spill).z;
  let [area, volume] = [new Decimal(0), new Decimal(0)];
  for (const t of pond.facets) {
    const spots = cornersOf(site, t).map(survey.exact) as [ExactSpot, ExactSpot, ExactSpot];
    const wet = wetPart(spots, level);
    area = area.plus(wet.area);
    volume = volume.plus(wet.volume);
  }
  const rings = shoreOf(terrain.tin, pond, terrain.tin.z[pond.spill] as number);
  const against = new Set(
    pond.spots.flatMap((v) => ((sides.dry[v] as number) > 0 ? [(sides.dry[v] as number) - 1] : [])),
  );
  return {
    lowest: survey.name(pond.lowest),
    spillsOver: survey.name(pond.spill),
    level: metersAs(level, survey.system),
    depth: small(metersAs(level.minus(survey.exact(pond.lowest).z), survey.system)),
    volume: volumeAs(volume, survey.system),
    area: areaAs(area, survey.system),
    outline: rings.map((ring) => ring.slice(0, OUTLINE_LIMIT).map((p) => shorePoint(site, p, level))),
    against: [...against].map((line) => (lines[line] as PlacedLine).name),
  };
}

/** Ponds deeper than binary rounding, the largest first. */
export function pondsFound(site: Site): FoundPond[] {
  return site.terrain.ponds.ponds
    .filter(({ depth }) => depth > NO_DEPTH)
    .sort((a, b) => b.depth * b.facets.length - a.depth * a.facets.length);
}

export const volumeSum = (ponds: readonly PondFigure[], system: System): Quantity<'volume'> =>
  ponds.reduce((sum, { volume }) => sum.plus(volume), volumeAs(new Decimal(0), system));
