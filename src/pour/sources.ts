/** Sources of the rules for the pour that only this folder uses. */
import type { Source } from '../reckoning/source';

/** What hours of early-entry sawing are counted from; only secondary sources print it. */
export const EARLY_FROM_FINISHING: Source = {
  kind: 'common-practice',
  title: 'Placing joints in concrete, notes that repeat published guidance (a secondary source)',
  publisher: 'civil engineering study site',
  locator: 'early-entry saws: 1 to 4 h after finishing',
  fromMemory: false,
};

export const NRMCA_YIELD: Source = {
  kind: 'published',
  title: 'Concrete in Practice 8, Discrepancies in Yield',
  publisher: 'National Ready Mixed Concrete Association',
  edition: 'as reprinted on the web',
  locator: '4% to 10% over plan dimensions; near the end, measure what is left and set the last loads by it',
  fromMemory: false,
};

export const WASTE_TEXTS: Source = {
  kind: 'published',
  title: 'Estimating in Building Construction (5% footings, 8% slabs) and NAVEDTRA 14070 (10%)',
  publisher: 'Pearson; US Navy',
  locator: 'section 10-2; chapter 5',
  fromMemory: false,
};

export const BAG_SHEETS: Source = {
  kind: 'common-practice',
  title: "Makers' data sheets of bagged concrete mix, which give 0.0075 ft3 for each pound",
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
