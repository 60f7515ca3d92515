/** Random outlines with openings, and plain geometry to check layouts with: nothing of the library's own. */

export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** A repeatable source of numbers from 0 to 1 (a linear congruential generator). */
export function randoms(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 1_103_515_245 + 12_345) % 2_147_483_648;
    return state / 2_147_483_648;
  };
}

export interface Plan {
  readonly outer: readonly Spot[];
  readonly openings: readonly (readonly Spot[])[];
}

const rounded = (n: number): number => Math.round(n * 1000) / 1000;

/** Corners around a center at falling angles and random distances: simple, and often far from convex. */
function star(random: () => number, x: number, y: number, size: number, corners: number): Spot[] {
  const turn = random() * Math.PI * 2;
  return Array.from({ length: corners }, (_, i) => {
    const angle = turn + ((i + 0.6 * random()) / corners) * Math.PI * 2;
    const r = size * (0.35 + 0.65 * random());
    return { x: rounded(x + r * Math.cos(angle)), y: rounded(y + r * Math.sin(angle)) };
  });
}

/** A right-angled outline: a staircase cut from a rectangle. */
function stairs(random: () => number, size: number): Spot[] {
  const steps = 1 + Math.floor(random() * 4);
  const [w, h] = [size * (0.8 + random()), size * (0.8 + random())];
  const spots: Spot[] = [
    { x: 0, y: 0 },
    { x: rounded(w), y: 0 },
  ];
  for (let i = 1; i <= steps; i += 1) {
    const [x, y] = [rounded(w * (1 - (i - 1) / (steps + 1))), rounded((h * i) / (steps + 1))];
    spots.push({ x, y }, { x: rounded(w * (1 - i / (steps + 1))), y });
  }
  spots.push({ x: rounded(w / (steps + 1)), y: rounded(h) }, { x: 0, y: rounded(h) });
  return spots;
}

export function randomPlan(random: () => number): Plan {
  const size = 3 + random() * 9;
  if (random() < 0.3) return { outer: stairs(random, size), openings: [] };
  const outer = star(random, 0, 0, size, 3 + Math.floor(random() * 9));
  const clear = Math.min(...outer.map((_, i) => distanceToSide({ x: 0, y: 0 }, outer, i)));
  const room = inside({ x: 0, y: 0 }, outer) ? clear : 0;
  if (room < 0.8 || random() < 0.5) return { outer, openings: [] };
  return { outer, openings: [star(random, 0, 0, room * 0.7, 3 + Math.floor(random() * 5))] };
}

export function distanceToSegment(p: Spot, a: Spot, b: Spot): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const square = dx * dx + dy * dy;
  const t = square === 0 ? 0 : Math.max(0, Math.min(1, ((p.x - a.x) * dx + (p.y - a.y) * dy) / square));
  return Math.hypot(p.x - a.x - t * dx, p.y - a.y - t * dy);
}

function distanceToSide(p: Spot, ring: readonly Spot[], i: number): number {
  return distanceToSegment(p, ring[i] as Spot, ring[(i + 1) % ring.length] as Spot);
}

export function inside(p: Spot, ring: readonly Spot[]): boolean {
  let odd = false;
  ring.forEach((a, i) => {
    const b = ring[(i + 1) % ring.length] as Spot;
    if (a.y > p.y !== b.y > p.y && p.x < a.x + ((p.y - a.y) * (b.x - a.x)) / (b.y - a.y)) odd = !odd;
  });
  return odd;
}

/** How far inside the slab a place is; below zero outside it. */
export function depthIn({ outer, openings }: Plan, p: Spot): number {
  const rings = [outer, ...openings];
  const distance = Math.min(...rings.flatMap((ring) => ring.map((_, i) => distanceToSide(p, ring, i))));
  const within = inside(p, outer) && !openings.some((ring) => inside(p, ring));
  return within ? distance : -distance;
}

/** The ring as the input of a polygon outline. */
export const polygonOf = (
  ring: readonly Spot[],
): { shape: 'polygon'; points: { x: string; y: string }[] } => ({
  shape: 'polygon',
  points: ring.map(({ x, y }) => ({ x: `${x} m`, y: `${y} m` })),
});

export const boxOf = (ring: readonly Spot[]): [x0: number, x1: number, y0: number, y1: number] => [
  Math.min(...ring.map((p) => p.x)),
  Math.max(...ring.map((p) => p.x)),
  Math.min(...ring.map((p) => p.y)),
  Math.max(...ring.map((p) => p.y)),
];
