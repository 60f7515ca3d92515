/**
 * Flow as it is ordered in a class of EN 206, by the diameter that a sample spreads to on the flow table; and whether a
 * load comes with it.
 *
 * A single test may lie 15 mm below the class and 30 mm above it, from memory. The lowest class has no least, the highest
 * no most.
 */
import { inSystem } from '../quantity/like-unit';
import { length } from '../quantity/make';
import { type Quantity, systemOfQuantity } from '../quantity/quantity';
import type { Pad } from '../reckoning/pad';
import * as cautions from './cautions';

type Length = Quantity<'length'>;

/** A class of consistence by flow, as EN 206 has it. */
export type FlowClass = 'F1' | 'F2' | 'F3' | 'F4' | 'F5' | 'F6';

const BOUNDS: Record<FlowClass, readonly [least: number | undefined, most: number | undefined]> = {
  F1: [undefined, 340],
  F2: [350, 410],
  F3: [420, 480],
  F4: [490, 550],
  F5: [560, 620],
  F6: [630, undefined],
};

/** Every class, for fields. */
export const FLOW_CLASSES = /*#__PURE__*/ Object.keys(BOUNDS) as readonly FlowClass[];

/** What a single test may be off. */
const [BELOW, ABOVE] = [15, 30];

const mm = (n: number): Length => length(`${n} mm`);

/** Whether a load spreads as its class asks at the least, so that no water brings it nearer to the order. */
export function flowsEnough(spread: Length, flowClass: FlowClass): boolean {
  const [least] = BOUNDS[flowClass];
  return least === undefined || !spread.lessThan(mm(least));
}

/** Whether a load has the flow that was ordered. */
export function heedFlow(spread: Length, flowClass: FlowClass | undefined, pad: Pad): void {
  if (!flowClass) return;
  const system = systemOfQuantity(spread);
  const [least, most] = BOUNDS[flowClass];
  if (most !== undefined && spread.greaterThan(mm(most + ABOVE))) {
    pad.caution(cautions.highFlow(inSystem(mm(most + ABOVE), system), spread, flowClass));
  } else if (least !== undefined && spread.lessThan(mm(least - BELOW))) {
    pad.caution(cautions.lowFlow(inSystem(mm(least - BELOW), system), spread, flowClass));
  }
}
