/**
 * What to watch out for about an order: whether the allowance suits what is poured, and whether a truck or an
 * increment is bought for less than the measuring can know.
 *
 * Published texts allow 5% to 10%, a producers' leaflet 4% to 10%; concrete against earth, in trenches and
 * augered holes, takes more. Moisture of the aggregate alone moves the yield of a load by more than 1%, so an
 * excess over full loads below that share of the order is no reason for one more truck. For a single
 * increment, which costs little, only a fifth of that share counts, and at most a tenth of the increment.
 */
import { constant, ratio } from '../quantity/make';
import type { Quantity } from '../quantity/quantity';
import type { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE, type Source } from '../reckoning/source';
import * as cautions from './cautions';
import type { PourKind } from './concrete-order';
import { fullTruck } from './loads';
import { WASTE_TEXTS } from './sources';

type Volume = Quantity<'volume'>;
type Ratio = Quantity<'ratio'>;

interface Usual {
  readonly what: string;
  readonly least: () => Ratio;
  readonly most: () => Ratio;
  readonly source: Source;
}

const share = (text: string): (() => Ratio) => constant(() => ratio(text));

const usual = (what: string, least: string, most: string, source: Source): Usual => ({
  what,
  least: share(least),
  most: share(most),
  source,
});

const USUAL = /*#__PURE__*/ ((): Record<PourKind | 'unsaid', Usual> => ({
  slab: usual('a slab on ground', '5%', '15%', WASTE_TEXTS),
  formed: usual('concrete between forms', '2%', '15%', COMMON_PRACTICE),
  trench: usual('a trench cut in earth', '10%', '25%', COMMON_PRACTICE),
  augered: usual('augered holes', '15%', '25%', COMMON_PRACTICE),
  // Where nothing is said: the least of a slab, the most of anything.
  unsaid: usual('any pour', '5%', '25%', WASTE_TEXTS),
}))();

interface Allowed {
  readonly pour: PourKind | undefined;
  readonly allowance: Ratio;
}

function littleFor(pour: PourKind | undefined, actual: Ratio, pad: Pad): void {
  if (!pour) {
    pad.assume({
      name: 'pour',
      value: 'slab',
      because: 'the allowance is judged as that of a slab on ground, since nothing else is said',
      override: 'Give pour: slab, formed, trench or augered',
      source: COMMON_PRACTICE,
    });
  }
  const { what, least, source } = USUAL[pour ?? 'slab'];
  pad.caution(cautions.smallAllowance(what, source, least(), actual));
}

/** Caution about each kind of pour once, by its allowance that is farthest out. */
function heedKind(pour: PourKind | undefined, allowances: readonly Ratio[], pad: Pad): void {
  const { what, least, most } = USUAL[pour ?? 'unsaid'];
  const low = allowances.reduce((a, b) => (b.lessThan(a) ? b : a));
  const high = allowances.reduce((a, b) => (b.greaterThan(a) ? b : a));
  if (low.lessThan(least())) littleFor(pour, low, pad);
  if (high.greaterThan(most())) pad.caution(cautions.largeAllowance(what, most(), high));
}

/** What of an order says what is poured and what is allowed for it. */
interface Poured {
  readonly pour: PourKind | undefined;
  readonly allowance: Ratio | undefined;
  readonly elements: readonly Allowed[] | undefined;
}

const allowed = ({ pour, allowance, elements }: Poured): readonly Allowed[] =>
  elements ?? (allowance ? [{ pour, allowance }] : []);

/** Nothing is allowed: told by the kind of pour that takes most. */
export function heedBare(input: Poured, pad: Pad): void {
  const kinds = allowed(input).map(({ pour }) => pour);
  const earth = (['augered', 'trench'] as const).find((kind) => kinds.includes(kind));
  pad.caution(
    earth ? cautions.noAllowanceInEarth(USUAL[earth].what, USUAL[earth].least()) : cautions.noAllowance,
  );
}

/** Whether the allowances suit what is poured. */
export function heedAllowances(input: Poured, pad: Pad): void {
  for (const pour of ['slab', 'formed', 'trench', 'augered', undefined] as const) {
    const own = allowed(input)
      .filter((a) => a.pour === pour)
      .map((a) => a.allowance);
    if (own.length > 0) heedKind(pour, own, pad);
  }
}

/** Of an order, what no measuring of the job can know. */
export const UNKNOWABLE = /*#__PURE__*/ share('1%');
/** What of an order is a hair beside an increment. */
const HAIR = /*#__PURE__*/ share('0.2%');
const TENTH = /*#__PURE__*/ share('10%');

/** What is ordered, and what it is rounded up from. */
interface Rounded {
  readonly net: Volume;
  readonly withAllowance: Volume;
  readonly order: Volume;
}

/**
 * Whether a truck or an increment is bought for a hair.
 *
 * @returns whether it is a truck
 */
export function heedRounding(
  { net, withAllowance, order }: Rounded,
  { truckCapacity, increment }: { readonly truckCapacity: Volume; readonly increment: Volume },
  pad: Pad,
): boolean {
  const inUnit = (q: Volume): Volume => q.in(increment.shownIn ?? increment.unit);
  const full = inUnit(withAllowance.downTo(fullTruck(order, truckCapacity, increment)));
  const unknowable = inUnit(withAllowance.times(UNKNOWABLE()));
  const beyond = inUnit(withAllowance.minus(full));
  if (full.sign() > 0 && order.greaterThan(full) && !beyond.greaterThan(unknowable)) {
    pad.caution(cautions.justOverLoad(unknowable, beyond, full, !full.lessThan(net)));
    return true;
  }
  const lower = order.minus(increment);
  const [hair, tenth] = [withAllowance.times(HAIR()), increment.times(TENTH())];
  const limit = inUnit(hair.lessThan(tenth) ? hair : tenth);
  const over = inUnit(withAllowance.minus(lower));
  if (lower.sign() > 0 && !over.greaterThan(limit)) {
    pad.caution(cautions.justOverIncrement(limit, over, lower, !lower.lessThan(net)));
  }
  return false;
}
