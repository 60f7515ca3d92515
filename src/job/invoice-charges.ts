/**
 * The charges of an invoice, each reckoned again: quantity times unit price, what loads lack of the least, what trucks
 * wait beyond the free time, tax, and the sum; all half-up to the cent.
 */
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { choice, fields, label, list, maybe, quantity } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import type { Read } from '../reckoning/read';
import { total } from '../reckoning/whole';
import { say } from '../reckoning/words';
import { extend } from './bid-extend';
import {
  costOf,
  hourlyField,
  type Measured,
  type Money,
  measureField,
  moneyField,
  nothingIn,
  type PriceInput,
  priceField,
  sameClock,
  sameDimension,
  shareField,
  sumOf,
  toCents,
} from './bid-money';
import { TAX_RATE } from './bid-ordinary';
import * as cautions from './invoice-cautions';
import { ticketTimesMissing } from './invoice-faults';

/** A line of an invoice as it is printed. */
export interface InvoiceLineInput {
  /** Whether it bills concrete, which is held to the tickets, or something else. */
  readonly kind: 'concrete' | 'other';
  /** What it says. */
  readonly name: string;
  /** The quantity billed. */
  readonly quantity: QuantityInput<Measured>;
  /** Unit price. */
  readonly price: PriceInput;
  /** The amount that is printed. */
  readonly amount: QuantityInput<'money'>;
}

/** A charge for loads below the least. */
export interface ShortLoadChargeInput {
  /** The least load without a charge. */
  readonly minimumLoad: QuantityInput<'volume'>;
  /** What each unit that is lacking costs; for a charge by the load, `per` is `1 each`. */
  readonly price: PriceInput;
  /** The amount that is printed. */
  readonly amount: QuantityInput<'money'>;
}

/** A charge for trucks kept beyond the free time. */
export interface WaitingChargeInput {
  /** How long each truck is free on site. */
  readonly free: QuantityInput<'time'>;
  /** It is charged in whole steps of this, for each truck. */
  readonly increment?: QuantityInput<'time'>;
  /** What it costs. */
  readonly price: PriceInput;
  /** The amount that is printed. */
  readonly amount: QuantityInput<'money'>;
}

/** Tax on the invoice. */
export interface InvoiceTaxInput {
  /** Its rate. */
  readonly rate: QuantityInput<'ratio'>;
  /** The amount that is printed. */
  readonly amount: QuantityInput<'money'>;
}

/** An invoice of the supplier. */
export interface InvoiceInput {
  /** Its lines. */
  readonly lines: readonly InvoiceLineInput[];
  /** The charge for short loads. */
  readonly shortLoad?: ShortLoadChargeInput;
  /** The charge for waiting. */
  readonly waiting?: WaitingChargeInput;
  /** Tax on all of it. */
  readonly tax?: InvoiceTaxInput;
  /** The total that is printed. */
  readonly total?: QuantityInput<'money'>;
}

type Invoice = Read<InvoiceInput>;

/** A charge, as reckoned and as printed. */
export interface ChargeFigures {
  /** What it is for. */
  readonly name: string;
  /** What it comes to. */
  readonly reckoned: Quantity<'money'>;
  /** What is printed. */
  readonly billed: Quantity<'money'>;
  /** What is billed beyond what it comes to. */
  readonly difference: Quantity<'money'>;
}

/** The charges of an invoice. */
export interface InvoiceFigures {
  /** Each charge. */
  readonly charges: readonly ChargeFigures[];
  /** Concrete that is billed. */
  readonly concrete?: Quantity<'volume'>;
  /** That less what the tickets bring. */
  readonly notDelivered?: Quantity<'volume'>;
  /** What all charges come to. */
  readonly reckoned: Quantity<'money'>;
  /** What is billed: the total where it is printed, else the sum of the charges. */
  readonly billed: Quantity<'money'>;
  /** What is billed beyond what it comes to. */
  readonly difference: Quantity<'money'>;
}

/** A truck as its ticket has it. */
export interface Delivered {
  readonly volume: Quantity<'volume'>;
  readonly onSite: Quantity<'time'> | undefined;
}

const charge = (name: string, reckoned: Money, amount: Money): ChargeFigures => {
  const billed = toCents(amount);
  return { name, reckoned, billed, difference: billed.minus(reckoned) };
};

const differs = ({ difference }: ChargeFigures): boolean => difference.sign() !== 0;

function lineCharge(
  { name, quantity: Q, price, amount }: Invoice['lines'][number],
  path: string,
  pad: Pad,
): ChargeFigures {
  const { amount: p, per: u } = price;
  sameDimension(Q, u.dimension, `${path}.quantity`);
  sameClock(path, Q, u);
  const A = pad.step(
    say`${{ name }}, rounded half-up`,
    'A = Q × p ÷ u',
    { Q, p, u },
    toCents(costOf(Q, price)),
  );
  const found = charge(name, A, amount);
  if (differs(found)) pad.caution(cautions.lineDiffers(name, found.reckoned, found.billed));
  return found;
}

interface Fees {
  readonly invoice: Invoice;
  readonly delivered: readonly Delivered[];
  readonly nothing: Money;
  readonly pad: Pad;
}

/** The lines of a bid know how such charges are reckoned. */
const LINE = {
  option: undefined,
  taxable: undefined,
  taxRate: undefined,
  low: undefined,
  high: undefined,
  extension: undefined,
  elements: undefined,
};

