/** Slips of one value of the input: misread, in another unit, another in its place, or left out. */
import { Decimal, ROUND_DOWN, ROUND_HALF_UP } from '../quantity/decimal';
import type { Dimension } from '../quantity/dimensions';
import { canonical } from '../quantity/parse';
import { canonicalValue, newQuantity, numberShown, type Quantity, unitShown } from '../quantity/quantity';
import { type Unit, unitOf } from '../quantity/units';
import { pathText } from '../reckoning/calculation';
import { say, type Words } from '../reckoning/words';
import { miswritten } from './digit-slips';
import { COORDINATE, type Leaf } from './input-places';
import { siOf, siOfAmount } from './scale';
import type { Edit, Slip, SlipCode } from './slip';
import { type Misnamed, misnamed } from './unit-slips';
import { otherSizes } from './usual-sizes';

/** What a quantity would be made of: most are tried as a number alone, and never made. */
interface Amount {
  readonly dimension: Dimension;
  readonly value: Decimal;
  readonly unit: Unit;
  readonly number?: Decimal;
}

const amount = (dimension: Dimension, value: Decimal, unit: Unit, number?: Decimal): Amount =>
  number ? { dimension, value, unit, number } : { dimension, value, unit };

const quantityOf = ({ dimension, value, unit, number }: Amount): Quantity =>
  newQuantity(dimension, value, unit, number);

/** Another value for a leaf. */
interface Instead {
  readonly code: SlipCode;
  readonly quantity: Amount;
  readonly weight: number;
  /** How it was taken, where the value alone does not say. */
  readonly how?: Words;
}

const made = (leaf: Leaf, n: Decimal, unit: Unit): Amount =>
  amount(leaf.dimension, canonical(n, unit), unit, n);

const lengthUnit = (id: string): Unit => unitOf('length', id) as Unit;

/** The number of a quantity in a unit. */
const numberIn = (q: Quantity, unit: Unit): Decimal => canonicalValue(q).div(unit.factor);

const TWELVE = 12;

interface FeetInches {
  readonly feet: Decimal;
  readonly inches: Decimal;
}

/** Whole feet and the inches behind them, of a length that is written so. */
function feetInches({ quantity }: Leaf): FeetInches | undefined {
  if (unitShown(quantity).form !== 'feet-inches') return undefined;
  const inches = numberIn(quantity, lengthUnit('in'));
  const feet = inches.div(TWELVE).floor();
  return { feet, inches: inches.minus(feet.times(TWELVE)) };
}

function* feetInchSlips(leaf: Leaf): Generator<Instead> {
  const read = feetInches(leaf);
  if (!read || read.inches.isZero()) return;
  const { feet, inches } = read;
  const ft = lengthUnit('ft');
  const behind = (text: string): Decimal => new Decimal(`${feet.toFixed()}.${text.replace('.', '')}`);
  yield { code: 'feet-inches-as-decimal', quantity: made(leaf, behind(inches.toFixed()), ft), weight: 25 };
  if (inches.lessThan(10))
    yield {
      code: 'feet-inches-as-decimal',
      quantity: made(leaf, behind(`0${inches.toFixed()}`), ft),
      weight: 8,
    };
  yield { code: 'inches-left-out', quantity: made(leaf, feet, ft), weight: 8 };
  if (!inches.isInteger()) {
    const whole = amount(
      'length',
      canonical(feet.times(TWELVE).plus(inches.floor()), lengthUnit('in')),
      unitShown(leaf.quantity),
    );
    yield { code: 'inches-left-out', quantity: whole, weight: 3 };
  }
}

/** Feet with tenths, read as feet and as many inches. */
function* tenthsSlips(leaf: Leaf): Generator<Instead> {
  if (unitShown(leaf.quantity).id !== 'ft') return;
  const [whole = '', decimals] = numberShown(leaf.quantity).toFixed().split('.');
  if (decimals === undefined || decimals.length > 2) return;
  const feetInch = lengthUnit('ft-in');
  for (const inches of new Set([decimals, decimals.replace(/^0/, '')])) {
    if (inches === '' || Number(inches) >= TWELVE) continue;
    const total = new Decimal(whole).times(TWELVE).plus(inches);
    yield {
      code: 'tenths-as-inches',
      quantity: amount('length', canonical(total, lengthUnit('in')), feetInch),
      weight: 20,
    };
  }
}

