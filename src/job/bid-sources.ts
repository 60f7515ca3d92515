/** Sources of the rules of bids. */
import type { Source } from '../reckoning/source';

export const FAR_RETAINAGE: Source = {
  kind: 'published',
  title: 'Federal Acquisition Regulation (48 CFR chapter 1)',
  publisher: 'US General Services Administration',
  edition: 'as stored in 2025',
  locator: '32.103 and 52.232-5(e): at most 10%, and only where progress is not satisfactory',
  url: 'https://www.acquisition.gov/far/',
  fromMemory: false,
};

export const FAR_QUANTITY: Source = {
  kind: 'published',
  title: 'Federal Acquisition Regulation (48 CFR chapter 1)',
  publisher: 'US General Services Administration',
  edition: 'as stored in 2025',
  locator: '52.211-18, Variation in Estimated Quantity: more than 15% above or below',
  url: 'https://www.acquisition.gov/far/',
  fromMemory: false,
};

export const FAR_MISTAKES: Source = {
  kind: 'published',
  title: 'Federal Acquisition Regulation (48 CFR chapter 1)',
  publisher: 'US General Services Administration',
  edition: 'as stored in 2025',
  locator: '14.407-2, apparent clerical mistakes: a misplaced decimal point, a wrong unit',
  url: 'https://www.acquisition.gov/far/',
  fromMemory: false,
};

export const HALF_UP: Source = {
  kind: 'published',
  title: 'Contemporary Mathematics',
  publisher: 'OpenStax, Rice University',
  edition: 'as stored in April 2026',
  locator: '6.2, sales tax: half a cent or more rounds up',
  url: 'https://openstax.org/details/books/contemporary-mathematics',
  fromMemory: false,
};
