/**
 * Storm water from roofs and paving by the rational formula, `Q = C × i × A`.
 *
 * With A in acres and i in inches an hour, Q in cubic feet a second is 121/120 times the plain
 * product; codes drop that factor. Here the units carry it exactly.
 */
import { Decimal } from '../quantity/decimal';
import { constant, ratio } from '../quantity/make';
import {
  canonicalValue,
  type Quantity,
  type QuantityInput,
  quantityOf,
  systemOfQuantity,
} from '../quantity/quantity';
import { bareRatio } from '../reckoning/bare-ratio';
import { type Calculation, define } from '../reckoning/calculation';
import { choice, fields, list, maybe, quantity } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { HERPICC_RUNOFF, type Source } from '../reckoning/source';
import { total } from '../reckoning/whole';
import { say } from '../reckoning/words';
import * as cautions from './cautions';
import { DRAINED_AREA, RAIN, RUNOFF_SHARE } from './note-ranges';
import { NYC_RUNOFF, RATIONAL_FORMULA } from './sources';

/** Surfaces with a published runoff coefficient. */
export type RunoffSurface =
  | 'roof'
  | 'concrete'
  | 'asphalt'
  | 'porous-paving'
  | 'gravel'
  | 'grass'
  | 'undeveloped';

/** One surface that rain runs off. */
export interface RunoffAreaInput {
  /** What the rain falls on; decides the coefficient where none is given. */
  readonly surface: RunoffSurface;
  /** Area in plan, also of a pitched roof. */
  readonly area: QuantityInput<'area'>;
  /** Share of the rain that runs off; goes before that of the table. */
  readonly coefficient?: QuantityInput<'ratio'>;
}

/** Input of {@link runoff}. */
export interface RunoffInput {
  /** Surfaces whose flows are added up. */
  readonly areas: readonly RunoffAreaInput[];
  /** Rain of the design storm, for example `5.95 in/h`; the local code gives it. */
  readonly intensity: QuantityInput<'speed'>;
  /** Whose coefficients; by default the higher ones, of a plumbing code. */
  readonly table?: 'plumbing-code' | 'stormwater-manual';
}

/** Figures of {@link runoff}. */
export interface RunoffFigures {
  /** Flow of all surfaces together, in gal/min or L/s. */
  readonly flow: Quantity<'volume-rate'>;
  /** The same in cubic feet a second. */
  readonly flowInCubicFeet: Quantity<'volume-rate'>;
  /** Flow by surface, in the order given. */
  readonly areas: readonly {
    /** What the rain falls on. */
    readonly surface: RunoffSurface;
    /** Share of the rain that runs off, as given or from the table. */
    readonly coefficient: Quantity<'ratio'>;
    /** Flow off this surface, in gal/min or L/s. */
    readonly flow: Quantity<'volume-rate'>;
  }[];
  /** Coefficient of all together, weighted by area. */
  readonly coefficient: Quantity<'ratio'>;
}

type Table = 'plumbing-code' | 'stormwater-manual';

interface Parsed {
  readonly areas: readonly {
    readonly surface: RunoffSurface;
    readonly area: Quantity<'area'>;
    readonly coefficient: Quantity<'ratio'> | undefined;
  }[];
  readonly intensity: Quantity<'speed'>;
  readonly table: Table | undefined;
}

/** Where the second table has no entry, the first serves. */
const COEFFICIENTS: Record<
  RunoffSurface,
  { readonly 'plumbing-code': string; readonly 'stormwater-manual'?: string }
> = {
  roof: { 'plumbing-code': '0.95:1', 'stormwater-manual': '0.85:1' },
  concrete: { 'plumbing-code': '0.95:1', 'stormwater-manual': '0.85:1' },
  asphalt: { 'plumbing-code': '0.85:1', 'stormwater-manual': '0.82:1' },
  'porous-paving': { 'plumbing-code': '0.7:1' },
  gravel: { 'plumbing-code': '0.65:1' },
  grass: { 'plumbing-code': '0.2:1' },
  undeveloped: { 'plumbing-code': '0.3:1' },
};

