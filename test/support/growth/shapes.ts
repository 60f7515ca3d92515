/** Outlines and openings of any number of corners, arcs and parts; all fit a yard of about 120 ft. */
import { feet, times } from './growth';

type Flat = readonly [x: number, y: number];

const points = (corners: readonly Flat[]): { x: string; y: string }[] =>
  corners.map(([x, y]) => ({ x: feet(x), y: feet(y) }));

const polygon = (corners: readonly Flat[]): unknown => ({ shape: 'polygon', points: points(corners) });

/** The same numbers each time, and no pattern in them. */
const noise = (i: number): number => (((i + 1) * 2_654_435_761) % 4_294_967_296) / 4_294_967_296;

const around = (size: number, radius: (i: number) => number): Flat[] =>
  times(size, (i) => {
    const angle = (2 * Math.PI * i) / size;
    return [60 + radius(i) * Math.cos(angle), 60 + radius(i) * Math.sin(angle)];
  });

/** Sides of a fence: straight at the bottom, up and down at the top. */
function teeth(size: number, height: (i: number) => number): Flat[] {
  const across = Math.max(2, size - 2);
  const top = times(across, (i): Flat => [120 - (120 * i) / (across - 1), height(i)]);
  return [[0, 0], [120, 0], ...top];
}

function stairs(size: number): Flat[] {
  const steps = Math.max(1, Math.floor((size - 2) / 2));
  const climb = times(steps, (i): Flat[] => [
    [120 - (120 * i) / steps, (60 * (i + 1)) / steps],
    [120 - (120 * (i + 1)) / steps, (60 * (i + 1)) / steps],
  ]);
  return [[0, 0], [120, 0], ...climb.flat()];
}

/** A strip wound about itself. */
function spiral(size: number): Flat[] {
  const half = Math.max(4, Math.floor(size / 2));
  const turns = Math.max(1, half / 16);
  const at = (i: number, more: number): Flat => {
    const angle = (2 * Math.PI * turns * i) / half;
    const radius = 5 + (50 * (i / half) * turns + more * 25) / turns;
    return [60 + radius * Math.cos(angle), 60 + radius * Math.sin(angle)];
  };
  return [...times(half, (i) => at(i, 1)), ...times(half, (i) => at(half - 1 - i, 0))];
}

/** In the middle of the inner end of the spiral. */
function inSpiral(size: number): Flat {
  const half = Math.max(4, Math.floor(size / 2));
  const turns = Math.max(1, half / 16);
  const angle = (Math.PI * turns) / half;
  const radius = Math.cos(angle) * (5 + 12.5 / turns + 25 / half);
  return [60 + radius * Math.cos(angle), 60 + radius * Math.sin(angle)];
}

const arcs = (size: number, rise: number): unknown => ({
  shape: 'curved',
  points: points(around(size, () => 50)).map((point) => ({ ...point, rise: feet((rise * 300) / size) })),
});

const walked = (size: number): unknown => {
  const steps = Math.max(1, Math.floor((size - 2) / 2));
  const leg = (length: number, turn: 'left' | 'right'): unknown => ({ length: feet(length), turn });
  // Right around a staircase: up, left, up, left; at each inner corner the other way.
  const climb = times(steps, () => [leg(1, 'left'), leg(2, 'right')]).flat();
  climb[climb.length - 1] = leg(2, 'left');
  return { shape: 'walk', legs: [leg(2 * steps, 'left'), ...climb, leg(steps, 'left')] };
};

function taped(size: number): unknown {
  const [x, y] = [
    (i: number) => 50 * Math.cos((2 * Math.PI * i) / size),
    (i: number) => 50 * Math.sin((2 * Math.PI * i) / size),
  ];
  // Finer than a tape reads: rounded as other lengths are, many short sides would close no triangle.
  const between = (i: number, j: number): string =>
    `${Number(Math.hypot(x(i) - x(j), y(i) - y(j)).toFixed(12))} ft`;
  return {
    shape: 'taped',
    sides: times(size, (i) => between(i, i + 1)),
    diagonals: times(size - 3, (i) => between(0, i + 2)),
  };
}

const rectangle = (length: number, width: number): unknown => ({
  shape: 'rectangle',
  length: feet(length),
  width: feet(width),
});

/** Outlines with a place, by what grows in them. */
export const PLACED: Readonly<Record<string, (size: number) => unknown>> = {
  'corners of a ragged circle': (n) => polygon(around(n, (i) => 55 + noise(i))),
  'corners of a wavy circle': (n) => polygon(around(n, (i) => 55 + 4 * Math.sin((16 * Math.PI * i) / n))),
  'corners of a star': (n) => polygon(around(n - (n % 2), (i) => (i % 2 ? 30 : 58))),
  'corners of a staircase': (n) => polygon(stairs(n)),
  'corners of a comb': (n) => polygon(teeth(n, (i) => (i % 2 ? 20 : 60))),
  'corners of a ragged edge': (n) => polygon(teeth(n, (i) => 58 + 2 * noise(i))),
  'corners of a spiral': (n) => polygon(spiral(n)),
  'sides of a regular': (n) => ({ shape: 'regular', sides: n, side: feet(314 / n) }),
  'sides taped': taped,
  'legs walked': walked,
  'arcs swelling': (n) => arcs(n, 0.2),
  'arcs hollow': (n) => arcs(n, -0.2),
};