/** Inches written as tenths or hundredths of a foot. */
function* inchSlips(leaf: Leaf): Generator<Instead> {
  if (unitShown(leaf.quantity).id !== 'in') return;
  const n = numberShown(leaf.quantity);
  // A part of an inch is never thought of in feet.
  if (n.greaterThanOrEqualTo(100) || n.lessThan(1)) return;
  const ft = lengthUnit('ft');
  yield { code: 'inches-as-tenths', quantity: made(leaf, n.div(10), ft), weight: n.lessThan(10) ? 25 : 6 };
  yield { code: 'inches-as-tenths', quantity: made(leaf, n.div(100), ft), weight: n.lessThan(10) ? 5 : 15 };
  // 14 in is 1 ft 2 in, and 1.2 ft is written.
  const rest = n.mod(TWELVE);
  if (n.greaterThan(TWELVE) && !rest.isZero() && rest.lessThan(10))
    yield {
      code: 'feet-inches-as-decimal',
      quantity: made(leaf, n.div(TWELVE).floor().plus(rest.div(10)), ft),
      weight: 8,
    };
}

/** Nominal sizes of lumber and block, in inches, with the actual ones. */
const NOMINAL: readonly (readonly [nominal: string, actual: string])[] = [
  ['2', '1.5'],
  ['4', '3.5'],
  ['6', '5.5'],
  ['8', '7.25'],
  ['10', '9.25'],
  ['12', '11.25'],
  ['4', '3.625'],
  ['6', '5.625'],
  ['8', '7.625'],
];

function* nominalSlips(leaf: Leaf): Generator<Instead> {
  if (unitShown(leaf.quantity).id !== 'in') return;
  const n = numberShown(leaf.quantity);
  for (const [nominal, actual] of NOMINAL) {
    if (n.equals(actual))
      yield {
        code: 'nominal-for-actual',
        quantity: made(leaf, new Decimal(nominal), lengthUnit('in')),
        weight: 15,
      };
    if (n.equals(nominal))
      yield {
        code: 'nominal-for-actual',
        quantity: made(leaf, new Decimal(actual), lengthUnit('in')),
        weight: 4,
      };
  }
}

/** A part of a foot as so many tenths, or as whole feet; millimeters as whole centimeters or tenths of a meter. */
function* coarseSlips(leaf: Leaf): Generator<Instead> {
  const metric = unitShown(leaf.quantity).id === 'mm';
  if (!metric && !['in', 'ft-in'].includes(unitShown(leaf.quantity).id)) return;
  const unit = lengthUnit(metric ? 'm' : 'ft');
  const n = numberIn(leaf.quantity, unit);
  for (const [places, rounding, weight] of metric ? COARSE_METERS : COARSE_FEET) {
    const coarse = n.toDecimalPlaces(places, rounding);
    if (!coarse.isZero() && !coarse.equals(n))
      yield { code: 'rounded-coarsely', quantity: made(leaf, coarse, unit), weight };
  }
}

/** Decimals that are kept, the nearest or cut off behind them: 20 in as 1.7 ft, or as 1.6. */
const COARSE_FEET = [
  [1, ROUND_HALF_UP, 4],
  [1, ROUND_DOWN, 1],
  [0, ROUND_HALF_UP, 3],
] as const;
const COARSE_METERS = [
  [2, ROUND_HALF_UP, 3],
  [1, ROUND_HALF_UP, 3],
] as const;

const times = (leaf: Leaf, factor: string | Decimal): Amount =>
  made(leaf, numberShown(leaf.quantity).times(factor), unitShown(leaf.quantity));

