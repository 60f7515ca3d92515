/** Falls, grades and water. */
import { feet, type Growth, growth, inches, times } from './growth';

const height = (x: number, y: number, i: number): number =>
  100 - 0.02 * y - 0.001 * x + ((i * 37) % 100) / 2000;

/** Spots over a yard, in no order and on no grid. */
const scattered = (n: number): { readonly x: number; readonly y: number; readonly z: number }[] => {
  const columns = Math.ceil(Math.sqrt(2 * n));
  const rows = Math.ceil(n / columns);
  return times(n, (k) => {
    const i = (k * 7919) % n || k;
    const j = n % 7919 === 0 ? k : i;
    const x = (120 * ((j % columns) + 0.45 * Math.sin(j * 1.7))) / columns;
    const y = (60 * (Math.floor(j / columns) + 0.45 * Math.cos(j * 2.3))) / rows;
    return { x, y, z: height(x, y, j) };
  });
};

const listed = (n: number): unknown[] =>
  scattered(n).map(({ x, y, z }, i) => ({ name: `S${i}`, x: feet(x), y: feet(y), elevation: feet(z) }));
const tabled = (n: number): unknown => ({ unit: 'ft', rows: scattered(n).map(({ x, y, z }) => [x, y, z]) });
const grid = (n: number, rough: number): unknown => {
  const side = Math.max(2, Math.ceil(Math.sqrt(n)));
  return {
    along: feet(120 / side),
    across: feet(60 / side),
    unit: 'ft',
    elevations: times(side, (r) =>
      times(side, (c) => 100 - (1.2 * r) / side + rough * (((r * 31 + c * 17) % 10) / 10)),
    ),
  };
};

const yardTable = tabled(400);
const wall = {
  kind: 'building',
  name: 'house',
  along: [
    { x: '0 ft', y: '-2 ft' },
    { x: '120 ft', y: '-2 ft' },
  ],
};
const place = (x: number, y: number): { x: string; y: string } => ({ x: feet(x), y: feet(y) });

/** @param many - as many spots as it takes */
const checked = (of: string, wrap: (surface: object) => unknown, many = 10_000): readonly Growth[] => [
  growth(of, 'spots', (n) => wrap({ spots: listed(n), lines: [wall] })),
  growth(of, 'spots of a table', (n) => wrap({ table: tabled(n), lines: [wall] })),
  growth(of, 'spots of a smooth grid', (n) => wrap({ grid: grid(n, 0), lines: [] })),
  growth(of, 'spots of a rough grid', (n) => wrap({ grid: grid(n, 0.5), lines: [wall] })),
  growth(of, 'forms', (n) =>
    wrap({
      forms: times(n, (i) => ({
        name: `F${i}`,
        from: place(0, i),
        to: place(100, i),
        readings: times(3, (k) => ({ at: feet(50 * k), elevation: feet(100 - 0.02 * i - 0.01 * k) })),
      })),
      lines: [],
    }),
  ),
  growth(of, 'readings of a form', (n) =>
    wrap({
      forms: times(2, (i) => ({
        name: `F${i}`,
        from: place(0, 10 * i),
        to: place(100, 10 * i),
        readings: times(n, (k) => ({
          at: feet((100 * k) / n),
          elevation: feet(100 - 0.2 * i - (k % 7) / 100),
        })),
      })),
      lines: [],
    }),
  ),
  growth(of, 'lines', (n) =>
    wrap({
      table: yardTable,
      lines: times(n, (i) => ({
        kind: 'curb',
        name: `curb ${i}`,
        along: [place((120 * i) / n, 58), place((120 * (i + 0.5)) / n, 59)],
      })),
    }),
  ),
  growth(of, 'places of a line', (n) =>
    wrap({
      table: yardTable,
      lines: [
        { kind: 'building', name: 'house', along: times(n, (i) => place((120 * i) / n, -2 + (i % 2) / 9)) },
      ],
    }),
  ),
  growth(of, 'places of all lines', (n) =>
    wrap({
      table: yardTable,
      lines: times(Math.ceil(n / 10), (k) => ({
        kind: 'curb',
        name: `curb ${k}`,
        along: times(Math.min(10, n), (i) =>
          place(5 + 10 * i, 1 + (55 * k) / Math.ceil(n / 10) + (i % 2) / 99),
        ),
      })),
    }),
  ),
  growth(of, 'places of breaklines over many spots', (n) =>
    wrap({
      grid: grid(many, 0.1),
      lines: [{ kind: 'curb', name: 'gutter', along: times(n, (i) => place((110 * i) / n, 30 + (i % 2))) }],
    }),
  ),
  growth(of, 'corners of the outline', (n) =>
    wrap({
      table: yardTable,
      lines: [],
      outline: times(n, (i) =>
        place(
          60 + (28 + (i % 3)) * Math.cos((2 * Math.PI * i) / n),
          30 + (22 + (i % 3)) * Math.sin((2 * Math.PI * i) / n),
        ),
      ),
    }),
  ),
  growth(of, 'corners of the outline over many spots', (n) =>
    wrap({
      grid: grid(many, 0.1),
      lines: [],
      outline: times(n, (i) =>
        place(
          58 + (28 + (i % 3)) * Math.cos((2 * Math.PI * i) / n),
          29 + (22 + (i % 3)) * Math.sin((2 * Math.PI * i) / n),
        ),
      ),
    }),
  ),
  growth(of, 'sills', (n) =>
    wrap({
      table: yardTable,
      lines: [wall],
      sills: times(n, (i) => ({ name: `sill ${i}`, at: place(5 + (100 * i) / n, 5), elevation: '100.5 ft' })),
    }),
  ),
  growth(of, 'inflows', (n) =>
    wrap({
      table: yardTable,
      lines: [wall],
      inflows: times(n, (i) => ({ name: `spout ${i}`, at: place(5 + (100 * i) / n, 1), flow: '1 gal/min' })),
    }),
  ),
  growth(of, 'inflows over many spots', (n) =>
    wrap({
      grid: grid(many, 0.1),
      lines: [],
      inflows: times(n, (i) => ({ name: `spout ${i}`, at: place(5 + (100 * i) / n, 1) })),
    }),
  ),
];

