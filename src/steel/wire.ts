/**
 * Welded wire: designations read and written, wire sizes, areas and weights.
 *
 * A style is two spacings and two wires, `6x6-W1.4xW1.4`: the wires that run lengthwise first. A
 * W or D number is the area of the wire in hundredths of a square inch (W plain, D deformed); an MW
 * or MD number is the area in square millimeters. Older styles name wires by steel wire gauge,
 * `6x6-10x10`; metric fabric without prefixes names them by their diameter in millimeters, `200x200-6x6`. A
 * spacing of 25 or more without a unit is in millimeters: no mesh has wires 25 in apart. Source: Table I of the article on the wire numbering system, Concrete Construction,
 * October 1975; ACI 439.5R-18 section 1.3 for the metric prefix.
 */
import { Decimal, PI } from '../quantity/decimal';
import * as faults from '../quantity/faults';
import type { Fault } from '../quantity/input-error';
import { area, constant, length, massPerArea, ratio } from '../quantity/make';
import { paired } from '../quantity/paired';
import { canonicalValue, type Quantity, quantityOf, systemOfQuantity } from '../quantity/quantity';
import { twoWays } from '../quantity/text-faults';
import type { System } from '../quantity/units';
import { type Field, reading } from '../reckoning/fields';
import { wiresOfFabric } from './fabrics';

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
  /** The family of its name: it says nothing of the units of the job. */
  readonly namedIn: System;
  /** The name of the fabric, where it has one. */
  readonly fabric?: string;
  /** True where bare numbers of wires were taken as diameters in millimeters. */
  readonly diameters?: true;
}

/**
 * W number that stands for a gauge in stock styles. Gauge 8 is exactly W2.1 and gauge 2 exactly W5.4;
 * stock mesh is made with W2.0 and W5.5.
 */
const GAUGES: Record<string, string> = { '10': '1.4', '8': '2', '6': '2.9', '4': '4', '2': '5.5' };

/** Gauges that are understood. */
export const GAUGE_NAMES = /*#__PURE__*/ Object.keys(GAUGES);

/** How a stock style is usually sold. */
export type SoldAs = 'roll' | 'sheet' | 'roll or sheet';

