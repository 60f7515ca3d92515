/** Plans of outlines and of thicknesses. */
import { type Growth, growth } from './growth';
import { placed, withOpenings } from './regions';
import { volumes } from './volumes';

export const drawings: readonly Growth[] = [
  ...placed('drawing/outline-plan', (part) => part),
  ...withOpenings('drawing/outline-plan', (part) => part),
  ...volumes
    .filter(({ of }) => of === 'truck-plan')
    .map(({ what, input, ...ends }) => growth('drawing/truck-timeline', what, input, ends)),
  ...volumes
    .filter(({ of }) => of === 'probed-volume')
    .map(({ what, input, ...ends }) => growth('drawing/thickness-plan', what, input, ends)),
];