/** A place in the outline, where it is not the middle of a circle. */
export const INSIDE: Readonly<Record<string, Flat | ((size: number) => Flat)>> = {
  'corners of a staircase': [119, 0.1],
  'corners of a comb': [60, 1],
  'corners of a ragged edge': [60, 1],
  'corners of a spiral': inSpiral,
  'sides of a regular': [0, 0],
  'sides taped': [10, 1],
  'legs walked': [2, 0.5],
};

/** Outlines by their area. */
export const UNPLACED: Readonly<Record<string, (size: number) => unknown>> = {
  offsets: (n) => ({
    shape: 'offsets',
    spacing: '2 ft',
    offsets: times(n, (i) => feet(10 + noise(i))),
    rule: 'trapezoidal',
  }),
  'rectangles combined': (n) => ({ shape: 'combined', parts: times(n, (i) => rectangle(10 + i, 5)) }),
  'parts cut out': (n) => ({
    shape: 'combined',
    parts: [rectangle(5000, 500)],
    less: times(n, (i) => rectangle(4 + (i % 3), 2)),
  }),
  'parts combined in parts': (n) => ({
    shape: 'combined',
    parts: times(Math.ceil(n / 100), () => ({
      shape: 'combined',
      parts: times(Math.min(n, 100), (i) => rectangle(10 + i, 5)),
    })),
  }),
  'regular parts in parts': (n) => ({
    shape: 'combined',
    parts: times(Math.ceil(n / 100), (k) => ({
      shape: 'combined',
      parts: times(Math.min(n, 100), (i) => ({
        shape: 'regular',
        sides: 3 + ((7 * i + 31 * k) % 358),
        side: '2 ft',
      })),
    })),
  }),
  'corners of combs in parts': (n) => {
    const parts = Math.min(100, Math.ceil(n / 100));
    return {
      shape: 'combined',
      parts: times(parts, () => polygon(teeth(Math.ceil(n / parts), (i) => (i % 2 ? 20 : 60)))),
    };
  },
  'arcs in parts': (n) => {
    const parts = Math.min(100, Math.ceil(n / 200));
    return { shape: 'combined', parts: times(parts, () => arcs(Math.ceil(n / parts), 0.2)) };
  },
  'sides taped in parts': (n) => {
    const parts = Math.min(100, Math.ceil(n / 400));
    return { shape: 'combined', parts: times(parts, () => taped(Math.max(4, Math.ceil(n / parts)))) };
  },
};

/** A yard of 120 ft by 60 ft. */
export const YARD = rectangle(120, 60);

/** The middle of each of `n` fields of the yard, and how wide the fields are. */
function fields(n: number): { readonly at: (i: number) => Flat; readonly room: number } {
  const columns = Math.max(1, Math.ceil(Math.sqrt(2 * n)));
  const room = Math.min(120 / columns, 60 / Math.ceil(n / columns));
  return {
    at: (i) => [room * ((i % columns) + 0.5), room * (Math.floor(i / columns) + 0.5)],
    room: room * 0.98,
  };
}

const place = ([x, y]: Flat): { x: string; y: string } => ({ x: feet(x), y: feet(y) });

/** Openings in {@link YARD}, by what grows in them. */
export const OPENINGS: Readonly<Record<string, (size: number) => unknown[]>> = {
  'square openings': (n) => {
    const { at, room } = fields(n);
    return times(n, (i) => ({
      shape: 'rectangle',
      at: place([at(i)[0] - room / 4, at(i)[1] - room / 4]),
      length: feet(room / 2),
      width: feet(room / 2),
    }));
  },
  'round openings': (n) => {
    const { at, room } = fields(n);
    return times(n, (i) => ({ shape: 'circle', at: place(at(i)), diameter: feet(room / 2) }));
  },
  'round openings close together': (n) => {
    const { at, room } = fields(n);
    return times(n, (i) => ({ shape: 'circle', at: place(at(i)), diameter: feet(room * 0.99) }));
  },
  'openings of 360 sides': (n) => {
    const { at, room } = fields(n);
    return times(n, (i) => ({
      shape: 'regular',
      at: place(at(i)),
      sides: 360,
      side: feet((room * 1.5) / 360),
      turned: `${i} deg`,
    }));
  },
  'corners of an opening': (n) => [
    polygon(around(n, (i) => 20 + noise(i)).map(([x, y]): Flat => [x, y - 30])),
  ],
  'corners of many openings': (n) => {
    const count = Math.min(1000, Math.max(1, Math.floor(n / 20)));
    const { at, room } = fields(count);
    return times(count, (k) => {
      const [x, y] = at(k);
      const ring = around(Math.max(3, Math.floor(n / count)), (i) => room * (0.3 + 0.1 * noise(i)));
      return polygon(ring.map(([px, py]): Flat => [px - 60 + x, py - 60 + y]));
    });
  },
};

/** Corners of a ragged yard and openings in it together. */
export const ragged = (size: number): unknown => polygon(teeth(size, (i) => 61 + 2 * noise(i)));
