/**
 * Sizes and limits that the trade has in round numbers of both unit systems: 3 in and 75 mm, 20 ft and 6 m.
 *
 * The two are not quite equal: 5 ft is 1.524 m, and a metric rule says 1.5 m. One value must get one answer in
 * whatever unit it was typed, and a nominal size the same in both systems: what has to be done from a limit on is
 * due from the lesser of both, what may not exceed a limit may reach the greater, and what may not fall below one
 * may be the lesser.
 */
import type { Dimension } from './dimensions';
import { greaterOf, lesserOf } from './greater';
import { inSystem } from './like-unit';
import { type Quantity, systemOfQuantity } from './quantity';
import { isFaulty, readQuantity } from './read-quantity';
import type { System } from './units';

const SYSTEMS: readonly System[] = ['customary', 'metric'];

/** One size as each unit system has it. */
export class Paired<D extends Dimension = Dimension> {
  private read: Readonly<Record<System, Quantity<D>>> | undefined;

  /** @param make - called when first asked for, so that importing the library costs nothing */
  constructor(private readonly make: () => Readonly<Record<System, Quantity<D>>>) {}

  /** The size as a unit system has it. */
  as(system: System): Quantity<D> {
    this.read ??= this.make();
    return this.read[system];
  }

  /** The size in the family of units of another quantity. */
  like(q: Quantity): Quantity<D> {
    return this.as(systemOfQuantity(q));
  }

  /** For what may not be less: the limit that a value is under by either name, in its own family. */
  undercutBy(q: Quantity<D>): Quantity<D> | undefined {
    return SYSTEMS.every((system) => q.lessThan(this.as(system))) ? this.like(q) : undefined;
  }

  /** For what may not be more: the limit that a value is over by either name, in its own family. */
  exceededBy(q: Quantity<D>): Quantity<D> | undefined {
    return SYSTEMS.every((system) => q.greaterThan(this.as(system))) ? this.like(q) : undefined;
  }

  /** For what is due from a limit on: the limit that a value reaches by either name, its own first. */
  reachedBy(q: Quantity<D>): Quantity<D> | undefined {
    const own = systemOfQuantity(q);
    const names = own === 'metric' ? (['metric', 'customary'] as const) : SYSTEMS;
    const reached = names.map((system) => this.as(system)).find((limit) => !q.lessThan(limit));
    return reached && inSystem(reached, own);
  }
}

function readOf<D extends Dimension>(dimension: D, text: string): Quantity<D> {
  const q = readQuantity(text, dimension, 'the pair');
  if (isFaulty(q)) throw new TypeError(`${text}: ${q.sentence}`);
  return q;
}

/** A pair of whatever dimension, where only its sizes are asked for. */
export type AnyPair = Pick<Paired, 'as'>;

/** One size as each unit system has it: `paired('length', '3 in', '75 mm')`. */
/* @__NO_SIDE_EFFECTS__ */
export function paired<D extends Dimension>(dimension: D, customary: string, metric: string): Paired<D> {
  return new Paired(() => ({ customary: readOf(dimension, customary), metric: readOf(dimension, metric) }));
}

/** One amount under both names, where the trade has no round one: the diameter of a bar. */
export const sameInBoth = <D extends Dimension>(q: Quantity<D>): Paired<D> =>
  new Paired(() => ({ customary: inSystem(q, 'customary'), metric: inSystem(q, 'metric') }));

/** The lesser of both: what may not be less may be this. */
export const lesserOfPair = <D extends Dimension>(pair: Paired<D>): Quantity<D> =>
  lesserOf(pair.as('customary'), pair.as('metric'));

/** The greater of both: what may not be more may be this. */
export const greaterOfPair = <D extends Dimension>(pair: Paired<D>): Quantity<D> =>
  greaterOf(pair.as('customary'), pair.as('metric'));