function* lengthSlips(leaf: Leaf): Generator<Instead> {
  yield* feetInchSlips(leaf);
  yield* tenthsSlips(leaf);
  yield* inchSlips(leaf);
  yield* nominalSlips(leaf);
  yield* coarseSlips(leaf);
  const round = /diameter/i.test(leaf.name)
    ? 'diameter-for-radius'
    : /radius/i.test(leaf.name)
      ? 'radius-for-diameter'
      : undefined;
  if (round)
    yield { code: round, quantity: times(leaf, round === 'diameter-for-radius' ? '2' : '0.5'), weight: 20 };
  if (round)
    yield { code: round, quantity: times(leaf, round === 'diameter-for-radius' ? '0.5' : '2'), weight: 5 };
}

/** What is a factor by itself, and no share that is put on or taken off. */
const IS_FACTOR = /coefficient|poisson|humidity|cement|slope|batter|friction|efficiency|purity|germination/i;

function* shareSlips(leaf: Leaf): Generator<Instead> {
  const unit = unitOf('ratio', '%') as Unit;
  const percent = numberIn(leaf.quantity, unit);
  // Two or five to one is a number, and not a share of anything.
  if (unitShown(leaf.quantity) !== unit && percent.abs().greaterThanOrEqualTo(100)) return;
  const put = (code: SlipCode, n: Decimal, weight: number): Instead => ({
    code,
    quantity: made(leaf, n, unit),
    weight,
  });
  yield put('percent-misplaced', percent.times(10), 4);
  yield put('percent-misplaced', percent.div(10), 4);
  if (IS_FACTOR.test(leaf.name)) return;
  yield put('allowance-missed', new Decimal(0), 22);
  yield put('allowance-twice', percent.times(2), 8);
  yield put('allowance-as-factor', percent.minus(100), 5);
  yield put('allowance-turned', percent.neg(), 4);
}

/** Slopes that are taken for each other though they are not quite the same, as inches in a foot and as percent. */
const NEARLY_ALIKE: readonly (readonly [inches: string, percent: string])[] = [
  ['0.125', '1'],
  ['0.25', '2'],
  ['0.5', '4'],
  ['1', '8'],
];

function* slopeSlips(leaf: Leaf): Generator<Instead> {
  const unit = unitOf('slope', '%') as Unit;
  const n = numberIn(leaf.quantity, unit);
  if (n.isZero()) return;
  yield { code: 'slope-upside-down', quantity: made(leaf, new Decimal(10000).div(n), unit), weight: 12 };
  // 1:60 as 60 mm in a meter.
  if (unitShown(leaf.quantity).form === 'one-in')
    yield {
      code: 'slope-unit',
      quantity: made(leaf, new Decimal(100).div(n), unitOf('slope', 'mm/m') as Unit),
      weight: 3,
    };
  const perFoot = unitOf('slope', 'in/ft') as Unit;
  const put = (quantity: Amount): Instead => ({ code: 'slope-unit', quantity, weight: 6 });
  for (const [inches, percent] of NEARLY_ALIKE) {
    if (numberIn(leaf.quantity, perFoot).equals(inches)) yield put(made(leaf, new Decimal(percent), unit));
    if (n.equals(percent)) yield put(made(leaf, new Decimal(inches), perFoot));
  }
}

/** Minutes as hundredths of an hour: 45 min as 0.45 h, and 0.45 h as 45 min. */
function* timeSlips(leaf: Leaf): Generator<Instead> {
  const hour = unitOf('time', 'h') as Unit;
  const hours = numberIn(leaf.quantity, hour);
  const whole = hours.floor();
  const rest = hours.minus(whole);
  if (rest.isZero() || !['h', 'min'].includes(unitShown(leaf.quantity).id)) return;
  const put = (n: Decimal): Instead => ({
    code: 'minutes-as-decimals',
    quantity: amount('time', canonical(whole.plus(n), hour), unitShown(leaf.quantity)),
    weight: 6,
  });
  yield put(rest.times('0.6'));
  if (rest.times(100).lessThan(60)) yield put(rest.div('0.6'));
}

