/** Steps from one place for a line to a later one: every number of even panels, set out in whole steps of the tape. */
import { describe, expect, it } from 'vitest';
import { OrthogonalSpace } from '../../src/joints/layout/orthogonal';
import type { Axis } from '../../src/joints/layout/space';
import { type Step, stepsAlong, stepsWithin } from '../../src/joints/layout/steps';
import { runs } from '../support/effort';
import { between, ringsOf, stream, yard } from '../support/joints/yards';

const LIMITS = { spacing: 4, leastSide: 1, ratio: 1.5, weight: 1e6, strict: false };
const STEP = 1 / 64;
const AXES = ['x', 'y'] as const;

const next = stream(111);
const spaces = Array.from({ length: runs(60) }, () => {
  const rings = ringsOf(yard(next, between(next, 1, 3), 9, 10, 0.5)).map((ring) =>
    ring.map(([x, y]) => ({ x, y })),
  );
  const fixed = { x: next() < 0.3 ? [2] : [], y: [] };
  return new OrthogonalSpace({ rings, marks: [], fixed, leftOut: () => 0, passedOver: 0 }, LIMITS);
});

/** Places of the lines of a step, with its two ends. */
const stopsOf = (space: OrthogonalSpace, axis: Axis, { from, to, lines }: Step): number[] => {
  const anchors = space.anchors(axis).map(({ at }) => at);
  const last = to === anchors.length - 1;
  const inner = last ? lines : lines.slice(0, -1);
  return [anchors[from] as number, ...inner.map(({ at }) => at), anchors[to] as number];
};

const axes = spaces.flatMap((space) => AXES.map((axis) => ({ space, axis })));

function checkStep(space: OrthogonalSpace, axis: Axis, step: Step, fromStart: boolean): void {
  const anchors = space.anchors(axis);
  const stops = stopsOf(space, axis, step);
  const widths = stops.slice(1).map((at, i) => at - (stops[i] as number));
  // Even to a step, and in order.
  expect(Math.max(...widths) - Math.min(...widths)).toBeLessThan((fromStart ? 2 : 1.001) * STEP + 1e-9);
  expect(Math.min(...widths)).toBeGreaterThan(0);
  for (const { at, anchor, steps: count } of step.lines)
    expect(at).toBeCloseTo((anchors[anchor]?.at ?? Number.NaN) + count * STEP, 9);
  for (const { anchor } of step.lines.slice(0, -1)) expect(anchor).toBe(fromStart ? 0 : step.from);
  if (step.to < anchors.length - 1)
    expect(step.lines.at(-1)).toEqual({ at: anchors[step.to]?.at, anchor: step.to, steps: 0 });
  const whole = (stops.at(-1) as number) - (stops[0] as number);
  expect(step.gaps.reduce((sum, { times }) => sum + times, 0)).toBe(widths.length);
  expect(step.gaps.reduce((sum, { gap, times }) => sum + times * (gap.hi - gap.lo), 0)).toBeCloseTo(whole, 1);
  for (const { gap } of step.gaps)
    expect(Math.min(gap.hi - gap.lo, space.widest(axis, gap))).toBeLessThanOrEqual(LIMITS.spacing + 1e-9);
  const sawn = step.lines.reduce((sum, { at }) => sum + space.lineLength(axis, at), 0);
  expect(step.cost).toBeCloseTo(sawn, 9);
}

/** All pairs of places in order. */
const pairsOf = (count: number): [number, number][] =>
  Array.from({ length: count }, (_, i) =>
    Array.from({ length: count - i - 1 }, (_unused, k): [number, number] => [i, i + 1 + k]),
  ).flat();

