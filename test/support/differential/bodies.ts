/**
 * Bodies of concrete summed up slice by slice, step by step or as the outside less the inside: never by the
 * closed form that the library has.
 */
import {
  curbVolume,
  footingVolume,
  pierVolume,
  slabVolume,
  stepVolume,
  wallVolume,
} from '../../../src/index';
import type { Site } from './draw';
import { most, ONE, PI, Rational, radians, root, sum, tangent, whole, ZERO } from './rational';
import { type Compared, type Expected, held } from './trial';

const DIGITS = 45;
const half = (a: Rational): Rational => a.over(2);
const disc = (across: Rational): Rational => PI.times(across.squared()).over(4);
/** A body whose section changes as a square of the height: three sections give it exactly. */
const slices = (height: Rational, section: (share: Rational) => Rational): Rational =>
  height
    .times(
      section(ZERO)
        .plus(section(Rational.of(1, 2)).times(4))
        .plus(section(ONE)),
    )
    .over(6);
const slope = (rise: Rational, run: Rational): Rational => root(rise.squared().plus(run.squared()));
/** From one width to another. */
const between = (a: Rational, b: Rational, share: Rational): Rational => a.plus(b.minus(a).times(share));

type Draw = (site: Site) => Compared;

interface Plan {
  readonly outline: object;
  readonly area: Rational;
  readonly around: Rational;
  /** What the square of a band's width is multiplied by and taken off, at its corners. */
  readonly corners: Rational;
  /** Half of the narrowest way across. */
  readonly inner: number;
}

function planOf(site: Site): Plan {
  const [l, w] = [site.length(4, 15), site.length(4, 15)];
  const at = site.dice.below(6);
  if (at === 0) {
    const d = site.length(2, 12);
    const outline = { shape: 'circle', diameter: d.put };
    return {
      outline,
      area: disc(d.is),
      around: PI.times(d.is),
      corners: PI,
      inner: half(d.is).toNumber(),
    };
  }
  if (at === 1) return regularPlan(site);
  if (at === 2 || at === 3) return notched(site, at === 2 ? 'L' : 'U');
  if (at === 4) return rightTriangle(site);
  return {
    outline: { shape: 'rectangle', length: l.put, width: w.put },
    area: l.is.times(w.is),
    around: l.is.plus(w.is).times(2),
    corners: whole(4),
    inner: Math.min(l.is.toNumber(), w.is.toNumber()) / 2,
  };
}

function notched(site: Site, shape: 'L' | 'U'): Plan {
  const [l, w, a, b] = [site.length(6, 15), site.length(6, 15), site.length(1, 2), site.length(1, 2)];
  const outer = l.is.plus(w.is).times(2);
  return {
    outline: { shape, length: l.put, width: w.put, notchLength: a.put, notchWidth: b.put },
    area: l.is.times(w.is).minus(a.is.times(b.is)),
    around: shape === 'L' ? outer : outer.plus(b.is.times(2)),
    // Outside corners less inside ones: always four.
    corners: whole(4),
    inner: 1.9 * (site.size === 'tiny' ? 0.01 : site.size === 'huge' ? 1000 : 1),
  };
}

/** A triangle of whole proportions with a square corner, so that area and way around are exact. */
function rightTriangle(site: Site): Plan {
  const unit = site.length(0.5, 1.5);
  const [a, b, c] = site.dice.pick([
    [3, 4, 5],
    [5, 12, 13],
    [8, 15, 17],
    [7, 24, 25],
    [20, 21, 29],
  ] as const);
  const side = (n: number): string => `${decimalOf(unit.is.times(n))} m`;
  const area = unit.is
    .squared()
    .times(a * b)
    .over(2);
  const around = unit.is.times(a + b + c);
  return {
    outline: { shape: 'triangle', sides: site.dice.shuffled([side(a), side(b), side(c)]) },
    area,
    around,
    // Drawn in by w a triangle is like itself: its corners come to P² ÷ 4 A.
    corners: around.squared().over(area).over(4),
    inner: area.times(2).over(around).toNumber(),
  };
}

