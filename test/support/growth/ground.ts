/** The ground: digging and base. */
import { feet, type Growth, growth, inches, times } from './growth';
import { anyOutline, placed, straightSided } from './regions';
import { YARD } from './shapes';

const spots = (n: number): unknown[][] => {
  const side = Math.max(2, Math.ceil(Math.sqrt(n)));
  return times(side, (r) => times(side, (c) => feet(1 + ((r * 31 + c * 17) % 10) / 10)));
};

/** Levels that cross the grade in every square. */
const crossing = (n: number): unknown[][] => {
  const side = Math.max(2, Math.ceil(Math.sqrt(n)));
  return times(side, (r) =>
    times(side, (c) => feet(((r + c) % 2 ? 101 : 99) + ((r * 31 + c * 17) % 10) / 10)),
  );
};

const sections = (n: number): unknown[] =>
  times(n, (i) => ({
    by: 'trapezoid',
    at: feet(50 * i),
    width: '20 ft',
    depth: feet(1 + (i % 3)),
    sideSlope: '1.5:1',
  }));

const stone = { depth: '6 in', compactedDensity: '135 pcf', looseDensity: '100 pcf' };

export const ground: readonly Growth[] = [
  ...anyOutline('excavation', ({ outline }) => ({ kind: 'pit', outline, depth: '1 ft' })),
  ...straightSided(
    'margin and slopes',
    placed('excavation', ({ outline }) => ({
      kind: 'pit',
      outline,
      depth: '1 ft',
      margin: '2 in',
      sideSlope: '1:1',
    })),
  ),
  ...straightSided(
    'fill',
    placed('excavation', ({ outline }) => ({
      kind: 'fill',
      outline,
      depth: '1 ft',
      margin: '2 ft',
      sideSlope: '1:1',
    })),
  ),
  growth('excavation', 'spots of a grid', (n) => ({
    kind: 'grid',
    across: '10 ft',
    along: '10 ft',
    depths: spots(n),
  })),
  growth('excavation', 'spots of a grid that cross the grade', (n) => ({
    kind: 'grid',
    across: '10 ft',
    along: '10 ft',
    levels: crossing(n),
    grade: '100 ft',
  })),
  growth('excavation', 'squares left out', (n) => {
    const side = Math.ceil(Math.sqrt(n)) + 2;
    return {
      kind: 'grid',
      across: '10 ft',
      along: '10 ft',
      depths: times(side, () => times(side, () => '2 ft')),
      leaveOut: times(n, (i) => ({ row: 1 + (i % (side - 2)), column: 1 + Math.floor(i / (side - 2)) })),
    };
  }),
  growth('excavation', 'sections', (n) => ({ kind: 'sections', sections: sections(n) })),
  growth(
    'excavation',
    'trucks',
    (n) => ({
      kind: 'pit',
      area: `${10 * n} yd2`,
      depth: '3 ft',
      swell: '25%',
      haul: { truckVolume: '10 yd3' },
    }),
    { to: 1e12 },
  ),
  ...anyOutline('base-tonnage', ({ outline }) => ({ outline, ...stone })),
  ...anyOutline('vapor-retarder', ({ outline }) => ({ outline, rollWidth: '14 ft', rollLength: '100 ft' })),
  ...straightSided(
    'margin',
    placed('base-tonnage', ({ outline }) => ({ outline, ...stone, margin: '1 in' })),
  ),
  ...straightSided(
    'margin and trim',
    placed('base-tonnage', ({ outline }) => ({ outline, ...stone, margin: '1 ft', edgeTrim: '1 ft' })),
  ),
  growth('base-tonnage', 'trucks', (n) => ({ area: `${100 * n} ft2`, ...stone, truckPayload: '1 ton' }), {
    to: 1e12,
  }),
  growth(
    'base-tonnage',
    'lifts',
    (n) => ({ area: '100 ft2', ...stone, depth: inches(n), looseLift: '1 in' }),
    { to: 1e9, anyRefusal: true },
  ),
  growth(
    'base-tonnage',
    'rolls of fabric',
    (n) => ({
      outline: YARD,
      ...stone,
      geotextile: { rollWidth: '10 ft', rollLength: `${(300 / n).toFixed(6)} ft`, lap: '0.00001 in' },
    }),
    { to: 1e9, anyRefusal: true },
  ),
];
