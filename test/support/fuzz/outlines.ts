/** Outlines of every shape: plain, many-cornered, kinked, curved, far from the origin, and some that are none. */
import type { Chance } from '../relations/random';
import { type Hand, plainText, someHand, written } from './notation';

type XY = readonly [number, number];

/** A way to write places: far from the origin or near it, by one hand. */
interface Site {
  readonly hand: Hand;
  readonly far: XY;
  readonly dice: Chance;
}

const UNIT_OF = { customary: ['ft', 0.3048, 'in', 0.0254], metric: ['m', 1, 'mm', 0.001] } as const;

const FAR: readonly XY[] = [
  [0, 0],
  [0, 0],
  [0, 0],
  [100, 50],
  [609_600, 152_400],
  [-609_600, 3_000_000],
];

/** A coordinate, to some hundredth of a millimeter mostly. */
function coordinate({ hand, dice }: Site, meters: number): unknown {
  const [large, l, small, s] = UNIT_OF[hand.system];
  if (dice.below(12) === 0) return written('length', meters, { ...hand, digits: 15 }, dice);
  return dice.below(3) === 0
    ? `${plainText(Math.round((meters / s) * 16) / 16, 15)} ${small}`
    : `${plainText(Math.round((meters / l) * 1e4) / 1e4, 15)} ${large}`;
}

const point = (site: Site, [x, y]: XY): { x: unknown; y: unknown } => ({
  x: coordinate(site, x + site.far[0]),
  y: coordinate(site, y + site.far[1]),
});

const measure = (site: Site, meters: number): unknown => written('length', meters, site.hand, site.dice);

/** A side between 1 and 60 m, small ones oftener. */
const side = (dice: Chance): number => Math.round(1000 * 60 ** dice.next()) / 1000;

/** How many corners: few mostly, sometimes many. */
function some(dice: Chance, least: number): number {
  const roll = dice.below(400);
  if (roll === 0) return least + dice.below(600);
  if (roll < 8) return least + dice.below(100);
  return least + dice.below(14);
}

// Rings in meters -----------------------------------------------------------------------------------

function star(dice: Chance): XY[] {
  const [n, size] = [some(dice, 3), side(dice)];
  return Array.from({ length: n }, (_, i) => {
    const angle = ((i + 0.1 + 0.8 * dice.next()) / n) * 2 * Math.PI;
    const r = size * (0.2 + 0.8 * dice.next());
    return [r * Math.cos(angle), r * Math.sin(angle)];
  });
}

function spikes(dice: Chance): XY[] {
  const [n, size, inner] = [2 * some(dice, 3), side(dice), 0.15 + 0.8 * dice.next()];
  return Array.from({ length: n }, (_, i) => {
    const r = i % 2 === 0 ? size : size * inner;
    return [r * Math.cos((2 * Math.PI * i) / n), r * Math.sin((2 * Math.PI * i) / n)];
  });
}

function staircase(dice: Chance): XY[] {
  const [n, run, rise] = [some(dice, 1), side(dice) / 8, side(dice) / 8];
  const ring: XY[] = [[0, 0]];
  for (let i = 0; i < n; i += 1)
    ring.push([n * run - i * run, i * rise], [n * run - i * run, (i + 1) * rise]);
  ring.push([0, n * rise]);
  return ring;
}

function comb(dice: Chance): XY[] {
  const [n, pitch, depth, back] = [some(dice, 1), side(dice) / 5, side(dice) / 2, side(dice) / 4];
  const ring: XY[] = [];
  for (let i = 0; i < n; i += 1) {
    const x = 2 * i * pitch;
    ring.push([x, 0], [x, -depth], [x + pitch, -depth], [x + pitch, 0]);
  }
  return [...ring, [(2 * n - 1) * pitch, back], [0, back]];
}

/** A rectangle with tape noise along its sides. */
function kinked(dice: Chance): XY[] {
  const [w, h, n, noise] = [side(dice), side(dice), 1 + dice.below(8), 0.02 * dice.next()];
  const corners: XY[] = [
    [0, 0],
    [w, 0],
    [w, h],
    [0, h],
  ];
  return corners.flatMap(([x, y], k) => {
    const [x2, y2] = corners[(k + 1) % 4] as XY;
    return Array.from({ length: n }, (_, i) => {
      const [t, off] = [i / n, i === 0 ? 0 : noise * (2 * dice.next() - 1)];
      return [x + (x2 - x) * t + (y === y2 ? 0 : off), y + (y2 - y) * t + (y === y2 ? off : 0)] as const;
    });
  });
}

function roundish(dice: Chance): XY[] {
  const [n, a, b] = [some(dice, 8), side(dice), side(dice)];
  return Array.from({ length: n }, (_, i) => [
    a * Math.cos((2 * Math.PI * i) / n),
    b * Math.sin((2 * Math.PI * i) / n),
  ]);
}

