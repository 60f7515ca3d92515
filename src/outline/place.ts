/** Corners of outlines that are measured without coordinates: taped ones, and those walked around. */

import type { Corner } from '../geometry/polygon';
import { Decimal, PI, ZERO } from '../quantity/decimal';
import { canonicalValue, type Quantity, quantityOf, systemOfQuantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import * as faults from './faults';
import type { Leg, OutlineOf } from './outline';

type Length = Quantity<'length'>;

const corner = (x: Decimal, y: Decimal): Corner => ({ x, y });

/** The third corner left of the line from the origin to `far`, by its distances from both. */
function third(far: Corner, base: Decimal, near: Decimal, away: Decimal): Corner | undefined {
  const along = base.times(base).plus(near.times(near)).minus(away.times(away)).div(base.times(2));
  const square = near.times(near).minus(along.times(along));
  if (square.lessThanOrEqualTo(0)) return undefined;
  const up = square.sqrt();
  const [ux, uy] = [far.x.div(base), far.y.div(base)];
  return corner(ux.times(along).minus(uy.times(up)), uy.times(along).plus(ux.times(up)));
}

/** Corners of a taped outline: the first at the origin, the second along x. */
export function tapedCorners({ sides, diagonals }: OutlineOf<'taped'>, path: string): Corner[] {
  if (diagonals.length !== sides.length - 3) refuse(`${path}.diagonals`, faults.diagonalCount(sides.length));
  // From the first corner to each of the others in turn.
  const rays = [sides[0], ...diagonals, sides.at(-1)].map((l) => canonicalValue(l as Length));
  const corners = [corner(ZERO, ZERO), corner(rays[0] as Decimal, ZERO)];
  for (let k = 1; k < rays.length; k += 1) {
    const [base, near, away] = [
      rays[k - 1] as Decimal,
      rays[k] as Decimal,
      canonicalValue(sides[k] as Length),
    ];
    const next = third(corners[k] as Corner, base, near, away);
    corners.push(next ?? refuse(`${path}.sides[${k}]`, faults.noSuchTaped(k + 2)));
  }
  return corners;
}

const HALF_TURN = 180;

/** Cosine and sine, exact on the four axes so that square corners close exactly. */
export function direction(degrees: Decimal): Corner {
  const turn = degrees.mod(360).plus(360).mod(360);
  if (turn.mod(90).isZero()) {
    const quarter = turn.div(90).toNumber();
    return corner(new Decimal([1, 0, -1, 0][quarter] ?? 1), new Decimal([0, 1, 0, -1][quarter] ?? 0));
  }
  const radians = turn.times(PI).div(HALF_TURN);
  return corner(Decimal.cos(radians), Decimal.sin(radians));
}

const degreesOf = ({ turn }: Leg): Decimal => {
  if (turn === 'left') return new Decimal(90);
  return turn === 'right' ? new Decimal(-90) : canonicalValue(turn);
};

/** Where a walk leads: its corners, and how far from its start it ends. */
export interface Walked {
  readonly corners: Corner[];
  readonly closingError: Length;
}

/**
 * Walk around: the first leg along x from the origin.
 *
 * @throws {InputError} `does-not-close` when it ends farther from its start than the limit
 */
export function walkAround({ legs, closingLimit }: OutlineOf<'walk'>, path: string): Walked {
  const system = systemOfQuantity((legs[0] as Leg).length);
  let [x, y, heading, total] = [ZERO, ZERO, ZERO, ZERO];
  const corners: Corner[] = [];
  for (const leg of legs) {
    corners.push(corner(x, y));
    const l = canonicalValue(leg.length);
    const d = direction(heading);
    [x, y] = [x.plus(l.times(d.x)), y.plus(l.times(d.y))];
    [heading, total] = [heading.plus(degreesOf(leg)), total.plus(l)];
  }
  const closingError = quantityOf('length', Decimal.hypot(x, y), system);
  const limit = closingLimit ?? quantityOf('length', total.div(100), system);
  if (closingError.greaterThan(limit)) {
    refuse(`${path}.legs`, faults.doesNotClose(closingError.format(), limit.format()));
  }
  return { corners, closingError };
}
