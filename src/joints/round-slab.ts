/** Slabs that are round, whole or a slice: laid out with circles and radial joints. */

import { Decimal, ZERO } from '../quantity/decimal';
import { canonicalValue, type Quantity } from '../quantity/quantity';
import { layRound } from './layout/laid';
import type { Laid } from './layout/plan';
import type { RoundSite } from './layout/round-plan';
import type { Limits } from './layout/rules';
import { KINK } from './layout/sides';
import type { LayoutParsed } from './layout-input';

type Length = Quantity<'length'>;

/** A round opening in the very middle of a round slab, and nothing else that stands in the way. */
function middleHole({ openings = [] }: LayoutParsed): Decimal | undefined {
  if (openings.length === 0) return new Decimal(0);
  const [opening] = openings;
  if (openings.length > 1 || opening?.shape !== 'circle') return undefined;
  const centered = opening.at.x.sign() === 0 && opening.at.y.sign() === 0;
  return centered ? canonicalValue(opening.diameter).div(2) : undefined;
}

export const plain = (input: LayoutParsed): boolean =>
  !input.fixed?.length && !input.continued?.length && !input.module && !input.direction;

/** Radii of a round slab with nothing in it, and the slice that it is. */
type Round = Pick<RoundSite, 'radius' | 'hole' | 'slice'>;

const WHOLE_TURN = 360;

function roundOf(input: LayoutParsed): Round | undefined {
  const { outline } = input;
  const half = (d: Length): Decimal => canonicalValue(d).div(2);
  switch (outline.shape) {
    case 'circle': {
      const hole = middleHole(input);
      return hole && { radius: half(outline.diameter), hole, slice: undefined };
    }
    case 'ring': {
      if (input.openings?.length) return undefined;
      return { radius: half(outline.outerDiameter), hole: half(outline.innerDiameter), slice: undefined };
    }
    case 'sector': {
      if (input.openings?.length) return undefined;
      const hole = outline.innerRadius ? canonicalValue(outline.innerRadius) : ZERO;
      const slice = canonicalValue(outline.angle);
      const whole = slice.equals(WHOLE_TURN);
      return { radius: canonicalValue(outline.radius), hole, slice: whole ? undefined : slice };
    }
    default:
      return undefined;
  }
}

export function roundLaid(input: LayoutParsed, limits: Limits, step: Decimal): Laid | undefined {
  const round = plain(input) ? roundOf(input) : undefined;
  if (!round || round.hole.greaterThanOrEqualTo(round.radius)) return undefined;
  return layRound({ ...round, step, tees: input.tees === 'allowed' }, limits);
}

/** The tip of a slice of more than half a circle is an inside corner. */
export function withApex(laid: Laid, { outline }: LayoutParsed): Laid {
  const inside =
    outline.shape === 'sector' && !outline.innerRadius && canonicalValue(outline.angle).greaterThan(APEX);
  if (!inside || canonicalValue(outline.angle).equals(WHOLE_TURN)) return laid;
  const met = laid.joints.some((j) => j.shape === 'straight' && j.from.x.isZero() && j.from.y.isZero());
  return met ? laid : { ...laid, missed: [{ x: ZERO, y: ZERO }], exact: false };
}

/** Half a turn and a kink, in degrees. */
const APEX = 180 + KINK;
