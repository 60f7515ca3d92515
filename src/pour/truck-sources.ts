/** Sources of the rules for trucks, placing and set that only this folder uses. */
import type { Source } from '../reckoning/source';

export const SET_TIMES: Source = {
  kind: 'published',
  title: "Concrete's Longest Day (Concrete News)",
  publisher: 'L&M Construction Chemicals',
  edition: 'January 2007',
  locator: 'time and temperature: initial set 4 h to 6 h at 70 degF, half of it at 90, twice at 50',
  fromMemory: false,
};

export const SET_FACTOR: Source = {
  kind: 'published',
  title: 'Hot and cold weather concreting, Frame Building News',
  publisher: 'National Frame Building Association',
  edition: 'October 2020',
  locator: 'page 17: halves for each 20 degF warmer and doubles for each 20 degF colder',
  url: 'https://www.nfba.org/resources/newsletters/magazines/2020-10/inc/html/17.html',
  fromMemory: false,
};

export const BARROW_TRIPS: Source = {
  kind: 'published',
  title: 'Concrete Construction: Methods and Costs (H. P. Gillette and C. S. Hill)',
  publisher: 'Myron C. Clark Publishing Co.',
  edition: '1908',
  locator: 'chapter III, pages 47 to 53',
  url: 'https://www.gutenberg.org/ebooks/24855',
  fromMemory: false,
};

export const CART_RATES: Source = {
  kind: 'published',
  title: 'Buckets, Cranes, Carts, and Wheelbarrows',
  publisher: 'Concrete Construction magazine',
  locator: 'hand carts of 6 to 8 ft3',
  fromMemory: false,
};

export const BUGGY_LOADS: Source = {
  kind: 'published',
  title: 'Placing concrete without damaging lawns (question and answer)',
  publisher: 'Concrete Construction magazine',
  locator: 'answer: power buggies of 9 to 16 ft3',
  fromMemory: false,
};

export const PUMP_RATES: Source = {
  kind: 'published',
  title: 'Pumping concrete on the job',
  publisher: 'Concrete Construction magazine',
  locator: 'rated 12 to 65 yd3/h; what is placed is less',
  fromMemory: false,
};

export const HOT_TRUCKS: Source = {
  kind: 'published',
  title: 'How to minimize the problems of placing concrete (hot weather)',
  publisher: 'Concrete Construction magazine',
  locator: 'schedule trucks so that none waits in the sun',
  fromMemory: false,
};

/** Old wet concrete ran at 1 in 4, as printed in 1908; that of today is stiffer. */
export const CHUTE_SLOPES: Source = {
  kind: 'common-practice',
  title:
    'Slope of chutes, as in ACI 304R and manuals of the US Army: no flatter than 1:3, no steeper than 1:2',
  fromMemory: true,
};

export const READY_FOR_TRUCKS: Source = {
  kind: 'published',
  title: 'Prepare for the unpredictable (checklist)',
  publisher: 'Concrete Construction magazine',
  locator: 'a clear firm path, room to turn, longer chutes or another way agreed beforehand',
  fromMemory: false,
};

export const REVERSING_RULE: Source = {
  kind: 'common-practice',
  title: 'Motor vehicles on construction sites, 29 CFR 1926.601(b)(4)',
  publisher: 'US Occupational Safety and Health Administration',
  fromMemory: true,
};

export const POWER_LINE_RULE: Source = {
  kind: 'common-practice',
  title:
    'Power line safety for cranes, 29 CFR 1926.1408, whose 20 ft until the voltage is known are kept for booms of pumps',
  publisher: 'US Occupational Safety and Health Administration',
  fromMemory: true,
};

export const PUMP_RULE: Source = {
  kind: 'common-practice',
  title: 'Concrete pumping, 29 CFR 1926.702(e), and the rules of the trade for hose whip',
  publisher: 'US Occupational Safety and Health Administration',
  fromMemory: true,
};

export const PUMPED_STONE: Source = {
  kind: 'published',
  title: 'Placing concrete by pumping methods, ACI 304.2R',
  publisher: 'American Concrete Institute',
  locator: 'largest angular stone: a third of the smallest inside diameter of the line',
  fromMemory: true,
};

export const WASH_OUT_RULE: Source = {
  kind: 'common-practice',
  title: 'Construction general permit, washing out of concrete',
  publisher: 'US Environmental Protection Agency',
  fromMemory: true,
};
