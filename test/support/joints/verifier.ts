/**
 * Looks a joint plan over without knowing how it was found.
 *
 * Works in whole 64ths of an inch, in which everything of these yards is a whole number. The slab is cut
 * by every coordinate that occurs into cells; each cell is slab or not by counting crossings; flooding
 * from cell to cell, stopped by joints and edges, must give exactly the panels.
 */
import type { JointLayoutFigures } from '../../../src/index';
import type { Xy } from './yards';

const PER_FOOT = 12 * 64;

interface Segment {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

const units = (q: { toNumber(unit: string): number }): number => Math.round(q.toNumber('in') * 64);

const sorted = (values: readonly number[]): number[] => [...new Set(values)].sort((a, b) => a - b);

function inside(x: number, y: number, rings: readonly (readonly Xy[])[]): boolean {
  let odd = false;
  for (const ring of rings) {
    ring.forEach(([ax, ay], i) => {
      const [bx, by] = ring[(i + 1) % ring.length] as Xy;
      if (ay > y !== by > y && x < ax + ((bx - ax) * (y - ay)) / (by - ay)) odd = !odd;
    });
  }
  return odd;
}

/** The rules that the plan was asked to keep, in feet. */
export interface Asked {
  readonly spacing: number;
  readonly leastSide: number;
  readonly ratio: number;
}

/** A piece of slab between joints, by its box. */
interface Piece extends Segment {
  readonly area: number;
}

class Sheet {
  readonly xs: number[];
  readonly ys: number[];
  readonly slab: boolean[][];

  constructor(
    readonly rings: readonly (readonly Xy[])[],
    readonly joints: readonly Segment[],
  ) {
    this.xs = sorted([...rings.flat().map(([x]) => x), ...joints.flatMap((j) => [j.x0, j.x1])]);
    this.ys = sorted([...rings.flat().map(([, y]) => y), ...joints.flatMap((j) => [j.y0, j.y1])]);
    for (const joint of joints) this.#wall(joint);
    this.slab = this.xs
      .slice(1)
      .map((x, i) =>
        this.ys
          .slice(1)
          .map((y, j) => inside((x + (this.xs[i] as number)) / 2, (y + (this.ys[j] as number)) / 2, rings)),
      );
  }

  isSlab(i: number, j: number): boolean {
    return this.slab[i]?.[j] === true;
  }

  /** True when a joint runs between cell (i, j) and its neighbor to the right, or above. */
  walled(i: number, j: number, right: boolean): boolean {
    return (right ? this.#right : this.#above).has(i * 4096 + j);
  }

  readonly #right = new Set<number>();
  readonly #above = new Set<number>();

  /** Note which sides of which cells a joint runs along. */
  #wall(s: Segment): void {
    const upright = s.x0 === s.x1;
    const place = (upright ? this.xs.indexOf(s.x0) : this.ys.indexOf(s.y0)) - 1;
    const along = upright ? this.ys : this.xs;
    const [from, to] = upright ? [s.y0, s.y1] : [s.x0, s.x1];
    for (let k = along.indexOf(from); (along[k] as number) < to; k += 1) {
      if (upright) this.#right.add(place * 4096 + k);
      else this.#above.add(k * 4096 + place);
    }
  }

