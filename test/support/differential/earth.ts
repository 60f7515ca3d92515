/** Orders, bags, base and excavation from their definitions. */
import { bagCount, baseTonnage, concreteOrder, excavation } from '../../../src/index';
import type { Measure, Site } from './draw';
import { most, ONE, PI, Rational, sum, whole, ZERO } from './rational';
import { type Compared, type Expected, held } from './trial';
import { UNITS } from './units';

const DIGITS = 45;

/** Whole units that hold so much. */
const units = (amount: Rational, each: Rational): Rational => whole(amount.over(each).ceil());

const volumeOf = (site: Site, from: number, to: number): Measure => site.of('volume', 'yd3', 'm3', from, to);

function order(site: Site): Compared {
  const n = site.between(1, 5);
  const elements = Array.from({ length: n }, () => ({
    volume: volumeOf(site, 0.5, 12),
    allowance: site.percent(0, 25),
  }));
  const step = site.dice.pick([
    ['0.25 yd3', UNITS.volume['yd3']?.over(4)],
    ['0.5 yd3', UNITS.volume['yd3']?.over(2)],
    ['0.25 m3', Rational.of(1, 4)],
    ['0.1 m3', Rational.of(1, 10)],
  ] as [string, Rational][]);
  const truck = volumeOf(site, 5, 12);
  const nets = elements.map(({ volume }) => volume.is);
  const wholes = elements.map(({ volume, allowance }) => volume.is.times(ONE.plus(allowance.is)));
  const total = sum(wholes);
  const ordered = units(total, step[1]).times(step[1]);
  // A truck carries whole increments.
  const full = truck.is.lessThan(step[1]) ? step[1] : whole(truck.is.over(step[1]).floor()).times(step[1]);
  const loads = Number(ordered.over(full).ceil());
  const last = ordered.minus(full.times(loads - 1));
  return held(
    concreteOrder,
    {
      ...(n > 1
        ? { elements: elements.map((e) => ({ volume: e.volume.put, allowance: e.allowance.put })) }
        : { volume: elements[0]?.volume.put, allowance: elements[0]?.allowance.put }),
      increment: step[0],
      truckCapacity: truck.put,
    },
    {
      net: sum(nets),
      withAllowance: total,
      order: ordered,
      overNet: ordered.minus(sum(nets)),
      loadCount: loads,
      [`loads.${loads - 1}`]: last,
      ...(loads > 1 ? { 'loads.0': full } : {}),
    },
    DIGITS,
  );
}

function bags(site: Site): Compared {
  const [v, a] = [site.of('volume', 'ft3', 'L', 1, 60), site.percent(0, 20)];
  const bag = site.of('mass', 'lb', 'kg', 30, 100);
  const each = site.of('volume', 'ft3', 'L', 0.2, 0.8);
  const [water, wheelbarrow, buggy] = [
    site.of('volume', 'gal', 'L', 0.4, 1),
    site.of('volume', 'ft3', 'L', 2, 4),
    site.of('volume', 'ft3', 'L', 5, 12),
  ];
  const total = v.is.times(ONE.plus(a.is));
  const n = units(total, each.is);
  return held(
    bagCount,
    {
      volume: v.put,
      allowance: a.put,
      bag: bag.put,
      yield: each.put,
      water: water.put,
      wheelbarrow: wheelbarrow.put,
      buggy: buggy.put,
    },
    {
      bags: n,
      withAllowance: total,
      made: each.is.times(n),
      overNet: each.is.times(n).minus(v.is),
      weight: bag.is.times(n),
      water: water.is.times(n),
      wheelbarrowTrips: units(total, wheelbarrow.is),
      buggyTrips: units(total, buggy.is),
    },
    DIGITS,
  );
}

