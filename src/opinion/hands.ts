/**
 * How people round on the way, the same throughout a page: to so many digits that count, or to so many decimals, with
 * lengths in hundredths of a foot or in eighths of an inch, and 3.14 for π. Common practice.
 *
 * Where a figure comes out just as it was written by the hand of somebody who rounds so, it is confirmed, though it may
 * be farther off than rounding once would make it.
 */
import { type Quantity, unitShown } from '../quantity/quantity';
import type { ReadClaim } from './claims';
import { BINARY } from './formula';
import type { Graph, Numbers } from './graph';
import { leveled, leveledIn } from './leveled';
import { unitWritten } from './outcome-slips';
import { FOOT, siOfUnit } from './scale';

/** One way of rounding. */
export interface Hand {
  /** How common it is, beside never rounding on the way. */
  readonly weight: number;
  /** Digits that are kept of every outcome. */
  readonly digits?: number;
  /** Or decimals. */
  readonly decimals?: number;
  readonly lengths?: 'hundredths' | 'eighths';
  /** Of a circle the radius is written down, in hundredths of a foot as other lengths are. */
  readonly radii?: true;
  readonly roughPi?: true;
}

const AMOUNTS: readonly Hand[] = [
  { weight: 1 },
  { digits: 4, weight: 0.6 },
  { digits: 3, weight: 0.6 },
  { digits: 2, weight: 0.3 },
  { decimals: 2, weight: 0.5 },
  { decimals: 1, weight: 0.3 },
];
const LENGTHS: readonly Pick<Hand, 'weight' | 'lengths' | 'radii'>[] = [
  { weight: 1 },
  { lengths: 'hundredths', weight: 0.5 },
  { lengths: 'hundredths', radii: true, weight: 0.3 },
  { lengths: 'eighths', weight: 0.4 },
];

const HANDS: readonly Hand[] = AMOUNTS.flatMap((amounts) =>
  LENGTHS.map((lengths) => ({ ...amounts, ...lengths, weight: amounts.weight * lengths.weight })),
);

const EIGHTH = 0.0254 / 8;
/** Nobody writes a fraction of an inch in hundredths of a foot. */
const LEAST = 0.0254;

const round = (x: number, step: number): number => Math.round(x / step) * step;

/** What is written of a number that is kept to so many digits. */
function toDigits(x: number, digits: number): number {
  if (x === 0 || !Number.isFinite(x)) return x;
  return Number(x.toPrecision(digits));
}

const isCustomaryLength = (q: Quantity): boolean =>
  q.dimension === 'length' && unitShown(q).system === 'customary' && unitShown(q).form !== 'one-in';

/** Two digits are kept of amounts alone: nobody makes 12 in of 11-1/2. */
const COARSE: ReadonlySet<string> = /*#__PURE__*/ new Set(['volume', 'area', 'mass']);

/** An outcome as this hand writes it. */
function outcomeBy({ digits, decimals, lengths }: Hand, q: Quantity): (si: number) => number {
  const unit = unitWritten(q);
  if (q.dimension === 'count' || unit.offset || unit.form === 'one-in') return (si) => si;
  if (lengths === 'eighths' && isCustomaryLength(q)) return (si) => Math.max(EIGHTH, round(si, EIGHTH));
  const one = siOfUnit(unit);
  if (q.dimension === 'money') return (si) => round(si, 0.01 * one);
  if (decimals !== undefined) return (si) => Number((si / one).toFixed(decimals)) * one;
  if (digits === undefined) return (si) => si;
  const kept = digits < 3 && !COARSE.has(q.dimension) ? 3 : digits;
  return (si) => toDigits(si / one, kept) * one;
}

/** A value from outside as this hand writes it down. */
const takenBy =
  ({ lengths }: Hand) =>
  (q: Quantity, si: number): number =>
    lengths === 'hundredths' && isCustomaryLength(q) && Math.abs(si) >= LEAST
      ? Number((si / FOOT).toFixed(2)) * FOOT
      : si;

/** The diameters of a page: of a circle `π × D² ÷ 4` is printed, and many reckon it from the radius. */
const diametersIn = (graph: Graph): Quantity[] =>
  graph.flatMap(
    ({ step, bySymbol }) => bySymbol.get(/π × (\w+)² ÷ 4/.exec(step.formula)?.[1] ?? '')?.quantity ?? [],
  );

