/** Volumes by lines drawn across the plan: crowns, pits with sloping sides, and surfaces of probed depths. */
import Delaunator from 'delaunator';
import { excavation, probedVolume, slabVolume } from '../../../src/index';
import { hasFlatCorner } from '../outlines';
import { inset } from '../planar';
import { decimalOf } from './bodies';
import type { Site } from './draw';
import { near } from './planar';
import { areaOf, drawnPlan, polygonText, type Ring, type Spot, spotText } from './plans';
import { type Compared, numberOf } from './trial';

/** How much of a level line lies within rings: lengths at a height, evenly out, oddly in. */
function spansAt(rings: readonly Ring[], q: number, across: 0 | 1): [number, number][] {
  const along = across === 0 ? 1 : 0;
  const cuts = rings
    .flatMap((ring) =>
      ring.flatMap((a, i) => {
        const b = ring[(i + 1) % ring.length] as Spot;
        if (a[across] > q === b[across] > q) return [];
        return [a[along] + ((q - a[across]) * (b[along] - a[along])) / (b[across] - a[across])];
      }),
    )
    .sort((x, y) => x - y);
  return Array.from({ length: cuts.length / 2 }, (_, k): [number, number] => [
    cuts[2 * k] as number,
    cuts[2 * k + 1] as number,
  ]);
}

const widthAt = (rings: readonly Ring[], q: number, across: 0 | 1): number =>
  spansAt(rings, q, across).reduce((all, [a, b]) => all + b - a, 0);

/** Two points for each strip, weighed alike: exact for a cubic (Gauss). */
const GAUSS = 0.5 / Math.sqrt(3);

/** A crown over any straight-sided plan: between two corners the width is even, so that each strip is exact. */
function crown(site: Site): Compared {
  const plan = drawnPlan(site);
  const across = site.dice.below(2) as 0 | 1;
  const qs = plan.ring.map((p) => p[across]);
  const [low, high] = [Math.min(...qs), Math.max(...qs)];
  const [middle, half] = [(low + high) / 2, (high - low) / 2];
  const form = site.dice.pick(['parabolic', 'straight'] as const);
  const [e, c] = [site.length(0.1, 0.15), site.length(0.12, 0.25)];
  const share = (q: number): number => {
    const u = Math.abs(q - middle) / half;
    return form === 'parabolic' ? 1 - u * u : 1 - u;
  };
  const [edges, center] = [e.is.toNumber(), c.is.toNumber()];
  const stops = [...new Set([...qs, middle])].sort((a, b) => a - b);
  let [area, raised] = [0, 0];
  stops.slice(1).forEach((to, i) => {
    const from = stops[i] as number;
    for (const side of [-GAUSS, GAUSS]) {
      const q = (from + to) / 2 + side * (to - from);
      const strip = (widthAt([plan.ring], q, across) * (to - from)) / 2;
      area += strip;
      raised += strip * share(q);
    }
  });
  const unit = plan.unit.toNumber();
  const input = {
    outline: polygonText(plan, plan.ring),
    thickness: {
      kind: 'crown' as const,
      edges: e.put,
      center: c.put,
      form,
      across: 'xy'[across] as 'x' | 'y',
    },
  };
  const attempt = slabVolume.attempt(input);
  if (!attempt.ok)
    return { figures: 0, deviation: 0, input, disagreements: [`refused: ${attempt.error.message}`] };
  const { volume, area: ours } = attempt.result.figures;
  return near(
    input,
    [
      ['area', numberOf(ours), area * unit ** 2],
      ['volume', numberOf(volume), (edges * area + (center - edges) * raised) * unit ** 2],
    ],
    1e-9,
  );
}

/** A pit with sloping sides: the area at many depths by the buffers of jsts, summed by Simpson's rule. */
function sloped(site: Site): Compared {
  const plan = drawnPlan(site, ['star', 'comb', 'staircase', 'box', 'corridor']);
  const unit = plan.unit.toNumber();
  const size = Math.sqrt(areaOf(plan, plan.ring).toNumber()) / unit;
  const deep = Math.max(4, Math.round(size * (0.005 + 0.05 * site.dice.next())));
  const slope = site.toOne(0.25, 1);
  const input = {
    kind: 'pit' as const,
    outline: polygonText(plan, plan.ring),
    depth: `${decimalOf(plan.unit.times(deep))} m`,
    sideSlope: slope.put,
  };
  const run = slope.is.toNumber() * deep;
  const layers = Array.from({ length: 9 }, (_, k) => inset(plan.ring, -(run * k) / 8));
  const sound = layers.every(({ rings, corners }) => rings === 1 && corners === plan.ring.length);
  const none = { figures: 0, deviation: 0, input, disagreements: [] };
  if (hasFlatCorner(plan.ring)) return { ...none, skipped: 'a corner that the library blunts' };
  const attempt = excavation.attempt(input);
  if (!attempt.ok || !sound) {
    if (attempt.ok === sound) return { ...none, skipped: 'both say that sides meet' };
    return {
      ...none,
      disagreements: [attempt.ok ? 'ours is dug; jsts loses a side' : 'refused; jsts spreads it'],
    };
  }
  const weights = [1, 4, 2, 4, 2, 4, 2, 4, 1];
  const mean = layers.reduce((all, { area }, k) => all + area * (weights[k] as number), 0) / 24;
  return near(
    input,
    [['bankVolume', numberOf(attempt.result.figures.bankVolume), mean * deep * unit ** 3]],
    1e-10,
  );
}