/** The exact decimal of a fraction that has one. */
export function decimalOf(a: Rational): string {
  let places = 0;
  let [n, d] = [a.top, a.below];
  while (n % d !== 0n && places < 200) {
    n *= 10n;
    places += 1;
  }
  if (n % d !== 0n) throw new RangeError('no finite decimal');
  n /= d;
  const digits = (n < 0n ? -n : n).toString().padStart(places + 1, '0');
  const cut = digits.length - places;
  return `${a.sign() < 0 ? '-' : ''}${digits.slice(0, cut)}${places > 0 ? `.${digits.slice(cut)}` : ''}`;
}

function regularPlan(site: Site): Plan {
  const [n, s] = [site.between(3, 12), site.length(2, 6)];
  const toSide = half(s.is)
    .over(tangent(PI.over(n)))
    .cut();
  return {
    outline: { shape: 'regular', sides: n, side: s.put },
    area: half(s.is).times(toSide).times(n),
    around: s.is.times(n),
    corners: tangent(PI.over(n)).times(n),
    inner: toSide.toNumber(),
  };
}

/** A slab with a thickened edge, ribs and a base that lies low. */
const slab: Draw = (site) => {
  const plan = planOf(site);
  const t = site.length(0.08, 0.25);
  const input: Record<string, unknown> = { outline: plan.outline, thickness: t.put };
  let volume = plan.area.times(t.is);
  const expected: Record<string, Expected> = { area: plan.area, perimeter: plan.around };
  const [below, width, haunch] = [site.length(0.1, 0.5), site.length(0.1, 0.4), site.length(0.05, 0.3)];
  const widest = width.is.plus(haunch.is).toNumber();
  if (site.maybe() && widest < 0.99 * plan.inner) {
    input['edge'] = { below: below.put, width: width.put, haunch: haunch.put };
    const band = (w: Rational): Rational => plan.around.times(w).minus(plan.corners.times(w.squared()));
    const edge = slices(below.is, (share) => band(width.is.plus(haunch.is.times(share))));
    expected['edgeVolume'] = edge;
    volume = volume.plus(edge);
  }
  if (site.maybe()) {
    const [l, d, w, h] = [
      site.length(2, 6),
      site.length(0.1, 0.5),
      site.length(0.2, 0.4),
      site.length(0.05, 0.3),
    ];
    const n = site.between(1, 6);
    input['beams'] = [{ length: l.put, below: d.put, width: w.put, haunch: h.put, count: n }];
    const section = d.is.times(w.is).plus(half(d.is.times(h.is)).times(2));
    expected['beamVolume'] = section.times(l.is).times(n);
    volume = volume.plus(expected['beamVolume']);
  }
  const low = site.length(0.003, 0.02);
  input['baseTolerance'] = low.put;
  expected['volume'] = volume;
  expected['toleranceVolume'] = plan.area.times(low.is);
  return held(slabVolume, input, expected, DIGITS);
};

/** Thickness that runs evenly over a rectangle: the mean of the corners. */
const tapered: Draw = (site) => {
  const [l, w, a, b] = [
    site.length(3, 15),
    site.length(3, 15),
    site.length(0.08, 0.2),
    site.length(0.08, 0.25),
  ];
  const along = site.dice.pick(['x', 'y'] as const);
  const input = {
    outline: { shape: 'rectangle', length: l.put, width: w.put },
    thickness: { kind: 'taper', along, from: a.put, to: b.put },
  };
  const volume = l.is.times(w.is).times(half(a.is.plus(b.is)));
  return held(
    slabVolume,
    input,
    { volume, meanThickness: half(a.is.plus(b.is)), 'thickest.thickness': most(a.is, b.is) },
    DIGITS,
  );
};

/** A crown over a rectangle: the parabola and the two falls integrated strip by strip. */
const crowned: Draw = (site) => {
  const [l, w, e, c] = [
    site.length(3, 15),
    site.length(3, 15),
    site.length(0.08, 0.2),
    site.length(0.08, 0.25),
  ];
  const form = site.dice.pick(['parabolic', 'straight'] as const);
  const input = {
    outline: { shape: 'rectangle', length: l.put, width: w.put },
    thickness: { kind: 'crown', edges: e.put, center: c.put, form },
  };
  const rise = c.is.minus(e.is);
  const over = (share: Rational): Rational =>
    form === 'straight' ? rise.times(ONE.minus(share)) : rise.times(ONE.minus(share.squared()));
  // Half the slab, from the middle to an edge; three places are exact for a square.
  const mean = e.is.plus(slices(ONE, over));
  return held(slabVolume, input, { volume: l.is.times(w.is).times(mean), meanThickness: mean }, DIGITS);
};

