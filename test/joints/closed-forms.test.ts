/**
 * Fans, round slabs and lines through points, against every plan of the kind tried one by one, and against the formulas
 * of circles and trapezoids.
 */
import { describe, expect, it } from 'vitest';
import { fanPlan, taperOf } from '../../src/joints/layout/fan-plan';
import { layFan } from '../../src/joints/layout/laid';
import type { LaidPanel } from '../../src/joints/layout/plan';
import { type RoundSite, roundPlan } from '../../src/joints/layout/round-plan';
import { fewestLines } from '../../src/joints/layout/spared';
import { Decimal } from '../../src/quantity/decimal';
import { runs } from '../support/effort';
import { corners, drawn, type Pair, pairs } from '../support/joints/stars';

const LIMITS = { spacing: 3, leastSide: 0.6, ratio: 1.5, weight: 1e6, strict: false };
/** Where no plan keeps every rule a broken one weighs as two sides of the largest panel. */
const SOFT = 2 * LIMITS.spacing;

const up = (n: number): number[] => Array.from({ length: n }, (_, i) => i + 1);
const sum = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0);

const broken = (mean: number, deep: number, widest = mean): number => {
  const [short, long] = [Math.min(deep, widest), Math.max(deep, widest)];
  return (
    (Math.min(mean, deep) < LIMITS.leastSide - 1e-9 ? 1 : 0) + (long > LIMITS.ratio * short + 1e-9 ? 1 : 0)
  );
};

interface Cost {
  readonly rules: number;
  readonly sawn: number;
}

/** First those that keep every rule; else by weight. */
function leastOf(costs: readonly Cost[]): number {
  const whole = costs.filter(({ rules }) => rules === 0);
  const weighed = (list: readonly Cost[]): number => Math.min(...list.map((c) => c.sawn + SOFT * c.rules));
  return weighed(whole.length > 0 ? whole : costs);
}

interface Sides {
  readonly a: number;
  readonly b: number;
  readonly high: number;
  readonly off: number;
}

/** What a fan of so many panels across and along costs; nothing where they are too wide, or slivers for no need. */
function fanCost({ a, b, high, off }: Sides, n: number, m: number): Cost[] {
  const fits = (side: number, k: number): boolean => side / k <= LIMITS.spacing + 1e-9;
  const useless = (side: number, k: number): boolean =>
    k > 1 && side / k < LIMITS.leastSide && fits(side, k - 1);
  const widest = Math.max(a, b);
  if (!fits(widest, n) || !fits(high, m) || useless(widest, n) || useless(high, m)) return [];
  const ribs = up(n - 1).map((k) => Math.hypot(off + ((b - a) * k) / n, high));
  const rows = up(m - 1).map((j) => a + ((b - a) * j) / m);
  const rules = up(m).map((j) => n * broken((a + ((b - a) * (j - 0.5)) / m) / n, high / m));
  return [{ rules: sum(rules), sawn: sum(ribs) + sum(rows) }];
}

/** Panels have the measures and the rules that they are told with. */
function checkPanels(panels: readonly LaidPanel[], what: string): void {
  for (const { along, across, area, broken: rules } of panels) {
    expect(along.times(across).toNumber()).toBeCloseTo(area.toNumber(), 9);
    const told = rules.filter((rule) => rule === 'panel shape').length;
    const [w, h] = [along.toNumber(), across.toNumber()];
    expect(told, what).toBe(Math.max(w, h) > LIMITS.ratio * Math.min(w, h) + 1e-9 ? 1 : 0);
    if (Math.min(w, h) < LIMITS.leastSide - 1e-9) expect(rules, what).toContain('sliver');
  }
}