const rectangle = (dice: Chance): XY[] => {
  const [w, h] = [side(dice), side(dice)];
  return [
    [0, 0],
    [w, 0],
    [w, h],
    [0, h],
  ];
};

const RINGS = [star, star, spikes, staircase, comb, kinked, kinked, roundish, rectangle];

/** Turned, mirrored, begun elsewhere, and now and then with a corner spoilt. */
function posed(ring: readonly XY[], dice: Chance): XY[] {
  const turn = dice.pick([0, 0, 0, Math.PI / 2, Math.PI, dice.next() * 6.3]);
  const [cos, sin, flip] = [Math.cos(turn), Math.sin(turn), dice.below(4) === 0 ? -1 : 1];
  let out = ring.map(([x, y]): XY => [flip * (x * cos - y * sin), x * sin + y * cos]);
  const start = dice.below(out.length);
  out = [...out.slice(start), ...out.slice(0, start)];
  if (dice.below(3) === 0) out.reverse();
  const spoil = dice.below(60);
  if (spoil === 0) out.splice(start, 0, out[start] as XY);
  if (spoil === 1) [out[0], out[1]] = [out[1] as XY, out[0] as XY];
  if (spoil === 2) out.push(out[0] as XY);
  if (spoil === 3) out = out.map(([x, y]) => [x * 1e-4, y * 1e-4]);
  return out;
}

/** A ring in meters, for openings and sections too. */
export const someRing = (dice: Chance): XY[] => posed(dice.pick(RINGS)(dice), dice);

// Shapes --------------------------------------------------------------------------------------------

type Maker = (site: Site) => Record<string, unknown>;

const polygon: Maker = (site) => ({
  shape: 'polygon',
  points: someRing(site.dice).map((p) => point(site, p)),
});

const curved: Maker = (site) => {
  const { dice } = site;
  const ring = dice.below(6) === 0 ? rectangle(dice).slice(0, 2) : someRing(dice).slice(0, 200);
  return {
    shape: 'curved',
    points: ring.map((p, i) => {
      const [x2, y2] = ring[(i + 1) % ring.length] as XY;
      const long = Math.hypot(x2 - p[0], y2 - p[1]);
      const roll = dice.below(4);
      if (roll === 0) return { ...point(site, p), rise: measure(site, long * (dice.next() * 0.4 - 0.15)) };
      if (roll === 1) return { ...point(site, p), radius: measure(site, long * (0.51 + 3 * dice.next())) };
      return point(site, p);
    }),
  };
};

const distance = ([a, b]: XY, [x, y]: XY): number => Math.hypot(x - a, y - b);

const taped: Maker = (site) => {
  const ring = star(site.dice);
  const sides = ring.map((p, i) => distance(p, ring[(i + 1) % ring.length] as XY));
  const diagonals = ring.slice(2, -1).map((p) => distance(ring[0] as XY, p));
  return {
    shape: 'taped',
    sides: sides.map((l) => measure(site, l)),
    diagonals: diagonals.map((l) => measure(site, l)),
  };
};

const walk: Maker = (site) => {
  const [a, b, c] = [side(site.dice), side(site.dice), site.dice.next()];
  const leg = (l: number, turn: unknown): object => ({ length: `${plainText(l, 6)} m`, turn });
  if (site.dice.below(3) === 0) {
    const n = 3 + site.dice.below(8);
    const turn = `${plainText(360 / n, 15)} deg`;
    const legs = Array.from({ length: n }, () => leg(a, turn));
    return { shape: 'walk', legs, ...(site.dice.below(2) === 0 ? { closingLimit: '1 in' } : {}) };
  }
  const [p, q] = [Math.round(1000 * a * c) / 1000 + 0.001, Math.round(b * 300) / 1000];
  const turns = ['left', 'left', 'right', 'left', 'left', 'left'];
  const lengths = [a + p, b + q, p, b, a, 2 * b + q];
  const closing = lengths.map((l, i) => leg(i === 3 ? b : l, turns[i]));
  return { shape: 'walk', legs: closing };
};

const wide = (site: Site): readonly [number, number] => [side(site.dice), side(site.dice)];

const notched =
  (shape: 'L' | 'U'): Maker =>
  (site) => {
    const [l, w] = wide(site);
    const over = site.dice.below(15) === 0 ? 2 : 0.98;
    return {
      shape,
      length: measure(site, l),
      width: measure(site, w),
      notchLength: measure(site, l * site.dice.next() * over),
      notchWidth: measure(site, w * site.dice.next() * over),
    };
  };

