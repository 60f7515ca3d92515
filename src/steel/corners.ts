/** How many corners a region has at least, told from its input before any of it is placed or checked. */
import type { Opening, Region } from '../outline/region';
import { CIRCLE_SIDES } from '../outline/ring';
import { canonicalValue } from '../quantity/quantity';

const RECTANGLE = 4;

function openingCorners(opening: Opening): number {
  if (opening.shape === 'polygon') return opening.points.length;
  if (opening.shape === 'regular') return canonicalValue(opening.sides).toNumber();
  return opening.shape === 'circle' ? CIRCLE_SIDES : RECTANGLE;
}

/** Corners that the input lists or names; arcs may come to more. */
export function listedCorners({ outline, openings }: Region): number {
  const listed = outline.shape === 'polygon' || outline.shape === 'curved' ? outline.points.length : 0;
  return (openings ?? []).reduce((n, opening) => n + openingCorners(opening), listed);
}
