/** Amounts that a job may also write by the name of a grade or a size: `C25/30`, `Grade 60`, `#57`. */
import type { Dimension } from '../quantity/dimensions';
import type { Fault } from '../quantity/input-error';
import type { Quantity } from '../quantity/quantity';
import { isFaulty } from '../quantity/read-quantity';
import type { Field } from './fields';

/** The amount that a text names, what is wrong with the name, or nothing where it is none. */
export type ByName<D extends Dimension> = (what: string, text: string) => Quantity<D> | Fault | undefined;

/** What a plain field reads, or a name in its place. */
export const orNamed = <D extends Dimension>(
  plain: Field<Quantity<D>>,
  what: string,
  named: ByName<D>,
): Field<Quantity<D>> => ({
  ...plain,
  read: (input, report) => {
    const found = typeof input === 'string' ? named(what, input.trim()) : undefined;
    if (found === undefined) return plain.read(input, report);
    if (!isFaulty(found)) return found;
    report(found);
    return undefined;
  },
});
