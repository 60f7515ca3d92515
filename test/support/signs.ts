/** Which values of an input may be below zero, and which nothing at all; what is not named must be more. */

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

export const SIGNS: Readonly<Record<string, Signs>> = {
  'slab-volume': signs(
    'thickness.alongX openings.*.turned',
    'thickness.from thickness.to outline.points.*.rise outline.shared',
  ),
  'probed-volume': signs('', 'grid.depths.*.* probes.*.x probes.*.y probes.*.depth'),
  'step-volume': signs('', 'innerRadius wash nosing founded wingWalls.*.frontHeight'),
  'step-layout': signs('', 'door.threshold'),
  'footing-volume': signs('', 'footings.*.founded frostDepth'),
  'wall-volume': signs('', 'walls.*.webShare walls.*.openings.*.sill walls.*.endHeight'),
  'pier-volume': signs('', 'frostDepth piers.*.toe piers.*.topDiameter piers.*.topLength'),
  'curb-volume': signs('', 'drops.*.length drops.*.wing'),
  excavation: signs(
    // Below zero is fill.
    'sections.*.depth levels.*.* depths.*.*',
    'margin sections.*.sideSlope shrink.share swell sections.*.area sideSlope sections.*.middleArea sections.*.fill',
  ),
  'base-tonnage': signs('', 'margin edgeTrim moisture allowance geotextile.lap voids'),
  'square-check': signs('', 'tolerance'),
  slope: signs('', 'slope angle rise'),
  'drainage-check': signs(
    'atBuilding away sills.*.elevation spots.*.elevation heightOfInstrument spots.*.rod',
    'minimum minimumValley',
  ),
  'form-grades': signs(
    'surface.drain.elevation stakes.*.x stakes.*.y surface.at.elevation surface.alongY falls.*.to.y falls.*.minimum fixed.*.elevation stakes.*.ground stakes.*.top surface.line.*.elevation surface.corners.*.elevation',
    'surface.slope surface.left surface.right',
  ),
  'grade-correction': signs('spots.*.elevation sills.*.elevation falls.*.minimum', 'minimum sillClearance'),
  'level-notes': signs(
    'heightOfInstrument rows.*.backsight rows.*.foresight closesOn from.elevation to.elevation rows.*.at atBenchMark rows.*.height',
    'rows.*.up rows.*.down',
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
  'concrete-order': signs('', 'allowance elements.*.allowance'),
  'truck-plan': signs('', 'travelTime washOutTime returnTime firstTruckAt'),
};
