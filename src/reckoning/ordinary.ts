/**
 * What is ordinary: the range within which a measurement of its sort lies on nearly every job.
 *
 * A value outside it may well be meant, so it is never refused: the result asks for a second look and
 * names the slip that would explain it, as 5 ft typed for 5 in. Ranges are wide: an ordinary job never
 * sees one of these cautions. Least and most are given as each unit system has them; the wider of both
 * counts, so that the nominal sizes of one system are ordinary in the other.
 */
import { Decimal } from '../quantity/decimal';
import type { Example } from '../quantity/examples';
import { canonical } from '../quantity/parse';
import { canonicalValue, newQuantity, numberShown, type Quantity, unitShown } from '../quantity/quantity';
import { isFaulty, readQuantity } from '../quantity/read-quantity';
import { type System, type Unit, unitOf, unitsIn } from '../quantity/units';
import type { Caution } from './parts';
import type { Source } from './source';
import * as sources from './source';
import { say, type Words } from './words';

/** One bound, as the customary and as the metric trade has it; one text where it has no unit system. */
type Bound = string | readonly [customary: string, metric: string];

/** The ordinary range of one sort of measurement. */
export interface Ordinary {
  /** What it is, for the ...say`the thickness of a slab on ground`. */
  readonly of: string;
  /** Below this it is out of the ordinary; zero, where it may be, is not. */
  readonly least?: Bound | undefined;
  /** Above this it is out of the ordinary. */
  readonly most?: Bound | undefined;
  /** One that refusals propose, where that of its name or dimension would not be ordinary. */
  readonly example?: Example | undefined;
  /** Where the range comes from. */
  readonly source: Source;
}

/** A range that the trade knows. */
export const range = (
  of: string,
  least: Bound | undefined,
  most: Bound | undefined,
  example?: Example,
): Ordinary => ({ of, least, most, example, source: sources.COMMON_PRACTICE });

/** What a reader found out of the ordinary. */
export interface Doubt {
  /** The value as it was read. */
  readonly value: Quantity;
  /** The range that it lies outside of. */
  readonly ordinary: Ordinary;
}

type Ends = readonly [customary: Quantity, metric: Quantity];

interface Range {
  readonly least: Ends | undefined;
  readonly most: Ends | undefined;
}

// Read once for each range: a surface may have very many spots.
const ranges = new WeakMap<Ordinary, Range>();

function read(text: string, like: Quantity): Quantity {
  const q = readQuantity(text, like.dimension, 'the range');
  if (isFaulty(q)) throw new TypeError(`${text}: ${q.sentence}`);
  return q;
}

function ends(bound: Bound | undefined, like: Quantity): Ends | undefined {
  if (bound === undefined) return undefined;
  const [customary, metric] = typeof bound === 'string' ? [bound, bound] : bound;
  return [read(customary, like), read(metric, like)];
}

function rangeOf(ordinary: Ordinary, like: Quantity): Range {
  let range = ranges.get(ordinary);
  if (!range) {
    range = { least: ends(ordinary.least, like), most: ends(ordinary.most, like) };
    ranges.set(ordinary, range);
  }
  return range;
}

/** A fall and a rise are as ordinary as each other; a temperature is a point on a scale. */
const size = (q: Quantity): Quantity => (q.dimension === 'temperature' ? q : q.abs());

const below = (q: Quantity, bound: Ends | undefined): boolean =>
  bound?.every((end) => q.compareTo(end) < 0) ?? false;

const above = (q: Quantity, bound: Ends | undefined): boolean =>
  bound?.every((end) => q.compareTo(end) > 0) ?? false;

/** Whether a value lies outside its ordinary range. Nothing is never out of the ordinary, but as a temperature. */
export function isUnusual(value: Quantity, ordinary: Ordinary): boolean {
  if (value.sign() === 0 && value.dimension !== 'temperature') return false;
  const { least, most } = rangeOf(ordinary, value);
  const q = size(value);
  return below(q, least) || above(q, most);
}

const inFamily = (bound: Ends, system: System): Quantity => bound[system === 'metric' ? 1 : 0];

