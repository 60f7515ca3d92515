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
  locator: 'answer: one-fourth of the thickness, one-fifth by some; the least of 1 in stands in the question',
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

export const EN5156_STAIRS: Source = {
  kind: 'published',
  title: 'Subcourse EN5156, stairway calculations',
  publisher: 'US Army Engineer School',
  locator: 'stairway calculations, rules 1 to 3',
  fromMemory: false,
};

export const MCGRAW_STEPS: Source = {
  kind: 'published',
  title: 'Masonry and Concrete (Complete Construction series)',
  publisher: 'McGraw-Hill',
  edition: '2001',
  locator: 'pages 283 to 285, figure 8-5, and page 294',
  fromMemory: false,
};

export const CC_STEP_TOLERANCE: Source = {
  kind: 'published',
  title: 'Troubleshooting stair treads and slopes (question and answer, citing IBC, IRC and NFPA 101)',
  publisher: 'Concrete Construction magazine',
  locator: 'answer, riser heights: 3/16 in between neighbours, 3/8 in within a flight',
  fromMemory: false,
};

export const CC_STEPS: Source = {
  kind: 'published',
  title: 'Laying out decorative steps (citing IRC R311.7.4 and R311.7.6)',
  publisher: 'Concrete Construction magazine',
  locator: 'codes define layout: risers, treads, pitch of 1/4 in per ft',
  fromMemory: false,
};

export const ABA_STAIRS: Source = {
  kind: 'published',
  title: 'ABA Accessibility Standards, 504 Stairways',
  publisher: 'US Access Board; US Department of Defense',
  locator: '504.2 and 504.3: risers 4 in to 7 in, treads at least 11 in, all alike',
  fromMemory: false,
};

export const BOCA_STAIRS: Source = {
  kind: 'published',
  title: 'BOCA Basic Building Code, as quoted in an answer on stair tolerances',
  publisher: 'Building Officials and Code Administrators; quoted by Concrete Construction magazine',
  edition: '1981',
  locator: 'risers 4 in to 7 in, treads 11 in to 14 in',
  fromMemory: false,
};

export const IRC_DOORS: Source = {
  kind: 'common-practice',
  title:
    'Landings and thresholds at doors, as the International Residential Code is commonly quoted (R311.3)',
  fromMemory: true,
};

export const ADA_WALKS: Source = {
  kind: 'common-practice',
  title:
    'Walking surfaces at most 1:20, across at most 1:48, as the 2010 ADA Standards are commonly quoted (403.3)',
  fromMemory: true,
};

export const UFC_SITE: Source = {
  kind: 'published',
  title: 'UFC 3-210-06A, Site Planning and Design: grading of parking and walks',
  publisher: 'US Department of Defense',
  locator: 'page of figure 4-12',
  fromMemory: false,
};

export const DRIVEWAY_CODES: Source = {
  kind: 'published',
  title: 'Ordinance 96-4 (driveways: 10% at most beyond the shoulder)',
  publisher: 'Village of Barrington Hills, Illinois',
  locator: 'driveway grades; other places allow 8% to 25%',
  url: 'https://codelibrary.amlegal.com/codes/barringtonhillsil/latest/barringtonhills_il/0-0-0-6213',
  fromMemory: false,
};

export const GARAGE_FLOORS: Source = {
  kind: 'common-practice',
  title: 'Garage floors fall 1/8 in per ft to the door or a drain; the code names the direction only',
  fromMemory: false,
};

export const MCGRAW_PATIO: Source = {
  kind: 'published',
  title: 'Masonry and Concrete (Complete Construction series)',
  publisher: 'McGraw-Hill',
  edition: '2001',
  locator: 'page 285: 1/4 in per ft away from the house, top at least 1 in, better 2 in, below sills',
  fromMemory: false,
};

export const NAVY_GRADES: Source = {
  kind: 'published',
  title: 'Equipment Operator training manual, NAVEDTRA 14081: checking grade with a level instrument',
  publisher: 'US Navy',
  locator: 'page 15-30, figure 15-51',
  fromMemory: false,
};

export const CBM_LEVELLING: Source = {
  kind: 'published',
  title: 'Carpenters and Builders Math, Plans and Specifications',
  publisher: 'Audel; Wiley',
  locator: 'figure 6-1, backsights and foresights',
  fromMemory: false,
};

