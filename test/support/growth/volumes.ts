/** Concrete: slabs, steps, footings, walls, piers, curbs, orders; and forms. */
import { feet, type Growth, growth, inches, times } from './growth';
import { anyOutline, placed, straightSided, withOpenings } from './regions';
import { INSIDE, PLACED, YARD } from './shapes';

const slab = (thickness: unknown) => (part: object) => ({ ...part, thickness });
const crown = { kind: 'crown', edges: '5 in', center: '7 in', form: 'parabolic', across: 'x' };
const straightCrown = { ...crown, form: 'straight' };
const plane = { kind: 'plane', atOrigin: '6 in', alongX: '0.1%', alongY: '0.05%' };
const taper = { kind: 'taper', along: 'x', from: '5 in', to: '7 in' };

const beams = (n: number): unknown[] =>
  times(n, (i) => ({ length: feet(10 + i), below: '8 in', width: '1 ft' }));

/** Enough to see how a varied thickness grows. */
const VARIED = [
  'corners of a comb',
  'corners of a ragged circle',
  'square openings',
  'corners of many openings',
];

const slabs: readonly Growth[] = [
  ...anyOutline('slab-volume', slab('5 in')),
  ...withOpenings('slab-volume', slab('5 in')),
  ...[plane, taper, crown, straightCrown].flatMap((thickness) =>
    [...placed('slab-volume', slab(thickness)), ...withOpenings('slab-volume', slab(thickness))]
      .filter(({ what }) => VARIED.includes(what))
      .map((one) => ({
        ...one,
        what: `${one.what}, ${thickness.kind}${'form' in thickness ? ` ${thickness.form}` : ''}`,
      })),
  ),
  ...straightSided(
    'thickened edge',
    placed('slab-volume', (part) => ({
      ...part,
      thickness: '5 in',
      edge: { below: '8 in', width: '1 in', haunch: '1 in' },
    })),
  ),
  growth('slab-volume', 'beams', (n) => ({ outline: YARD, thickness: '5 in', beams: beams(n) })),
];

const RING = [
  [0, 0],
  [100, 0],
  [100, 60],
  [0, 60],
] as const;

const probesOn = (n: number): unknown[] => {
  const columns = Math.ceil(Math.sqrt(2 * n));
  return times(n, (i) => ({
    x: feet((120 * ((i % columns) + 0.3 + 0.4 * (((i * 7) % 11) / 11))) / columns),
    y: feet((60 * (Math.floor(i / columns) + 0.3)) / Math.ceil(n / columns)),
    depth: inches(4 + ((i * 37) % 100) / 100),
  }));
};

const inside = (what: string, size: number): unknown[] => {
  const place = INSIDE[what] ?? [60, 60];
  const [x, y] = typeof place === 'function' ? place(size) : place;
  return [{ x: feet(x), y: feet(y), depth: '5 in' }];
};

const probed: readonly Growth[] = [
  growth('probed-volume', 'probes', (n) => ({ outline: YARD, probes: probesOn(n) })),
  growth('probed-volume', 'probes in a grid', (n) => {
    const side = Math.ceil(Math.sqrt(n));
    return {
      outline: YARD,
      grid: {
        spacingX: feet(119.9 / (side - 1 || 1)),
        spacingY: feet(59.9 / (side - 1 || 1)),
        depths: times(side, (r) => times(side, (c) => inches(4 + ((r * 31 + c * 17) % 10) / 10))),
      },
    };
  }),
  ...Object.entries(PLACED).map(([what, outline]) =>
    growth('probed-volume', what, (n) => ({ outline: outline(n), probes: inside(what, n) }), { from: 8 }),
  ),
  ...Object.entries(PLACED)
    .filter(([what]) => what.startsWith('corners'))
    .map(([what, outline]) =>
      growth('probed-volume', `${what}, each probed`, (n) => {
        const ring = outline(n) as { points: { x: string; y: string }[] };
        return {
          outline: ring,
          probes: ring.points.map((p, i) => ({ ...p, depth: inches(4 + (i % 9) / 9) })),
        };
      }),
    ),
];

