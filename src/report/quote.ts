/**
 * What a customer gets to read and sign: who and where, what will be done, what it costs and when it is paid, what is in
 * the price and what is not, and how the concrete is to be used. Never what it costs the contractor.
 */
import type { JobBidFigures } from '../job/job-bid';
import type { ReckonedJob } from '../job/job-takeoff';
import { fault } from '../quantity/faults';
import { refuse } from '../reckoning/calculation';
import type { ResultParts } from '../reckoning/parts';
import { say } from '../reckoning/words';
import {
  type Chapter,
  chaptersCsv,
  chaptersHtml,
  chaptersMarkdown,
  chaptersText,
  type Piece,
  telling,
} from './chapters';
import { pageHtml, textTag } from './html';
import type { PageView } from './job-pages';
import { pricedIn, unpricedIn } from './line-name';
import { markdownText, wrapped } from './lines';
import { mustBeJob, mustBeResult, mustBeTitle, mustBeView } from './must-be';
import { clausesOf, type QuoteSection } from './quote-clauses';
import { type QuoteTerms, type ReadTerms, readTerms } from './quote-input';
import { accountPieces, optionPieces, paymentPieces, pricePieces } from './quote-prices';
import { workOf } from './quote-work';
import { living } from './sheet';
import { onTape } from './show';
import { quantityText, wordsText, wordText } from './view';

/** What a quote is made of. */
export interface Quote extends QuoteTerms {
  /** The bid, from `jobBid`. */
  readonly bid: ResultParts<JobBidFigures>;
  /** The job, from `reckonJob`, for what will be done; without it `work` says so. */
  readonly job?: ReckonedJob;
}

/** A quote that has been read, for who reads it. */
interface Offer {
  readonly bid: ResultParts<JobBidFigures>;
  readonly job: ReckonedJob | undefined;
  readonly terms: ReadTerms;
  readonly view: PageView;
}

function offerOf(quote: Quote, given: PageView): Offer {
  mustBeView(given);
  mustBeResult(quote, 'quote');
  const { bid: data, job, ...terms } = quote;
  mustBeResult(data, 'bid');
  if (job !== undefined) mustBeJob(job);
  const bid = living(data);
  if (bid.id !== 'job-bid')
    refuse('bid', fault('not-a-result', 'this is not the result of job-bid; give what jobBid returned'));
  const metric = (given.system ?? job?.takeoff.system ?? bid.system) === 'metric';
  return {
    bid,
    job,
    terms: readTerms(terms),
    view: { ...onTape(metric), ...given },
  };
}

const TAG = /^[a-z]{2,3}(?:-[a-z\d]{2,8})*$/i;

/** A price of five digits without marks between them is misread: they are those of the language that the page is in. */
function readable(view: PageView): PageView {
  mustBeView(view);
  const { lang = '', language } = view;
  const own = TAG.test(lang) ? lang : undefined;
  const locale = view.locale ?? own ?? (language === undefined ? 'en-US' : undefined);
  return locale === undefined ? view : { ...view, locale };
}

const several = (label: string, lines: readonly string[] | undefined): [string, string][] =>
  (lines ?? []).length > 0 ? [[label, (lines ?? []).join(', ')]] : [];

function head({ bid, terms, view }: Offer): Chapter {
  const t = (text: string): string => wordText(text, view);
  const { from, to, site, number, stands } = terms;
  const pairs: [string, string][] = [
    ...several(
      t('Quote'),
      [number, view.date].filter((text): text is string => Boolean(text)),
    ),
    ...several(t('From'), from),
    ...several(t('For'), to),
    ...several(t('Where'), site === undefined ? [] : [site]),
    [t('Total price'), quantityText(bid.figures.total, view)],
    [t('This price stands until'), stands ?? '____________________'],
  ];
  return { title: '', pieces: [{ kind: 'pairs', pairs }] };
}

function workChapter({ bid, job, terms, view }: Offer): Chapter {
  const elements = job ? workOf(job, pricedIn(bid), unpricedIn(bid)) : [];
  return {
    title: wordText('What will be done', view),
    pieces: [
      ...elements
        .filter(({ does }) => does.length > 0)
        .map(
          ({ name, does }): Piece => ({
            kind: 'list',
            title: name,
            items: does.map((one) => wordsText(one, view)),
          }),
        ),
      { kind: 'list', items: terms.work ?? [] },
      ...(view.pictures ?? []).map((picture): Piece => ({ kind: 'picture', ...picture })),
    ],
  };
}

const OWN: Readonly<Partial<Record<QuoteSection, 'assumed' | 'excluded'>>> = {
  taken: 'assumed',
  excluded: 'excluded',
};

function clauses(title: string, section: QuoteSection, { bid, job, terms, view }: Offer): Chapter {
  const own = OWN[section];
  const always = clausesOf(section, bid, job, terms.without ?? []).map((words) => wordsText(words, view));
  const items = [...((own && terms[own]) ?? []), ...always];
  return { title: wordText(title, view), pieces: [{ kind: 'list', items }] };
}

function signChapter({ bid, terms, view }: Offer): Chapter {
  const t = (text: string): string => wordText(text, view);
  const { stands } = terms;
  const until = stands === undefined ? { says: 'in time' } : say`while the price stands: ${{ stands }}`;
  const how = bid.figures.options
    ? say`Tick the options that you want, sign, and send this back ${until}.`
    : say`Sign, and send this back ${until}.`;
  const labels = ['Name', 'Signature', 'Date'].map(t);
  return {
    title: t('To go ahead'),
    pieces: [
      { kind: 'text', text: wordsText(how, view) },
      {
        kind: 'text',
        text: t(
          'Ask about anything that you do not understand before you sign. Once both have signed, this is what was agreed; changes are made in writing.',
        ),
      },
      { kind: 'blanks', title: t('Customer'), labels },
      { kind: 'blanks', title: t('Contractor'), labels },
    ],
  };
}