  pieces(): Piece[] {
    const seen = this.slab.map((column) => column.map(() => false));
    const found: Piece[] = [];
    for (let i = 0; i < seen.length; i += 1) {
      for (let j = 0; j < (seen[i] as boolean[]).length; j += 1) {
        if (this.isSlab(i, j) && !seen[i]?.[j]) found.push(this.#flood(i, j, seen));
      }
    }
    return found;
  }

  #flood(i: number, j: number, seen: boolean[][]): Piece {
    const piece = { x0: Infinity, y0: Infinity, x1: -Infinity, y1: -Infinity, area: 0 };
    const waiting: Xy[] = [[i, j]];
    (seen[i] as boolean[])[j] = true;
    for (let cell = waiting.pop(); cell; cell = waiting.pop()) {
      const [a, b] = cell;
      const [x0, x1] = [this.xs[a] as number, this.xs[a + 1] as number];
      const [y0, y1] = [this.ys[b] as number, this.ys[b + 1] as number];
      piece.x0 = Math.min(piece.x0, x0);
      piece.x1 = Math.max(piece.x1, x1);
      piece.y0 = Math.min(piece.y0, y0);
      piece.y1 = Math.max(piece.y1, y1);
      piece.area += (x1 - x0) * (y1 - y0);
      for (const [c, d, wall] of [
        [a + 1, b, this.walled(a, b, true)],
        [a - 1, b, a > 0 && this.walled(a - 1, b, true)],
        [a, b + 1, this.walled(a, b, false)],
        [a, b - 1, b > 0 && this.walled(a, b - 1, false)],
      ] as const) {
        if (wall || !this.isSlab(c, d) || seen[c]?.[d]) continue;
        (seen[c] as boolean[])[d] = true;
        waiting.push([c, d]);
      }
    }
    return piece;
  }
}

const onEdge = (x: number, y: number, rings: readonly (readonly Xy[])[]): boolean =>
  rings.some((ring) =>
    ring.some(([ax, ay], i) => {
      const [bx, by] = ring[(i + 1) % ring.length] as Xy;
      return (
        (ax === bx && x === ax && y >= Math.min(ay, by) && y <= Math.max(ay, by)) ||
        (ay === by && y === ay && x >= Math.min(ax, bx) && x <= Math.max(ax, bx))
      );
    }),
  );

/** What is wrong with the joints: outside the slab, or ending within it. */
function jointFaults(sheet: Sheet): string[] {
  return sheet.joints.flatMap((s) => {
    const name = `joint ${s.x0},${s.y0} to ${s.x1},${s.y1}`;
    const found: string[] = [];
    if (!onEdge(s.x0, s.y0, sheet.rings) || !onEdge(s.x1, s.y1, sheet.rings))
      found.push(`${name} ends within the slab`);
    const steps =
      s.x0 === s.x1
        ? sheet.ys.filter((y) => y >= s.y0 && y <= s.y1)
        : sheet.xs.filter((x) => x >= s.x0 && x <= s.x1);
    for (let k = 0; k + 1 < steps.length; k += 1) {
      const v = ((steps[k] as number) + (steps[k + 1] as number)) / 2;
      const [x, y] = s.x0 === s.x1 ? [s.x0, v] : [v, s.y0];
      const both = [-0.25, 0.25].every((e) =>
        s.x0 === s.x1 ? inside(x + e, y, sheet.rings) : inside(x, y + e, sheet.rings),
      );
      if (!both) found.push(`${name} leaves the slab`);
    }
    return found;
  });
}

function pieceFaults(pieces: readonly Piece[], asked: Asked, excused: ReadonlySet<string>): string[] {
  return pieces.flatMap((p) => {
    const [w, h] = [p.x1 - p.x0, p.y1 - p.y0];
    const name = `panel at ${p.x0},${p.y0} of ${w} by ${h}`;
    const found: string[] = [];
    if (w * h !== p.area) found.push(`${name} is no rectangle: a re-entrant corner is not met`);
    if (Math.max(w, h) > asked.spacing * PER_FOOT) found.push(`${name} is over the spacing`);
    const key = (rule: string): string => `${rule} ${p.x0 + p.x1} ${p.y0 + p.y1}`;
    const sliver = Math.min(w, h) < asked.leastSide * PER_FOOT;
    const long = Math.max(w, h) > asked.ratio * Math.min(w, h);
    if (sliver !== excused.has(key('sliver'))) found.push(`${name}: sliver ${sliver}, told otherwise`);
    if (long !== excused.has(key('panel shape'))) found.push(`${name}: long ${long}, told otherwise`);
    return found;
  });
}

function excusedIn(figures: JointLayoutFigures): Set<string> {
  return new Set(
    figures.givesWay.flatMap(({ rule, panel }) => {
      const at = figures.panels.find((p) => panel?.equals(p.number))?.at;
      return at
        ? [`${rule} ${Math.round(at.x.toNumber('in') * 128)} ${Math.round(at.y.toNumber('in') * 128)}`]
        : [];
    }),
  );
}

function tally(pieces: readonly Piece[], figures: JointLayoutFigures): string[] {
  const key = (x: number, y: number, w: number, h: number): string => `${x} ${y} ${w} ${h}`;
  const found = pieces.map((p) => key(p.x0 + p.x1, p.y0 + p.y1, p.x1 - p.x0, p.y1 - p.y0)).sort();
  const told = figures.panels
    .map(({ at, along, across }) =>
      key(
        Math.round(at.x.toNumber('in') * 128),
        Math.round(at.y.toNumber('in') * 128),
        units(along),
        units(across),
      ),
    )
    .sort();
  return found.join('|') === told.join('|')
    ? []
    : [`the panels told are not the pieces found: ${told} | ${found}`];
}

/** Everything that is wrong with a plan; nothing when it is right. Rings in feet. */
export function faultsOf(
  ringsInFeet: readonly (readonly Xy[])[],
  figures: JointLayoutFigures,
  asked: Asked,
): string[] {
  const rings = ringsInFeet.map((ring) => ring.map(([x, y]): Xy => [x * PER_FOOT, y * PER_FOOT]));
  const joints = figures.joints.map(({ from, to }): Segment => {
    const [x0, x1] = [units(from.x), units(to.x)].sort((a, b) => a - b) as [number, number];
    const [y0, y1] = [units(from.y), units(to.y)].sort((a, b) => a - b) as [number, number];
    return { x0, y0, x1, y1 };
  });
  const sheet = new Sheet(rings, joints);
  const pieces = sheet.pieces();
  return [
    ...jointFaults(sheet),
    ...pieceFaults(pieces, asked, excusedIn(figures)),
    ...tally(pieces, figures),
    ...totals(pieces, joints, figures),
  ];
}

function totals(pieces: readonly Piece[], joints: readonly Segment[], figures: JointLayoutFigures): string[] {
  const length = joints.reduce((sum, s) => sum + s.x1 - s.x0 + s.y1 - s.y0, 0);
  const area = pieces.reduce((sum, p) => sum + p.area, 0);
  const found: string[] = [];
  if (length !== units(figures.contraction))
    found.push(`length ${length} is told as ${units(figures.contraction)}`);
  if (area !== Math.round(figures.area.toNumber('in2') * 64 * 64))
    found.push('the area told is not that of the pieces');
  return found;
}
