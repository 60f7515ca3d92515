/**
 * Everything in one file, for a page without a bundler.
 *
 * @packageDocumentation
 */
export * from './catalog/index';
export * from './drawing/index';
export * from './index';
export * from './report/index';
