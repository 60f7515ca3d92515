/** What every result promises beside its figures: the units of the job, and defaults that could be given. */
import type { CatalogEntry } from '../../src/catalog/index';
import { canonicalValue, isQuantity, type Quantity, systemOfQuantity } from '../../src/quantity/quantity';
import type { Assumption } from '../../src/reckoning/result';
import { UNITS } from './fuzz/units';

export type Result = Extract<ReturnType<CatalogEntry['attempt']>, { ok: true }>['result'];
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
    inner[part] ??= {};
    inner = inner[part] as Record<string, unknown>;
  }
  inner[last] = value;
  return copy;
}

const WORDS: Readonly<Record<string, readonly unknown[]>> = {
  yes: [true],
  none: ['0%', '0 in'],
  upright: ['0:1'],
  'class B': ['B'],
};

/** How an assumed value may be meant as input: as shown, as a number, by what the word stands for. */
const readingsOf = (value: string): readonly unknown[] => [
  value,
  ...(/^\d+ (each|sides)$/.test(value) ? [Number.parseInt(value, 10)] : []),
  ...(WORDS[value] ?? []),
];

/** What comes of giving an assumed value; nothing where it is not one value of the input. */
export function openly(entry: CatalogEntry, input: unknown, { name, value }: Assumption): Result | undefined {
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

/** The input with one text or number after the other made unreadable, and the path of each. */
export function* spoilt(input: unknown): Generator<readonly [string, unknown]> {
  const copy = structuredClone(input);
  const open: (readonly [Record<string, unknown>, string])[] = [[copy as Record<string, unknown>, '']];
  for (const [part, path] of open)
    for (const [name, value] of Object.entries(part)) {
      const here = Array.isArray(part) ? `${path}[${name}]` : `${path}${path && '.'}${name}`;
      if (typeof value === 'object' && value !== null) open.push([value as Record<string, unknown>, here]);
      else {
        part[name] = '?';
        yield [here, copy];
        part[name] = value;
      }
    }
}
