/**
 * Outlines as whole numbers of sixteenths of an inch or tenths of a millimeter, near the origin or at survey
 * coordinates: stars, combs, staircases, needles and corridors that wind.
 */
import { starRing } from '../outlines';
import { decimalText, type Site } from './draw';
import { PI, Rational, root, sum, tangent, whole, ZERO } from './rational';

export type Spot = readonly [x: number, y: number];
export type Ring = readonly Spot[];

/** Rings in units of a job, as they lie about their own first corner, and where that is. */
export interface Drawn {
  readonly kind: string;
  readonly ring: Ring;
  /** What one unit is, in meters. */
  readonly unit: Rational;
  readonly metric: boolean;
  readonly origin: readonly [bigint, bigint];
}

const box = (x: number, y: number, l: number, w: number): Ring => [
  [x, y],
  [x + l, y],
  [x + l, y + w],
  [x, y + w],
];

/** Teeth of different depth on a back: hollow all along. */
function comb(site: Site): Ring {
  const teeth = site.between(2, 9);
  const back = site.between(200, 900);
  const spots: Spot[] = [[0, 0]];
  let x = 0;
  for (let i = 0; i < teeth; i += 1) {
    const [wide, gap] = [site.between(100, 600), site.between(60, 500)];
    const deep = back + site.between(200, 2500);
    if (i > 0) spots.push([x, back], [x + gap, back]);
    if (i > 0) x += gap;
    spots.push([x, deep], [x + wide, deep]);
    x += wide;
  }
  spots.push([x, 0]);
  return spots.map(([u, v]): Spot => [u, v]).reverse();
}

function staircase(site: Site): Ring {
  const n = site.between(1, 8);
  const runs = Array.from({ length: n + 1 }, () => site.between(80, 900));
  const rises = Array.from({ length: n + 1 }, () => site.between(80, 900));
  const total = (list: readonly number[], k: number): number => list.slice(0, k).reduce((a, b) => a + b, 0);
  const [l, h] = [total(runs, n + 1), total(rises, n + 1)];
  const spots: Spot[] = [
    [0, 0],
    [l, 0],
  ];
  for (let i = 0; i <= n; i += 1) {
    const y = total(rises, i + 1);
    spots.push([l - total(runs, i), y], [l - total(runs, i + 1), y]);
  }
  return spots.slice(0, -1).concat([[0, h]]);
}

/** A thousand times as long as wide, at a slant. */
function needle(site: Site): Ring {
  const [l, a, b] = [site.between(2000, 40_000), site.between(-3000, 3000), site.between(1, 40)];
  return [
    [0, 0],
    [l, a],
    [site.between(1, l), Math.round(a / 2) + b * 50],
  ];
}

/** A corridor of one width that winds inwards. */
function winding(site: Site): Ring {
  const [w, gap, turns] = [site.between(100, 300), site.between(60, 200), site.between(3, 8)];
  const pitch = w + gap;
  const [outer, inner]: [Spot[], Spot[]] = [[], []];
  let [x, y, dx, dy] = [0, 0, 1, 0];
  let long = pitch * (turns + 2);
  outer.push([0, 0]);
  inner.push([0, w]);
  for (let i = 0; i < turns; i += 1) {
    [x, y] = [x + dx * long, y + dy * long];
    const last = i + 1 === turns;
    outer.push([x, y]);
    // Square corners: the inner side is a width in from both legs.
    const [nx, ny] = [-dy, dx];
    inner.push(last ? [x + nx * w, y + ny * w] : [x + nx * w - dx * w, y + ny * w - dy * w]);
    [dx, dy] = [nx, ny];
    if (i % 2 === 1) long -= pitch;
  }
  return [...outer, ...inner.reverse()];
}

const KINDS: readonly (readonly [string, (site: Site) => Ring])[] = [
  ['star', (site) => starRing(site.dice.next)],
  ['star', (site) => starRing(site.dice.next, site.between(20, 60))],
  ['comb', comb],
  ['staircase', staircase],
  ['needle', needle],
  ['corridor', winding],
  ['box', (site) => box(0, 0, site.between(300, 6000), site.between(300, 6000))],
];

/** Turned by quarters, mirrored, begun anywhere, drawn either way around. */
function posed(site: Site, ring: Ring): Ring {
  const [turn, flip, start] = [site.between(0, 3), site.maybe(), site.between(0, ring.length - 1)];
  const out = ring.map(([x, y]): Spot => {
    const [u, v] = flip ? [-x, y] : [x, y];
    if (turn === 0) return [u, v];
    if (turn === 1) return [-v, u];
    return turn === 2 ? [-u, -v] : [v, -u];
  });
  return [...out.slice(start), ...out.slice(0, start)];
}

export function drawnPlan(site: Site, only?: readonly string[]): Drawn {
  const kinds = only ? KINDS.filter(([name]) => only.includes(name)) : KINDS;
  const [kind, make] = site.dice.pick(kinds);
  const { metric, size } = site;
  const scale = size === 'huge' ? 1000 : size === 'tiny' ? 1 : metric ? 16 : 1;
  const ring = posed(site, make(site)).map(([x, y]): Spot => [x * scale, y * scale]);
  // A state plane: some hundred thousand meters or millions of feet from the origin.
  const far = (n: number): bigint => BigInt(site.between(n / 2, n)) * (metric ? 10_000n : 192n);
  const origin = site.dice.below(3) === 0 ? ([far(2_000_000), far(500_000)] as const) : ([0n, 0n] as const);
  const small = size === 'tiny' ? 16 : 1;
  return {
    kind,
    ring,
    metric,
    unit: metric ? Rational.of(1, 10_000 * small) : Rational.of(127, 80_000 * small),
    origin: [origin[0] * BigInt(small), origin[1] * BigInt(small)],
  };
}

