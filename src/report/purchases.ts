/** The purchase list of a job as rows of text, for a table, a file of comma-separated values, or a page. */
import { ITEM_NAMES, WORK } from '../job/item-names';
import type { ReckonedJob } from '../job/job-takeoff';
import { type Purchase, soldIn } from '../job/purchases';
import type { JobTakeoffFigures } from '../job/takeoff-figures';
import { isQuantity, type Quantity } from '../quantity/quantity';
import { csvText } from './csv';
import { isName, labelText } from './labels';
import { mustBeJob, mustBeView } from './must-be';
import { onTape } from './show';
import { boughtLength } from './taped';
import { choiceText, quantityText, type View, wordText } from './view';

/** One row of a purchase list. */
export interface PurchaseRow {
  /** What it is. */
  readonly item: string;
  /** Of what kind and size. */
  readonly kind: string;
  /** How much. */
  readonly quantity: string;
  /** For which elements. */
  readonly elements: string;
}

/** What it is; by the name that the job gave it, where none of ours says it. */
const itemText = ({ item, of }: Purchase, view: View): string =>
  item === 'other' ? String(of['name']) : wordText(ITEM_NAMES[item], view);

/** Kinds, designations and names, which need no word before them: no yard must be told that crushed stone is a material. */
const BARE: ReadonlySet<string> = new Set([
  'bar',
  'day',
  'form',
  'kind',
  'material',
  'measured',
  'mix',
  'strength',
  'strengthClass',
  'style',
]);

/** Names that whoever wrote the job gave; no language has a word for them. */
const GIVEN: ReadonlySet<string> = new Set(['day', 'mix']);

/** Sizes that are told together, as `1-1/2 in × 5-1/2 in × 16 ft`, where all but the last are there. */
const TOGETHER: readonly (readonly string[])[] = [
  ['thickness', 'height', 'length'],
  ['pieceWidth', 'pieceLength'],
];

function sizeOf(name: string, value: Purchase['of'][string], view: View): string {
  if (isQuantity(value)) return quantityText(value, view);
  return isName(name) || GIVEN.has(name) ? value : choiceText(value, view);
}

/** How many pails, bags or cartridges there are, before their size; bags that are counted say it already. */
function howMany(line: Purchase): readonly [name: string, times: string] | undefined {
  const sold = soldIn(line);
  if (!sold) return undefined;
  const n = (line.quantity as Quantity<'mass'>).over(sold.size as Quantity<'mass'>) as Quantity<'ratio'>;
  return [sold.name, `${Math.round(n.toNumber(':1'))} × `];
}

/** Of what kind and size: what is told together first comes where its first size stands. */
function kindText(line: Purchase, view: View): string {
  const { item, of } = line;
  const [sold, times] = howMany(line) ?? [];
  const sizes =
    TOGETHER.map((names) => names.filter((name) => name in of)).find(({ length }) => length > 1) ?? [];
  return Object.entries(of)
    .filter(([name, value]) => value !== ITEM_NAMES[item] && !(item === 'other' && name === 'name'))
    .flatMap(([name, value]) => {
      const text = sizeOf(name, value, view);
      if (name === sizes[0]) return [sizes.map((each) => sizeOf(each, of[each] as never, view)).join(' × ')];
      if (sizes.includes(name)) return [];
      const labelled = BARE.has(name) ? text : `${labelText(name, view)} ${text}`;
      return [name === sold ? `${times}${labelled}` : labelled];
    })
    .join(', ');
}

/** The purchases of a take-off as rows. */
export const purchaseRowsOf = (
  { purchases }: Pick<JobTakeoffFigures, 'purchases'>,
  view: View,
): PurchaseRow[] =>
  purchases.map((purchase) => ({
    item: itemText(purchase, view),
    kind: kindText(purchase, view),
    quantity: quantityText(boughtLength(purchase.quantity, view), view),
    elements: purchase.by.map(({ element }) => element).join(', '),
  }));

/** What is delivered to a job, as rows: work, and what leaves the site, comes on no truck. */
export const deliveryRows = ({ takeoff }: ReckonedJob, view: View): PurchaseRow[] =>
  purchaseRowsOf({ purchases: takeoff.figures.purchases.filter(({ item }) => !WORK.has(item)) }, view);

/**
 * The purchase list of a job as rows, inches in fractions of a tape where `view` does not say otherwise.
 *
 * @throws {InputError} `not-a-result` for what is no job; `wrong-type`
 */
export function purchaseRows(job: ReckonedJob, view: View = {}): PurchaseRow[] {
  mustBeJob(job);
  mustBeView(view);
  const metric = (view.system ?? job.takeoff.system) === 'metric';
  return purchaseRowsOf(job.takeoff.figures, { ...onTape(metric), ...view });
}

/**
 * The purchase list of a job as comma-separated values, for a spreadsheet.
 *
 * @param job - the job, from `reckonJob`
 * @param view - units, marks of numbers and language
 * @returns lines with a head, ended by carriage return and line feed; what a spreadsheet would take for a formula is
 * kept text
 * @throws {InputError} `not-a-result` for what is no job; `wrong-type`
 * @example
 * ```ts
 * import { reckonJob } from 'flatwork-reckoner';
 * import { purchaseCsv } from 'flatwork-reckoner/report';
 *
 * const outline = { shape: 'rectangle', length: '12 ft', width: '9 ft' } as const;
 * const base = { depth: '4 in', compactedDensity: '120 lb/ft3' };
 * const job = reckonJob({ version: 1, elements: [{ name: 'Bin pad', outline, base }] });
 * purchaseCsv(job).split('\r\n')[1]; // 'gravel,,2.16 ton,Bin pad'
 * ```
 */
export function purchaseCsv(job: ReckonedJob, view: View = {}): string {
  const rows = purchaseRows(job, view);
  return csvText([
    ['item', 'kind', 'quantity', 'for'].map((head) => wordText(head, view)),
    ...rows.map(({ item, kind, quantity, elements }) => [item, kind, quantity, elements]),
  ]);
}
