/** Bars and mesh. */
import { feet, type Growth, growth, inches, times } from './growth';
import { placed, withOpenings } from './regions';
import { YARD } from './shapes';

const mats = [{ layer: 'bottom', bar: '#4', spacing: '18 in' }];
const sheets = { form: 'sheets', pieceLength: '10 ft', pieceWidth: '5 ft', style: '6x6-W1.4xW1.4' };
const square = (n: number): { shape: string; length: string; width: string } => ({
  shape: 'rectangle',
  length: feet(n),
  width: feet(n),
});

const mat = (of: string): readonly Growth[] => [
  ...placed(of, ({ outline }) => ({ outline, mats })),
  ...withOpenings(of, (part) => ({ ...part, mats })),
  growth(
    of,
    'bars by spacing',
    (n) => ({ outline: YARD, mats: [{ layer: 'bottom', bar: '#4', spacing: inches((180 * 12) / n) }] }),
    { anyRefusal: true },
  ),
  growth(of, 'bars by size', (n) => ({
    outline: square(n),
    mats: [{ layer: 'bottom', bar: '#4', spacing: '12 in' }],
  })),
  growth(of, 'bars turned by an angle', (n) => ({
    outline: square(n),
    mats: [{ layer: 'bottom', bar: '#4', spacing: '12 in', angle: '31 deg' }],
  })),
  growth(of, 'bars of two mats in an L', (n) => ({
    outline: {
      shape: 'L',
      length: feet(n),
      width: feet(n),
      notchLength: feet(n / 2),
      notchWidth: feet(n / 3),
    },
    mats: [
      { layer: 'bottom', bar: '#4', spacing: '12 in' },
      { layer: 'top', bar: '#4', spacing: '12 in' },
    ],
  })),
  growth(of, 'laps in a line', (n) => ({
    outline: { shape: 'rectangle', length: feet(8 * n), width: '4 ft' },
    mats,
    stockLength: '10 ft',
    lap: '2 ft',
  })),
  growth(
    of,
    'laps by stock',
    (n) => ({ outline: YARD, mats, stockLength: feet(1.2 + 120 / n), lap: '1 ft' }),
    { anyRefusal: true },
  ),
  growth(of, 'dowelled sides', (n) => ({
    outline: { shape: 'regular', sides: Math.max(3, n), side: '4 ft' },
    mats,
    dowels: times(n, (i) => ({ side: i + 1, bar: '#4', spacing: '12 in', length: '18 in' })),
  })),
  growth(of, 'dowels of a side', (n) => ({
    outline: square(n),
    mats: [{ layer: 'bottom', bar: '#4', lines: 2, linesAcross: 2 }],
    dowels: [{ side: 1, bar: '#4', spacing: '12 in', length: '18 in' }],
  })),
  growth(of, 'risers', (n) => ({ outline: YARD, mats, steps: { risers: n, width: '4 ft', bar: '#4' } }), {
    anyRefusal: true,
  }),
];

const strip = (n: number): string[] => times(n, () => '20 ft');

const rebar: readonly Growth[] = [
  ...mat('rebar-layout'),
  growth('rebar-layout', 'lengths of a strip', (n) => ({
    strip: strip(n),
    width: '2 ft',
    bar: '#4',
    lines: 3,
  })),
  growth(
    'rebar-layout',
    'lines of a strip',
    (n) => ({ strip: ['40 ft'], width: feet(n), bar: '#4', lines: n }),
    { anyRefusal: true },
  ),
  growth(
    'rebar-layout',
    'laps of a strip',
    (n) => ({ strip: [feet(8 * n)], width: '2 ft', bar: '#4', lines: 3, stockLength: '10 ft', lap: '2 ft' }),
    { anyRefusal: true },
  ),
  growth(
    'rebar-layout',
    'ties of a strip',
    (n) => ({
      strip: [feet(n)],
      width: '2 ft',
      depth: '2 ft',
      bar: '#4',
      lines: 3,
      ties: { bar: '#3', spacing: '12 in' },
      starters: { bar: '#4', spacing: '12 in', length: '3 ft' },
      across: { bar: '#4', spacing: '12 in' },
    }),
    { anyRefusal: true },
  ),
  growth('rebar-layout', 'bars of a rectangle', (n) => ({
    length: feet(n),
    width: feet(n),
    bar: '#4',
    spacing: '12 in',
  })),
  growth(
    'rebar-layout',
    'bars of a rectangle by spacing',
    (n) => ({ length: '120 ft', width: '60 ft', bar: '#4', spacing: inches(2160 / n) }),
    { anyRefusal: true },
  ),
  growth('rebar-layout', 'laps of a rectangle', (n) => ({
    length: feet(8 * n),
    width: '4 ft',
    bar: '#4',
    spacing: '12 in',
    stockLength: '10 ft',
    lap: '2 ft',
  })),
];