const SURFACES = Object.keys(COEFFICIENTS) as RunoffSurface[];
const AREA_LIMIT = 100;
const SOURCES: Record<Table, Source> = { 'plumbing-code': NYC_RUNOFF, 'stormwater-manual': HERPICC_RUNOFF };
const WHOLE = constant(() => ratio('1:1'));

type Taken = {
  readonly coefficient: Quantity<'ratio'>;
  readonly area: Quantity<'area'>;
  readonly surface: RunoffSurface;
};

function taken({ areas, table }: Parsed, pad: Pad): Taken[] {
  return areas.map(({ surface, area, coefficient }, i) => {
    if (coefficient) return { surface, area, coefficient };
    const row = COEFFICIENTS[surface];
    const own = row[table ?? 'plumbing-code'];
    const value = ratio(own ?? row['plumbing-code']);
    pad.assume({
      name: `areas[${i}].coefficient`,
      value: value.in(':1'),
      because: say`share of the rain that runs off: ${{ surface }}`,
      override: 'Give coefficient, or another table',
      source: own && table ? SOURCES[table] : NYC_RUNOFF,
    });
    return { surface, area, coefficient: value };
  });
}

const flowShown = (flow: Quantity<'volume-rate'>, metric: boolean): Quantity<'volume-rate'> =>
  flow.in(metric ? 'L/s' : 'gal/min');

function reckon(input: Parsed, pad: Pad): RunoffFigures {
  const I = input.intensity;
  const metric = systemOfQuantity(I) === 'metric';
  const parts = taken(input, pad);
  const flows = parts.map(({ surface, area: A, coefficient: C }) => {
    const flow = pad.step(
      say`flow off the ${{ surface }}`,
      'Q = C × I × A',
      { C, I, A },
      flowShown(A.times(I).times(C), metric),
    );
    return { surface, coefficient: C, flow };
  });
  const flow = total(
    'flow in all',
    'Q',
    flows.map((f) => f.flow),
    pad,
  );
  const weighted = parts.reduce(
    (sum, p) => sum.plus(canonicalValue(p.area).times(canonicalValue(p.coefficient))),
    new Decimal(0),
  );
  const whole = parts.reduce((sum, p) => sum.plus(canonicalValue(p.area)), new Decimal(0));
  if (input.areas.some(({ coefficient }) => !coefficient)) pad.caution(cautions.guessedCoefficient);
  return {
    flow,
    flowInCubicFeet: flow.in('ft3/s'),
    areas: flows,
    coefficient: quantityOf('ratio', weighted.div(whole), 'customary').in(':1').times(WHOLE()),
  };
}

/**
 * Storm water from roofs and paving by the rational formula.
 *
 * @param input - surfaces with their areas, and the rain of the design storm
 * @returns the flow, by surface and together, and the weighted coefficient
 * @throws {InputError} for quantities that cannot be read or are not greater than zero
 * @source Q = C i A as in the codes of Davison and Marshall County; coefficients of New York City and
 * of the HERPICC manual. The factor 121/120 that they drop is kept
 * @example
 * ```ts
 * import { runoff } from 'flatwork-reckoner';
 *
 * const { figures } = runoff({
 *   areas: [{ surface: 'roof', area: '800 ft2' }],
 *   intensity: '5.95 in/h',
 * });
 * figures.flow.format(); // '46.98 gal/min'
 * ```
 */
export const runoff: Calculation<RunoffInput, RunoffFigures> = /*#__PURE__*/ define({
  id: 'runoff',
  title: 'Storm runoff from roofs and paving',
  version: 1,
  sources: [RATIONAL_FORMULA, NYC_RUNOFF, HERPICC_RUNOFF],
  input: () =>
    fields({
      areas: list(
        fields({
          surface: choice('surface', SURFACES),
          area: quantity('area', 'area', 'positive', DRAINED_AREA),
          coefficient: maybe(bareRatio('coefficient', 'not-negative', RUNOFF_SHARE)),
        }),
        1,
        AREA_LIMIT,
      ),
      intensity: quantity('speed', 'intensity', 'positive', RAIN),
      table: maybe(choice('table', ['plumbing-code', 'stormwater-manual'] as const)),
    }),
  reckon,
});
