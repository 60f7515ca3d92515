/** Names as a job writes them: of a grade or a size in place of an amount, `C25/30`, `#57`, or spelt otherwise than here. */
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

/** What a field reads, where text is brought into the spelling that it knows: `2 x 6`, `Grade 60`. */
export const respelt = <T>(plain: Field<T>, spelling: (text: string) => string): Field<T> => ({
  ...plain,
  read: (input, report) => plain.read(typeof input === 'string' ? spelling(input.trim()) : input, report),
});
