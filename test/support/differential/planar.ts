/**
 * Plans: areas and moments exactly in whole numbers, way around by roots, bands and margins by the buffers of
 * jsts, and what crosses itself by its test of validity.
 */
import { excavation, slabVolume } from '../../../src/index';
import { depthIn } from '../../steel/outlines';
import { hasFlatCorner } from '../outlines';
import { clearOf, clearWithin, inset, oracle } from '../planar';
import { decimalOf } from './bodies';
import type { Site } from './draw';
import {
  areaOf,
  aroundOf,
  type Drawn,
  drawnPlan,
  type Hole,
  holeAt,
  moment,
  polygonText,
  type Ring,
  type Spot,
} from './plans';
import { arcTangent, degrees, ONE, PI, Rational, root, sum, whole, ZERO } from './rational';
import { type Compared, type Expected, held, numberOf } from './trial';

const DIGITS = 45;

const extent = (ring: Ring, k: 0 | 1): [number, number] => {
  const list = ring.map((p) => p[k]);
  return [Math.min(...list), Math.max(...list)];
};

const asSpots = (ring: Ring) => ring.map(([x, y]) => ({ x, y }));

/** Openings that lie clear inside the ring and clear of each other. */
function holesIn(site: Site, plan: Drawn, count: number): Hole[] {
  const holes: Hole[] = [];
  const [[x0, x1], [y0, y1]] = [extent(plan.ring, 0), extent(plan.ring, 1)];
  for (let k = 0; k < 12 * count && holes.length < count; k += 1) {
    const p = { x: x0 + site.dice.next() * (x1 - x0), y: y0 + site.dice.next() * (y1 - y0) };
    const room = depthIn({ outer: asSpots(plan.ring), openings: holes.map((h) => asSpots(h.ring)) }, p);
    if (room > 40) holes.push(holeAt(site, plan, [p.x, p.y], room * 0.9));
  }
  return holes;
}

/** A slab of any outline with openings, tapered when all its corners are whole numbers. */
function slab(site: Site): Compared {
  const plan = drawnPlan(site);
  const holes = holesIn(site, plan, site.between(0, 4));
  const net = holes.reduce((left, hole) => left.minus(hole.area), areaOf(plan, plan.ring));
  const [a, b] = [site.length(0.08, 0.2), site.length(0.1, 0.3)];
  const axis = site.dice.below(2) as 0 | 1;
  const tapers = holes.every(({ straight }) => straight) && site.maybe();
  // Roots are taken to some 32 digits.
  const perimeter = { value: aroundOf(plan, plan.ring), digits: 28 };
  const expected: Record<string, Expected> = { area: net, perimeter };
  if (!tapers) expected['volume'] = net.times(a.is);
  else {
    const [low, high] = extent(plan.ring, axis);
    const first = holes.reduce((m, { ring }) => m.minus(moment(ring, axis)), moment(plan.ring, axis));
    const cubed = plan.unit.squared();
    // The thickness is a plus what it grows by for each unit along the axis.
    const grows = b.is.minus(a.is).over(high - low);
    const fromLow = first.times(cubed).minus(net.times(low));
    expected['volume'] = net.times(a.is).plus(fromLow.times(grows));
  }
  return held(
    slabVolume,
    {
      outline: polygonText(plan, plan.ring),
      ...(holes.length > 0 ? { openings: holes.map(({ put }) => put) } : {}),
      thickness: tapers ? { kind: 'taper', along: 'xy'[axis], from: a.put, to: b.put } : a.put,
    },
    expected,
    DIGITS,
  );
}

/** Corners of the ring moved in, and its area, by jsts; nothing where it falls apart. */
const movedBy = (ring: Ring, w: number) => inset(ring, w);

const skipped = (input: unknown, why: string): Compared => ({
  figures: 0,
  deviation: 0,
  input,
  disagreements: [],
  skipped: why,
});