/** Two walls beside a flight, lower in front. */
function wingOf(site: Site): { readonly put: object; readonly volume: Rational } {
  const [l, t, h, f] = [
    site.length(1, 3),
    site.length(0.15, 0.3),
    site.length(0.5, 1.5),
    site.length(0, 0.4),
  ];
  return {
    put: { length: l.put, thickness: t.put, height: h.put, frontHeight: f.put, count: 2 },
    volume: l.is
      .times(t.is)
      .times(half(h.is.plus(f.is)))
      .times(2),
  };
}

const straightSteps: Draw = (site) => {
  const n = site.between(1, 12);
  const [r, t, w, d] = [
    site.length(0.12, 0.2),
    site.length(0.25, 0.4),
    site.length(0.8, 3),
    site.length(0.6, 2),
  ];
  const landing = site.maybe();
  const wash = site.maybe() ? site.slope(0.5, 3) : undefined;
  const p = site.maybe() ? site.length(0.005, 0.04) : undefined;
  const mid =
    n > 3 && site.maybe() ? { after: site.between(1, n - 2), depth: site.length(0.6, 1.8) } : undefined;
  const treads = Array.from({ length: n }, (_, i) =>
    i + 1 === n && landing ? d.is : mid && i + 1 === mid.after ? mid.depth.is : t.is,
  );
  const s = wash?.is ?? ZERO;
  const lean = p?.is ?? ZERO;
  // A washed tread that rises as much as a riser is no step.
  if (treads.slice(0, -1).some((depth) => !depth.plus(lean).times(s).lessThan(r.is)))
    return straightSteps(site);
  // Side view, tread by tread: a block, the wedge of the wash, and under each nosing a triangle away.
  const side = sum(
    treads.map((depth, i) => {
      const block = depth.times(r.is).times(i + 1);
      const wedge = half(depth.squared().times(s));
      const face = i === 0 ? r.is : r.is.minus((treads[i - 1] as Rational).times(s));
      return block.plus(wedge).minus(half(lean.times(face)));
    }),
  );
  const count = site.between(0, 2);
  const slanted = sum(
    treads.map((_, i) => {
      const behind = i === 0 ? ZERO : (treads[i - 1] as Rational).plus(lean).times(s);
      return lean.sign() === 0 ? r.is.minus(behind) : slope(r.is.minus(behind), lean);
    }),
  );
  const wing = site.maybe() ? wingOf(site) : undefined;
  const body = side.times(w.is);
  const run = sum(treads);
  return held(
    stepVolume,
    {
      risers: n,
      rise: r.put,
      tread: t.put,
      width: w.put,
      ...(landing ? { landingDepth: d.put } : {}),
      ...(mid ? { landings: [{ after: mid.after, depth: mid.depth.put }] } : {}),
      ...(wash ? { wash: wash.put } : {}),
      ...(p ? { nosing: p.put } : {}),
      openSides: count,
      ...(wing ? { wingWalls: [wing.put] } : {}),
    },
    {
      volume: wing ? body.plus(wing.volume) : body,
      totalRise: r.is.times(n),
      totalRun: run,
      footprint: run.times(w.is),
      formedArea: slanted.times(w.is).plus(side.times(count)),
      ...(wing ? { wingVolume: wing.volume } : {}),
    },
    DIGITS,
  );
};

