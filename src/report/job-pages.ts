/**
 * Pages of a job for those who have to do with it: the crew, the yard that delivers, and who checks every figure.
 */

import type { ReckonedJob } from '../job/job-takeoff';
import type { JobMissingFigures, JobMixFigures } from '../job/takeoff-figures';
import type { TruckPlanFigures } from '../pour/truck-figures';
import { wrongType } from '../quantity/faults';
import { constant, time } from '../quantity/make';
import { nearest } from '../quantity/nearest';
import type { Quantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import type { Caution, Severity } from '../reckoning/parts';
import type { Entry } from './entries';
import { figureText, type Plain, runs } from './figures';
import { type Paper, type Picture, pageHtml, pairsHtml, pictureHtml, tableHtml, tag, textTag } from './html';
import { jobParts } from './job-parts';
import { labelText, placeText } from './labels';
import { capital } from './lines';
import { mustBeJob, mustBeTitle, mustBeView } from './must-be';
import { deliveryRows, type PurchaseRow, purchaseRows } from './purchases';
import { type Block, CREW, moreCautions, type Part, type Sheet, type SheetView, sheetOf } from './sheet';
import { onTape } from './show';
import { quantityText, type View, wordsText, wordText } from './view';

/**
 * Whom a page is for: the `crew`, what to do and the cautions that matter most; the `yard`, what to deliver; or
 * `calculation`, every figure with how it came about.
 */
export type JobPage = 'crew' | 'yard' | 'calculation';

/** How a page is made. */
export interface PageView extends Omit<SheetView, 'detail'> {
  /** Paper to print on; by default that which goes with the units. */
  readonly paper?: Paper;
  /** Tag of the language that the page is in, by default `en`; its words are given with `language`. */
  readonly lang?: string;
  /** Drawings to put on the page. */
  readonly pictures?: readonly Picture[];
}

function entriesHtml(entries: readonly Entry[]): string {
  const plain = entries.filter(({ table }) => !table);
  const tables = entries.flatMap(({ label, table }) =>
    table ? [tableHtml(capital(label), table.head, table.rows)] : [],
  );
  return pairsHtml(plain.map(({ label, text }) => [label, text] as const)) + tables.join('');
}

const heading = (level: 'h2' | 'h3', text: string, view: View): string =>
  textTag(level, wordText(text, view));

function blockHtml({ title, input, figures, working, assumed }: Block, view: View): string {
  const steps = working.map(({ what, formula, put, gives }) =>
    textTag('li', `${what}: ${formula} = ${put} = ${gives}`),
  );
  return [
    textTag('h3', title),
    entriesHtml([...input, ...figures]),
    steps.length > 0 ? tag('p', wordText('How it was figured', view)) + tag('ol', ...steps) : '',
    assumed.length > 0 ? tag('p', wordText('Assumed', view)) + entriesHtml(assumed) : '',
  ].join('');
}

/** A caution with where it applies. */
interface Placed {
  readonly severity: Severity;
  readonly html: string;
}

/** The element or the day that a place in the document belongs to. */
function ownerAt({ takeoff }: ReckonedJob, path: string | undefined): string | undefined {
  const [, list, index] = /^(elements|days)\[(\d+)\]/.exec(path ?? '') ?? [];
  return list === undefined ? undefined : takeoff.figures[list as 'elements' | 'days']?.[Number(index)]?.name;
}

/** The mix whose order or trucks a caution speaks of, where there is more than one. */
function mixOf({ takeoff, parts }: ReckonedJob, { says, params }: Caution): string | undefined {
  if (takeoff.figures.mixes.length < 2) return undefined;
  return parts.find(({ result }) => result.cautions.some((own) => own.says === says && own.params === params))
    ?.mix;
}

/** Whose a caution is: the name of an element or of a day, and that of a mix. */
const ownerOf = (job: ReckonedJob, caution: Caution): string =>
  [ownerAt(job, caution.input), mixOf(job, caution)].filter((name) => name !== undefined).join(', ');

/** What is not known has a table of its own on every page. What several elements are told alike is told once. */
function placedOf(job: ReckonedJob, view: View): Placed[] {
  const some = job.takeoff.cautions.filter(({ always, code }) => !always && code !== 'parts-missing');
  const owners = new Map<string, { readonly caution: Caution; readonly names: string[] }>();
  for (const caution of some) {
    const text = wordsText(caution, view);
    const alike = owners.get(text) ?? { caution, names: [] };
    const name = ownerOf(job, caution);
    if (name !== '' && !alike.names.includes(name)) alike.names.push(name);
    owners.set(text, alike);
  }
  return [...owners].map(
    ([
      text,
      {
        caution: { severity },
        names,
      },
    ]) => {
      const head = [capital(wordText(severity, view)), ...names].join(', ');
      const html = `${textTag('strong', head)} ${textTag('span', text)}`;
      return { severity, html: `<li class="${severity}">${html}</li>` };
    },
  );
}

/** What holds for every job of the kind. */
function alwaysHtml({ takeoff }: ReckonedJob, view: View): string {
  const always = takeoff.cautions.filter((caution) => caution.always);
  if (always.length === 0) return '';
  const said = always.map((caution) => textTag('li', capital(wordsText(caution, view))));
  return heading('h2', 'Always', view) + tag('ul', ...said);
}

function cautionsHtml(job: ReckonedJob, all: boolean, view: View): string {
  const placed = placedOf(job, view);
  const stops = placed.filter(({ severity }) => severity === 'stop').length;
  const told = all ? placed : placed.slice(0, Math.max(CREW, stops));
  const left = placed.length - told.length;
  return [
    told.length > 0 ? heading('h2', 'Watch out for', view) + tag('ul', ...told.map(({ html }) => html)) : '',
    left > 0 ? textTag('p', moreCautions(left, view)) : '',
  ].join('');
}

function purchasesHtml(rows: readonly PurchaseRow[], view: View): string {
  return tableHtml(
    wordText('To buy', view),
    ['item', 'quantity', 'for'].map((head) => capital(wordText(head, view))),
    rows.map(({ item, kind, quantity, elements }) => [
      [capital(item), kind].filter(Boolean).join(', '),
      quantity,
      elements,
    ]),
  );
}

/** A table without the columns that say nothing. */
function filledTable(
  caption: string,
  heads: readonly string[],
  rows: readonly (readonly string[])[],
  view: View,
): string {
  const told = heads.map((_, i) => rows.some((row) => row[i] !== ''));
  const kept = <T>(cells: readonly T[]): T[] => cells.filter((_, i) => told[i]);
  const titles = kept(heads).map((head) => capital(wordText(head, view)));
  return tableHtml(caption, titles, rows.map(kept));
}

const MINUTE = constant(() => time('1 min'));

/** Nobody sends a truck by parts of a minute. */
const wholeMinutes = (t: Quantity<'time'>): Quantity<'time'> => nearest(t, MINUTE());

/** When the trucks of a mix come: the first by the clock, and the next each so long after the one before. */
function comingOf(job: ReckonedJob, { day, mix, bags, loads = [] }: JobMixFigures, view: View): string[] {
  const plan = job.parts.find((part) => part.part === 'trucks' && part.day === day && part.mix === mix);
  if (!plan || bags) return ['', ''];
  const { loads: trucks, interval } = plan.result.figures as unknown as TruckPlanFigures;
  const first = trucks[0]?.clock?.arrives;
  return [
    first === undefined ? '' : figureText('arrives', first, view),
    loads.length > 1 ? quantityText(wholeMinutes(interval), view) : '',
  ];
}

/** Orders of concrete by day and mix, each with its loads and its trucks. */
function ordersHtml(job: ReckonedJob, view: View): string {
  const { mixes, days } = job.takeoff.figures;
  const rows = mixes.map((each) => {
    const { day, mix, order, bags, net, loads = [] } = each;
    return [
      days === undefined ? '' : (day ?? wordText('no day yet', view)),
      mix ?? wordText('concrete', view),
      bags ? '' : quantityText(order ?? net, view),
      bags ? quantityText(bags, view) : '',
      runs(loads.map((load) => quantityText(load, view))).join(' + '),
      ...comingOf(job, each, view),
    ];
  });
  const heads = ['day', 'mix', 'order', 'bags', 'loads', 'first truck at', 'then every'];
  return filledTable(wordText('Concrete', view), heads, rows, view);
}

/**
 * What is missing, by its place in the document; who does not edit the document reads what it is, without what stands
 * beside it already: whose it is, and the part that wants it.
 */
function lackText(job: ReckonedJob, at: string, own: readonly JobMissingFigures[], view: View): string {
  const owner = ownerAt(job, at);
  const inside = at.replace(/^(elements|days)\[\d+\]\./, '');
  const parts = own.map(({ part }) => `${part}.`);
  const lead = parts.find((part) => inside.startsWith(part)) ?? '';
  const text = placeText(inside.slice(lead.length), view);
  const whose = own.some(({ element, day }) => owner === (element ?? day));
  return owner === undefined || whose ? text : `${owner}: ${text}`;
}

/** Every value that is missing once, with all that waits for it. */
function missingHtml(job: ReckonedJob, edits: boolean, view: View): string {
  const { missing } = job.takeoff.figures;
  const places = [...new Set(missing.map(({ at }) => at))];
  return tableHtml(
    wordText('Not known yet', view),
    ['part', 'where'].map((head) => capital(wordText(head, view))),
    places.map((at) => {
      const own = missing.filter((each) => each.at === at);
      return [waitingText(own, view), edits ? at : lackText(job, at, own, view)];
    }),
  );
}

/** The parts that wait for a value, by whose they are. */
function waitingText(own: readonly JobMissingFigures[], view: View): string {
  const owners = [...new Set(own.map(({ element, day }) => element ?? day ?? ''))];
  return owners
    .map((owner) => {
      const parts = own.filter(({ element, day }) => (element ?? day ?? '') === owner);
      const labels = [...new Set(parts.map(({ part }) => labelText(part, view)))].join(', ');
      return owner === '' ? labels : `${owner}: ${labels}`;
    })
    .join('; ');
}

function partsHtml(sheet: Sheet, view: View): string {
  return sheet.parts
    .map(({ name, blocks }) => textTag('h2', name) + blocks.map((block) => blockHtml(block, view)).join(''))
    .join('');
}

const sourcesHtml = ({ sources }: Sheet, view: View): string =>
  sources.length > 0
    ? heading('h2', 'Sources', view) + tag('ol', ...sources.map((text) => textTag('li', text)))
    : '';

/** When forms come off, after all that is poured. */
function formsOffHtml({ takeoff }: ReckonedJob, view: View): string {
  const rows = (takeoff.figures.formsOff ?? []).map(({ element, day = '', after, at }) => [
    element,
    day,
    quantityText(after, view),
    at ? figureText('at', at as unknown as Plain, view) : '',
  ]);
  const heads = ['element', 'day', 'not before', 'by the clock'];
  return filledTable(wordText('Strip the forms', view), heads, rows, view);
}

/** What has a table of its own on the page of a crew, or none. */
const TABLED: ReadonlySet<string> = new Set(['concrete-order', 'job-takeoff', 'mix-requirements']);

/** A part of a job without what stands on the page already; nothing of it where all of it does. */
const withoutTables = ({ name, results }: Part): Part[] => {
  const left = results.filter((one) => !TABLED.has('result' in one ? one.result.id : one.id));
  return left.length > 0 ? [{ name, results: left }] : [];
};

/** What each page shows below its title. */
const BODIES: Readonly<Record<JobPage, (job: ReckonedJob, view: PageView) => string>> = {
  crew: (job, view) => {
    const sheet = sheetOf(jobParts(job, view).flatMap(withoutTables), { ...view, detail: 'crew' });
    return (
      ordersHtml(job, view) +
      cautionsHtml(job, false, view) +
      missingHtml(job, false, view) +
      partsHtml(sheet, view) +
      formsOffHtml(job, view) +
      alwaysHtml(job, view)
    );
  },
  yard: (job, view) =>
    ordersHtml(job, view) + purchasesHtml(deliveryRows(job, view), view) + missingHtml(job, false, view),
  calculation: (job, view) => {
    const sheet = sheetOf(jobParts(job, view), { ...view, detail: 'full' });
    return (
      purchasesHtml(purchaseRows(job, view), view) +
      missingHtml(job, true, view) +
      cautionsHtml(job, true, view) +
      alwaysHtml(job, view) +
      partsHtml(sheet, view) +
      sourcesHtml(sheet, view)
    );
  },
};

/**
 * A page of a job as one HTML document that stands alone: no scripts, nothing loaded, every name escaped.
 *
 * @param title - what the job is called
 * @param job - the job, from `reckonJob`
 * @param page - whom it is for: `crew`, `yard` or `calculation`
 * @param given - units, marks of numbers, language, paper and pictures
 * @returns the document
 * @throws {InputError} `wrong-type` for what is no language tag, no title or no page; `not-a-result` for what is no job
 * @example
 * ```ts
 * import { reckonJob } from 'flatwork-reckoner';
 * import { jobHtml } from 'flatwork-reckoner/report';
 *
 * const outline = { shape: 'rectangle', length: '12 ft', width: '8 ft' } as const;
 * const job = reckonJob({ version: 1, elements: [{ name: 'Bin pad', outline, thickness: '4 in', slab: true }] });
 * jobHtml('Rear yard', job, 'yard').includes('<h1><bdi>Rear yard</bdi></h1>'); // true
 * ```
 */
export function jobHtml(title: string, job: ReckonedJob, page: JobPage, given: PageView = {}): string {
  mustBeTitle(title);
  mustBeView(given);
  mustBeJob(job);
  if (!Object.hasOwn(BODIES, page)) refuse('page', wrongType('the page', Object.keys(BODIES).join(', ')));
  const metric = (given.system ?? job.takeoff.system) === 'metric';
  const view: PageView = { hours: metric ? 24 : 12, ...onTape(metric), ...given };
  const { paper = metric ? 'a4' : 'letter', lang = 'en', pictures = [] } = view;
  const line = [view.job, view.date].filter(Boolean).join(', ');
  const body = [
    textTag('h1', title),
    line === '' ? '' : textTag('p', line),
    BODIES[page](job, view),
    ...pictures.map(pictureHtml),
  ].join('');
  return pageHtml({ title, lang, paper, body });
}
