/**
 * What the dimensions of an outline must satisfy for the outline to exist, whatever is asked of it.
 *
 * Areas and rings of corners are made in different places, and both start here, so that no calculation
 * can let pass what another one refuses.
 */

import * as sharedFaults from '../quantity/faults';
import { canonicalValue } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import * as faults from './faults';
import type { Outline, OutlineOf } from './outline';
import { checkSize } from './size';

const FULL_TURN = 360;

function sector({ radius, angle, innerRadius }: OutlineOf<'sector'>, path: string): void {
  if (canonicalValue(angle).greaterThan(FULL_TURN)) refuse(`${path}.angle`, faults.angleTooWide());
  if (innerRadius && !innerRadius.lessThan(radius)) {
    refuse(`${path}.innerRadius`, sharedFaults.doesNotFit('innerRadius', 'radius'));
  }
}

function ring({ outerDiameter, innerDiameter }: OutlineOf<'ring'>, path: string): void {
  if (!innerDiameter.lessThan(outerDiameter)) {
    refuse(`${path}.innerDiameter`, sharedFaults.doesNotFit('innerDiameter', 'outerDiameter'));
  }
}

function notched(outline: OutlineOf<'L'> | OutlineOf<'U'>, path: string): void {
  const { length, width, notchLength, notchWidth } = outline;
  if (!notchLength.lessThan(length)) {
    refuse(`${path}.notchLength`, sharedFaults.doesNotFit('notchLength', 'length'));
  }
  if (!notchWidth.lessThan(width))
    refuse(`${path}.notchWidth`, sharedFaults.doesNotFit('notchWidth', 'width'));
}

/**
 * Refuse an outline whose dimensions contradict each other.
 *
 * @param path - where the outline stands in the input
 * @throws {InputError} `does-not-fit`; `too-many` for parts that are too much together
 */
export function checkFits(outline: Outline, path: string): void {
  if (outline.shape === 'sector') sector(outline, path);
  else if (outline.shape === 'ring') ring(outline, path);
  else if (outline.shape === 'L' || outline.shape === 'U') notched(outline, path);
  else if (outline.shape === 'combined') checkSize([outline], path);
}
