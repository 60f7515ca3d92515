/** Sources of the rules of weather: of drying, of placing hot and cold, of maturity and strength. */
import type { Source } from '../reckoning/source';

export const UNO: Source = {
  kind: 'published',
  title: 'Plastic Shrinkage Cracking and Evaporation Formulas (P. J. Uno); the equations from memory',
  publisher: 'American Concrete Institute, ACI Materials Journal',
  edition: 'July-August 1998',
  locator: 'volume 95, number 4, title 95-M34',
  fromMemory: true,
};

export const ACI_EVAPORATION: Source = {
  kind: 'published',
  title: 'Estimating Evaporation Rates to Prevent Plastic Shrinkage Cracking (question and answer)',
  publisher: 'American Concrete Institute, Concrete International',
  edition: 'March 2007',
  locator: 'answer: 0.2 lb/ft2/h (1 kg/m2/h); wind at 20 in (0.5 m) above the surface',
  fromMemory: false,
};

export const HOVER_EVAPORATION: Source = {
  kind: 'published',
  title: 'On the origin and the accuracy of the evaporation nomograph (K. C. Hover), abstract',
  publisher: 'American Concrete Institute, SP-338',
  edition: '2020',
  locator: 'pages 10 to 28, abstract: the true rate may be some 40% off the estimate',
  fromMemory: false,
};

export const SILICA_FUME_DRYING: Source = {
  kind: 'published',
  title: "Silica Fume User's Manual, slides: preventing plastic shrinkage cracking",
  publisher: 'Silica Fume Association',
  locator: 'chapter 4: about half the rate allowed for ordinary concrete',
  url: 'http://www.silicafume.org/slideshow.cgi?p=41&c=4&l=54',
  fromMemory: false,
};

export const UFGS_WEATHER: Source = {
  kind: 'published',
  title: 'UFGS 03300N, Cast-in-Place Concrete',
  publisher: 'US Navy, guide specification',
  edition: 'about 2001',
  locator: 'paragraphs Cold Weather and Hot Weather',
  fromMemory: false,
};

export const CSA_DRYING: Source = {
  kind: 'common-practice',
  title: 'Severe drying as CSA A23.1 has it',
  publisher: 'Canadian Standards Association',
  locator: 'from 0.50 kg/m2/h',
  fromMemory: true,
};

export const MENZEL: Source = {
  kind: 'common-practice',
  title:
    'The equation of Menzel, 1954, by the pressures of vapor, with its customary and its metric constants',
  fromMemory: true,
};

export const WIND_PROFILE: Source = {
  kind: 'common-practice',
  title: 'Wind by height over open ground, as the seventh root of the heights',
  fromMemory: true,
};

export const HEAT_AT_WORK: Source = {
  kind: 'common-practice',
  title: 'Guidance on heat at outdoor work: water, rest, shade and days to get used to it',
  publisher: 'US Occupational Safety and Health Administration',
  fromMemory: true,
};

export const BLEED_UNSEEN: Source = {
  kind: 'published',
  title: 'Diagnosing slab delaminations, part 2',
  publisher: 'Concrete Construction magazine',
  locator: 'article: a dull surface does not prove that bleeding has ended',
  fromMemory: false,
};

export const UNDER_THE_SUN: Source = {
  kind: 'published',
  title: 'Troubles under the sun (question and answer)',
  publisher: 'Concrete Construction magazine',
  locator: 'answer: damp base, small placements, windbreak and shade, the cool of the night, early curing',
  fromMemory: false,
};

export const FRESH_TEMPERATURE: Source = {
  kind: 'published',
  title: 'Hot-Weather Concreting, with and without ice (course notes with the equations of ACI 305)',
  publisher: 'university course notes',
  locator: 'two equations: specific heat 0.22; latent heat in place of the temperature of ice',
  fromMemory: false,
};

export const BATCH_HEATING: Source = {
  kind: 'published',
  title: 'UFC 3-130-04, Arctic and Subarctic Construction: Foundations for Structures',
  publisher: 'US Departments of the Army and the Air Force',
  locator: 'equation 16 and the page behind it',
  url: 'https://buildingcriteria1.tpub.com/ufc_3_130_04/ufc_3_130_040248.htm',
  fromMemory: false,
};