/** Steps as slabs on top of each other, each a tread larger than the one above. */
const wraparoundSteps: Draw = (site) => {
  const n = site.between(1, 8);
  const [r, t, w, d] = [
    site.length(0.12, 0.2),
    site.length(0.25, 0.4),
    site.length(0.8, 3),
    site.length(0.6, 2),
  ];
  const sides = site.dice.pick(['one', 'both'] as const);
  const c = sides === 'both' ? 2 : 1;
  const slabs = Array.from({ length: n }, (_, j) => ({
    deep: d.is.plus(t.is.times(j)),
    wide: w.is.plus(t.is.times(j * c)),
  }));
  const lowest = slabs.at(-1) as { deep: Rational; wide: Rational };
  return held(
    stepVolume,
    { kind: 'wraparound', risers: n, rise: r.put, tread: t.put, topWidth: w.put, topDepth: d.put, sides },
    {
      volume: sum(slabs.map(({ deep, wide }) => deep.times(wide).times(r.is))),
      totalRun: lowest.deep,
      footprint: lowest.deep.times(lowest.wide),
      formedArea: sum(slabs.map(({ deep, wide }) => wide.plus(deep.times(c)).times(r.is))),
    },
    DIGITS,
  );
};

const roundSteps: Draw = (site) => {
  const n = site.between(1, 8);
  const [r, t, R, q] = [
    site.length(0.12, 0.2),
    site.length(0.25, 0.4),
    site.length(0.8, 3),
    site.length(0.1, 0.6),
  ];
  const turn = site.degrees(30, 360);
  const share = turn.is.over(360);
  const slabs = Array.from({ length: n }, (_, j) => R.is.plus(t.is.times(j)));
  const plan = (radius: Rational): Rational => PI.times(radius.squared().minus(q.is.squared())).times(share);
  return held(
    stepVolume,
    {
      kind: 'round',
      risers: n,
      rise: r.put,
      tread: t.put,
      topRadius: R.put,
      innerRadius: q.put,
      turn: turn.put,
    },
    {
      volume: sum(slabs.map((radius) => plan(radius).times(r.is))),
      footprint: plan(slabs.at(-1) as Rational),
      formedArea: sum(slabs.map((radius) => radians(turn.is).times(radius).times(r.is))),
    },
    DIGITS,
  );
};

const windingSteps: Draw = (site) => {
  const n = site.between(1, 12);
  const [r, q, o] = [site.length(0.12, 0.2), site.length(0.1, 0.9), site.length(1, 3)];
  const each = site.degrees(5, 30);
  const angle = radians(each.is);
  const tread = half(angle.times(o.is.squared().minus(q.is.squared())));
  const heights = Array.from({ length: n }, (_, j) => r.is.times(j + 1));
  return held(
    stepVolume,
    { kind: 'winding', risers: n, rise: r.put, innerRadius: q.put, outerRadius: o.put, turnEach: each.put },
    {
      volume: sum(heights.map((h) => h.times(tread))),
      footprint: tread.times(n),
      // A riser each, and both curved sides of every tread.
      formedArea: r.is
        .times(o.is.minus(q.is))
        .times(n)
        .plus(sum(heights.map((h) => h.times(angle).times(o.is.plus(q.is))))),
    },
    DIGITS,
  );
};

/** Plan of a band around a rectangle as the outside less the inside. */
const frame = (l: Rational, b: Rational, w: Rational): Rational =>
  l.times(b).minus(l.minus(w.times(2)).times(b.minus(w.times(2))));

interface Part {
  readonly put: object;
  readonly volume: Rational;
  readonly plan: Rational;
  readonly faces: Rational;
}