function rangeWords({ least, most }: Range, system: System): Words {
  const [low, high] = [least, most].map((bound) => bound && inFamily(bound, system));
  if (low && high) return say`from ${{ low }} to ${{ high }}`;
  return low ? say`at least ${{ low }}` : say`at most ${{ high: high as Quantity }}`;
}

/** Changes of a share that people make: a factor for a percentage, the rest for the share, a lost point. */
const SHARE_SLIPS: readonly ((percent: Decimal) => Decimal)[] = [
  (p) => p.times(100),
  (p) => p.minus(100),
  (p) => p.times(100).minus(100),
  (p) => new Decimal(100).minus(p),
  (p) => p.div(10),
  (p) => p.times(10),
];

/** Units as people mix them up: first those of the same system. */
function otherUnits(unit: Unit): Unit[] {
  const all = unitsIn(unit.dimension).filter(
    ({ id, form }) => id !== unit.id && form !== 'feet-inches' && form !== 'one-in',
  );
  return [
    ...all.filter(({ system }) => system === unit.system),
    ...all.filter(({ system }) => system !== unit.system),
  ];
}

/** The same number with another unit, then the point moved; a share has slips of its own. */
function* candidates(value: Quantity): Generator<Quantity> {
  const [number, unit] = [numberShown(value), unitShown(value)];
  const made = (n: Decimal, u: Unit): Quantity =>
    newQuantity(value.dimension, u.form === 'one-in' ? u.factor.div(n) : canonical(n, u), u);
  if (value.dimension === 'ratio') {
    const percent = canonicalValue(value).times(100);
    for (const slip of SHARE_SLIPS) yield made(slip(percent), unitOf('ratio', '%') as Unit);
    return;
  }
  for (const other of otherUnits(unit)) yield made(number, other);
  for (const times of [10, 0.1, 1000, 0.001]) yield made(number.times(times), unit);
}

/** What is asked about a value: whether the slip was made that would explain it, where one does. */
function question(value: Quantity, ordinary: Ordinary): Words {
  const own = unitShown(value).system;
  for (const slip of numberShown(value).isZero() ? [] : candidates(value)) {
    if (slip.sign() !== value.sign() || isUnusual(slip, ordinary)) continue;
    const { system } = unitShown(slip);
    // No unit of the other family is named: who works in one has none of the other in mind.
    return system && own && system !== own
      ? say`Is it in ${{ system: system as string }} units?`
      : say`Was ${{ slip }} meant?`;
  }
  return say`Look at the figure and its unit again.`;
}

/**
 * The caution about a value outside its ordinary range.
 *
 * @param path - where the value stands in the input
 * @param system - the family of units of the job
 */
export function unusual(path: string, { value, ordinary }: Doubt, system: System): Caution {
  const range = rangeOf(ordinary, value);
  const passed = below(size(value), range.least) ? range.least : range.most;
  return {
    code: 'unusual',
    severity: 'warning',
    ...say`${{ path }} reads ${{ value }}, but ${{ thing: ordinary.of }} is ordinarily ${rangeWords(range, system)}. ${question(value, ordinary)}`,
    limit: inFamily(passed as Ends, system),
    actual: value,
    input: path,
    source: ordinary.source,
  };
}

const trade = sources.COMMON_PRACTICE;

export const SLAB_THICKNESS: Ordinary = {
  of: 'the thickness of a slab on ground',
  least: ['2 in', '50 mm'],
  most: ['18 in', '450 mm'],
  source: trade,
};

/** Of a slab, or of a topping that is bonded to one. */
export const SLAB_OR_TOPPING: Ordinary = {
  ...SLAB_THICKNESS,
  least: ['1 in', '25 mm'],
};

export const PLAN_LENGTH: Ordinary = {
  of: 'a side of a slab, a pad or a walk',
  least: ['3 in', '75 mm'],
  most: ['2000 ft', '600 m'],
  source: trade,
};

export const WASTE_ALLOWANCE: Ordinary = {
  of: 'an allowance for waste and uneven ground',
  least: '1%',
  most: '30%',
  source: trade,
};
