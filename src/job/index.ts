/** Whole job: take-off, bid and invoice. */
export type { ElementChoices, JobElementInput, JobInput, Raw, SharedInput } from './document';
export {
  type JobElementFigures,
  type JobMissingFigures,
  type JobMixFigures,
  type JobOverlapFigures,
  type JobTakeoffFigures,
  jobTakeoff,
  type ReckonedJob,
  type ReckonJobOptions,
  reckonJob,
} from './job-takeoff';
export type { ElementParts, JobMixInput, JobParts, PartInput, SomeOf } from './part-inputs';
export type { Purchase, PurchaseShare } from './purchases';
export type { JobPart } from './work';
