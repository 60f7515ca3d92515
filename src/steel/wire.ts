/**
 * Welded wire: designations read and written, wire sizes, areas and weights.
 *
 * A style is two spacings and two wires, `6x6-W1.4xW1.4`: the wires that run lengthwise first. A
 * W or D number is the area of the wire in hundredths of a square inch (W plain, D deformed); an MW
 * or MD number is the area in square millimetres. Older styles name wires by steel wire gauge,
 * `6x6-10x10`. Source: Table I of the article on the wire numbering system, Concrete Construction,
 * October 1975; ACI 439.5R-18 section 1.3 for the metric prefix.
 */
import { Decimal, PI } from '../quantity/decimal';
import { area, length, massPerArea, ratio } from '../quantity/make';
import { canonicalValue, type Quantity, quantityOf } from '../quantity/quantity';

/** Plain or deformed. */
type WireSurface = 'plain' | 'deformed';

/** The wires that run one way. */
export interface WireRun {
  readonly spacing: Quantity<'length'>;
  readonly wire: Quantity<'area'>;
  readonly surface: WireSurface;
}

/** A style, read. */
export interface WireStyle {
  /** Wires along the length of the sheet or roll. */
  readonly along: WireRun;
  /** Wires across. */
  readonly across: WireRun;
  /** True where the style was written in metric units. */
  readonly metric: boolean;
}

/**
 * W number that stands for a gauge in stock styles. Gauge 8 is exactly W2.1 and gauge 2 exactly W5.4;
 * stock mesh is made with W2.0 and W5.5.
 */
const GAUGES: Record<string, string> = { '10': '1.4', '8': '2', '6': '2.9', '4': '4', '2': '5.5' };

/** Gauges that are understood. */
export const GAUGE_NAMES = /*#__PURE__*/ Object.keys(GAUGES);

/** Pounds per 100 ft2 with the edge wires of a 5 ft width, and whether in rolls or sheets. */
const STOCK: Record<string, readonly [weight: string, sold: string]> = {
  '6x6-W1.4xW1.4': ['21', 'roll'],
  '6x6-W2.0xW2.0': ['29', 'roll'],
  '6x6-W2.9xW2.9': ['42', 'roll or sheet'],
  '6x6-W4.0xW4.0': ['58', 'roll or sheet'],
  '4x4-W1.4xW1.4': ['31', 'roll'],
  '4x4-W2.0xW2.0': ['43', 'roll'],
  '4x4-W2.9xW2.9': ['62', 'roll'],
  '4x4-W4.0xW4.0': ['85', 'roll or sheet'],
  '6x6-W5.5xW5.5': ['80', 'sheet'],
};

/** The stock styles of the table, lightest first. */
export const STOCK_STYLES: readonly string[] = [
  '6x6-W1.4xW1.4',
  '6x6-W2.0xW2.0',
  '4x4-W1.4xW1.4',
  '6x6-W2.9xW2.9',
  '4x4-W2.0xW2.0',
  '6x6-W4.0xW4.0',
  '4x4-W2.9xW2.9',
  '6x6-W5.5xW5.5',
  '4x4-W4.0xW4.0',
];

const STYLE =
  /^(\d{1,3}(?:\.\d{1,2})?) ?(?:in|mm)? ?x ?(\d{1,3}(?:\.\d{1,2})?) ?(?:in|mm)?(?: ?- ?| )(m?[wd])?(\d{1,3}(?:\.\d{1,2})?) ?[x/] ?(m?[wd])?(\d{1,3}(?:\.\d{1,2})?)(?: ?ga(?:uge)?)?$/i;

const surfaceOf = (prefix: string): WireSurface => (/d$/i.test(prefix) ? 'deformed' : 'plain');

interface Written {
  readonly spacings: readonly [string, string];
  readonly prefixes: readonly [string, string];
  readonly numbers: readonly [string, string];
}

function gauged({ spacings, numbers }: Written): WireStyle | undefined {
  const [first, second] = [GAUGES[numbers[0]], GAUGES[numbers[1]]];
  if (first === undefined || second === undefined) return undefined;
  const run = (spacing: string, w: string): WireRun => ({
    spacing: length(`${spacing} in`),
    wire: area(`${w} in2`).times(ratio('1%')),
    surface: 'plain',
  });
  return { along: run(spacings[0], first), across: run(spacings[1], second), metric: false };
}

function numbered({ spacings, prefixes, numbers }: Written): WireStyle | undefined {
  const metric = /^m/i.test(prefixes[0]);
  if (metric !== /^m/i.test(prefixes[1])) return undefined;
  const run = (i: 0 | 1): WireRun => ({
    spacing: length(`${spacings[i]} ${metric ? 'mm' : 'in'}`),
    wire: metric ? area(`${numbers[i]} mm2`) : area(`${numbers[i]} in2`).times(ratio('1%')),
    surface: surfaceOf(prefixes[i]),
  });
  return { along: run(0), across: run(1), metric };
}

