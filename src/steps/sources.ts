/** Where the rules of steps come from, beyond what all calculations share. */
import type { Source } from '../reckoning/source';

export {
  ABA_STAIRS,
  BOCA_STAIRS,
  CC_STEP_TOLERANCE,
  CC_STEPS,
  CLOSED_FORM,
  COMMON_PRACTICE,
  EN5156_STAIRS,
  IRC_DOORS,
  IRC_STAIRS,
  MCGRAW_STEPS,
  PCA_DRAINAGE,
} from '../reckoning/source';

export const IRC_HANDRAILS: Source = {
  kind: 'published',
  title: 'International Residential Code, 2024 numbering, as quoted in a public source file',
  publisher: 'International Code Council',
  edition: '2024',
  locator: 'R318.7.8: flights of four or more risers, on one side at least, 34 in to 38 in above the nosings',
  fromMemory: false,
};

export const PUBLIC_HANDRAILS: Source = {
  kind: 'common-practice',
  title:
    'Handrails on both sides of every flight, as the International Building Code (1011.11) and the ADA and ABA standards (504.6, 505) are commonly quoted',
  fromMemory: true,
};

export const IRC_GUARDS: Source = {
  kind: 'published',
  title: 'International Residential Code R312.1, guards, as posted by Jefferson County, Colorado',
  publisher: 'International Code Council; Jefferson County, Colorado',
  edition: '2018',
  locator:
    'R312.1.1 to R312.1.3: more than 30 in above what lies below at any point within 36 in of the edge; 36 in high, no opening for a 4 in ball',
  fromMemory: false,
};

export const PUBLIC_GUARDS: Source = {
  kind: 'common-practice',
  title:
    'Guards of 42 in where it is more than 30 in down, as the International Building Code is commonly quoted (1015)',
  fromMemory: true,
};

export const IRC_FLIGHTS: Source = {
  kind: 'common-practice',
  title:
    'Rise of a flight between landings, as the International Residential Code is commonly quoted: 147 in for years (R311.7.3), 151 in by the 2024 numbering (R318.7.3)',
  fromMemory: true,
};

export const PUBLIC_FLIGHTS: Source = {
  kind: 'common-practice',
  title:
    'Rise of a flight between landings of at most 12 ft, as the International Building Code is commonly quoted (1011.8)',
  fromMemory: true,
};

export const ADA_THRESHOLDS: Source = {
  kind: 'common-practice',
  title: 'Thresholds of at most 1/2 in (13 mm), as the 2010 ADA Standards are commonly quoted (404.2.5)',
  fromMemory: true,
};
