/**
 * Spot elevations as a crew takes them: a list, a table with its unit once at the head, a grid, or
 * readings along forms.
 *
 * Elevations may be given as rod readings with the height of the instrument: `elevation = height of
 * instrument − rod`. Exact decimals are kept for every figure that is reported; binary numbers,
 * counted from the first spot, serve the search.
 */

import type { SpotArrays } from '../geometry/tin';
import type { PointInput } from '../outline/outline';
import { Decimal } from '../quantity/decimal';
import * as sharedFaults from '../quantity/faults';
import type { Fault } from '../quantity/input-error';
import { canonicalValue, newQuantity, type Quantity, type QuantityInput } from '../quantity/quantity';
import { type System, unitOf } from '../quantity/units';
import { refuse } from '../reckoning/calculation';
import { choice, type Field, fields, label, list, maybe, quantity, reading } from '../reckoning/fields';
import { type Limit, withinLimit } from '../reckoning/limits';
import type { Read } from '../reckoning/read';
import { oneOf } from '../reckoning/together';
import * as faults from './faults';
import * as ordinary from './ordinary';

/** One spot: where it is in plan and how high. */
export interface SpotInput {
  /** What the spot is called; by default `spot 1` and so on. */
  readonly name?: string;
  /** How far along the spot lies. */
  readonly x: QuantityInput<'length'>;
  /** How far across the spot lies. */
  readonly y: QuantityInput<'length'>;
  /** Elevation on any datum, the same for all spots. */
  readonly elevation?: QuantityInput<'length'>;
  /** Rod reading in place of the elevation; needs `heightOfInstrument`. */
  readonly rod?: QuantityInput<'length'>;
}

/** Many spots in one unit, as a field book has them: plain numbers under a unit at the head. */
export interface SpotTableInput {
  /** Unit of every number. */
  readonly unit: 'ft' | 'in' | 'm' | 'mm';
  /** Along, across and elevation of each spot. */
  readonly rows: readonly (readonly [x: number, y: number, elevation: number])[];
}

/** Elevations on a square or oblong grid. */
export interface SpotGridInput {
  /** Where the first elevation of the first row is; by default the origin. */
  readonly at?: PointInput;
  /** Distance between neighbors in a row, along x. */
  readonly along: QuantityInput<'length'>;
  /** Distance between rows, along y. */
  readonly across: QuantityInput<'length'>;
  /** Unit of the elevations. */
  readonly unit: 'ft' | 'in' | 'm' | 'mm';
  /** Rows of elevations as plain numbers; `null` where there is no surface. */
  readonly elevations: readonly (readonly (number | null)[])[];
}

/** Readings along a straight form. */
export interface FormReadingsInput {
  /** What the form is called; its spots are named after it. */
  readonly name: string;
  /** The end that readings are measured from. */
  readonly from: PointInput;
  /** A point farther along the form, which gives its direction. */
  readonly to: PointInput;
  /** How far along from `from`, and the elevation there. */
  readonly readings: readonly {
    /** How far along from `from`. */
    readonly at: QuantityInput<'length'>;
    /** Elevation there, on the datum of all spots. */
    readonly elevation: QuantityInput<'length'>;
  }[];
}

/** Where the spots of a surface may come from; any of them together. */
export interface SpotsInput {
  /** Spots one by one. */
  readonly spots?: readonly SpotInput[];
  /** Spots as plain numbers in one unit. */
  readonly table?: SpotTableInput;
  /** Spots on a grid. */
  readonly grid?: SpotGridInput;
  /** Spots along straight forms. */
  readonly forms?: readonly FormReadingsInput[];
  /** Elevation of the line of sight, for spots with rod readings. */
  readonly heightOfInstrument?: QuantityInput<'length'>;
}

type Length = Quantity<'length'>;

type ParsedSpot = Read<SpotInput>;

type Rows = readonly (readonly number[])[];

/** The spots, read. */
export type ParsedSpots = Read<SpotsInput>;

/** A spot in exact meters. */
export interface ExactSpot {
  readonly x: Decimal;
  readonly y: Decimal;
  readonly z: Decimal;
}

/** All spots of a survey. */
export interface Survey extends SpotArrays {
  readonly count: number;
  readonly exact: (i: number) => ExactSpot;
  readonly name: (i: number) => string;
  /** Where in the input a spot stands, for errors. */
  readonly path: (i: number) => string;
  /** The spot of that name. */
  readonly find: (name: string) => number | undefined;
  readonly system: System;
}