function footing(site: Site): Part {
  const [l, w, d, h] = [
    site.length(4, 20),
    site.length(0.3, 0.9),
    site.length(0.2, 0.6),
    site.length(0.1, 0.5),
  ];
  const n = site.between(1, 9);
  switch (site.dice.below(6)) {
    case 0: {
      const o = site.length(0.3, 1);
      const steps = { count: n, height: h.put, lap: o.put };
      const blocks = h.is.times(o.is).times(w.is).times(n);
      const fronts = h.is.times(o.is.times(2).plus(w.is)).times(n);
      return {
        put: { kind: 'strip', length: l.put, width: w.put, depth: d.put, steps },
        volume: l.is.times(w.is).times(d.is).plus(blocks),
        plan: l.is.times(w.is),
        faces: l.is.times(d.is).times(2).plus(fronts),
      };
    }
    case 1: {
      const b = site.length(3, 12);
      const inside = l.is.minus(w.is.times(2)).plus(b.is.minus(w.is.times(2)));
      return {
        put: { kind: 'loop', outerLength: l.put, outerWidth: b.put, width: w.put, depth: d.put },
        volume: frame(l.is, b.is, w.is).times(d.is),
        plan: frame(l.is, b.is, w.is),
        faces: l.is.plus(b.is).plus(inside).times(2).times(d.is),
      };
    }
    case 2: {
      const top = site.length(0.2, 0.6);
      return {
        put: { kind: 'tapered-strip', length: l.put, bottomWidth: w.put, topWidth: top.put, depth: d.put },
        volume: slices(d.is, (share) => between(w.is, top.is, share).times(l.is)),
        plan: l.is.times(w.is),
        faces: l.is.times(d.is).times(2),
      };
    }
    case 3:
      return {
        put: { kind: 'pad', length: l.put, width: w.put, depth: d.put, count: n },
        volume: l.is.times(w.is).times(d.is).times(n),
        plan: l.is.times(w.is).times(n),
        faces: l.is.plus(w.is).times(2).times(d.is).times(n),
      };
    case 4: {
      const [a, b, e] = [site.length(0.5, 3), site.length(0.1, 0.3), site.length(0.05, 0.3)];
      const top = slices(h.is, (share) => between(l.is, a.is, share).times(between(w.is, b.is, share)));
      return {
        put: {
          kind: 'tapered-pad',
          length: l.put,
          width: w.put,
          edge: e.put,
          topLength: a.put,
          topWidth: b.put,
          taper: h.put,
          count: n,
        },
        volume: l.is.times(w.is).times(e.is).plus(top).times(n),
        plan: l.is.times(w.is).times(n),
        faces: l.is.plus(w.is).times(2).times(e.is).times(n),
      };
    }
    default: {
      const tiers = Array.from({ length: site.between(2, 4) }, (_, i) => ({
        length: site.length(2.3 / (i + 1), 2.9 / (i + 1)),
        width: site.length(1.1 / (i + 1), 1.4 / (i + 1)),
        depth: site.length(0.1, 0.4),
      }));
      const all = tiers.map((t) => [t.length.is, t.width.is, t.depth.is] as const);
      const [first] = all as [readonly [Rational, Rational, Rational]];
      return {
        put: {
          kind: 'stepped-pad',
          tiers: tiers.map((t) => ({ length: t.length.put, width: t.width.put, depth: t.depth.put })),
          count: n,
        },
        volume: sum(all.map(([a, b, c]) => a.times(b).times(c))).times(n),
        plan: first[0].times(first[1]).times(n),
        faces: sum(all.map(([a, b, c]) => a.plus(b).times(2).times(c))).times(n),
      };
    }
  }
}

const footings: Draw = (site) => {
  const parts = Array.from({ length: site.between(1, 4) }, () => footing(site));
  return held(
    footingVolume,
    { footings: parts.map(({ put }) => put) },
    {
      volume: sum(parts.map((p) => p.volume)),
      bearingArea: sum(parts.map((p) => p.plan)),
      formedArea: sum(parts.map((p) => p.faces)),
      ...Object.fromEntries(parts.map((p, i) => [`volumes.${i}`, p.volume])),
    },
    DIGITS,
  );
};