const triangle: Maker = (site) => {
  const [a, b] = wide(site);
  const c = Math.abs(a - b) + (a + b - Math.abs(a - b)) * (0.05 + 0.93 * site.dice.next());
  return { shape: 'triangle', sides: [a, b, c].map((l) => measure(site, l)) };
};

const PLAIN: readonly Maker[] = [
  (site) => {
    const [l, w] = wide(site);
    return { shape: 'rectangle', length: measure(site, l), width: measure(site, w) };
  },
  triangle,
  (site) => {
    const [a, b] = wide(site);
    return {
      shape: 'trapezoid',
      parallel: [measure(site, a), measure(site, b)],
      height: measure(site, side(site.dice)),
    };
  },
  notched('L'),
  notched('U'),
  (site) => ({
    shape: 'regular',
    sides: 3 + site.dice.below(site.dice.below(9) === 0 ? 357 : 9),
    side: measure(site, side(site.dice) / 4),
  }),
  taped,
  walk,
  (site) => ({ shape: 'circle', diameter: measure(site, side(site.dice)) }),
  (site) => {
    const d = side(site.dice);
    return {
      shape: 'ring',
      outerDiameter: measure(site, d),
      innerDiameter: measure(site, d * site.dice.next() * 1.02),
    };
  },
  (site) => {
    const r = side(site.dice);
    const inner = site.dice.below(2) === 0 ? {} : { innerRadius: measure(site, r * site.dice.next() * 1.02) };
    return {
      shape: 'sector',
      radius: measure(site, r),
      angle: `${plainText(site.dice.next() * 365, 4)} deg`,
      ...inner,
    };
  },
  (site) => ({ shape: 'area', area: written('area', side(site.dice) ** 2, site.hand, site.dice) }),
  (site) => ({
    shape: 'offsets',
    spacing: measure(site, side(site.dice) / 6),
    offsets: Array.from({ length: 2 + site.dice.below(12) }, () => measure(site, side(site.dice) / 3)),
    rule: site.dice.pick(['trapezoidal', 'simpson']),
  }),
];

function combined(site: Site, depth: number): Record<string, unknown> {
  const { dice } = site;
  const part = (): unknown =>
    depth < 3 && dice.below(6) === 0 ? combined(site, depth + 1) : dice.pick(PLAIN)(site);
  const parts = Array.from({ length: 1 + dice.below(4) }, part);
  const small = { shape: 'rectangle', length: '1 ft', width: '2 ft' };
  const less = dice.below(2) === 0 ? {} : { less: Array.from({ length: dice.below(3) }, () => small) };
  const shared = dice.below(3) === 0 ? { shared: measure(site, dice.next()) } : {};
  return { shape: 'combined', parts, ...less, ...shared };
}

const siteOf = (dice: Chance): Site => ({ hand: someHand(dice), far: dice.pick(FAR), dice });

/** An outline. */
export function someOutline(dice: Chance): Record<string, unknown> {
  const site = siteOf(dice);
  const roll = dice.below(20);
  if (roll < 8) return polygon(site);
  if (roll < 10) return curved(site);
  if (roll === 10) return combined(site, 0);
  return dice.pick(PLAIN)(site);
}

/** An outline with openings in it, or beside it, or over each other. */
export function someRegion(dice: Chance): { outline: unknown; openings?: unknown[] } {
  const site = siteOf(dice);
  const [w, h] = [side(dice) + 2, side(dice) + 2];
  const at = (x: number, y: number): unknown => point(site, [x * w, y * h]);
  const corners: XY[] = [
    [0, 0],
    [w, 0],
    [w, h],
    [0, h],
  ];
  const outline = { shape: 'polygon', points: corners.map((p) => point(site, p)) };
  const n = dice.below(6) === 0 ? dice.below(30) : dice.below(4);
  const openings = Array.from({ length: n }, (_, i) => {
    const [x, y] = [(i + 0.2 + 0.3 * dice.next()) / n, 0.15 + 0.6 * dice.next()];
    const size = (Math.min(w / n, h) / 4) * (0.1 + 0.8 * dice.next());
    const roll = dice.below(4);
    if (roll === 0) return { shape: 'circle', at: at(x, y), diameter: measure(site, size) };
    if (roll === 1)
      return { shape: 'rectangle', at: at(x, y), length: measure(site, size), width: measure(site, size) };
    if (roll === 2)
      return { shape: 'regular', at: at(x, y), sides: 3 + dice.below(9), side: measure(site, size / 3) };
    const around = star(dice).slice(0, 30);
    const reach = Math.max(...around.map(([a, b]) => Math.hypot(a, b)));
    const put = ([a, b]: XY): XY => [x * w + (a / reach) * size, y * h + (b / reach) * size];
    return { shape: 'polygon', points: around.map((p) => point(site, put(p))) };
  });
  return dice.below(8) === 0 ? { outline } : { outline, openings };
}
