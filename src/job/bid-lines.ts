/** The lines of a bid as they are written: priced, labor, and the fees that a ready-mix supplier charges. */
import type { Quantity, QuantityInput } from '../quantity/quantity';
import {
  choice,
  type Field,
  fields,
  kinds,
  label,
  list,
  maybe,
  quantity,
  type Shape,
  whole,
  word,
  yesOrNo,
} from '../reckoning/fields';
import type { Read } from '../reckoning/read';
import { all, anyOf, given, needs, notBoth, oneOf, where } from '../reckoning/together';
import {
  hourlyField,
  type Measured,
  measureField,
  moneyField,
  type PriceInput,
  priceField,
  shareField,
} from './bid-money';
import { ALLOWED, BURDEN, EFFICIENCY, TAX_RATE, WORKDAY } from './bid-ordinary';
import { type TakeoffQuantityInput, takeoffQuantity } from './from-input';

/** What a line of a bid is for; the fees of a supplier count as fees. */
export type CostKind = 'material' | 'labor' | 'equipment' | 'subcontract' | 'fee';

export const COST_KINDS: readonly CostKind[] = ['material', 'labor', 'equipment', 'subcontract', 'fee'];

/** An element of the job that a line is for. */
export interface LineElementInput {
  /** Its name in the job. */
  readonly element: string;
  /** How much of the line it takes, in whatever that is measured; without any all take alike. */
  readonly quantity?: QuantityInput<Measured>;
}

/** What every line may say. */
interface CommonInput {
  /** What it is, as the bid lists it. */
  readonly name: string;
  /** The option that it belongs to; without one it is of the base bid. */
  readonly option?: string;
  /** Whether tax on purchases is due on it; by default as `tax.on` has it for its kind. */
  readonly taxable?: boolean;
  /** Its own rate of that tax, where it differs. */
  readonly taxRate?: QuantityInput<'ratio'>;
  /** The least that it may come to; what the line says otherwise is the likely amount. */
  readonly low?: QuantityInput<'money'>;
  /** The most that it may come to. */
  readonly high?: QuantityInput<'money'>;
  /** The total that somebody wrote for it, to be checked. */
  readonly extension?: QuantityInput<'money'>;
  /** The elements of the job that it is for; a customer's quote by elements has it with them. */
  readonly elements?: readonly LineElementInput[];
}

/** What is sold by quantity and unit price, or for a lump sum. */
interface SoldInput extends CommonInput {
  /** How much of it. */
  readonly quantity?: QuantityInput<Measured>;
  /** What is bought beyond that, as a share. */
  readonly allowance?: QuantityInput<'ratio'>;
  /** The least that is billed: a day of rent, four hours of a pump. */
  readonly minimum?: QuantityInput<Measured>;
  /** It is billed in whole steps of this. */
  readonly increment?: QuantityInput<Measured>;
  /** The least charge for it. */
  readonly minimumCharge?: QuantityInput<'money'>;
  /** Unit price. */
  readonly price?: PriceInput;
  /** A lump sum in place of quantity and price; below zero for a credit. */
  readonly amount?: QuantityInput<'money'>;
}

/** Material, by quantity and unit price or as a lump sum. */
export interface MaterialLineInput extends SoldInput {
  /** What it is for. */
  readonly kind: 'material';
}

/** Equipment, mostly by the day with a least number of days. */
export interface EquipmentLineInput extends SoldInput {
  /** What it is for. */
  readonly kind: 'equipment';
}

/** Work of another trade. */
export interface SubcontractLineInput extends SoldInput {
  /** What it is for. */
  readonly kind: 'subcontract';
}

/** A permit, a dump fee, a delivery charge. */
export interface FeeLineInput extends SoldInput {
  /** What it is for. */
  readonly kind: 'fee';
}

/** How fast work goes: so much in so long. */
export interface ProductionInput {
  /** So much work: `400 ft2`. */
  readonly output: QuantityInput<Measured>;
  /** In so many hours: `8 h`. For a rate of 0.06 man-hours a square foot, `0.06 h` for an output of `1 ft2`. */
  readonly time: QuantityInput<'time'>;
  /** Whether the whole crew does that, or each worker. */
  readonly by: 'crew' | 'worker';
}

