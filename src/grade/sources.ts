/** Sources of the drainage checks and the straightedge. */
import type { Source } from '../reckoning/source';

/** A limit that the input itself gave. */
export const GIVEN: Source = {
  kind: 'common-practice',
  title: 'The limit given with the input',
  fromMemory: false,
};

export const GUTTER_LEAST: Source = {
  kind: 'published',
  title: 'Hydraulic Design Manual, chapter 10, section 4: pavement drainage, longitudinal slopes',
  publisher: 'Texas Department of Transportation',
  edition: 'online manual',
  locator: 'gutters of curbed pavement: at least 0.3% along',
  url: 'https://www.txdot.gov/manuals/des/hyd/chapter-10--storm-drains/section-4--pavement-drainage/longitudinal-slopes.html',
  fromMemory: false,
};

export const GRADING_STANDARDS: Source = {
  kind: 'published',
  title:
    'Site Engineering for Landscape Architects, grading standards and critical gradients, as quoted in a stormwater planning guide',
  publisher: 'Wiley; quoted by the Sustainable Technologies Evaluation Program, Toronto',
  edition: '6th edition, 2013',
  locator: 'paved gutters 0.25% at least, 1% and more desirable; grassed swales and parking 0.5% at least',
  url: 'https://wiki.sustainabletechnologies.ca/wiki/Grading',
  fromMemory: false,
};

export const RAMP_RUNS: Source = {
  kind: 'published',
  title: '1991 ADA Standards for Accessible Design, 4.8.2 slope and rise',
  publisher: 'US Department of Justice',
  edition: '1991',
  locator: '4.8.2: a run rises at most 30 in (760 mm)',
  fromMemory: false,
};

export const RAMP_HANDRAILS: Source = {
  kind: 'published',
  title: '2010 ADA Standards for Accessible Design, 405.8 and 505 handrails',
  publisher: 'US Department of Justice',
  edition: '2010',
  locator: '405.8: on both sides of a run that rises more than 6 in',
  fromMemory: false,
};

export const TEN_FOOT_EDGE: Source = {
  kind: 'published',
  title:
    'Dimensional Tolerances in Construction and for Surface Accessibility, quoting ACI 117 on exterior concrete',
  publisher: 'US Access Board',
  edition: '2011',
  locator: 'ramps, walks and intersections: 1/4 in (6 mm) under 10 ft; not to be scaled to other lengths',
  url: 'https://www.corada.com/documents/dimensional-tolerances-in-construction-and-for-surface-accessibility/Suggested-accessibility-guidelines-for-exterior-concrete-surfaces',
  fromMemory: false,
};

export const TWELVE_FOOT_EDGE: Source = {
  kind: 'published',
  title: 'UFGS 02753, Concrete Pavement for Airfields: smoothness',
  publisher: 'US Department of Defense',
  locator: 'straightedge of 12 ft (4 m): roads and parking 1/4 in (6 mm) both ways',
  fromMemory: false,
};

export const TWO_METER_EDGE: Source = {
  kind: 'published',
  title: 'Screeds, bases and in situ floorings: concrete wearing surfaces, BS 8204-2',
  publisher: 'British Standards Institution',
  locator: 'surface regularity under 2 m: SR1 3 mm, SR2 5 mm, SR3 10 mm',
  fromMemory: true,
};

export const IRC_DRAINAGE: Source = {
  kind: 'published',
  title: 'International Residential Code, as quoted on a forum of inspectors',
  publisher: 'International Code Council',
  edition: '2006',
  locator: 'R401.3 and its exception',
  fromMemory: false,
};

export const ADA_RAMPS: Source = {
  kind: 'published',
  title: '2010 ADA Standards for Accessible Design',
  publisher: 'US Department of Justice',
  edition: '2010',
  locator: '405.2, 405.3 and 405.7',
  fromMemory: false,
};

export const UFGS_WALKS: Source = {
  kind: 'published',
  title: 'UFGS 03300N, Cast-in-Place Concrete',
  publisher: 'US Department of Defense',
  locator: '3.8.3, concrete walks: cross slope 1/48',
  fromMemory: false,
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
