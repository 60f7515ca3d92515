/** Sources of the rules for the grades of forms. */
import type { Source } from '../reckoning/source';

/** Slopes by use, least and most. */
export const GRADING_TABLE: Source = {
  kind: 'published',
  title: 'Site Engineering for Landscape Architects (Strom, Nathan, Woland), as quoted in a stormwater guide',
  publisher: 'Wiley; quoted by the Sustainable Technologies Evaluation Program, Toronto',
  edition: '6th ed., 2013',
  locator: 'grading standards and critical gradients',
  url: 'https://wiki.sustainabletechnologies.ca/wiki/Grading',
  fromMemory: false,
};

/** How deep fill under a slab may be without approval. */
export const IRC_FILL: Source = {
  kind: 'published',
  title: 'International Residential Code, slabs on ground, as quoted in a note on code requirements',
  publisher: 'International Code Council; quoted by EVstudio',
  edition: 'IRC 2009',
  locator: 'R506.2.1',
  url: 'https://evstudio.com/code-requirements-for-concrete-slabs-on-grade',
  fromMemory: false,
};
