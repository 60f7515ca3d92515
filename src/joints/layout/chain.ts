/** A run of sides one after the other: places on it are told by the length from its beginning. */
import type { Corner } from '../../geometry/polygon';
import type { Spot } from './orthogonal';
import { exactOn, hitsOn, nearestOn, type Piece, pointOn, wayOn } from './sides';

/** A place on a chain, and how far from what was asked for. */
export interface OnChain {
  readonly s: number;
  readonly far: number;
}

const apart = (a: Spot, b: Spot): number => Math.hypot(a.x - b.x, a.y - b.y);

/** A run of sides; a closed one goes on from its end at its beginning. */
export class Chain {
  readonly length: number;
  /** Where each side begins, and the end. */
  readonly starts: readonly number[];
  private readonly ownExact = new Map<number, Corner>();

  constructor(
    readonly pieces: readonly Piece[],
    readonly closed = false,
  ) {
    const starts = [0];
    for (const piece of pieces) starts.push((starts.at(-1) as number) + piece.length);
    this.starts = starts;
    this.length = starts.at(-1) as number;
  }

  /** The length from the beginning, once around at most. */
  wrapped(s: number): number {
    return this.closed ? ((s % this.length) + this.length) % this.length : s;
  }

  private place(at: number): { piece: Piece; part: number } {
    const s = this.wrapped(at);
    let [lo, hi] = [0, this.pieces.length - 1];
    while (lo < hi) {
      const mid = (lo + hi + 1) >> 1;
      if ((this.starts[mid] as number) <= s) lo = mid;
      else hi = mid - 1;
    }
    const piece = this.pieces[lo] as Piece;
    return { piece, part: Math.min(1, Math.max(0, (s - (this.starts[lo] as number)) / piece.length)) };
  }

  /** The side that a place is on. */
  pieceAt(s: number): Piece {
    return this.place(s).piece;
  }

  at(s: number): Spot {
    const { piece, part } = this.place(s);
    return pointOn(piece, part);
  }

  way(s: number): Spot {
    const { piece, part } = this.place(s);
    return wayOn(piece, part);
  }

  /** The point in exact decimals; reckoned once, since the panels on both sides of a cut ask for it. */
  exact(s: number): Corner {
    const known = this.ownExact.get(s);
    if (known) return known;
    const { piece, part } = this.place(s);
    const corner = exactOn(piece, part);
    this.ownExact.set(s, corner);
    return corner;
  }

  /** The place nearest to a point. */
  nearest(p: Spot): OnChain {
    let best: OnChain = { s: 0, far: Number.POSITIVE_INFINITY };
    this.pieces.forEach((piece, i) => {
      const part = nearestOn(piece, p);
      const far = apart(pointOn(piece, part), p);
      if (far < best.far - 1e-12) best = { s: (this.starts[i] as number) + part * piece.length, far };
    });
    return best;
  }

  /** The first place that a ray meets more than a hair away, either way along it where `both`. */
  hit(p: Spot, d: Spot, both = false): OnChain | undefined {
    let best: OnChain | undefined;
    this.pieces.forEach((piece, i) => {
      for (const { far, part } of hitsOn(piece, p, d)) {
        const long = both ? Math.abs(far) : far;
        if (long < 1e-9 || (best && best.far <= long)) continue;
        best = { s: (this.starts[i] as number) + part * piece.length, far: long };
      }
    });
    return best;
  }
}