export const RATIONAL_FORMULA: Source = {
  kind: 'published',
  title: 'Overland storm water run-off, code section 1046.32; storm water code 153.06',
  publisher: 'City of Davison, Michigan; Marshall County, Indiana',
  locator: '1046.32; 153.06(B): Q = C i A',
  fromMemory: false,
};

export const HERPICC_RUNOFF: Source = {
  kind: 'published',
  title:
    'HERPICC Stormwater Drainage Manual, runoff coefficients, as reprinted in the code of Marshall County',
  publisher: 'Purdue University; Marshall County, Indiana',
  edition: 'July 1994',
  locator: 'table 1',
  url: 'https://codelibrary.amlegal.com/codes/marshallcountyin/latest/marshallcounty_in/0-0-0-3446',
  fromMemory: false,
};

export const NYC_RUNOFF: Source = {
  kind: 'published',
  title: 'Plumbing Code 1114.3.1, runoff coefficients, as amended by Local Law 77 of 2023',
  publisher: 'City of New York',
  locator: '1114.3.1, equations 11-1 and 11-2',
  fromMemory: false,
};

export const UFGS_FLATNESS: Source = {
  kind: 'published',
  title: 'UFGS 03300N, Cast-in-Place Concrete',
  publisher: 'US Department of Defense',
  locator: '3.8.3, concrete walks: 1/4 in in 5 ft',
  fromMemory: false,
};

export const EXCAVATION_RULES: Source = {
  kind: 'common-practice',
  title: 'US federal rules on excavations, 29 CFR 1926 subpart P, as commonly quoted',
  fromMemory: true,
};

export const LIFTING_GUIDE: Source = {
  kind: 'common-practice',
  title:
    'Load constant of the lifting equation of the US National Institute for Occupational Safety and Health',
  fromMemory: true,
};

export const FHWA_EARTHWORK: Source = {
  kind: 'published',
  title: 'Project Development and Design Manual, chapter 9, section 9.4.C',
  publisher: 'US Federal Highway Administration, Federal Lands Highway',
  locator: 'earthwork design: shrink factor 1 / (1 + s), swell factor 1 + s',
  fromMemory: false,
};

export const PEARSON_EXCAVATION: Source = {
  kind: 'published',
  title: 'Estimating in Building Construction, excavation chapter',
  publisher: 'Pearson',
  locator: 'chapter 9, example 9-2 and section 9-12',
  fromMemory: false,
};

export const VIRGINIA_SPREAD: Source = {
  kind: 'published',
  title: 'Paving training study guide, chapter 9, Paving Math Problems',
  publisher: 'Virginia Department of Transportation, Materials Certification Schools',
  edition: '2011',
  locator: 'page 9-1: L = 9 T / (W R)',
  fromMemory: false,
};

export const COMPACTED_STONE: Source = {
  kind: 'common-practice',
  title: 'Usual densities of compacted base materials; the supplier and the test govern',
  fromMemory: true,
};

export const RADFORD_WEIGHTS: Source = {
  kind: 'published',
  title: "Radford's Cyclopedia of Construction, volume 5, miscellaneous data",
  publisher: 'Radford Architectural Company',
  edition: '1909',
  locator: 'weights of materials, page 4',
  fromMemory: false,
};

export const GILLETTE_WEIGHTS: Source = {
  kind: 'published',
  title: 'Concrete Construction: Methods and Costs',
  publisher: 'Myron C. Clark Publishing Co.',
  edition: '1908',
  locator: 'chapter II, weight of sand',
  fromMemory: false,
};

export const BAG_SHEETS: Source = {
  kind: 'common-practice',
  title: "Makers' data sheets of bagged concrete mix, which give 0.0075 ft3 for each pound",
  fromMemory: false,
};

export const EARLY_ENTRY_DEPTH: Source = {
  kind: 'published',
  title: 'Why Ultra Early Entry Saws Work (guest article, citing the Portland Cement Association)',
  publisher: 'L&M Construction Chemicals, Concrete News',
  edition: 'April 2010',
  locator: 'depth paragraph: 1 in up to 9 in thick; D/5 to D/6 up to 18 in',
  fromMemory: false,
};

export const TAPER_WIDTH: Source = {
  kind: 'published',
  title: 'Highway Engineering Handbook, rigid pavement jointing details (extract)',
  publisher: 'McGraw-Hill',
  locator: 'basic principles: taper at least 2 ft wide; panels to 2:1; joints square to edges',
  fromMemory: false,
};