/** Base under a rectangle with a margin, trimmed, watered, trucked, spread in lifts over fabric. */
function base(site: Site): Compared {
  const [l, w, d] = [site.length(3, 20), site.length(3, 20), site.length(0.1, 0.4)];
  const [m, trim] = [site.length(0, 0.6), site.length(0, 0.3)];
  const C = site.of('density', 'pcf', 'kg/m3', 110, 150, 1);
  const L = site.of('density', 'pcf', 'kg/m3', 80, 109, 1);
  const [water, extra] = [site.percent(0, 8), site.percent(0, 15)];
  const big = site.size === 'huge' ? 1_000_000 : 1;
  const payload = site.of('mass', 'ton', 'tonne', 8 * big, 20 * big);
  const truck = site.of('volume', 'yd3', 'm3', 6 * big, 14 * big);
  const lift = site.length(0.05, 0.15);
  const width = site.length(2, 4);
  const [rw, rl, lap] = [site.length(3, 5), site.length(30, 100), site.length(0.3, 0.6)];
  const around = (by: Rational): Rational => l.is.plus(by.times(2)).times(w.is.plus(by.times(2)));
  const area = around(m.is);
  const mass = area.times(d.is).times(C.is);
  const dry = around(m.is.plus(trim.is)).times(d.is).times(C.is).times(ONE.plus(extra.is));
  const delivered = dry.times(ONE.plus(water.is));
  const loose = dry.over(L.is);
  const spread = d.is.times(C.is).over(L.is);
  const count = units(spread, lift.is);
  const fabric = area
    .times(rw.is)
    .times(rl.is)
    .over(rw.is.minus(lap.is).times(rl.is.minus(lap.is)));
  const [byWeight, byVolume] = [units(delivered, payload.is), units(loose, truck.is)];
  return held(
    baseTonnage,
    {
      outline: { shape: 'rectangle', length: l.put, width: w.put },
      margin: m.put,
      edgeTrim: trim.put,
      depth: d.put,
      compactedDensity: C.put,
      looseDensity: L.put,
      moisture: water.put,
      allowance: extra.put,
      truckPayload: payload.put,
      truckVolume: truck.put,
      looseLift: lift.put,
      spreadWidth: width.put,
      tons: ['short', 'long', 'metric'],
      geotextile: { rollWidth: rw.put, rollLength: rl.put, lap: lap.put },
    },
    {
      area,
      mass,
      deliveredMass: delivered,
      'tons.long': delivered,
      compactedVolume: area.times(d.is),
      looseVolume: loose,
      shrinkage: C.is.minus(L.is).over(C.is),
      rateOfSpread: d.is.times(C.is),
      spreadLength: mass.over(d.is.times(C.is).times(width.is)),
      loadsByWeight: byWeight,
      loadsByVolume: byVolume,
      loads: most(byWeight, byVolume),
      fullTruck: truck.is.times(L.is),
      'lifts.count': count,
      'lifts.compacted': d.is.over(count),
      'lifts.loose': spread.over(count),
      'geotextile.area': fabric,
      'geotextile.rolls': units(fabric, rw.is.times(rl.is)),
    },
    DIGITS,
  );
}

interface Earth {
  readonly put: object;
  readonly figures: (volume: Rational) => Record<string, Expected>;
}

/** What becomes of the earth: swollen, shrunk, weighed and hauled. */
function earthOf(site: Site): Earth {
  const [swell, share] = [site.percent(5, 40), site.percent(5, 20)];
  const bank = site.of('density', 'pcf', 'kg/m3', 90, 130, 1);
  const convention = site.dice.pick(['1/(1+s)', '1-s'] as const);
  const big = { ordinary: 1, tiny: 0.1, huge: 1_000_000_000 }[site.size];
  const truck = site.of('volume', 'yd3', 'm3', 6 * big, 14 * big);
  const payload = site.of('mass', 'ton', 'tonne', 8 * big, 20 * big);
  const factor = convention === '1-s' ? ONE.minus(share.is) : ONE.over(ONE.plus(share.is));
  return {
    put: {
      swell: swell.put,
      shrink: { convention, share: share.put },
      bankDensity: bank.put,
      haul: { truckVolume: truck.put, payload: payload.put },
    },
    figures: (volume) => {
      const loose = volume.times(ONE.plus(swell.is));
      const mass = volume.times(bank.is);
      return {
        bankVolume: volume,
        looseVolume: loose,
        compactedVolume: volume.times(factor),
        mass,
        'haul.loadsByVolume': units(loose, truck.is),
        'haul.loadsByWeight': units(mass, payload.is),
        'haul.loads': most(units(loose, truck.is), units(mass, payload.is)),
      };
    },
  };
}

