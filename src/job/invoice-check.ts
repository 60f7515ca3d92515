/**
 * Tickets, placed quantities and the invoice against the plan.
 *
 * Over plan is `(D − P) ÷ P` of what was delivered D and planned P, for each element and in all; what stayed in a pump
 * was ordered for it and is neither an overrun nor carried on. Where what is in
 * place was measured, it is told apart: more in the ground and the forms than planned, and lost beside them. The
 * allowance to carry into the next job is that of all jobs together, `Σ D ÷ Σ P − 1`, so that a large pour counts for
 * more than a small one.
 */

import { POUR } from '../pour/ordinary';
import { NRMCA_YIELD } from '../pour/sources';
import { greaterOf, lesserOf } from '../quantity/greater';
import { constant, ratio } from '../quantity/make';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import { type Field, fields, label, list, maybe, quantity, wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import type { Read } from '../reckoning/read';
import { total } from '../reckoning/whole';
import { say, type Words } from '../reckoning/words';
import { sumOf } from './fill';
import * as cautions from './invoice-cautions';
import { checkInvoice, type InvoiceFigures, type InvoiceInput, invoiceField } from './invoice-charges';
import { noElement, twoElements } from './invoice-faults';

/** Part of a job as planned and as built. */
export interface InvoiceElementInput {
  /** What it is. */
  readonly name: string;
  /** Its volume by the plan, without an allowance. */
  readonly planned: QuantityInput<'volume'>;
  /** What is in place, measured. */
  readonly placed?: QuantityInput<'volume'>;
  /** What of its tickets stayed in line and hopper of a pump, as `concreteOrder` ordered it on top: it is no overrun. */
  readonly leftInPump?: QuantityInput<'volume'>;
}

/** A ticket. */
export interface InvoiceTicketInput {
  /** What it brought. */
  readonly volume: QuantityInput<'volume'>;
  /** The element that it went into, where that is known. */
  readonly element?: string;
  /** How long the truck was on site. */
  readonly onSite?: QuantityInput<'time'>;
}

/** A job before this one. */
export interface PastJobInput {
  /** Its volume by the plan. */
  readonly planned: QuantityInput<'volume'>;
  /** What was delivered, less what stayed in a pump. */
  readonly delivered: QuantityInput<'volume'>;
}

/** Input of {@link invoiceCheck}. */
export interface InvoiceCheckInput {
  /** What was built. */
  readonly elements: readonly InvoiceElementInput[];
  /** Every ticket of it. */
  readonly tickets: readonly InvoiceTicketInput[];
  /** What the supplier bills. */
  readonly invoice?: InvoiceInput;
  /** Jobs before this one, of the same kind and crew. */
  readonly pastJobs?: readonly PastJobInput[];
}

/** An element against its plan. */
export interface ElementCheckFigures {
  /** What it is. */
  readonly name: string;
  /** By the plan. */
  readonly planned: Quantity<'volume'>;
  /** By its tickets. */
  readonly delivered?: Quantity<'volume'>;
  /** As measured. */
  readonly placed?: Quantity<'volume'>;
  /** Over the plan; below zero for less. */
  readonly over?: Quantity<'volume'>;
  /** That as a share of the plan. */
  readonly overShare?: Quantity<'ratio'>;
}

/** What to allow for on the next job. */
export interface CarriedAllowance {
  /** Share of the plan, all jobs together; never below nothing. */
  readonly allowance: Quantity<'ratio'>;
  /** How many jobs it rests on. */
  readonly jobs: Quantity<'count'>;
  /** The least that one of them took. */
  readonly least: Quantity<'ratio'>;
  /** The most that one of them took. */
  readonly most: Quantity<'ratio'>;
}

/** Figures of {@link invoiceCheck}. */
export interface InvoiceCheckFigures {
  /** By the plan, all of it. */
  readonly planned: Quantity<'volume'>;
  /** By the tickets. */
  readonly delivered: Quantity<'volume'>;
  /** What of it stayed in a pump. */
  readonly leftInPump?: Quantity<'volume'>;
  /** Delivered over the plan, without what stayed in a pump; below zero for less. */
  readonly over: Quantity<'volume'>;
  /** That as a share of the plan. */
  readonly overShare: Quantity<'ratio'>;
  /** In place, where all of it was measured. */
  readonly placed?: Quantity<'volume'>;
  /** More in place than planned, as a share of the plan: low ground, forms that gave. */
  readonly placedShare?: Quantity<'ratio'>;
  /** Lost beside it, as a share of what is in place: spilled, left in the truck, sent back. */
  readonly lostShare?: Quantity<'ratio'>;
  /** Each element. */
  readonly elements: readonly ElementCheckFigures[];
  /** What to allow for on the next job. */
  readonly carry: CarriedAllowance;
  /** The invoice. */
  readonly invoice?: InvoiceFigures;
}

type Parsed = Read<InvoiceCheckInput>;
type Element = Parsed['elements'][number];
type Volume = Quantity<'volume'>;
type Ratio = Quantity<'ratio'>;

const THE_JOB: Words = { says: 'the job' };
const NOTHING = constant(() => ratio('0%'));

function overOf(
  name: Words,
  D: Volume,
  P: Volume,
  pad: Pad,
): Pick<InvoiceCheckFigures, 'over' | 'overShare'> {
  const over = pad.step(say`${name}, beyond its plan`, 'x = D − P', { D, P }, D.minus(P));
  return {
    over,
    overShare: pad.step(say`${name}, over its plan`, 'o = x ÷ P', { x: over, P }, over.over(P).in('%')),
  };
}

/** What of a delivery came out of the pump. */
const pumpedOf = (name: Words, D: Volume, p: Volume | undefined, pad: Pad): Volume =>
  p ? pad.step(say`${name}, without what stayed in the pump`, 'N = D − p', { D, p }, D.minus(p)) : D;

function heed(name: string | Words, P: Volume, D: Volume, overShare: Ratio, pad: Pad): void {
  if (overShare.greaterThan(cautions.MUCH()))
    pad.caution(cautions.overPlan(name, cautions.MUCH(), overShare));
  else if (D.lessThan(P)) pad.caution(cautions.shortOfPlan(name, P, D));
}

/** What the tickets of an element bring, where there are any. */
const broughtTo = ({ tickets }: Parsed, name: string): Volume | undefined =>
  sumOf(tickets.filter(({ element }) => element === name).map(({ volume }) => volume));

function elementOf(
  { name, planned, placed, leftInPump }: Element,
  input: Parsed,
  pad: Pad,
): ElementCheckFigures {
  const delivered = broughtTo(input, name);
  const D = delivered ? pumpedOf(say`${{ name }}`, delivered, leftInPump, pad) : placed;
  const over = D ? overOf(say`${{ name }}`, D, planned, pad) : undefined;
  // A job of one element is judged as a whole.
  if (D && over && input.elements.length > 1) heed(name, planned, D, over.overShare, pad);
  return { name, planned, ...(delivered ? { delivered } : {}), ...(placed ? { placed } : {}), ...over };
}

function checkNames({ elements, tickets }: Parsed): void {
  const names = new Set<string>();
  elements.forEach(({ name }, i) => {
    if (names.has(name)) refuse(`elements[${i}].name`, twoElements(name));
    names.add(name);
  });
  tickets.forEach(({ element }, i) => {
    if (element !== undefined && !names.has(element)) refuse(`tickets[${i}].element`, noElement(element));
  });
}

type Placed = Pick<InvoiceCheckFigures, 'placed' | 'placedShare' | 'lostShare'>;

/** What is in place against the plan, and what was lost beside it. */
function placedOf({ elements }: Parsed, D: Volume, P: Volume, pad: Pad): Placed {
  const measured = elements.flatMap(({ placed }) => (placed ? [placed] : []));
  if (measured.length < elements.length) return {};
  const Q = total('in place', 'Q', measured, pad);
  if (Q.greaterThan(D.times(cautions.MEASURED()))) pad.caution(cautions.placedBeyondTickets(D, Q));
  return {
    placed: Q,
    placedShare: pad.step(
      'more in place than planned',
      'g = (Q − P) ÷ P',
      { Q, P },
      Q.minus(P).over(P).in('%'),
    ),
    lostShare: pad.step('lost beside it', 'l = (D − Q) ÷ Q', { D, Q }, D.minus(Q).over(Q).in('%')),
  };
}

/** The allowance of all jobs together. */
function carried({ pastJobs }: Parsed, D: Volume, P: Volume, pad: Pad): CarriedAllowance {
  const all = [{ planned: P, delivered: D }, ...(pastJobs ?? [])];
  const shares = all.map(({ planned, delivered }) => delivered.minus(planned).over(planned).in('%'));
  const [first] = shares as [Ratio];
  const A = all.reduce((sum, { delivered }) => sum.plus(delivered), D.minus(D));
  const B = all.reduce((sum, { planned }) => sum.plus(planned), P.minus(P));
  const raw = A.minus(B).over(B).in('%');
  const jobs = wholeNumber(all.length);
  if (all.length < cautions.ENOUGH_JOBS)
    pad.caution(cautions.fewJobs(wholeNumber(cautions.ENOUGH_JOBS), jobs));
  const allowance = greaterOf(raw, NOTHING());
  pad.step(
    'allowance to carry, of all jobs together',
    'a = max((A − B) ÷ B, z)',
    { A, B, z: NOTHING() },
    allowance,
  );
  return { allowance, jobs, least: shares.reduce(lesserOf, first), most: shares.reduce(greaterOf, first) };
}

function reckon(input: Parsed, pad: Pad): InvoiceCheckFigures {
  checkNames(input);
  const planned = total(
    'planned',
    'P',
    input.elements.map((one) => one.planned),
    pad,
  );
  const delivered = total(
    'delivered',
    'D',
    input.tickets.map(({ volume }) => volume),
    pad,
  );
  const leftInPump = sumOf(input.elements.flatMap((one) => one.leftInPump ?? []));
  const pumped = pumpedOf(THE_JOB, delivered, leftInPump, pad);
  const over = overOf(THE_JOB, pumped, planned, pad);
  const elements = input.elements.map((one) => elementOf(one, input, pad));
  const [only, other] = input.elements;
  // Where an element tells where it went, the job as a whole tells nothing more.
  if (!elements.some(({ overShare }) => other && overShare?.greaterThan(cautions.MUCH()))) {
    heed(only && !other ? only.name : THE_JOB, planned, pumped, over.overShare, pad);
  }
  const invoice = input.invoice && checkInvoice(input.invoice, input.tickets, delivered, pad);
  return {
    planned,
    delivered,
    ...(leftInPump ? { leftInPump } : {}),
    ...over,
    ...placedOf(input, pumped, planned, pad),
    elements,
    carry: carried(input, pumped, planned, pad),
    ...(invoice ? { invoice } : {}),
  };
}

const volume = (what: string): Field<Volume> => quantity('volume', what, 'positive', POUR);

const door = (): Field<Parsed> =>
  fields({
    elements: list(
      fields({
        name: label('name'),
        planned: volume('planned'),
        placed: maybe(volume('placed')),
        leftInPump: maybe(volume('leftInPump')),
      }),
      1,
      200,
    ),
    tickets: list(
      fields({
        volume: volume('volume'),
        element: maybe(label('element')),
        onSite: maybe(quantity('time', 'onSite')),
      }),
      1,
      500,
    ),
    invoice: maybe(invoiceField()),
    pastJobs: maybe(list(fields({ planned: volume('planned'), delivered: volume('delivered') }), 1, 200)),
  });

/**
 * Tickets, placed quantities and the invoice against the plan, and the allowance to carry into the next job.
 *
 * @param input - elements as planned, and as measured where that was done; every ticket; the invoice; jobs before
 * @returns over plan by element and in all, the allowance this crew really needs, and the invoice reckoned again
 * @throws {InputError} `repeated-name` and `unknown-name` of elements; `currency-mismatch`; `wrong-dimension` for a
 * quantity that its price is not for; `give-for-all` times on site, where waiting is billed
 * @source arithmetic; what is usual over plan is of the National Ready Mixed Concrete Association
 * @example
 * ```ts
 * import { invoiceCheck } from 'flatwork-reckoner';
 *
 * const { figures } = invoiceCheck({
 *   elements: [{ name: 'slab', planned: '16 yd3' }],
 *   tickets: [{ volume: '9 yd3' }, { volume: '8 yd3' }],
 *   invoice: {
 *     lines: [
 *       {
 *         kind: 'concrete',
 *         name: 'slab mix',
 *         quantity: '17 yd3',
 *         price: { amount: '165 USD', per: '1 yd3' },
 *         amount: '2850 USD',
 *       },
 *     ],
 *   },
 * });
 * figures.overShare.format(); // '6.25%'
 * figures.invoice?.reckoned.format(); // '2805.00 USD'
 * figures.invoice?.difference.format(); // '45.00 USD'
 * ```
 */
export const invoiceCheck: Calculation<InvoiceCheckInput, InvoiceCheckFigures> = /*#__PURE__*/ define({
  id: 'invoice-check',
  title: 'Invoice check',
  version: 1,
  sources: [NRMCA_YIELD],
  input: door,
  reckon,
});
