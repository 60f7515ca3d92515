/** The mix: what the concrete has to be, and whether a ticket says so. */
export type { Air } from './air';
export {
  type BatchedAggregateInput,
  type DeliveryTicketFigures,
  type DeliveryTicketInput,
  deliveryTicket,
  type OrderedMixInput,
  type OrderedPart,
} from './delivery-ticket';
export type { FrostClass, MixUse, Sulfate, Weathering } from './exposure';
export type { FlowClass } from './flow';
export {
  type MixAskedFigures,
  type MixOfferInput,
  type MixRequirementsFigures,
  type MixRequirementsInput,
  mixRequirements,
} from './mix-requirements';
export type { MixStandard } from './rule-row';
export type { WaterEffect } from './site-water';
export type { SlumpClass } from './slump';
export type { MixBySource } from './standards';
