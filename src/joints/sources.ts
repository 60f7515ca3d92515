/** Sources of the rules for joints that only this folder uses. */
import type { Source } from '../reckoning/source';

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
  locator: 'abstract',
  url: 'http://www.concreteconstruction.net/how-to/construction/guide-to-jointing-unreinforced-pavements_o',
  fromMemory: false,
};

/** A cap on the spacing, whatever the thickness. */
export const POOL_DECK_JOINTS: Source = {
  kind: 'published',
  title: 'Joint rules for a pool deck',
  publisher: 'Concrete Construction magazine',
  edition: '2010',
  locator: 'hint',
  fromMemory: false,
};

/** Joints in curved and straight slabs. */
export const CURVED_JOINTS: Source = {
  kind: 'published',
  title: 'Curved joint placement',
  publisher: 'Concrete Decor magazine',
  edition: 'volume 7, number 8, December 2007',
  locator: 'opening',
  fromMemory: false,
};

/** Spacing by thickness and base. */
export const PAVEMENT_LAYOUT: Source = {
  kind: 'published',
  title: 'Basics of concrete pavement: joint layout',
  publisher: 'American Concrete Pavement Association, E. Ferrebee',
  edition: '51st annual concrete paving workshop, 2015',
  locator: 'maximum spacing',
  fromMemory: false,
};

/** Widths of slabs. */
export const JOINT_LAYOUT_RULES: Source = {
  kind: 'published',
  title: 'Joint layout: rules for intersections, culs-de-sac and roundabouts',
  publisher: 'American Concrete Pavement Association',
  locator: 'rules',
  url: 'http://wikipave.org/index.php?title=Joint_Layout',
  fromMemory: false,
};

/** How deep joints in walks and curbs are, by a guide specification. */
export const LEAST_JOINT_DEPTH: Source = {
  kind: 'common-practice',
  title: 'Common practice of the trade; UFGS 03300N has a depth of its own for walks',
  fromMemory: true,
};

export const PCA_JOINTS: Source = {
  kind: 'published',
  title: 'Concrete Floors on Ground, spacing table, as reprinted in a construction databook',
  publisher: 'Portland Cement Association; reprinted by McGraw-Hill',
  edition: '2nd ed., 1983',
  locator: 'table of maximum spacing of control joints',
  fromMemory: false,
};

export const ACI_302_JOINTS: Source = {
  kind: 'published',
  title: 'ACI 302.1R-96, as quoted in an answer on responsibility for floor cracks',
  publisher: 'American Concrete Institute; quoted in The Concrete Producer',
  edition: '1996',
  locator: '24 to 36 times the thickness, at most 18 ft',
  fromMemory: false,
};

export const MCGRAW_JOINTS: Source = {
  kind: 'published',
  title: 'Masonry and Concrete (Complete Construction series)',
  publisher: 'McGraw-Hill',
  edition: '2001',
  locator: 'section 2.5.1 and figure 2-15, pages 30 and 31',
  fromMemory: false,
};

export const JOINT_DEPTH: Source = {
  kind: 'published',
  title: 'Recommended depth for control joints (question and answer)',
  publisher: 'Concrete Construction magazine',
  locator: 'answer: one-fourth of the thickness, one-fifth by some; the least of 1 in stands in the question',
  fromMemory: false,
};

export const TAPER_WIDTH: Source = {
  kind: 'published',
  title: 'Highway Engineering Handbook, rigid pavement jointing details (extract)',
  publisher: 'McGraw-Hill',
  locator: 'basic principles',
  fromMemory: false,
};

export const SLAB_LENGTH_RATIO: Source = {
  kind: 'published',
  title: 'Joint Design (after FHWA T 5040.30)',
  publisher: 'Pavement Interactive',
  locator: 'joint spacing: length over radius of relative stiffness not above 5.0',
  fromMemory: false,
};

export const WESTERGAARD: Source = {
  kind: 'published',
  title: 'Pavement Guide, training module 6, curling stress example (after Westergaard)',
  publisher: 'University of Washington; Washington State Department of Transportation',
  locator: 'curling example, step 1',
  url: 'http://training.ce.washington.edu/WSDOT/Modules/06_structural_design/curling_example.htm',
  fromMemory: false,
};

export const ARMY_SLAB_PANELS: Source = {
  kind: 'published',
  title: 'TM 5-809-12, Concrete Floor Slabs on Grade Subjected to Heavy Loads',
  publisher: 'US Departments of the Army and the Air Force',
  edition: '25 August 1987',
  locator: 'paragraph 5-5: panels at most 25% longer than wide and 600 ft2',
  fromMemory: false,
};

export const SUDAS_JOINTS: Source = {
  kind: 'published',
  title: 'SUDAS Design Manual, 5G-2 Types of Joints',
  publisher: 'Iowa Statewide Urban Design and Specifications',
  locator: 'section B and table 5G-2.01',
  fromMemory: false,
};

export const UFC_AIRFIELDS: Source = {
  kind: 'published',
  title: 'UFC 3-260-02, Pavement Design for Airfields',
  publisher: 'US Department of Defense',
  edition: '30 June 2001',
  locator: 'table 12-7',
  fromMemory: false,
};

export const IRMCA_JOINTS: Source = {
  kind: 'published',
  title: 'Concrete pavement profile: Joints',
  publisher: 'Illinois Ready Mixed Concrete Association',
  locator: 'joint paragraph',
  fromMemory: false,
};

export const UFGS_WALK_JOINTS: Source = {
  kind: 'published',
  title: 'UFGS 03300N, Cast-in-Place Concrete',
  publisher: 'US Department of Defense',
  locator: '3.8.3, walks',
  fromMemory: false,
};

export const NAVY_REINFORCED: Source = {
  kind: 'published',
  title: 'Engineering Aid, NAVEDTRA 14069',
  publisher: 'US Navy',
  locator: 'page 7-17',
  fromMemory: false,
};

export const PCA_NO_INTERVAL: Source = {
  kind: 'published',
  title: 'Expansion joints in sidewalks (question and answer)',
  publisher: 'Concrete Construction magazine, quoting the Portland Cement Association',
  locator: 'answer: isolation at rigid objects; none needed at regular intervals',
  fromMemory: false,
};

export const FLOOR_SAWING: Source = {
  kind: 'published',
  title: 'Sawcutting joints in concrete',
  publisher: 'Concrete Construction magazine',
  locator: 'article: 12 to 25 ft; a quarter to a third deep',
  fromMemory: false,
};
