/**
 * What a line of the purchase list comes to in another measure than it is counted in: bars by their length or weight,
 * mesh and sheets by their area, what comes in pails, bags or cartridges by how many of them there are.
 *
 * A price by the ton, or work by the foot, asks for it. Bars weigh their nominal weight, `M = n × L × u`; smooth dowels
 * that of their section, mesh that of its style, `M = n × L × W × u`. Whole pieces are meant, as they are bought.
 */

import type { Dimension } from '../quantity/dimensions';
import { isQuantity, type Quantity } from '../quantity/quantity';
import { wholeNumber } from '../reckoning/fields';
import { Pad } from '../reckoning/pad';
import { timesUp } from '../reckoning/whole';
import { type AnyBarSize, weightOf } from '../steel/bars';
import { styleWeight } from '../steel/mesh-style';
import { roundSteel } from '../steel/round-steel';
import { readStyle } from '../steel/wire';
import { type Purchase, soldIn } from './purchases';

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

/** What one sheet or roll of mesh weighs, by its style. */
function meshMass(line: Purchase): Quantity<'mass'> | undefined {
  const { style } = line.of;
  const wires = typeof style === 'string' ? readStyle(style) : undefined;
  const area = areaOf(line);
  return wires && area?.times(styleWeight(wires, new Pad('metric')));
}

const BARS: readonly Purchase['item'][] = ['bar', 'tie-bar', 'dowel'];

/** What one piece of steel weighs; mesh of no style is of no known weight. */
function massOf(line: Purchase): Quantity<'mass'> | undefined {
  if (line.item === 'mesh') return meshMass(line);
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

/** How many pails, bags or cartridges a line is; it is bought in whole ones. */
function containersOf(line: Purchase): Quantity<'count'> | undefined {
  const size = soldIn(line)?.size as Quantity<'mass'> | undefined;
  return size && wholeNumber(timesUp(line.quantity as Quantity<'mass'>, size));
}

/** How much of a line there is, in a dimension; nothing where its sizes do not tell. */
export function amountIn(line: Purchase, dimension: Dimension): Quantity | undefined {
  const { quantity } = line;
  if (quantity.dimension === dimension) return quantity;
  if (dimension === 'count') return containersOf(line);
  if (quantity.dimension !== 'count') return undefined;
  const one = OF_ONE[dimension]?.(line) as Quantity<'mass'> | undefined;
  return one?.times(quantity as Quantity<'count'>);
}