function* temperatureSlips(leaf: Leaf): Generator<Instead> {
  const { id } = unitShown(leaf.quantity);
  const other = unitOf(leaf.dimension, id === 'degF' ? 'degC' : 'degF') as Unit;
  const n = numberShown(leaf.quantity);
  if (leaf.dimension === 'temperature')
    yield { code: 'temperature-scale', quantity: made(leaf, n, other), weight: 12 };
  else
    yield {
      code: 'degree-interval',
      quantity: made(leaf, id === 'degF' ? n.plus(57.6) : n.minus(17.777777778), unitShown(leaf.quantity)),
      weight: 5,
    };
}

function* countSlips(leaf: Leaf): Generator<Instead> {
  const n = numberShown(leaf.quantity);
  const unit = unitShown(leaf.quantity);
  yield { code: 'one-off-count', quantity: made(leaf, n.plus(1), unit), weight: 8 };
  yield { code: 'one-off-count', quantity: made(leaf, n.minus(1), unit), weight: 8 };
}

const OWN: Partial<Record<Leaf['dimension'], (leaf: Leaf) => Generator<Instead>>> = {
  length: lengthSlips,
  ratio: shareSlips,
  slope: slopeSlips,
  temperature: temperatureSlips,
  'temperature-difference': temperatureSlips,
  count: countSlips,
  time: timeSlips,
};

/** How common it is to take one for the other, where a value is put in. */
const FEET_AND_INCHES: Partial<Record<SlipCode, number>> = { 'inches-as-feet': 14, 'feet-as-inches': 5 };

/** What is seldom turned into another unit and put in under the old name: most values are taken from the plans. */
const TURNED = 0.4;
const READ_OFF: ReadonlySet<string> = /*#__PURE__*/ new Set(['speed', 'pressure', 'volume-rate']);

/** A value that was turned into another unit, under the name of its own: 20 km/h put in as 5.56. */
function* turnedSlips(leaf: Leaf): Generator<Instead> {
  const own = unitShown(leaf.quantity);
  if (!READ_OFF.has(leaf.dimension) || own.form) return;
  for (const { as, weight } of misnamed(own)) {
    const other = as === undefined ? undefined : unitOf(leaf.dimension, as);
    const n = other && numberIn(leaf.quantity, other).toSignificantDigits(12);
    if (n) yield { code: 'wrong-unit', quantity: made(leaf, n, own), weight: weight * TURNED };
  }
}

/** A number turned by another factor than its own. */
function* factorSlips(leaf: Leaf, { code, times: [top, bottom], weight }: Misnamed): Generator<Instead> {
  if (code === 'wrong-gallon')
    yield { code, quantity: times(leaf, new Decimal(top).div(bottom)), weight: weight / 2 };
  // Turned into cubic feet by 9, as square yards are.
  if (code === 'divided-by-9' && leaf.dimension === 'volume')
    yield { code: 'linear-factor', quantity: times(leaf, new Decimal(bottom).div(top)), weight: 3 };
}

function* unitSlips(leaf: Leaf): Generator<Instead> {
  const unit = unitShown(leaf.quantity);
  const inFeet = unit.form === 'feet-inches';
  for (const one of misnamed(inFeet ? lengthUnit('ft') : unit)) {
    yield* factorSlips(leaf, one);
    const { code, as, weight } = one;
    const other = as === undefined || code === 'linear-factor' ? undefined : unitOf(leaf.dimension, as);
    if (!other) continue;
    const n = inFeet ? numberIn(leaf.quantity, lengthUnit('ft')) : numberShown(leaf.quantity);
    const own = turned(code);
    yield { code: own, quantity: made(leaf, n, other), weight: FEET_AND_INCHES[own] ?? weight / 2 };
  }
}

/** A value put in with another unit is read the other way: 5 in taken as 5 ft is inches as feet. */
const turned = (code: SlipCode): SlipCode =>
  code === 'inches-as-feet' ? 'feet-as-inches' : code === 'feet-as-inches' ? 'inches-as-feet' : code;

/** What is told in millimeters beside meters is turned into them: there a point is moved more easily. */
const TURNED_OFTEN = 1.1;

