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

export const LIFTING_GUIDE: Source = {
  kind: 'common-practice',
  title:
    'Load constant of the lifting equation of the US National Institute for Occupational Safety and Health',
  fromMemory: true,
};