export const ICE_RULES: Source = {
  kind: 'published',
  title: 'Using crushed ice in concrete; Concrete on ice (questions and answers, quoting ACI 305)',
  publisher: 'Concrete Construction and The Concrete Producer magazines',
  locator: 'answers: 1 degF for each 2% of the water as ice; at most 75% of the batch water',
  fromMemory: false,
};

export const OLD_WATER_LIMIT: Source = {
  kind: 'published',
  title: 'Cold weather concreting (question and answer)',
  publisher: 'Concrete Construction magazine',
  locator: 'answer: mixing water at most 140 degF',
  fromMemory: false,
};

export const SCALDING: Source = {
  kind: 'common-practice',
  title: 'Scalds from hot water: 140 degF burns in seconds, 120 degF in minutes',
  publisher: 'US Consumer Product Safety Commission',
  fromMemory: true,
};

export const HOT_LIMIT: Source = {
  kind: 'published',
  title: 'Hot-Weather Concreting (course notes)',
  publisher: 'university course notes',
  locator: 'limits: at most 32 degC (90 degF), better no more than 16 degC (60 degF)',
  fromMemory: false,
};

export const NRMCA_COLD: Source = {
  kind: 'published',
  title: 'CIP 1, Dusting Concrete Surfaces',
  publisher: 'National Ready Mixed Concrete Association',
  edition: 'as reprinted',
  locator: 'how to prevent it: in cold weather concrete over 50 degF (10 degC)',
  fromMemory: false,
};

export const IOWA_MATURITY: Source = {
  kind: 'published',
  title: 'Materials I.M. 383, Estimate of Portland Cement Concrete Strength by Maturity Method',
  publisher: 'Iowa Department of Transportation',
  edition: 'October 2020',
  locator: 'The Maturity Concept, equations 1 and 2: datum of -10 degC',
  url: 'https://iowadot.gov/erl/archiveoct2020/IM/content/383.htm',
  fromMemory: false,
};

export const MATURITY_PRACTICE: Source = {
  kind: 'published',
  title: 'ASTM C1074-98, Standard Practice for Estimating Concrete Strength by the Maturity Method',
  publisher: 'ASTM International',
  edition: '1998',
  locator: 'sections 1 and 3: a relationship found in the laboratory, and a temperature history',
  fromMemory: false,
};

export const MATURITY_DEFAULTS: Source = {
  kind: 'common-practice',
  title:
    'Usual constants of maturity: 5000 kelvins, 20 or 23 degC, readings every half hour and every hour later',
  fromMemory: true,
};

export const FREEZING_YOUNG: Source = {
  kind: 'published',
  title: 'Cold-Weather Concreting (Design and Control of Concrete Mixtures, chapter 14)',
  publisher: 'Portland Cement Association',
  edition: 'EB001',
  locator:
    'opening: 500 psi (3.5 MPa), normally within 24 h; up to half of the strength lost if frozen before',
  fromMemory: false,
};

export const ACI_209: Source = {
  kind: 'published',
  title:
    'Reinforced Concrete: Mechanics and Design (J. G. MacGregor), strength with age in the form of ACI 209',
  publisher: 'Prentice Hall; quoted by an engineer on Eng-Tips',
  edition: 'second edition',
  locator: 'equation of strength and age, types I and III',
  fromMemory: false,
};

export const MODEL_CODE: Source = {
  kind: 'published',
  title: 'CEB-FIP Model Code 1990, as the manual of a finite-element program has it; the curve of EN 1992',
  publisher: 'CEB-FIP; TNO',
  edition: '1990; 2008',
  locator: 'equations 20.1 to 20.3: 4000 kelvins, 293 kelvins; valid from 0 to 80 degC',
  fromMemory: false,
};

export const MINDESS_RATIO: Source = {
  kind: 'published',
  title: 'Concrete (S. Mindess and J. F. Young), as quoted on a page of notes',
  publisher: 'Prentice Hall',
  locator: 'general rule: strength at 28 days is 1.3 to 1.7 times that at 7 days; 60% to 75% at 7 days',
  fromMemory: false,
};

