/**
 * Where a rule or a figure comes from.
 *
 * A source is `published` only where the work is identified and was read, whole or as quoted;
 * what is only known to the trade is `common-practice`; what follows from geometry or from the
 * definition of a unit is `closed-form`.
 */

/** A source of a rule, a default or a limit. */
export interface Source {
  /** What sort of source it is. */
  readonly kind: 'published' | 'common-practice' | 'closed-form';
  /** Title of the work. */
  readonly title: string;
  /** Who published it, and who quotes it where it was read in a quotation. */
  readonly publisher?: string;
  /** Edition or year. */
  readonly edition?: string;
  /** Chapter, clause, table or page. */
  readonly locator?: string;
  /** Address, where it is the publisher's own or a public archive's. */
  readonly url?: string;
  /** True when written down from memory and not checked against the work. */
  readonly fromMemory: boolean;
}

/** Geometry, or the definition of a unit. */
export const CLOSED_FORM: Source = {
  kind: 'closed-form',
  title: 'Geometry and the definitions of the units',
  fromMemory: false,
};

/** What the trade does, with no document to name. */
export const COMMON_PRACTICE: Source = {
  kind: 'common-practice',
  title: 'Common practice of the trade',
  fromMemory: true,
};

export const IRC_SLAB_THICKNESS: Source = {
  kind: 'published',
  title: 'International Residential Code, as quoted in an article on slabs on grade',
  publisher: 'International Code Council; quoted by EVstudio',
  edition: '2009',
  locator: 'R506.1',
  fromMemory: false,
};

export const IRC_DRAINAGE: Source = {
  kind: 'published',
  title: 'International Residential Code, as quoted on a forum of inspectors',
  publisher: 'International Code Council',
  edition: '2006',
  locator: 'R401.3 and its exception',
  fromMemory: false,
};

export const IRC_STAIRS: Source = {
  kind: 'published',
  title: 'International Residential Code, stairways, as summarised by Jefferson County, Colorado',
  publisher: 'International Code Council; Jefferson County',
  edition: '2018',
  locator: 'R311.7.5.1 and R311.7.5.2',
  url: 'https://www.jeffco.us/2095/Stairways',
  fromMemory: false,
};

export const IRC_HANDRAIL: Source = {
  kind: 'common-practice',
  title:
    'Handrail on flights of four or more risers, as the International Residential Code is commonly quoted (R311.7.8)',
  fromMemory: true,
};

export const ADA_RAMPS: Source = {
  kind: 'published',
  title: '2010 ADA Standards for Accessible Design',
  publisher: 'US Department of Justice',
  edition: '2010',
  locator: '405.2, 405.3 and 405.7',
  fromMemory: false,
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
  locator: 'answer: one-fourth of the thickness, at least 1 in',
  fromMemory: false,
};

export const CRSI_BARS: Source = {
  kind: 'published',
  title: 'Manual of Standard Practice',
  publisher: 'Concrete Reinforcing Steel Institute',
  edition: '27th ed., 2001',
  locator: 'inside front cover, table of inch-pound bars',
  fromMemory: false,
};

export const ACI_318_COVER: Source = {
  kind: 'published',
  title: 'Cover for Rebars (answer quoting ACI 318-71)',
  publisher: 'Concrete Construction magazine; American Concrete Institute',
  edition: 'ACI 318-71',
  locator: 'table of minimum cover',
  fromMemory: false,
};

export const VCC_LAP: Source = {
  kind: 'published',
  title: 'Virginia Construction Code, masonry, lap splices',
  publisher: 'Commonwealth of Virginia; International Code Council',
  edition: '2021',
  locator: '2107.2.1: 40 bar diameters, at least 12 in',
  fromMemory: false,
};

export const WRI_STYLES: Source = {
  kind: 'published',
  title: 'New welded wire fabric numbering system explained',
  publisher: 'Concrete Construction magazine; Wire Reinforcement Institute',
  edition: 'October 1975',
  locator: 'page 454, table I',
  fromMemory: false,
};

export const PEARSON_MESH: Source = {
  kind: 'published',
  title: 'Estimating in Building Construction',
  publisher: 'Pearson',
  edition: '7th ed.',
  locator: 'chapter 10, page 102',
  fromMemory: false,
};

export const ARMY_WEIGHTS: Source = {
  kind: 'published',
  title: "TM 9-2320-366-10-1, operator's manual of a 5-ton truck",
  publisher: 'US Army',
  locator: 'table 2-15, material weight by volume',
  fromMemory: false,
};

export const PCA_DRAINAGE: Source = {
  kind: 'published',
  title: "1/2 plus 1/2 doesn't equal 1 (question and answer)",
  publisher: 'Concrete Construction magazine, citing the Portland Cement Association and ACI 302',
  locator: 'answer: at least 1%, about 2% recommended',
  fromMemory: false,
};

export const UFGS_WALKS: Source = {
  kind: 'published',
  title: 'UFGS 03300N, Cast-in-Place Concrete',
  publisher: 'US Department of Defense',
  locator: '3.8.3, concrete walks: cross slope 1/48',
  fromMemory: false,
};

