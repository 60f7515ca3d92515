/**
 * Everything in one file, for a page without a bundler: calculations, quantities, sheets and plans. What a form is made
 * of, which comes one calculation at a time, is left to the catalog.
 *
 * @packageDocumentation
 */
export * from './catalog/all';
export * from './drawing/index';
export * from './index';
export * from './report/index';