/** A thickened edge: bands of three widths by the buffer of jsts. */
function edge(site: Site): Compared {
  const plan = drawnPlan(site, ['star', 'comb', 'staircase', 'box', 'corridor', 'needle']);
  const unit = plan.unit.toNumber();
  const size = Math.sqrt(areaOf(plan, plan.ring).toNumber()) / unit;
  const wide = Math.max(2, Math.round(size * (0.005 + 0.1 * site.dice.next())));
  const haunch = Math.max(1, Math.round(wide * site.dice.next()));
  const [t, below] = [site.length(0.1, 0.2), site.length(0.2, 0.5)];
  const text = (n: number): string => `${decimalOf(plan.unit.times(n))} m`;
  const input = {
    outline: polygonText(plan, plan.ring),
    thickness: t.put,
    edge: { below: below.put, width: text(wide), haunch: text(haunch) },
  };
  if (hasFlatCorner(plan.ring)) return skipped(input, 'a corner that the library blunts');
  const bands = [wide, wide + haunch / 2, wide + haunch].map((w) => movedBy(plan.ring, w));
  const last = bands[2] as ReturnType<typeof movedBy>;
  const sound = last.rings === 1 && last.corners === plan.ring.length;
  const attempt = slabVolume.attempt(input);
  if (!attempt.ok) {
    const codes = attempt.error.issues.map(({ code }) => code).join();
    if (sound)
      return { figures: 0, deviation: 0, input, disagreements: [`refused with ${codes}; jsts has a band`] };
    return skipped(input, 'both have no band of one width');
  }
  if (!sound)
    return { figures: 0, deviation: 0, input, disagreements: ['ours has a band; jsts loses a side'] };
  const whole_ = areaOf(plan, plan.ring).toNumber() / unit ** 2;
  const [p, q, r] = bands.map(({ area }) => whole_ - area) as [number, number, number];
  const theirs = (below.is.toNumber() * (p + 4 * q + r) * unit ** 2) / 6;
  return near(
    input,
    [['edgeVolume', numberOf(attempt.result.figures.edgeVolume), theirs]],
    1e-12 * (whole_ / p),
  );
}

/** Numbers by a binary library, each held to what that can know. */
export function near(
  input: unknown,
  pairs: readonly (readonly [name: string, ours: number, theirs: number])[],
  tolerance: number,
): Compared {
  let deviation = 0;
  const disagreements: string[] = [];
  for (const [name, ours, theirs] of pairs) {
    const off = Math.abs(ours - theirs) / Math.max(Math.abs(ours), Math.abs(theirs), 1e-300);
    if (off <= tolerance || ours === theirs) deviation = Math.max(deviation, ours === theirs ? 0 : off);
    else disagreements.push(`${name}: ours ${ours}, theirs ${theirs} (${off.toExponential(1)} apart)`);
  }
  return { figures: pairs.length, deviation, input, disagreements };
}

/** A pit with room to work in: the outline moved outwards by the buffer of jsts. */
function margin(site: Site): Compared {
  const plan = drawnPlan(site);
  const unit = plan.unit.toNumber();
  const size = Math.sqrt(areaOf(plan, plan.ring).toNumber()) / unit;
  const m = Math.max(1, Math.round(size * (0.002 + 0.06 * site.dice.next())));
  const depth = site.length(0.3, 2);
  const input = {
    kind: 'pit' as const,
    outline: polygonText(plan, plan.ring),
    depth: depth.put,
    margin: `${decimalOf(plan.unit.times(m))} m`,
  };
  if (hasFlatCorner(plan.ring)) return skipped(input, 'a corner that the library blunts');
  const spread = movedBy(plan.ring, -m);
  const sound = spread.rings === 1 && spread.corners === plan.ring.length;
  const attempt = excavation.attempt(input);
  if (!attempt.ok) {
    const codes = attempt.error.issues.map(({ code }) => code).join();
    if (sound)
      return { figures: 0, deviation: 0, input, disagreements: [`refused with ${codes}; jsts spreads it`] };
    return skipped(input, 'both say that sides meet');
  }
  if (!sound)
    return { figures: 0, deviation: 0, input, disagreements: ['ours is spread; jsts loses a side'] };
  const { bottomArea, bankVolume } = attempt.result.figures;
  return near(
    input,
    [
      ['bottomArea', numberOf(bottomArea), spread.area * unit ** 2],
      ['bankVolume', numberOf(bankVolume), spread.area * unit ** 2 * depth.is.toNumber()],
    ],
    1e-10,
  );
}

/** Rings that mostly cross themselves: refused when, and only when, jsts finds them invalid. */
function crossing(site: Site): Compared {
  const n = site.between(3, 7);
  const grid = site.dice.pick([4, 12, 60]);
  const ring = Array.from({ length: n }, (): Spot => [site.between(0, grid), site.between(0, grid)]);
  const plan = { ...drawnPlan(site, ['box']), ring };
  const input = { outline: polygonText(plan, ring), thickness: '100 mm' };
  const valid = oracle.simple(ring) && new Set(ring.map(String)).size === n;
  const attempt = slabVolume.attempt(input);
  if (attempt.ok === valid) return { figures: 1, deviation: 0, input, disagreements: [] };
  const said = attempt.ok ? 'accepted' : attempt.error.message;
  return {
    figures: 1,
    deviation: 0,
    input,
    disagreements: [`ours: ${said}; jsts: ${valid ? 'valid' : 'not valid'}`],
  };
}

