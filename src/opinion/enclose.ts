/** A figure that only rises or only falls is enclosed between two tries, and the one that comes nearest is found. */
import { compareSteady, Decimal } from '../quantity/decimal';

/** One try: what was put in, and what the figure was. */
export interface Point {
  readonly x: Decimal;
  readonly y: Decimal;
}

/** Where it is enclosed, or why it is not. */
export interface Bracket {
  readonly from: Decimal;
  readonly to: Decimal;
  /** The figure at both ends. */
  readonly low: Decimal;
  readonly high: Decimal;
  readonly a: Point;
  readonly b: Point;
  readonly why?: 'none' | 'same' | 'turns' | 'outside';
}

type Try = (x: Decimal) => Point | undefined;

const SAMPLES = 10;

/** Evenly spread, or by equal factors where the range is wide. */
function spread([low, high]: readonly [Decimal, Decimal], whole: boolean): Decimal[] {
  const wide = low.greaterThan(0) && high.greaterThan(low.times(4));
  const factor = wide ? new Decimal(high.div(low).toNumber() ** (1 / SAMPLES)) : undefined;
  const inner = Array.from({ length: SAMPLES - 1 }, (_, i) =>
    factor
      ? low.times(factor.pow(i + 1))
      : low.plus(
          high
            .minus(low)
            .times(i + 1)
            .div(SAMPLES),
        ),
  ).map((x) => (whole ? x.toDecimalPlaces(0) : x.toSignificantDigits(8)));
  return [low, ...inner.filter((x) => x.greaterThan(low) && x.lessThan(high)), high].filter(
    (x, i, all) => i === 0 || x.greaterThan(all[i - 1] as Decimal),
  );
}

/** The longest run of tries that were not refused. */
function accepted(points: readonly (Point | undefined)[]): Point[] {
  let best: Point[] = [];
  let own: Point[] = [];
  for (const point of [...points, undefined]) {
    if (point) own.push(point);
    else {
      if (own.length > best.length) best = own;
      own = [];
    }
  }
  return best;
}

/** Tries on the way from what is worked out to what is refused. */
const TO_THE_EDGE = 5;

/** As near to what is refused as is still worked out. */
function edge(inner: Point, refused: Decimal | undefined, run: Try, whole: boolean): Point[] {
  let [known, beyond] = [inner, refused];
  for (let n = 0; beyond && n < TO_THE_EDGE; n += 1) {
    const half = known.x.plus(beyond).div(2);
    const x = whole ? half.toDecimalPlaces(0) : half.toSignificantDigits(8);
    if (x.equals(known.x) || x.equals(beyond)) break;
    const point = run(x);
    if (point) known = point;
    else beyond = x;
  }
  return known === inner ? [] : [known];
}

const between = (y: Decimal, a: Decimal, b: Decimal): boolean =>
  compareSteady(y, a) * compareSteady(y, b) <= 0;

/** Where what is wanted lies between two tries that follow each other. */
const enclosing = (points: readonly Point[], wanted: Decimal): number =>
  points.findIndex((point, i) => i > 0 && between(wanted, (points[i - 1] as Point).y, point.y));

/** What was tried and not refused: out to the edges of it, where what is wanted does not lie within. */
function triedOut(xs: readonly Decimal[], run: Try, wanted: Decimal, whole: boolean): Point[] {
  const points = accepted(xs.map(run));
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last || enclosing(points, wanted) >= 0) return points;
  const below = xs.filter((x) => x.lessThan(first.x)).at(-1);
  const above = xs.find((x) => x.greaterThan(last.x));
  return [...edge(first, below, run, whole), ...points, ...edge(last, above, run, whole)];
}

const signOf = (a: Point, b: Point): number => compareSteady(b.y, a.y);

function turns(points: readonly Point[]): boolean {
  const signs = new Set(points.slice(1).map((point, i) => signOf(points[i] as Point, point)));
  return signs.has(1) && signs.has(-1);
}

const NOTHING: Point = { x: new Decimal(0), y: new Decimal(0) };

/** Enclose what is wanted between two tries within the ends. */
export function enclosed(
  ends: readonly [Decimal, Decimal],
  run: Try,
  wanted: Decimal,
  whole: boolean,
): Bracket {
  const points = triedOut(spread(ends, whole), run, wanted, whole);
  const [first, last] = [points[0] ?? NOTHING, points.at(-1) ?? NOTHING];
  const range = points.length > 0 ? { from: first.x, to: last.x } : { from: ends[0], to: ends[1] };
  const base = { ...range, low: first.y, high: last.y, a: first, b: last };
  if (points.length < 2) return { ...base, why: 'none' };
  if (turns(points)) return { ...base, why: 'turns' };
  if (points.every((point) => signOf(first, point) === 0)) return { ...base, why: 'same' };
  const at = enclosing(points, wanted);
  if (at < 0) return { ...base, why: 'outside' };
  return { ...base, a: points[at - 1] as Point, b: points[at] as Point };
}

/** What two tries are apart when nothing between them is told any more. */
const FINE = /*#__PURE__*/ new Decimal('1e-12');
const MOST = 48;

const isFine = (a: Point, b: Point): boolean =>
  b.x
    .minus(a.x)
    .abs()
    .lessThanOrEqualTo(FINE.times(Decimal.max(a.x.abs(), b.x.abs())));

/** Where to try next: on the straight line, or in the middle where that has not gone well. */
function nextOf(a: Point, b: Point, wanted: Decimal, middle: boolean, whole: boolean): Decimal {
  const half = a.x.plus(b.x).div(2);
  const rise = b.y.minus(a.y);
  const line = middle || rise.isZero() ? half : a.x.plus(wanted.minus(a.y).times(b.x.minus(a.x)).div(rise));
  const [low, high] = [Decimal.min(a.x, b.x), Decimal.max(a.x, b.x)];
  const safe = line.greaterThan(low) && line.lessThan(high) ? line : half;
  return whole ? safe.toDecimalPlaces(0) : safe.toSignificantDigits(20);
}

/** The two nearest tries about what is wanted, and the one of them that comes nearest. */
export function nearest(
  bracket: Bracket,
  run: Try,
  wanted: Decimal,
  whole: boolean,
): { readonly a: Point; readonly b: Point; readonly at: Point } {
  let { a, b } = bracket;
  for (let n = 0; n < MOST && !isFine(a, b); n += 1) {
    const x = nextOf(a, b, wanted, n % 3 === 2, whole);
    if (x.equals(a.x) || x.equals(b.x)) break;
    const point = run(x);
    if (!point) break;
    if (compareSteady(point.y, wanted) === 0) return { a, b, at: point };
    if (between(wanted, a.y, point.y)) b = point;
    else a = point;
  }
  const off = (p: Point): Decimal => p.y.minus(wanted).abs();
  return { a, b, at: off(a).lessThanOrEqualTo(off(b)) ? a : b };
}
