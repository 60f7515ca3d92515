/** Where the rules of earth and base come from, beyond what all calculations share. */
import type { Source } from '../reckoning/source';

export { CLOSED_FORM, COMMON_PRACTICE } from '../reckoning/source';

export const NAVY_EARTH: Source = {
  kind: 'published',
  title: 'Equipment Operator (advanced) training manual',
  publisher: 'US Navy',
  edition: 'NAVEDTRA 14080',
  locator: 'chapter 4, page 4-5: cut is figured in place, fill is figured compacted',
  fromMemory: false,
};

export const END_AREA_TEXT: Source = {
  kind: 'published',
  title: 'Fundamentals of Transportation, Earthwork',
  publisher: 'Wikibooks',
  locator: 'cross sections and volume computation: average end area, pyramid, prismoidal formula',
  fromMemory: false,
};

export const FILL_UNDER_SLABS: Source = {
  kind: 'published',
  title: 'International Residential Code R506.2.1, fill under slabs, as quoted by EVstudio',
  publisher: 'International Code Council; quoted by EVstudio',
  edition: '2009',
  locator: 'R506.2.1: at most 24 in of clean sand or gravel, 8 in of earth',
  fromMemory: false,
};

export const ORONO_LIFTS: Source = {
  kind: 'published',
  title: 'Geotechnical recommendation in a project record, table C, compaction',
  publisher: 'City of Orono, Minnesota',
  locator: 'page 13',
  fromMemory: false,
};

export const OHIO_LIFTS: Source = {
  kind: 'published',
  title: 'Construction and Material Specifications, item 304 aggregate base',
  publisher: 'Ohio Department of Transportation',
  edition: '2005',
  locator: 'item 304.04, lifts',
  fromMemory: false,
};

export const GEORGE_LIFTS: Source = {
  kind: 'published',
  title: 'Municipal code 11.10.240, backfilling',
  publisher: 'City of George, Washington',
  locator: '11.10.240: layers of 4 in by hand tamper, 6 in by power tamper',
  fromMemory: false,
};

export const MARYLAND_LIFTS: Source = {
  kind: 'published',
  title: 'Construction Manual, 210 Tamped Fill',
  publisher: 'Maryland State Highway Administration',
  locator: 'section 210',
  fromMemory: false,
};

export const OHIO_DENSITIES: Source = {
  kind: 'published',
  title: 'Construction and Material Specifications, item 411 stabilized crushed aggregate',
  publisher: 'Ohio Department of Transportation',
  edition: '2013',
  locator: 'table 411.04-1, compacted in place',
  fromMemory: false,
};

export const BAKER_ROLLING: Source = {
  kind: 'published',
  title: 'A Treatise on Roads and Pavements (I. O. Baker)',
  publisher: 'publisher not shown in the extract that was read',
  edition: '1903',
  locator: 'measuring the gravel: rolling takes 12% to 15% of the loose depth; one specification allows 33%',
  fromMemory: false,
};

export const LOOSE_SHARE: Source = {
  kind: 'common-practice',
  title:
    'A compacted yard of graded base takes about a quarter more loose; published shares run from an eighth to a third',
  fromMemory: true,
};

export const SWELL_TABLES: Source = {
  kind: 'common-practice',
  title: 'Tables of swell for soils and rock, as found in print: 12% for sand to 74% for gypsum',
  fromMemory: false,
};

export const ARMY_WEIGHTS: Source = {
  kind: 'published',
  title: "TM 9-2320-366-10-1, operator's manual of a 5-ton truck",
  publisher: 'US Army',
  locator: 'table 2-15, material weight by volume',
  fromMemory: false,
};

export const EXCAVATION_RULES: Source = {
  kind: 'common-practice',
  title: 'US federal rules on excavations, 29 CFR 1926 subpart P, as commonly quoted',
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

export const IRC_RETARDER: Source = {
  kind: 'published',
  title: 'International Residential Code, vapor retarder below floors of concrete',
  publisher: 'International Code Council',
  locator: 'R506.2.3: joints lapped 6 in; none in garages, unheated buildings, drives, walks and patios',
  fromMemory: true,
};