export const WASTE_TEXTS: Source = {
  kind: 'published',
  title: 'Estimating in Building Construction (5% footings, 8% slabs) and NAVEDTRA 14070 (10%)',
  publisher: 'Pearson; US Navy',
  locator: 'section 10-2; chapter 5',
  fromMemory: false,
};

export const A615_SOFT_METRIC: Source = {
  kind: 'published',
  title: 'ASTM A615/A615M table 1, as reproduced on the standards page of a mill',
  publisher: 'ASTM; reproduced by a mill',
  locator: 'table 1, nominal masses and dimensions; table 2, grades 40 and 60',
  fromMemory: false,
};

export const A615_HARD_METRIC: Source = {
  kind: 'published',
  title: 'ASTM A615/A615M-95c, as reproduced: dimensions and mass',
  publisher: 'ASTM',
  edition: '1995',
  locator: 'section A',
  fromMemory: false,
};

export const ACI_439_WIRE: Source = {
  kind: 'published',
  title: 'ACI 439.5R-18, welded wire reinforcement',
  publisher: 'American Concrete Institute',
  edition: '2018',
  locator: '1.3, W and D designations',
  fromMemory: false,
};

export const ACI_318_DEVELOPMENT: Source = {
  kind: 'published',
  title: 'ACI 318-19 chapter 25, as given in lecture notes on development length and splices',
  publisher: 'American Concrete Institute; an online course on reinforced concrete',
  edition: '2019',
  locator: '25.4.2 and the class A and B splices',
  fromMemory: false,
};

export const ACI_318_RATIO: Source = {
  kind: 'published',
  title: 'Shrinkage and temperature reinforcement, on ACI 318-02 section 7.12',
  publisher: 'Concrete International, American Concrete Institute',
  edition: '2002',
  locator:
    'checklist: 0.0020 for grades 40 and 50, 0.0018 for grade 60; at most 5 thicknesses or 18 in apart',
  fromMemory: false,
};

export const CRSI_DRAG: Source = {
  kind: 'published',
  title: 'Reinforcing Steel in Slabs-on-Grade, Engineering Data Report No. 37',
  publisher: 'Concrete Reinforcing Steel Institute',
  locator: 'subgrade drag formula; friction factor 1.5, working stress two thirds of yield',
  fromMemory: false,
};

export const DOWEL_FLOORS: Source = {
  kind: 'published',
  title: 'Joint movement and spalling from lift truck traffic (question and answer)',
  publisher: 'Concrete Construction magazine',
  locator: 'table of dowels for slabs of 5 in to 10 in',
  fromMemory: false,
};

export const DOWEL_PAVEMENTS: Source = {
  kind: 'published',
  title: 'UFC 3-260-02, Pavement Design for Airfields',
  publisher: 'US Army, Navy and Air Force',
  edition: '30 June 2001',
  locator: 'table 12-8',
  fromMemory: false,
};

export const ACI_FIBRE: Source = {
  kind: 'published',
  title: 'Frequently asked question 926: least fibre dosage',
  publisher: 'American Concrete Institute',
  locator: 'answer',
  fromMemory: false,
};

export const WIRE_SUPPORTS: Source = {
  kind: 'published',
  title: 'Choosing supports for welded wire reinforcement (question and answer)',
  publisher: 'Concrete Construction magazine, on the practice of the Wire Reinforcement Institute',
  locator: 'supports 2 ft to 6 ft apart; 2 in below the surface or in the upper third',
  fromMemory: false,
};

export const WSDOT_TIES: Source = {
  kind: 'published',
  title: 'Standard Specifications, amendment to 6-02.3(24)C',
  publisher: 'Washington State Department of Transportation',
  locator: 'every crossing at 1 ft or more apart, every other one below',
  fromMemory: false,
};

export const TIE_WIRE_COURSE: Source = {
  kind: 'published',
  title: 'Quantity Surveying, module 4, steel works part 1 (course notes)',
  publisher: 'a university course in the Philippines',
  locator: 'area method, problem 2: 0.30 m of No. 16 wire a tie, 53 m a kilogram',
  fromMemory: false,
};

export const STAGGER_RULE: Source = {
  kind: 'published',
  title: 'EN 1992-1-1, laps of neighbouring bars',
  publisher: 'European Committee for Standardization',
  edition: '2004',
  locator: '8.7.2: laps staggered by 1.3 lap lengths, centre to centre',
  fromMemory: true,
};

export const CLEAR_SPACING: Source = {
  kind: 'published',
  title: 'ACI 318-19, least clear spacing of bars',
  publisher: 'American Concrete Institute',
  edition: '2019',
  locator: '25.2.1: 1 in, the bar, and four thirds of the aggregate',
  fromMemory: true,
};

export const OSHA_BARS: Source = {
  kind: 'published',
  title: '29 CFR 1926, safety and health regulations for construction',
  publisher: 'US Occupational Safety and Health Administration',
  locator: '1926.701(b), protruding bars; 1926.501(b)(5), falls of 6 ft or more from reinforcing steel',
  fromMemory: true,
};
