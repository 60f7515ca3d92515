/** Sources of what concrete has to be, and of what a ticket says, that only this folder uses. */
import type { Source } from '../reckoning/source';

export const IRC_STRENGTH: Source = {
  kind: 'published',
  title:
    'International Residential Code, minimum strength of concrete, as reprinted in an installation manual',
  publisher: 'International Code Council; reprinted by FMI Products',
  edition: 'mid-2000s',
  locator: 'table R402.2',
  fromMemory: false,
};

export const IRC_TROWELED_GARAGE: Source = {
  kind: 'published',
  title: 'International Residential Code, garage floors with a steel-troweled finish',
  publisher: 'International Code Council',
  locator: 'table R402.2, note: air of 3% at least where the strength is 4000 psi or more',
  fromMemory: true,
};

export const IBC_NONSTRUCTURAL: Source = {
  kind: 'published',
  title:
    'International Building Code, concrete that is not structural, as quoted in an article on durability',
  publisher: 'International Code Council; quoted by Froehling & Robertson',
  edition: '2015',
  locator: '1904.2',
  url: 'https://www.fandr.com/insights/speaking-in-code/speaking-in-code-blast-concrete-durability/',
  fromMemory: false,
};

export const ACI_332: Source = {
  kind: 'published',
  title: 'Residential code ACI 332, class RF3, as quoted in an advisory on deicer scaling',
  publisher: 'American Concrete Institute; quoted by the Colorado Ready Mixed Concrete Association',
  edition: '2020 and 2014',
  locator: 'RF3',
  url: 'https://www.crmca.com/crmca-technical-advisory-deicer-scaling-resistance/',
  fromMemory: false,
};

export const ACI_318: Source = {
  kind: 'published',
  title: 'Building code requirements for structural concrete, ACI 318, durability',
  publisher: 'American Concrete Institute',
  edition: '2019',
  locator: 'exposure classes and limits of mixtures',
  fromMemory: true,
};

export const PCA_CLASSES: Source = {
  kind: 'published',
  title: 'Design and Control of Concrete Mixtures, EB001',
  publisher: 'Portland Cement Association',
  edition: '14th or 15th, after ACI 318-08',
  locator: 'table 11-3',
  fromMemory: false,
};

export const AIR_TABLE: Source = {
  kind: 'published',
  title: 'Approximate mixing water and air content, table of ACI 211.1 as reproduced for a course',
  publisher: 'American Concrete Institute; Portland Cement Association',
  locator: 'table 10.2: air by exposure and aggregate size; slump of slabs 1 to 3 in',
  fromMemory: false,
};

export const SLUMP_TABLE: Source = {
  kind: 'published',
  title:
    'Materials for Civil and Construction Engineers (Mamlouk and Zaniewski), slumps quoted from ACI 211.1',
  publisher: 'Pearson',
  locator: 'table 7.7, slabs 1 in to 3 in, reinforced walls 1 in to 4 in',
  fromMemory: false,
};

export const SLUMP_TOLERANCE: Source = {
  kind: 'published',
  title: 'Specification for ready-mixed concrete, ASTM C94: slump where a maximum is specified',
  publisher: 'ASTM International',
  fromMemory: true,
};

export const FLOW_TOLERANCE: Source = {
  kind: 'published',
  title: 'Concrete: specification, performance, production and conformity, EN 206',
  publisher: 'European Committee for Standardization',
  locator: 'flow classes, and what a single test may be off them',
  fromMemory: true,
};

export const AIR_TOLERANCE: Source = {
  kind: 'published',
  title: 'Position statement 6: is air content over-specified? (quoting ASTM C94)',
  publisher: 'Texas Aggregates and Concrete Association',
  edition: 'winter 2007',
  locator: 'p. 22: 4.5% for 1 in and moderate exposure, ±1.5 points at discharge',
  fromMemory: false,
};

export const UFGS_AIR: Source = {
  kind: 'published',
  title: 'UFGS 03311, air content',
  publisher: 'US Department of Defense',
  locator: 'table 3, p. 25',
  url: 'https://ufgscriteriadocreport.tpub.com/03311/033110025.htm',
  fromMemory: false,
};

export const SCALING_ANSWER: Source = {
  kind: 'published',
  title: 'Preventing deicer scaling (answer citing ACI 201, 211 and 302 of about 1980)',
  publisher: 'Concrete Construction',
  locator: 'answer',
  url: 'http://www.concreteconstruction.net/how-to/preventing-deicer-scaling_o',
  fromMemory: false,
};

