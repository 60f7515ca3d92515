/** Whole job: the bid and the check of the invoice. */

export type { JobBidInput, OptionInput } from './bid-input';
export type {
  BidLineInput,
  CostKind,
  CrewInput,
  EquipmentLineInput,
  FeeLineInput,
  LaborLineInput,
  MaterialLineInput,
  ProductionInput,
  ShortLoadLineInput,
  SubcontractLineInput,
  WaitingLineInput,
} from './bid-lines';
export type { Measured, PriceInput } from './bid-money';
export type { OptionFigures } from './bid-options';
export type {
  AccountInput,
  ChangeFigures,
  ChangeInput,
  DoneInput,
  PaymentFigures,
  ProgressInput,
} from './bid-progress';
export type { BidRange, Distribution, LineRange } from './bid-range';
export { type JobBidFigures, jobBid, type LineFigures, type UnitPrice } from './job-bid';
