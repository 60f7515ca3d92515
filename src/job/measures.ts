/**
 * What a line of the purchase list comes to in another measure than it is counted in: bars by their length or weight,
 * mesh and sheets by their area.
 *
 * A price by the ton, or work by the foot, asks for it. Bars weigh their nominal weight, `M = n × L × u`; smooth dowels
 * that of their section. Whole pieces are meant, as they are bought.
 */
import type { Dimension } from '../quantity/dimensions';
import { isQuantity, type Quantity } from '../quantity/quantity';
import { type AnyBarSize, weightOf } from '../steel/bars';
import { roundSteel } from '../steel/round-steel';
import type { Purchase } from './purchases';

type Length = Quantity<'length'>;

/** The first of these sizes that the line tells. */
function sizeOf({ of }: Purchase, names: readonly string[]): Length | undefined {
  const found = names.map((name) => of[name]).find((size) => isQuantity(size) && size.dimension === 'length');
  return found as Length | undefined;
}

const lengthOf = (line: Purchase): Length | undefined =>
  sizeOf(line, ['stockLength', 'length', 'pieceLength', 'rollLength']);

function areaOf(line: Purchase): Quantity<'area'> | undefined {
  const [long, wide] = [lengthOf(line), sizeOf(line, ['width', 'pieceWidth', 'rollWidth'])];
  return long && wide ? long.times(wide) : undefined;
}

const BARS: readonly Purchase['item'][] = ['bar', 'tie-bar', 'dowel'];

/** What one piece of steel weighs. */
function massOf(line: Purchase): Quantity<'mass'> | undefined {
  const long = lengthOf(line);
  if (!long || !BARS.includes(line.item)) return undefined;
  const { bar } = line.of;
  if (typeof bar === 'string') return long.times(weightOf(bar as AnyBarSize));
  const d = sizeOf(line, ['diameter']);
  return d && roundSteel(d, long);
}

const OF_ONE: Readonly<Partial<Record<Dimension, (line: Purchase) => Quantity | undefined>>> = {
  length: lengthOf,
  area: areaOf,
  mass: massOf,
};

/** How much of a line there is, in a dimension; nothing where its sizes do not tell. */
export function amountIn(line: Purchase, dimension: Dimension): Quantity | undefined {
  const { quantity } = line;
  if (quantity.dimension === dimension) return quantity;
  if (quantity.dimension !== 'count') return undefined;
  const one = OF_ONE[dimension]?.(line) as Quantity<'mass'> | undefined;
  return one?.times(quantity as Quantity<'count'>);
}
