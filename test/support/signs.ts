/** Which values of an input may be below zero, and which nothing at all; what is not named must be more. */

import { mapLeaves, measured } from './relations/inputs';

interface Signs {
  /** Levels, readings of a rod, places, and slopes that may fall either way. */
  readonly below: readonly string[];
  /** Allowances, covers, laps and parts that a thing need not have. */
  readonly nothing: readonly string[];
}

const signs = (below: string, nothing: string): Signs => ({
  below: below.split(' ').filter((name) => name !== ''),
  nothing: nothing.split(' ').filter((name) => name !== ''),
});

/** Amounts alone, each more than nothing. */
const ALL_MORE = signs('', '');

const LISTED: Readonly<Record<string, Signs>> = {
  'slab-volume': signs(
    'thickness.alongX openings.*.turned',
    'thickness.from thickness.to outline.points.*.rise outline.shared',
  ),
  'probed-volume': signs('', 'grid.depths.*.* probes.*.x probes.*.y probes.*.depth'),
  'thickness-check': signs('', 'meanUnder sampleUnder countsOver'),
  'step-volume': signs('', 'innerRadius wash nosing founded wingWalls.*.frontHeight'),
  'step-layout': signs('', 'door.threshold'),
  'footing-volume': signs('', 'footings.*.founded frostDepth'),
  'wall-volume': signs('', 'walls.*.webShare walls.*.openings.*.sill walls.*.endHeight'),
  'pier-volume': signs('', 'frostDepth piers.*.toe piers.*.topDiameter piers.*.topLength'),
  'curb-volume': signs('', 'drops.*.length drops.*.wing'),
  excavation: signs(
    // Below zero is fill; a rise below zero is hollow.
    'sections.*.depth levels.*.* depths.*.* outline.points.*.rise',
    'margin haul.stays sections.*.sideSlope shrink.share swell sections.*.area sideSlope sections.*.middleArea sections.*.fill',
  ),
  'base-tonnage': signs('outline.points.*.rise', 'margin edgeTrim moisture allowance geotextile.lap voids'),
  'vapor-retarder': signs('', 'lap turnUp'),
  'square-check': signs('', 'tolerance'),
  slope: signs('', 'slope angle rise'),
  'drainage-check': signs(
    'atBuilding away sills.*.elevation spots.*.elevation heightOfInstrument spots.*.rod spots.*.x spots.*.y',
    'minimum minimumValley',
  ),
  'form-grades': signs(
    'surface.drain.elevation stakes.*.x stakes.*.y surface.at.elevation surface.alongY falls.*.to.y falls.*.minimum fixed.*.elevation stakes.*.ground stakes.*.top surface.line.*.elevation surface.corners.*.elevation',
    'surface.slope surface.left surface.right',
  ),
  'grade-correction': signs('spots.*.elevation sills.*.elevation falls.*.minimum', 'minimum sillClearance'),
  'level-notes': signs(
    'heightOfInstrument rows.*.backsight rows.*.foresight closesOn from.elevation to.elevation rows.*.at atBenchMark rows.*.height',
    'rows.*.up rows.*.down allowed',
  ),
  'cross-slope': signs('highSide lowSide', 'across along'),
  straightedge: signs('', 'allowed'),
  'joint-spacing': signs('', 'slump'),
  'joint-layout': signs('outline.points.*.x', 'openings.*.points.*.x isolation.*.to.x'),
  'saw-window': signs('', 'placedAt ready.within'),
  'relative-stiffness': signs('', 'poisson'),
  'rebar-layout': signs('', 'cover'),
  'mesh-layout': signs('', 'sideLap edge endLap'),
  'steel-placement': signs('', 'coverTop'),
  'evaporation-rate': signs('', 'humidity wind'),
  'fresh-concrete-temperature': signs(
    'change aggregates.*.temperature cement.temperature',
    'aggregates.*.moisture water.mass',
  ),
  maturity: signs('datum', 'atPlacing history.*.temperature reference'),
  'placing-limits': signs('forecast.low concreteTemperature forecast.placing forecast.before', ''),
  'strength-gain': signs('', 'curedAt'),
  'concrete-order': signs('', 'allowance elements.*.allowance pumpLine.hopper'),
  runoff: ALL_MORE,
  'bar-cutting': ALL_MORE,
  'bar-size': ALL_MORE,
  'dowel-layout': ALL_MORE,
  'fiber-dosage': ALL_MORE,
  'lap-length': ALL_MORE,
  'mesh-style': ALL_MORE,
  'steel-minimum': ALL_MORE,
  'bag-count': ALL_MORE,
  'balance-load': signs('', 'inTruck onTheWay areaWithin probeWithin yieldWithin'),
  'job-takeoff': signs(
    'days.*.limits.forecast.low elements.*.excavation.depths.*.* elements.*.turned',
    'days.*.humidity days.*.wind elements.*.allowance elements.*.backfill.gap.looser elements.*.bars.cover elements.*.excavation.swell prices.profit.markup shared.allowance shared.bars.cover shared.base.margin shared.excavation.margin shared.excavation.swell trucks.travelTime',
  ),
  'truck-plan': signs('airTemperature', 'travelTime washOutTime returnTime'),
};

/** What the check vectors of a calculation give below zero, or nothing of. */
function shownIn(inputs: readonly unknown[]): Signs {
  const shown: Signs & Record<keyof Signs, string[]> = { below: [], nothing: [] };
  for (const input of inputs) {
    mapLeaves(input, (leaf, key, path) => {
      const sign = measured(leaf, key)?.sign() ?? 1;
      const name = path.map((part) => (typeof part === 'number' ? '*' : part)).join('.');
      if (sign < 1) shown[sign < 0 ? 'below' : 'nothing'].push(name);
      return leaf;
    });
  }
  return shown;
}

/** Which values of a calculation may be below zero or nothing: as listed here, else as its own vectors show. */
export const signsOf = (id: string, inputs: readonly unknown[]): Signs => LISTED[id] ?? shownIn(inputs);

/** True where a calculation is listed here, and has what is listed and no more. */
export const isListed = (id: string): boolean => id in LISTED;