const steps: readonly Growth[] = [
  growth('step-volume', 'risers', (n) => ({ risers: n, rise: '6 in', tread: '12 in', width: '4 ft' })),
  ...(['wraparound', 'round', 'winding'] as const).map((kind) =>
    growth('step-volume', `risers ${kind}`, (n) => ({
      kind,
      risers: n,
      rise: '6 in',
      ...(kind === 'wraparound' ? { tread: '1 ft', topWidth: '4 ft', topDepth: '3 ft', sides: 'both' } : {}),
      ...(kind === 'round' ? { tread: '1 ft', topRadius: '6 ft', turn: '90 deg' } : {}),
      ...(kind === 'winding'
        ? { innerRadius: '1 ft', outerRadius: '5 ft', turnEach: `${Math.min(10, 300 / n)} deg` }
        : {}),
    })),
  ),
  growth('step-volume', 'cores', (n) => ({
    risers: 40,
    rise: '6 in',
    tread: '12 in',
    width: '40 ft',
    cores: times(n, (i) => ({
      kind: 'void',
      length: inches(6 + (i % 3)),
      width: inches(6),
      height: inches(6),
    })),
  })),
  growth('step-volume', 'wing walls', (n) => ({
    risers: 4,
    rise: '6 in',
    tread: '12 in',
    width: '4 ft',
    wingWalls: times(n, () => ({ length: '4 ft', thickness: '6 in', height: '3 ft' })),
  })),
  growth('step-volume', 'landings', (n) => ({
    risers: n + 1,
    rise: '6 in',
    tread: '12 in',
    width: '4 ft',
    landings: times(n, (i) => ({ after: i + 1, depth: '4 ft' })),
  })),
  growth('step-layout', 'measured risers', (n) => ({
    totalRise: feet(n / 2),
    measured: times(n, () => '6 in'),
  })),
  growth('step-layout', 'risers by their height', (n) => ({ totalRise: feet(n / 2) })),
];

const bodies: readonly Growth[] = [
  growth('footing-volume', 'footings', (n) => ({
    footings: times(n, (i) => ({
      kind: 'tapered-pad',
      length: feet(4 + i / 100),
      width: '4 ft',
      edge: '1 ft',
      topLength: '2 ft',
      topWidth: '2 ft',
      taper: '1 ft',
    })),
  })),
  growth('footing-volume', 'tiers of a footing', (n) => ({
    footings: [
      {
        kind: 'stepped-pad',
        tiers: times(n, (i) => ({ length: feet(50 - 0.01 * i), width: feet(50 - 0.01 * i), depth: '6 in' })),
      },
    ],
  })),
  growth('footing-volume', 'tiers of all footings', (n) => ({
    footings: times(Math.ceil(n / 20), () => ({
      kind: 'stepped-pad',
      tiers: times(Math.min(20, n), (i) => ({ length: feet(50 - i), width: feet(50 - i), depth: '6 in' })),
    })),
  })),
  growth(
    'footing-volume',
    'steps of a footing',
    (n) => ({
      footings: [
        {
          kind: 'strip',
          length: feet(10 * n),
          width: '2 ft',
          depth: '1 ft',
          steps: { count: n, height: '1 ft', lap: '1 ft' },
        },
      ],
    }),
    { anyRefusal: true },
  ),
  growth(
    'footing-volume',
    'equal pads',
    (n) => ({ footings: [{ kind: 'pad', length: '4 ft', width: '4 ft', depth: '1 ft', count: n }] }),
    { to: 1e9, anyRefusal: true },
  ),
  growth('wall-volume', 'walls', (n) => ({
    walls: times(n, (i) => ({ kind: 'straight', length: feet(10 + i), height: '8 ft', thickness: '1 ft' })),
  })),
  growth(
    'wall-volume',
    'anchor bolts',
    (n) => ({
      walls: [{ kind: 'straight', length: feet(n), height: '4 ft', thickness: '8 in' }],
      anchors: { spacing: '1 ft', plate: '2 ft' },
    }),
    { to: 1e9, anyRefusal: true },
  ),
  growth('wall-volume', 'openings of a wall', (n) => ({
    walls: [
      {
        kind: 'straight',
        length: feet(10 * n),
        height: '8 ft',
        thickness: '16 in',
        topThickness: '8 in',
        openings: times(n, () => ({ diameter: '2 ft', sill: '1 ft' })),
      },
    ],
  })),
  growth('wall-volume', 'openings of all walls', (n) => ({
    walls: times(Math.ceil(n / 500), () => ({
      kind: 'straight',
      length: '5000 ft',
      height: '8 ft',
      thickness: '16 in',
      topThickness: '8 in',
      openings: times(Math.min(n, 500), () => ({ sides: 6, side: '1 ft', sill: '1 ft' })),
    })),
  })),
  growth('wall-volume', 'pilasters of all walls', (n) => ({
    walls: times(Math.ceil(n / 500), () => ({
      kind: 'straight',
      length: '5000 ft',
      height: '8 ft',
      thickness: '16 in',
      pilasters: times(Math.min(n, 500), () => ({ width: '1 ft', projection: '4 in' })),
    })),
  })),
  growth('pier-volume', 'piers', (n) => ({
    piers: times(n, (i) => ({
      kind: 'belled',
      shaftDiameter: '2 ft',
      bellDiameter: '4 ft',
      bellHeight: '2 ft',
      toe: '4 in',
      height: feet(10 + i / 10),
    })),
  })),
  growth('curb-volume', 'corners of a section', (n) => ({
    section: times(n, (i) =>
      i === 0
        ? { x: '0 in', y: '0 in' }
        : i === 1
          ? { x: '24 in', y: '0 in' }
          : { x: inches(24 - (24 * (i - 2)) / (n - 3)), y: inches(8 + (4 * ((i * 7) % 5)) / 5) },
    ),
    length: '60 ft',
  })),
  growth('curb-volume', 'drops', (n) => ({
    section: RING.map(([x, y]) => ({ x: inches(x / 10), y: inches(y / 5) })),
    length: feet(100 * n),
    drops: times(n, () => ({
      section: RING.map(([x, y]) => ({ x: inches(x / 10), y: inches(y / 10) })),
      length: '10 ft',
      wing: '3 ft',
    })),
  })),
  growth('curb-volume', 'corners of all drops', (n) => {
    const each = Math.min(500, Math.max(4, Math.ceil(n / 4)));
    const section = (high: number): unknown[] =>
      times(each, (i) =>
        i === 0
          ? { x: '0 in', y: '0 in' }
          : i === 1
            ? { x: '24 in', y: '0 in' }
            : { x: inches(24 - (24 * (i - 2)) / Math.max(1, each - 3)), y: inches(high + ((i * 7) % 5) / 5) },
      );
    return {
      section: section(8),
      length: feet(100 * n),
      drops: times(Math.ceil(n / each), () => ({ section: section(6), length: '10 ft', wing: '3 ft' })),
    };
  }),
  growth('curb-volume', 'curves', (n) => ({
    section: RING.map(([x, y]) => ({ x: inches(x / 10), y: inches(y / 5) })),
    length: '60 ft',
    curves: times(n, () => ({ radius: '20 ft', turn: '90 deg', center: 'left' })),
  })),
];