/** One ring by its corners, by sides and diagonals, and by a walk around. */
function measuredOtherwise(site: Site): Compared {
  // All corners are seen from the first: a fan of growing angle.
  const n = site.between(3, 8);
  const unit = site.metric ? Rational.of(1, 10_000) : Rational.of(127, 80_000);
  const ring: Spot[] = [[0, 0]];
  for (let k = 0; k < n; k += 1) {
    const [r, a] = [1000 + 9000 * site.dice.next(), ((k + 0.2 + 0.6 * site.dice.next()) / n) * Math.PI * 0.9];
    ring.push([Math.round(r * Math.cos(a)), Math.round(r * Math.sin(a))]);
  }
  const far = ([x, y]: Spot, [u, v]: Spot): Rational =>
    root(whole(BigInt(u - x) ** 2n + BigInt(v - y) ** 2n)).times(unit);
  const text = (a: Rational): string =>
    `${decimalOf(Rational.of((a.top * 10n ** 40n) / a.below, 10n ** 40n))} m`;
  const next = (k: number): Spot => ring[(k + 1) % ring.length] as Spot;
  const sides = ring.map((p, k) => far(p, next(k)));
  const turns = ring.map((p, k) => {
    const [q, r] = [next(k), next(k + 1)];
    const [a, b] = [
      [q[0] - p[0], q[1] - p[1]],
      [r[0] - q[0], r[1] - q[1]],
    ] as [Spot, Spot];
    const [cross, dot] = [
      BigInt(a[0]) * BigInt(b[1]) - BigInt(a[1]) * BigInt(b[0]),
      BigInt(a[0]) * BigInt(b[0]) + BigInt(a[1]) * BigInt(b[1]),
    ];
    // The half of the turn, so that no quarter is mistaken: tan(t / 2) = cross ÷ (|a| |b| + dot).
    const product = root(
      whole((BigInt(a[0]) ** 2n + BigInt(a[1]) ** 2n) * (BigInt(b[0]) ** 2n + BigInt(b[1]) ** 2n)),
    );
    return degrees(arcTangent(whole(cross).over(product.plus(whole(dot)))).times(2));
  });
  const angle = (a: Rational): string => text(a).replace(' m', ' deg');
  const plan: Drawn = { kind: 'fan', ring, unit, metric: site.metric, origin: [0n, 0n] };
  const outline = site.maybe()
    ? {
        shape: 'taped',
        sides: sides.map(text),
        diagonals: ring.slice(2, -1).map((p) => text(far(ring[0] as Spot, p))),
      }
    : { shape: 'walk', legs: sides.map((s, k) => ({ length: text(s), turn: angle(turns[k] as Rational) })) };
  return held(
    slabVolume,
    { outline, thickness: '100 mm' },
    { area: areaOf(plan, ring), perimeter: sum(sides) },
    30,
  );
}

/** A rectangle whose sides swell or cut in as arcs: segments of circles by their angles. */
function arcs(site: Site): Compared {
  const [l, w] = [site.length(4, 12), site.length(4, 12)];
  const at = (x: Rational, y: Rational) => ({ x: `${decimalOf(x)} m`, y: `${decimalOf(y)} m` });
  const corners = [at(ZERO, ZERO), at(l.is, ZERO), at(l.is, w.is), at(ZERO, w.is)];
  let [area, around] = [l.is.times(w.is), ZERO];
  const points = corners.map((corner, k) => {
    const chord = k % 2 === 0 ? l.is : w.is;
    const how = site.dice.below(3);
    if (how === 0) {
      around = around.plus(chord);
      return corner;
    }
    const rise = site.length(0.05, 1.2);
    const sign = how === 1 ? ONE : ONE.times(-1);
    const half = chord.over(2);
    const radius = half.squared().plus(rise.is.squared()).over(rise.is.times(2));
    const angle = arcTangent(rise.is.over(half)).times(4);
    // A sector less the triangle of its chord.
    const segment = radius
      .squared()
      .times(angle)
      .over(2)
      .minus(half.times(radius.minus(rise.is)));
    area = area.plus(segment.times(sign));
    around = around.plus(radius.times(angle));
    const put = typeof rise.put === 'string' ? rise.put : `${rise.put.value} ${rise.put.unit}`;
    return { ...corner, rise: how === 1 ? put : `-${put}` };
  });
  return held(
    slabVolume,
    { outline: { shape: 'curved', points }, thickness: '100 mm' },
    { area, perimeter: around },
    40,
  );
}

