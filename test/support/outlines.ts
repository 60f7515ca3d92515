/** Random outlines for properties: seeded, simple, with re-entrant corners, in sixteenths of an inch. */

/** A small seeded generator (mulberry32), so that a failing outline can be made again. */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

export type WholeRing = readonly (readonly [number, number])[];

/** Corners around a point by angle, near and far: star-shaped, mostly not convex. */
export function starRing(random: () => number, corners = 3 + Math.floor(random() * 12)): WholeRing {
  const angles = Array.from(
    { length: corners },
    (_, i) => ((i + 0.1 + 0.8 * random()) / corners) * 2 * Math.PI,
  );
  const [cx, cy] = [Math.floor(random() * 20_000) - 10_000, Math.floor(random() * 20_000) - 10_000];
  return angles.map((a) => {
    const r = 300 + random() * 4000;
    return [cx + Math.round(r * Math.cos(a)), cy + Math.round(r * Math.sin(a))] as const;
  });
}

/** An input polygon from whole sixteenths of an inch. */
export const polygonInput = (ring: WholeRing) => ({
  shape: 'polygon' as const,
  points: ring.map(([x, y]) => ({ x: { value: x / 16, unit: 'in' }, y: { value: y / 16, unit: 'in' } })),
});

/** True when some corner turns by less than 1/500: offsetting libraries blunt such corners on purpose. */
export function hasFlatCorner(ring: WholeRing): boolean {
  return ring.some(([x, y], i) => {
    const [a, c] = [ring[(i + ring.length - 1) % ring.length], ring[(i + 1) % ring.length]] as [
      readonly [number, number],
      readonly [number, number],
    ];
    const turn = Math.atan2(c[1] - y, c[0] - x) - Math.atan2(y - a[1], x - a[0]);
    return Math.abs(Math.sin(turn)) < 0.002;
  });
}
