/** The search itself against every pair of paths tried one by one, in made-up spaces with costs drawn at random. */
import { describe, expect, it } from 'vitest';
import { Cells, search } from '../../src/joints/layout/search';
import type { Anchor, Axis, Gap, Space } from '../../src/joints/layout/space';
import type { Step } from '../../src/joints/layout/steps';
import { runs } from '../support/effort';
import { drawn } from '../support/joints/stars';

const WEIGHT = 4;

/** Steps from each place to later ones, with gaps of its own each. */
function stepsOf(next: () => number, places: number, first: number): Step[] {
  const steps: Step[] = [];
  let name = first;
  for (let from = 0; from < places - 1; from += 1)
    for (let to = from + 1; to < places; to += 1)
      for (let kind = 0; kind < (next() < 0.4 ? 2 : 1); kind += 1) {
        const gaps = Array.from({ length: kind + 1 }, () => {
          name += 1;
          const gap: Gap = {
            lo: 0,
            hi: 0,
            first: name,
            last: name,
            marks: { from: 0, to: 0 },
            key: [name, 0],
          };
          return { gap, times: 1 + Math.floor(2 * next()) };
        });
        const at = steps.length;
        const lines = [{ at, anchor: from, steps: 0 }];
        steps.push({ from, to, gaps, lines, cost: Math.round(20 * next()) / 2 });
      }
  return steps;
}

/** A space whose cells cost whole broken rules, some of them too many to be. */
class Made implements Space {
  readonly effort = 1;
  work = 0;
  readonly table = new Map<string, number>();
  constructor(
    readonly next: () => number,
    readonly places: Readonly<Record<Axis, number>>,
    readonly least: number,
  ) {}
  anchors = (axis: Axis): Anchor[] =>
    Array.from({ length: this.places[axis] }, (_, at) => ({ at, must: false }));
  gap = (): Gap => ({ lo: 0, hi: 0, first: 0, last: 0, marks: { from: 0, to: 0 }, key: [0, 0] });
  lineLength = (): number => 0;
  widest = (): number => 0;
  leastLength = (): number => this.least;
  filled = (): boolean => true;
  cell(x: Gap, y: Gap): number {
    const key = `${x.first} ${y.first}`;
    const draw = this.next();
    const known =
      this.table.get(key) ??
      (draw < 0.05 ? Number.POSITIVE_INFINITY : draw < 0.6 ? 0 : Math.ceil(3 * draw) - 1);
    this.table.set(key, known);
    return known;
  }
  costs(axis: Axis, gap: Gap, others: readonly Gap[], into: Float64Array): void {
    this.work += 1;
    others.forEach((other, i) => {
      into[i] = axis === 'x' ? this.cell(gap, other) : this.cell(other, gap);
    });
  }
}

function pathsOf(steps: readonly Step[], places: number, from = 0): Step[][] {
  if (from === places - 1) return [[]];
  return steps
    .filter((step) => step.from === from)
    .flatMap((step) => pathsOf(steps, places, step.to).map((rest) => [step, ...rest]));
}

const own = (path: readonly Step[]): number => path.reduce((sum, { cost }) => sum + cost, 0);

function together(space: Made, xs: readonly Step[], ys: readonly Step[]): number {
  let sum = 0;
  for (const x of xs.flatMap(({ gaps }) => gaps))
    for (const y of ys.flatMap(({ gaps }) => gaps))
      sum += WEIGHT * x.times * y.times * space.cell(x.gap, y.gap);
  return sum;
}

describe('the search', () => {
  const next = drawn(61);
  const made = Array.from({ length: runs(200) }, () => {
    const places = { x: 2 + Math.floor(3 * next()), y: 2 + Math.floor(3 * next()) };
    const steps = { x: stepsOf(next, places.x, 0), y: stepsOf(next, places.y, 1000) };
    const space = new Made(next, places, Math.round(6 * next()));
    const pairs = pathsOf(steps.x, places.x).flatMap((x) =>
      pathsOf(steps.y, places.y).map((y) => ({ x, y })),
    );
    const costs = pairs.map(({ x, y }) => own(x) + own(y) + together(space, x, y));
    return { places, steps, space, least: Math.min(...costs), pairs, costs };
  });
  const found = ({ space, steps }: (typeof made)[number], trimmed: boolean, share: number) =>
    search({ space, steps, trimmed, cells: new Cells(space, steps), share }, WEIGHT);

  it('finds the pair of paths of least cost, and proves it', () => {
    for (const one of made) {
      if (one.least === Number.POSITIVE_INFINITY) continue;
      const told = found(one, false, 1);
      expect(told.cost).toBeCloseTo(one.least, 9);
      expect(told.exact).toBe(true);
      expect(told.bound).toBeCloseTo(one.least, 4);
      // The lines are those of a pair of paths that costs as much.
      const own = one.pairs.findIndex(
        ({ x, y }) =>
          x.flatMap(({ lines }) => lines).every((line, i) => line === told.x[i]) &&
          y.flatMap(({ lines }) => lines).every((line, i) => line === told.y[i]) &&
          x.length === told.x.length &&
          y.length === told.y.length,
      );
      expect(one.costs[own]).toBeCloseTo(one.least, 9);
      expect(told.work).toBeGreaterThan(0);
    }
  });

  it('tells the least length of all pairs, whatever they break', () => {
    for (const one of made) {
      const sawn = Math.min(...one.pairs.map(({ x, y }) => own(x) + own(y)));
      expect(found(one, false, 1).leastLength).toBeCloseTo(Math.max(sawn, one.space.least), 9);
      // With steps left out only what the slab itself needs is certain.
      const trimmed = found(one, true, 1);
      expect(trimmed.leastLength).toBe(one.space.least);
      expect([trimmed.exact, trimmed.bound]).toEqual([false, 0]);
      expect(trimmed.cost).toBe(found(one, false, 1).cost);
    }
  });

  it('stops when its work is done, with a bound that holds', () => {
    let cut = 0;
    for (const one of made) {
      const told = found(one, false, 1e-6);
      expect(told.cost).toBeGreaterThanOrEqual(one.least - 1e-9);
      if (one.least < Number.POSITIVE_INFINITY) expect(told.bound).toBeLessThanOrEqual(one.least + 1e-9);
      if (told.exact) expect(told.cost).toBeCloseTo(one.least, 4);
      else cut += 1;
    }
    expect(cut).toBeGreaterThan(0);
  });
});
