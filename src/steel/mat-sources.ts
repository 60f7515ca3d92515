/** Works that mats of bars, mesh and footing steel rest on, besides those that others share. */
import type { Source } from '../reckoning/source';

export const CENTER_TO_THIRD: Source = {
  kind: 'published',
  title: 'International Residential Code, support of reinforcement in slabs on ground',
  publisher: 'International Code Council',
  locator: 'R506.2.4: held in place from the center to the upper one third of the slab',
  fromMemory: true,
};

export const WIRE_SUPPORTS_BY_SIZE: Source = {
  kind: 'published',
  title: 'TF 702, supports for welded wire reinforcement in slabs on grade',
  publisher: 'Wire Reinforcement Institute',
  locator: 'table of support spacing by wire size and spacing',
  fromMemory: true,
};

export const RICHARDSON_SPACING: Source = {
  kind: 'published',
  title: 'Sidewalks and drive approaches',
  publisher: 'City of Richardson, Texas',
  edition: '23 November 2011',
  locator: 'items 1 to 4',
  fromMemory: false,
};
