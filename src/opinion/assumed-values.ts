/** Values that are assumed where nothing is given, such as the weight of concrete: who has other ones slips in them too. */
import { isQuantity } from '../quantity/quantity';
import { pathOf } from './figure-places';
import type { Graph } from './graph';
import type { Leaf } from './input-places';
import { leafSlips } from './leaf-slips';
import type { Response } from './response';
import type { Scene } from './scene';
import type { Slip } from './slip';

/** Where the steps take a value from outside, as it stands there. */
function responseTo(graph: Graph, { quantity }: Leaf): Response {
  const places = graph.flatMap(({ takes, tree }, i) =>
    takes.flatMap(({ symbol, from, given, quantity: q }) =>
      tree &&
      from === undefined &&
      !given &&
      q.dimension === quantity.dimension &&
      q.equals(quantity as never)
        ? [[i, symbol] as const]
        : [],
    ),
  );
  return {
    taken: new Map(places.map(([i, symbol]) => [`${i} ${symbol}`, (x: number) => x])),
    given: new Map(),
    figures: new Map(),
    starts: places.map(([i]) => i),
  };
}

/** Assumed values that the steps take, with where; what was found with them is run before it is told. */
export function assumedValues({ result, graph }: Scene): Map<Leaf, Response> {
  const found = new Map<Leaf, Response>();
  for (const { name, value } of result.assumed) {
    const path = pathOf(name);
    if (!path || !isQuantity(value) || value.sign() === 0) continue;
    const { dimension } = value;
    const leaf = { path, at: name, name: String(path.at(-1)), dimension, quantity: value, plain: false };
    const response = responseTo(graph, leaf);
    if (response.starts.length > 0) found.set(leaf, response);
  }
  return found;
}

/** Nobody wrote it down, so that it is rarer to go wrong with it. */
const ASSUMED = 0.5;

export const assumedSlips = ({ assumed }: Scene): Slip[] =>
  assumed.flatMap((leaf) =>
    leafSlips(leaf, assumed).map((one) => ({ ...one, weight: one.weight * ASSUMED })),
  );
