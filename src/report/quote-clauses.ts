/**
 * What a customer must know beside the price: what it takes for granted, what is not in it, what is asked of the
 * customer, and how the concrete is to be used at first. Sentences of our own; each has a code by which it is left out.
 *
 * Walking after the first day and cars after the first week: Masonry and Concrete (McGraw-Hill, 2001), p. 76. No deicer in
 * the first winter, nor before six weeks above 40 degF and dried: Concrete Construction magazine, answers on scaling. Four
 * weeks before heavy trucks, and all else, is common practice.
 */
import { ITEM_PARTS } from '../job/item-parts';
import type { JobBidFigures } from '../job/job-bid';
import type { ReckonedJob } from '../job/job-takeoff';
import { nameOf } from '../job/priced';
import { paired } from '../quantity/paired';
import type { System } from '../quantity/units';
import type { ResultParts } from '../reckoning/parts';
import { say, type Words } from '../reckoning/words';
import { labelText } from './labels';
import { lineName, pricedIn, unpricedIn } from './line-name';

/** Sentences that a quote has unless it is made without them. */
export type QuoteClause =
  | 'access'
  | 'backfill'
  | 'buried'
  | 'changes'
  | 'clear'
  | 'color'
  | 'cracks'
  | 'deicer'
  | 'digging'
  | 'drains'
  | 'drive'
  | 'edges'
  | 'engineering'
  | 'frost'
  | 'ground'
  | 'permits'
  | 'private-lines'
  | 'rails'
  | 'salts'
  | 'sealer'
  | 'walk'
  | 'wash-out'
  | 'water-and-power'
  | 'weather'
  | 'wet-concrete'
  | 'winter-work';

/** Where on the page a sentence stands. */
export type QuoteSection = 'taken' | 'excluded' | 'asked' | 'after';

/** How concrete gets to the forms: by a pump, on wheels, in bags, or down the chute of a truck, as where nothing tells. */
type Comes = 'pump' | 'wheels' | 'bags' | 'chute';

interface Known {
  readonly system: System;
  readonly comes: Comes;
  /** True where the customer may choose options. */
  readonly options: boolean;
  /** True where the price has covers against frost in it. */
  readonly covered: boolean;
  /** True where no job is known, or some element of it has the part. */
  readonly has: (part: string) => boolean;
  /** True where the job is known and no element has the part. */
  readonly lacks: (part: string) => boolean;
}

interface Clause {
  readonly code: QuoteClause;
  readonly section: QuoteSection;
  readonly says: (known: Known) => string | Words | undefined;
}

const clause = (section: QuoteSection, code: QuoteClause, says: Clause['says'] | string): Clause => ({
  section,
  code,
  says: typeof says === 'string' ? () => says : says,
});

const COLD = paired('temperature', '50 degF', '10 degC');
const MILD = paired('temperature', '40 degF', '4 degC');

const ACCESS: Readonly<Record<Comes, string>> = {
  chute:
    'A concrete truck can come close enough to pour from its chute. A pump, or wheeling the concrete in, is extra.',
  pump: 'There is firm ground for a concrete truck and its pump, within reach and clear of power lines.',
  wheels: 'A concrete truck can come near, with a firm way to wheel the concrete in.',
  bags: 'Bags can be brought near, with room to mix beside the work.',
};

const CLAUSES: readonly Clause[] = [
  clause('taken', 'access', ({ comes }) => ACCESS[comes]),
  clause('taken', 'ground', ({ lacks }) =>
    lacks('excavation')
      ? 'The ground is firm, and at the right height when we come.'
      : 'The ground below what is dug out is firm. Soft ground, rock, roots, old concrete or anything buried is extra, at a price agreed before it is touched; so is digging deeper than is said above.',
  ),
  clause(
    'taken',
    'frost',
    'The ground is not frozen. Nothing is placed on frozen ground, and thawing it is extra.',
  ),
  clause('taken', 'winter-work', ({ covered }) =>
    covered
      ? 'Covers against frost are in the price where it says so above. More of them, and heat, are extra.'
      : 'The work is done in mild weather. Covers and heat against frost are extra.',
  ),
  clause(
    'taken',
    'weather',
    'Rain, frost, heat or a strong wind may move the day of the pour: concrete that is placed in them does not last.',
  ),
  clause('taken', 'water-and-power', 'Water and electricity may be drawn on the site.'),
  clause('taken', 'wash-out', ({ comes }) =>
    comes === 'chute'
      ? 'There is a place on the site where the truck may rinse its chute.'
      : 'There is a place on the site where what carried the concrete may be rinsed.',
  ),
  clause(
    'taken',
    'changes',
    'Sizes are those above. What is to be larger, smaller or other than that is agreed in writing before it is done.',
  ),
  clause('excluded', 'permits', 'Permits, inspections and their fees'),
  clause('excluded', 'engineering', 'Engineering, surveying, and tests of the soil or the concrete'),
  clause('excluded', 'buried', 'Moving or mending pipes and cables'),
  clause('excluded', 'digging', ({ lacks }) =>
    lacks('excavation')
      ? 'Digging out, and taking earth or old concrete away'
      : 'Breaking up old concrete or pavement and taking it away',
  ),
  clause('excluded', 'drains', 'Drains, pipes and gutters'),
  clause('excluded', 'backfill', ({ lacks }) =>
    lacks('backfill') ? 'Filling in along the edges, topsoil, seed and planting' : undefined,
  ),
  clause('excluded', 'sealer', ({ lacks, options }) => {
    if (!lacks('finish')) return undefined;
    return options
      ? 'Sealing or coloring of the surface, unless it is an option above'
      : 'Sealing or coloring of the surface';
  }),
  clause('excluded', 'rails', ({ has, lacks }) =>
    has('steps') && !lacks('steps') ? 'Handrails and guards, which the local code may ask for' : undefined,
  ),
  clause(
    'asked',
    'private-lines',
    'Show us buried lines of your own, such as sprinklers, gas to a grill, yard lights, a septic tank: those who mark public lines do not mark these.',
  ),
  clause('asked', 'clear', 'Clear the place and the way to it before we come.'),
  clause(
    'asked',
    'wet-concrete',
    'Keep children, pets and everyone else off the forms and the wet concrete, which burns skin and eyes.',
  ),
  clause(
    'after',
    'cracks',
    'Concrete shrinks as it dries. Joints take most cracks; a fine crack elsewhere may come all the same.',
  ),
  clause('after', 'color', 'Color and texture differ a little from load to load and from day to day.'),
  clause('after', 'walk', ({ system }) => {
    const cold = COLD.as(system);
    return say`Stay off it for the first day. In weather below ${{ cold }} wait longer, and ask us.`;
  }),
  clause(
    'after',
    'drive',
    'No cars on it in the first week, and no heavy trucks for four weeks; later in cold weather. What is heavier than it was made for, a loaded truck or a dumpster, may break it at any age.',
  ),
  clause('after', 'deicer', ({ system }) => {
    const mild = MILD.as(system);
    return say`No salt or other deicer in the first winter, nor before six weeks above ${{ mild }} and dry weather: strew sand.`;
  }),
  clause(
    'after',
    'salts',
    'Never use ammonium nitrate or ammonium sulfate on it, which some deicers and fertilizers are made of: they eat concrete.',
  ),
  clause(
    'after',
    'edges',
    'Keep water from washing the ground out along its edges: lead downspouts away, and fill in where it settles.',
  ),
];