function* writtenSlips(leaf: Leaf): Generator<Instead> {
  const unit = unitShown(leaf.quantity);
  const sign = numberShown(leaf.quantity).isNegative() ? '-' : '';
  if (unit.form === 'feet-inches') yield* partSlips(leaf);
  else
    for (const { code, text, weight: own } of miswritten(numberShown(leaf.quantity).abs().toFixed(), false)) {
      const n = new Decimal(sign + text);
      const weight = code === 'point-moved' && unit.id === 'mm' ? own * TURNED_OFTEN : own;
      const quantity = unit.form === 'one-in' ? oneIn(leaf, n, unit) : made(leaf, n, unit);
      if (quantity) yield { code, quantity, weight };
    }
}

const oneIn = (leaf: Leaf, n: Decimal, unit: Unit): Amount | undefined =>
  n.isZero() ? undefined : amount(leaf.dimension, unit.factor.div(n), unit);

/** Feet, or the inches behind them, miswritten. */
function* partSlips(leaf: Leaf): Generator<Instead> {
  const read = feetInches(leaf);
  if (!read) return;
  const { feet, inches } = read;
  const of = (f: Decimal, i: Decimal): Amount =>
    amount('length', canonical(f.times(TWELVE).plus(i), lengthUnit('in')), unitShown(leaf.quantity));
  for (const { code, text, weight } of miswritten(feet.toFixed(), false))
    yield { code, quantity: of(new Decimal(text), inches), weight };
  if (inches.isZero() || !inches.isInteger()) return;
  for (const { code, text, weight } of miswritten(inches.toFixed(), false))
    if (Number(text) < TWELVE && code !== 'point-moved')
      yield { code, quantity: of(feet, new Decimal(text)), weight: weight / 2 };
}

/** What a yard or a cubic meter of gravel is said to weigh, wherever it comes from. */
const SAID_TO_WEIGH: Readonly<Record<string, readonly string[]>> = {
  'ton/yd3': ['1.4', '1.5'],
  'kg/m3': ['1500', '1600', '1800', '2000'],
};
const SAID = 2;

function* weightSlips(leaf: Leaf): Generator<Instead> {
  if (leaf.name !== 'compactedDensity') return;
  const id = unitShown(leaf.quantity).system === 'metric' ? 'kg/m3' : 'ton/yd3';
  const unit = unitOf('density', id);
  for (const n of (unit && SAID_TO_WEIGH[id]) ?? [])
    yield { code: 'other-size', quantity: made(leaf, new Decimal(n), unit as Unit), weight: SAID };
}

function* usualSlips(leaf: Leaf): Generator<Instead> {
  for (const { number, unit, weight } of otherSizes(leaf))
    yield { code: 'other-size', quantity: made(leaf, number, unit), weight };
}

function* sizeSlips(leaf: Leaf): Generator<Instead> {
  if (leaf.dimension === 'temperature') return;
  // A share that is doubled has its own name.
  if (leaf.dimension !== 'ratio' || IS_FACTOR.test(leaf.name))
    yield { code: 'doubled', quantity: times(leaf, '2'), weight: 3 };
  const half = { code: 'halved', quantity: times(leaf, '0.5') } as const;
  // What is due at both ends is easily taken off, or put on, at one of them.
  yield AT_ENDS.test(leaf.name) && leaf.dimension === 'length'
    ? {
        ...half,
        weight: 6,
        how: say`${{ place: leaf.at }}, ${{ is: leaf.quantity }}, was taken on one side only`,
      }
    : { ...half, weight: 3 };
}

const AT_ENDS = /^(?:cover|margin|overhang|turnUp)$/;

/** Leaves beyond this are a table, whose values are not taken for each other unless they stand side by side. */
const FEW = 8;
const parentOf = ({ path }: Leaf): string => path.slice(0, -1).join();
/** The element of a job that a value is of. */
const elementOf = ({ path }: Leaf): string => path.slice(0, 2).join();

