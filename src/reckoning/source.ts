/**
 * Where a rule or a figure comes from.
 *
 * A source is `published` only where the work is identified and was read, whole or as quoted;
 * what is only known to the trade is `common-practice`; what follows from geometry or from the
 * definition of a unit is `closed-form`.
 */

/** A source of a rule, a default or a limit. */

export interface Source {
  /** What sort of source it is. */
  readonly kind: 'published' | 'common-practice' | 'closed-form';
  /** Title of the work. */
  readonly title: string;
  /** Who published it, and who quotes it where it was read in a quotation. */
  readonly publisher?: string;
  /** Edition or year. */
  readonly edition?: string;
  /** Chapter, clause, table or page. */
  readonly locator?: string;
  /** Address, where it is the publisher's own or a public archive's. */
  readonly url?: string;
  /** True when written down from memory and not checked against the work. */
  readonly fromMemory: boolean;
}
/** Geometry, or the definition of a unit. */

export const CLOSED_FORM: Source = {
  kind: 'closed-form',
  title: 'Geometry and the definitions of the units',
  fromMemory: false,
};
/** What the trade does, with no document to name. */

export const COMMON_PRACTICE: Source = {
  kind: 'common-practice',
  title: 'Common practice of the trade',
  fromMemory: true,
};

export const IRC_SLAB_THICKNESS: Source = {
  kind: 'published',
  title: 'International Residential Code, as quoted in an article on slabs on grade',
  publisher: 'International Code Council; quoted by EVstudio',
  edition: '2009',
  locator: 'R506.1',
  fromMemory: false,
};

export const IRC_STAIRS: Source = {
  kind: 'published',
  title: 'International Residential Code, stairways, as summarized by Jefferson County, Colorado',
  publisher: 'International Code Council; Jefferson County',
  edition: '2018',
  locator: 'R311.7.5.1 and R311.7.5.2',
  url: 'https://www.jeffco.us/2095/Stairways',
  fromMemory: false,
};

export const IRC_HANDRAIL: Source = {
  kind: 'common-practice',
  title:
    'Handrail on flights of four or more risers, as the International Residential Code is commonly quoted (R311.7.8)',
  fromMemory: true,
};

export const PCA_DRAINAGE: Source = {
  kind: 'published',
  title: "1/2 plus 1/2 doesn't equal 1 (question and answer)",
  publisher: 'Concrete Construction magazine, citing the Portland Cement Association and ACI 302',
  locator: 'answer: at least 1%, about 2% recommended',
  fromMemory: false,
};

export const MCGRAW_STEPS: Source = {
  kind: 'published',
  title: 'Masonry and Concrete (Complete Construction series)',
  publisher: 'McGraw-Hill',
  edition: '2001',
  locator: 'pages 283 to 285, figure 8-5, and page 294',
  fromMemory: false,
};

export const CC_STEPS: Source = {
  kind: 'published',
  title: 'Laying out decorative steps (citing IRC R311.7.4 and R311.7.6)',
  publisher: 'Concrete Construction magazine',
  locator: 'codes define layout: risers, treads, pitch of 1/4 in per ft',
  fromMemory: false,
};

export const HERPICC_RUNOFF: Source = {
  kind: 'published',
  title:
    'HERPICC Stormwater Drainage Manual, runoff coefficients, as reprinted in the code of Marshall County',
  publisher: 'Purdue University; Marshall County, Indiana',
  edition: 'July 1994',
  locator: 'table 1',
  url: 'https://codelibrary.amlegal.com/codes/marshallcountyin/latest/marshallcounty_in/0-0-0-3446',
  fromMemory: false,
};

export const EARLY_ENTRY_DEPTH: Source = {
  kind: 'published',
  title: 'Why Ultra Early Entry Saws Work (guest article, citing the Portland Cement Association)',
  publisher: 'L&M Construction Chemicals, Concrete News',
  edition: 'April 2010',
  locator: 'depth paragraph: 1 in up to 9 in thick; D/5 to D/6 up to 18 in',
  fromMemory: false,
};

export const IRREGULAR_SLABS: Source = {
  kind: 'published',
  title: 'Jointing irregularly shaped slabs',
  publisher: 'Concrete Construction magazine',
  locator: 'article: panels to 1.5:1, a joint at each re-entrant corner, none ending at another',
  fromMemory: false,
};

export const ACI_SAW_TIMES: Source = {
  kind: 'published',
  title: 'Frequently asked question 915, when to saw (citing ACI 302.1R-15, 325.12R-02 and 224.4R-13)',
  publisher: 'American Concrete Institute',
  locator: 'answer: 4 to 12 h; 2 to 6 h; about 1 h when hot to 4 h when cold',
  url: 'https://concrete.org/frequentlyaskedquestions.aspx?faqid=915',
  fromMemory: false,
};

export const CSA_CONTROL_JOINTS: Source = {
  kind: 'published',
  title: 'CSA A23.1-94, as quoted by an engineer on a forum',
  publisher: 'Canadian Standards Association; quoted on Eng-Tips',
  edition: '1994',
  locator: '20.2.1 and notes: 24 to 36 times, at most 5 m; t/4 to t/3; 6 to 18 h',
  fromMemory: false,
};

export const SAW_TIMES_ANSWER: Source = {
  kind: 'published',
  title: 'When to saw control joints (question and answer)',
  publisher: 'Concrete Construction magazine',
  locator: 'answer: about 4 h when hot to 3 days when cold, after finishing',
  fromMemory: false,
};

export const SILICA_RULE: Source = {
  kind: 'common-practice',
  title: 'Silica in construction, 29 CFR 1926.1153 and its table 1 (saws with water or extraction)',
  publisher: 'US Occupational Safety and Health Administration',
  fromMemory: true,
};

export const ACI_FIBER: Source = {
  kind: 'published',
  title: 'Frequently asked question 926: least fiber dosage',
  publisher: 'American Concrete Institute',
  locator: 'answer',
  fromMemory: false,
};

export const OSHA_BARS: Source = {
  kind: 'common-practice',
  title: '29 CFR 1926, safety and health regulations for construction',
  publisher: 'US Occupational Safety and Health Administration',
  locator: '1926.701(b), protruding bars; 1926.501(b)(5), falls of 6 ft or more from reinforcing steel',
  fromMemory: true,
};

export const SLUMP_RANGE: Source = {
  kind: 'published',
  title: 'A slump conundrum (ACI 301 and ACI 117 as quoted)',
  publisher: 'Froehling & Robertson',
  edition: 'web note',
  locator: 'Speaking in code: 4 in with 1 in either way; up to 8 in with a high-range water reducer',
  fromMemory: false,
};

export const AGGREGATE_RANGE: Source = {
  kind: 'published',
  title: 'Frequently asked question 754, maximum size of aggregate',
  publisher: 'American Concrete Institute',
  edition: 'web FAQ',
  locator: 'FAQ 754: at most a third of the depth of a slab',
  fromMemory: false,
};

export const LIFTING_GUIDE: Source = {
  kind: 'common-practice',
  title:
    'Load constant of the lifting equation of the US National Institute for Occupational Safety and Health',
  fromMemory: true,
};