/** Volume of a pit whose plan is spread with the height, layer on layer: three sections are exact. */
const spreading = (depth: Rational, plan: (by: Rational) => Rational, m: Rational, s: Rational): Rational => {
  const at = (share: Rational): Rational => plan(m.plus(s.times(depth).times(share)));
  return depth
    .times(
      at(ZERO)
        .plus(at(Rational.of(1, 2)).times(4))
        .plus(at(ONE)),
    )
    .over(6);
};

function pit(site: Site): Compared {
  const [l, w, d, m, s] = [
    site.length(3, 20),
    site.length(3, 20),
    site.length(0.3, 4),
    site.length(0, 1),
    site.toOne(0, 2),
  ];
  const round = site.maybe();
  const plan = (by: Rational): Rational =>
    round
      ? PI.times(l.is.plus(by.times(2)).squared()).over(4)
      : l.is.plus(by.times(2)).times(w.is.plus(by.times(2)));
  const earth = earthOf(site);
  const volume = spreading(d.is, plan, m.is, s.is);
  return held(
    excavation,
    {
      kind: 'pit',
      outline: round
        ? { shape: 'circle', diameter: l.put }
        : { shape: 'rectangle', length: l.put, width: w.put },
      depth: d.put,
      margin: m.put,
      sideSlope: s.put,
      ...earth.put,
    },
    { ...earth.figures(volume), bottomArea: plan(m.is), topArea: plan(m.is.plus(s.is.times(d.is))) },
    DIGITS,
  );
}

function trench(site: Site): Compared {
  const [l, w, d, m, s] = [
    site.length(5, 60),
    site.length(0.3, 1.5),
    site.length(0.3, 3),
    site.length(0, 0.5),
    site.toOne(0, 1.5),
  ];
  const u = site.length(0.1, 0.5);
  const bottom = w.is.plus(m.is.times(2));
  // A trapezoid: bottom and top meet halfway.
  const section = (deep: Rational): Rational =>
    deep.times(bottom.plus(bottom).plus(s.is.times(deep).times(2))).over(2);
  const earth = earthOf(site);
  return held(
    excavation,
    {
      kind: 'trench',
      length: l.put,
      width: w.put,
      depth: d.put,
      margin: m.put,
      sideSlope: s.put,
      replacement: { depth: u.put },
      ...earth.put,
    },
    {
      ...earth.figures(section(d.is.plus(u.is)).times(l.is)),
      'replacement.compacted': section(u.is).times(l.is),
    },
    DIGITS,
  );
}

/** Volume above the grade over a triangle of heights: clipped to the part above, then the mean of its corners. */
function aboveTriangle(corners: readonly (readonly [Rational, Rational, Rational])[]): Rational {
  const above: (readonly [Rational, Rational, Rational])[] = [];
  corners.forEach((a, i) => {
    const b = corners[(i + 1) % corners.length] as readonly [Rational, Rational, Rational];
    if (a[2].sign() >= 0) above.push(a);
    if (a[2].sign() * b[2].sign() >= 0) return;
    const share = a[2].over(a[2].minus(b[2]));
    const at = (k: 0 | 1): Rational => a[k].plus(b[k].minus(a[k]).times(share));
    above.push([at(0), at(1), ZERO]);
  });
  // A fan from the first corner: area of each triangle times its mean height.
  let volume = ZERO;
  for (let i = 1; i + 1 < above.length; i += 1) {
    const [p, q, r] = [above[0], above[i], above[i + 1]] as [
      (typeof above)[number],
      (typeof above)[number],
      (typeof above)[number],
    ];
    const twice = q[0]
      .minus(p[0])
      .times(r[1].minus(p[1]))
      .minus(r[0].minus(p[0]).times(q[1].minus(p[1])));
    volume = volume.plus(twice.abs().over(2).times(p[2].plus(q[2]).plus(r[2])).over(3));
  }
  return volume;
}