/** Values that one may be taken for: all that are alike where they are few, or those of its element, or beside it. */
function takenFor(leaf: Leaf, alike: readonly Leaf[]): readonly Leaf[] {
  if (alike.length <= FEW) return alike;
  const own = alike.filter((one) => elementOf(one) === elementOf(leaf));
  return leaf.path[0] === 'elements' && own.length <= FEW
    ? own
    : alike.filter((one) => parentOf(one) === parentOf(leaf));
}

function* otherSlips(leaf: Leaf, leaves: readonly Leaf[]): Generator<Instead> {
  const alike = leaves.filter(
    (one) => one.dimension === leaf.dimension && one.plain === leaf.plain && one !== leaf,
  );
  for (const other of takenFor(leaf, alike)) {
    if (other.quantity.equals(leaf.quantity)) continue;
    const sides = /inner|outer|inside|outside/i;
    const code = sides.test(leaf.name) && sides.test(other.name) ? 'outer-for-inner' : 'other-input';
    yield {
      code,
      quantity: amount(other.dimension, canonicalValue(other.quantity), unitShown(other.quantity)),
      weight: code === 'other-input' ? 2.5 : 12,
    };
  }
}

/** The number that stands before the unit, where it is a plain one. */
const isWhole = ({ value }: Amount): boolean => value.isInteger();

const mayBeBelow = ({ quantity, dimension }: Leaf): boolean =>
  quantity.sign() < 0 || dimension === 'ratio' || dimension === 'temperature';

const isPossible = ({ quantity }: Instead, leaf: Leaf): boolean =>
  !quantity.value.equals(canonicalValue(leaf.quantity)) &&
  (!leaf.plain || isWhole(quantity)) &&
  (!quantity.value.isNegative() || mayBeBelow(leaf));

function* allOf(leaf: Leaf, leaves: readonly Leaf[]): Generator<Instead> {
  const own = OWN[leaf.dimension];
  if (own) yield* own(leaf);
  if (leaf.dimension !== 'temperature') yield* unitSlips(leaf);
  yield* turnedSlips(leaf);
  yield* writtenSlips(leaf);
  yield* usualSlips(leaf);
  yield* weightSlips(leaf);
  yield* sizeSlips(leaf);
  yield* otherSlips(leaf, leaves);
}

const slipOf = (leaf: Leaf, { code, quantity, weight, how }: Instead): Slip => ({
  code,
  weight,
  says: () =>
    how ??
    say`${{ place: leaf.at }} is ${{ is: leaf.quantity }}, and ${{ taken: quantityOf(quantity) }} was taken`,
  edits: [
    {
      on: 'input',
      path: leaf.path,
      get value() {
        return leaf.plain ? quantity.value.toNumber() : quantityOf(quantity);
      },
      leaf,
      si: siOfAmount(quantity.value, leaf.dimension),
    },
  ],
  input: leaf.at,
});

/** Every slip of one value. */
export const leafSlips = (leaf: Leaf, leaves: readonly Leaf[]): Slip[] =>
  [...allOf(leaf, leaves)].filter((one) => isPossible(one, leaf)).map((one) => slipOf(leaf, one));

/** Habits: what is done to one value is done to all of them. */
const HABITS: ReadonlySet<SlipCode> = /*#__PURE__*/ new Set([
  'feet-inches-as-decimal',
  'inches-left-out',
  'rounded-coarsely',
  'tenths-as-inches',
  'inches-as-tenths',
  'inches-as-feet',
  'feet-as-inches',
]);

/** Inches are all tenths of a foot, or all hundredths; what else is done to a value in several ways is done in the best. */
function habitOf({ code }: Slip, { leaf, si }: OfLeaf): string | undefined {
  if (!HABITS.has(code)) return undefined;
  return code === 'inches-as-tenths' ? `${code} ${(si / siOf(leaf.quantity)).toPrecision(6)}` : code;
}

