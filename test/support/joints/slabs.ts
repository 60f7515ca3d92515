/** Random slabs of every kind: straight, slanted and curved, with openings, columns and pools. */
import type { JointLayoutInput } from '../../../src/index';
import type { Slab } from './faces';
import { between, inputOf, ringsOf, type Xy, yard } from './yards';

type Next = () => number;

/** A slab with its input, and its edges as they are drawn. */
export interface Drawn extends Slab {
  readonly kind: string;
  readonly input: Pick<JointLayoutInput, 'outline' | 'openings' | 'columns'>;
}

const ft = (n: number): string => `${n} ft`;
const tenth = (n: number): number => Math.round(n * 100) / 100;

const point = ([x, y]: Xy): { x: string; y: string } => ({ x: ft(x), y: ft(y) });

const polygon = (ring: readonly Xy[]): { shape: 'polygon'; points: { x: string; y: string }[] } => ({
  shape: 'polygon',
  points: ring.map(point),
});

/** Degrees of the turn at each corner of a ring, to the left if positive. */
const turnsOf = (ring: readonly Xy[]): number[] =>
  ring.map(([x, y], i) => {
    const [ax, ay] = ring[(i + ring.length - 1) % ring.length] as Xy;
    const [bx, by] = ring[(i + 1) % ring.length] as Xy;
    const turn = Math.atan2(by - y, bx - x) - Math.atan2(y - ay, x - ax);
    return ((((turn + Math.PI) % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI)) * (180 / Math.PI) - 180;
  });

/** Inside corners of an counterclockwise outline, and of openings larger than the least side. */
function insideOf([outer, ...holes]: readonly (readonly Xy[])[], least: number): Xy[] {
  const of = (ring: readonly Xy[], sign: 1 | -1): Xy[] => {
    const turns = turnsOf(ring);
    return ring.filter((_, i) => sign * (turns[i] as number) > 15.1);
  };
  const large = holes.filter((ring) => {
    const size = (k: 0 | 1): number =>
      Math.max(...ring.map((p) => p[k])) - Math.min(...ring.map((p) => p[k]));
    return Math.max(size(0), size(1)) > least;
  });
  return [...of(outer as readonly Xy[], -1), ...large.flatMap((ring) => of(ring, 1))];
}

/** Points on an arc, in chords of two degrees, from one angle to another. */
function arc(cx: number, cy: number, r: number, from: number, to: number): Xy[] {
  const steps = Math.max(2, Math.ceil(Math.abs(to - from) / (Math.PI / 90)));
  return Array.from({ length: steps + 1 }, (_, k): Xy => {
    const a = from + ((to - from) * k) / steps;
    return [cx + r * Math.cos(a), cy + r * Math.sin(a)];
  });
}

const whole = (cx: number, cy: number, r: number): Xy[] => arc(cx, cy, r, 0, 2 * Math.PI).slice(0, -1);

const regular = (cx: number, cy: number, r: number, n: number, turn: number): Xy[] =>
  Array.from({ length: n }, (_, k): Xy => {
    const a = turn + (2 * Math.PI * k) / n;
    return [tenth(cx + r * Math.cos(a)), tenth(cy + r * Math.sin(a))];
  });

const LEAST = 2;

const straightSided = (
  kind: string,
  rings: readonly (readonly Xy[])[],
  columns: readonly number[] = [],
): Drawn => ({
  kind,
  rings,
  inside: insideOf(
    rings.filter((_, i) => !columns.includes(i)),
    LEAST,
  ),
  input: {
    outline: polygon(rings[0] as readonly Xy[]),
    ...(rings.length > 1 ? { openings: rings.slice(1).map(polygon) } : {}),
    ...(columns.length > 0 ? { columns } : {}),
  },
});

const box = (x: number, y: number, l: number, w: number): Xy[] => [
  [x, y],
  [x + l, y],
  [x + l, y + w],
  [x, y + w],
];

function slantedRing(next: Next): Xy[] {
  const [l, w] = [between(next, 14, 40), between(next, 12, 30)];
  const off = (): number => tenth(next() * 6 - 3);
  const ring: Xy[] = [
    [0, 0],
    [l, off()],
    [l + off(), w + off()],
    [off(), w],
  ];
  return next() < 0.5
    ? ring
    : [ring[0] as Xy, ring[1] as Xy, [tenth(l * 0.6), tenth(w / 2 + off())], ring[2] as Xy, ring[3] as Xy];
}

function taper(next: Next): Drawn {
  const [a, b, h] = [between(next, 10, 40), between(next, 5, 40), between(next, 9, 33)];
  const shift = between(next, -5, 5);
  const ring: Xy[] = [
    [0, 0],
    [a, 0],
    [shift + b, h],
    [shift, h],
  ];
  return straightSided('taper', [ring]);
}

function pool(next: Next): Drawn {
  const [l, w] = [between(next, 26, 44), between(next, 24, 36)];
  const n = between(next, 4, 12);
  const r = between(next, 5, Math.floor(Math.min(l, w) / 2) - 4);
  return straightSided('pool in a rectangle', [box(0, 0, l, w), regular(l / 2, w / 2, r, n, next() * 2)]);
}

function pooledDeck(next: Next): Drawn {
  const n = between(next, 5, 12);
  const r = between(next, 12, 22);
  return straightSided('deck like its pool', [
    regular(0, 0, r, n, 0),
    regular(0, 0, r - between(next, 4, 7), n, 0),
  ]);
}

function columned(next: Next): Drawn {
  const [l, w] = [between(next, 28, 44), between(next, 24, 36)];
  const turned = regular(tenth(l * 0.3), tenth(w / 2), between(next, 3, 5), 4, next());
  const column = box(tenth(l * 0.7), tenth(w * 0.45), 1, 1);
  return straightSided('turned pit and a column', [box(0, 0, l, w), turned, column], [2]);
}

function bentWalk(next: Next): Drawn {
  const [w, a, b] = [between(next, 3, 6), between(next, 14, 30), between(next, 14, 30)];
  const t = (between(next, 20, 100) * Math.PI) / 180;
  const [c, s] = [Math.cos(t), Math.sin(t)];
  const k = w * Math.tan(t / 2);
  const ring = [
    [0, 0],
    [a, 0],
    [a + b * c, b * s],
    [a + b * c - w * s, b * s + w * c],
    [a - k, w],
    [0, w],
  ].map(([x, y]): Xy => [tenth(x as number), tenth(y as number)]);
  return straightSided('walk with a bend', [ring]);
}

function curvedWalk(next: Next): Drawn {
  const r = between(next, 10, 60);
  const w = between(next, 3, Math.min(9, r - 5));
  const t = tenth(0.4 + next());
  const on = (radius: number, angle: number): Xy => [
    tenth(radius * Math.cos(angle)),
    tenth(radius * Math.sin(angle)),
  ];
  const [a, b, c, d] = [on(r, 0), on(r, t), on(r - w, t), on(r - w, 0)] as [Xy, Xy, Xy, Xy];
  const angle = (p: Xy): number => Math.atan2(p[1], p[0]);
  return {
    kind: 'curved walk',
    // The ends are rounded to hundredths, so the arcs are off the origin by as little.
    rings: [[...arc(0, 0, r, angle(a), angle(b)), ...arc(0, 0, r - w, angle(c), angle(d))]],
    inside: [],
    input: {
      outline: {
        shape: 'curved',
        points: [{ ...point(a), radius: ft(r) }, point(b), { ...point(c), radius: ft(w - r) }, point(d)],
      },
    },
  };
}

function sector(next: Next): Drawn {
  const r = between(next, 8, 60);
  const q = next() < 0.7 ? Math.max(1, r - between(next, 3, 14)) : 0;
  const degrees = between(next, 40, 300);
  const turn = (degrees * Math.PI) / 180;
  const inner: Xy[] = q > 0 ? arc(0, 0, q, turn, 0) : [[0, 0]];
  return {
    kind: 'sector',
    rings: [[...arc(0, 0, r, 0, turn), ...inner]],
    inside: q === 0 && degrees > 196 ? [[0, 0]] : [],
    input: {
      outline: {
        shape: 'sector',
        radius: ft(r),
        angle: `${degrees} deg`,
        ...(q > 0 ? { innerRadius: ft(q) } : {}),
      },
    },
  };
}

function ring(next: Next): Drawn {
  const r = between(next, 8, 26);
  const q = between(next, 2, r - 4);
  return {
    kind: 'ring',
    rings: [whole(0, 0, r), whole(0, 0, q)],
    inside: [],
    input: { outline: { shape: 'ring', outerDiameter: ft(2 * r), innerDiameter: ft(2 * q) } },
  };
}

function pittedCircle(next: Next): Drawn {
  const r = between(next, 12, 24);
  const [l, w] = [between(next, 3, r - 5), between(next, 3, r - 5)];
  const rings = [whole(0, 0, r), box(-l / 2, -w / 2, l, w)];
  return {
    kind: 'pit in a circle',
    rings,
    inside: insideOf([box(-r, -r, 2 * r, 2 * r), rings[1] as Xy[]], LEAST),
    input: {
      outline: { shape: 'circle', diameter: ft(2 * r) },
      openings: [{ shape: 'rectangle', at: point([-l / 2, -w / 2]), length: ft(l), width: ft(w) }],
    },
  };
}

function drained(next: Next): Drawn {
  const outer = slantedRing(next);
  const [cx, cy] = [tenth((outer[1] as Xy)[0] * 0.35), tenth((outer.at(-1) as Xy)[1] * 0.5)];
  return {
    kind: 'slanted with a drain',
    rings: [outer, whole(cx, cy, 0.5)],
    inside: insideOf([outer], LEAST),
    input: {
      outline: polygon(outer),
      openings: [{ shape: 'circle', at: point([cx, cy]), diameter: '1 ft' }],
    },
  };
}

function square(next: Next): Drawn {
  const slab = yard(next, between(next, 1, 4), 14, 22, 0.5);
  const rings = ringsOf(slab);
  return { kind: 'yard', rings, inside: insideOf(rings, LEAST), input: inputOf(slab) as Drawn['input'] };
}

const KINDS: readonly ((next: Next) => Drawn)[] = [
  square,
  (next) => straightSided('slanted', [slantedRing(next)]),
  taper,
  pool,
  pooledDeck,
  columned,
  bentWalk,
  curvedWalk,
  sector,
  ring,
  pittedCircle,
  drained,
];

/** The i-th slab of a stream, kind after kind. */
export const slabOf = (next: Next, i: number): Drawn =>
  (KINDS[i % KINDS.length] as (next: Next) => Drawn)(next);
