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