const mesh = (of: string): readonly Growth[] => [
  ...placed(of, ({ outline }) => ({ outline, ...sheets })),
  ...withOpenings(of, (part) => ({ ...part, ...sheets })),
  growth(of, 'sheets by size', (n) => ({ outline: square(6 * Math.sqrt(n)), ...sheets })),
  growth(
    of,
    'sheets by their own size',
    (n) => ({
      outline: YARD,
      ...sheets,
      pieceLength: feet(2 + 120 / Math.sqrt(n)),
      pieceWidth: feet(1 + 60 / Math.sqrt(n)),
    }),
    { anyRefusal: true, to: 4000 },
  ),
  growth(of, 'sheets turned by an angle', (n) => ({
    outline: square(6 * Math.sqrt(n)),
    ...sheets,
    angle: '31 deg',
  })),
  growth(of, 'rolls in a strip', (n) => ({
    outline: { shape: 'rectangle', length: feet(150 * n), width: '10 ft' },
    form: 'rolls',
    pieceLength: '150 ft',
    pieceWidth: '5 ft',
  })),
];

const cutting: readonly Growth[] = [
  growth('bar-cutting', 'lengths of pieces', (n) => ({
    pieces: times(n, (i) => ({ length: inches(20 + ((i * 37) % 200)), count: 3 + (i % 7) })),
    stock: [{ length: '20 ft' }],
  })),
  growth('bar-cutting', 'lengths of pieces, few of each', (n) => ({
    pieces: times(n, (i) => ({ length: inches(20 + i * 0.7), count: 1 })),
    stock: [{ length: '20 ft' }, { length: '30 ft' }, { length: '40 ft' }],
  })),
  growth('bar-cutting', 'stocks', (n) => ({
    pieces: times(12, (i) => ({ length: inches(20 + 17 * i), count: 5 })),
    stock: times(n, (i) => ({ length: feet(20 + i) })),
  })),
  growth(
    'bar-cutting',
    'pieces',
    (n) => ({
      pieces: times(7, (i) => ({ length: inches(31 + 29 * i), count: n })),
      stock: [{ length: '20 ft' }, { length: '40 ft' }],
    }),
    { to: 1e9 },
  ),
  growth(
    'bar-cutting',
    'pieces in a bar',
    (n) => ({
      pieces: [
        { length: '1.7 in', count: 1000 },
        { length: '2.3 in', count: 1000 },
        { length: '3.1 in', count: 1000 },
      ],
      stock: [{ length: inches(2 * n) }],
    }),
    { to: 1e9, anyRefusal: true },
  ),
];

export const steel: readonly Growth[] = [
  ...rebar,
  ...mesh('mesh-layout'),
  growth('mesh-layout', 'sheets of a rectangle', (n) => ({
    length: feet(6 * Math.sqrt(n)),
    width: feet(6 * Math.sqrt(n)),
    ...sheets,
  })),
  growth(
    'mesh-layout',
    'supports',
    (n) => ({ outline: YARD, ...sheets, supports: feet(60 / Math.sqrt(n)) }),
    { anyRefusal: true },
  ),
  ...cutting,
  ...mat('drawing/mat-plan'),
  ...mesh('drawing/mesh-plan'),
  growth('drawing/mat-section', 'bars by size', (n) => ({
    outline: square(n),
    mats: [{ layer: 'bottom', bar: '#4', spacing: '12 in', faceCover: '1 in' }],
    thickness: '6 in',
  })),
];
