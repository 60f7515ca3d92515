/** Results laid side by side: what of one differs from the other. */
import { Quantity } from '../../../src/quantity/quantity';
import type { Figure, FigureSet, Result } from '../../../src/reckoning/result';

export type AnyResult = Result<FigureSet>;

type Value = Quantity | string | boolean;

const isGroup = (figure: Figure): figure is { readonly [name: string]: Figure } =>
  typeof figure === 'object' && !(figure instanceof Quantity) && !Array.isArray(figure);

function* parts(
  figure: Figure | undefined,
  path: string,
  left: ReadonlySet<string>,
): Generator<[string, Value]> {
  if (figure === undefined) return;
  if (Array.isArray(figure)) {
    for (const item of figure as readonly Figure[]) yield* parts(item, path, left);
  } else if (isGroup(figure)) {
    for (const [name, part] of Object.entries(figure)) {
      if (!left.has(name)) yield* parts(part, path === '' ? name : `${path}.${name}`, left);
    }
  } else yield [path, figure as Value];
}

/** Every value of the figures by its path; the places in lists go by the name of the list. */
function valuesOf(figures: unknown, left: ReadonlySet<string>): Map<string, Value[]> {
  const out = new Map<string, Value[]>();
  for (const [path, value] of parts(figures as Figure, '', left))
    out.set(path, [...(out.get(path) ?? []), value]);
  return out;
}

const number = (q: Quantity): number => Number(q.value);

/** Figures from one engine may differ in a last digit of the binary geometry behind a plan. */
const NEAR = 1e-9;

/** Names joined in a text may stand in any order, as the corners of a facet; measures in it follow the units. */
const words = (text: string): string =>
  text
    .replace(/\d[\d.,/ ]*(?:in|ft|mm|m|yd)\b/g, '#')
    .split(/[ ,]+/)
    .sort()
    .join(' ');

function same(a: Value, b: Value, near: number): boolean {
  if (typeof a === 'string' && typeof b === 'string') return words(a) === words(b);
  if (!(a instanceof Quantity) || !(b instanceof Quantity)) return a === b;
  if (a.dimension !== b.dimension) return false;
  if (a.compareTo(b) === 0) return true;
  if (a.dimension === 'temperature' || a.dimension === 'money') return false;
  const [x, apart] = [a.abs(), a.minus(b).abs()];
  if (number(apart) < NEAR) return true;
  return x.sign() > 0 && (apart as Quantity<'length'>).over(x as Quantity<'length'>).toNumber(':1') <= near;
}

function ordered(values: readonly Value[]): Value[] {
  return [...values].sort((a, b) => {
    if (a instanceof Quantity && b instanceof Quantity && a.dimension === b.dimension) return a.compareTo(b);
    return String(a) < String(b) ? -1 : 1;
  });
}

const shown = (v: Value | undefined): string => String(v);

/** What may differ between two results without meaning anything. */
export interface Leniency {
  /** Names of figures that are not compared. */
  readonly left?: ReadonlySet<string>;
  /** True where lists may stand in any order. */
  readonly anyOrder?: boolean;
  /** Share by which quantities may differ. */
  readonly near?: number;
}

/** How the figures of one differ from those of the other, as the first line found; nothing where they agree. */
export function figuresDiffer(
  a: AnyResult,
  b: AnyResult,
  { left = new Set<string>(), anyOrder = false, near = NEAR }: Leniency = {},
): string | undefined {
  const [one, other] = [valuesOf(a.figures, left), valuesOf(b.figures, left)];
  for (const path of new Set([...one.keys(), ...other.keys()])) {
    const [p, q] = [one.get(path) ?? [], other.get(path) ?? []].map((v) => (anyOrder ? ordered(v) : v)) as [
      Value[],
      Value[],
    ];
    if (p.length !== q.length) return `${path}: ${p.length} values or ${q.length}`;
    const i = p.findIndex((x, n) => !same(x, q[n] as Value, near));
    if (i >= 0) return `${path}: ${shown(p[i])} or ${shown(q[i])}`;
  }
  return undefined;
}

/** The cautions as sorted codes. */
const codesOf = (result: AnyResult): string =>
  result.cautions
    .map(({ code, severity }) => `${code} ${severity}`)
    .sort()
    .join(', ');

export function cautionsDiffer(a: AnyResult, b: AnyResult): string | undefined {
  const [one, other] = [codesOf(a), codesOf(b)];
  return one === other ? undefined : `cautions: ${one || 'none'} or ${other || 'none'}`;
}