/** Pounds per 100 ft2 with the edge wires of a 5 ft width, and whether in rolls or sheets. */
const STOCK: Record<string, readonly [weight: string, sold: SoldAs]> = {
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

const NUMBER = '(\\d{1,3}(?:\\.\\d{1,2})?)';
const SPACING = `${NUMBER} ?(in|mm|")?`;
const WIRE = `(m?[wd])? ?${NUMBER} ?(mm)?`;
const STYLE = /*#__PURE__*/ new RegExp(
  `^${SPACING} ?x ?${SPACING}(?: ?- ?| )${WIRE} ?[x/] ?${WIRE}( ?ga(?:uge)?)?$`,
  'i',
);

const surfaceOf = (prefix: string): WireSurface => (/d$/i.test(prefix) ? 'deformed' : 'plain');

interface Written {
  readonly spacings: readonly [string, string];
  readonly prefix: string;
  readonly prefixes: readonly [string, string];
  readonly numbers: readonly [string, string];
  /** True where the spacings are in millimeters. */
  readonly metric: boolean;
}

/** Two ways to read one style, each as it would be written. */
export interface TwoStyles {
  readonly first: string;
  readonly second: string;
}

const HUNDREDTH = constant(() => ratio('1%'));
const wNumber = (w: string): Quantity<'area'> => area(`${w} in2`).times(HUNDREDTH());

/** A round wire by its diameter in millimeters. */
const byDiameter = (d: string): Quantity<'area'> =>
  quantityOf('area', PI.times(new Decimal(d).pow(2)).div(4).times(MM2), 'metric').in('mm2');

function styleOf(written: Written, wires: readonly [Quantity<'area'>, Quantity<'area'>]): WireStyle {
  const run = (i: 0 | 1): WireRun => ({
    spacing: length(`${written.spacings[i]} ${written.metric ? 'mm' : 'in'}`),
    wire: wires[i],
    surface: surfaceOf(written.prefixes[i]),
  });
  const namedIn = written.metric ? 'metric' : 'customary';
  return { along: run(0), across: run(1), metric: written.metric, namedIn };
}

function gauged(written: Written): WireStyle | undefined {
  const [first, second] = written.numbers.map((n) => GAUGES[n]);
  if (first === undefined || second === undefined) return undefined;
  return styleOf(written, [wNumber(first), wNumber(second)]);
}

/** Thinnest and thickest wires that fabric is made of, in millimeters. */
const WIRES_MM = [2, 16] as const;

function diametered(written: Written): WireStyle | undefined {
  if (written.numbers.some((n) => Number(n) < WIRES_MM[0] || Number(n) > WIRES_MM[1])) return undefined;
  return styleOf(written, [byDiameter(written.numbers[0]), byDiameter(written.numbers[1])]);
}

const joinedWith = ({ spacings, numbers }: Written, prefix: string): string =>
  `${spacings.join('x')}-${prefix}${numbers[0]}x${prefix}${numbers[1]}`;

/** The other unit system for spacings: 6 in is 152 mm, as tables round it. */
const converted = (written: Written): Written => ({
  ...written,
  metric: !written.metric,
  spacings: written.spacings.map((s) =>
    (written.metric ? new Decimal(s).div('25.4') : new Decimal(s).times('25.4'))
      .toDecimalPlaces(0)
      .toString(),
  ) as [string, string],
});

/** W and D numbers go with inches, MW and MD numbers with millimeters: else one of the two is a slip. */
function numbered(written: Written): WireStyle | TwoStyles | undefined {
  const metric = /^m/i.test(written.prefixes[0]);
  if (metric !== /^m/i.test(written.prefixes[1])) return undefined;
  if (metric !== written.metric) {
    const letter = written.prefix.replace(/^m/i, '').toUpperCase();
    const [own, other] = [metric ? `M${letter}` : letter, metric ? letter : `M${letter}`];
    return { first: joinedWith(converted(written), own), second: joinedWith(written, other) };
  }
  const wires = written.numbers.map((n) => (metric ? area(`${n} mm2`) : wNumber(n)));
  return styleOf(written, wires as [Quantity<'area'>, Quantity<'area'>]);
}

/** Spacings of stock styles with gauges, put into millimeters: there a bare 10 may still be a gauge. */
const GAUGE_SPACINGS: readonly string[] = ['50', '51', '75', '76', '100', '102', '150', '152', '300', '305'];

/** Wires without a prefix: gauges with inches, millimeters with millimeters. */
function bare(written: Written, by: 'gauge' | 'mm' | undefined): WireStyle | TwoStyles | undefined {
  if (by === 'gauge') return gauged(written);
  if (!written.metric) return by === 'mm' ? undefined : gauged(written);
  const gauge = written.numbers.every((n) => GAUGES[n] !== undefined);
  if (by === undefined && gauge && written.spacings.every((s) => GAUGE_SPACINGS.includes(s))) {
    return { first: `${joinedWith(written, '')} mm`, second: joinedWith(converted(written), '') };
  }
  const style = diametered(written);
  return style && by === undefined ? { ...style, diameters: true } : style;
}

const MM_FROM = 25;

/** Millimeters where it says so, or where no mesh has wires so many inches apart. */
function isMetric(spacings: readonly string[], units: readonly (string | undefined)[]): boolean | undefined {
  const given = units.find((u) => u !== undefined);
  if (units.some((u) => u !== undefined && /mm/i.test(u) !== /mm/i.test(given as string))) return undefined;
  if (given !== undefined) return /mm/i.test(given);
  const large = spacings.map((s) => Number(s) >= MM_FROM);
  return large[0] === large[1] ? large[0] : undefined;
}

/** Fabric by its name alone, as metric jobs call for it: ribbed wires. */
function fabricNamed(text: string): WireStyle | undefined {
  const name = text.trim().toUpperCase();
  const made = wiresOfFabric(name);
  if (!made) return undefined;
  const [along, thick, across, thin] = made;
  const run = (spacing: string, diameter: string): WireRun => ({
    spacing: length(`${spacing} mm`),
    wire: byDiameter(diameter),
    surface: 'deformed',
  });
  return {
    along: run(along, thick),
    across: run(across, thin),
    metric: true,
    namedIn: 'metric',
    fabric: name,
  };
}

/**
 * Read a style, or both ways in which it can be read; `undefined` for anything that is none.
 *
 * `A193`, `6x6-W1.4xW1.4`, `WWR 4x12 - D6xD4`, `152x152-MW9.1xMW9.1`, `6x6-10x10`, `6x6 10/10`, `6-6-10-10`,
 * `200x200-6x6`, `150x150x6 mm`.
 */
export function readings(text: string): WireStyle | TwoStyles | undefined {
  if (text.length > LONGEST) return undefined;
  const bareName = text.trim().replace(ITS_KIND, '').trim();
  return fabricNamed(bareName) ?? written(bareName);
}

/** What drawings write before or behind a style to say that it is one. */
const ITS_KIND = /^(?:ww[frm]|mesh|fabric)\b[ ,:]?|[ ,]\s*(?:ww[frm]|mesh|fabric)$/gi;

/** `6-6-10-10`, `6/6-10/10`: spacings and gauges parted by whatever was at hand. */
const SPOKEN = /^(\d) ?[-/x] ?(\d) ?- ?(\d{1,2}) ?[-/x] ?(\d{1,2})$/i;

/** `150x150x6 mm`: one wire both ways. */
const ONE_WIRE = /^(\d{2,3}) ?x ?(\d{2,3}) ?x ?(\d{1,2}(?:\.\d)?) ?mm$/i;

/** No style is longer. */
const LONGEST = 60;

function written(text: string): WireStyle | TwoStyles | undefined {
  const found = STYLE.exec(
    text.replaceAll('×', 'x').replace(SPOKEN, '$1x$2-$3x$4').replace(ONE_WIRE, '$1x$2-$3x$3 mm'),
  );
  if (!found) return undefined;
  const [, a = '', unitA, b = '', unitB, p1 = '', n1 = '', mm1, p2 = '', n2 = '', mm2, gauge] = found;
  const metric = isMetric([a, b], [unitA, unitB]);
  if (metric === undefined || [a, b, n1, n2].some((n) => Number(n) === 0)) return undefined;
  const style: Written = { spacings: [a, b], prefix: p1, prefixes: [p1, p2], numbers: [n1, n2], metric };
  const by = gauge ? 'gauge' : (mm1 ?? mm2) ? 'mm' : undefined;
  if (by && (p1 || p2 || (gauge && (mm1 ?? mm2)))) return undefined;
  if (!p1 !== !p2) return undefined;
  return p1 ? numbered(style) : bare(style, by);
}

export const isTwoStyles = (r: WireStyle | TwoStyles | undefined): r is TwoStyles =>
  r !== undefined && 'first' in r;

/** Read a style; `undefined` for anything that is none, and for what reads two ways. */
export function readStyle(text: string): WireStyle | undefined {
  const found = readings(text);
  return isTwoStyles(found) ? undefined : found;
}

/** A field for a style: read, or refused with both readings where there are two. */
export function styleField(fault: () => Fault): Field<WireStyle> {
  const read = (input: unknown): WireStyle | Fault => {
    if (input === undefined || input === null) return faults.missing('style', 'as text');
    if (typeof input !== 'string') return faults.wrongType('style', 'text');
    const found = readings(input);
    return isTwoStyles(found) ? twoWays('the mesh', input, found.first, found.second) : (found ?? fault());
  };
  return reading(read, () => ({ type: 'string', maxLength: 60 }));
}

const IN2 = /*#__PURE__*/ new Decimal('0.00064516');
const MM2 = /*#__PURE__*/ new Decimal('0.000001');

/** At least one decimal below ten, as the tables write wire numbers: `W2.0`, `W10`, `W5.5`. */
function wireNumber(value: Decimal): string {
  const near = value.toDecimalPlaces(1);
  return near.isInteger() && near.greaterThanOrEqualTo(10) ? near.toFixed(0) : near.toFixed(1);
}

const spacingNumber = (meters: Decimal, unit: string): string =>
  meters
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

/** Write a style in millimeters and MW or MD numbers: whole from 10 up, one decimal below. */
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
export const soldAs = (style: string): SoldAs | undefined => STOCK[style]?.[1];

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

const ROUND_SPACING = /*#__PURE__*/ paired('length', '6 in', '150 mm');

/** Mesh of round wires of one diameter, close together, where no style is given. */
export function roundWire(diameter: Quantity<'length'>): WireStyle {
  const namedIn = systemOfQuantity(diameter);
  const run: WireRun = {
    spacing: ROUND_SPACING.as(namedIn),
    wire: quantityOf('area', PI.times(canonicalValue(diameter).pow(2)).div(4), namedIn),
    surface: 'plain',
  };
  return { along: run, across: run, metric: namedIn === 'metric', namedIn };
}