/** By the hardest way that any concrete of the job comes. */
function comesBy(job: ReckonedJob | undefined): Comes {
  const parts = job?.parts ?? [];
  const ways = parts.map(({ part, input }) =>
    part === 'trucks' ? String((input['placing'] as { kind?: unknown } | undefined)?.kind) : '',
  );
  if (ways.some((way) => way.endsWith('pump'))) return 'pump';
  if (ways.some((way) => ['wheelbarrow', 'cart', 'buggy'].includes(way))) return 'wheels';
  const has = (name: string): boolean => parts.some(({ part }) => part === name);
  return has('bags') && !has('order') ? 'bags' : 'chute';
}

/** What is known of the job, or nothing. */
function knownOf(bid: ResultParts<JobBidFigures>, job: ReckonedJob | undefined): Known {
  const parts = new Set(job?.parts.map(({ part }) => part));
  return {
    system: job?.takeoff.system ?? bid.system,
    comes: comesBy(job),
    options: bid.figures.options !== undefined,
    covered: (job?.takeoff.figures.purchases ?? []).some(
      (line) => line.item === 'blanket' && pricedIn(bid).includes(nameOf(line)),
    ),
    has: (part) => !job || parts.has(part),
    lacks: (part) => job !== undefined && !parts.has(part),
  };
}

/** Elements that lie over each other. */
const overlaps = (job: ReckonedJob | undefined): Words[] =>
  (job?.takeoff.figures.overlaps ?? []).flatMap(({ first, second, area, countedOnce }) =>
    countedOnce
      ? [say`${{ first }} and ${{ second }} share ${{ area }}: the concrete there is counted once.`]
      : [],
  );

/** Parts that somebody is paid for: those that things come of. Limits, plans of days and trucks are no work. */
const WORK: ReadonlySet<string> = /*#__PURE__*/ new Set(
  Object.values(ITEM_PARTS)
    .flat()
    .filter((part) => part !== 'limits'),
);

/** What is to be done that something is missing for, each once. */
function notKnown(job: ReckonedJob | undefined): Words[] {
  const missing = (job?.takeoff.figures.missing ?? []).filter(({ part }) => WORK.has(part));
  const told = new Set(missing.map(({ element, part }) => JSON.stringify([element, part])));
  return [...told].map((key) => {
    const [name, part] = JSON.parse(key) as [string | null, string];
    const what = labelText(part, {});
    return name === null
      ? say`${{ what }}, since not all is known of it yet`
      : say`${{ name }}: ${{ what }}, since not all is known of it yet`;
  });
}

/** Lines of the bid that have no price. */
const unpriced = (bid: ResultParts<JobBidFigures>): Words[] =>
  unpricedIn(bid).map((name) => say`${{ name: lineName(name) }}, for which there is no price yet`);

/**
 * The sentences of a section.
 *
 * @param without - codes of those that are left out; what is not priced or not known is always said
 */
export function clausesOf(
  section: QuoteSection,
  bid: ResultParts<JobBidFigures>,
  job: ReckonedJob | undefined,
  without: readonly QuoteClause[],
): Words[] {
  const known = knownOf(bid, job);
  const said = CLAUSES.filter((one) => one.section === section && !without.includes(one.code)).flatMap(
    ({ says }): Words[] => {
      const words = says(known);
      if (words === undefined) return [];
      return [typeof words === 'string' ? { says: words } : words];
    },
  );
  if (section === 'taken') return [...said, ...overlaps(job)];
  return section === 'excluded' ? [...unpriced(bid), ...notKnown(job), ...said] : said;
}

/** Codes of all sentences that may be left out. */
export const QUOTE_CLAUSES: readonly QuoteClause[] = CLAUSES.map(({ code }) => code);