export const CSA_A23: Source = {
  kind: 'published',
  title: 'Concrete materials and methods of concrete construction, CSA A23.1',
  publisher: 'CSA Group',
  edition: '2019',
  locator: 'classes of exposure C, F and S; air content categories',
  fromMemory: true,
};

export const EN_206: Source = {
  kind: 'published',
  title: 'Concrete: specification, performance, production and conformity, EN 206',
  publisher: 'European Committee for Standardization',
  edition: '2013',
  locator: 'table F.1, recommended limits (informative; national rules govern)',
  fromMemory: true,
};

export const BS_8500: Source = {
  kind: 'published',
  title: 'Concrete: complementary British Standard to BS EN 206, BS 8500-1',
  publisher: 'British Standards Institution',
  edition: '2015',
  locator: 'tables A.4, A.8 and A.9: carbonation, freezing and thawing with air; designated concretes FND',
  fromMemory: true,
};

export const DIN_1045_2: Source = {
  kind: 'published',
  title: 'Concrete, reinforced and prestressed concrete structures: concrete, DIN 1045-2',
  publisher: 'DIN',
  edition: '2008',
  locator: 'tables F.2.1 and F.2.2, with air in XF3 and XF4',
  fromMemory: true,
};

export const AS_3600: Source = {
  kind: 'published',
  title: 'Concrete structures, AS 3600, and the grades of AS 1379',
  publisher: 'Standards Australia',
  edition: '2018',
  locator: 'clauses 4.3, 4.7 and 4.8: exposure, freezing and thawing, sulfate soils',
  fromMemory: true,
};

export const SLUMP_FLATWORK: Source = {
  kind: 'published',
  title: 'Finishing problems and surface defects in flatwork',
  publisher: 'Concrete Construction',
  locator: 'segregation: generally 4 in at most for flatwork',
  url: 'http://www.concreteconstruction.net/how-to/construction/finishing-problems-and-surface-defects-in-flatwork_o',
  fromMemory: false,
};

export const STONE_BY_THICKNESS: Source = {
  kind: 'published',
  title: 'Concrete Engineering, EN5466A',
  publisher: 'US Army Engineer School',
  locator: 'largest aggregate: a third of the thickness of a slab',
  url: 'https://armyengineer.tpub.com/EN5466A/EN5466A0034.htm',
  fromMemory: false,
};

export const STONE_BETWEEN_FORMS: Source = {
  kind: 'published',
  title: 'Frequently asked question 754, maximum size of aggregate (citing ACI 318-19 and ACI 302.1R)',
  publisher: 'American Concrete Institute',
  edition: 'web FAQ',
  locator: 'answer: a fifth of the narrowest width between forms',
  url: 'https://www.concrete.org/tools/frequentlyaskedquestions.aspx?faqid=754',
  fromMemory: false,
};

export const TROWELED_AIR: Source = {
  kind: 'published',
  title: 'Blistering of air-entrained concrete (answer quoting ACI 302.1)',
  publisher: 'Concrete Construction',
  locator: 'answer: 3% in all at most where it is hard-troweled',
  url: 'http://www.concreteconstruction.net/how-to/blistering-of-air-entrained-concrete_o',
  fromMemory: false,
};

export const OUTDOOR_TROWEL: Source = {
  kind: 'published',
  title: 'Steel troweling exterior air-entrained concrete (answer quoting ACI 330R-92)',
  publisher: 'Concrete Construction',
  locator: 'answer',
  url: 'http://www.concreteconstruction.net/how-to/steel-troweling-exterior-air-entrained-concrete_o',
  fromMemory: false,
};

export const WATER_ADDED: Source = {
  kind: 'published',
  title: 'Adjusting slump in the field; Adding water (answers)',
  publisher: 'Concrete Construction',
  locator: '1 gal in a cubic yard: 1 in of slump, 150 to 200 psi, with the air 200 to 400 psi',
  url: 'http://www.concreteconstruction.net/how-to/materials/adjusting-slump-in-the-field_o',
  fromMemory: false,
};

export const YIELD_FORMULA: Source = {
  kind: 'published',
  title: 'Concrete in Practice 8, Discrepancies in Yield; ASTM C138 as a study guide sets it out',
  publisher: 'National Ready Mixed Concrete Association; ASTM International',
  locator: 'yield = mass of the batch ÷ density; an average of three loads',
  url: 'https://concreteanswers.org/CIPs/CIP8.htm',
  fromMemory: false,
};
