/** The pour: concrete to order, bags, trucks, and when to saw. */
export { type BagCountFigures, type BagCountInput, bagCount } from './bag-count';
export type { BalanceLoadInput, LeftInput, PlacedInput } from './balance-input';
export { type BalanceLoadFigures, balanceLoad } from './balance-load';
export {
  type ConcreteOrderFigures,
  type ConcreteOrderInput,
  concreteOrder,
  type OrderElementInput,
  type PourKind,
  type PublishedAllowance,
} from './concrete-order';
export type { DayVerdict } from './day-advice';
export {
  type AreaRateInput,
  type DayClock,
  type Daylight,
  type DayPlanFigures,
  type DayPlanInput,
  type DayStage,
  dayPlan,
  type HeldUp,
  type LengthRateInput,
} from './day-plan';
export type { DayFinish, DayRange } from './day-set';
export type { DayShift } from './day-shifts';
export type { DayStageName } from './day-stages';
export type { LoadSplit } from './loads';
export type { HoursInput } from './measured-hours';
export type {
  BuggyPlacingInput,
  ChutePlacingInput,
  PlacingInput,
  PublishedLoad,
  PublishedRate,
  PumpPlacingInput,
  RatedPlacingInput,
  WheeledPlacingInput,
} from './placing';
export type { PumpLineFigures, PumpLineInput } from './pump-line';
export type { ClockTime, ClockWindow } from './saw-clock';
export type { Hours, PublishedHours } from './saw-hours';
export { type ReadyInput, type SawWindowFigures, type SawWindowInput, sawWindow } from './saw-window';
export type { TruckVerdict } from './truck-advice';
export type { TruckClock, TruckLoad, TruckPlanFigures } from './truck-figures';
export type { TruckPlanInput } from './truck-input';
export { truckPlan } from './truck-plan';