const orders: readonly Growth[] = [
  growth(
    'concrete-order',
    'loads',
    (n) => ({ volume: `${9 * n} yd3`, allowance: '5%', increment: '0.25 yd3', truckCapacity: '9 yd3' }),
    { to: 1e9 },
  ),
  growth(
    'concrete-order',
    'even loads',
    (n) => ({
      volume: `${9 * n} yd3`,
      allowance: '5%',
      increment: '0.25 yd3',
      truckCapacity: '9 yd3',
      split: 'even',
    }),
    { to: 1e9 },
  ),
  growth(
    'concrete-order',
    'increments',
    (n) => ({
      volume: '9 yd3',
      allowance: '5%',
      increment: `${(1 / n).toFixed(12)} yd3`,
      truckCapacity: '9 yd3',
      split: 'even',
    }),
    { to: 1e9, anyRefusal: true },
  ),
  growth('concrete-order', 'elements', (n) => ({
    elements: times(n, () => ({ volume: '1 yd3', allowance: '5%' })),
    increment: '0.25 yd3',
    truckCapacity: '9 yd3',
  })),
  growth(
    'truck-plan',
    'loads',
    (n) => ({
      volume: `${9 * n} yd3`,
      truckCapacity: '9 yd3',
      placing: { kind: 'rate', rate: '70 yd3/h' },
      travelTime: '25 min',
    }),
    { to: 1e9 },
  ),
  growth('truck-plan', 'loads as split', (n) => ({
    loads: times(n, (i) => `${5 + (i % 9) / 2} yd3`),
    placing: { kind: 'chute', rate: '17 yd3/h' },
    travelTime: '25 min',
    trucks: 3,
    freeTime: '20 min',
    firstTruckAt: '7:00',
  })),
  growth(
    'day-plan',
    'area',
    (n) => ({
      startAt: '7:00',
      area: `${100 * n} ft2`,
      placingTime: '60 min',
      finish: 'broom',
      finishers: 200,
      finishRate: { area: '150 ft2', in: '1 h' },
    }),
    { to: 1e12, anyRefusal: true },
  ),
  growth('balance-load', 'tickets', (n) => ({
    tickets: times(n, () => '9 yd3'),
    done: { area: `${650 * n} ft2`, thickness: '4 in' },
    left: { area: '400 ft2', thickness: '4 in' },
    increment: '0.25 yd3',
  })),
  growth('balance-load', 'probes', (n) => ({
    tickets: ['9 yd3'],
    done: { area: '650 ft2', probes: times(n, (i) => inches(4 + (i % 5) / 8)) },
    left: { area: '400 ft2', thickness: '4 in', probes: times(n, (i) => inches(4 + (i % 7) / 8)) },
    increment: '0.25 yd3',
  })),
  growth('bag-count', 'bags', (n) => ({ volume: `${n * 0.6} ft3`, allowance: '5%', bag: '80 lb' }), {
    to: 1e12,
  }),
  growth(
    'fiber-dosage',
    'bags',
    (n) => ({ volume: `${n} yd3`, kind: 'micro', dosage: '1 lb/yd3', bag: '1 lb' }),
    { to: 1e12 },
  ),
];

export const volumes: readonly Growth[] = [...slabs, ...probed, ...steps, ...bodies, ...orders];
