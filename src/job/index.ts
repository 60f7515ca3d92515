/** Whole job: take-off, bid and invoice. */

export type { AlsoInput } from './also';
export type { JobBidInput, OptionInput } from './bid-input';
export type {
  BidLineInput,
  CostKind,
  CrewInput,
  EquipmentLineInput,
  FeeLineInput,
  JobLineInput,
  JobShortLoadLineInput,
  JobSoldLineInput,
  LaborLineInput,
  LineElementInput,
  MaterialLineInput,
  ProductionInput,
  ShortLoadLineInput,
  SubcontractLineInput,
  WaitingLineInput,
} from './bid-lines';
export type { Measured, PriceInput } from './bid-money';
export { type BidOfJob, type BidOfJobOptions, bidOfJob, withoutPrices } from './bid-of-job';
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
export type { PriceGroup, PriceShown } from './bid-shares';
export type {
  ContingencyInput,
  OverheadInput,
  PriceTaxInput,
  ProfitInput,
  PurchaseTaxInput,
  TermsInput,
} from './bid-terms';
export {
  type ComparedJob,
  compareJobs,
  type ElementChange,
  type JobChanges,
  type LineChange,
  type MoneyChanges,
  type PurchaseChange,
  type QuantityChange,
} from './compare-jobs';
export type { DayLimitsInput, DayParts, JobDayInput } from './day-inputs';
export type { ElementChoices, JobElementInput, JobInput, Raw, SharedInput } from './document';
export type { TakeoffQuantityInput } from './from-input';
export type {
  ChargeFigures,
  InvoiceFigures,
  InvoiceInput,
  InvoiceLineInput,
  InvoiceTaxInput,
  ShortLoadChargeInput,
  WaitingChargeInput,
} from './invoice-charges';
export {
  type CarriedAllowance,
  type ElementCheckFigures,
  type InvoiceCheckFigures,
  type InvoiceCheckInput,
  type InvoiceElementInput,
  type InvoiceTicketInput,
  invoiceCheck,
  type PastJobInput,
} from './invoice-check';
export type { ItemPrice } from './item-price';
export {
  type JobBidFigures,
  jobBid,
  type LineElementFigures,
  type LineFigures,
  type UnitPrice,
} from './job-bid';
export { jobTakeoff, type ReckonedJob, type ReckonJobOptions, reckonJob } from './job-takeoff';
export type { ElementParts, JobMixInput, JobParts, PartInput, SomeOf } from './part-inputs';
export type { PayStageInput } from './pay-stages';
export { type PricedPurchases, pricedPurchases } from './priced';
export type { JobPricesInput } from './prices';
export type { Purchase, PurchaseShare } from './purchases';
export type {
  JobDayFigures,
  JobElementFigures,
  JobFormsOffFigures,
  JobMissingFigures,
  JobMixFigures,
  JobOverlapFigures,
  JobTakeoffFigures,
} from './takeoff-figures';
export { migrateJob } from './versions';
export type { JobPart } from './work';
