/**
 * A page of the notebook: the working of a result, gone through again by hand.
 *
 * Formulas are evaluated by mathjs, a general-purpose library, on plain numbers in SI units. Which outcome is carried
 * on into which later step is found from other jobs of the same kind: what is equal in all of them is the same thing.
 */
import { compile, type EvalFunction } from 'mathjs';
import type { Quantity } from '../../../src/index';
import { siOf } from '../../../src/opinion/scale';
import { isQuantity } from '../../../src/quantity/quantity';
import { inSigns } from '../working';

/** What is read of a step. */
export interface Line {
  readonly formula: string;
  readonly values: Readonly<Record<string, Quantity>>;
  readonly gives: Quantity;
}

/** What is read of a result. */
export interface Page {
  readonly figures: object;
  readonly working: readonly Line[];
}

/** What is carried where, and which outcome stands as which figure. */
export interface Carried {
  readonly into: readonly Readonly<Record<string, number>>[];
  readonly figures: ReadonlyMap<string, number>;
}

/** One thing done differently while going through it. */
export interface Otherwise {
  readonly step: number;
  /** Another formula. */
  readonly formula?: string;
  /** Another outcome. */
  readonly outcome?: (si: number) => number;
}

/** How somebody rounds on the way. */
export interface Rounding {
  /** Significant digits that are kept. */
  readonly places: number;
  /** What comes out. */
  readonly outcome: (si: number, like: Quantity) => number;
  /** What is given, before it is reckoned with. */
  readonly given: (si: number, like: Quantity) => number;
  /** What is taken for π. */
  readonly pi: string;
}

const steady = (x: number): number => (Math.abs(x - Math.round(x)) < 1e-9 ? Math.round(x) : x);
const FUNCTIONS = { ceil: (x: number) => Math.ceil(steady(x)), floor: (x: number) => Math.floor(steady(x)) };

const compiled = new Map<string, EvalFunction>();

/** What a formula makes of numbers; `NaN` for what is none. */
function worked(formula: string, scope: Readonly<Record<string, number>>): number {
  const right = formula.slice(formula.indexOf('=') + 1);
  try {
    let code = compiled.get(right);
    if (!code) {
      code = compile(inSigns(right)) as EvalFunction;
      compiled.set(right, code);
    }
    const value: unknown = code.evaluate({ ...FUNCTIONS, ...scope });
    return typeof value === 'number' ? value : Number.NaN;
  } catch {
    return Number.NaN;
  }
}

const numbersOf = (line: Line): Record<string, number> =>
  Object.fromEntries(Object.entries(line.values).map(([name, q]) => [name, siOf(q)]));

export const same = (a: number, b: number, within = 1e-9): boolean =>
  Math.abs(a - b) <= within * Math.max(Math.abs(a), Math.abs(b), 1e-12);

/** A step that comes out as it says, so that it can be gone through again. */
export const isSound = (line: Line): boolean => same(worked(line.formula, numbersOf(line)), siOf(line.gives));

/** What stands one level further in, of a list only the first few. */
const inner = (value: object, path: string): (readonly [string, unknown])[] =>
  Array.isArray(value)
    ? value.slice(0, 4).map((one: unknown, i) => [`${path}[${i}]`, one] as const)
    : Object.entries(value).map(([name, one]) => [path ? `${path}.${name}` : name, one] as const);

function gather(value: unknown, path: string, found: Map<string, Quantity>): void {
  if (typeof value !== 'object' || value === null) return;
  if (isQuantity(value)) found.set(path, value);
  else for (const [at, one] of inner(value, path)) gather(one, at, found);
}

/** Figures with their paths. */
export function figuresOf(figures: object): Map<string, Quantity> {
  const found = new Map<string, Quantity>();
  gather(figures, '', found);
  return found;
}

const equal = (a: Quantity | undefined, b: Quantity | undefined): boolean =>
  a !== undefined && b !== undefined && a.dimension === b.dimension && same(siOf(a), siOf(b));

/** The step of which the outcome is this, in every one of the pages. */
function originOf(pages: readonly Page[], before: number, of: (page: Page) => Quantity | undefined): number {
  for (let i = before - 1; i >= 0; i--)
    if (pages.every((page) => equal(of(page), page.working[i]?.gives))) return i;
  return -1;
}

/** What is carried where; the pages have the same steps. */
export function carriedIn(pages: readonly Page[]): Carried {
  const [first] = pages;
  if (!first) return { into: [], figures: new Map() };
  const into = first.working.map((line, j) =>
    Object.fromEntries(
      Object.keys(line.values)
        .map((name) => [name, originOf(pages, j, (page) => page.working[j]?.values[name])] as const)
        .filter(([, i]) => i >= 0),
    ),
  );
  const all = new Map(pages.map((page) => [page, figuresOf(page.figures)]));
  const figures = new Map<string, number>();
  for (const name of figuresOf(first.figures).keys()) {
    const i = originOf(pages, first.working.length, (page) => all.get(page)?.get(name));
    if (i >= 0) figures.set(name, i);
  }
  return { into, figures };
}

/** What is put into a formula, rounded as its hand does. */
const takenOf = (line: Line, rounding: Rounding | undefined): Record<string, number> =>
  rounding === undefined
    ? numbersOf(line)
    : Object.fromEntries(Object.entries(line.values).map(([name, q]) => [name, rounding.given(siOf(q), q)]));

/** Every figure in SI units after going through the page, with something done otherwise and rounded on the way. */
export function gone(
  page: Page,
  carried: Carried,
  otherwise: readonly Otherwise[],
  rounding?: Rounding,
): Map<string, number> {
  const outcomes: number[] = [];
  const changed: boolean[] = [];
  page.working.forEach((line, j) => {
    const here = otherwise.filter(({ step }) => step === j);
    const from = Object.entries(carried.into[j] ?? {});
    const scope = {
      ...takenOf(line, rounding),
      ...Object.fromEntries(from.map(([name, i]) => [name, outcomes[i] ?? 0])),
    };
    changed[j] =
      here.length > 0 || from.some(([, i]) => changed[i]) || (rounding !== undefined && isSound(line));
    const formula = (here.find((one) => one.formula !== undefined)?.formula ?? line.formula).replaceAll(
      'π',
      rounding?.pi ?? 'π',
    );
    let si = changed[j] ? worked(formula, scope) : siOf(line.gives);
    for (const { outcome } of here) si = outcome?.(si) ?? si;
    outcomes[j] = rounding && !changed.every((one) => !one) ? rounding.outcome(si, line.gives) : si;
  });
  return new Map(
    [...figuresOf(page.figures)].map(([name, q]) => [
      name,
      outcomes[carried.figures.get(name) ?? -1] ?? siOf(q),
    ]),
  );
}

/** Whether what was found to be carried is so in this page too. */
export const holds = (page: Page, { into, figures }: Carried): boolean => {
  const all = figuresOf(page.figures);
  return (
    page.working.every((line, j) =>
      Object.entries(into[j] ?? {}).every(([name, i]) => equal(line.values[name], page.working[i]?.gives)),
    ) && [...figures].every(([name, i]) => !all.has(name) || equal(all.get(name), page.working[i]?.gives))
  );
};