type Depth = readonly [x: number, y: number, z: number];

/** Where a level line passes a triangle: from, to, and the depths there. */
function passes(triangle: readonly Depth[], y: number): [number, number, number, number] | undefined {
  const cuts = triangle.flatMap((a, i) => {
    const b = triangle[(i + 1) % 3] as Depth;
    if (a[1] > y === b[1] > y) return [];
    const t = (y - a[1]) / (b[1] - a[1]);
    return [[a[0] + t * (b[0] - a[0]), a[2] + t * (b[2] - a[2])] as const];
  });
  const [p, q] = cuts;
  if (!p || !q) return undefined;
  return p[0] < q[0] ? [p[0], q[0], p[1], q[1]] : [q[0], p[0], q[1], p[1]];
}

const LINES = 300;

/** Ends of a ring along each axis. */
const extent = (ring: Ring, k: 0 | 1): [number, number] => {
  const list = ring.map((p) => p[k]);
  return [Math.min(...list), Math.max(...list)];
};

/** Up to nine places well inside the ring, with depths. */
function probesIn(site: Site, ring: Ring): Depth[] {
  const [[x0, x1], [y0, y1]] = [extent(ring, 0), extent(ring, 1)];
  const probes: Depth[] = [];
  for (let k = 0; k < 400 && probes.length < 9; k += 1) {
    const [x, y] = [
      Math.round(x0 + site.dice.next() * (x1 - x0)),
      Math.round(y0 + site.dice.next() * (y1 - y0)),
    ];
    const inside = spansAt([ring], y, 1).some(([a, b]) => x > a + 1 && x < b - 1);
    if (inside) probes.push([x, y, 80 + site.between(0, 120)]);
  }
  return probes;
}

/** Area times depth of one piece of a level line. */
function stretch(
  [a, b, za, zb]: readonly [number, number, number, number],
  [from, to]: readonly [number, number],
): number {
  const [p, q] = [Math.max(a, from), Math.min(b, to)];
  return q <= p ? 0 : (q - p) * (za + (((p + q) / 2 - a) * (zb - za)) / (b - a));
}

/** The volume under triangles within a ring, by level lines. */
function byLines(ring: Ring, spots: readonly Depth[], triangles: Uint32Array): number {
  const [y0, y1] = extent(ring, 1);
  let volume = 0;
  for (let k = 0; k < LINES; k += 1) {
    const y = y0 + ((k + 0.5) / LINES) * (y1 - y0);
    const spans = spansAt([ring], y, 1);
    for (let t = 0; t < triangles.length; t += 3) {
      const triangle = [0, 1, 2].map((j) => spots[triangles[t + j] as number] as Depth);
      const cut = passes(triangle, y);
      if (cut) volume += spans.reduce((all, span) => all + stretch(cut, span), 0);
    }
  }
  return (volume * (y1 - y0)) / LINES;
}

/** Depths here and there: triangles by delaunator, summed along level lines within the outline. */
function probed(site: Site): Compared {
  const plan = drawnPlan(site, ['star', 'staircase', 'comb', 'box']);
  const { ring } = plan;
  const probes = probesIn(site, ring);
  const input = {
    outline: polygonText(plan, ring),
    probes: probes.map(([x, y, z]) => ({ ...spotText(plan, [x, y]), depth: `${z} mm` })),
  };
  const none = { figures: 0, deviation: 0, input, disagreements: [] };
  if (probes.length < 4) return { ...none, skipped: 'too narrow for probes' };
  const corners = ring.map(([x, y]): Depth => {
    const far = probes.map(([u, v]) => (u - x) ** 2 + (v - y) ** 2);
    const least = Math.min(...far);
    const near_ = probes.filter((_, i) => far[i] === least);
    return [x, y, near_.reduce((a, p) => a + p[2], 0) / near_.length];
  });
  const spots = [...probes, ...corners];
  const { triangles } = new Delaunator(Float64Array.from(spots.flatMap(([x, y]) => [x, y])));
  if (fourOnACircle(spots, triangles))
    return { ...none, skipped: 'four on a circle: which way they are joined is open' };
  const attempt = probedVolume.attempt(input);
  if (!attempt.ok) return { ...none, disagreements: [`refused: ${attempt.error.message}`] };
  const unit = plan.unit.toNumber();
  const theirs = (byLines(ring, spots, triangles) * unit ** 2) / 1000;
  return near(input, [['volume', numberOf(attempt.result.figures.volume), theirs]], 0.01);
}

/** True where a corner of one triangle lies on the circle of its neighbor, within what binary numbers know. */
export function fourOnACircle(spots: readonly Depth[], triangles: Uint32Array): boolean {
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [0, 1, 2].map((j) => spots[triangles[t + j] as number] as Depth) as [
      Depth,
      Depth,
      Depth,
    ];
    const [bx, by, cx, cy] = [b[0] - a[0], b[1] - a[1], c[0] - a[0], c[1] - a[1]];
    const d = 2 * (bx * cy - by * cx);
    const u = (cy * (bx * bx + by * by) - by * (cx * cx + cy * cy)) / d;
    const v = (bx * (cx * cx + cy * cy) - cx * (bx * bx + by * by)) / d;
    const r = Math.hypot(u, v);
    const on = spots.filter((p) => Math.abs(Math.hypot(p[0] - a[0] - u, p[1] - a[1] - v) / r - 1) < 1e-9);
    if (on.length > 3) return true;
  }
  return false;
}

export const SCANS: readonly ((site: Site) => Compared)[] = [crown, sloped, probed];
