/** What a contractor says in a quote beside the bid and the job, as it is written and read. */
import type { PriceGroup, PriceShown } from '../job/bid-shares';
import { type PayStageInput, stageField } from '../job/pay-stages';
import * as faults from '../quantity/faults';
import type { Fault } from '../quantity/input-error';
import type { QuantityInput } from '../quantity/quantity';
import { readInput } from '../reckoning/calculation';
import { choice, type Field, fields, label, list, maybe, quantity, reading } from '../reckoning/fields';
import { plainCopy } from '../reckoning/plain';
import type { Read } from '../reckoning/read';
import { QUOTE_CLAUSES, type QuoteClause } from './quote-clauses';

/** What an option or an alternate is, in words for the customer. */
export interface OptionNote {
  /** Its name in the bid. */
  readonly name: string;
  /** What is done, and in place of what. */
  readonly means: string;
}

/** What stands in a quote beside the bid and the job; all of it may be left out. */
export interface QuoteTerms {
  /** Who offers: name, address, telephone, license, a line each. */
  readonly from?: readonly string[];
  /** Who it is for. */
  readonly to?: readonly string[];
  /** Where the work is. */
  readonly site?: string;
  /** Number of the quote. */
  readonly number?: string;
  /** How long the price stands, as it is to be written; a line to fill in where it is left out. */
  readonly stands?: string;
  /** How the price is shown; by default as a total. */
  readonly prices?: PriceShown;
  /** What options and alternates are. */
  readonly options?: readonly OptionNote[];
  /** When the price is paid. */
  readonly payments?: readonly PayStageInput[];
  /** What is kept back of each payment until the work is accepted. */
  readonly retainage?: QuantityInput<'ratio'>;
  /** What is done beside what the job says. */
  readonly work?: readonly string[];
  /** What the price takes for granted beside what is always said. */
  readonly assumed?: readonly string[];
  /** What is not in the price beside what is always said. */
  readonly excluded?: readonly string[];
  /** Codes of sentences that this quote goes without, such as `access` where a pump is in the price. */
  readonly without?: readonly QuoteClause[];
}

/** Terms that have been read. */
export type ReadTerms = Read<QuoteTerms>;

const LONGEST = 300;
const MOST = 40;

/** A sentence. */
const sentence = (what: string): Field<string> =>
  reading(
    (input): string | Fault => {
      if (typeof input !== 'string' || input.trim() === '') return faults.wrongType(what, 'text');
      return input.length > LONGEST ? faults.tooLong(what, LONGEST) : input.trim();
    },
    () => ({ type: 'string', minLength: 1, maxLength: LONGEST }),
  );

const sentences = (what: string): Field<string[] | undefined> => maybe(list(sentence(what), 0, MOST));

const groups = () => list(fields({ name: label('name'), lines: list(label('line'), 1, 300) }), 1, MOST);

/** A way to show the price, or groups of lines. */
function prices(): Field<'total' | 'lines' | 'elements' | PriceGroup[]> {
  const word = choice('prices', ['total', 'lines', 'elements'] as const);
  const many = groups();
  return {
    read: (input, report) => (Array.isArray(input) ? many : word).read(input, report),
    json: (defs) => ({ anyOf: [word.json(defs), many.json(defs)] }),
  } as Field<'total' | 'lines' | 'elements' | PriceGroup[]>;
}

const door = () =>
  fields({
    from: sentences('from'),
    to: sentences('to'),
    site: maybe(sentence('site')),
    number: maybe(label('number')),
    stands: maybe(sentence('stands')),
    prices: maybe(prices()),
    options: maybe(list(fields({ name: label('name'), means: sentence('means') }), 0, MOST)),
    payments: maybe(list(stageField(), 0, MOST)),
    retainage: maybe(quantity('ratio', 'retainage', 'not-negative')),
    work: sentences('work'),
    assumed: sentences('assumed'),
    excluded: sentences('excluded'),
    without: maybe(list(choice<QuoteClause>('without', QUOTE_CLAUSES), 0, QUOTE_CLAUSES.length)),
  });

/**
 * Terms of a quote, checked.
 *
 * @throws {InputError} `wrong-type`, `too-long`, `unknown-choice`, `unknown-key` and what is read as a quantity
 */
export const readTerms = (terms: QuoteTerms): ReadTerms => readInput(door(), plainCopy(terms)) as ReadTerms;
