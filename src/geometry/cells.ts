/**
 * Cells of a triangulation: where four spots or more lie on one circle, as on every rectangle, any
 * triangles between them are as good as any others, and which a program picks hangs on the order of
 * the spots. Here such spots make one cell, which rises or falls from its sides to its middle; the
 * middle lies at the mean of its corners in plan and takes the mean of their heights.
 *
 * On a rectangle that is the mean of its four corners, and on any four spots the mean of both
 * diagonals: with P, Q the triangles beside one diagonal and R, S those beside the other, every corner
 * counts `(T + R) ÷ 6` by both ways. It does not depend on order, turn or mirror.
 */

/** Triangles: the half-edge `e` runs from `corner[e]` to the next corner of its triangle. */
export interface Mesh {
  readonly corner: Uint32Array;
  /** The half-edge on the other side; -1 along the outside. */
  readonly twin: Int32Array;
}

/** Triangles with a middle in each cell. The middles are numbered from the number of spots on. */
export interface CelledMesh extends Mesh {
  /** The corners of the cell around each middle, in order around it. */
  readonly rings: readonly (readonly number[])[];
}

const next = (e: number): number => (e % 3 === 2 ? e - 2 : e + 1);
const before = (e: number): number => (e % 3 === 0 ? e + 2 : e - 1);

/** How far off the circle counts as on it, as a share of the size of the cell. */
const ON_CIRCLE = 1e-9;
/** Triangles thinner than this have no circle worth the name. */
const NO_AREA = 1e-10;

/** True when the corners of both triangles beside an edge lie on one circle. */
function sharesCircle(x: Float64Array, y: Float64Array, { corner, twin }: Mesh, e: number): boolean {
  const at = corner[before(twin[e] as number)] as number;
  const [ox, oy] = [x[at] as number, y[at] as number];
  const from = (k: number): [number, number, number] => {
    const [dx, dy] = [(x[k] as number) - ox, (y[k] as number) - oy];
    return [dx, dy, dx * dx + dy * dy];
  };
  const [ax, ay, aa] = from(corner[e] as number);
  const [bx, by, bb] = from(corner[next(e)] as number);
  const [cx, cy, cc] = from(corner[before(e)] as number);
  const size = Math.max(aa, bb, cc);
  const twice = Math.abs((bx - ax) * (cy - ay) - (by - ay) * (cx - ax));
  if (twice <= NO_AREA * size) return false;
  const circle = aa * (bx * cy - by * cx) - bb * (ax * cy - ay * cx) + cc * (ax * by - ay * bx);
  return Math.abs(circle) <= ON_CIRCLE * twice * size;
}

/** For each half-edge: 1 where it lies within a cell. */
function innerEdges(x: Float64Array, y: Float64Array, mesh: Mesh): Uint8Array {
  const inner = new Uint8Array(mesh.corner.length);
  for (let e = 0; e < inner.length; e += 1) {
    const other = mesh.twin[e] as number;
    if (other <= e || !sharesCircle(x, y, mesh, e)) continue;
    inner[e] = 1;
    inner[other] = 1;
  }
  return inner;
}

/** The half-edges around the cell that one of them belongs to, in order. */
function around(start: number, { twin }: Mesh, inner: Uint8Array): number[] {
  const edges: number[] = [];
  let e = start;
  do {
    edges.push(e);
    e = next(e);
    while (inner[e]) e = next(twin[e] as number);
  } while (e !== start);
  return edges;
}

const touchesInner = (inner: Uint8Array, t: number): boolean =>
  inner[3 * t] === 1 || inner[3 * t + 1] === 1 || inner[3 * t + 2] === 1;

/** Puts the new mesh together, and notes where each old half-edge went. */
class Builder {
  readonly corners: number[] = [];
  readonly rings: number[][] = [];
  readonly place: Int32Array;
  private readonly spokes: [number, number][] = [];

  constructor(
    private readonly mesh: Mesh,
    private readonly spots: number,
  ) {
    this.place = new Int32Array(mesh.corner.length).fill(-1);
  }

  /** A triangle that is no part of a cell. */
  keep(t: number): void {
    for (const e of [3 * t, 3 * t + 1, 3 * t + 2]) {
      this.place[e] = this.corners.length;
      this.corners.push(this.mesh.corner[e] as number);
    }
  }

  /** A cell: one triangle from each of its sides to its middle. */
  fan(edges: readonly number[]): void {
    const { corner } = this.mesh;
    const { corners, spokes, place, rings } = this;
    const middle = this.spots + rings.length;
    const first = corners.length;
    rings.push(edges.map((e) => corner[e] as number));
    edges.forEach((e, i) => {
      place[e] = corners.length;
      spokes.push([corners.length + 1, i + 1 < edges.length ? corners.length + 5 : first + 2]);
      corners.push(corner[e] as number, corner[next(e)] as number, middle);
    });
  }

  done(): CelledMesh {
    const twin = new Int32Array(this.corners.length).fill(-1);
    this.place.forEach((at, e) => {
      const other = this.mesh.twin[e] as number;
      if (at !== -1 && other !== -1) twin[at] = this.place[other] as number;
    });
    for (const [e, f] of this.spokes) {
      twin[e] = f;
      twin[f] = e;
    }
    return { corner: Uint32Array.from(this.corners), twin, rings: this.rings };
  }
}

/**
 * Put a middle into every cell of four spots or more.
 *
 * @param x - positions of the spots, counted from somewhere near
 * @param y - likewise
 * @param mesh - a Delaunay triangulation of them
 */
export function celled(x: Float64Array, y: Float64Array, mesh: Mesh): CelledMesh {
  const inner = innerEdges(x, y, mesh);
  if (!inner.includes(1)) return { ...mesh, rings: [] };
  const builder = new Builder(mesh, x.length);
  for (let e = 0; e < inner.length; e += 1) {
    if (inner[e] || builder.place[e] !== -1) continue;
    const t = (e / 3) | 0;
    if (touchesInner(inner, t)) builder.fan(around(e, mesh, inner));
    else builder.keep(t);
  }
  return builder.done();
}
