/** The rules that a panel must keep, and how far a plan is from keeping them. */

/** Limits in meters, as binary numbers: the search compares with a hair of room. */
export interface Limits {
  /** The farthest apart that two joints may be. */
  readonly spacing: number;
  /** A panel narrower than this is a sliver. */
  readonly leastSide: number;
  /** Longer side over shorter side. */
  readonly ratio: number;
  /** How many meters of sawing a broken rule weighs as much as. */
  readonly weight: number;
  /** Whoever asks has given the ratio or the least side: they are kept wherever that can be done. */
  readonly strict: boolean;
}

/** A rule that a panel may have to break where nothing else can be had. */
export type PanelRule = 'sliver' | 'panel shape' | 'sharp corner';

/** A joint that meets an edge or another joint at a sharper angle leaves a corner that breaks off: 60 degrees. */
export const SHARP = Math.PI / 3;

/** Room for the rounding of binary numbers, in meters: a millionth of a millimeter. */
export const HAIR = 1e-9;

/** Which rules a panel of these sides breaks; an empty list for a good panel. */
export function brokenBy(w: number, h: number, { leastSide, ratio }: Limits): PanelRule[] {
  const [short, long] = w < h ? [w, h] : [h, w];
  const broken: PanelRule[] = [];
  if (short < leastSide - HAIR) broken.push('sliver');
  if (long > ratio * short + HAIR) broken.push('panel shape');
  return broken;
}

/**
 * Which rules a panel breaks that narrows: its length, its mean width, and its width where it is widest.
 * It is a sliver by its mean width, and too long by its widest.
 */
export function brokenWedge(
  deep: number,
  mean: number,
  widest: number,
  { leastSide, ratio }: Limits,
): PanelRule[] {
  const [short, long] = deep < widest ? [deep, widest] : [widest, deep];
  const broken: PanelRule[] = [];
  if (Math.min(deep, mean) < leastSide - HAIR) broken.push('sliver');
  if (long > ratio * short + HAIR) broken.push('panel shape');
  return broken;
}

/**
 * In the search for a plan that keeps every rule a broken one outweighs any length: a thousand
 * kilometers of sawing. A plan that costs as much does not keep them.
 */
export const BROKEN = 1e6;

/** Where no plan keeps every rule, each broken one weighs as much as sawing two sides of the largest panel. */
export const softened = (limits: Limits): Limits => ({ ...limits, weight: 2 * limits.spacing });

/** Among plans of one length the squarer one is taken; far too light to outweigh a cut. */
const SQUARENESS = 1e-9;

/**
 * The rules that a panel breaks, with a hair for its shape; infinite where it is over the spacing. Rules
 * and hair are told apart again by {@link weighed}.
 */
export function panelCost(w: number, h: number, limits: Limits): number {
  if (w > limits.spacing + HAIR || h > limits.spacing + HAIR) return Number.POSITIVE_INFINITY;
  const [short, long] = w < h ? [w, h] : [h, w];
  const broken = (short < limits.leastSide - HAIR ? 1 : 0) + (long > limits.ratio * short + HAIR ? 1 : 0);
  return broken + (long - short) * SQUARENESS;
}

/** What a corner passed by counts as, among whole broken rules and hairs of shape. */
export const PASSED = 1e-5;

/** Such a corner weighs as much as a foot of sawing: a joint is moved for it where there is room, none added. */
const PASSED_LENGTH = 0.3;

/** The cost of panels, each broken rule and each corner passed by weighing as much as a length of sawing. */
export function weighed(panels: number, weight: number): number {
  if (panels === Number.POSITIVE_INFINITY) return panels;
  const broken = Math.round(panels);
  const rest = panels - broken;
  if (rest < PASSED / 2) return broken * weight + rest;
  const passed = Math.round(rest / PASSED);
  return broken * weight + passed * PASSED_LENGTH + (rest - passed * PASSED);
}