const walls: Draw = (site) => {
  const kind = site.dice.pick(['straight', 'loop', 'ring'] as const);
  const [l, b, h, n] = [site.length(5, 12), site.length(5, 12), site.length(1, 3), site.between(1, 5)];
  const [t, top] = [site.length(0.15, 0.35), site.length(0.1, 0.3)];
  const foam = site.maybe() ? site.length(0.01, 0.03) : undefined;
  const taper = site.maybe();
  const web = site.maybe() ? site.percent(0, 15) : undefined;
  const off = foam ? foam.is.times(2) : ZERO;
  const [T, B] = [t.is.minus(off), (taper ? top.is : t.is).minus(off)];
  const [L, W] = kind === 'straight' ? [l.is, b.is] : [l.is.minus(off), b.is.minus(off)];
  const plan = (c: Rational): Rational =>
    kind === 'straight'
      ? L.times(c)
      : kind === 'loop'
        ? frame(L, W, c)
        : disc(L).minus(disc(L.minus(c.times(2))));
  const around = (c: Rational): Rational => {
    if (kind === 'straight') return L.times(2);
    if (kind === 'loop')
      return L.plus(W)
        .plus(L.minus(c.times(2)))
        .plus(W.minus(c.times(2)))
        .times(2);
    return PI.times(L.plus(L.minus(c.times(2))));
  };
  const gross = slices(h.is, (share) => plan(between(T, B, share)));
  const [ow, oh, sill, on] = [
    site.length(0.1, 0.5),
    site.length(0.1, 0.5),
    site.length(0, 0.3),
    site.between(1, 3),
  ];
  const hole = ow.is.times(oh.is).times(on);
  const middle = between(T, B, sill.is.plus(half(oh.is)).over(h.is));
  const [pw, pp, pn] = [site.length(0.2, 0.5), site.length(0.05, 0.2), site.between(1, 4)];
  const pilasters = pw.is.times(pp.is).times(h.is).times(pn);
  const solid = gross.minus(hole.times(middle)).times(ONE.minus(web?.is ?? ZERO));
  const faces = around(half(T.plus(B)))
    .times(h.is)
    .minus(hole.times(2))
    .plus(pp.is.times(h.is).times(2 * pn));
  return held(
    wallVolume,
    {
      walls: [
        {
          kind,
          ...(kind === 'straight' ? { length: l.put } : {}),
          ...(kind === 'loop' ? { outerLength: l.put, outerWidth: b.put } : {}),
          ...(kind === 'ring' ? { outerDiameter: l.put } : {}),
          height: h.put,
          thickness: t.put,
          ...(taper ? { topThickness: top.put } : {}),
          ...(foam ? { foam: foam.put } : {}),
          ...(web ? { webShare: web.put } : {}),
          openings: [{ width: ow.put, height: oh.put, sill: sill.put, count: on }],
          pilasters: [{ width: pw.put, projection: pp.put, count: pn }],
          count: n,
        },
      ],
    },
    {
      volume: solid.plus(pilasters).times(n),
      grossVolume: gross.times(n),
      planArea: plan(T).times(n),
      formedArea: faces.times(n),
    },
    DIGITS,
  );
};

function pier(site: Site): Part {
  const [a, b, h, d] = [
    site.length(0.4, 1),
    site.length(0.2, 0.4),
    site.length(0.6, 3),
    site.length(0.1, 0.39),
  ];
  const n = site.between(1, 12);
  const all = (put: object, volume: Rational, plan: Rational, faces: Rational): Part => ({
    put: { ...put, count: n },
    volume: volume.times(n),
    plan: plan.times(n),
    faces: faces.times(n),
  });
  /** A cone's mantle: the mean way around times the length along the slope. */
  const mantle = (up: Rational, from: Rational, to: Rational): Rational =>
    PI.times(half(from.plus(to))).times(slope(up, half(from.minus(to))));
  switch (site.dice.below(5)) {
    case 0:
      return all(
        { kind: 'round', diameter: a.put, height: h.put },
        disc(a.is).times(h.is),
        disc(a.is),
        PI.times(a.is).times(h.is),
      );
    case 1:
      return all(
        { kind: 'rectangular', length: a.put, width: b.put, height: h.put },
        a.is.times(b.is).times(h.is),
        a.is.times(b.is),
        a.is.plus(b.is).times(2).times(h.is),
      );
    case 2:
      return all(
        { kind: 'tapered-round', bottomDiameter: a.put, topDiameter: b.put, height: h.put },
        slices(h.is, (share) => disc(between(a.is, b.is, share))),
        disc(a.is),
        mantle(h.is, a.is, b.is),
      );
    case 3: {
      const [c, e] = [site.length(0.1, 0.3), site.length(0.05, 0.2)];
      const face = (base: Rational, top: Rational, in1: Rational): Rational =>
        base.plus(top).times(slope(h.is, in1));
      return all(
        {
          kind: 'tapered-rectangular',
          length: a.put,
          width: b.put,
          topLength: c.put,
          topWidth: e.put,
          height: h.put,
        },
        slices(h.is, (share) => between(a.is, c.is, share).times(between(b.is, e.is, share))),
        a.is.times(b.is),
        face(a.is, c.is, half(b.is.minus(e.is))).plus(face(b.is, e.is, half(a.is.minus(c.is)))),
      );
    }
    default: {
      const [bell, toe] = [site.length(0.1, 0.3), site.length(0.05, 0.2)];
      const shaft = h.is.minus(bell.is).minus(toe.is);
      return all(
        {
          kind: 'belled',
          shaftDiameter: d.put,
          bellDiameter: a.put,
          height: h.put,
          bellHeight: bell.put,
          toe: toe.put,
        },
        disc(d.is)
          .times(shaft)
          .plus(slices(bell.is, (share) => disc(between(d.is, a.is, share))))
          .plus(disc(a.is).times(toe.is)),
        disc(a.is),
        PI.times(d.is)
          .times(shaft)
          .plus(mantle(bell.is, a.is, d.is))
          .plus(PI.times(a.is).times(toe.is)),
      );
    }
  }
}