/** A length of a shape that is given by its corners stands at several of them: what is misread there is so at all. */
const sideOf = ({ code }: Slip, { leaf, si }: OfLeaf): string | undefined =>
  COORDINATE.test(leaf.name) && leaf.quantity.sign() !== 0
    ? [leaf.path.slice(0, -2), leaf.name, siOf(leaf.quantity), code, si].join(' ')
    : undefined;

/** The same of values that stand side by side. */
function ofOneThing(slip: Slip, edit: OfLeaf): string | undefined {
  const { path, name } = edit.leaf;
  const habit = path.length > 1 && !COORDINATE.test(name) ? habitOf(slip, edit) : undefined;
  return habit === undefined ? undefined : `${habit} ${parentOf(edit.leaf)}`;
}

/** More corners than this on one line are no side of a shape. */
const MOST_CORNERS = 4;
const TOGETHER = 0.8;
/** Of one thing it is rarer than by habit. */
const OF_ONE = 0.4;

type OfLeaf = Extract<Edit, { on: 'input' }> & { readonly leaf: Leaf; readonly si: number };

/** The same slip at every value that it can be made at, where there are several. */
function madeAtAll(
  slips: readonly Slip[],
  keyOf: (slip: Slip, edit: OfLeaf) => string | undefined,
  most: number,
  share = TOGETHER,
  placeOf: (leaf: Leaf) => { readonly input?: string } = () => ({}),
): Slip[] {
  const groups = new Map<string, Map<string, Slip>>();
  for (const slip of slips) {
    const key = keyOf(slip, slip.edits[0] as OfLeaf);
    if (key === undefined) continue;
    const group = groups.get(key) ?? new Map<string, Slip>();
    const at = slip.input as string;
    if ((group.get(at)?.weight ?? 0) < slip.weight) group.set(at, slip);
    groups.set(key, group);
  }
  return [...groups.values()].flatMap((group) => {
    const all = [...group.values()];
    const [first] = all;
    if (!first || all.length < 2 || all.length > most) return [];
    return [
      {
        code: first.code,
        weight: Math.max(...all.map(({ weight }) => weight)) * share,
        says: () => say`the same slip at ${{ places: [...group.keys()] }}`,
        edits: all.flatMap(({ edits }) => edits),
        ...placeOf((first.edits[0] as OfLeaf).leaf),
      },
    ];
  });
}

/** What somebody does wrong at one value, and likewise at others: by habit, or since they are one length. */
export const habits = (slips: readonly Slip[]): Slip[] => [
  ...madeAtAll(slips, habitOf, Number.POSITIVE_INFINITY),
  // Of one thing alone: the width and the depth of a footing, and the pads beside it right.
  ...madeAtAll(slips, ofOneThing, MOST_CORNERS, OF_ONE, ({ path }) => ({
    input: pathText(path.slice(0, -1)),
  })),
  ...madeAtAll(slips, sideOf, MOST_CORNERS),
];

/** How common it is to put two values in each other's place. */
const EXCHANGED = 2;
/** Beyond so many pairs it is a table. */
const FEW_PAIRS = 12;

/** Two values of one kind, each in the place of the other: the air as warm as the concrete, and the reverse. */
export function exchanges(leaves: readonly Leaf[]): Slip[] {
  const pairs = leaves.flatMap((a, i) =>
    leaves
      .slice(i + 1)
      .filter((b) => a.dimension === b.dimension && a.plain === b.plain && !a.quantity.equals(b.quantity))
      .map((b) => [a, b] as const),
  );
  if (pairs.length > FEW_PAIRS) return [];
  const put = (at: Leaf, of: Leaf): Edit => ({
    on: 'input',
    path: at.path,
    value: of.plain ? canonicalValue(of.quantity).toNumber() : of.quantity,
    leaf: at,
    si: siOf(of.quantity),
  });
  return pairs.map(([a, b]) => ({
    code: 'other-input',
    weight: EXCHANGED,
    says: () =>
      say`${{ place: a.at }}, ${{ is: a.quantity }}, and ${{ other: b.at }}, ${{ taken: b.quantity }}, were exchanged`,
    edits: [put(a, b), put(b, a)],
    input: a.at,
  }));
}
