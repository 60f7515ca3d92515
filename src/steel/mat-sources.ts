/** Works that mats of bars, mesh and footing steel rest on, besides those that others share. */
import type { Source } from '../reckoning/source';

export const CENTER_TO_THIRD: Source = {
  kind: 'published',
  title: 'International Residential Code, support of reinforcement in slabs on ground',
  publisher: 'International Code Council',
  locator: 'R506.2.4: held in place from the center to the upper one third of the slab',
  fromMemory: true,
};
