/**
 * Which boards each edge is laid of, so that all edges together buy the least: what is cut off one edge is a piece of
 * another.
 *
 * Two ways are planned for all edges alike: the longest boards, and those that come to the least. From the better of
 * both, edges of one length after the other are laid in their other ways, and what buys less is kept. Edges of one
 * length are laid alike, so that the order in which they are given changes nothing.
 */
import { canonicalValue, type Quantity } from '../quantity/quantity';
import { countOf, type Edge, LEAST_WAY, LONGEST_WAY } from './boarding';
import { type Boarding, EFFORT } from './form-boards';

/** Which way an edge is laid. */
type WayOf = (edge: Edge) => number;

/** All edges laid so, planned with so much work. */
type Plan = (way: WayOf, effort: number) => Boarding;

/** Choices beyond that which comes to the least, for edges of one length. */
const WAYS = [LEAST_WAY, 1, 2, 3, 4, 5, LONGEST_WAY];

/** So many plans at most; fewer where there are many lengths to cut, since each plan takes longer. */
const PLANS = 24;

/** Plans and lengths to cut, multiplied. */
const WORK = 120;

/** What each of these plans may take. */
const LESS_EFFORT = EFFORT / PLANS;

const less = (a: Boarding, b: Boarding): boolean =>
  a.cut !== undefined && b.cut !== undefined && a.cut.lengthBought.lessThan(b.cut.lengthBought);

const isWhole = ({ cut }: Boarding): boolean => cut === undefined || cut.lengthLost.sign() <= 0;

/** Lengths of edges that take several boards, the longest first, each once. */
function jointedLengths({ boarded }: Boarding): Quantity<'length'>[] {
  const several = boarded.filter(({ pieces }) => countOf(pieces) > 1).map(({ edge }) => edge.length);
  return [...several]
    .sort((a, b) => b.compareTo(a))
    .filter((length, i, all) => all[i - 1]?.compareTo(length) !== 0);
}

/** How many lengths there are to cut. */
const cutsOf = ({ boarded }: Boarding): number =>
  new Set(boarded.flatMap(({ pieces }) => pieces.map(({ length }) => canonicalValue(length).toString())))
    .size;

/** The boarding that buys the least of those that are tried. */
export function leastBoarding(plan: Plan, manyStocks: boolean): Boarding {
  const longest = plan(() => LONGEST_WAY, EFFORT);
  if (!manyStocks) return longest;
  const shortest = plan(() => LEAST_WAY, EFFORT);
  let [best, way]: [Boarding, WayOf] = less(shortest, longest)
    ? [shortest, () => LEAST_WAY]
    : [longest, () => LONGEST_WAY];
  let left = Math.min(PLANS, Math.floor(WORK / cutsOf(best)));
  for (const length of jointedLengths(best)) {
    const before = way;
    for (const other of WAYS) {
      if (isWhole(best) || left <= 0) return best;
      left -= 1;
      const tried: WayOf = (edge) => (edge.length.compareTo(length) === 0 ? other : before(edge));
      const next = plan(tried, LESS_EFFORT);
      if (less(next, best)) [best, way] = [next, tried];
    }
  }
  return best;
}
