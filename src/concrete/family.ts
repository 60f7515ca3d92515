/** Limits shown as the job is measured: in inches beside inches, in millimeters beside millimeters. */
import { type Quantity, systemOfQuantity, unitShown } from '../quantity/quantity';

/** A limit in the unit of what it is held against, where that is of the other unit system. */
export const inFamilyOf = <D extends 'length' | 'mass' | 'volume'>(
  typed: Quantity<D>,
  limit: Quantity<D>,
): Quantity<D> =>
  systemOfQuantity(typed) === systemOfQuantity(limit) ? limit : limit.in(unitShown(typed).id as never);