const SPOT_LIMIT = 10_000;
export const ROWS: Limit = { of: 'the rows of points', most: 10_000 };
const FORM_LIMIT = 200;
const UNITS = ['ft', 'in', 'm', 'mm'] as const;
const LARGEST = 1e9;

const anyLength = (what: string, range = ordinary.COORDINATE): Field<Length> =>
  quantity('length', what, 'any', range);

/** A point in plan. */
export const planPoint = (): Field<Read<PointInput>> => fields({ x: anyLength('x'), y: anyLength('y') });

const isNumber = (n: unknown): n is number => typeof n === 'number' && Math.abs(n) <= LARGEST;

/** Rows of plain numbers, read in one go: a survey may have a hundred thousand. */
function numberRows(what: string, width: number | undefined, blanks: boolean): Field<Rows> {
  const good = (row: unknown): boolean =>
    Array.isArray(row) &&
    (width === undefined || row.length === width) &&
    row.every((n) => isNumber(n) || (blanks && n === null));
  const read = (input: unknown): Rows | Fault => {
    if (!Array.isArray(input)) return sharedFaults.wrongType(what, 'a list of rows of numbers');
    if (input.length > ROWS.most) return sharedFaults.tooMany(what, ROWS.most);
    const bad = input.findIndex((row) => !good(row));
    if (bad === -1) return input as Rows;
    return sharedFaults.wrongType(
      `row ${bad + 1} of ${what}`,
      width ? `${width} plain numbers` : 'plain numbers',
    );
  };
  return reading(read, () => ({
    type: 'array',
    maxItems: ROWS.most,
    items: {
      type: 'array',
      items: blanks
        ? {
            anyOf: [
              { title: 'Number', type: 'number' },
              { title: 'Nothing', type: 'null' },
            ],
          }
        : { type: 'number' },
    },
  }));
}

/** The fields that spots are read from, to be spread into the schema of a calculation. */
export const spotFields = () => ({
  spots: maybe(
    list(
      fields(
        {
          name: maybe(label('name')),
          x: anyLength('x'),
          y: anyLength('y'),
          elevation: maybe(anyLength('elevation', ordinary.ELEVATION)),
          rod: maybe(anyLength('rod', ordinary.ROD)),
        },
        oneOf(['elevation'], ['rod']),
      ),
      0,
      SPOT_LIMIT,
    ),
  ),
  table: maybe(fields({ unit: choice('unit', UNITS), rows: numberRows('rows', 3, false) })),
  grid: maybe(
    fields({
      at: maybe(planPoint()),
      along: quantity('length', 'along', 'positive', ordinary.GRID_STEP),
      across: quantity('length', 'across', 'positive', ordinary.GRID_STEP),
      unit: choice('unit', UNITS),
      elevations: numberRows('elevations', undefined, true) as Field<(number | null)[][]>,
    }),
  ),
  forms: maybe(
    list(
      fields({
        name: label('name'),
        from: planPoint(),
        to: planPoint(),
        readings: list(
          fields({ at: anyLength('at'), elevation: anyLength('elevation', ordinary.ELEVATION) }),
          1,
          SPOT_LIMIT,
        ),
      }),
      1,
      FORM_LIMIT,
    ),
  ),
  heightOfInstrument: maybe(anyLength('heightOfInstrument', ordinary.ELEVATION)),
});

/** The keys that tell a surface from two points. */
export const SPOT_KEYS = ['spots', 'table', 'grid', 'forms'] as const;

/** Spots of one origin, not yet put together. */
interface Batch {
  readonly count: number;
  readonly exact: (i: number) => ExactSpot;
  /** Binary meters from the origin given. */
  readonly fill: (origin: ExactSpot, into: SpotArrays, from: number) => void;
  readonly name: (i: number) => string;
  readonly path: (i: number) => string;
}

/** What spots are called, and where in the input they stand. */
type Called = Pick<Batch, 'name' | 'path'>;

function listed(spots: readonly ExactSpot[], called: Called): Batch {
  return {
    ...called,
    count: spots.length,
    exact: (i) => spots[i] as ExactSpot,
    fill: (origin, into, from) => {
      spots.forEach((spot, i) => {
        into.x[from + i] = spot.x.minus(origin.x).toNumber();
        into.y[from + i] = spot.y.minus(origin.y).toNumber();
        into.z[from + i] = spot.z.minus(origin.z).toNumber();
      });
    },
  };
}

