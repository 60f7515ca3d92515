/** How each sign on the plan of a surface is drawn. */
import type { Attributes } from '../svg';

const thin = (width: number, dashes?: string): Attributes => ({
  stroke: 'ink',
  'stroke-width': width,
  ...(dashes ? { 'stroke-dasharray': dashes } : {}),
});

export const STROKES = {
  contour: thin(0.4),
  heavy: thin(0.9),
  arrow: thin(0.9),
  shore: thin(1, '5 2'),
  building: thin(3),
  curb: thin(1.6, '1.6 1.6'),
  open: thin(1.2, '10 4'),
  drain: thin(2.6, '1 2.4'),
  outside: thin(0.7),
  hatch: thin(0.5),
};