/** A hand with a page: how it takes values, and how it writes each outcome. */
export interface HandOn {
  readonly weight: number;
  readonly numbers: Numbers<number>;
  readonly taken: (q: Quantity, si: number) => number;
  readonly outcomes: readonly ((si: number) => number)[];
}

const usesPi = (graph: Graph): boolean => graph.some(({ step }) => step.formula.includes('π'));

function handOn(hand: Hand, graph: Graph, fromMarks: ReadonlySet<number>): HandOn {
  const written = takenBy(hand);
  const round = hand.radii ? diametersIn(graph) : [];
  const outcomeOf = ({ step: { gives } }: Graph[number], i: number): ((si: number) => number) => {
    const own = outcomeBy(hand, gives);
    return fromMarks.has(i) ? (si) => leveled(si, own(si), gives) : own;
  };
  const taken = (q: Quantity, si: number): number =>
    round.includes(q) ? 2 * written(q, si / 2) : written(q, si);
  return {
    weight: hand.weight,
    numbers: {
      by: hand.roughPi ? { ...BINARY, pi: 3.14 } : BINARY,
      none: Number.NaN,
      taken: ({ quantity, si }) => taken(quantity, si),
      given: ({ si }) => si,
    },
    taken,
    outcomes: graph.map(outcomeOf),
  };
}

/** Digits that count in what was written; zeros at the end of a whole number may not. */
export function digitsOf({ claimed, half, si, coarse }: ReadClaim): number {
  if (claimed.dimension === 'count' || claimed.dimension === 'money' || si === 0) return 0;
  const unit = unitShown(claimed);
  if (unit.form === 'one-in' || unit.form === 'feet-inches' || unit.offset) return 0;
  return Math.floor(Math.log10(Math.abs(si) / (2 * Math.max(half, coarse))) + 1 + 1e-9);
}

const finest = (claims: readonly ReadClaim[]): number => Math.max(0, ...claims.map(digitsOf));

/** More digits than this are never written by who keeps three. */
const FINE = 4;
/** Who keeps two digits seldom writes three: a number that was rounded is turned into another unit, say. */
const SELDOM = 0.3;

/** How far a hand goes with claims of so many digits: who writes four does not keep two. */
function shareOf({ digits = 0, lengths, decimals }: Hand, all: number, amounts: number): number {
  if (digits === 0) return lengths === undefined && decimals === undefined ? 0 : 1;
  if (digits > 2) return all <= FINE ? 1 : 0;
  if (amounts <= digits) return 1;
  return amounts <= digits + 1 ? SELDOM : 0;
}

/** Whether there are lengths of feet and inches on a page, put in from outside and reckoned. */
function lengthsIn(graph: Graph): Readonly<Record<'hundredths' | 'eighths', boolean>> {
  return {
    hundredths: graph.some(({ takes }) =>
      takes.some(({ quantity, from }) => from === undefined && isCustomaryLength(quantity)),
    ),
    eighths: graph.some(({ step }) => isCustomaryLength(step.gives)),
  };
}

/** Hands that may have written such claims. */
export function handsFor(graph: Graph, claims: readonly ReadClaim[]): HandOn[] {
  const lengths = lengthsIn(graph);
  const all = finest(claims);
  const amounts = finest(claims.filter(({ claimed }) => COARSE.has(claimed.dimension)));
  // Where there is nothing to round so, it is the hand of somebody who does not.
  const round = diametersIn(graph).length > 0;
  const able = HANDS.filter(
    (hand) => (!hand.lengths || lengths[hand.lengths]) && (!hand.radii || round),
  ).flatMap((hand) => {
    const share = shareOf(hand, all, amounts);
    return share > 0 ? [{ ...hand, weight: hand.weight * share }] : [];
  });
  const plain: Hand = { weight: 1 };
  const rough = usesPi(graph)
    ? [plain, ...able].map((hand): Hand => ({ ...hand, roughPi: true, weight: hand.weight * 0.5 }))
    : [];
  const { steps } = leveledIn(graph);
  return [...able, ...rough].map((hand) => handOn(hand, graph, steps));
}