/** Offsets from a baseline, and parts that are added and taken off. */
function others(site: Site): Compared {
  if (site.maybe()) {
    const n = 2 * site.between(1, 8);
    const gap = site.length(0.3, 2);
    const offsets = Array.from({ length: n + 1 }, () => site.length(1, 6));
    const rule = site.dice.pick(['trapezoidal', 'simpson'] as const);
    const strips = offsets
      .slice(1)
      .map(({ is }, k) => (offsets[k]?.is ?? ZERO).plus(is).over(2).times(gap.is));
    const pairs = Array.from({ length: n / 2 }, (_, k) => {
      const [a, b, c] = [0, 1, 2].map((j) => offsets[2 * k + j]?.is) as [Rational, Rational, Rational];
      return a.plus(b.times(4)).plus(c).times(gap.is).over(3);
    });
    const outline = { shape: 'offsets', spacing: gap.put, offsets: offsets.map(({ put }) => put), rule };
    const area = sum(rule === 'simpson' ? pairs : strips);
    return held(slabVolume, { outline, thickness: '100 mm' }, { area, volume: area.over(10) }, DIGITS);
  }
  const part = () => {
    const [l, w, d] = [site.length(4, 12), site.length(4, 12), site.length(1, 3)];
    const ways: [object, Rational][] = [
      [{ shape: 'rectangle', length: l.put, width: w.put }, l.is.times(w.is)],
      [{ shape: 'trapezoid', parallel: [l.put, d.put], height: w.put }, l.is.plus(d.is).times(w.is).over(2)],
      [
        { shape: 'ring', outerDiameter: l.put, innerDiameter: d.put },
        PI.times(l.is.squared().minus(d.is.squared())).over(4),
      ],
      [
        { shape: 'sector', radius: l.put, innerRadius: d.put, angle: '73.5 deg' },
        PI.times(l.is.squared().minus(d.is.squared())).times(735).over(3600),
      ],
    ];
    return site.dice.pick(ways);
  };
  const parts = Array.from({ length: site.between(1, 4) }, part);
  const d = site.length(0.3, 1);
  const area = sum(parts.map(([, a]) => a)).minus(PI.times(d.is.squared()).over(4));
  return held(
    slabVolume,
    {
      outline: {
        shape: 'combined',
        parts: parts.map(([p]) => p),
        less: [{ shape: 'circle', diameter: d.put }],
      },
      thickness: '100 mm',
    },
    { area, volume: area.over(10) },
    DIGITS,
  );
}

/** Openings on the lines that corners lie on, so that many touch an edge, a corner or each other. */
function touching(site: Site): Compared {
  const plan = drawnPlan(site, ['box', 'staircase', 'comb', 'corridor', 'star']);
  const marks = ([0, 1] as const).map((k) => [...new Set(plan.ring.map((p) => p[k]))].sort((a, b) => a - b));
  const [[x0, x1], [y0, y1]] = [extent(plan.ring, 0), extent(plan.ring, 1)];
  const side = (k: 0 | 1, low: number, high: number): [number, number] => {
    const some = (): number =>
      site.maybe() ? site.dice.pick(marks[k] as number[]) : Math.round(low + site.dice.next() * (high - low));
    const [a, b] = [some(), some()];
    return a === b ? [a, a + 1 + Math.round((high - low) / 9)] : [Math.min(a, b), Math.max(a, b)];
  };
  const boxes = Array.from({ length: site.between(1, 2) }, (): Ring => {
    const [[a, b], [c, d]] = [side(0, x0, x1), side(1, y0, y1)];
    return [
      [a, c],
      [b, c],
      [b, d],
      [a, d],
    ];
  });
  const input = {
    outline: polygonText(plan, plan.ring),
    openings: boxes.map((ring) => polygonText(plan, ring)),
    thickness: '100 mm',
  };
  const [first, second] = boxes as [Ring, Ring?];
  const clear = boxes.every((ring) => clearWithin(ring, plan.ring)) && (!second || clearOf(first, second));
  const attempt = slabVolume.attempt(input);
  if (attempt.ok !== clear) {
    const said = attempt.ok ? 'accepted' : attempt.error.message;
    return {
      figures: 1,
      deviation: 0,
      input,
      disagreements: [`ours: ${said}; jsts: ${clear ? 'clear' : 'not clear'}`],
    };
  }
  if (!clear) return { figures: 1, deviation: 0, input, disagreements: [] };
  const area = boxes.reduce((left, ring) => left.minus(areaOf(plan, ring)), areaOf(plan, plan.ring));
  return held(slabVolume, input, { area, volume: area.over(10) }, DIGITS);
}

export const PLANAR: readonly ((site: Site) => Compared)[] = [
  slab,
  edge,
  margin,
  crossing,
  touching,
  measuredOtherwise,
  arcs,
  others,
];
