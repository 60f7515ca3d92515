/**
 * Wing walls beside steps: upright walls whose top is level or falls evenly from the back to the front.
 *
 * `V = n × t × l × (h + f) ÷ 2`, h being the height at the back and f at the front.
 */
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { type Field, fields, list, maybe, quantity, whole, wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { total } from '../reckoning/whole';
import { say } from '../reckoning/words';
import { WALL_HEIGHT, WALL_LENGTH, WALL_THICKNESS } from './ordinary';
import { TWO } from './solids';

/** A wall beside the flight, or several alike. */
export interface WingWallInput {
  /** Along the flight. */
  readonly length: QuantityInput<'length'>;
  /** How thick. */
  readonly thickness: QuantityInput<'length'>;
  /** From its foot to its top, at the back. */
  readonly height: QuantityInput<'length'>;
  /** The same at the front, where the top falls; as at the back by default. */
  readonly frontHeight?: QuantityInput<'length'>;
  /** How many alike; one by default. */
  readonly count?: number;
}

type Length = Quantity<'length'>;

/** A wing wall, read. */
export interface WingWall {
  readonly length: Length;
  readonly thickness: Length;
  readonly height: Length;
  readonly frontHeight: Length | undefined;
  readonly count: Quantity<'count'> | undefined;
}

/** The schema of the wing walls. */
export const wingWallsField = (): Field<WingWall[]> =>
  list(
    fields({
      length: quantity('length', 'length', 'positive', WALL_LENGTH),
      thickness: quantity('length', 'thickness', 'positive', WALL_THICKNESS),
      height: quantity('length', 'height', 'positive', WALL_HEIGHT),
      frontHeight: maybe(quantity('length', 'frontHeight', 'not-negative', WALL_HEIGHT)),
      count: maybe(whole('count', 1, 100)),
    }),
    0,
    20,
  );

/** Volume of the wing walls. */
export function wingVolume(walls: readonly WingWall[], pad: Pad): Quantity<'volume'> {
  const volumes = walls.map(({ length: l, thickness: t, height: h, frontHeight, count }, i) => {
    const [f, n] = [frontHeight ?? h, count ?? wholeNumber(1)];
    const volume = l.times(t).times(h.plus(f)).over(TWO()).times(n);
    return pad.step(say`wing wall ${{ n: i + 1 }}`, 'V = n × l × t × (h + f) ÷ 2', { n, l, t, h, f }, volume);
  });
  return total('wing walls', 'V', volumes, pad);
}