/**
 * Read a style; `undefined` for anything that is none.
 *
 * `6x6-W1.4xW1.4`, `4x12 - D6xD4`, `152x152-MW9.1xMW9.1`, `6x6-10x10`, `6x6 10/10`.
 */
export function readStyle(text: string): WireStyle | undefined {
  if (text.length > 60) return undefined;
  const found = STYLE.exec(text.trim().replaceAll('×', 'x'));
  if (!found) return undefined;
  const [, a = '', b = '', p1, n1 = '', p2, n2 = ''] = found;
  if ([a, b, n1, n2].some((n) => Number(n) === 0)) return undefined;
  if ((p1 === undefined) !== (p2 === undefined)) return undefined;
  const written: Written = { spacings: [a, b], prefixes: [p1 ?? '', p2 ?? ''], numbers: [n1, n2] };
  return p1 === undefined ? gauged(written) : numbered(written);
}

const IN2 = /*#__PURE__*/ new Decimal('0.00064516');
const MM2 = /*#__PURE__*/ new Decimal('0.000001');

/** At least one decimal below ten, as the tables write wire numbers: `W2.0`, `W10`, `W5.5`. */
function wireNumber(value: Decimal): string {
  const near = value.toDecimalPlaces(1);
  return near.isInteger() && near.greaterThanOrEqualTo(10) ? near.toFixed(0) : near.toFixed(1);
}

const spacingNumber = (metres: Decimal, unit: string): string =>
  metres
    .div(unit)
    .toDecimalPlaces(unit === '0.001' ? 0 : 2)
    .toString();

/** Write a style in inches and W or D numbers, rounded as the tables do. */
export function writeStyle({ along, across }: WireStyle): string {
  const wire = ({ wire: a, surface }: WireRun): string =>
    `${surface === 'plain' ? 'W' : 'D'}${wireNumber(canonicalValue(a).div(IN2).times(100))}`;
  const spacing = (run: WireRun): string => spacingNumber(canonicalValue(run.spacing), '0.0254');
  return `${spacing(along)}x${spacing(across)}-${wire(along)}x${wire(across)}`;
}

/** Write a style in millimetres and MW or MD numbers: whole from 10 up, one decimal below. */
export function writeMetricStyle({ along, across }: WireStyle): string {
  const wire = ({ wire: a, surface }: WireRun): string => {
    const value = canonicalValue(a).div(MM2);
    const number = value.greaterThanOrEqualTo(10) ? value.toFixed(0) : value.toDecimalPlaces(1).toString();
    return `${surface === 'plain' ? 'MW' : 'MD'}${number}`;
  };
  const spacing = (run: WireRun): string => spacingNumber(canonicalValue(run.spacing), '0.001');
  return `${spacing(along)}x${spacing(across)}-${wire(along)}x${wire(across)}`;
}

/** Write a stock style with gauges, as it used to be; `undefined` where no gauge stands for the wire. */
export function writeGauges({ along, across }: WireStyle): string | undefined {
  const gauge = ({ wire }: WireRun): string | undefined => {
    const w = canonicalValue(wire).div(IN2).times(100);
    return GAUGE_NAMES.find((name) => w.equals(GAUGES[name] ?? ''));
  };
  const [a, b] = [gauge(along), gauge(across)];
  if (a === undefined || b === undefined) return undefined;
  const spacing = (run: WireRun): string => spacingNumber(canonicalValue(run.spacing), '0.0254');
  return `${spacing(along)}x${spacing(across)}-${a}x${b}`;
}

/** Diameter of a round wire of that area. */
export const wireDiameter = (wire: Quantity<'area'>): Quantity<'length'> =>
  quantityOf('length', canonicalValue(wire).times(4).div(PI).sqrt(), 'customary').in('in');

/** Published weight of a stock style; `undefined` for others. */
export function stockWeight(style: string): Quantity<'mass-per-area'> | undefined {
  const row = STOCK[style];
  return row ? massPerArea(`${row[0]} lb/ft2`).times(ratio('1%')) : undefined;
}

/** How a stock style is usually sold; `undefined` for others. */
export const soldAs = (style: string): string | undefined => STOCK[style]?.[1];

/** A size that mesh is commonly sold in. */
export interface SoldSize {
  readonly form: 'roll' | 'sheet';
  readonly width: Quantity<'length'>;
  readonly length: Quantity<'length'>;
}

/**
 * Common sizes of a stock style; none for others. The roll is that of Estimating in Building Construction,
 * 7th ed., page 102; the sheets are common practice, from memory.
 */
export function soldSizes(style: string): SoldSize[] {
  const sold = STOCK[style]?.[1] ?? '';
  const size = (form: 'roll' | 'sheet', width: string, long: string): SoldSize[] =>
    sold.includes(form) ? [{ form, width: length(width), length: length(long) }] : [];
  return [
    ...size('roll', '5 ft', '150 ft'),
    ...size('sheet', '5 ft', '10 ft'),
    ...size('sheet', '8 ft', '20 ft'),
  ];
}
