/** How old concrete may be when the truck is empty, where nobody states it: told once, for tickets and for trucks. */
import { constant, time } from '../quantity/make';
import type { Source } from '../reckoning/source';

/** The old limit of age; the standard itself was not read. */
export const C94_BEFORE_2021: Source = {
  kind: 'published',
  title: 'ASTM C94, editions before C94-21, as quoted in Hold the deliveries (question and answer)',
  publisher: 'ASTM International; quoted by Concrete Construction magazine',
  edition: 'before 2021',
  locator: '10.7 in the older numbering: 1-1/2 h, shorter in hot weather; the purchaser may waive it',
  fromMemory: false,
};

export const C94_21: Source = {
  kind: 'published',
  title: 'Change to the time limit of ASTM C94-21, which is quoted there',
  publisher: 'American Concrete Pumping Association; ASTM International',
  edition: 'C94/C94M-21; news of 21 June 2022',
  locator: '6.1.10 and 12.9: stated by the purchaser, else by the producer, and on the ticket',
  url: 'https://www.concretepumpers.com/acpa-news/2022/06/21/change-astm-c94-21-time-limit',
  fromMemory: false,
};

/** What stands for the limit where none is stated. */
export const OLD_TIME_LIMIT = /*#__PURE__*/ constant(() => time('90 min'));

/** Why it does. */
export const BY_OLD_EDITIONS =
  'the default of ASTM C94 before its edition of 2021; since then the purchaser states the limit, else the producer, and it is on the ticket';