/** People of one wage. */
export interface CrewInput {
  /** How many. */
  readonly count: number;
  /** What each is paid: `25 USD` for `1 h`. */
  readonly wage: PriceInput;
}

/** Labor: by hours or by a production rate, or at a unit price or lump sum as other lines are. */
export interface LaborLineInput extends SoldInput {
  /** What it is for. */
  readonly kind: 'labor';
  /** Hours of each of the crew; without a crew, hours of all together. */
  readonly hours?: QuantityInput<'time'>;
  /** How fast it goes, in place of hours: the quantity divided by it gives them. */
  readonly production?: ProductionInput;
  /** Who is on it. */
  readonly crew?: readonly CrewInput[];
  /** What each is paid, where there is no crew. */
  readonly wage?: PriceInput;
  /** How much of the production rate this crew reaches here; by default all of it. */
  readonly efficiency?: QuantityInput<'ratio'>;
  /** How long the crew works in a day, where the days that it takes are wanted: `8 h`. */
  readonly workday?: QuantityInput<'time'>;
  /** What is paid on top of wages: payroll taxes, insurance, benefits. */
  readonly burden?: QuantityInput<'ratio'>;
}

/** What a supplier charges for a load below the least: for each unit that it lacks. */
export interface ShortLoadLineInput extends CommonInput {
  /** What it is for. */
  readonly kind: 'short-load';
  /** The loads that come. */
  readonly loads: readonly QuantityInput<'volume'>[];
  /** The least load without a charge. */
  readonly minimumLoad: QuantityInput<'volume'>;
  /** What each unit that is lacking costs; for a charge by the load, `per` is `1 each`. */
  readonly price: PriceInput;
}

/** What a supplier charges for trucks that are kept beyond the free time. */
export interface WaitingLineInput extends CommonInput {
  /** What it is for. */
  readonly kind: 'waiting';
  /** How long each truck is on site. */
  readonly onSite: readonly QuantityInput<'time'>[];
  /** How much of that is free, for each truck. */
  readonly free: QuantityInput<'time'>;
  /** It is charged in whole steps of this, for each truck. */
  readonly increment?: QuantityInput<'time'>;
  /** What it costs: `3 USD` for `1 min`. */
  readonly price: PriceInput;
}

/** A line of a bid. */
export type BidLineInput =
  | MaterialLineInput
  | LaborLineInput
  | EquipmentLineInput
  | SubcontractLineInput
  | FeeLineInput
  | ShortLoadLineInput
  | WaitingLineInput;

/** A charge for small loads: those of the job, where it does not list them itself. */
export interface JobShortLoadLineInput extends Omit<ShortLoadLineInput, 'loads'> {
  /** The loads that come; by default those that the job orders. */
  readonly loads?: readonly QuantityInput<'volume'>[];
}

/** What may have its quantity from the take-off. */
export type JobSoldLineInput = (
  | MaterialLineInput
  | LaborLineInput
  | EquipmentLineInput
  | SubcontractLineInput
  | FeeLineInput
) & {
  /** Where in the take-off its quantity comes from, in place of a quantity of its own. */
  readonly from?: TakeoffQuantityInput;
};

/** A line of the prices of a job. */
export type JobLineInput = JobSoldLineInput | WaitingLineInput | JobShortLoadLineInput;

export type Line = Read<BidLineInput>;
export type Labor = Read<LaborLineInput>;
export type Sold = Exclude<Line, { kind: 'short-load' } | { kind: 'waiting' }>;

/** Elements that one line may be for. */
const MOST_SHARED = 200;

const common = () => ({
  name: label('name'),
  option: maybe(label('option')),
  taxable: maybe(yesOrNo('taxable')),
  taxRate: maybe(shareField('taxRate', TAX_RATE)),
  low: maybe(moneyField('low', 'any')),
  high: maybe(moneyField('high', 'any')),
  extension: maybe(moneyField('extension', 'any')),
  elements: maybe(
    list(fields({ element: label('element'), quantity: maybe(measureField('quantity')) }), 1, MOST_SHARED),
  ),
});

