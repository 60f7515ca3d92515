/** Sources of the rules for joints that only this folder uses. */
import type { Source } from '../reckoning/source';

/** What hours of early-entry sawing are counted from; only secondary sources print it. */
export const EARLY_FROM_FINISHING: Source = {
  kind: 'common-practice',
  title: 'Placing joints in concrete, notes that repeat published guidance (a secondary source)',
  publisher: 'civil engineering study site',
  locator: 'early-entry saws: 1 to 4 h after finishing',
  fromMemory: false,
};

/** Sawing by day and night, with proper lights. */
export const UFGS_SAWING: Source = {
  kind: 'published',
  title: 'UFGS 02753, concrete pavement for airfields: sawing of contraction joints',
  publisher: 'US Army Corps of Engineers, guide specification',
  locator:
    'as soon as it can be cut without chipping; day and night, with lights; consecutively as placed; none where a crack is near',
  url: 'https://ufgscriteriadocreport.tpub.com/02753/027530070.htm',
  fromMemory: false,
};

/** When to saw, and why the morning is too late. */
export const SAW_SAME_DAY: Source = {
  kind: 'published',
  title: 'When to saw control joints (question and answer)',
  publisher: 'Concrete Construction magazine',
  locator:
    'waiting for the morning is too late; a light early saw lets a morning placement be cut the same day',
  url: 'http://www.concreteconstruction.net/how-to/when-to-saw-control-joints_o',
  fromMemory: false,
};

/** Sawing times of unreinforced pavements. */
export const PAVEMENT_JOINTING: Source = {
  kind: 'published',
  title: 'Guide to jointing unreinforced pavements',
  publisher: 'Concrete Construction magazine',
  locator: 'abstract: sawn 4 to 24 h after placing, by conditions; 15 to 20 ft; 15 ft under 6 in',
  url: 'http://www.concreteconstruction.net/how-to/construction/guide-to-jointing-unreinforced-pavements_o',
  fromMemory: false,
};
