/**
 * A style of welded wire mesh, read: wires, spacings, steel per foot of width, weight.
 *
 * Steel per foot of width is the area of a wire × 12 in ÷ its spacing. Weights of stock styles are
 * the published ones, which count the edge wires of a 5 ft width; for other styles the wires of a wide
 * sheet are weighed at 490 lb/ft3, without edges.
 */

import { paired } from '../quantity/paired';
import type { Quantity } from '../quantity/quantity';
import { type Calculation, define } from '../reckoning/calculation';
import { fields } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE } from '../reckoning/source';
import { say } from '../reckoning/words';
import * as faults from './faults';
import { ACI_439_WIRE, DIAMETER_STYLES, FABRIC_NAMES, WRI_STYLES } from './sources';
import {
  GAUGE_NAMES,
  soldAs,
  soldSizes,
  stockWeight,
  styleField,
  type WireRun,
  type WireStyle,
  wireDiameter,
  writeGauges,
  writeMetricStyle,
  writeStyle,
} from './wire';

/** Input of {@link meshStyle}. */
export interface MeshStyleInput {
  /**
   * `6x6-W1.4xW1.4`, `4x12-D6xD4`, `152x152-MW9xMW9`, with gauges `6x6-10x10`, by diameter `200x200-6x6`, or the name
   * of square or structural fabric: `A193`, `B503`, `Q188A`, `R257A`, `SL82`, `RL818`.
   */
  readonly style: string;
}

/** The wires that run one way. */
export interface MeshWires {
  /** Center to center of the wires. */
  readonly spacing: Quantity<'length'>;
  /** Section of one wire. */
  readonly wireArea: Quantity<'area'>;
  /** Diameter of a round wire of that section. */
  readonly wireDiameter: Quantity<'length'>;
  /** Steel in one foot of width; left out in a metric job. */
  readonly areaPerFoot?: Quantity<'area'>;
  /** Steel in one meter of width; left out in a customary job. */
  readonly areaPerMeter?: Quantity<'area'>;
}

/** Figures of {@link meshStyle}. */
export interface MeshStyleFigures {
  /** In inches and W or D numbers. */
  readonly style: string;
  /** In millimeters and MW or MD numbers. */
  readonly metricStyle: string;
  /** The name of square or structural fabric, where it was given. */
  readonly fabric?: string;
  /** With gauges, as it used to be written, where gauges stand for its wires. */
  readonly gaugeStyle?: string;
  /** Wires along the sheet or roll. */
  readonly along: MeshWires;
  /** Wires across it. */
  readonly across: MeshWires;
  /** Weight of the mesh: as published for a stock style, else of the wires without edges. */
  readonly weight: Quantity<'mass-per-area'>;
  /** Roll, sheet, or either, for a stock style. */
  readonly soldAs?: 'roll' | 'sheet' | 'roll or sheet';
  /** Common sizes of a stock style; the sheets are from memory. */
  readonly sizes: readonly MeshSize[];
}

/** A size that mesh is commonly sold in. */
export interface MeshSize {
  /** Roll or sheet. */
  readonly form: 'roll' | 'sheet';
  /** Width of the roll or sheet. */
  readonly width: Quantity<'length'>;
  /** Length of the roll or sheet. */
  readonly length: Quantity<'length'>;
  /** Area of the whole roll or sheet. */
  readonly area: Quantity<'area'>;
}

const WIDTH = /*#__PURE__*/ paired('length', '1 ft', '1 m');
const STEEL = /*#__PURE__*/ paired('density', '490 pcf', '7850 kg/m3');

function wiresOf({ spacing: s, wire: a }: WireRun, name: string, pad: Pad): MeshWires {
  const metric = pad.system === 'metric';
  const b = WIDTH.as(pad.system);
  const A = a.times(b.over(s)).in(metric ? 'mm2' : 'in2');
  pad.step(say`steel in ${{ width: b }} of width, ${{ name }}`, 'A = a × b ÷ s', { a, b, s }, A);
  return {
    spacing: s,
    wireArea: a,
    wireDiameter: wireDiameter(a),
    ...(metric ? { areaPerMeter: A } : { areaPerFoot: A }),
  };
}

/** Weight of a style: published, or that of the bare wires. */
export function styleWeight(style: WireStyle, pad: Pad): Quantity<'mass-per-area'> {
  const published = stockWeight(writeStyle(style));
  if (published) return published;
  const { along, across } = style;
  const D = STEEL.as(pad.system);
  const values = { a: along.wire, s: along.spacing, c: across.wire, t: across.spacing, D };
  const thickness = along.wire.over(along.spacing).plus(across.wire.over(across.spacing));
  const u = thickness.times(D);
  pad.step('weight of the wires', 'u = (a ÷ s + c ÷ t) × D', values, u);
  pad.assume({
    name: 'weight',
    value: { reckoned: u },
    because: say`no weight is published for this style; the wires of a wide sheet at ${{ steel: STEEL }}, without edges`,
    override: 'Ask the maker',
    source: COMMON_PRACTICE,
  });
  return u;
}

/** The fault of a text that is no style. */
export const unknownStyle = (): ReturnType<typeof faults.unknownDesignation> =>
  faults.unknownDesignation(
    'the mesh',
    ['"6x6-W1.4xW1.4"', `"6x6-10x10" with a gauge of ${GAUGE_NAMES.join(', ')}`],
    ['"A193"', '"152x152-MW9xMW9"', '"200x200-7x7 mm"'],
  );

function reckon({ style }: { readonly style: WireStyle }, pad: Pad): MeshStyleFigures {
  const written = writeStyle(style);
  if (style.diameters) {
    pad.assume({
      name: 'wires',
      value: 'diameters in mm',
      because: 'metric fabric is named by spacing and diameter, both in millimeters',
      override: 'Write MW or MD numbers for areas in mm2, or ga behind gauges',
      source: DIAMETER_STYLES,
    });
  }
  const gaugeStyle = writeGauges(style);
  const sold = soldAs(written);
  return {
    style: written,
    metricStyle: writeMetricStyle(style),
    ...(style.fabric ? { fabric: style.fabric } : {}),
    ...(gaugeStyle ? { gaugeStyle } : {}),
    along: wiresOf(style.along, 'along', pad),
    across: wiresOf(style.across, 'across', pad),
    weight: styleWeight(style, pad),
    ...(sold ? { soldAs: sold } : {}),
    sizes: soldSizes(written).map((size) => ({ ...size, area: size.width.times(size.length) })),
  };
}

/**
 * A style of welded wire mesh, read and written in all ways.
 *
 * @param input - the style as it is written, new or old
 * @returns both designations, wires, steel per foot and meter of width, weight
 * @throws {InputError} `unknown-designation`; `ambiguous` for a style that reads two ways, as `152x152-10x10`
 * @source Concrete Construction, October 1975, page 454, table I; ACI 439.5R-18 for the metric prefix
 * @example
 * ```ts
 * import { meshStyle } from 'flatwork-reckoner';
 *
 * const { figures } = meshStyle({ style: '6x6-10x10' });
 * figures.style; // '6x6-W1.4xW1.4'
 * figures.along.areaPerFoot?.format('in2', { places: 3 }); // '0.028 in2'
 * ```
 */
export const meshStyle: Calculation<MeshStyleInput, MeshStyleFigures> = /*#__PURE__*/ define({
  id: 'mesh-style',
  title: 'Mesh style',
  version: 1,
  sources: [WRI_STYLES, ACI_439_WIRE, DIAMETER_STYLES, FABRIC_NAMES],
  input: () => fields({ style: styleField(unknownStyle) }),
  reckon,
});
