/** Units of the two families that the trade tells as each other. */
import type { Dimension } from './dimensions';
import { canonicalValue, newQuantity, type Quantity, unitShown } from './quantity';
import { type System, type Unit, unitOf, usualUnit } from './units';

/** Smaller than this they are given in the small unit of the family, as on drawings. */
const SMALL_METRIC = 1;

/**
 * Customary and metric units, where the usual ones of a dimension do not fit. The first pair that holds a unit
 * serves.
 */
const LIKE: Readonly<Record<System, readonly string[]>> = {
  customary:
    'in,in,in2,in2,in3,in3,gal,qt,fl oz,ton,pcf,ton/yd3,lb/yd3,kip,psf,ksf,in/h,ft/h,gal/min,ft3/s,ft/s'.split(
      ',',
    ),
  metric: 'mm,cm,mm2,cm2,L,cm3,L,L,mL,tonne,kg/m3,kg/m3,kg/m3,kN,kPa,kPa,mm/h,m/h,L/s,L/s,m/s'.split(','),
};

const isSmall = (q: Quantity): boolean =>
  q.dimension === 'length' && canonicalValue(q).abs().lessThan(SMALL_METRIC);

/** The unit of a family that says the same in the trade. */
export function likeUnit(q: Quantity, system: System): Unit {
  const unit = unitShown(q);
  const own = unit.system;
  if (own === undefined || own === system) return unit;
  const like = LIKE[system][LIKE[own].indexOf(unit.id)];
  const named = like === undefined ? undefined : unitOf(q.dimension, like);
  if (named) return named;
  if (system === 'metric' && isSmall(q)) return unitOf('length', 'mm') as Unit;
  return usualUnit(q.dimension as Exclude<Dimension, 'money'>, system);
}

/** The same amount, shown in a unit of a family; itself where it is. */
export function inSystem<D extends Dimension>(q: Quantity<D>, system: System): Quantity<D> {
  const unit = likeUnit(q, system);
  return unit === unitShown(q) ? q : newQuantity(q.dimension, canonicalValue(q), unit);
}