function elevationOf(spot: ParsedSpot, i: number, instrument: Length | undefined): Decimal {
  if (spot.elevation && spot.rod) refuse(`spots[${i}]`, sharedFaults.giveOneOf(['elevation', 'rod']));
  if (spot.elevation) return canonicalValue(spot.elevation);
  if (spot.rod && instrument) return canonicalValue(instrument).minus(canonicalValue(spot.rod));
  return refuse(`spots[${i}].elevation`, sharedFaults.missing('elevation', ['"100.25 ft"', '"30.55 m"']));
}

function fromList(spots: readonly ParsedSpot[], instrument: Length | undefined): Batch {
  const name = (i: number): string => spots[i]?.name ?? `spot ${i + 1}`;
  const hanging = spots.flatMap((s, i) => (s.rod && !s.elevation && !instrument ? [name(i)] : []));
  if (hanging.length > 0) refuse('heightOfInstrument', faults.noDatum(hanging));
  const exact = spots.map((spot, i) => ({
    x: canonicalValue(spot.x),
    y: canonicalValue(spot.y),
    z: elevationOf(spot, i, instrument),
  }));
  return listed(exact, { name, path: (i) => `spots[${i}]` });
}

const factorOf = (unit: string): Decimal => unitOf('length', unit)?.factor ?? new Decimal(1);

/** Numbers in meters that were written in one unit; differences are taken before they are scaled. */
function fromTable({ unit, rows }: { readonly unit: string; readonly rows: Rows }): Batch {
  const factor = factorOf(unit);
  const meters = (n: number | undefined): Decimal => new Decimal(n ?? 0).times(factor);
  return {
    count: rows.length,
    exact: (i) => ({ x: meters(rows[i]?.[0]), y: meters(rows[i]?.[1]), z: meters(rows[i]?.[2]) }),
    fill: (origin, into, from) => {
      const scale = factor.toNumber();
      const [x0, y0, z0] = [origin.x, origin.y, origin.z].map((n) => n.div(factor).toNumber()) as [
        number,
        number,
        number,
      ];
      for (let i = 0; i < rows.length; i += 1) {
        const row = rows[i] as readonly number[];
        into.x[from + i] = ((row[0] as number) - x0) * scale;
        into.y[from + i] = ((row[1] as number) - y0) * scale;
        into.z[from + i] = ((row[2] as number) - z0) * scale;
      }
    },
    name: (i) => `row ${i + 1}`,
    path: (i) => `table.rows[${i}]`,
  };
}

function fromGrid(grid: NonNullable<ParsedSpots['grid']>): Batch {
  const { at, along, across, unit, elevations } = grid;
  const count = elevations.reduce((sum, row) => sum + row.length, 0);
  withinLimit(ROWS, count, 'grid.elevations');
  const factor = factorOf(unit);
  const [x0, y0] = at ? [canonicalValue(at.x), canonicalValue(at.y)] : [new Decimal(0), new Decimal(0)];
  const [dx, dy] = [canonicalValue(along), canonicalValue(across)];
  const places = elevations.flatMap((row, r) => row.flatMap((z, c) => (z === null ? [] : [{ r, c, z }])));
  const exact = places.map(({ r, c, z }) => ({
    x: x0.plus(dx.times(c)),
    y: y0.plus(dy.times(r)),
    z: new Decimal(z).times(factor),
  }));
  const name = (i: number): string => `row ${(places[i]?.r ?? 0) + 1} spot ${(places[i]?.c ?? 0) + 1}`;
  const path = (i: number): string => `grid.elevations[${places[i]?.r ?? 0}][${places[i]?.c ?? 0}]`;
  return listed(exact, { name, path });
}

function fromForms(forms: NonNullable<ParsedSpots['forms']>): Batch {
  const names: string[] = [];
  const paths: string[] = [];
  const exact = forms.flatMap(({ name, from, to, readings }, f) => {
    const [fx, fy] = [canonicalValue(from.x), canonicalValue(from.y)];
    const [dx, dy] = [canonicalValue(to.x).minus(fx), canonicalValue(to.y).minus(fy)];
    const long = Decimal.hypot(dx, dy);
    if (long.isZero()) refuse(`forms[${f}].to`, sharedFaults.repeatedPoint(1));
    return readings.map(({ at, elevation }, i) => {
      names.push(`${name} at ${at.format()}`);
      paths.push(`forms[${f}].readings[${i}]`);
      const along = canonicalValue(at);
      const z = canonicalValue(elevation);
      return { x: fx.plus(dx.times(along).div(long)), y: fy.plus(dy.times(along).div(long)), z };
    });
  });
  return listed(exact, { name: (i) => names[i] ?? '', path: (i) => paths[i] ?? 'forms' });
}

