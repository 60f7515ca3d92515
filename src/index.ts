/**
 * Flatwork reckoner: quantities and checks for concrete flatwork.
 *
 * @packageDocumentation
 */
export * from './base/index';
export * from './concrete/index';
export * from './finish/index';
export * from './forms/index';
export * from './grade/index';
export * from './job/index';
export * from './joints/index';
export * from './mix/index';
export * from './opinion/index';
export * from './outline/index';
export * from './pour/index';
export * from './quantity/index';
export * from './reckoning/index';
export * from './steel/index';
export * from './steps/index';
export * from './weather/index';
