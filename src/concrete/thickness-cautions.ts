/** What to watch out for about the thickness of a slab that is placed. */
import { paired } from '../quantity/paired';
import type { Quantity } from '../quantity/quantity';
import type { Caution } from '../reckoning/parts';
import type { Source } from '../reckoning/source';
import { say } from '../reckoning/words';
import { ACI_SAMPLES } from './sources';

type Length = Quantity<'length'>;
type Count = Quantity<'count'>;

export const thinMean = (limit: Length, actual: Length, source: Source): Caution => ({
  code: 'thin-on-average',
  severity: 'warning',
  ...say`on average the slab is ${{ actual }} thinner than specified, and ${{ limit }} is allowed: what it carries goes by the square of its thickness. Tell who ordered it before it is loaded; the engineer says whether it stays`,
  limit,
  actual,
  source,
});

export const thinPlaces = (tooThin: Count, limit: Length, actual: Length, source: Source): Caution => ({
  code: 'thin-places',
  severity: 'warning',
  ...say`samples thinner than specified by more than ${{ limit }}: ${{ tooThin }}, the thinnest by ${{ actual }}. Take more around it to see how far the thin place reaches, and let the engineer say whether it stays; look at the base there before more is placed`,
  limit,
  actual,
  source,
});

/** The area that so many samples stand for. */
const AREA = /*#__PURE__*/ paired('area', '5000 ft2', '465 m2');

export const fewSamples = (limit: Count, actual: Count): Caution => ({
  code: 'few-samples',
  severity: 'note',
  ...say`samples: ${{ actual }}. So few say little of a slab: take ${{ limit }} at least on every ${{ area: AREA }}, at random places and not where it looks thin or thick`,
  limit,
  actual,
  source: ACI_SAMPLES,
});