function batchesOf({ spots, table, grid, forms, heightOfInstrument }: ParsedSpots): Batch[] {
  return [
    ...(spots && spots.length > 0 ? [fromList(spots, heightOfInstrument)] : []),
    ...(table && table.rows.length > 0 ? [fromTable(table)] : []),
    ...(grid ? [fromGrid(grid)] : []),
    ...(forms ? [fromForms(forms)] : []),
  ].filter(({ count }) => count > 0);
}

/** Names of spots, looked up when first asked for. */
function finder(count: number, name: (i: number) => string): (wanted: string) => number | undefined {
  let byName: Map<string, number> | undefined;
  return (wanted) => {
    if (!byName) {
      byName = new Map();
      for (let i = count - 1; i >= 0; i -= 1) byName.set(name(i), i);
    }
    return byName.get(wanted);
  };
}

/** Two spots of one name would make every sentence about them a riddle. */
function refuseSameNames(spots: readonly ParsedSpot[] | undefined): void {
  const seen = new Set<string>();
  spots?.forEach(({ name }, i) => {
    if (name === undefined) return;
    if (seen.has(name)) refuse(`spots[${i}].name`, faults.repeatedName(name));
    seen.add(name);
  });
}

/**
 * Put all spots together.
 *
 * @param system - the family of units of the job
 * @throws {InputError} `few-spots` below three, `no-datum` for rod readings without an instrument,
 * `repeated-name`, `give-one-of`, `missing`
 */
export function surveyOf(parsed: ParsedSpots, system: System): Survey {
  refuseSameNames(parsed.spots);
  const batches = batchesOf(parsed);
  const count = batches.reduce((sum, b) => sum + b.count, 0);
  const first = batches[0];
  const locate = (i: number): readonly [Batch, number] => {
    let at = i;
    for (const batch of batches) {
      if (at < batch.count) return [batch, at];
      at -= batch.count;
    }
    return [first as Batch, 0];
  };
  const name = (i: number): string => {
    const [batch, at] = locate(i);
    return batch.name(at);
  };
  if (!first || count < 3) refuse('spots', faults.fewSpots(Array.from({ length: count }, (_, i) => name(i))));
  const arrays = { x: new Float64Array(count), y: new Float64Array(count), z: new Float64Array(count) };
  const origin = first.exact(0);
  let from = 0;
  for (const batch of batches) {
    batch.fill(origin, arrays, from);
    from += batch.count;
  }
  const exact = (i: number): ExactSpot => {
    const [batch, at] = locate(i);
    return batch.exact(at);
  };
  const path = (i: number): string => {
    const [batch, at] = locate(i);
    return batch.path(at);
  };
  return { ...arrays, count, exact, name, path, find: finder(count, name), system };
}

/** A length of so many meters, in the units of the survey. */
export const metersAs = (value: Decimal, system: System): Length =>
  newQuantity('length', value, unitOf('length', system === 'metric' ? 'm' : 'ft') as never);

const sameKey = (x: number, y: number): string => `${x} ${y}`;

/**
 * Refuse spots at one place with different elevations. Spots left out of the triangulation are the
 * only ones that can be such; only then are all places compared.
 *
 * @throws {InputError} `conflicting-spots` with both names
 */
export function refuseConflicts(survey: Survey, corner: Uint32Array): void {
  const used = new Uint8Array(survey.count);
  for (const v of corner) used[v] = 1;
  if (used.every((u) => u === 1)) return;
  const places = new Map<string, number>();
  for (let i = 0; i < survey.count; i += 1) {
    const key = sameKey(survey.x[i] as number, survey.y[i] as number);
    const before = places.get(key);
    if (before === undefined) places.set(key, i);
    else if (survey.z[before] !== survey.z[i]) {
      refuse(survey.path(i), faults.conflictingSpots(survey.name(before), survey.name(i)));
    }
  }
}

const NAMES_IN_FAULT = 20;

/** @throws {InputError} `collinear-spots` with their names */
export function refuseLine(survey: Survey): never {
  const names = Array.from({ length: Math.min(survey.count, NAMES_IN_FAULT) }, (_, i) => survey.name(i));
  return refuse('spots', faults.collinearSpots(names));
}
