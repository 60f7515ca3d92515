/**
 * Sheets of one result or of several together, tables for the yard, and text made of results.
 *
 * @packageDocumentation
 */
export {
  barOrderCsv,
  barOrderMarkdown,
  barScheduleCsv,
  barScheduleMarkdown,
  cuttingCsv,
  cuttingMarkdown,
  type ScheduleUnits,
} from './bar-schedule';
export { type CheckView, checkHtml, checkMarkdown } from './check-page';
export { checkSheet } from './check-sheet';
export type { Paper, Picture } from './html';
export { type JobPage, jobHtml, type PageView } from './job-pages';
export { jobParts } from './job-parts';
export { markdownSheet } from './markdown-sheet';
export { type PurchaseRow, purchaseCsv, purchaseRows } from './purchases';
export { type Quote, quoteCsv, quoteHtml, quoteMarkdown, quoteText } from './quote';
export type { QuoteClause } from './quote-clauses';
export type { OptionNote, QuoteTerms } from './quote-input';
export type { Part, SheetView, WithInput } from './sheet';
export { textSheet, worksheet } from './text-sheet';
export {
  type Language,
  quantityText,
  type StepText,
  stepText,
  type View,
  valueText,
  wordsText,
} from './view';
