/**
 * What is left of a convex ring beside openings that do not meet each other.
 *
 * The edge of each opening is cut to the ring: runs through its inside, from a place on its edge to another.
 * A piece is walked around with the slab to the left: along the edge of the ring to the next run, back along
 * that, and so on. Places are told apart in binary numbers; corners stay as they are.
 */
import { type Corner, insideRing } from '../../geometry/polygon';
import { insidePlanRing } from '../../geometry/tin';
import { Decimal } from '../../quantity/decimal';
import { type Spot, spot } from './orthogonal';

/** An opening, counterclockwise: its corners, and the same in binary numbers. */
export interface Opening {
  readonly ring: readonly Corner[];
  readonly spots: readonly Spot[];
}

/** What is nearer than this is in one place, in meters. */
const ON = 1e-9;

/** So far off the edge it is looked at whether there is slab. */
const BESIDE = 1e-6;

/** A side of a ring with its length. */
interface Side {
  readonly a: Spot;
  readonly ux: number;
  readonly uy: number;
  readonly long: number;
}

const sidesOf = (ring: readonly Spot[]): Side[] =>
  ring.map((a, i) => {
    const b = ring[(i + 1) % ring.length] as Spot;
    const long = Math.hypot(b.x - a.x, b.y - a.y);
    return { a, ux: (b.x - a.x) / long, uy: (b.y - a.y) / long, long };
  });

/** How far a point lies to the left of a side. */
const depth = ({ a, ux, uy }: Side, p: Spot): number => ux * (p.y - a.y) - uy * (p.x - a.x);

/** How far along the edge of a ring a point lies, in sides and parts of them; `undefined` off it. */
function placeOn(p: Spot, sides: readonly Side[]): number | undefined {
  for (const [i, side] of sides.entries()) {
    const along = (p.x - side.a.x) * side.ux + (p.y - side.a.y) * side.uy;
    // The end of a side is the start of the next.
    if (Math.abs(depth(side, p)) <= ON && along >= -ON && along < side.long - ON)
      return i + Math.max(0, along / side.long);
  }
  return undefined;
}

/** An end of a part of a side: on the edge of the ring, or a corner within. */
interface End {
  readonly at: Corner;
  readonly place: number | undefined;
}

interface Stretch {
  readonly from: End;
  readonly to: End;
}

/** From where to where a line from a to b runs inside, as parts of it; `undefined` where it does not. */
function within(a: Spot, b: Spot, sides: readonly Side[]): [number, number] | undefined {
  let [from, to] = [0, 1];
  for (const side of sides) {
    const [da, db] = [depth(side, a), depth(side, b)];
    if (da <= ON && db <= ON) return undefined;
    if (da < -ON) from = Math.max(from, da / (da - db));
    if (db < -ON) to = Math.min(to, da / (da - db));
  }
  return (to - from) * Math.hypot(b.x - a.x, b.y - a.y) > ON ? [from, to] : undefined;
}

/** What a ring is cut with: itself, its sides, and the way to a point on its edge. */
class Cell {
  readonly sides: readonly Side[];

  constructor(readonly ring: readonly Corner[]) {
    this.sides = sidesOf(ring.map(spot));
  }

  private end(corner: Corner, p: Spot, cut: boolean): End {
    const place = placeOn(p, this.sides);
    return { at: cut && place !== undefined ? this.point(place) : corner, place };
  }

  /** The part of a side of an opening that lies inside. */
  stretch({ ring, spots }: Opening, k: number): Stretch | undefined {
    const j = (k + 1) % ring.length;
    const [a, b] = [spots[k] as Spot, spots[j] as Spot];
    const parts = within(a, b, this.sides);
    if (!parts) return undefined;
    const at = (t: number): Spot => ({ x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t });
    const [from, to] = parts;
    return {
      from: this.end(ring[k] as Corner, at(from), from > 0),
      to: this.end(ring[j] as Corner, at(to), to < 1),
    };
  }

  /** The point at a place on the edge, exact where the side runs along x or y. */
  point(place: number): Corner {
    const n = this.ring.length;
    const i = Math.floor(place);
    const [a, b] = [this.ring[i % n] as Corner, this.ring[(i + 1) % n] as Corner];
    const part = new Decimal(place - i);
    const at = (from: Decimal, to: Decimal): Decimal => from.plus(to.minus(from).times(part));
    return { x: at(a.x, b.x), y: at(a.y, b.y) };
  }

  /** The corners from a place on the edge over so many sides. */
  corners(from: number, far: number): Corner[] {
    const between: Corner[] = [];
    for (let k = Math.floor(from) + 1; k < from + far - ON; k += 1)
      between.push(this.ring[k % this.ring.length] as Corner);
    return between;
  }

  /** A point just inside the edge at a place. */
  beside(place: number): Spot {
    const side = this.sides[Math.floor(place) % this.sides.length] as Side;
    const along = (place - Math.floor(place)) * side.long;
    return {
      x: side.a.x + side.ux * along - side.uy * BESIDE,
      y: side.a.y + side.uy * along + side.ux * BESIDE,
    };
  }
}

