/**
 * Air by the size of the largest stone: the more mortar, the more air.
 *
 * The table of ACI 211.1 for moderate and severe exposure, ±1.5 points as delivered; one point less above
 * 5,000 psi, or 35 MPa. Beside it the ranges of UFGS 03311, and the categories of CSA A23.1. A size between two rows has
 * the air of the smaller stone, within a tenth: 20 mm is 3/4 in, 40 mm is 1-1/2 in.
 */
import { constant, pressure, ratio } from '../quantity/make';
import { paired } from '../quantity/paired';
import type { Quantity } from '../quantity/quantity';
import { wholeNumber } from '../reckoning/fields';

type Ratio = Quantity<'ratio'>;
type Length = Quantity<'length'>;

/** Air in the concrete: what to aim at, and what is accepted. */
export interface Air {
  /** What to aim at, where the source says one. */
  readonly target?: Quantity<'ratio'>;
  /** The least that is accepted. */
  readonly minimum: Quantity<'ratio'>;
  /** The most that is accepted, where the source says one. */
  readonly maximum?: Quantity<'ratio'>;
}

/** Stone, then percent: moderate and severe of ACI 211.1, the range of UFGS. */
const ROWS = /*#__PURE__*/ (
  [
    ['3/8 in', '9.5 mm', 6, 7.5, 6, 10],
    ['1/2 in', '12.5 mm', 5.5, 7, 5, 9],
    ['3/4 in', '19 mm', 5, 6, 4, 8],
    ['1 in', '25 mm', 4.5, 6, 3.5, 6.5],
    ['1-1/2 in', '37.5 mm', 4.5, 5.5, 3, 6],
    ['2 in', '50 mm', 4, 5, 2.5, 5.5],
    ['3 in', '75 mm', 3.5, 4.5, 1.5, 4.5],
  ] as const
).map(([inches, millimeters, moderate, severe, low, high]) => ({
  size: paired('length', inches, millimeters),
  moderate,
  severe,
  low,
  high,
}));

const percent = (n: number): Ratio => ratio(`${n}%`);

/** Nine tenths of a size are that size. */
export const fits = (size: Length, row: Length): boolean =>
  !size.times(wholeNumber(10)).lessThan(row.times(wholeNumber(9)));

function rowFor(size: Length): (typeof ROWS)[number] {
  const found = ROWS.filter((row) => fits(size, row.size.like(size))).at(-1);
  return found ?? (ROWS[0] as (typeof ROWS)[number]);
}

/** Points of air by which a load may differ from what was aimed at. */
const TOLERANCE = 1.5;
const STRONG = constant(() => ({ customary: pressure('5000 psi'), metric: pressure('35 MPa') }));

/** By the table of ACI 211.1: what to aim at, and the range as delivered. */
export function airBySize(size: Length, severe: boolean, strength: Quantity<'pressure'>): Air {
  const row = rowFor(size);
  const strong = strength.greaterThan(STRONG().customary) && strength.greaterThan(STRONG().metric);
  const target = (severe ? row.severe : row.moderate) - (strong ? 1 : 0);
  return {
    target: percent(target),
    minimum: percent(target - TOLERANCE),
    maximum: percent(target + TOLERANCE),
  };
}

/** The range of UFGS 03311, for what freezes wet. */
export function airOfUfgs(size: Length): Air {
  const { low, high } = rowFor(size);
  return { minimum: percent(low), maximum: percent(high) };
}

/** CSA A23.1: stone to 10 mm, to 20 mm, to 40 mm; category 1 freezes wet, category 2 does not. */
const CSA_SIZES = /*#__PURE__*/ [
  { to: paired('length', '1/2 in', '12 mm'), wet: [6, 9], damp: [5, 8] },
  { to: paired('length', '7/8 in', '22 mm'), wet: [5, 8], damp: [4, 7] },
  { to: undefined, wet: [4, 7], damp: [3, 6] },
] as const;

/** The range of CSA A23.1. */
export function airOfCsa(size: Length, wet: boolean): Air {
  const row = CSA_SIZES.find(({ to }) => !to || size.lessThan(to.like(size))) ?? CSA_SIZES[2];
  const [low, high] = wet ? row.wet : row.damp;
  return { minimum: percent(low), maximum: percent(high) };
}
