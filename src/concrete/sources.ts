/** Where the rules of this folder come from, beside those that others use too. */
import type { Source } from '../reckoning/source';

export const IRC_FOOTINGS: Source = {
  kind: 'published',
  title:
    'International Residential Code, tables R403.1(1) and R403.1(3), as quoted in a building department sheet',
  publisher: 'International Code Council',
  edition: '2015 or later, as quoted',
  locator: 'Determining perimeter footing sizes: 12 in to 33 in wide, 6 in to 12 in thick',
  fromMemory: false,
};

export const IRC_FROST: Source = {
  kind: 'published',
  title: 'International Residential Code, R403.1.4 and R403.1.4.1, as summarized by an inspection site',
  publisher: 'International Code Council',
  edition: '2021, as summarized',
  locator: 'R403.1.4: 12 in below undisturbed ground; R403.1.4.1: below the frost line',
  fromMemory: false,
};

export const ACI_THICKNESS: Source = {
  kind: 'published',
  title: 'Slabs-on-ground: slab thickness and base tolerances (K. Basham), quoting ACI 117-10',
  publisher: 'ForConstructionPros; American Concrete Institute',
  edition: '13 August 2015',
  locator: '4.5.4 as quoted: mean -3/8 in, single sample -3/4 in',
  fromMemory: false,
};

export const ACI_THICKNESS_BEFORE: Source = {
  kind: 'published',
  title: 'Slab thickness (ACI 117-06 explained, and ACI 117-90 beside it)',
  publisher: 'Concrete Construction magazine',
  edition: 'reprint without a date',
  locator: 'opening: no sample more than 3/4 in thin, mean not more than 3/8 in; in 1990 +3/8 in, -1/4 in',
  fromMemory: false,
};

export const ACI_SAMPLES: Source = {
  kind: 'published',
  title: 'Specification for tolerances for concrete construction and materials, ACI 117',
  publisher: 'American Concrete Institute',
  edition: '2010',
  locator: 'section 4.5.4',
  fromMemory: true,
};