describe('a tapering slab', () => {
  const next = drawn(51);
  /** Corners from the lower left: parallel sides below and above. */
  const tapers = Array.from({ length: runs(120) }, () => {
    const [a, b, high, off] = [1 + 9 * next(), 1 + 9 * next(), 0.8 + 8 * next(), 4 * next() - 2];
    const ring: Pair[] = [
      [0, 0],
      [a, 0],
      [off + b, high],
      [off, high],
    ];
    const from = Math.floor(4 * next());
    return { a, b, high, off, ring: [...ring.slice(from), ...ring.slice(0, from)] };
  });

  it('is known by its parallel sides, whichever corner comes first', () => {
    for (const { a, b, high, ring } of tapers) {
      const taper = taperOf(corners(ring));
      const sides = [taper?.nearLength.toNumber() ?? 0, taper?.farLength.toNumber() ?? 0];
      expect(Math.min(...sides)).toBeCloseTo(Math.min(a, b), 9);
      expect(Math.max(...sides)).toBeCloseTo(Math.max(a, b), 9);
      expect(taper?.height.toNumber()).toBeCloseTo(high, 9);
    }
    const none: Pair[][] = [
      [
        [0, 0],
        [4, 0],
        [5, 2],
        [1, 2],
      ],
      [
        [0, 0],
        [4, 0],
        [4, 2],
        [0, 2],
      ],
      [
        [0, 0],
        [4, 0.5],
        [5, 2],
        [1, 2.1],
      ],
      [
        [0, 0],
        [4, 0],
        [2, 3],
      ],
      [
        [0, 0],
        [4, 0],
        [4, 1],
        [3, 2],
        [0, 2],
      ],
    ];
    for (const ring of none) expect(taperOf(corners(ring))).toBeUndefined();
  });

  it('has the fan of least sawing, of all numbers of panels both ways', () => {
    for (const { a, b, high, off, ring } of tapers) {
      const costs = up(30).flatMap((n) => up(30).flatMap((m) => fanCost({ a, b, high, off }, n, m)));
      const taper = taperOf(corners(ring));
      const plan = taper && fanPlan(taper, LIMITS);
      const what = JSON.stringify({ a, b, high, off });
      expect(plan?.cost, what).toBeCloseTo(leastOf(costs), 6);
    }
  });

  it('is laid out in panels that fill it, with joints that divide both parallel sides evenly', () => {
    for (const { a, b, high, off, ring } of tapers) {
      const laid = layFan(corners(ring), LIMITS);
      const what = JSON.stringify({ a, b, high, off });
      expect(sum(laid?.panels.map((p) => p.area.toNumber()) ?? []), what).toBeCloseTo(
        ((a + b) / 2) * high,
        9,
      );
      checkPanels(laid?.panels ?? [], what);
      const fans = laid?.joints.filter(({ family }) => family === 'fan') ?? [];
      const rows = laid?.joints.filter(({ family }) => family === 'row') ?? [];
      expect(laid?.panels.length, what).toBe((fans.length + 1) * (rows.length + 1));
      for (const joint of [...fans, ...rows]) {
        const [p, q] = pairs([joint.from, joint.to]) as [Pair, Pair];
        expect(joint.length.toNumber()).toBeCloseTo(Math.hypot(q[0] - p[0], q[1] - p[1]), 9);
      }
      const ends = fans.flatMap(({ from, to }) => pairs([from, to])).filter(([, y]) => Math.abs(y) < 1e-9);
      const places = ends.map(([x]) => x).sort((p, q) => p - q);
      places.forEach((x, i) => {
        expect(x, what).toBeCloseTo((a * (i + 1)) / (fans.length + 1), 9);
      });
      expect(places.length).toBe(fans.length);
      expect(laid?.leastLength).toBeCloseTo(sum(laid?.joints.map((j) => j.length.toNumber()) ?? []), 9);
    }
  });
});

const STEP = new Decimal('0.001');

/** A disc, rings and their panels, as the plan has them or as they are tried. */
interface Rings {
  readonly radii: readonly number[];
  readonly counts: readonly number[];
}

const turnOf = ({ slice }: RoundSite): number => (slice ? (slice.toNumber() * Math.PI) / 180 : 2 * Math.PI);
const chord = (r: number, angle: number): number => 2 * r * Math.sin(Math.min(angle, Math.PI) / 2);

/** The middle of more rings, not divided. */
const isDisc = ({ radii, counts }: Rings): boolean => radii[0] === 0 && counts[0] === 1 && counts.length > 1;

/** Rules that the panels of a ring break; infinite where they are too wide. */
function bandRules(site: RoundSite, rings: Rings, i: number): number {
  const [inner, outer] = [rings.radii[i] as number, rings.radii[i + 1] as number];
  const n = rings.counts[i] as number;
  const [turn, angle] = [turnOf(site), turnOf(site) / n];
  const edge = chord(outer, angle);
  if (i === 0 && isDisc(rings)) {
    const across = chord(outer, turn);
    return broken(site.slice ? across / 2 : across, turn > Math.PI ? 2 * outer : outer, across);
  }
  // A strip along an arc is measured on its center line, its edge up to a quarter over.
  const strip = site.slice !== undefined && site.hole.greaterThan(0);
  const measured = strip ? Math.max(chord((inner + outer) / 2, angle), edge / 1.25) : edge;
  if (Math.max(measured, outer - inner) > LIMITS.spacing + 1e-9) return Number.POSITIVE_INFINITY;
  return n * broken((angle * (inner + outer)) / 2, outer - inner, edge);
}

/** What rings cost: arcs, radial joints, rules that break; infinite where a panel is too wide. */
function ringsCost(site: RoundSite, rings: Rings): Cost {
  const { radii, counts } = rings;
  const widths = counts.map((_, i) => (radii[i + 1] as number) - (radii[i] as number));
  const spokes = counts.map((n) => (site.slice ? n - 1 : n === 1 ? 0 : n));
  const arcs = radii.slice(1, -1).map((r) => turnOf(site) * r);
  // A joint that starts at a joint weighs a quarter of a rule.
  const more = counts.map((n, i) => {
    const within = counts[i - 1] ?? n;
    return site.tees || (i === 1 && isDisc(rings)) ? 0 : (n - within) / 4;
  });
  const rules = sum(counts.map((_, i) => bandRules(site, rings, i))) + sum(more);
  return { rules, sawn: sum(arcs) + sum(spokes.map((n, i) => n * (widths[i] as number))) };
}