function shortLoad({ invoice, delivered, nothing, pad }: Fees): ChargeFigures[] {
  const { shortLoad: given } = invoice;
  if (!given) return [];
  const { minimumLoad, price, amount } = given;
  const loads = delivered.map(({ volume }) => volume);
  const line = { ...LINE, kind: 'short-load', name: 'short loads', loads, minimumLoad, price } as const;
  return [charge(line.name, extend(line, 'invoice.shortLoad', nothing, pad).amount, amount)];
}

function waiting({ invoice, delivered, nothing, pad }: Fees): ChargeFigures[] {
  const { waiting: given } = invoice;
  if (!given) return [];
  const { free, increment, price, amount } = given;
  const onSite = delivered.flatMap((truck) => (truck.onSite ? [truck.onSite] : []));
  if (onSite.length < delivered.length) refuse('invoice.waiting', ticketTimesMissing());
  const line = { ...LINE, kind: 'waiting', name: 'waiting', onSite, free, increment, price } as const;
  return [charge(line.name, extend(line, 'invoice.waiting', nothing, pad).amount, amount)];
}

function taxCharge({ invoice, nothing, pad }: Fees, charges: readonly ChargeFigures[]): ChargeFigures[] {
  const { tax } = invoice;
  if (!tax) return [];
  const S = sumOf(
    charges.map(({ reckoned }) => reckoned),
    nothing,
  );
  const { rate: r } = tax;
  return [
    charge('tax', pad.step('tax, rounded half-up', 'V = S × r', { S, r }, toCents(S.times(r))), tax.amount),
  ];
}

/** Tax that is right for what was billed: where it differs, it is by the charges that differ, which are told already. */
function taxFollows({ invoice, nothing }: Fees, charges: readonly ChargeFigures[]): boolean {
  const { tax } = invoice;
  if (!tax) return false;
  const billed = sumOf(
    charges.map((one) => one.billed),
    nothing,
  );
  return toCents(billed.times(tax.rate)).compareTo(toCents(tax.amount)) === 0;
}

/** What concrete is billed, held to the tickets. */
function concreteBilled(
  { lines }: Invoice,
  D: Quantity<'volume'>,
  pad: Pad,
): Pick<InvoiceFigures, 'concrete' | 'notDelivered'> {
  const billed = lines.flatMap(({ kind, quantity: Q }, i) => {
    if (kind !== 'concrete') return [];
    sameDimension(Q, 'volume', `invoice.lines[${i}].quantity`);
    return [Q as Quantity<'volume'>];
  });
  const [first, ...rest] = billed;
  if (!first) return {};
  const B = rest.reduce((sum, one) => sum.plus(one), first);
  const over = pad.step('billed beyond the tickets', 'X = B − D', { B, D }, B.minus(D));
  if (over.sign() > 0) pad.caution(cautions.billedNotDelivered(D, B));
  if (over.sign() < 0) pad.caution(cautions.deliveredNotBilled(D, B));
  return { concrete: B, notDelivered: over };
}

/** Reckon an invoice again. */
export function checkInvoice(
  invoice: Invoice,
  delivered: readonly Delivered[],
  all: Quantity<'volume'>,
  pad: Pad,
): InvoiceFigures {
  const nothing = nothingIn(invoice, 'invoice.lines[0].amount', ['invoice']);
  const fees: Fees = { invoice, delivered, nothing, pad };
  const lines = invoice.lines.map((line, i) => lineCharge(line, `invoice.lines[${i}]`, pad));
  const extra = [...shortLoad(fees), ...waiting(fees)];
  const untaxed = [...lines, ...extra];
  const taxes = taxCharge(fees, untaxed);
  const told = taxFollows(fees, untaxed) ? extra : [...extra, ...taxes];
  for (const one of told.filter(differs)) {
    pad.caution(cautions.feeDiffers(one.name, one.reckoned, one.billed));
  }
  const charges = [...untaxed, ...taxes];
  const asPrinted = charges.map((one) => one.billed);
  const printed = invoice.total
    ? sumOf(asPrinted, nothing)
    : total('sum of what is billed', 'B', asPrinted, pad);
  const reckoned = total(
    'what it comes to',
    'R',
    charges.map((one) => one.reckoned),
    pad,
  );
  const billed = invoice.total ? toCents(invoice.total) : printed;
  if (billed.compareTo(printed) !== 0) pad.caution(cautions.totalDiffers(printed, billed));
  const difference = pad.step(
    'billed beyond what it comes to',
    'd = B − R',
    { B: billed, R: reckoned },
    billed.minus(reckoned),
  );
  return { charges, ...concreteBilled(invoice, all, pad), reckoned, billed, difference };
}

/** The fields of an invoice. */
export const invoiceField = () =>
  fields({
    lines: list(
      fields({
        kind: choice('kind', ['concrete', 'other'] as const),
        name: label('name'),
        quantity: measureField('quantity'),
        price: priceField('price'),
        amount: moneyField('amount', 'any'),
      }),
      1,
      200,
    ),
    shortLoad: maybe(
      fields({
        minimumLoad: quantity('volume', 'minimumLoad'),
        price: priceField('price', 'positive'),
        amount: moneyField('amount'),
      }),
    ),
    waiting: maybe(
      fields({
        free: quantity('time', 'free', 'not-negative'),
        increment: maybe(quantity('time', 'increment')),
        price: hourlyField('price', 'positive'),
        amount: moneyField('amount'),
      }),
    ),
    tax: maybe(fields({ rate: shareField('rate', TAX_RATE), amount: moneyField('amount') })),
    total: maybe(moneyField('total', 'any')),
  });