export const IRREGULAR_SLABS: Source = {
  kind: 'published',
  title: 'Jointing irregularly shaped slabs',
  publisher: 'Concrete Construction magazine',
  locator: 'article: panels to 1.5:1, a joint at each re-entrant corner, none ending at another',
  fromMemory: false,
};

export const ACI_SAW_TIMES: Source = {
  kind: 'published',
  title: 'Frequently asked question 915, when to saw (citing ACI 302.1R-15, 325.12R-02 and 224.4R-13)',
  publisher: 'American Concrete Institute',
  locator: 'answer: 4 to 12 h; 2 to 6 h; about 1 h when hot to 4 h when cold',
  url: 'https://concrete.org/frequentlyaskedquestions.aspx?faqid=915',
  fromMemory: false,
};

export const CSA_CONTROL_JOINTS: Source = {
  kind: 'published',
  title: 'CSA A23.1-94, as quoted by an engineer on a forum',
  publisher: 'Canadian Standards Association; quoted on Eng-Tips',
  edition: '1994',
  locator: '20.2.1 and notes: 24 to 36 times, at most 5 m; t/4 to t/3; 6 to 18 h',
  fromMemory: false,
};

export const SAW_TIMES_ANSWER: Source = {
  kind: 'published',
  title: 'When to saw control joints (question and answer)',
  publisher: 'Concrete Construction magazine',
  locator: 'answer: about 4 h when hot to 3 days when cold, after finishing',
  fromMemory: false,
};

export const ELDRIDGE_CODE: Source = {
  kind: 'published',
  title: 'City code of Eldridge, Iowa',
  publisher: 'City of Eldridge, Iowa',
  locator: '5.33: sawn within 24 h, a quarter deep, 1/8 in wide',
  url: 'https://codelibrary.amlegal.com/codes/eldridgeia/latest/eldridge_ia/0-0-0-11570',
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
  locator: '3.8.3, walks: joint every 5 ft, 1 in deep; 3.8.5, curbs: every 10 ft, 3/4 in deep',
  fromMemory: false,
};

export const NAVY_REINFORCED: Source = {
  kind: 'published',
  title: 'Engineering Aid, NAVEDTRA 14069',
  publisher: 'US Navy',
  locator: 'page 7-17: reinforced slabs 15 to 25 ft each way; expansion joints every 20 ft',
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

export const SILICA_RULE: Source = {
  kind: 'common-practice',
  title: 'Silica in construction, 29 CFR 1926.1153 and its table 1 (saws with water or extraction)',
  publisher: 'US Occupational Safety and Health Administration',
  fromMemory: true,
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
  kind: 'common-practice',
  title: 'EN 1992-1-1, laps of neighbouring bars',
  publisher: 'European Committee for Standardization',
  edition: '2004',
  locator: '8.7.2: laps staggered by 1.3 lap lengths, centre to centre',
  fromMemory: true,
};

export const CLEAR_SPACING: Source = {
  kind: 'common-practice',
  title: 'ACI 318-19, least clear spacing of bars',
  publisher: 'American Concrete Institute',
  edition: '2019',
  locator: '25.2.1: 1 in, the bar, and four thirds of the aggregate',
  fromMemory: true,
};

export const OSHA_BARS: Source = {
  kind: 'common-practice',
  title: '29 CFR 1926, safety and health regulations for construction',
  publisher: 'US Occupational Safety and Health Administration',
  locator: '1926.701(b), protruding bars; 1926.501(b)(5), falls of 6 ft or more from reinforcing steel',
  fromMemory: true,
};

export const SLUMP_RANGE: Source = {
  kind: 'published',
  title: 'A slump conundrum (ACI 301 and ACI 117 as quoted)',
  publisher: 'Froehling & Robertson',
  edition: 'web note',
  locator: 'Speaking in code: 4 in with 1 in either way; up to 8 in with a high-range water reducer',
  fromMemory: false,
};

export const AGGREGATE_RANGE: Source = {
  kind: 'published',
  title: 'Frequently asked question 754, maximum size of aggregate',
  publisher: 'American Concrete Institute',
  edition: 'web FAQ',
  locator: 'FAQ 754: at most a third of the depth of a slab',
  fromMemory: false,
};