/** Counts from n on, each as many as the one within or twice as many. */
function countsFrom(n: number, k: number): number[][] {
  return k === 1 ? [[n]] : [n, 2 * n].flatMap((m) => countsFrom(m, k - 1)).map((rest) => [n, ...rest]);
}

/** Rings around a disc, or around the hole, equally wide. */
function tried(site: RoundSite): Cost[] {
  const [R, hole] = [site.radius.toNumber(), site.hole.toNumber()];
  const most = Math.floor(Math.min(LIMITS.spacing / 2, 0.9 * R) / 0.001);
  const discs = [...new Set(up(40).map((i) => Math.ceil((most * i) / 40 - 1e-9) * 0.001))];
  const all = (hole > 0 ? [hole] : discs).flatMap((r0) => {
    const fewest = Math.max(1, Math.ceil((R - r0) / LIMITS.spacing - 1e-9));
    return up(hole > 0 ? 1 : 3).flatMap((more) => {
      const k = fewest + more - 1;
      const radii = Array.from({ length: k + 1 }, (_, i) => r0 + ((R - r0) * i) / k);
      const counts = up(24).flatMap((n) => (site.slice || n > 2 ? countsFrom(n, k) : []));
      return counts.map((list) =>
        hole > 0 ? { radii, counts: list } : { radii: [0, ...radii], counts: [1, ...list] },
      );
    });
  });
  const blunt = site.slice ? up(Math.max(1, Math.floor(turnOf(site) / (Math.PI / 3) + 1e-9))) : [4];
  const wedges = hole > 0 ? [] : blunt.map((n) => ({ radii: [0, R], counts: [n] }));
  return [...all, ...wedges].map((rings) => ringsCost(site, rings));
}

describe('a round slab', () => {
  const next = drawn(52);
  const siteOf = (radius: number, hole: number, slice: number | undefined, tees: boolean): RoundSite => ({
    radius: new Decimal(radius),
    hole: new Decimal(hole),
    step: STEP,
    tees,
    slice: slice === undefined ? undefined : new Decimal(slice),
  });
  const mm = (n: number): number => Math.round(n * 1000) / 1000;

  it('has the plan of least weight, of all discs, rings and numbers of panels', () => {
    for (let i = 0; i < runs(60); i += 1) {
      const radius = mm(1.8 + 4.5 * next());
      const hole = next() < 0.4 ? mm(0.3 + 0.5 * radius * next()) : 0;
      const slice = next() < 0.5 ? 20 + Math.floor(320 * next()) : undefined;
      const site = siteOf(radius, hole, slice, next() < 0.3);
      const plan = roundPlan(site, LIMITS);
      const told = ringsCost(site, {
        radii: [plan.rings[0]?.inner.toNumber() ?? 0, ...plan.rings.map((r) => r.outer.toNumber())],
        counts: plan.rings.map((r) => r.panels),
      });
      const all = tried(site);
      const what = JSON.stringify({ radius, hole, slice, tees: site.tees, told, plan: plan.rings });
      expect(told.rules === 0 || all.every(({ rules }) => rules > 0), what).toBe(true);
      expect(told.sawn + SOFT * told.rules, what).toBeLessThanOrEqual(leastOf(all) + 1e-6);
      // Rules told are those that break.
      const rules = sum(plan.rings.map((r) => r.panels * r.broken.length));
      expect(rules + (site.tees ? 0 : plan.tees / 4), what).toBeCloseTo(told.rules, 9);
    }
  });

  it('is one panel up to the spacing, and four quarters up to its chord', () => {
    const counts = (radius: number): number[] =>
      roundPlan(siteOf(radius, 0, undefined, false), LIMITS).rings.map((r) => r.panels);
    expect(counts(1.5)).toEqual([1]);
    expect(counts(1.501)).toEqual([4]);
    // The chord of a quarter is the root of two times the radius: 3 m at 2.1213 m.
    expect(counts(2.121)).toEqual([4]);
    expect(counts(2.122).length).toBeGreaterThan(1);
  });
});

describe('the fewest lines through points', () => {
  it('are those of trying every set of lines along one way', () => {
    const next = drawn(53);
    for (let i = 0; i < runs(200); i += 1) {
      const marks = Array.from({ length: 1 + Math.floor(7 * next()) }, () => ({
        x: Math.floor(4 * next()),
        y: Math.floor(4 * next()),
      }));
      const sets = Array.from({ length: 16 }, (_, set) => {
        const left = marks.filter(({ x }) => (set & (1 << x)) === 0);
        const along = [0, 1, 2, 3].filter((x) => (set & (1 << x)) !== 0).length;
        return along + new Set(left.map(({ y }) => y)).size;
      });
      expect(fewestLines(marks), JSON.stringify(marks)).toBe(Math.min(...sets));
      // Points that rounding parts lie on one line.
      const noisy = marks.map(({ x, y }, k) => ({ x: x + k * 1e-11, y: y - k * 1e-11 }));
      expect(fewestLines(noisy)).toBe(Math.min(...sets));
    }
    expect(fewestLines([])).toBe(0);
  });
});