/** Spot depths on a grid, cut and filled: each cell's facets clipped at the grade. */
function grid(site: Site): Compared {
  const [a, b] = [site.length(2, 8), site.length(2, 8)];
  const [rows, columns] = [site.between(2, 5), site.between(2, 5)];
  const levels = Array.from({ length: rows }, () => Array.from({ length: columns }, () => site.length(2, 5)));
  const grade = site.length(1.5, 4.5);
  const out =
    site.maybe() && rows * columns > 6
      ? { row: site.between(0, rows - 2), column: site.between(0, columns - 2) }
      : undefined;
  const h = levels.map((row) => row.map((level) => level.is.minus(grade.is)));
  let [cut, fill] = [ZERO, ZERO];
  for (let i = 0; i + 1 < rows; i += 1) {
    for (let j = 0; j + 1 < columns; j += 1) {
      if (out?.row === i && out.column === j) continue;
      const corner = (u: 0 | 1, v: 0 | 1, sign: 1 | -1): readonly [Rational, Rational, Rational] => [
        a.is.times(v),
        b.is.times(u),
        ((h[i + u] as Rational[])[j + v] as Rational).times(sign),
      ];
      const over = (sign: 1 | -1): Rational => {
        const [p, q, r, s] = [corner(0, 0, sign), corner(0, 1, sign), corner(1, 1, sign), corner(1, 0, sign)];
        const both = [
          [p, q, r],
          [p, r, s],
          [p, q, s],
          [q, r, s],
        ] as const;
        return sum(both.map((facet) => aboveTriangle(facet))).over(2);
      };
      // A cell all on one side counts by the mean of its corners, which both ways of laying it come to as well.
      cut = cut.plus(over(1));
      fill = fill.plus(over(-1));
    }
  }
  return held(
    excavation,
    {
      kind: 'grid',
      across: a.put,
      along: b.put,
      levels: levels.map((row) => row.map(({ put }) => put)),
      grade: grade.put,
      ...(out ? { leaveOut: [out] } : {}),
    },
    { bankVolume: cut, ...(fill.sign() > 0 ? { 'fill.volume': fill } : {}) },
    DIGITS,
  );
}

/** Trapezoids at stations: width, depth and slope change evenly between them, so the section is integrated. */
function sections(site: Site): Compared {
  const n = site.between(2, 6);
  const list = Array.from({ length: n }, () => ({
    gap: site.length(5, 20),
    width: site.length(1, 8),
    depth: site.length(0.3, 3),
    slope: site.toOne(0, 2),
  }));
  let at = ZERO;
  const stations = list.map(({ gap }) => {
    at = at.plus(gap.is);
    return at;
  });
  const area = (w: Rational, d: Rational, s: Rational): Rational => d.times(w.plus(d.times(s)));
  let [volume, ends] = [ZERO, ZERO];
  for (let i = 1; i < n; i += 1) {
    const [p, q] = [list[i - 1], list[i]] as [(typeof list)[number], (typeof list)[number]];
    const long = (stations[i] as Rational).minus(stations[i - 1] as Rational);
    const mean = (a: Rational, b: Rational): Rational => a.plus(b).over(2);
    const [A, B] = [area(p.width.is, p.depth.is, p.slope.is), area(q.width.is, q.depth.is, q.slope.is)];
    // The section in the middle has the mean dimensions: the formula of the prismoid.
    const M = area(mean(p.width.is, q.width.is), mean(p.depth.is, q.depth.is), mean(p.slope.is, q.slope.is));
    volume = volume.plus(long.times(A.plus(M.times(4)).plus(B)).over(6));
    ends = ends.plus(long.times(mean(A, B)));
  }
  const earth = earthOf(site);
  return held(
    excavation,
    {
      kind: 'sections',
      sections: list.map(({ width, depth, slope }, i) => ({
        by: 'trapezoid',
        at: { value: exact(stations[i] as Rational), unit: 'm' },
        width: width.put,
        depth: depth.put,
        sideSlope: slope.put,
      })),
      ...earth.put,
    },
    { ...earth.figures(volume), 'sections.averageEndArea': ends, 'sections.prismoidal': volume },
    DIGITS,
  );
}

/** Sums of what a job is written in are finite decimals of meters. */
function exact(a: Rational): string {
  const scaled = a.times(Rational.of(10n ** 30n));
  if (scaled.below !== 1n) throw new RangeError('no finite decimal');
  const digits = scaled.top.toString().padStart(31, '0');
  return `${digits.slice(0, -30)}.${digits.slice(-30)}`;
}

export const EARTH: readonly ((site: Site) => Compared)[] = [order, bags, base, pit, trench, grid, sections];
