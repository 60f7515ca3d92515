/** The pad that a calculation writes on while it reckons: working, assumptions, cautions. */
import type { Dimension } from '../quantity/dimensions';
import { isQuantity, type Quantity } from '../quantity/quantity';
import type { System } from '../quantity/units';
import type { Assumed, Assumption, Caution, Step } from './parts';
import { type Saying, wordsOf } from './words';

function assumedValue(value: Assumed['value'], system: System): Assumption['value'] {
  if (typeof value === 'string') return wordsOf(value);
  if (isQuantity(value)) return value;
  if ('as' in value) return value.as(system);
  return 'reckoned' in value ? value.reckoned : value;
}

/** Collects what a result shows beside its figures. */
export class Pad {
  /** @param system - the family of units that the job is reckoned and shown in */
  constructor(readonly system: System) {}

  readonly working: Step[] = [];
  readonly assumed: Assumption[] = [];
  readonly cautions: Caution[] = [];

  /**
   * Note one step and hand its outcome on.
   *
   * @param what - what is computed, in words
   * @param formula - in symbols, `A = L × W`; those named in `values` have their numbers put in
   * @param values - the quantities that the symbols stand for
   * @param gives - the outcome, computed from the same quantities
   */
  step<D extends Dimension>(
    what: Saying,
    formula: string,
    values: Readonly<Record<string, Quantity>>,
    gives: Quantity<D>,
  ): Quantity<D> {
    Object.freeze(values);
    // Most have no places in their words: written out and frozen at once, since copying members and looking through
    // all of them afterward costs as much as the step.
    this.working.push(
      typeof what === 'string'
        ? Object.freeze({ says: what, formula, values, gives })
        : { ...what, formula, values, gives },
    );
    return gives;
  }

  /** List a default that is being used. */
  assume({ name, value, because, override, source }: Assumed): void {
    this.assumed.push({
      name,
      value: assumedValue(value, this.system),
      because: wordsOf(because),
      override: wordsOf(override),
      source,
    });
  }

  /** Note a caution. */
  caution(caution: Caution): void {
    this.cautions.push(caution);
  }
}
