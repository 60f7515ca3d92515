/** What a recomputation is, and how the figures of the library are held against it. */
import { Rational } from './rational';
import { inSi, type Kind } from './units';

/** A figure that is stated to fewer digits than the others. */
interface Stated {
  readonly value: Rational;
  readonly digits: number;
}

/** A figure that was found another way. */
export type Expected = Rational | Stated | number | string | boolean | undefined;

/** What came of one job. */
export interface Compared {
  /** Figures compared. */
  readonly figures: number;
  /** The greatest relative deviation of any of them. */
  readonly deviation: number;
  readonly input: unknown;
  /** What does not agree, in words, ours first. */
  readonly disagreements: readonly string[];
  /** Why the job is no comparison, as where both sides refuse it. */
  readonly skipped?: string;
  /** Names of known differences that showed. */
  readonly known?: readonly string[];
}

interface Attempting {
  readonly id: string;
  attempt(
    input: unknown,
  ): { ok: true; result: { figures: unknown; system: string } } | { ok: false; error: Error };
}

interface FigureData {
  readonly value: string;
  readonly unit: string;
  readonly dimension: Kind;
}

/** A figure by its path, such as `along.bars.0.spacing`. */
const figureAt = (figures: unknown, path: string): unknown =>
  path.split('.').reduce<unknown>((at, key) => (at as Record<string, unknown> | undefined)?.[key], figures);

/** A quantity in SI, from the exact text that it is shown as. */
export function siOf(figure: unknown): Rational {
  const { value, unit, dimension } = figure as FigureData;
  return inSi(value, unit, dimension);
}

/** A quantity as a plain number in SI. */
export const numberOf = (figure: unknown): number => siOf(figure).toNumber();

/** How far apart two values are, as a share of the greater. */
export function apart(a: Rational, b: Rational): number {
  const difference = a.minus(b).abs();
  if (difference.sign() === 0) return 0;
  const [p, q] = [a.abs(), b.abs()];
  return difference.over(p.lessThan(q) ? q : p).toNumber();
}

/** Figures of ours against figures found another way; `digits` is how near they must come. */
export function held(
  calculation: Attempting,
  input: unknown,
  expected: Readonly<Record<string, Expected>>,
  digits: number,
): Compared {
  const outcome = calculation.attempt(input);
  const what = { [calculation.id]: input };
  if (!outcome.ok)
    return {
      figures: 0,
      deviation: 0,
      input: what,
      disagreements: [`refused: ${outcome.error.message}`],
    };
  let deviation = 0;
  const disagreements: string[] = [];
  // What is named by the unit of one system is left out of a job in the other.
  const named = outcome.result.system === 'metric' ? /PerFoot$/ : /PerMeter$/;
  const shown = Object.entries(expected).filter(([path]) => !named.test(path));
  for (const [path, theirs] of shown) {
    const ours = figureAt(outcome.result.figures, path);
    const found = oneFigure(path, ours, theirs, digits);
    if (typeof found === 'string') disagreements.push(found);
    else deviation = Math.max(deviation, found);
  }
  return { figures: shown.length, deviation, input: what, disagreements };
}

function oneFigure(path: string, ours: unknown, theirs: Expected, digits: number): number | string {
  if (typeof theirs === 'object' && 'digits' in theirs) {
    // What is cut on purpose says nothing of how near the others come.
    const found = oneFigure(path, ours, theirs.value, theirs.digits);
    return typeof found === 'string' ? found : 0;
  }
  if (!(theirs instanceof Rational) && typeof theirs !== 'number')
    return ours === theirs ? 0 : `${path}: ours ${String(ours)}, theirs ${String(theirs)}`;
  if (ours === undefined) return `${path}: ours is left out, theirs ${textOf(theirs)}`;
  const value = siOf(ours);
  const other = typeof theirs === 'number' ? Rational.of(theirs) : theirs;
  const off = apart(value, other);
  if (off <= 10 ** -digits) return off;
  return `${path}: ours ${value.toNumber()}, theirs ${other.toNumber()} (${off.toExponential(1)} apart)`;
}

const textOf = (value: Rational | number): string =>
  String(typeof value === 'number' ? value : value.toNumber());
