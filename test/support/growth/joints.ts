/** Joints, and the steel across and between them. */
import { feet, type Growth, growth, inches, times } from './growth';
import { placed, withOpenings } from './regions';
import { OPENINGS, YARD } from './shapes';

const plan = { thickness: '5 in', spacing: '12 ft' };
const yard = { outline: YARD, ...plan };

/** Places along the long sides of the yard. */
const along = (n: number, i: number): number => (120 * (i + 0.5)) / n;
const at = (x: number, y: number): { x: string; y: string } => ({ x: feet(x), y: feet(y) });

const layouts = (of: string): readonly Growth[] => [
  ...placed(of, ({ outline }) => ({ outline, ...plan })),
  ...withOpenings(of, (part) => ({ ...part, ...plan })),
  growth(of, 'panels by spacing', (n) => ({
    outline: { shape: 'rectangle', length: '1000 ft', width: '500 ft' },
    thickness: '5 in',
    spacing: feet(Math.sqrt(500_000 / n)),
  })),
  growth(of, 'panels of a strip', (n) => ({
    outline: { shape: 'rectangle', length: feet(5 * n), width: '5 ft' },
    thickness: '5 in',
    spacing: '5 ft',
  })),
  growth(of, 'panels of an L', (n) => {
    const side = feet(10 * Math.sqrt(n));
    const notch = feet(5 * Math.sqrt(n));
    return {
      outline: { shape: 'L', length: side, width: side, notchLength: notch, notchWidth: notch },
      thickness: '5 in',
      spacing: '10 ft',
    };
  }),
  growth(of, 'panels of a ring', (n) => ({
    outline: { shape: 'ring', outerDiameter: feet(3 * n + 10), innerDiameter: feet(3 * n) },
    thickness: '5 in',
    spacing: '10 ft',
  })),
  growth(of, 'panels of a disc', (n) => ({
    outline: { shape: 'circle', diameter: feet(10 * Math.sqrt(n)) },
    thickness: '5 in',
    spacing: '10 ft',
  })),
  growth(of, 'panels of a sector', (n) => ({
    outline: { shape: 'sector', radius: feet(10 * Math.sqrt(n)), angle: '120 deg' },
    thickness: '5 in',
    spacing: '10 ft',
  })),
  growth(of, 'fixed joints', (n) => ({
    ...plan,
    outline: { shape: 'rectangle', length: feet(6 * (n + 1)), width: '12 ft' },
    fixed: times(n, (i) => ({ type: 'contraction', from: at(6 * (i + 1), 0), to: at(6 * (i + 1), 12) })),
  })),
  growth(of, 'joints carried on', (n) => ({ ...yard, continued: times(n, (i) => at(along(n, i), 0)) })),
  growth(of, 'isolated lengths', (n) => ({
    ...yard,
    isolation: times(n, (i) => ({
      against: 'wall',
      from: at((120 * i) / n, 0),
      to: at((120 * i) / n + 60 / n, 0),
    })),
  })),
  growth(of, 'columns', (n) => ({
    ...yard,
    openings: OPENINGS['square openings']?.(n),
    columns: times(n, (i) => i + 1),
  })),
];

export const joints: readonly Growth[] = [
  ...layouts('joint-layout'),
  growth(
    'joint-layout',
    'passes of the saw',
    (n) => ({ ...yard, depth: '1.25 in', depthPerPass: inches(1.25 / n) }),
    { to: 1e9, anyRefusal: true },
  ),
  growth(
    'joint-layout',
    'dowels',
    (n) => ({
      ...yard,
      fixed: [{ type: 'construction', from: at(60, 0), to: at(60, 60) }],
      dowelSpacing: feet(60 / n),
    }),
    { to: 1e9, anyRefusal: true },
  ),
  ...layouts('drawing/joint-plan'),
  growth(
    'saw-window',
    'hours of waiting',
    (n) => ({
      saw: 'conventional',
      placedAt: '8:00',
      workFrom: '7:00',
      workTo: '18:00',
      ready: { by: 'measured-set', after: `${n} h`, within: '1 h' },
    }),
    { to: 1e12, anyRefusal: true },
  ),
  growth(
    'saw-window',
    'hours of cutting',
    (n) => ({
      saw: 'conventional',
      weather: 'mild',
      placedAt: '8:00',
      workFrom: '7:00',
      workTo: '18:00',
      cuttingTime: `${n} h`,
    }),
    { to: 1e12, anyRefusal: true },
  ),
  growth(
    'saw-window',
    'feet of sawing',
    (n) => ({
      saw: 'conventional',
      weather: 'mild',
      placedAt: '8:00',
      workFrom: '7:00',
      workTo: '18:00',
      sawLength: feet(100 * n),
      sawRate: { length: '1 ft', in: '1 h' },
    }),
    { to: 1e12, anyRefusal: true },
  ),
  growth('dowel-layout', 'dowels', (n) => ({ thickness: '8 in', joint: feet(n), placing: 'drilled' }), {
    to: 1e12,
    anyRefusal: true,
  }),
  growth(
    'dowel-layout',
    'baskets',
    (n) => ({ thickness: '8 in', joint: feet(12 * n), placing: 'basket', basketLength: '12 ft' }),
    { to: 1e12, anyRefusal: true },
  ),
];