const piers: Draw = (site) => {
  const parts = Array.from({ length: site.between(1, 4) }, () => pier(site));
  return held(
    pierVolume,
    { piers: parts.map(({ put }) => put) },
    {
      volume: sum(parts.map((p) => p.volume)),
      bearingArea: sum(parts.map((p) => p.plan)),
      sideArea: sum(parts.map((p) => p.faces)),
    },
    DIGITS,
  );
};

/** Curb and gutter: its section in two boxes and a slanted one, on straights, wings and curves. */
const curb: Draw = (site) => {
  const [w, g, h, t] = [
    site.length(0.12, 0.2),
    site.length(0.3, 0.6),
    site.length(0.3, 0.5),
    site.length(0.12, 0.2),
  ];
  const low = site.length(0.2, 0.29);
  const at = (x: Rational, y: Rational) => ({ x: `${decimalOf(x)} m`, y: `${decimalOf(y)} m` });
  const all = w.is.plus(g.is);
  const ring = (top: Rational) => [
    at(ZERO, ZERO),
    at(all, ZERO),
    at(all, t.is),
    at(w.is, t.is),
    at(w.is, top),
    at(ZERO, top),
  ];
  const area = (top: Rational): Rational => w.is.times(top).plus(g.is.times(t.is));
  const moment = half(w.is)
    .times(w.is.times(h.is))
    .plus(w.is.plus(half(g.is)).times(g.is.times(t.is)));
  const [L, d, wing, n] = [site.length(60, 120), site.length(2, 5), site.length(0.5, 2), site.between(1, 4)];
  const [R, turn] = [site.length(2, 20), site.degrees(10, 300)];
  const left = site.maybe();
  // x counts from the line that the radius goes to, away from the center or toward it.
  const middle = left ? R.is.plus(moment.over(area(h.is))) : R.is.minus(moment.over(area(h.is)));
  const drops = area(low.is)
    .times(d.is)
    .plus(slices(wing.is, (share) => area(between(h.is, low.is, share))).times(2))
    .times(n);
  const full = L.is.minus(d.is.plus(wing.is.times(2)).times(n)).times(area(h.is));
  const bend = area(h.is).times(radians(turn.is)).times(middle);
  return held(
    curbVolume,
    {
      section: ring(h.is),
      length: L.put,
      drops: [{ section: ring(low.is), length: d.put, wing: wing.put, count: n }],
      curves: [{ radius: R.put, turn: turn.put, center: left ? 'left' : 'right' }],
    },
    {
      volume: full.plus(drops).plus(bend),
      sectionArea: area(h.is),
      girth: all.plus(h.is).times(2),
      centroid: moment.over(area(h.is)),
    },
    DIGITS,
  );
};

export const BODIES: readonly ((site: Site) => Compared)[] = [
  slab,
  tapered,
  crowned,
  straightSteps,
  wraparoundSteps,
  roundSteps,
  windingSteps,
  footings,
  walls,
  piers,
  curb,
];
