/** Bars and mesh that provide the steel that is needed in a foot or a meter of width. */

import { paired } from '../quantity/paired';
import type { Quantity } from '../quantity/quantity';
import type { System } from '../quantity/units';
import { type AnyBarSize, type BarGrade, sectionOf } from './bars';
import { SQUARE_FABRICS } from './fabrics';
import { readStyle, STOCK_STYLES, writeMetricStyle } from './wire';

type Length = Quantity<'length'>;
type Area = Quantity<'area'>;

/** A bar and the widest spacing that still provides enough. */
export interface BarChoice {
  /** Size of the bars. */
  readonly bar: AnyBarSize;
  /** Rounded down to a whole inch, or to 10 mm. */
  readonly spacing: Quantity<'length'>;
  /** What they provide in a foot of width; left out in a metric job. */
  readonly areaPerFoot?: Quantity<'area'>;
  /** What they provide in a meter of width; left out in a customary job. */
  readonly areaPerMeter?: Quantity<'area'>;
}

/** A stock mesh that provides enough. */
export interface MeshChoice {
  /** Style in inches and W or D numbers, or in millimeters and MW or MD numbers; beside bars by diameter a fabric as A252 or SL82. */
  readonly style: string;
  /** What its wires along provide in a foot of width; left out in a metric job. */
  readonly areaPerFoot?: Quantity<'area'>;
  /** What its wires along provide in a meter of width; left out in a customary job. */
  readonly areaPerMeter?: Quantity<'area'>;
}

/** Steel that is needed one way, and what provides it. */
export interface SteelNeed {
  /** In a foot of width; left out in a metric job. */
  readonly areaPerFoot?: Quantity<'area'>;
  /** In a meter of width; left out in a customary job. */
  readonly areaPerMeter?: Quantity<'area'>;
  /** Bars of #3 to #6, or of 10M to 20M and 8 to 16 mm, those first that grade or bar speak of, each at its widest spacing that is enough. */
  readonly bars: readonly BarChoice[];
  /** Stock styles or fabrics that are enough, lightest first. */
  readonly mesh: readonly MeshChoice[];
}

/** The width that steel is given for. */
export const WIDTH = /*#__PURE__*/ paired('length', '1 ft', '1 m');
const STEP = /*#__PURE__*/ paired('length', '1 in', '10 mm');
/** The width that steel is given for, in words. */
export const AREA_UNIT = { customary: 'in2', metric: 'mm2' } as const;

const INCH_POUND: readonly AnyBarSize[] = ['#3', '#4', '#5', '#6'];
const BY_M: readonly AnyBarSize[] = ['10M', '15M', '20M'];
const BY_DIAMETER: readonly AnyBarSize[] = ['8 mm', '10 mm', '12 mm', '16 mm'];

/** Where the steel of a metric job is made: named with an M, or by diameter, where bar or grade say so. */
export type SteelMade = 'by M' | 'by diameter' | undefined;

/** Bars of the job's own kind first: a yard may have the others too. */
function barsOf(made: SteelMade, system: System): readonly AnyBarSize[] {
  if (system === 'customary') return INCH_POUND;
  return made === 'by M' ? [...BY_M, ...BY_DIAMETER] : [...BY_DIAMETER, ...BY_M];
}

/** Whose bars a grade is of, where its name says so. */
export const madeOfGrade = (grade: BarGrade | undefined): SteelMade =>
  grade?.startsWith('B') ? 'by diameter' : undefined;

/** Whose bar it is, where its name says so. */
export function madeOfBar(bar: AnyBarSize): SteelMade {
  if (bar.endsWith('M')) return 'by M';
  return bar.endsWith('mm') ? 'by diameter' : undefined;
}

/** Steel in the width of the unit system, by its name. */
const perWidth = (area: Area, system: System): { areaPerFoot: Area } | { areaPerMeter: Area } =>
  system === 'metric' ? { areaPerMeter: area.in('mm2') } : { areaPerFoot: area.in('in2') };

/** Widest spacing on a whole step that provides the area, under the limit. */
function barChoice(bar: AnyBarSize, needed: Area, limit: Length, system: System): BarChoice[] {
  const [a, b] = [sectionOf(bar), WIDTH.as(system)];
  const widest = b.times(a.over(needed));
  const most = (limit.lessThan(widest) ? limit : widest).downTo(STEP.as(system));
  if (most.sign() <= 0) return [];
  const spacing = system === 'metric' ? most.in('mm') : most;
  return [{ bar, spacing, ...perWidth(a.times(b.over(spacing)), system) }];
}

function meshChoices(needed: Area, system: System): MeshChoice[] {
  return STOCK_STYLES.flatMap((style) => {
    const read = readStyle(style);
    if (!read) return [];
    const { wire, spacing } = read.along;
    const provided = wire.times(WIDTH.as(system).over(spacing));
    if (provided.lessThan(needed)) return [];
    return [{ style: system === 'metric' ? writeMetricStyle(read) : style, ...perWidth(provided, system) }];
  });
}

/** Fabrics that are called by a name, the same both ways, lightest first. */
function fabricChoices(needed: Area): MeshChoice[] {
  return SQUARE_FABRICS.flatMap((style) => {
    const read = readStyle(style);
    if (!read) return [];
    const { wire, spacing } = read.along;
    const provided = wire.times(WIDTH.as('metric').over(spacing));
    return provided.lessThan(needed) ? [] : [{ style, ...perWidth(provided, 'metric') }];
  });
}

/** Mesh of the job's own kind; where nothing says whose it is, the fabrics by name and then the stock styles. */
function meshOf(needed: Area, system: System, made: SteelMade): readonly MeshChoice[] {
  if (system === 'customary' || made === 'by M') return meshChoices(needed, system);
  const fabrics = fabricChoices(needed);
  return made === 'by diameter' ? fabrics : [...fabrics, ...meshChoices(needed, system)];
}

/** @param needed - steel in the width of the unit system */
export function needOf(needed: Area, limit: Length, system: System, made?: SteelMade): SteelNeed {
  return {
    ...perWidth(needed, system),
    bars: barsOf(made, system).flatMap((bar) => barChoice(bar, needed, limit, system)),
    mesh: meshOf(needed, system, made),
  };
}