export const BEALL_TIMES: Source = {
  kind: 'published',
  title: 'Masonry and Concrete (Complete Construction series): forms off, people and cars on a slab',
  publisher: 'McGraw-Hill',
  edition: '2001',
  locator: 'page 76, after moist curing',
  fromMemory: false,
};

export const ACI_306_TABLES: Source = {
  kind: 'published',
  title: 'Masonry and Concrete (Complete Construction series), tables adapted from ACI 306R',
  publisher: 'McGraw-Hill',
  edition: '2001',
  locator: 'figures 3-37 and 3-38, pages 77 and 78',
  fromMemory: false,
};

export const ACI_306_THICK: Source = {
  kind: 'common-practice',
  title: 'The columns of ACI 306R for sections of 36 in and more, and its degrees Celsius',
  publisher: 'American Concrete Institute',
  fromMemory: true,
};

export const COLD_DEFINITIONS: Source = {
  kind: 'published',
  title: 'Cold-Weather Concreting (Design and Control of Concrete Mixtures, chapter 14) and ACI terms',
  publisher: 'Portland Cement Association; American Concrete Institute',
  edition: 'EB001; ACI 306R-10',
  locator: 'opening: cold weather is air below 40 degF (5 degC), or expected to fall below it',
  fromMemory: false,
};

export const PROTECTION_SPECIFICATION: Source = {
  kind: 'published',
  title: 'Does curing time or strength control in cold weather? (question and answer, quoting ACI 306.1-90)',
  publisher: 'American Concrete Institute, Concrete International',
  edition: 'December 2010',
  locator: 'page 92, abstract: 3 days at least, unless said otherwise',
  fromMemory: false,
};

export const OLD_COLD_RULE: Source = {
  kind: 'published',
  title: 'Cold weather concreting (an older question and answer)',
  publisher: 'Concrete Construction magazine',
  locator: 'summary',
  fromMemory: false,
};

export const AIR_IS_NOT_CONCRETE: Source = {
  kind: 'published',
  title: 'Cold weather correction (question and answer, citing ACI 306)',
  publisher: 'Concrete Construction magazine',
  locator: 'answer: 55 degF is the concrete as placed and kept, and no limit of the air',
  fromMemory: false,
};

export const FROZEN_SUBGRADE: Source = {
  kind: 'published',
  title: 'Placing concrete on frozen subgrade; Placing concrete on frozen subbase (questions and answers)',
  publisher: 'Concrete Construction magazine, quoting ACI 306R-88, 306.1-90 and 301-96',
  locator: 'answers, whole: no concrete on frozen ground',
  fromMemory: false,
};

export const HOT_SPECIFICATION: Source = {
  kind: 'common-practice',
  title: 'Specification for hot weather concreting, ACI 305.1',
  publisher: 'American Concrete Institute',
  locator: 'at most 95 degF (35 degC)',
  fromMemory: true,
};

export const DEICER_WAIT: Source = {
  kind: 'published',
  title:
    'Preventing deicer scaling; Avoid salting the first winter (questions and answers, citing ACI 201 and 302)',
  publisher: 'Concrete Construction magazine',
  locator: 'answers',
  fromMemory: false,
};

export const UNVENTED_HEATERS: Source = {
  kind: 'published',
  title: 'Subcourse EN5466A, Concrete Engineering; that people die of carbon monoxide is common knowledge',
  publisher: 'US Army Engineer School',
  edition: 'edition A, September 1992',
  locator: 'lesson 4, page 4-31: no unvented heaters for the first day',
  url: 'https://armyengineer.tpub.com/EN5466A/EN5466A0135.htm',
  fromMemory: false,
};

export const COLD_AT_WORK: Source = {
  kind: 'common-practice',
  title: 'Guidance on cold at outdoor work: dry layers, warm breaks, work in pairs',
  publisher: 'US Occupational Safety and Health Administration',
  fromMemory: true,
};

export const BLANKET_PRACTICE: Source = {
  kind: 'common-practice',
  title: 'Layers of insulating blankets on a slab: one to 20 degF (-7 degC), two to 0 degF (-18 degC)',
  fromMemory: true,
};
