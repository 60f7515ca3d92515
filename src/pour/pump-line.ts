/**
 * Concrete that fills the line of a pump and stays in it at the end, so that it is bought and not placed.
 *
 * `C = π × d² ÷ 4 × L` by the length of the line and its inside diameter, and what stays in the hopper with it. A crew
 * that pushes the line clean into the forms, with a sponge ball behind the concrete, loses no more than the hopper.
 */
import { circleArea } from '../concrete/solids';
import { AGGREGATE_SIZE } from '../joints/ordinary';
import { constant, ratio } from '../quantity/make';
import { lesserOfPair, paired } from '../quantity/paired';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { fields, maybe, quantity, wholeNumber, yesOrNo } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import type { Read } from '../reckoning/read';
import { COMMON_PRACTICE } from '../reckoning/source';
import { stoneSize } from '../reckoning/stone-size';
import { HOPPER, LINE_BORE, LINE_LENGTH } from './ordinary';
import { pumpHose, stoneForLine } from './truck-cautions';

/** The line of a pump. */
export interface PumpLineInput {
  /** From the pump to its end: pipe and hose, and the pipe on a boom. */
  readonly length: QuantityInput<'length'>;
  /** Inside diameter. */
  readonly bore: QuantityInput<'length'>;
  /** Largest size of the stone; not said, it is doubted whether ordinary stone goes through a narrow line. */
  readonly aggregateSize?: QuantityInput<'length'>;
  /** What stays in the hopper of the pump; by default nothing. */
  readonly hopper?: QuantityInput<'volume'>;
  /** True where the crew pushes what fills the line into the forms at the end; by default it is lost. */
  readonly pushedOut?: boolean;
}

/** What a line holds, and what of that is lost. */
export interface PumpLineFigures {
  /** What fills the line of the pump. */
  readonly lineHolds?: Quantity<'volume'>;
  /** What stays in line and hopper and is ordered on top. */
  readonly leftInPump?: Quantity<'volume'>;
}

type Volume = Quantity<'volume'>;
type Parsed = Read<PumpLineInput>;

const EMPTY = /*#__PURE__*/ paired('volume', '0 yd3', '0 m3');

/** How the line is read. */
export const pumpLine = () =>
  fields({
    length: quantity('length', 'length', 'positive', LINE_LENGTH),
    bore: quantity('length', 'bore', 'positive', LINE_BORE),
    aggregateSize: maybe(stoneSize('aggregateSize', AGGREGATE_SIZE)),
    hopper: maybe(quantity('volume', 'hopper', 'not-negative', HOPPER)),
    pushedOut: maybe(yesOrNo('pushedOut')),
  });

function hopperOf({ hopper }: Parsed, pad: Pad): Volume {
  if (hopper) return hopper;
  pad.assume({
    name: 'pumpLine.hopper',
    value: EMPTY,
    because: 'what stays in the hopper differs with the pump, and its operator knows it',
    override: 'Give hopper as the operator of the pump has it',
    source: COMMON_PRACTICE,
  });
  return EMPTY.as(pad.system);
}

/** Whether the line comes back into the forms. */
function isPushedOut({ pushedOut }: Parsed, pad: Pad): boolean {
  if (pushedOut === undefined) {
    pad.assume({
      name: 'pumpLine.pushedOut',
      value: 'no',
      because:
        'what fills the line is washed out and lost; it comes back into the forms only where the crew pushes it out with a sponge ball while there is room for it',
      override: 'Give pushedOut as true where that is agreed with the operator of the pump',
      source: COMMON_PRACTICE,
    });
  }
  return pushedOut ?? false;
}

/** Stone that every yard has, and the most of the bore that stone may be, a hair above a third. */
const ORDINARY_STONE = /*#__PURE__*/ paired('length', '3/4 in', '20 mm');
const A_THIRD = constant(() => ratio('35%'));

/** Stone of more than a third of the bore blocks the line. */
function heedStone({ bore: d, aggregateSize: s }: Parsed, pad: Pad): void {
  if ((s ?? lesserOfPair(ORDINARY_STONE)).greaterThan(d.times(A_THIRD()))) {
    pad.caution(stoneForLine(d.over(wholeNumber(3)), s));
  }
}

/** What is ordered for the pump, in the unit of the order; nothing without a line. */
export function heldByPump(
  line: Parsed | undefined,
  shown: (q: Volume) => Volume,
  pad: Pad,
): PumpLineFigures {
  if (!line) return {};
  const { length: L, bore: d } = line;
  heedStone(line, pad);
  const lineHolds = shown(circleArea(d).times(L));
  pad.step('what fills the line of the pump', 'C = π × d² ÷ 4 × L', { d, L }, lineHolds);
  const H = hopperOf(line, pad);
  if (isPushedOut(line, pad)) {
    pad.caution(pumpHose);
    return { lineHolds, leftInPump: shown(H) };
  }
  const leftInPump = shown(lineHolds.plus(H));
  return {
    lineHolds,
    leftInPump: pad.step('left in line and hopper', 'P = C + H', { C: lineHolds, H }, leftInPump),
  };
}