/** Members that lines of one sort have beside those of every line. */
type More = () => Shape;

const sold = (more: More) => ({
  ...common(),
  ...more(),
  quantity: maybe(measureField('quantity')),
  allowance: maybe(shareField('allowance', ALLOWED)),
  minimum: maybe(measureField('minimum')),
  increment: maybe(measureField('increment')),
  minimumCharge: maybe(moneyField('minimumCharge')),
  price: maybe(priceField('price')),
  amount: maybe(moneyField('amount', 'any')),
});

/** The ways in which a line may have its quantity. */
type Ways = readonly string[];

/** A lump sum stands alone; a price is for a quantity, told in one way. */
const lumpOrPrice = (ways: Ways) =>
  all(
    ...[...ways, 'price'].map((name) => notBoth('amount', name)),
    ...ways.slice(1).map((name) => notBoth('quantity', name)),
    where(given('price'), anyOf(...ways.map((name) => given(name)))),
  );

const laborTogether = (ways: Ways) =>
  all(
    lumpOrPrice(ways),
    notBoth('hours', 'production'),
    notBoth('crew', 'wage'),
    where(given('production'), anyOf(...ways.map((name) => given(name)))),
    where(given('production'), oneOf(['crew'], ['wage'])),
    where(given('hours'), oneOf(['crew'], ['wage'])),
    needs('workday', 'crew'),
    where(
      anyOf(...['crew', 'wage', 'efficiency', 'burden'].map((name) => given(name))),
      anyOf(given('hours'), given('production')),
    ),
  );

const labor = (more: More, ways: Ways) =>
  fields(
    {
      kind: word('labor'),
      ...sold(more),
      hours: maybe(quantity('time', 'hours')),
      production: maybe(
        fields({
          output: measureField('output', false, 'positive', 'area'),
          time: quantity('time', 'time'),
          by: choice('by', ['crew', 'worker'] as const),
        }),
      ),
      crew: maybe(list(fields({ count: whole('count', 1, 500), wage: hourlyField('wage') }), 1, 20)),
      wage: maybe(hourlyField('wage')),
      efficiency: maybe(shareField('efficiency', EFFICIENCY, 'positive')),
      workday: maybe(quantity('time', 'workday', 'positive', WORKDAY)),
      burden: maybe(shareField('burden', BURDEN)),
    },
    laborTogether(ways),
  );

const MOST_LOADS = 200;

type Loads = Quantity<'volume'>[];

const shortLoad = <L>(loads: (field: Field<Loads>) => Field<L>) =>
  fields({
    kind: word('short-load'),
    ...common(),
    loads: loads(list(quantity('volume', 'loads'), 1, MOST_LOADS)),
    minimumLoad: quantity('volume', 'minimumLoad'),
    price: priceField('price'),
  });

const waiting = () =>
  fields({
    kind: word('waiting'),
    ...common(),
    onSite: list(quantity('time', 'onSite', 'not-negative'), 1, MOST_LOADS),
    free: quantity('time', 'free', 'not-negative'),
    increment: maybe(quantity('time', 'increment')),
    price: hourlyField('price'),
  });

/** Lines by their kind; those that are sold with whatever more they may say. */
function lineOf(shortLoads: Field<unknown>, more: More, ways: Ways): Field<unknown> {
  const soldAs = (kind: CostKind) => fields({ kind: word(kind), ...sold(more) }, lumpOrPrice(ways));
  return kinds<Field<unknown>>('kind', [
    soldAs('material'),
    labor(more, ways),
    soldAs('equipment'),
    soldAs('subcontract'),
    soldAs('fee'),
    shortLoads,
    waiting(),
  ]);
}

/** A line, by its kind. */
export const line = (): Field<Line> =>
  lineOf(
    shortLoad((loads) => loads),
    () => ({}),
    ['quantity'],
  ) as Field<Line>;

/** A line of the prices of a job: quantities and loads may be left to the job. */
export const lineOfJob = (): Field<Read<JobLineInput>> =>
  lineOf(
    shortLoad((loads) => maybe(loads)),
    () => ({ from: maybe(takeoffQuantity()) }),
    ['quantity', 'from'],
  ) as Field<Read<JobLineInput>>;