/** A quote, chapter by chapter. */
function chaptersOf(quote: Quote, given: PageView): { readonly chapters: Chapter[]; readonly offer: Offer } {
  const offer = offerOf(quote, given);
  const { bid, job, terms, view } = offer;
  const t = (text: string): string => wordText(text, view);
  const chapters = [
    head(offer),
    workChapter(offer),
    { title: t('Price'), pieces: pricePieces(bid, terms.prices ?? 'total', job, view) },
    { title: t('Options'), pieces: optionPieces(bid, terms.options, view) },
    { title: t('When it is paid'), pieces: paymentPieces(bid, terms, view) },
    { title: t('Account'), pieces: accountPieces(bid, view) },
    clauses('What the price counts on', 'taken', offer),
    clauses('Not in the price', 'excluded', offer),
    clauses('What we ask of you', 'asked', offer),
    clauses('Your new concrete', 'after', offer),
    signChapter(offer),
  ];
  return { chapters: telling(chapters), offer };
}

/**
 * A quote for a customer as one HTML document that stands alone: no scripts, nothing loaded, every text escaped. It shows
 * prices, and nothing of what the work costs the contractor.
 *
 * @param title - what the job is called
 * @param quote - the bid, the job, and what the contractor says beside them
 * @param given - units, marks of numbers, language, paper, date and pictures
 * @returns the document
 * @throws {InputError} for terms that cannot be read; `unknown-name` for a line that the bid does not have;
 * `outside-range` for payments of more than the price; `not-a-result`
 * @example
 * ```ts
 * import { jobBid } from 'flatwork-reckoner';
 * import { quoteHtml } from 'flatwork-reckoner/report';
 *
 * const bid = jobBid({ lines: [{ kind: 'subcontract', name: 'walk', amount: '2000 USD' }], profit: { markup: '20%' } });
 * const page = quoteHtml('Front walk', { bid, to: ['A. Baker'], payments: [{ when: 'when it is done' }] });
 * page.includes('2,400.00 USD'); // true
 * page.includes('2,000.00'); // false
 * ```
 */
export function quoteHtml(title: string, quote: Quote, given: PageView = {}): string {
  mustBeTitle(title);
  const { chapters, offer } = chaptersOf(quote, readable(given));
  const { view, job, bid } = offer;
  const metric = (view.system ?? job?.takeoff.system ?? bid.system) === 'metric';
  const { paper = metric ? 'a4' : 'letter', lang = 'en' } = view;
  const line = view.job ? textTag('p', view.job) : '';
  return pageHtml({ title, lang, paper, body: textTag('h1', title) + line + chaptersHtml(chapters) });
}

/**
 * A quote for a customer in plain text, for a letter or a message.
 *
 * @param title - what the job is called
 * @param quote - the bid, the job, and what the contractor says beside them
 * @param view - units, marks of numbers, language and date
 * @returns lines of text, none longer than 100 characters
 * @throws {InputError} as `quoteHtml` does
 * @example
 * ```ts
 * import { jobBid } from 'flatwork-reckoner';
 * import { quoteText } from 'flatwork-reckoner/report';
 *
 * const bid = jobBid({ lines: [{ kind: 'subcontract', name: 'walk', amount: '2000 USD' }], profit: { markup: '20%' } });
 * quoteText('Front walk', { bid }).split('\n')[0]; // 'FRONT WALK'
 * ```
 */
export function quoteText(title: string, quote: Quote, view: PageView = {}): string {
  mustBeTitle(title);
  const lines = wrapped(title.toUpperCase(), '', '');
  return `${[...lines, ...chaptersText(chaptersOf(quote, readable(view)).chapters)].join('\n')}\n`;
}

/**
 * A quote for a customer in Markdown.
 *
 * @param title - what the job is called
 * @param quote - the bid, the job, and what the contractor says beside them
 * @param view - units, marks of numbers, language and date
 * @returns Markdown
 * @throws {InputError} as `quoteHtml` does
 * @example
 * ```ts
 * import { jobBid } from 'flatwork-reckoner';
 * import { quoteMarkdown } from 'flatwork-reckoner/report';
 *
 * const bid = jobBid({ lines: [{ kind: 'subcontract', name: 'walk', amount: '2000 USD' }], profit: { markup: '20%' } });
 * quoteMarkdown('Front walk', { bid }).split('\n')[0]; // '# Front walk'
 * ```
 */
export function quoteMarkdown(title: string, quote: Quote, view: PageView = {}): string {
  mustBeTitle(title);
  const { chapters } = chaptersOf(quote, readable(view));
  return `${[`# ${markdownText(title)}`, ...chaptersMarkdown(chapters)].join('\n')}\n`;
}

/**
 * The prices, options and payments of a quote as comma-separated values, for a spreadsheet.
 *
 * @param quote - the bid, the job, and what the contractor says beside them
 * @param view - units, marks of numbers and language
 * @returns lines, each with the table that it is of in front, ended by carriage return and line feed
 * @throws {InputError} as `quoteHtml` does
 * @example
 * ```ts
 * import { jobBid } from 'flatwork-reckoner';
 * import { quoteCsv } from 'flatwork-reckoner/report';
 *
 * const bid = jobBid({ lines: [{ kind: 'subcontract', name: 'walk', amount: '2000 USD' }], profit: { markup: '20%' } });
 * quoteCsv({ bid, prices: 'lines' }).split('\r\n')[1]; // '"Prices, USD",walk,2400.00'
 * ```
 */
export const quoteCsv = (quote: Quote, view: PageView = {}): string =>
  chaptersCsv(chaptersOf(quote, view).chapters);
