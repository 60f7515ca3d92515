/** Sources of coverages and of what is done after the pour, that only this folder uses. */
import type { Source } from '../reckoning/source';

export const UFGS_CURING: Source = {
  kind: 'published',
  title: 'UFGS 03372, preplaced-aggregate concrete, curing compound',
  publisher: 'US Department of Defense',
  locator: 'section 3.5.3.3',
  url: 'https://ufgscriteriadocreport.tpub.com/03372/033720029.htm',
  fromMemory: false,
};

export const CURING_PRACTICES: Source = {
  kind: 'published',
  title: 'Curing Practices for Concrete Pavements, appendix C',
  publisher: 'National Academies of Sciences, Engineering, and Medicine',
  edition: '2023',
  locator: 'p. 85: 200 ft2 to the gallon for AASHTO M148, 100 in Virginia',
  url: 'https://nap.nationalacademies.org/read/26943/chapter/11',
  fromMemory: false,
};

export const CARTRIDGES: Source = {
  kind: 'common-practice',
  title: 'Length of joint from a cartridge: its volume by width and depth (note of a sealant supply house)',
  locator: '10.1 oz is 18.23 in3',
  fromMemory: false,
};

export const SEED_CORNELL: Source = {
  kind: 'published',
  title: 'Seeding rates; pure live seed',
  publisher: 'Cornell University, College of Agriculture and Life Sciences',
  locator: 'table of rates; pure live seed is purity × germination',
  url: 'http://safesportsfields.cals.cornell.edu/seeding-rates',
  fromMemory: false,
};

export const SEED_MINNESOTA: Source = {
  kind: 'published',
  title: 'Seeding rates for home lawns',
  publisher: 'University of Minnesota Extension',
  locator: 'table 5.7',
  url: 'http://www.extension.umn.edu/Garden/landscaping/maint/newlawn_6.html',
  fromMemory: false,
};

export const SEED_YORK: Source = {
  kind: 'published',
  title: 'Seed and mulch specifications',
  publisher: 'York County Conservation District',
  locator: 'permanent grass 5 lb to 1000 ft2; straw 3 tons to the acre',
  url: 'http://www.yorkccd.org/E&S/seed.htm',
  fromMemory: false,
};
