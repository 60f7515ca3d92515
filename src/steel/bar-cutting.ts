/**
 * Pieces cut from stock bars: the fewest or cheapest bars, with a proof.
 *
 * Pieces fit a bar when their lengths with a saw kerf between them do. The plan comes from column
 * generation, rounding and search (`cut-search`). The lower bound is proved apart from the plan: each
 * length is given a worth such that no bar can hold more worth than it costs; then no plan can cost
 * less than all the pieces are worth.
 */

import { paired } from '../quantity/paired';
import { canonicalValue, type Quantity } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import { choice, type Field, fields, list, maybe, quantity, whole, wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { CLOSED_FORM, COMMON_PRACTICE } from '../reckoning/source';
import { say } from '../reckoning/words';
import type { CutProblem } from '../solve/stock/fill';
import { firstFitPlan, solveCutting } from '../solve/stock/search';
import type { BarCuttingFigures } from './cutting-figures';
import {
  type BarCuttingInput,
  type CutList,
  type CuttingAim,
  type CuttingParsed,
  price,
} from './cutting-input';
import { costsOf, type Piece, piecesOf, type Stock, scaled, stockOf } from './cutting-problem';
import { keptOf, note, orderOf, planFigure, times, total, valuesOfLengths } from './cutting-told';
import * as faults from './faults';
import { KEPT, KERF, PIECE, STOCK_LENGTH } from './mat-ordinary';

type Length = Quantity<'length'>;

/** Distinct lengths that one plan is made for. */
const LENGTH_LIMIT = 200;
const PIECE_LIMIT = 1_000_000;
const STOCK_LIMIT = 20;
const NO_KERF = /*#__PURE__*/ paired('length', '0 in', '0 mm');
const WHEEL = /*#__PURE__*/ paired('length', '1/8 in', '3 mm');

function aimOf(input: CuttingParsed, stock: readonly Stock[], pad: Pad): CuttingAim {
  if (input.aim) return input.aim;
  const aim = stock[0]?.price ? 'least-cost' : stock.length > 1 ? 'least-length' : 'fewest-bars';
  pad.assume({
    name: 'aim',
    value: aim,
    because: stock[0]?.price ? 'prices are given' : 'no prices are given',
    override: 'Give aim: fewest-bars, least-length or least-cost',
    source: COMMON_PRACTICE,
  });
  return aim;
}

function kerfOf(input: CuttingParsed, pad: Pad): Length {
  if (input.kerf) return input.kerf;
  pad.assume({
    name: 'kerf',
    value: NO_KERF,
    because: 'a shear loses nothing',
    override: say`Give kerf for a saw; an abrasive wheel takes about ${{ wheel: WHEEL }}`,
    source: COMMON_PRACTICE,
  });
  return NO_KERF.as(pad.system);
}

function checkLongest(pieces: readonly Piece[], stock: readonly Stock[]): void {
  const [longest, most] = [pieces[0] as Piece, stock.at(-1) as Stock];
  if (longest.value.greaterThan(most.value)) {
    refuse(
      'stock',
      faults.stockTooShort(
        `the longest piece of ${longest.length.format()}`,
        'buy longer bars, or split the piece in two with a lap',
      ),
    );
  }
}

/**
 * A plan for a cut list: of bars, boards, or whatever is bought in lengths.
 *
 * @param effort - table cells that the search may touch; as many as half a second takes by default
 * @throws {InputError} `stock-too-short` for a piece longer than every stock
 */
export function cutFrom(list: CutList, kerf: Length, aim: CuttingAim, effort?: number): BarCuttingFigures {
  const [pieces, stock] = [piecesOf(list), stockOf(list)];
  checkLongest(pieces, stock);
  const costs = costsOf(aim, stock);
  const demand = pieces.map((p) => p.count);
  const steps = scaled(pieces, stock, canonicalValue(kerf));
  const problem: CutProblem = { ...steps.plan, demand, costs: costs.units };
  const solved = solveCutting(problem, effort);
  const proof = steps.bound ? solveCutting({ ...problem, ...steps.bound }, effort) : solved;
  const sheet = { pieces, stock, kerf };
  const plan = planFigure(sheet, solved.plan.batches);
  const order = orderOf(stock, solved.plan.batches);
  const kept = keptOf(plan, list.keepFrom);
  const like = (stock[0] as Stock).length;
  const lengthBought = total(
    order.map((o) => o.length.times(o.bars)),
    like,
  );
  const lengthUsed = total(
    pieces.map((p) => times(p.length, p.count)),
    like,
  );
  const lengthKept = total(
    kept.map((k) => k.length.times(k.count)),
    like,
  );
  const lengthLost = lengthBought.minus(lengthUsed).minus(lengthKept);
  const reached = costs.show(solved.plan.cost);
  const lowerBound = costs.show(proof.bound);
  const cost = order.reduce<Quantity<'money'> | undefined>(
    (s, o) => (s && o.cost ? s.plus(o.cost) : o.cost),
    undefined,
  );
  return {
    bars: order.reduce((s, o) => s.plus(o.bars), wholeNumber(0)),
    order,
    ...(cost ? { cost } : {}),
    lengthBought,
    lengthUsed,
    lengthKept,
    lengthLost,
    waste: lengthLost.over(lengthBought).in('%'),
    kept,
    plan,
    aim,
    reached,
    lowerBound,
    gap: reached.minus(lowerBound),
    proved: solved.plan.cost <= proof.bound,
    firstFit: costs.show(firstFitPlan(problem, demand).cost),
    lengthValues: valuesOfLengths(sheet, proof, demand, costs.perUnit),
  };
}

function reckon(input: CuttingParsed, pad: Pad): BarCuttingFigures {
  const stock = stockOf(input);
  checkLongest(piecesOf(input), stock);
  const kerf = kerfOf(input, pad);
  const figures = cutFrom(input, kerf, aimOf(input, stock, pad));
  note(figures, pad);
  return figures;
}

/**
 * Stock bars for a cut list: the fewest or cheapest, with a proof.
 *
 * @param input - pieces, stock lengths, kerf, what to keep low
 * @returns bars to buy, how to cut them, drops and waste, and a lower bound that no plan can go under
 * @throws {InputError} `stock-too-short` for a piece longer than every stock; `give-for-all` for prices
 * of some stocks only; `too-many` lengths; lengths that cannot be read or are not greater than zero
 * @source closed form: each figure is checked by adding up. The bound is linear programming duality
 * @example
 * ```ts
 * import { barCutting } from 'flatwork-reckoner';
 *
 * const { figures } = barCutting({
 *   pieces: [
 *     { length: '10 ft', count: 70 },
 *     { length: '8 ft', count: 15 },
 *     { length: '4 ft', count: 25 },
 *     { length: '3 ft', count: 50 },
 *   ],
 *   stock: [{ length: '20 ft' }],
 * });
 * figures.bars.format(); // '54 each'
 * figures.lowerBound.format(); // '54 each'
 * figures.proved; // true
 * ```
 */
export const barCutting: Calculation<BarCuttingInput, BarCuttingFigures> = /*#__PURE__*/ define({
  id: 'bar-cutting',
  title: 'Bar cutting list',
  version: 1,
  sources: [CLOSED_FORM],
  input: (): Field<CuttingParsed> =>
    fields({
      pieces: list(
        fields({
          length: quantity('length', 'length', 'positive', PIECE),
          count: whole('count', 1, PIECE_LIMIT),
        }),
        1,
        LENGTH_LIMIT,
      ),
      stock: list(
        fields({ length: quantity('length', 'length', 'positive', STOCK_LENGTH), price: maybe(price()) }),
        1,
        STOCK_LIMIT,
      ),
      kerf: maybe(quantity('length', 'kerf', 'not-negative', KERF)),
      keepFrom: maybe(quantity('length', 'keepFrom', 'positive', KEPT)),
      aim: maybe(choice('aim', ['fewest-bars', 'least-length', 'least-cost'] as const)),
    }),
  reckon,
});