/** So many units as text: meters, or inches. */
function unitsText({ metric, unit }: Drawn, n: bigint): string {
  const si = unit.times(whole(n));
  const value = metric ? si : si.over(Rational.of(127, 5000));
  const scaled = value.times(Rational.of(10n ** 12n));
  return `${decimalText(scaled.top / scaled.below, 12)} ${metric ? 'm' : 'in'}`;
}

export const spotText = (plan: Drawn, [x, y]: Spot): { x: string; y: string } => ({
  x: unitsText(plan, plan.origin[0] + BigInt(Math.round(x))),
  y: unitsText(plan, plan.origin[1] + BigInt(Math.round(y))),
});

export const polygonText = (
  plan: Drawn,
  ring: Ring,
): { shape: 'polygon'; points: { x: string; y: string }[] } => ({
  shape: 'polygon',
  points: ring.map((spot) => spotText(plan, spot)),
});

/** Twice the area of a ring of whole numbers, exactly; above zero whichever way around. */
function doubled(ring: Ring): bigint {
  let total = 0n;
  ring.forEach(([x, y], i) => {
    const [u, v] = ring[(i + 1) % ring.length] as Spot;
    total += BigInt(x) * BigInt(v) - BigInt(u) * BigInt(y);
  });
  return total < 0n ? -total : total;
}

export const areaOf = ({ unit }: Drawn, ring: Ring): Rational =>
  Rational.of(doubled(ring), 2n).times(unit.squared());

export const aroundOf = ({ unit }: Drawn, ring: Ring): Rational =>
  sum(
    ring.map(([x, y], i) => {
      const [u, v] = ring[(i + 1) % ring.length] as Spot;
      return root(whole(BigInt(u - x) ** 2n + BigInt(v - y) ** 2n));
    }),
  ).times(unit);

/** The integral of x over a ring, or of y, in units: exact, and about the first corner of the outline. */
export function moment(ring: Ring, axis: 0 | 1): Rational {
  let total = ZERO;
  let twice = 0n;
  ring.forEach((p, i) => {
    const q = ring[(i + 1) % ring.length] as Spot;
    const cross = BigInt(p[0]) * BigInt(q[1]) - BigInt(q[0]) * BigInt(p[1]);
    twice += cross;
    total = total.plus(whole(BigInt(p[axis] + q[axis]) * cross));
  });
  return (twice < 0n ? total.times(-1) : total).over(6);
}

/** An opening: as input, its ring in units (arcs in chords) and its exact area. */
export interface Hole {
  readonly put: object;
  readonly ring: Ring;
  readonly area: Rational;
  /** Exact whole corners, so that moments are exact too. */
  readonly straight: boolean;
}

const circle = (x: number, y: number, r: number): Ring =>
  Array.from({ length: 96 }, (_, k): Spot => {
    const a = (2 * Math.PI * k) / 96;
    return [x + r * Math.cos(a), y + r * Math.sin(a)];
  });

/** An opening about a spot, no farther from it than `reach`. */
export function holeAt(site: Site, plan: Drawn, [cx, cy]: Spot, reach: number): Hole {
  const [x, y] = [Math.round(cx), Math.round(cy)];
  const half = Math.max(1, Math.floor((reach * (0.3 + 0.4 * site.dice.next())) / Math.SQRT2));
  const square = plan.unit.squared();
  switch (site.dice.below(4)) {
    case 0: {
      const other = Math.max(1, Math.floor(half * (0.2 + 0.8 * site.dice.next())));
      const ring = box(x - half, y - other, 2 * half, 2 * other);
      return {
        put: {
          shape: 'rectangle',
          at: spotText(plan, [x - half, y - other]),
          length: unitsText(plan, BigInt(2 * half)),
          width: unitsText(plan, BigInt(2 * other)),
        },
        ring,
        area: areaOf(plan, ring),
        straight: true,
      };
    }
    case 1:
      return {
        put: { shape: 'circle', at: spotText(plan, [x, y]), diameter: unitsText(plan, BigInt(2 * half)) },
        ring: circle(x, y, half),
        area: PI.times(whole(half).squared()).times(square),
        straight: false,
      };
    case 2: {
      const n = site.between(3, 9);
      const side = Math.max(1, Math.floor(2 * half * Math.sin(Math.PI / n)));
      const r = side / (2 * Math.sin(Math.PI / n));
      return {
        put: {
          shape: 'regular',
          at: spotText(plan, [x, y]),
          sides: n,
          side: unitsText(plan, BigInt(side)),
        },
        ring: Array.from({ length: n }, (_, k): Spot => {
          const a = (2 * Math.PI * k) / n;
          return [x + r * Math.cos(a), y + r * Math.sin(a)];
        }),
        area: whole(side)
          .squared()
          .times(n)
          .over(tangent(PI.over(n)).times(4))
          .times(square),
        straight: false,
      };
    }
    default: {
      const ring: Ring = [
        [x - half, y],
        [x, y - half],
        [x + half, y],
        [x, y + Math.max(1, Math.floor(half / 3))],
      ];
      return { put: polygonText(plan, ring), ring, area: areaOf(plan, ring), straight: true };
    }
  }
}
