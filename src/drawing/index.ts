/**
 * Plans and sections as SVG text.
 *
 * @packageDocumentation
 */
export { matPlan, matSection, meshPlan } from './mat-plan';
