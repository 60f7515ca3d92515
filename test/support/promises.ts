/** What every result promises beside its figures: the units of the job, and defaults that could be given. */
import type { AnyCalculation } from '../../src/catalog/all';
import { canonicalValue, isQuantity, type Quantity, systemOfQuantity } from '../../src/quantity/quantity';
import type { Assumption } from '../../src/reckoning/result';
import { valueText } from '../../src/report/view';
import { UNITS } from './fuzz/units';
import { mapLeaves, measured, put, typed } from './relations/inputs';

export type Result = Extract<ReturnType<AnyCalculation['attempt']>, { ok: true }>['result'];
type System = 'customary' | 'metric';

const SYSTEMS = new Map(
  Object.values(UNITS).flatMap((units) =>
    units.flatMap(({ spellings, system }) => spellings.map((s) => [s, system] as const)),
  ),
);

/** Each text and `{ value, unit }` of an input, wherever it stands. */
function textsOf(input: unknown): string[] {
  if (typeof input === 'string') return [input];
  if (typeof input !== 'object' || input === null) return [];
  return Object.entries(input).flatMap(([name, part]) => (name === 'unit' ? [`1 ${part}`] : textsOf(part)));
}

/** The one system that an input is written in, or none. */
export function systemOfInput(input: unknown): System | undefined {
  const systems = new Set(
    textsOf(input).map((text) => SYSTEMS.get(/^-?\d[\d.,/ '-]*?\s*([^\d.,/ -].*)$/.exec(text)?.[1] ?? '')),
  );
  const [customary, metric] = [systems.has('customary'), systems.has('metric')];
  if (customary === metric) return undefined;
  return metric ? 'metric' : 'customary';
}

const OTHER_UNIT: Readonly<Record<string, string>> = {
  ...{ ft: 'm', in: 'mm', 'ft-in': 'm', yd: 'm', m: 'ft', mm: 'in', cm: 'in' },
  ...{ ft2: 'm2', in2: 'mm2', yd2: 'm2', m2: 'ft2', mm2: 'in2', cm2: 'in2' },
  ...{ yd3: 'm3', ft3: 'm3', gal: 'L', qt: 'L', 'fl oz': 'mL', m3: 'yd3', L: 'gal', mL: 'fl oz' },
  ...{ lb: 'kg', ton: 'tonne', kg: 'lb', tonne: 'ton' },
  ...{ pcf: 'kg/m3', 'lb/yd3': 'kg/m3', 'kg/m3': 'pcf', 'lb/ft2': 'kg/m2', 'kg/m2': 'lb/ft2' },
  ...{ 'oz/yd2': 'g/m2', 'g/m2': 'oz/yd2' },
  ...{ psi: 'kPa', ksi: 'MPa', psf: 'kPa', MPa: 'psi', kPa: 'psi' },
  ...{
    'in/ft': 'mm/m',
    'mm/m': 'in/ft',
    'in/h': 'mm/h',
    'mm/h': 'in/h',
    'ft/h': 'm/h',
    'm/h': 'ft/h',
    degF: 'degC',
    degC: 'degF',
  },
  ...{ mph: 'km/h', 'km/h': 'mph', 'yd3/h': 'm3/h', 'm3/h': 'yd3/h' },
};

/** About the same job written in the other system. */
export const inOtherSystem = (input: unknown): unknown =>
  mapLeaves(input, (leaf, key) => {
    const q = measured(leaf, key);
    const unit = q && OTHER_UNIT[q.unit];
    return q && unit ? typed(String(Number(q.toNumber(unit).toFixed(6))), unit) : leaf;
  });

type Leaf = Quantity | string | boolean | number;

/** Each figure by its path, those of a list by `*`. */
function* leavesOf(figures: unknown, path = ''): Generator<readonly [string, Leaf]> {
  if (isQuantity(figures) || typeof figures !== 'object' || figures === null) {
    if (figures !== undefined) yield [path, figures as Leaf];
    return;
  }
  for (const [name, part] of Object.entries(figures))
    yield* leavesOf(part, `${path}.${Array.isArray(figures) ? '*' : name}`);
}

/** The figures that are words without a letter. */
export const wordless = (figures: unknown): string[] =>
  [...leavesOf(figures)].flatMap(([path, word]) => (word === '' ? [path] : []));

/** Dimensions that have the same units in both systems. */
const SHARED = new Set(['count', 'ratio', 'slope', 'angle', 'time', 'money']);

/** The figures, limits and actual values that are shown in the other system. */
export function foreign({ figures, cautions }: Result, system: System): string[] {
  const shown: (readonly [string, Leaf | undefined])[] = [...leavesOf(figures)];
  for (const { code, limit, actual } of cautions) shown.push([code, limit], [code, actual]);
  return shown.flatMap(([path, q]) =>
    isQuantity(q) && !SHARED.has(q.dimension) && systemOfQuantity(q) !== system ? [path] : [],
  );
}

/** The input with one more value, `steps.treadBars` or `areas[0].coefficient`. */
function given(input: unknown, name: string, value: unknown): unknown {
  const copy = structuredClone(input) as Record<string, unknown>;
  const path = name.split(/[.[\]]+/).filter((part) => part !== '');
  const last = path.pop() ?? '';
  let inner = copy;
  for (const part of path) {
    // What was left to what is known has this said of it.
    if (inner[part] === true) inner[part] = {};
    inner[part] ??= {};
    inner = inner[part] as Record<string, unknown>;
  }
  inner[last] = value;
  return copy;
}

const WORDS: Readonly<Record<string, readonly unknown[]>> = {
  yes: [true],
  no: [false],
  none: ['0%', '0 in', []],
  upright: ['0:1'],
  'class B': ['B'],
};

/** How an assumed value may be meant as input: the quantity or its number, or what the word stands for. */
function readingsOf(value: Assumption['value']): readonly unknown[] {
  if (isQuantity(value)) return [{ ...value }, ...(value.dimension === 'count' ? [Number(value.value)] : [])];
  const text = valueText(value);
  return [text, ...(/^\d+ sides$/.test(text) ? [Number.parseInt(text, 10)] : []), ...(WORDS[text] ?? [])];
}

/** What comes of giving an assumed value; nothing where it is not one value of the input. */
export function openly(
  entry: AnyCalculation,
  input: unknown,
  { name, value }: Assumption,
): Result | undefined {
  for (const reading of readingsOf(value)) {
    const attempt = entry.attempt(given(input, name, reading));
    if (attempt.ok) return attempt.result;
  }
  return undefined;
}

/** An assumed value is shown to two figures at least. */
const SHOWN = 0.03;

function alike(a: Leaf, b: Leaf | undefined): boolean {
  if (!isQuantity(a) || !isQuantity(b)) return a === b;
  const [x, y] = [canonicalValue(a).toNumber(), canonicalValue(b).toNumber()];
  return a.dimension === b.dimension && Math.abs(x - y) <= SHOWN * Math.max(Math.abs(x), Math.abs(y));
}

/** The figures in which two results differ. */
export function apart(one: Result, other: Result): string[] {
  const [mine, theirs] = [[...leavesOf(one.figures)], [...leavesOf(other.figures)]];
  if (mine.length !== theirs.length) return ['figures of another number'];
  return mine.flatMap(([path, a], i) => (alike(a, theirs[i]?.[1]) ? [] : [path]));
}

/** A value of an input, and the input with another in its place. */
export interface Place {
  readonly value: unknown;
  readonly with: (other: unknown) => unknown;
}

/** Every place that values have in the inputs, items of a list alike, each where it is met first. */
export function placesOf(inputs: readonly unknown[]): ReadonlyMap<string, Place> {
  const places = new Map<string, Place>();
  for (const input of inputs)
    mapLeaves(input, (value, _, path) => {
      const name = path.map((part) => (typeof part === 'number' ? '*' : part)).join('.');
      if (!places.has(name)) places.set(name, { value, with: (other) => put(input, path, other) });
      return value;
    });
  return places;
}

/** The same measurement below zero, or nothing of it. */
export function measuredAs(value: unknown, name: string, sign: -1 | 0): string | undefined {
  const q = measured(value, name.replace(/\.\*/g, '').replace(/^.*\./, ''));
  // A temperature may well be given below zero.
  if (!q || q.sign() === 0 || (q.sign() < 0 && q.dimension !== 'temperature')) return undefined;
  const { value: number, unit } = q;
  return typed(sign === 0 ? '0' : `-${number.replace('-', '')}`, unit);
}