const stakes = (n: number): unknown[] =>
  times(n, (i) => ({
    name: `S${i}`,
    x: feet((i % 40) * 3),
    y: feet(Math.floor(i / 40) * 3),
    ground: feet(100 - ((i * 37) % 100) / 100),
    area: '9 ft2',
  }));
const plane = {
  kind: 'sloped-plane',
  at: { name: 'door', ...place(0, 0), elevation: '100 ft' },
  alongX: '0%',
  alongY: '2%',
};
const door = [{ name: 'door', ...place(0, 0), elevation: '100 ft' }];

const forms: readonly Growth[] = [
  growth('form-grades', 'stakes', (n) => ({ surface: plane, stakes: stakes(n) })),
  growth('form-grades', 'stakes of a plane sought', (n) => ({
    fixed: door,
    falls: [{ name: 'away', from: place(0, 0), to: place(0, 10), minimum: '2%' }],
    stakes: stakes(n),
  })),
  growth('form-grades', 'fixed points', (n) => ({
    fixed: times(n, (i) => ({
      name: `F${i}`,
      ...place(i, (i * 7) % 11),
      elevation: feet(100 - 0.02 * ((i * 7) % 11)),
    })),
    stakes: stakes(4),
  })),
  growth('form-grades', 'bounds', (n) => ({
    fixed: door,
    bounds: times(n, (i) => ({
      name: `B${i}`,
      ...place(i + 1, (i * 7) % 11),
      minimum: '90 ft',
      maximum: feet(100.5 + i / 100),
    })),
    falls: [{ name: 'away', from: place(0, 0), to: place(0, 10), minimum: '2%' }],
    stakes: stakes(60),
  })),
  growth('form-grades', 'falls', (n) => ({
    fixed: door,
    falls: times(n, (i) => ({
      name: `away ${i}`,
      from: place(0, 0),
      to: place(i - n / 2, 10 + i),
      minimum: '1%',
      maximum: '9%',
    })),
    stakes: stakes(60),
  })),
];

const named = (n: number): { name: string; x: string; y: string; elevation: string }[] =>
  times(n, (i) => ({
    name: `S${i}`,
    x: feet((i % 6) * 5),
    y: feet(Math.floor(i / 6) * 5),
    elevation: feet(100 - Math.floor(i / 6) * 0.06 + ((i * 37) % 10) / 100),
  }));

