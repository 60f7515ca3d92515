/** Sources of the rules for concrete that is still wet. */
import type { Source } from '../../reckoning/source';

/** Low spots are filled and high ones pulled off at strike-off. */
export const STRIKE_OFF: Source = {
  kind: 'published',
  title: "Laborers' effect on finishing",
  publisher: 'Concrete Construction',
  edition: 'web reprint, issue not stated',
  locator: 'question and answer',
  url: 'http://www.concreteconstruction.net/how-to/laborers-effect-on-finishing_o',
  fromMemory: false,
};

/** Nothing is done to a surface that bleed water stands on. */
export const BLEED_WATER: Source = {
  kind: 'published',
  title: 'Quality finishing of concrete',
  publisher: 'Concrete Construction',
  edition: 'web reprint, issue not stated',
  locator: 'question and answer',
  url: 'http://www.concreteconstruction.net/how-to/construction/quality-finishing-of-concrete_o',
  fromMemory: false,
};

/** A late bull float works bleed water in; no water is added to the surface. */
export const DUSTING: Source = {
  kind: 'published',
  title: 'CIP 1, Dusting Concrete Surfaces',
  publisher: 'National Ready Mixed Concrete Association',
  edition: 'as reprinted',
  locator: 'how to prevent, items c to f',
  url: 'https://www.scribd.com/doc/221129332/dusting-in-concrete',
  fromMemory: false,
};

/** How much may be ground off hardened concrete. */
export const GRINDING: Source = {
  kind: 'published',
  title: 'TM 5-822-7, standard practice for concrete pavements (UFC 3-250-04FA)',
  publisher: 'US Army and Air Force',
  edition: 'UFC 3-250-04FA',
  locator: 'paragraphs 20 d and 21: not deeper than 1/4 in generally',
  url: 'https://buildingcriteria1.tpub.com/ufc_3_250_04fa/ufc_3_250_04fa0031.htm',
  fromMemory: false,
};

/** How much thinner a slab may turn out. */
export const THICKNESS_TOLERANCE: Source = {
  kind: 'published',
  title: 'Construction of elevated concrete slabs, quoting ACI 117',
  publisher: 'Concrete Construction',
  edition: 'web reprint, issue not stated',
  locator: 'slabs 12 in or thinner: + 3/8 in, - 1/4 in',
  url: 'http://www.concreteconstruction.net/how-to/construction/construction-of-elevated-concrete-slabs-2_o',
  fromMemory: false,
};
