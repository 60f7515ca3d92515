/** Sources of the rules for joints that only this folder uses. */
import type { Source } from '../reckoning/source';

/** What hours of early-entry sawing are counted from; only secondary sources print it. */
export const EARLY_FROM_FINISHING: Source = {
  kind: 'common-practice',
  title: 'Placing joints in concrete, notes that repeat published guidance (a secondary source)',
  publisher: 'civil engineering study site',
  locator: 'early-entry saws: 1 to 4 h after finishing',
  fromMemory: false,
};

/** Sawing by day and night, with proper lights. */
export const UFGS_SAWING: Source = {
  kind: 'published',
  title: 'UFGS 02753, concrete pavement for airfields: sawing of contraction joints',
  publisher: 'US Army Corps of Engineers, guide specification',
  locator:
    'as soon as it can be cut without chipping; day and night, with lights; consecutively as placed; none where a crack is near',
  url: 'https://ufgscriteriadocreport.tpub.com/02753/027530070.htm',
  fromMemory: false,
};

/** When to saw, and why the morning is too late. */
export const SAW_SAME_DAY: Source = {
  kind: 'published',
  title: 'When to saw control joints (question and answer)',
  publisher: 'Concrete Construction magazine',
  locator:
    'waiting for the morning is too late; a light early saw lets a morning placement be cut the same day',
  url: 'http://www.concreteconstruction.net/how-to/when-to-saw-control-joints_o',
  fromMemory: false,
};

/** Sawing times of unreinforced pavements. */
export const PAVEMENT_JOINTING: Source = {
  kind: 'published',
  title: 'Guide to jointing unreinforced pavements',
  publisher: 'Concrete Construction magazine',
  locator: 'abstract: sawn 4 to 24 h after placing, by conditions; 15 to 20 ft; 15 ft under 6 in',
  url: 'http://www.concreteconstruction.net/how-to/construction/guide-to-jointing-unreinforced-pavements_o',
  fromMemory: false,
};

/** A cap on the spacing, whatever the thickness. */
export const POOL_DECK_JOINTS: Source = {
  kind: 'published',
  title: 'Joint rules for a pool deck of 4 in',
  publisher: 'Concrete Construction magazine',
  edition: '2010',
  locator:
    'hint: the thickness in inches times 2 ft, at most 15 ft; panels to 1.5 to 1; no angle under 60 degrees',
  fromMemory: false,
};

/** Joints in curved and straight slabs. */
export const CURVED_JOINTS: Source = {
  kind: 'published',
  title: 'Curved joint placement',
  publisher: 'Concrete Decor magazine',
  edition: 'volume 7, number 8, December 2007',
  locator: 'opening: 24 to 36 times the thickness, at most 15 ft; at least a quarter deep',
  fromMemory: false,
};

/** Spacing by thickness and base. */
export const PAVEMENT_LAYOUT: Source = {
  kind: 'published',
  title: 'Basics of concrete pavement: joint layout',
  publisher: 'American Concrete Pavement Association, E. Ferrebee',
  edition: '51st annual concrete paving workshop, 2015',
  locator: 'maximum spacing: 24 times on granular base, 21 on treated base; 15 ft under 10 in thick',
  fromMemory: false,
};

/** Widths of slabs. */
export const JOINT_LAYOUT_RULES: Source = {
  kind: 'published',
  title: 'Joint layout: rules for intersections, culs-de-sac and roundabouts',
  publisher: 'American Concrete Pavement Association',
  locator: 'rules: no slab over 15 ft (4.5 m) wide unless local experience says otherwise, none under 2 ft',
  url: 'http://wikipave.org/index.php?title=Joint_Layout',
  fromMemory: false,
};

/** How deep joints in walks and curbs are, by a guide specification. */
export const LEAST_JOINT_DEPTH: Source = {
  kind: 'common-practice',
  title: 'Common practice of the trade; UFGS 03300N has 1 in in walks',
  fromMemory: true,
};