const corrections: readonly Growth[] = [
  growth(
    'grade-correction',
    'spots',
    (n) => ({
      spots: named(n),
      lines: [{ kind: 'building', name: 'house', along: ['S0', 'S1'] }],
    }),
    { from: 8 },
  ),
  growth(
    'grade-correction',
    'spots, raised only',
    (n) => ({
      spots: named(n),
      how: 'raise',
      lines: [{ kind: 'building', name: 'house', along: ['S0', 'S1'] }],
    }),
    { from: 8 },
  ),
  growth(
    'grade-correction',
    'spots, either way',
    (n) => ({
      spots: named(n),
      how: 'either',
      lines: [{ kind: 'building', name: 'house', along: ['S0', 'S1'] }],
    }),
    { from: 8 },
  ),
  growth('grade-correction', 'falls', (n) => ({
    spots: named(50),
    falls: times(n, (i) => ({ from: `S${i % 44}`, to: `S${(i % 44) + 6}`, minimum: '1%' })),
    lines: [],
  })),
  growth('grade-correction', 'spots that may move', (n) => ({
    spots: named(50),
    movable: times(n, (i) => `S${49 - i}`),
    lines: [{ kind: 'building', name: 'house', along: ['S0', 'S1'] }],
  })),
  growth('grade-correction', 'sills', (n) => ({
    spots: named(50),
    sills: times(n, (i) => ({ name: `sill ${i}`, at: `S${i}`, elevation: '101 ft' })),
    lines: [{ kind: 'building', name: 'house', along: ['S0', 'S1'] }],
  })),
  growth('grade-correction', 'thicknesses', (n) => ({
    spots: named(50),
    thicknesses: times(n, (i) => ({ spot: `S${i}`, thickness: '5 in' })),
    lines: [{ kind: 'building', name: 'house', along: ['S0', 'S1'] }],
  })),
  growth('grade-correction', 'lines', (n) => ({
    spots: named(50),
    lines: times(n, (i) => ({ kind: 'curb', name: `curb ${i}`, along: [`S${i % 49}`, `S${(i % 49) + 1}`] })),
  })),
  growth('grade-correction', 'places of a line', (n) => ({
    spots: named(50),
    lines: [
      { kind: 'building', name: 'house', along: times(n, (i) => place((25 * i) / n, -1 - (i % 2) / 10)) },
    ],
  })),
];

const notes: readonly Growth[] = [
  growth('level-notes', 'readings of a level', (n) => ({
    kind: 'level',
    benchMark: { name: 'BM', elevation: '100 ft' },
    rows: [
      { point: 'BM', backsight: '5 ft' },
      ...times(n - 1, (i) => ({ point: `P${i}`, foresight: feet(4 + (i % 9) / 10) })),
    ],
  })),
  growth('level-notes', 'turning points', (n) => ({
    kind: 'level',
    benchMark: { name: 'BM', elevation: '100 ft' },
    rows: [
      { point: 'BM', backsight: '5 ft' },
      ...times(n - 2, (i) => ({ point: `P${i}`, foresight: feet(4 + (i % 9) / 10), backsight: '4.4 ft' })),
      { point: 'end', foresight: '4 ft' },
    ],
    closesOn: '100 ft',
    allowed: '10000 ft',
  })),
  growth('level-notes', 'readings of a laser', (n) => ({
    kind: 'laser',
    benchMark: { name: 'BM', elevation: '100 ft' },
    rows: times(n, (i) => ({ point: `P${i}`, up: inches(1 + (i % 9)) })),
  })),
  growth('level-notes', 'readings of a water level', (n) => ({
    kind: 'water-level',
    benchMark: { name: 'BM', elevation: '100 ft' },
    atBenchMark: '4 ft',
    rows: times(n, (i) => ({ point: `P${i}`, height: feet(3 + (i % 9) / 10) })),
  })),
  growth('level-notes', 'readings of a string line', (n) => ({
    kind: 'string-line',
    from: { name: 'A', elevation: '100 ft' },
    to: { name: 'B', elevation: '99 ft' },
    length: '100 ft',
    rows: times(n, (i) => ({ point: `P${i}`, at: feet((100 * i) / n), down: inches(4 + (i % 9)) })),
  })),
];

export const grade: readonly Growth[] = [
  ...checked('drainage-check', (surface) => surface),
  // Drawn are no more than 20,000 facets, four of them to a cell of a rough grid.
  ...checked('drawing/surface-plan', (surface) => ({ surface }), 4900),
  growth(
    'drawing/surface-plan',
    'contours',
    (n) => ({ surface: { table: yardTable, lines: [] }, interval: feet(1.5 / n) }),
    { anyRefusal: true },
  ),
  growth('drawing/surface-plan', 'stakes', (n) => ({
    surface: { table: yardTable, lines: [] },
    stakes: times(n, (i) => ({ name: `S${i}`, ...place(i % 40, (i * 7) % 50), mark: 'down 2 in' })),
  })),
  ...forms,
  ...corrections,
  ...notes,
  growth('runoff', 'areas', (n) => ({
    areas: times(n, () => ({ surface: 'concrete', area: '400 ft2' })),
    intensity: '4 in/h',
  })),
  growth('straightedge', 'readings', (n) => ({
    readings: times(n, (i) => inches(((i * 37) % 10) / 40)),
    spacing: '1 ft',
    edge: '10 ft',
  })),
  growth('straightedge', 'readings, rough, under a long edge', (n) => ({
    readings: times(n, (i) => inches(Math.sin(i / 3) + ((i * 37) % 10) / 10)),
    spacing: '1 in',
    edge: '16 ft',
    allowed: '1/4 in',
  })),
  growth(
    'straightedge',
    'readings under the edge',
    (n) => ({
      readings: times(2000, (i) => inches(((i * 37) % 10) / 40)),
      spacing: '1 in',
      edge: inches(n),
      allowed: '1/4 in',
    }),
    { anyRefusal: true },
  ),
];