describe('the steps along an axis', () => {
  it.each([true, false])(
    'are set out in whole steps, no wider than the spacing; from the start: %s',
    (fromStart) => {
      for (const { space, axis } of axes) {
        const { steps, trimmed } = stepsAlong(space, axis, LIMITS, { step: STEP, fromStart, share: 1 });
        expect(trimmed).toBe(false);
        for (const step of steps) checkStep(space, axis, step, fromStart);
      }
    },
  );

  it('are all numbers of panels between any two places with no line between that must be', () => {
    for (const { space, axis } of axes) {
      const anchors = space.anchors(axis);
      const { steps } = stepsAlong(space, axis, LIMITS, { step: STEP, fromStart: false, share: 1 });
      for (const [i, j] of pairsOf(anchors.length)) {
        const own = steps.filter(({ from, to }) => from === i && to === j);
        const told = own.map((step) => stopsOf(space, axis, step).length - 1);
        const barred = anchors.slice(i + 1, j).some(({ must }) => must);
        const due = barred ? [] : numbersOf(space, axis, i, j);
        expect(told, JSON.stringify([space.site, axis, i, j])).toEqual(due);
      }
    }
  });

  it('within a length are those of which some pair of paths comes to no more', () => {
    for (const space of spaces) {
      const out = { step: STEP, fromStart: false, share: 1 };
      const all = {
        x: stepsAlong(space, 'x', LIMITS, out).steps,
        y: stepsAlong(space, 'y', LIMITS, out).steps,
      };
      const least = { x: leastThrough(space, 'x', all.x), y: leastThrough(space, 'y', all.y) };
      const whole = Math.min(...least.x) + Math.min(...least.y);
      const most = whole * 1.25 + 0.5;
      const kept = stepsWithin(space, LIMITS, out, most);
      for (const axis of AXES) {
        const others = Math.min(...least[axis === 'x' ? 'y' : 'x']);
        const due = all[axis].filter((_, i) => (least[axis][i] as number) + others <= most + 1e-3);
        const name = ({ from, to, lines }: Step): string => `${from} ${to} ${lines.length}`;
        expect(kept?.[axis].map(name)).toEqual(due.map(name));
      }
    }
  });
});

/** Numbers of panels that keep the spacing, up to the one that makes slivers. */
function numbersOf(space: OrthogonalSpace, axis: Axis, i: number, j: number): number[] {
  const [a, b] = [space.anchors(axis)[i]?.at as number, space.anchors(axis)[j]?.at as number];
  const whole = b - a;
  const even = Math.max(1, Math.ceil(whole / LIMITS.spacing - 1e-9));
  const across = space.widest(axis, space.gap(axis, a, b)) >= whole - 1e-9;
  const fewest = across ? even : 1;
  const most = Math.max(fewest, Math.floor(whole / LIMITS.leastSide + 1e-9));
  const all = Array.from({ length: most - fewest + 1 }, (_, k) => fewest + k);
  const wide = (n: number): boolean => {
    const stops = Array.from(
      { length: n + 1 },
      (_, k) => a + Math.ceil((k * whole) / n / STEP - 1e-9) * STEP,
    );
    return stops.slice(1).some((hi, k) => {
      const lo = stops[k] as number;
      return (
        hi - lo > LIMITS.spacing + 1e-9 && space.widest(axis, space.gap(axis, lo, hi)) > LIMITS.spacing + 1e-9
      );
    });
  };
  return all.filter((n) => !wide(n));
}

/** Least cost of a path through each step, by relaxing until nothing changes. */
function leastThrough(space: OrthogonalSpace, axis: Axis, steps: readonly Step[]): number[] {
  const count = space.anchors(axis).length;
  const [ahead, behind] = [
    Array.from({ length: count }, (_, i) => (i === count - 1 ? 0 : Infinity)),
    Array.from({ length: count }, (_, i) => (i === 0 ? 0 : Infinity)),
  ];
  for (let round = 0; round < count; round += 1)
    for (const { from, to, cost } of steps) {
      ahead[from] = Math.min(ahead[from] as number, cost + (ahead[to] as number));
      behind[to] = Math.min(behind[to] as number, cost + (behind[from] as number));
    }
  return steps.map(({ from, to, cost }) => (behind[from] as number) + cost + (ahead[to] as number));
}