/** A run of the edge of an opening through the inside. */
interface Run {
  readonly from: number;
  readonly to: number;
  readonly corners: readonly Corner[];
}

/** The runs of an opening; none where it lies wholly inside, or does not reach in. */
function runsOf(opening: Opening, cell: Cell): { runs: Run[]; inside: boolean } | undefined {
  const stretches = opening.ring.map((_, k) => cell.stretch(opening, k));
  const start = stretches.findIndex((s) => s?.from.place !== undefined);
  if (start < 0) return { runs: [], inside: stretches.some((s) => s !== undefined) };
  const runs: Run[] = [];
  let open: { from: number; corners: Corner[] } | undefined;
  for (let k = 0; k < stretches.length; k += 1) {
    const s = stretches[(start + k) % stretches.length];
    if (!s) continue;
    if (s.from.place !== undefined) open = { from: s.from.place, corners: [s.from.at] };
    if (!open) return undefined;
    open.corners.push(s.to.at);
    if (s.to.place === undefined) continue;
    runs.push({ ...open, to: s.to.place });
    open = undefined;
  }
  return open ? undefined : { runs, inside: false };
}

/** A place on the edge where runs begin or end, and how the edge goes on from it. */
interface Stop {
  readonly place: number;
  /** How far the next stop is, in sides. */
  far: number;
  /** There is slab along the edge to the next stop. */
  slab: boolean;
  readonly arriving: Run[];
}

/** All stops in order along the edge. */
function stopsOf(runs: readonly Run[], cell: Cell, openings: readonly Opening[]): Stop[] {
  const n = cell.ring.length;
  const stops: Stop[] = [];
  const places = runs.flatMap(({ from, to }) => [from, to]).sort((a, b) => a - b);
  for (const place of places) {
    if (place - (stops.at(-1)?.place ?? -1) > ON) stops.push({ place, far: n, slab: false, arriving: [] });
  }
  stops.forEach((stop, i) => {
    const next = stops[(i + 1) % stops.length] as Stop;
    if (stops.length > 1) stop.far = (next.place - stop.place + n) % n;
    // Halfway to the next stop or corner.
    const half = Math.min(stop.far, Math.floor(stop.place) + 1 - stop.place) / 2;
    const p = cell.beside(stop.place + half);
    stop.slab = !openings.some(({ spots }) => insidePlanRing(p.x, p.y, spots));
  });
  return stops;
}

const stopAt = (stops: readonly Stop[], place: number): number =>
  stops.findIndex((stop) => Math.abs(stop.place - place) <= 2 * ON);

/** From the end of a run along the edge to the next one, with the corners on the way. */
function onwards(
  stops: readonly Stop[],
  from: number,
  cell: Cell,
): { run: Run; corners: Corner[] } | undefined {
  let i = stopAt(stops, from);
  const corners: Corner[] = [];
  for (let k = 0; k <= stops.length; k += 1) {
    const stop = stops[i];
    if (!stop) return undefined;
    const here = stop.slab ? undefined : stop;
    if (!here) {
      corners.push(...cell.corners(stop.place, stop.far));
      i = (i + 1) % stops.length;
    }
    const { arriving } = here ?? (stops[i] as Stop);
    if (arriving.length === 1) return { run: arriving[0] as Run, corners };
    if (here || arriving.length > 1) return undefined;
  }
  return undefined;
}

/** The rings of the pieces between runs. */
function walked(runs: readonly Run[], stops: readonly Stop[], cell: Cell): Corner[][] | undefined {
  const left = new Set(runs);
  const pieces: Corner[][] = [];
  for (const first of runs) {
    if (!left.has(first)) continue;
    const piece: Corner[] = [];
    let run = first;
    do {
      if (!left.delete(run)) return undefined;
      piece.push(...[...run.corners].reverse());
      const next = onwards(stops, run.from, cell);
      if (!next) return undefined;
      piece.push(...next.corners);
      run = next.run;
    } while (run !== first);
    pieces.push(piece);
  }
  return pieces;
}

/**
 * The pieces of a convex ring beside openings, all counterclockwise, each with the openings inside it; `undefined`
 * where corners and edges touch in such a way that it is not certain.
 */
export function piecesBeside(
  ring: readonly Corner[],
  openings: readonly Opening[],
): Corner[][][] | undefined {
  const cell = new Cell(ring);
  const cut = openings.map((opening) => runsOf(opening, cell));
  if (cut.some((c) => c === undefined)) return undefined;
  const runs = cut.flatMap((c) => c?.runs ?? []);
  const stops = stopsOf(runs, cell, openings);
  for (const run of runs) stops[stopAt(stops, run.to)]?.arriving.push(run);
  const pieces = runs.length > 0 ? walked(runs, stops, cell) : [[...ring]];
  const inner = openings.filter((_, i) => cut[i]?.inside).map((opening) => [...opening.ring]);
  return pieces?.map((piece) => [
    piece,
    ...inner.filter((hole) => pieces.length === 1 || insideRing(hole[0] as Corner, piece)),
  ]);
}
